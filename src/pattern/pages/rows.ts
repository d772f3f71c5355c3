import type { Item } from './page.ts';

export type Held = 'always' | 'if it fits' | false;

/** Something of full column width that is not parted: a line of a paragraph, a row of a table, pictures side by side. */
export interface Row {
  readonly height: number;
  /** Room above it, where something is above. */
  readonly above: number;
  /** It stays with the row before it: always, as what follows a heading does; or where a column holds all that is held together. */
  readonly held: Held;
  /** Said again above it where it begins a column: a table's heads. */
  readonly again?: readonly Row[];
  /** Where it may be a little lower, so that it comes onto a page with what it belongs to. */
  readonly lower?: { readonly least: number; readonly to: (height: number) => Row };
  /** @returns its items, with its upper left corner here */
  readonly at: (x: number, y: number) => readonly Item[];
}

/** Rows that follow one another. */
export interface Strip {
  readonly rows: readonly Row[];
  /** Right across the page, though it has columns. */
  readonly wide: boolean;
  /** In one column as long as one holds it. */
  readonly whole: boolean;
}

/** @returns how high rows are under one another at the top of a column */
export const heightOfRows = (rows: readonly Row[]): number =>
  rows.reduce((sum, { height, above }, i) => sum + height + (i > 0 ? above : 0), 0);

/** @returns the items of rows under one another, from this corner on */
export function stackedItems(rows: readonly Row[], x: number, top: number): readonly Item[] {
  let y = top;
  return rows.flatMap((row, i) => {
    if (i > 0) y += row.above;
    const items = row.at(x, y);
    y += row.height;
    return items;
  });
}

/** @returns rows with other room above the first */
export const withAbove = (rows: readonly Row[], above: number): readonly Row[] => rows.map((row, i) => (i === 0 ? { ...row, above } : row));

/** @returns rows of which the first stays with what is before it */
export const heldTogether = (rows: readonly Row[], held: Held = 'always'): readonly Row[] =>
  rows.map((row, i) => (i === 0 ? { ...row, held } : row));
