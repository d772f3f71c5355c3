import type { Telling } from '../../block/telling.ts';
import type { Content, Flow } from '../document/content.ts';
import type { HouseStyle } from '../house-style.ts';
import { clothLook } from './cloth-look.ts';
import { filledPages, type Body } from './columns.ts';
import type { Composing } from './composing.ts';
import { coverPage } from './cover.ts';
import type { Setting } from './face.ts';
import { flowStrips, sectionStrips, type Widths } from './flow-strips.ts';
import { sectionPlace } from './heading-rows.ts';
import type { Area, Document, Item, Page } from './page.ts';
import { pageFurniture } from './page-furniture.ts';
import { sheetOf } from './paper.ts';
import { withHead } from './ready-pages.ts';
import type { Strip } from './rows.ts';
import { accentOf, typographyOf } from './typography.ts';

/** Of the pages of text, all round, in points: more than any printer needs, for a hole punch and for thumbs. */
export const TEXT_MARGIN = 45;
/** Between two columns, in half lines. */
const BETWEEN = 3.4;
/** How far numbers stand out to the left of a single column, in half lines. */
const GUTTER = 5.2;

/**
 * Lays out a pattern on pages.
 * @param telling how values stand in its sentences
 * @returns the same pages for the same content, style and face
 */
export function laidOut(content: Content, style: HouseStyle, telling: Telling, setting: Setting): Document {
  const { width, height } = sheetOf(style.paper, style.lie);
  const type = typographyOf(style);
  const inner: Area = { left: TEXT_MARGIN, top: TEXT_MARGIN, width: width - 2 * TEXT_MARGIN, height: height - 2 * TEXT_MARGIN };
  const furniture = pageFurniture(content, style, inner.width, { telling, setting });
  const gutter = style.columns === 1 ? type.half * GUTTER : 0;
  const gap = type.half * BETWEEN;
  const wide = inner.width - gutter;
  const column = style.columns === 1 ? wide : (wide - gap) / 2;
  const widths: Widths = { column, wide };
  const top = inner.top + furniture.above;
  const bottom = inner.top + inner.height - furniture.below;
  const body: Body = { top, bottom, columns: style.columns === 1 ? [inner.left + gutter] : [inner.left, inner.left + column + gap] };
  const composing: Composing = {
    title: content.title,
    type,
    setting,
    telling,
    cloth: clothLook(content.fabrics, content.colors, style.ink, content.photos),
    accent: accentOf(
      content.fabrics.flatMap((id) => content.colors.get(id) ?? []),
      style.ink,
    ),
    places: placesOf(content),
    words: content.words,
    height: bottom - top,
    long: Math.max(width, height) - 2 * TEXT_MARGIN - furniture.above - furniture.below,
    gutter,
  };
  // Each page waits to be told which of how many it is.
  const sheet =
    (items: readonly Item[], foot = true): Sheet =>
    (page, pages) => ({
      width,
      height,
      margin: TEXT_MARGIN,
      items: [...furniture.head(inner), ...items, ...(foot ? furniture.foot(inner, page, pages) : [])],
    });
  const sheets: Sheet[] = [];
  let strips: Strip[] = [];
  const flush = (): void => {
    if (strips.length > 0) sheets.push(...filledPages(strips, body).pages.map((items) => sheet(items)));
    strips = [];
  };
  for (const section of content.sections) {
    if (section.name === 'cover') {
      flush();
      const within: Area = { ...inner, top, height: inner.top + inner.height - top };
      const { items, rest } = coverPage(section, within, style, composing);
      sheets.push(sheet(items, false));
      strips.push(...flowStrips(rest, widths, composing));
      flush();
      continue;
    }
    // Ready pages are pages of their own; their title may stand before them.
    if (section.ownPage && !section.pages?.length) flush();
    const isTitled = section.items.length > 0 || !section.pages?.length;
    if (isTitled) strips.push(...sectionStrips(section, widths, composing));
    if (!section.pages?.length) continue;
    flush();
    const place = isTitled ? [] : [sectionPlace(section, section.pages[0]!.margin, composing)];
    sheets.push(
      ...section.pages.map(
        (ready, i): Sheet =>
          (page, pages) =>
            withHead({ ...ready, items: [...(i === 0 ? place : []), ...ready.items] }, content, page, pages, composing),
      ),
    );
  }
  flush();
  return { title: content.title, language: content.language, pages: sheets.map((page, i) => page(i + 1, sheets.length)) };
}

type Sheet = (page: number, pages: number) => Page;

/** @returns the names of all places that links may lead to */
function placesOf({ sections }: Content): ReadonlySet<string> {
  const inFlow = (item: Flow): readonly string[] => {
    if (item.flow === 'heading') return item.leadsHere ?? [];
    if (item.flow === 'table') return item.rows.flatMap(({ leadsHere = [] }) => leadsHere);
    return item.flow === 'together' ? item.items.flatMap(inFlow) : [];
  };
  return new Set(sections.flatMap(({ name, items }) => [`section ${name}`, ...items.flatMap(inFlow)]));
}
