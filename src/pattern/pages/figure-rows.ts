import type { Figures, Said } from '../document/content.ts';
import type { Composing } from './composing.ts';
import { FIGURE_EDGE, inkOfMarks } from './mark-ink.ts';
import type { Area } from './page.ts';
import type { Row } from './rows.ts';
import { blockItems, heightOf, linesOf, widthsOf, type Line } from './text-lines.ts';
import type { TextLook } from './typography.ts';

type Shown = Figures['figures'][number];

/** Between two pictures, and between a picture and what is said under it, in half lines. */
const GAP = 1.9;
const UNDER = 0.55;
/** Words under a picture are at least so wide, in half lines, if they need it. */
const WORDS = 12;
/** And with more lines than this they are as wide as they need. */
const MOST_LINES = 5;

/** A picture leaves room on its page for a heading and a few words. */
const HIGHEST = 0.76;
/** Words begin where the ink of their picture does. */
const FLUSH = FIGURE_EDGE - 0.2;
/** What pictures grow to, at most, with the letters. */
const GROWN = 0.4;
/** Pictures that follow one another may be smaller than one that stands alone. */
const SEVERAL = 0.72;
/** One row more is not worth larger pictures where they are so large already, as a share of the largest they may be. */
const ENOUGH = 0.66;
/** How large, by its area, a long picture may be beside a square one of the greatest height. */
const LONG = 1.3;

/** One picture with its words, measured. */
interface Cell {
  readonly shown: Shown;
  readonly width: number;
  readonly height: number;
  readonly caption: readonly Line[];
  readonly measure: readonly Line[];
  /** With the words. */
  readonly across: number;
}

/** How a flow of figures is laid in rows. */
interface Plan {
  /** Points to a unit of the figures. */
  readonly scale: number;
  readonly rows: readonly (readonly Shown[])[];
}

/** @returns the scale at which figures come out in a column */
export const scaleIn = (figures: Figures, width: number, composing: Composing): number => planOf(figures, width, composing).scale;

/** @returns the height of the highest figure at a scale, in points */
export const highestAt = ({ figures }: Figures, scale: number): number =>
  Math.max(0, ...figures.map(({ figure }) => figure.frame.height)) * scale;

/** What is small beside usual letters is larger beside large ones. */
const mostOf = (most: number, { type }: Composing): number => Math.max(most, Math.min(most * type.letters, GROWN));

/** As few rows of figures as leave them nearly as large as they may be. */
function planOf({ figures, most }: Figures, width: number, composing: Composing): Plan {
  const gap = composing.type.half * GAP;
  const frames = figures.map(({ figure }) => figure.frame);
  const room = 2 * FIGURE_EDGE;
  const widest = Math.max(...frames.map((frame) => frame.width));
  const highest = Math.max(...frames.map((frame) => frame.height));
  const high = Math.min(mostOf(most, composing) * composing.long * (figures.length > 1 ? SEVERAL : 1), composing.height * HIGHEST);
  const largest = Math.max(...frames.map((frame) => Math.sqrt(frame.width * frame.height)));
  const cap = Math.min((high - room) / highest, (width - room) / widest, (high * LONG) / largest);
  let best: Plan | null = null;
  for (let count = 1; count <= figures.length; count++) {
    const rows = parcelled(figures, count);
    const scale = Math.min(
      cap,
      ...rows.map(
        (row) => (width - gap * (row.length - 1) - room * row.length) / row.reduce((sum, { figure }) => sum + figure.frame.width, 0),
      ),
    );
    if (!best || scale > best.scale * 1.2) best = { scale, rows };
    if (scale >= cap * ENOUGH) break;
  }
  return best!;
}

/** @returns figures in so many rows, in their order, about equally many in each */
function parcelled(figures: readonly Shown[], count: number): readonly (readonly Shown[])[] {
  const each = Math.ceil(figures.length / count);
  return Array.from({ length: Math.ceil(figures.length / each) }, (_, i) => figures.slice(i * each, (i + 1) * each));
}

/** @returns figures side by side at one scale, each with its words under it, the bottoms of a row's pictures level */
export function figureRows(flow: Figures, width: number, composing: Composing): readonly Row[] {
  if (flow.figures.length === 0) return [];
  const plan = planOf(flow, width, composing);
  const most = composing.height - composing.type.half * ROOM;
  for (let scale = plan.scale; ; scale *= 0.85) {
    const rows = rowsAt(plan, scale, width, composing);
    // Pictures make room for long words under them, down to a size where they would no longer be pictures.
    if (rows.every(({ height }) => height <= most) || scale < plan.scale / 4) return yielding(rows, plan, scale, width, composing);
  }
}

const rowsAt = (plan: Plan, scale: number, width: number, composing: Composing): readonly Row[] =>
  plan.rows
    .flatMap((row) => {
      const share = (width - composing.type.half * GAP * (row.length - 1)) / row.length;
      return inRowsOf(
        row.map((shown) => cellOf(shown, scale, share, width, composing)),
        width,
        composing,
      );
    })
    .map((cells, i): Row => rowOf(cells, i, width, composing));

/** How much of its height a large picture, so high at least in half lines, gives way for a page that is well filled. */
const YIELDS = 0.25;
const LARGE = 16;

/** A single row of large pictures may be set a little smaller. */
function yielding(rows: readonly Row[], plan: Plan, scale: number, width: number, composing: Composing): readonly Row[] {
  const [row] = rows;
  const { half, letters } = composing.type;
  if (rows.length !== 1 || !row || row.height < (half * LARGE) / letters) return rows;
  const to = (height: number): Row => {
    for (let by = height / row.height; ; by *= 0.97) {
      const lower = rowsAt(plan, scale * by, width, composing);
      if (lower.length === 1 && lower[0]!.height <= height) return { ...lower[0]!, above: row.above };
      if (by < 0.5) return row;
    }
  };
  return [{ ...row, lower: { least: row.height * (1 - YIELDS), to } }];
}

/** What a page holds beside a row of pictures, in half lines: a section's title and a heading, each of two lines. */
const ROOM = 20;

/** Words may need more room than their pictures: then a row becomes two. */
function inRowsOf(cells: readonly Cell[], width: number, { type }: Composing): readonly (readonly Cell[])[] {
  const rows: Cell[][] = [];
  let wide = 0;
  for (const cell of cells) {
    const more = cell.across + (rows.length > 0 ? type.half * GAP : 0);
    if (rows.length > 0 && wide + more <= width + 0.01) rows.at(-1)!.push(cell);
    else rows.push([cell]);
    wide = rows.at(-1)!.length === 1 ? cell.across : wide + more;
  }
  return rows;
}

/** @param share what each picture of a row has of the column's width, if all have the same */
function cellOf(shown: Shown, scale: number, share: number, most: number, composing: Composing): Cell {
  const { type } = composing;
  const { frame } = shown.figure;
  const [width, height] = [frame.width * scale + 2 * FIGURE_EDGE, frame.height * scale + 2 * FIGURE_EDGE];
  const strong = { ...type.caption, weight: 'strong', color: type.body.color } as const;
  const wideOf = (said: Said | undefined, look: TextLook): number => (said ? widthsOf(said.told, look, composing).wide + 0.1 : 0);
  const wanted = Math.max(wideOf(shown.caption, type.caption), wideOf(shown.measure, strong));
  const least = Math.min(most, Math.max(width, Math.min(wanted + FLUSH, type.half * WORDS, share)));
  const linesIn = (across: number, of: Said | undefined, look: TextLook): readonly Line[] =>
    of ? linesOf(of.told, look, across - FLUSH, composing) : [];
  // Many words want a broader place.
  const many = linesIn(least, shown.caption, type.caption).length + linesIn(least, shown.measure, strong).length > MOST_LINES;
  const across = many ? Math.min(most, Math.max(width, wanted + FLUSH)) : least;
  const caption = linesIn(across, shown.caption, type.caption);
  const measure = linesIn(across, shown.measure, strong);
  return { shown, width, height, caption, measure, across };
}

function rowOf(cells: readonly Cell[], index: number, width: number, composing: Composing): Row {
  const { type, cloth, telling, setting } = composing;
  const high = Math.max(...cells.map(({ height }) => height));
  const under = type.half * UNDER;
  const words = Math.max(...cells.map(({ caption, measure }) => heightOf(caption) + heightOf(measure)));
  // Room that is left is shared out, but pictures of one row stay near each other.
  const free = width - cells.reduce((sum, { across }) => sum + across, 0);
  const gap = cells.length > 1 ? Math.min(free / (cells.length - 1), type.half * GAP * 1.6) : 0;
  return {
    height: high + (words > 0 ? under + words : 0),
    above: type.half * (index === 0 ? 1.4 : 1.8),
    held: false,
    at: (x, y) => {
      let left = x;
      return cells.flatMap(({ shown, width: wide, height, caption, measure, across }) => {
        const { name, says, frame, marks } = shown.figure;
        const area: Area = { left, top: y + high - height, width: wide, height };
        const top = y + high + under;
        const items = [
          ...inkOfMarks(marks, frame, area, { cloth, telling, setting, letters: type.letters, figure: { name, says } }),
          ...blockItems(caption, left + FLUSH, top, { of: shown.caption?.at ?? '' }),
          ...blockItems(measure, left + FLUSH, top + heightOf(caption), { of: shown.measure?.at ?? '' }),
        ];
        left += across + gap;
        return items;
      });
    },
  };
}
