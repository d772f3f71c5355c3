import type { Content, Flow, Said, Section } from '../../pattern/document/content.ts';
import type { Document, Item, Page } from '../../pattern/pages/page.ts';
import { skeletonOf } from '../../pattern/telling/kept.ts';
import type { Laid, LaidSection, Sent, Sentence } from './pages-maker.ts';

/** The pages that were sent last. */
export type SentBefore = readonly Page[];
export const NOTHING_SENT: SentBefore = [];

/** Pages with what they were laid out from, as far as it matters on the screen. */
export interface Made {
  readonly document: Document;
  readonly content: Pick<Content, 'sections' | 'aside' | 'alarm'>;
}

/** @returns pages for their way to the screen, without those that are there already, and what is there then */
export function sent({ document, content }: Made, before: SentBefore): readonly [Omit<Sent, 'took'>, SentBefore] {
  const pages = document.pages.map((page, i): Page | number => {
    const at = before[i] && isSame(page, before[i]) ? i : before.findIndex((other) => isSame(page, other));
    return at >= 0 ? at : page;
  });
  const { sections, aside, alarm } = content;
  const laid = sections.map((section) => laidSection(section, document));
  return [{ document: { ...document, pages }, sections: laid, sentences: sentencesOf(sections), aside, alarm }, document.pages];
}

/** @returns what was sent, with the pages that were there already */
export const received = (message: Sent, before: readonly Page[]): Laid => ({
  ...message,
  document: { ...message.document, pages: message.document.pages.map((page) => (typeof page === 'number' ? before[page]! : page)) },
});

/** @returns whether two values hold the same all the way down; the first difference settles it */
function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one)) return Array.isArray(other) && one.length === other.length && one.every((each, i) => isSame(each, other[i]));
  const names = Object.keys(one) as (keyof typeof one)[];
  return names.length === Object.keys(other).length && names.every((name) => Object.hasOwn(other, name) && isSame(one[name], other[name]));
}

function laidSection({ name, items, title }: Section, { pages }: Document): LaidSection {
  const begins = (item: Item): boolean =>
    item.kind === 'place' ? item.name === `section ${name}` : item.kind === 'text' && item.of === title.at;
  const page = pages.findIndex((each) => each.items.some(begins));
  const first = pages[page]?.items.find(begins);
  const down = first && 'y' in first ? first.y / pages[page]!.height : 0;
  return { name, page: page >= 0 ? page : null, down, places: items.flatMap(singly).flatMap(placeOf) };
}

/** @returns things one by one, also those that stay together */
const singly = (flow: Flow): readonly Flow[] => (flow.flow === 'together' ? flow.items.flatMap(singly) : [flow]);

/** @returns what a thing is known by for whoever stands behind it */
const placeOf = (flow: Flow): readonly string[] =>
  flow.flow === 'paragraph' || flow.flow === 'heading' ? [flow.said.at] : 'at' in flow ? [flow.at] : [];

/** What must be seen before anything is cut is said as it is. */
const WARNINGS = 'warnings/';

function sentencesOf(sections: readonly Section[]): ReadonlyMap<string, Sentence> {
  const found = new Map<string, Sentence>();
  for (const { name, title, items } of sections) {
    found.set(title.at, { ...title, section: name });
    for (const flow of items.flatMap(singly)) {
      const [after] = placeOf(flow);
      for (const said of saidIn(flow)) {
        if (said && isWorded(said) && !said.at.startsWith(WARNINGS)) found.set(said.at, { ...said, section: name, ...(after !== undefined && { after }) });
      }
    }
  }
  return found;
}

/** @returns whether there are words in it that are nobody else's: a number or a fabric's name alone follows the drawing */
const isWorded = ({ told, was }: Said): boolean => /\p{L}/u.test(skeletonOf(was ?? told).replaceAll(/\{\d+\}/gu, ''));

function saidIn(flow: Flow): readonly (Said | null | undefined)[] {
  switch (flow.flow) {
    case 'paragraph':
    case 'heading':
      return [flow.said];
    case 'boxed':
      return [flow.title, ...flow.said];
    case 'photo':
      return [flow.caption];
    case 'measure':
      return flow.said;
    case 'facts':
      return flow.facts.flatMap(({ label, value }) => [label, value]);
    case 'figures':
      return flow.figures.flatMap(({ caption, measure }) => [caption, measure]);
    case 'table':
      return [...flow.heads, ...flow.rows.flatMap(({ group, cells, below = [] }) => [group, ...cells, ...below])];
    case 'blank':
    case 'together':
      return [];
  }
}
