import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import { refused } from './problems.ts';
import { checkPublication } from './publication-checks.ts';
import {
  SECTIONS, type OwnPart, type OwnWords, type Picture, type Publication, type SectionChoice, type SectionName,
} from './publication.ts';

/*
 * What a designer adds to the pattern that is written for her, as operations on the block.
 */

/** @returns the block with another publication, from which all is left out that says nothing, and every picture that no photo shows */
function published(block: Block, { subtitle, sections, words = [], parts = [], pictures = [] }: Publication): Result<Block> {
  const { publication: before, ...rest } = block;
  const shown = new Set(parts.map(({ picture }) => picture));
  const used = pictures.every(({ id }) => shown.has(id)) ? pictures : pictures.filter(({ id }) => shown.has(id));
  const publication: Publication = {
    ...(subtitle !== undefined && subtitle !== '' && { subtitle }),
    ...(sections && sections.length > 0 && { sections }),
    ...(words.length > 0 && { words }),
    ...(parts.length > 0 && { parts }),
    ...(used.length > 0 && { pictures: used }),
  };
  const fault = checkPublication(publication);
  if (fault) return refused(fault);
  return good(Object.keys(publication).length > 0 ? { ...rest, publication } : rest);
}

/** @returns text on one line, as it may stand in a pattern: spaces side by side become one */
export const onOneLine = (text: string): string => text.replace(/\s+/gu, ' ').trim();

/** @param subtitle stands under the name; empty for none */
export const setSubtitle = (block: Block, subtitle: string): Result<Block> =>
  published(block, { ...block.publication, subtitle: onOneLine(subtitle) });

/** @returns every section in order; those that a choice does not name follow in their usual order, shown */
export function allSections(choice: SectionChoice = []): SectionChoice {
  const named = new Set(choice.map(({ section }) => section));
  return [...choice, ...SECTIONS.filter((section) => !named.has(section)).map((section) => ({ section, shown: true }))];
}

/** Has the pattern show some sections in some order; null as in all her patterns. */
export function chooseSections(block: Block, sections: SectionChoice | null): Result<Block> {
  const { sections: _, ...rest } = block.publication ?? {};
  return published(block, { ...rest, ...(sections && { sections }) });
}

/** @returns a choice with one section shown or left out */
export const sectionShown = (choice: SectionChoice, section: SectionName, shown: boolean): SectionChoice =>
  allSections(choice).map((each) => (each.section === section ? { section, shown } : each));

/** @returns a choice with one section at another place among all */
export function sectionMoved(choice: SectionChoice, section: SectionName, to: number): SectionChoice {
  const all = allSections(choice);
  const rest = all.filter((each) => each.section !== section);
  return [...rest.slice(0, to), ...all.filter((each) => each.section === section), ...rest.slice(to)];
}

/** What tells one sentence in her own words from all others. */
export type WordsOf = Pick<OwnWords, 'at' | 'language' | 'was'>;

const isFor = (one: WordsOf, other: WordsOf): boolean => one.at === other.at && one.language === other.language && one.was === other.was;

/** Puts her words in the place of a sentence, and of what she had put there before. */
export function putWords(block: Block, own: OwnWords): Result<Block> {
  const { words = [] } = block.publication ?? {};
  const now = onOneLine(own.now);
  const at = words.findIndex((each) => isFor(each, own));
  if (at >= 0 && words[at]!.now === now) return good(block);
  const put = { ...own, now };
  return published(block, { ...block.publication, words: at < 0 ? [...words, put] : words.with(at, put) });
}

/** Takes her words away; the program's stand there again. */
export const removeWords = (block: Block, own: WordsOf): Result<Block> =>
  published(block, { ...block.publication, words: (block.publication?.words ?? []).filter((each) => !isFor(each, own)) });

/** What a new part is to be; its picture comes with it. */
export type NewPart = Omit<OwnPart, 'id' | 'picture'> & { readonly picture?: Omit<Picture, 'id'> };

/** Adds a part of her own, behind those that stand at the same place. */
export function addPart(block: Block, { picture, ...part }: NewPart): Result<Block> {
  const { parts = [], pictures = [] } = block.publication ?? {};
  const own = { ...part, text: onOneLine(part.text), id: freshId('part', parts) };
  if (!picture) return published(block, { ...block.publication, parts: [...parts, own] });
  const known = pictures.find(({ jpeg }) => jpeg === picture.jpeg);
  const added = known ?? { id: freshId('picture', pictures), ...picture };
  const all = known ? pictures : [...pictures, added];
  return published(block, { ...block.publication, parts: [...parts, { ...own, picture: added.id }], pictures: all });
}

/** @returns the first of "part-1", "part-2" … that nothing is called */
function freshId(what: string, known: readonly { readonly id: string }[]): string {
  let number = 1;
  while (known.some(({ id }) => id === `${what}-${number}`)) number++;
  return `${what}-${number}`;
}

/** Changes what a part of hers says, or what it is. */
export const changePart = (block: Block, id: string, some: Partial<Pick<OwnPart, 'text' | 'part'>>): Result<Block> =>
  withParts(block, (parts) =>
    parts.map((each) => (each.id === id ? { ...each, ...some, ...(some.text !== undefined && { text: onOneLine(some.text) }) } : each)),
  );

/** Where a part stands: at the beginning of a section, or behind a place in it. */
export type PartPlace = Pick<OwnPart, 'section' | 'after'>;

/**
 * Moves a part of hers to another place.
 * @param before the part it comes to stand before, where several stand there; the last of them where absent
 */
export const movePart = (block: Block, id: string, { section, after }: PartPlace, before?: string): Result<Block> =>
  withParts(block, (parts) => {
    const moved = parts.find((each) => each.id === id);
    if (!moved) return parts;
    const { after: _, ...rest } = moved;
    const placed: OwnPart = { ...rest, section, ...(after !== undefined && { after }) };
    const others = parts.filter((each) => each.id !== id);
    const at = others.findIndex((each) => each.id === before);
    return at < 0 ? [...others, placed] : [...others.slice(0, at), placed, ...others.slice(at)];
  });

/** Takes a part of hers out, and its picture where nothing else shows it. */
export const removePart = (block: Block, id: string): Result<Block> => withParts(block, (parts) => parts.filter((each) => each.id !== id));

const withParts = (block: Block, change: (parts: readonly OwnPart[]) => readonly OwnPart[]): Result<Block> =>
  published(block, { ...block.publication, parts: change(block.publication?.parts ?? []) });
