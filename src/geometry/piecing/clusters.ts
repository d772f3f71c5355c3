import { compareY, type Point } from '../point.ts';
import { paneIndex } from '../patchwork/patchwork.ts';
import type { Field } from './field.ts';

/** A rectangle of cells: columns i0 … i1, rows j0 … j1 (edges). */
export interface Cells {
  readonly i0: number;
  readonly j0: number;
  readonly i1: number;
  readonly j1: number;
}

/** At most this many different rectangles are searched freely in one drawing. */
const MOST = 400;

/**
 * Where a search along any drawn line may find what rows and columns cannot: every cell with a slanted seam, the
 * rectangles that hold whole slanted seams without cutting any (slanted seams whose boxes overlap belong together),
 * and the equal parts of the block.
 */
export function freeCandidates(field: Field): readonly Cells[] {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const found = new Map<string, Cells>();
  const add = (cells: Cells): void => {
    if (field.slantsIn(cells.i0, cells.j0, cells.i1, cells.j1) > 0) found.set(`${cells.i0} ${cells.j0} ${cells.i1} ${cells.j1}`, cells);
  };
  for (const cluster of clusters(field)) add(cluster);
  for (const part of equalParts(field)) add(part);
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

/** The parts of the block cut into k by k equal ones, k from 1 to 6, where cells allow. */
function equalParts(field: Field): readonly Cells[] {
  const parts: Cells[] = [];
  const { width, height } = field.patchwork;
  for (let k = 1; k <= 6; k++) {
    if (width % k !== 0 || height % k !== 0) continue;
    const columns = Array.from({ length: k + 1 }, (_, i) => field.xs.indexOf((i * width) / k));
    const rows = Array.from({ length: k + 1 }, (_, j) => field.ys.indexOf((j * height) / k));
    if (columns.includes(-1) || rows.includes(-1)) continue;
    for (let j = 0; j < k; j++) {
      for (let i = 0; i < k; i++) parts.push({ i0: columns[i]!, j0: rows[j]!, i1: columns[i + 1]!, j1: rows[j + 1]! });
    }
  }
  return parts;
}
