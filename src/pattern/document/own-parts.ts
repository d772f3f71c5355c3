import type { OwnPart, Picture } from '../../block/publication.ts';
import type { Flow, Said, Section } from './content.ts';
import { plain } from './writing.ts';

/** The place of a part of hers in the pattern. */
export const placeOfPart = ({ id }: Pick<OwnPart, 'id'>): string => `own/${id}`;

/**
 * Puts her own paragraphs, tips and photos where they belong: each after the place it names, else at the end of its section, at its
 * beginning where it names none.
 * @returns the sections with them, and the parts whose section the pattern does not have, or whose photo is not there
 */
export function withOwnParts(
  sections: readonly Section[],
  parts: readonly OwnPart[],
  pictures: readonly Picture[],
): { readonly sections: readonly Section[]; readonly aside: readonly OwnPart[] } {
  const photos = new Map(pictures.map((picture) => [picture.id, picture]));
  const flows = new Map(parts.map((part) => [part, flowOf(part, photos)]));
  const has = new Set(sections.map(({ name }) => name));
  return {
    sections: sections.map((section) => {
      const own = parts.flatMap((part) => {
        const flow = part.section === section.name ? flows.get(part)! : null;
        return flow ? [{ ...(part.after !== undefined && { after: part.after }), flow }] : [];
      });
      return own.length === 0 ? section : { ...section, items: placed(section, own) };
    }),
    aside: parts.filter((part) => !has.has(part.section) || flows.get(part) === null),
  };
}

interface OwnFlow {
  readonly after?: string;
  readonly flow: Flow;
}

function flowOf(part: OwnPart, photos: ReadonlyMap<string, Picture>): Flow | null {
  const at = placeOfPart(part);
  const said: Said = { at: `${at}/text`, told: plain(part.text) };
  if (part.part === 'paragraph') return { flow: 'paragraph', said: { ...said, at }, look: 'plain' };
  if (part.part === 'tip') return { flow: 'boxed', at, look: 'tip', title: null, said: [said] };
  const picture = part.picture === undefined ? undefined : photos.get(part.picture);
  return picture ? { flow: 'photo', at, picture, caption: part.text.trim() === '' ? null : said } : null;
}

/** What of hers stands at the beginning, after the place it names, and, where that is not to be found, at the end; in the order given. */
function placed({ title, items }: Section, own: readonly OwnFlow[]): readonly Flow[] {
  const waiting = new Set(own);
  const taken = (wanted: (each: OwnFlow) => boolean): readonly Flow[] =>
    own.flatMap((each) => {
      if (!waiting.has(each) || !wanted(each)) return [];
      waiting.delete(each);
      return followed(each.flow);
    });
  const followed = (flow: Flow): readonly Flow[] => {
    const places = placesIn(flow);
    return [flow, ...taken(({ after }) => after !== undefined && places.includes(after))];
  };
  const opened = (flow: Flow): readonly Flow[] =>
    flow.flow === 'together' ? [{ ...flow, items: flow.items.flatMap(opened) }] : followed(flow);
  const beginning = taken(({ after }) => after === undefined || after === title.at);
  return [...beginning, ...items.flatMap(opened), ...taken(() => true)];
}

/** @returns every place of a thing, and of what is in it */
export function placesIn(flow: Flow): readonly string[] {
  switch (flow.flow) {
    case 'paragraph':
    case 'heading':
      return [flow.said.at];
    case 'table':
      return [
        flow.at,
        ...flow.heads.map(({ at }) => at),
        ...flow.rows.flatMap((row) => [
          ...(row.group ? [row.group.at] : []),
          ...row.cells.map(({ at }) => at),
          ...(row.below ?? []).map(({ at }) => at),
        ]),
      ];
    case 'figures':
      return [
        flow.at,
        ...flow.figures.flatMap(({ caption, measure }) => [...(caption ? [caption.at] : []), ...(measure ? [measure.at] : [])]),
      ];
    case 'facts':
      return [flow.at, ...flow.facts.flatMap(({ label, value }) => [label.at, value.at])];
    case 'boxed':
      return [flow.at, ...(flow.title ? [flow.title.at] : []), ...flow.said.map(({ at }) => at)];
    case 'photo':
      return [flow.at, ...(flow.caption ? [flow.caption.at] : [])];
    case 'measure':
      return [flow.at, ...flow.said.map(({ at }) => at)];
    case 'blank':
      return [];
    case 'together':
      return flow.items.flatMap(placesIn);
  }
}
