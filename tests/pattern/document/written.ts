import { readdirSync, readFileSync } from 'node:fs';
import type { Block } from '../../../src/block/block.ts';
import type { Choices } from '../../../src/block/choices.ts';
import { parseBlock } from '../../../src/files/block-file.ts';
import { contentOf } from '../../../src/pattern/document/content-of.ts';
import type { Content, Flow, Said, Section } from '../../../src/pattern/document/content.ts';
import { ENGLISH } from '../../../src/pattern/english.ts';
import { GERMAN } from '../../../src/pattern/german.ts';
import { usualStyle, type HouseStyle } from '../../../src/pattern/house-style.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { namesIn } from '../../../src/pattern/plain-speech.ts';
import { printed } from '../../../src/pattern/telling/kept.ts';
import { styledTelling } from '../../../src/pattern/telling/styled.ts';
import { told } from '../../../src/pattern/told.ts';
import { patternOf } from '../made.ts';
import { setting } from '../pages/laid.ts';

/** @returns the names of the blocks of the sampler */
export const demoNames = readdirSync('demo-blocks').flatMap((file) =>
  file.endsWith('.block.json') ? [file.slice(0, -'.block.json'.length)] : [],
);

export function demoBlock(name: string): Block {
  const read = parseBlock(readFileSync(`demo-blocks/${name}.block.json`, 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

export interface WrittenPattern {
  readonly content: Content;
  /** As it was made, before it was told anew. */
  readonly pattern: Pattern;
  readonly style: HouseStyle;
  /** @returns a sentence as it is printed */
  readonly print: (said: Said | string) => string;
}

/** @returns the content of a block's pattern, and how its sentences are printed */
export function written(block: Block, look: Partial<HouseStyle> = {}, choices: Choices = {}): WrittenPattern {
  return writtenOf(block, patternOf(block, choices), look);
}

/** The same of a pattern that is there already. */
export function writtenOf(block: Block, pattern: Pattern, look: Partial<HouseStyle> = {}): WrittenPattern {
  const style: HouseStyle = { ...usualStyle(block.finished.unit), ...look };
  const language = style.language === 'de' ? GERMAN : ENGLISH;
  const telling = styledTelling(style, namesIn(pattern), language);
  const content = contentOf({ block, pattern: told(block, pattern, language), style, language, telling, setting });
  return { content, pattern, style, print: (said) => printed(typeof said === 'string' ? said : said.told, telling) };
}

/** @returns every sentence of a flow in reading order */
export function saidIn(flow: Flow): readonly Said[] {
  const some = (...all: readonly (Said | null | undefined)[]): readonly Said[] => all.filter((said) => said !== null && said !== undefined);
  switch (flow.flow) {
    case 'paragraph':
    case 'heading':
      return [flow.said];
    case 'table':
      return [...flow.heads, ...flow.rows.flatMap(({ group, cells, below = [] }) => some(group, ...cells, ...below))];
    case 'figures':
      return flow.figures.flatMap(({ caption, measure }) => some(caption, measure));
    case 'facts':
      return flow.facts.flatMap(({ label, value }) => [label, value]);
    case 'boxed':
      return some(flow.title, ...flow.said);
    case 'photo':
      return some(flow.caption);
    case 'measure':
      return flow.said;
    case 'blank':
      return [];
    case 'together':
      return flow.items.flatMap(saidIn);
  }
}

export const saidInSection = ({ title, items }: Section): readonly Said[] => [title, ...items.flatMap(saidIn)];

/** @returns every sentence of a pattern in reading order */
export const allSaid = ({ sections }: Content): readonly Said[] => sections.flatMap(saidInSection);

/** @returns all flows of a kind, also those that are kept together with others */
export function flowsIn<Kind extends Flow['flow']>(
  { sections }: Pick<Content, 'sections'>,
  kind: Kind,
): readonly Extract<Flow, { flow: Kind }>[] {
  const within = (flow: Flow): readonly Flow[] => (flow.flow === 'together' ? [flow, ...flow.items.flatMap(within)] : [flow]);
  return sections.flatMap(({ items }) => items.flatMap(within)).filter((flow): flow is Extract<Flow, { flow: Kind }> => flow.flow === kind);
}
