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
export function filledPages(strips: readonly Strip[], body: Body, begun: number = body.top): { readonly pages: readonly (readonly Item[])[]; readonly end: number } {
  const rows = placedRows(strips);
  const full = body.bottom - body.top;
  const pages: Item[][] = [[]];
  let y = begun;
  const newPage = (): void => {
    pages.push([]);
    y = body.top;
  };
  for (let i = 0; i < rows.length; ) {
    if (rows[i]!.wide || body.columns.length === 1) {
      const fresh = y === body.top;
      const { height, again } = atTop(rows[i]!.row, fresh);
      const above = fresh ? 0 : rows[i]!.row.above;
      const room = body.bottom - y - above;
      // What was not held may still be alone with its height where all that is held to it is more than a page.
      if (!fresh && (needFrom(rows, i, full) > room + NEAR) && !(rows[i]!.row.held && height <= room + NEAR)) {
        newPage();
        continue;
      }
      y += above;
      for (const row of [...again, rows[i]!.row]) {
        pages.at(-1)!.push(...row.at(body.columns[0]!, y));
        y += row.height;
      }
      i++;
      continue;
    }
    const end = rows.findIndex((row, k) => k > i && row.wide);
    const to = end < 0 ? rows.length : end;
    const above = y === body.top ? 0 : rows[i]!.row.above;
    const room = body.bottom - y - above;
    const band = inColumns(rows, i, to, room, full, body.columns.length);
    if (band.to === i) {
      newPage();
      continue;
    }
    const { columns, high } = band.to === to ? balanced(rows, i, to, room, full, body.columns.length) : band;
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

function placedRows(strips: readonly Strip[]): readonly Placed[] {
  const rows: Placed[] = [];
  for (const strip of strips) {
    const to = rows.length + strip.rows.length;
    strip.rows.forEach((row, i) => rows.push({ row, wide: strip.wide, wholeTo: strip.whole && i === 0 ? to : null }));
  }
  return rows;
}

/** What a row takes at a place: at the top of a column what is said again comes before it. */
const atTop = (row: Row, top: boolean): { readonly height: number; readonly again: readonly Row[] } => {
  const again = top ? (row.again ?? []) : [];
  return { height: row.height + again.reduce((sum, { height }) => sum + height, 0), again };
};

/** @returns how high a row is with all that must not be parted from it */
function needFrom(rows: readonly Placed[], from: number, full: number): number {
  let [high, at] = [0, from];
  do {
    const { row, wholeTo } = rows[at]!;
    const above = at === from ? 0 : row.above;
    const strip = wholeTo === null ? null : heightOfRows(rows.slice(at, wholeTo).map((each) => each.row));
    if (wholeTo !== null && strip !== null && high + above + strip <= full) {
      high += above + strip;
      at = wholeTo;
    } else {
      high += above + row.height;
      at++;
    }
  } while (at < rows.length && rows[at]!.row.held && high <= full);
  return high;
}

interface Band {
  readonly columns: readonly (readonly Row[])[];
  /** Of the highest column. */
  readonly high: number;
  /** Which row comes next. */
  readonly to: number;
}

/** @returns rows in columns of at most this height, as many as fit */
function inColumns(rows: readonly Placed[], from: number, to: number, room: number, full: number, count: number): Band {
  const columns: (readonly Row[])[] = [];
  let [at, high] = [from, 0];
  for (let c = 0; c < count && at < to; c++) {
    const column = inColumn(rows, at, to, room, full);
    columns.push(column.rows);
    high = Math.max(high, column.high);
    at = column.to;
  }
  return { columns, high, to: at };
}

/** @returns one column's rows, none where what comes first needs a higher column and there is one */
function inColumn(rows: readonly Placed[], from: number, to: number, room: number, full: number): { readonly rows: readonly Row[]; readonly high: number; readonly to: number } {
  const kept: Row[] = [];
  let [high, at] = [0, from];
  while (at < to) {
    const { row } = rows[at]!;
    const first = kept.length === 0;
    const { height, again } = atTop(row, first);
    const above = first ? 0 : row.above;
    // Rows that are held came with the ones before them, unless all of it is more than a column.
    const need = row.held && !first ? height : Math.max(height, Math.min(needWithin(rows, at, to, full) + height - row.height, first ? Infinity : full));
    const least = first && room >= full - NEAR ? 0 : need;
    if (high + above + least > room + NEAR) break;
    if (!first && high + above + height > room + NEAR) break;
    kept.push(...again.map((each, i) => (i === 0 ? { ...each, above: 0 } : each)), row);
    high += above + height;
    at++;
  }
  return { rows: kept, high, to: at };
}

const needWithin = (rows: readonly Placed[], at: number, to: number, full: number): number => needFrom(to === rows.length ? rows : rows.slice(0, to), at, full);

/** @returns rows that fit in columns, in columns as low as hold them */
function balanced(rows: readonly Placed[], from: number, to: number, room: number, full: number, count: number): Band {
  let best = inColumns(rows, from, to, room, full, count);
  let [low, top] = [0, best.high];
  for (let k = 0; k < 12 && top - low > 1; k++) {
    const middle = (low + top) / 2;
    const band = inColumns(rows, from, to, middle, full, count);
    if (band.to === to) [best, top] = [band, Math.min(middle, band.high)];
    else low = middle;
  }
  return best;
}
