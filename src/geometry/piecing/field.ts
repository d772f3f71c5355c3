import { compareAlong, compareX, compareY, meet, type Line, type Point } from '../point.ts';
import type { Boundary } from '../patchwork/boundaries.ts';
import { merged, type Stretch } from '../patchwork/stretches.ts';
import { paneIndex } from '../patchwork/pane-index.ts';
import type { Label, Patchwork } from '../patchwork/patchwork.ts';
import type { Rect } from './catalogue.ts';

/** A stretch with the line that carries it. */
export interface Slant extends Stretch {
  readonly line: Line;
}

/**
 * The rectangles that rows and columns can cut a drawing into: cells between the levels at which something happens.
 * Everything is counted once in running sums, so that what lies inside any rectangle of cells is known in constant time.
 */
export interface Field {
  readonly patchwork: Patchwork;
  readonly boundaries: ReadonlyMap<string, Boundary>;
  /** Cell edges in lattice steps, block edges included. */
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Slanted stretches inside each cell, at i + j · (xs.length − 1). */
  readonly slants: readonly (readonly Slant[])[];
  /** Slanted stretches in the cells of columns i0 … i1 and rows j0 … j1 (edges). */
  slantsIn(i0: number, j0: number, i1: number, j1: number): number;
  /** Drawn cell edges strictly inside the rectangle, upright and level together. */
  edgesIn(i0: number, j0: number, i1: number, j1: number): number;
  /** Whether an upright cut at xs[i] from ys[j0] to ys[j1] would divide a whole patch. */
  uprightLocked(i: number, j0: number, j1: number): boolean;
  levelLocked(j: number, i0: number, i1: number): boolean;
  /** How many of the cell edges along a cut are drawn over their full length. */
  uprightDrawn(i: number, j0: number, j1: number): number;
  levelDrawn(j: number, i0: number, i1: number): number;
  /** Whether anything is drawn along a cut. */
  uprightTouched(i: number, j0: number, j1: number): boolean;
  levelTouched(j: number, i0: number, i1: number): boolean;
}

/** A table of running sums over cells (i, j). */
class Sums {
  private readonly table: number[];
  private readonly stride: number;
  constructor(columns: number, rows: number, count: (i: number, j: number) => number) {
    this.stride = columns + 1;
    this.table = new Array<number>((columns + 1) * (rows + 1)).fill(0);
    for (let j = 0; j < rows; j++) {
      let row = 0;
      for (let i = 0; i < columns; i++) {
        row += count(i, j);
        this.table[(j + 1) * this.stride + i + 1] = this.table[j * this.stride + i + 1]! + row;
      }
    }
  }
  /** @returns the sum over i0 ≤ i < i1, j0 ≤ j < j1; 0 when empty */
  over(i0: number, j0: number, i1: number, j1: number): number {
    if (i1 <= i0 || j1 <= j0) return 0;
    const t = this.table;
    const s = this.stride;
    return t[j1 * s + i1]! - t[j0 * s + i1]! - t[j1 * s + i0]! + t[j0 * s + i0]!;
  }
}

/** @returns the levels of one axis at which a row or column could sensibly end */
function levels(patchwork: Patchwork, boundaries: ReadonlyMap<string, Boundary>, upright: boolean): readonly number[] {
  const far = upright ? patchwork.width : patchwork.height;
  const gridLines = new Set(upright ? patchwork.drawing.columns : patchwork.drawing.rows);
  const found = new Set([0, far]);
  for (const { line, drawn, between } of boundaries.values()) {
    if ((upright ? line.b : line.a) === 0) {
      if (drawn.length > 0) found.add(line.c);
      continue;
    }
    // Where the cloths beside a line change, another line meets or crosses it.
    for (const { from, to } of [...drawn, ...between]) {
      for (const p of [from, to]) {
        const n = upright ? p.x : p.y;
        if (n % p.w === 0 && gridLines.has(n / p.w)) found.add(n / p.w);
      }
    }
  }
  for (const { from, to } of patchwork.drawing.pins ?? []) {
    for (const p of [from, to]) found.add(upright ? p[0] : p[1]);
  }
  // Four blocks may meet at the middle with nothing drawn there; in a block of thirds the middle is only in the way.
  if (gridLines.has(far / 2) && !(found.has(far / 3) && found.has((2 * far) / 3))) found.add(far / 2);
  return [...found].sort((a, b) => a - b);
}

/** @returns the field of a patchwork */
export function fieldOf(patchwork: Patchwork, boundaries: ReadonlyMap<string, Boundary>): Field {
  const xs = levels(patchwork, boundaries, true);
  const ys = levels(patchwork, boundaries, false);
  const [m, n] = [xs.length - 1, ys.length - 1];
  const slants: Slant[][] = Array.from({ length: m * n }, () => []);
  for (const { line, drawn } of boundaries.values()) {
    if (line.a === 0 || line.b === 0) continue;
    for (const stretch of drawn) {
      for (const part of cutAtLevels(line, stretch, xs, ys)) {
        const i = cellOf(xs, part.from, part.to, 'x');
        const j = cellOf(ys, part.from, part.to, 'y');
        slants[i + j * m]!.push({ from: part.from, to: part.to, line });
      }
    }
  }
  const slantSums = new Sums(m, n, (i, j) => slants[i + j * m]!.length);
  const [uprights, levelLines] = [xs.map((x) => boundaries.get(`1,0,${x}`)), ys.map((y) => boundaries.get(`0,1,${y}`))];
  // What is drawn (2: all along, 1: in part) on the upright edge i of row j, and on the level edge j of column i.
  const edge = (stretches: readonly Stretch[] | undefined, from: Point, to: Point): number => {
    let touched = 0;
    if (stretches === undefined) return touched;
    for (const s of stretches) {
      if (compareAlong(s.from, from) <= 0 && compareAlong(s.to, to) >= 0) return 2;
      if (compareAlong(s.from, to) < 0 && compareAlong(s.to, from) > 0) touched = 1;
    }
    return touched;
  };
  const upright = (which: 'drawn' | 'locked') =>
    grid(m + 1, n, (i, j) => edge(uprights[i]?.[which], { x: xs[i]!, y: ys[j]!, w: 1 }, { x: xs[i]!, y: ys[j + 1]!, w: 1 }));
  const level = (which: 'drawn' | 'locked') =>
    grid(m, n + 1, (i, j) => edge(levelLines[j]?.[which], { x: xs[i]!, y: ys[j]!, w: 1 }, { x: xs[i + 1]!, y: ys[j]!, w: 1 }));
  const [uprightDrawn, levelDrawn] = [upright('drawn'), level('drawn')];
  const drawnUpright = new Sums(m + 1, n, (i, j) => (uprightDrawn[i + j * (m + 1)]! > 0 ? 1 : 0));
  const drawnLevel = new Sums(m, n + 1, (i, j) => (levelDrawn[i + j * m]! > 0 ? 1 : 0));
  const fullUpright = new Sums(m + 1, n, (i, j) => (uprightDrawn[i + j * (m + 1)] === 2 ? 1 : 0));
  const fullLevel = new Sums(m, n + 1, (i, j) => (levelDrawn[i + j * m] === 2 ? 1 : 0));
  const locked = (columns: number, rows: number, edges: (which: 'locked') => Uint8Array): Sums | null => {
    if (!patchwork.anyWhole) return null;
    const table = edges('locked');
    return new Sums(columns, rows, (i, j) => (table[i + j * columns]! > 0 ? 1 : 0));
  };
  const [lockUpright, lockLevel] = [locked(m + 1, n, upright), locked(m, n + 1, level)];
  return {
    patchwork,
    boundaries,
    xs,
    ys,
    slants,
    slantsIn: (i0, j0, i1, j1) => slantSums.over(i0, j0, i1, j1),
    edgesIn: (i0, j0, i1, j1) => drawnUpright.over(i0 + 1, j0, i1, j1) + drawnLevel.over(i0, j0 + 1, i1, j1),
    uprightLocked: (i, j0, j1) => lockUpright !== null && lockUpright.over(i, j0, i + 1, j1) > 0,
    levelLocked: (j, i0, i1) => lockLevel !== null && lockLevel.over(i0, j, i1, j + 1) > 0,
    uprightDrawn: (i, j0, j1) => fullUpright.over(i, j0, i + 1, j1),
    levelDrawn: (j, i0, i1) => fullLevel.over(i0, j, i1, j + 1),
    uprightTouched: (i, j0, j1) => drawnUpright.over(i, j0, i + 1, j1) > 0,
    levelTouched: (j, i0, i1) => drawnLevel.over(i0, j, i1, j + 1) > 0,
  };
}

function grid(columns: number, rows: number, value: (i: number, j: number) => number): Uint8Array {
  const table = new Uint8Array(columns * rows);
  for (let j = 0; j < rows; j++) for (let i = 0; i < columns; i++) table[i + j * columns] = value(i, j);
  return table;
}

/** Cuts a slanted stretch wherever it crosses a cell edge. */
function cutAtLevels(line: Line, stretch: Stretch, xs: readonly number[], ys: readonly number[]): readonly Stretch[] {
  const points = [stretch.from, stretch.to];
  for (const x of xs) {
    const level = { x, y: 0, w: 1 };
    if (compareX(stretch.from, level) < 0 && compareX(level, stretch.to) < 0) points.push(meet(line, { a: 1, b: 0, c: x }));
  }
  const [top, bottom] = compareY(stretch.from, stretch.to) < 0 ? [stretch.from, stretch.to] : [stretch.to, stretch.from];
  for (const y of ys) {
    const level = { x: 0, y, w: 1 };
    if (compareY(top, level) < 0 && compareY(level, bottom) < 0) points.push(meet(line, { a: 0, b: 1, c: y }));
  }
  points.sort(compareAlong);
  const parts: Stretch[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    if (compareAlong(points[i]!, points[i + 1]!) < 0) parts.push({ from: points[i]!, to: points[i + 1]! });
  }
  return parts;
}

/** @returns the cell along one axis that holds a slanted part which crosses no cell edge */
function cellOf(edges: readonly number[], p: Point, q: Point, axis: 'x' | 'y'): number {
  const least = (axis === 'x' ? compareX(p, q) : compareY(p, q)) <= 0 ? p : q;
  const [n, d] = [least[axis], least.w];
  return Math.min(edges.length - 2, paneIndex(edges, (n - (n % d)) / d));
}

/** @returns the rectangle of cells i0 … i1 by j0 … j1 in lattice steps */
export const rectOf = (field: Field, i0: number, j0: number, i1: number, j1: number): Rect => ({
  x0: field.xs[i0]!,
  y0: field.ys[j0]!,
  x1: field.xs[i1]!,
  y1: field.ys[j1]!,
});

/** @returns the maximal slanted stretches inside a rectangle of cells */
export function slantsInside(field: Field, i0: number, j0: number, i1: number, j1: number): readonly Slant[] {
  const byLine = new Map<Line, Stretch[]>();
  const m = field.xs.length - 1;
  for (let j = j0; j < j1; j++) {
    for (let i = i0; i < i1; i++) {
      for (const s of field.slants[i + j * m]!) {
        const list = byLine.get(s.line);
        if (list) list.push(s);
        else byLine.set(s.line, [s]);
      }
    }
  }
  return [...byLine].flatMap(([line, list]) => (list.length === 1 ? list : merged(list)).map(({ from, to }) => ({ from, to, line })));
}

/** @returns the boundaries that have something drawn strictly inside a rectangle of cells, and perhaps some that do not, in their order */
export function boundariesIn(field: Field, i0: number, j0: number, i1: number, j1: number): readonly Boundary[] {
  const { x0, y0, x1, y1 } = rectOf(field, i0, j0, i1, j1);
  const slanted = new Set<Line>();
  for (let j = j0; j < j1; j++) {
    for (let i = i0; i < i1; i++) for (const { line } of field.slants[i + j * (field.xs.length - 1)]!) slanted.add(line);
  }
  return [...field.boundaries.values()].filter(({ line }) => {
    if (line.b === 0) return x0 < line.c && line.c < x1;
    return line.a === 0 ? y0 < line.c && line.c < y1 : slanted.has(line);
  });
}

/** @returns the label of a rectangle of cells known to be one piece of cloth */
export function clothAt(field: Field, i: number, j: number): Label {
  const { patchwork, xs, ys } = field;
  const column = paneIndex(patchwork.columns, xs[i]!);
  const row = paneIndex(patchwork.rows, ys[j]!);
  return patchwork.panes[column + row * (patchwork.columns.length - 1)]![0]!.label;
}

/** @returns the fabrics that show in one cell, each as often as it has atoms there */
export function clothsIn(field: Field, i: number, j: number): readonly string[] {
  const { patchwork, xs, ys } = field;
  const [first, last] = [paneIndex(patchwork.columns, xs[i]!), paneIndex(patchwork.columns, xs[i + 1]!)];
  const [top, bottom] = [paneIndex(patchwork.rows, ys[j]!), paneIndex(patchwork.rows, ys[j + 1]!)];
  const found: string[] = [];
  for (let row = top; row < bottom; row++) {
    for (let column = first; column < last; column++) {
      for (const atom of patchwork.panes[column + row * (patchwork.columns.length - 1)]!) found.push(atom.label.fabric);
    }
  }
  return found;
}
