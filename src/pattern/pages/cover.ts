import type { Figures, Flow, Paragraph, Photo, Section } from '../document/content.ts';
import type { HouseStyle } from '../house-style.ts';
import { clothItems } from './cloth-look.ts';
import type { Composing } from './composing.ts';
import { figureRows } from './figure-rows.ts';
import { flowStrips } from './flow-strips.ts';
import { sectionPlace } from './heading-rows.ts';
import type { Area, Item } from './page.ts';
import { lineRows } from './paragraph-rows.ts';
import { heightOfRows, stackedItems, withAbove, type Row } from './rows.ts';
import { photoRow } from './small-rows.ts';
import { blockItems, heightOf, linesOf, type Line } from './text-lines.ts';
import type { TextLook } from './typography.ts';

/** What stands on a cover, in its order. */
interface Parts {
  readonly lead: readonly Paragraph[];
  readonly picture: Figures | Photo | null;
  readonly more: readonly Flow[];
  readonly foot: readonly Paragraph[];
}

function partsOf({ items: all }: Section, { logo }: Pick<HouseStyle, 'logo'>): Parts {
  // The logo has its place at the foot.
  const items = all.filter((item) => !(item.flow === 'photo' && item.picture.id === logo?.id));
  const isLead = (item: Flow): item is Paragraph => item.flow === 'paragraph' && item.look !== 'quiet';
  const leads = items.findIndex((item) => !isLead(item));
  const lead = items.slice(0, leads < 0 ? items.length : leads).filter(isLead);
  const rest = items.slice(lead.length);
  const at = rest.findIndex(({ flow }) => flow === 'figures' || flow === 'photo');
  const picture = at < 0 ? null : (rest[at] as Figures | Photo);
  const after = rest.filter((_, i) => i !== at);
  const last = after.findLastIndex(({ flow }) => flow !== 'paragraph');
  return { lead, picture, more: after.slice(0, last + 1), foot: after.slice(last + 1) as readonly Paragraph[] };
}

/** A page lying on its side has the picture beside the words; this is the picture's share. */
const BESIDE = 0.54;
/** The picture is at least so high, as a share of the page, before other things give way to the next page. */
const LEAST = 0.3;
/** A title is set smaller until it takes no more lines than this. */
const TITLE_LINES = 3;
/** And no more of the page's height than this. */
const TITLE_SHARE = 0.25;

/**
 * Lays out the cover: name, picture, what there is to know, and whose it is.
 * @returns its items, and what it has no room for
 */
export function coverPage(
  section: Section,
  within: Area,
  style: Pick<HouseStyle, 'logo' | 'maker'>,
  composing: Composing,
): { readonly items: readonly Item[]; readonly rest: readonly Flow[] } {
  const parts = partsOf(section, style);
  const { type } = composing;
  const ribbon = ribbonItems(within, composing);
  const top = within.top + RIBBON + type.half * 3;
  const beside = within.width > within.height && parts.picture !== null;
  const words: Area = {
    left: within.left,
    top,
    width: beside ? within.width * (1 - BESIDE) - type.half * 4 : within.width,
    height: within.top + within.height - top,
  };
  const title = titleLines(section, words, composing);
  const lead = parts.lead.flatMap(({ said, look }, i) => {
    const set: TextLook = { ...type.value, weight: look === 'strong' ? 'strong' : 'regular' };
    return lineRows(linesOf(said.told, set, words.width, composing), i === 0 ? type.half * 1.2 : type.half * 0.5, { of: said.at });
  });
  const foot = footOf(parts.foot, words, style, composing);
  const y = words.top + heightOf(title);
  const leadHigh = lead.length === 0 ? 0 : lead[0]!.above + heightOfRows(lead);
  const room = words.top + words.height - foot.height - (y + leadHigh);
  const pictureLeast = parts.picture && !beside ? composing.height * LEAST : 0;
  const more = fittedRows(parts.more, words.width, room - pictureLeast - type.half * (beside ? 3 : 5), composing);
  const moreHigh = heightOfRows(more.rows);
  const pictureArea: Area = beside
    ? { left: within.left + within.width * (1 - BESIDE), top, width: within.width * BESIDE, height: within.top + within.height - top }
    : {
        left: within.left,
        top: y + leadHigh + type.half * 3,
        width: within.width,
        height: room - moreHigh - (moreHigh > 0 ? type.half * 2.5 : 0) - type.half * 4.5,
      };
  const picture = parts.picture === null ? [] : pictureItems(parts.picture, pictureArea, composing);
  const moreTop = beside || parts.picture === null ? y + leadHigh + type.half * 3 : pictureArea.top + pictureArea.height + type.half * 2.5;
  return {
    items: [
      sectionPlace(section, within.top, composing),
      ...ribbon,
      ...blockItems(title, words.left, words.top, { role: 'heading', level: 1, of: section.title.at }),
      ...(lead.length === 0 ? [] : stackedItems(lead, words.left, y + lead[0]!.above)),
      ...picture,
      ...stackedItems(more.rows, words.left, moreTop),
      ...foot.items,
    ],
    rest: more.rest,
  };
}

function titleLines({ title }: Section, { width, height }: Area, composing: Composing): readonly Line[] {
  const { title: largest } = composing.type;
  for (let size = largest.size; ; size -= 2) {
    const lines = linesOf(title.told, { ...largest, size, leading: size * 1.06 }, width, composing);
    const torn = lines.some(({ words }) => words.some(({ space }, i) => i === 0 && space === 0 && words !== lines[0]!.words));
    if ((lines.length <= TITLE_LINES && heightOf(lines) <= height * TITLE_SHARE && !torn) || size <= LEAST_TITLE) return lines;
  }
}

const LEAST_TITLE = 20;

/** How high the strip of all fabrics at the top is. */
const RIBBON = 12;

/** All fabrics by turns in a strip right across. */
function ribbonItems({ left, top, width }: Area, { cloth }: Composing): readonly Item[] {
  const fabrics = [...cloth.hatches.keys()];
  if (fabrics.length === 0) return [];
  const count = Math.max(fabrics.length, Math.round(width / RIBBON / fabrics.length) * fabrics.length);
  const each = width / count;
  const inset = 0.25;
  return fabrics.flatMap((fabric, k) => {
    const places = Array.from({ length: Math.ceil((count - k) / fabrics.length) }, (_, i) => left + (i * fabrics.length + k) * each);
    const outlines = places.map((x) => {
      const [x1, x2, y1, y2] = [Math.max(x, left + inset), Math.min(x + each, left + width - inset), top + inset, top + RIBBON - inset];
      return [
        [x1, y1],
        [x2, y1],
        [x2, y2],
        [x1, y2],
      ] as const;
    });
    return clothItems(outlines, { fabric, side: 'right', origin: [left, top] }, cloth);
  });
}

/** As many things as there is room for. */
function fittedRows(
  items: readonly Flow[],
  width: number,
  room: number,
  composing: Composing,
): { readonly rows: readonly Row[]; readonly rest: readonly Flow[] } {
  const rowsOf = (some: readonly Flow[]): readonly Row[] =>
    withAbove(
      flowStrips(some, { column: width, wide: width }, { ...composing, gutter: 0 }).flatMap(({ rows }) => rows),
      0,
    );
  for (let count = items.length; count > 0; count--) {
    const rows = rowsOf(items.slice(0, count));
    if (heightOfRows(rows) <= room) return { rows, rest: items.slice(count) };
  }
  return { rows: [], rest: items };
}

function pictureItems(picture: Figures | Photo, { left, top, width, height }: Area, composing: Composing): readonly Item[] {
  if (height <= 0) return [];
  const centred = (rows: readonly Row[], wide: number): readonly Item[] =>
    stackedItems(rows, left + Math.max(0, (width - wide) / 2), top + Math.max(0, Math.min((height - heightOfRows(rows)) / 2, height)));
  if (picture.flow === 'photo') {
    const words = heightOfRows([photoRow(picture, width, composing, 0)]);
    const most = height - words;
    const scale = Math.min(width / picture.picture.width, most / picture.picture.height);
    return centred([photoRow(picture, width, composing, most)], picture.caption ? width : picture.picture.width * scale);
  }
  const widest = Math.max(...picture.figures.map(({ figure }) => figure.frame.width / figure.frame.height), 0);
  for (let most = height; most > 20; most *= 0.92) {
    const rows = figureRows({ ...picture, most: 1 }, width, { ...composing, long: most, height: most * 2 });
    if (heightOfRows(rows) <= height) return centred(rows, picture.figures.length === 1 ? Math.min(width, widest * most) : width);
  }
  return [];
}

/** Whose it is, with the logo at the right, at the bottom of the page. */
function footOf(
  said: readonly Paragraph[],
  { left, top, width, height }: Area,
  { logo, maker }: Pick<HouseStyle, 'logo' | 'maker'>,
  composing: Composing,
): { readonly height: number; readonly items: readonly Item[] } {
  const { type } = composing;
  if (said.length === 0 && !logo) return { height: 0, items: [] };
  const scale = logo ? Math.min((width * 0.3) / logo.width, (type.half * 7) / logo.height) : 0;
  const image = logo ? { width: logo.width * scale, height: logo.height * scale } : { width: 0, height: 0 };
  const wide = width - image.width - (logo ? type.half * 2 : 0);
  const rows = said.flatMap(({ said: one }, i) => {
    const look: TextLook = i === 0 ? { ...type.strong } : type.quiet;
    return lineRows(linesOf(one.told, look, wide, composing), i === 0 ? 0 : type.half * 0.3, { of: one.at });
  });
  const high = Math.max(heightOfRows(rows), image.height);
  const pad = type.half * 2;
  const bottom = top + height;
  return {
    height: high + pad,
    items: [
      ...stackedItems(rows, left, bottom - high),
      ...(logo
        ? [
            {
              kind: 'image',
              what: maker?.trim() || composing.title,
              area: { left: left + width - image.width, top: bottom - high, ...image },
              picture: logo,
            } as const,
          ]
        : []),
    ],
  };
}
