import type { Telling } from '../../block/telling.ts';
import type { Content, Flow, Section } from '../document/content.ts';
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
    type,
    setting,
    telling,
    cloth: clothLook(content.fabrics, content.colors, style.ink),
    accent: accentOf(content.fabrics.flatMap((id) => content.colors.get(id) ?? []), style.ink),
    places: placesOf(content),
    words: content.words,
    height: bottom - top,
    long: Math.max(width, height) - 2 * TEXT_MARGIN - furniture.above - furniture.below,
    gutter,
  };
  const sheet = (items: readonly Item[]): Sheet => ({ page: { width, height, margin: TEXT_MARGIN, items }, inner, foot: true });
  const sheets: Sheet[] = [];
  let strips: Strip[] = [];
  const flush = (): void => {
    if (strips.length > 0) sheets.push(...filledPages(strips, body).pages.map(sheet));
    strips = [];
  };
  for (const section of content.sections) {
    if (section.name === 'cover') {
      flush();
      const within: Area = { ...inner, top, height: inner.top + inner.height - top };
      const { items, rest } = coverPage(section, within, style, composing);
      sheets.push({ ...sheet(items), foot: false });
      strips.push(...flowStrips(rest, widths, composing));
      flush();
      continue;
    }
    if (section.ownPage) flush();
    const isTitled = section.items.length > 0 || !section.pages?.length;
    if (isTitled) strips.push(...sectionStrips(section, widths, composing));
    if (!section.pages?.length) continue;
    flush();
    sheets.push(...readySheets(section, isTitled, composing));
  }
  flush();
  const pages = sheets.map(({ page, inner: within, foot }, i): Page => ({
    ...page,
    items: [...furniture.head(within), ...page.items, ...(foot ? furniture.foot(within, i + 1, sheets.length) : [])],
  }));
  return { title: content.title, language: content.language, pages };
}

interface Sheet {
  readonly page: Page;
  /** Within the margins. */
  readonly inner: Area;
  readonly foot: boolean;
}

/** Pages that are laid out already; the first is where links to the section lead, unless its title stands before them. */
const readySheets = (section: Section, isTitled: boolean, composing: Composing): readonly Sheet[] =>
  (section.pages ?? []).map((page, i): Sheet => {
    const { width, height, margin } = page;
    const place = i === 0 && !isTitled ? [sectionPlace(section, margin, composing)] : [];
    const inner = { left: margin, top: margin, width: width - 2 * margin, height: height - 2 * margin };
    return { page: { ...page, items: [...place, ...page.items] }, inner, foot: false };
  });

/** @returns the names of all places that links may lead to */
function placesOf({ sections }: Content): ReadonlySet<string> {
  const inFlow = (item: Flow): readonly string[] => {
    if (item.flow === 'heading') return item.leadsHere ?? [];
    if (item.flow === 'table') return item.rows.flatMap(({ leadsHere = [] }) => leadsHere);
    return item.flow === 'together' ? item.items.flatMap(inFlow) : [];
  };
  return new Set(sections.flatMap(({ name, items }) => [`section ${name}`, ...items.flatMap(inFlow)]));
}
