import type { Item } from './page.ts';
import { heightOfRows, type Row, type Strip } from './rows.ts';

/** The room for text on every page. */
export interface Body {
  readonly top: number;
  readonly bottom: number;
  /** Left edges of the columns. */
  readonly columns: readonly number[];
}

/** A row among all rows of a flow. */
interface Placed {
  readonly row: Row;
  readonly wide: boolean;
  /** Where its strip ends (exclusively), of a strip that is kept whole, at its first row. */
  readonly wholeTo: number | null;
}

/**
 * Fills pages with strips, column by column. Where rows right across the page end columns, these are made equally high. A row that is held
 * comes with the one before it, and a strip that is kept whole goes to the next column if it does not fit any more and a column holds it.
 * @param begun how far the first page is taken already
 * @returns the items of each page, in reading order, and how far the last page is filled
 */
export function filledPages(
  strips: readonly Strip[],
  body: Body,
  begun: number = body.top,
): { readonly pages: readonly (readonly Item[])[]; readonly end: number } {
  const full = body.bottom - body.top;
  let rows = placedRows(strips, full);
  const pages: Item[][] = [[]];
  let y = begun;
  const newPage = (): void => {
    pages.push([]);
    y = body.top;
  };
  for (let i = 0; i < rows.length;) {
    const { row, wide } = rows[i]!;
    const fresh = y === body.top;
    const above = fresh ? 0 : row.above;
    const room = body.bottom - y - above;
    if (wide || body.columns.length === 1) {
      const { height, again } = atTop(row, fresh);
      // What always comes with the row before it was asked for there.
      const need = row.held === 'always' ? { high: height, to: i + 1 } : chainOf(rows, i, full);
      if (need.high > room + NEAR) {
        const lower = lowered(rows, i, need.to, need.high - room);
        if (lower) rows = lower;
        else if (!fresh) {
          newPage();
          continue;
        }
      }
      y += above;
      for (const each of [...again, rows[i]!.row]) {
        pages.at(-1)!.push(...each.at(body.columns[0]!, y));
        y += each.height;
      }
      i++;
      continue;
    }
    const end = rows.findIndex((each, k) => k > i && each.wide);
    const to = end < 0 ? rows.length : end;
    const given: Given = { rows, to, full, count: body.columns.length };
    const willing = inColumns(given, i, room);
    // What a title on this page has under it begins here, though it should be longer than the page.
    const band = willing.to === i && row.held === 'always' ? inColumns(given, i, room, true) : willing;
    if (band.to === i) {
      newPage();
      continue;
    }
    const { columns, high } = band.to === to ? balanced(given, i, band) : band;
    y += above;
    columns.forEach((column, c) => {
      let at = y;
      column.forEach((row, k) => {
        if (k > 0) at += row.above;
        pages.at(-1)!.push(...row.at(body.columns[c]!, at));
        at += row.height;
      });
    });
    y += high;
    i = band.to;
    if (i < to) newPage();
  }
  return { pages, end: y };
}

/** Sums of doubles, in points. */
const NEAR = 1e-6;

/** @returns all rows; strips to be kept whole are lower where only so a column holds them */
function placedRows(strips: readonly Strip[], full: number): readonly Placed[] {
  const rows: Placed[] = [];
  for (const strip of strips) {
    const to = rows.length + strip.rows.length;
    strip.rows.forEach((row, i) => rows.push({ row, wide: strip.wide, wholeTo: strip.whole && i === 0 ? to : null }));
  }
  return rows.reduce<readonly Placed[]>((all, { wholeTo }, i) => {
    const over = wholeTo === null ? 0 : heightOfRows(all.slice(i, wholeTo).map(({ row }) => row)) - full;
    return (over > 0 && lowered(all, i, wholeTo!, over)) || all;
  }, rows);
}

/** What a row takes at a place: at the top of a column what is said again comes before it. */
const atTop = (row: Row, top: boolean): { readonly height: number; readonly again: readonly Row[] } => {
  const again = top ? (row.again ?? []) : [];
  return { height: row.height + again.reduce((sum, { height }) => sum + height, 0), again };
};

/** @returns how high a row is with all that should not be parted from it; where no column holds that, with all that must not */
const needFrom = (rows: readonly Placed[], from: number, full: number): number => chainOf(rows, from, full).high;

/** Rows up to one of them, and how high they are. */
interface Chain {
  readonly high: number;
  /** How high they are at least. */
  readonly least: number;
  readonly to: number;
}

function chainOf(rows: readonly Placed[], from: number, full: number): Chain {
  const wished = chainFrom(rows, from, full, true);
  return wished.least <= full ? wished : chainFrom(rows, from, full, false);
}

/** @returns rows of which some before one are lower by so much in all; null where that is more than they may be */
function lowered(rows: readonly Placed[], from: number, to: number, by: number): readonly Placed[] | null {
  const spare = rows.slice(from, to).reduce((sum, { row }) => sum + spareOf(row), 0);
  if (spare === 0 || spare < by) return null;
  const lower = rows.map((placed, i): Placed => {
    const { row } = placed;
    if (i < from || i >= to || !row.lower) return placed;
    const set = row.lower.to(row.height - (by * spareOf(row)) / spare - NEAR);
    return { ...placed, row: { ...set, held: row.held, above: row.above } };
  });
  const saved = rows.slice(from, to).reduce((sum, { row }, k) => sum + row.height - lower[from + k]!.row.height, 0);
  return saved >= by - NEAR ? lower : null;
}

function chainFrom(rows: readonly Placed[], from: number, full: number, wished: boolean): Chain {
  let [high, saved, at] = [0, 0, from];
  do {
    const { row, wholeTo } = rows[at]!;
    const above = at === from ? 0 : row.above;
    const strip = wholeTo === null ? [] : rows.slice(at, wholeTo).map((each) => each.row);
    const whole = heightOfRows(strip);
    const spare = strip.reduce((sum, each) => sum + spareOf(each), 0);
    if (wholeTo !== null && high + above + whole - saved - spare <= full) {
      high += above + whole;
      saved += spare;
      at = wholeTo;
    } else {
      high += above + row.height;
      saved += spareOf(row);
      at++;
    }
  } while (at < rows.length && (rows[at]!.row.held === 'always' || (wished && rows[at]!.row.held !== false)) && high - saved <= full);
  return { high, least: high - saved, to: at };
}

/** @returns how much lower a row may be */
const spareOf = ({ height, lower }: Row): number => (lower ? height - lower.least : 0);

interface Band {
  readonly columns: readonly (readonly Row[])[];
  /** Of the highest column. */
  readonly high: number;
  /** Which row comes next. */
  readonly to: number;
}

/** Rows that are set in columns, up to one of them. */
interface Given {
  readonly rows: readonly Placed[];
  readonly to: number;
  /** How high a column of a fresh page is. */
  readonly full: number;
  readonly count: number;
}

/**
 * @param forced the first column begins, whatever comes of it
 * @returns rows in columns of at most this height, as many as fit
 */
function inColumns(given: Given, from: number, room: number, forced = false): Band {
  const columns: (readonly Row[])[] = [];
  let [at, high] = [from, 0];
  for (let c = 0; c < given.count && at < given.to; c++) {
    const column = inColumn(given, at, room, forced && c === 0);
    columns.push(column.rows);
    high = Math.max(high, column.high);
    at = column.to;
  }
  return { columns, high, to: at };
}

/** @returns one column's rows, none where what comes first needs a higher column and there is one */
function inColumn(
  { rows, to, full }: Given,
  from: number,
  room: number,
  forced: boolean,
): { readonly rows: readonly Row[]; readonly high: number; readonly to: number } {
  const kept: Row[] = [];
  const within = to === rows.length ? rows : rows.slice(0, to);
  let [high, at] = [0, from];
  while (at < to) {
    const { row } = rows[at]!;
    const first = kept.length === 0;
    const { height, again } = atTop(row, first);
    const above = first ? 0 : row.above;
    // What always comes with the row before it was asked for there; and what no column holds has to begin somewhere.
    const need = row.held === 'always' && !first ? height : height - row.height + needFrom(within, at, full);
    const begins = first && (forced || (need > full - NEAR && room >= full - NEAR));
    if (high + above + need > room + NEAR && !begins) break;
    kept.push(...again.map((each, i) => (i === 0 ? { ...each, above: 0 } : each)), row);
    high += above + height;
    at++;
  }
  return { rows: kept, high, to: at };
}

/** @returns rows that fit in columns, in columns as low as hold them */
function balanced(given: Given, from: number, fitting: Band): Band {
  let best = fitting;
  let [low, top] = [0, fitting.high];
  for (let k = 0; k < 12 && top - low > 1; k++) {
    const middle = (low + top) / 2;
    const band = inColumns(given, from, middle);
    if (band.to === given.to) [best, top] = [band, Math.min(middle, band.high)];
    else low = middle;
  }
  return best;
}
