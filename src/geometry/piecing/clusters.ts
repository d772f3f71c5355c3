import { compareY, type Point } from '../point.ts';
import { paneIndex } from '../patchwork/pane-index.ts';
import type { Field } from './field.ts';
import { rectId } from './rect-id.ts';

/** A rectangle of cells: columns i0 … i1, rows j0 … j1 (edges). */
export interface Cells {
  readonly i0: number;
  readonly j0: number;
  readonly i1: number;
  readonly j1: number;
}

/** A larger rectangle with more slanted stretches than this is no unit that anybody would sew. */
const MOST_SLANTS = 150;

/** Up to how many equal parts a side the block is divided into for the free search. */
const EQUAL_PARTS = 6;

/** At most this many different rectangles are searched freely in one drawing. */
const MOST = 400;

/**
 * Where a search along any drawn line may find what rows and columns cannot: every cell with a slanted seam, the
 * rectangles that hold whole slanted seams without cutting any (slanted seams whose boxes overlap belong together),
 * and the equal parts of the block.
 */
export function freeCandidates(field: Field): readonly Cells[] {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const found = new Map<number, Cells>();
  const add = (cells: Cells): void => {
    const slants = field.slantsIn(cells.i0, cells.j0, cells.i1, cells.j1);
    const single = cells.i1 - cells.i0 === 1 && cells.j1 - cells.j0 === 1;
    if (slants > 0 && (single || slants <= MOST_SLANTS)) found.set(rectId(n, cells.i0, cells.j0, cells.i1, cells.j1), cells);
  };
  const apart = clusters(field);
  apart.forEach(add);
  // Two that face each other across a row or a column may be the two sides of one thing, a tower or a hull.
  for (const a of apart) {
    const right = nearest(apart.filter((b) => a.j0 === b.j0 && a.j1 === b.j1 && a.i1 <= b.i0), (b) => b.i0);
    const below = nearest(apart.filter((b) => a.i0 === b.i0 && a.i1 === b.i1 && a.j1 <= b.j0), (b) => b.j0);
    for (const b of [right, below]) if (b) add(around(a, b));
  }
  for (let k = 1; k <= EQUAL_PARTS; k++) equalParts(field, k).forEach(add);
  const large = [...found.values()].slice(0, MOST);
  for (let j = 0; j < n; j++) for (let i = 0; i < m; i++) add({ i0: i, j0: j, i1: i + 1, j1: j + 1 });
  const single = [...found.values()].filter((c) => c.i1 - c.i0 === 1 && c.j1 - c.j0 === 1);
  return [...large.filter((c) => c.i1 - c.i0 > 1 || c.j1 - c.j0 > 1), ...single];
}

/** Boxes of slanted seams, joined while they overlap. */
function clusters(field: Field): readonly Cells[] {
  let boxes: Cells[] = [];
  for (const { line, drawn } of field.boundaries.values()) {
    if (line.a === 0 || line.b === 0) continue;
    for (const { from, to } of drawn) {
      const [top, bottom] = compareY(from, to) < 0 ? [from, to] : [to, from];
      const [i0, i1] = [before(field.xs, from, 'x'), after(field.xs, to, 'x')];
      const [j0, j1] = [before(field.ys, top, 'y'), after(field.ys, bottom, 'y')];
      boxes.push({ i0, j0, i1, j1 });
    }
  }
  for (;;) {
    const joined: Cells[] = [];
    for (const box of boxes) {
      const at = joined.findIndex((c) => c.i0 < box.i1 && box.i0 < c.i1 && c.j0 < box.j1 && box.j0 < c.j1);
      if (at < 0) joined.push(box);
      else joined[at] = around(joined[at]!, box);
    }
    if (joined.length === boxes.length) return joined;
    boxes = joined;
  }
}

/** @returns the one that begins first */
const nearest = (cells: readonly Cells[], start: (c: Cells) => number): Cells | null =>
  cells.reduce<Cells | null>((first, c) => (first === null || start(c) < start(first) ? c : first), null);

const around = (a: Cells, b: Cells): Cells => ({
  i0: Math.min(a.i0, b.i0),
  j0: Math.min(a.j0, b.j0),
  i1: Math.max(a.i1, b.i1),
  j1: Math.max(a.j1, b.j1),
});

/** @returns the index of the last edge at or before a point */
function before(edges: readonly number[], p: Point, axis: 'x' | 'y'): number {
  return Math.min(edges.length - 2, paneIndex(edges, (p[axis] - (p[axis] % p.w)) / p.w));
}

/** @returns the index of the first edge at or after a point */
function after(edges: readonly number[], p: Point, axis: 'x' | 'y'): number {
  const at = paneIndex(edges, (p[axis] - (p[axis] % p.w)) / p.w);
  return edges[at]! * p.w === p[axis] ? at : at + 1;
}

/** @returns the a by a equal parts of a block, row by row; none where they do not end between cells */
export function equalParts(field: Field, a: number): readonly Cells[] {
  const columns = partEnds(field.xs, a);
  const rows = columns && partEnds(field.ys, a);
  if (!columns || !rows) return [];
  return rows.slice(1).flatMap((j1, j) => columns.slice(1).map((i1, i) => ({ i0: columns[i]!, j0: rows[j]!, i1, j1 })));
}

/** @returns the indices of the edges where equal parts end, the first and the last edge among them; null where one ends between edges */
function partEnds(edges: readonly number[], parts: number): readonly number[] | null {
  const far = edges.at(-1)!;
  const ends: number[] = [];
  for (let i = 0; i < edges.length; i++) if ((edges[i]! * parts) % far === 0) ends.push(i);
  return ends.length === parts + 1 ? ends : null;
}
