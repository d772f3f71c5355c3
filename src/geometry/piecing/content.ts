import { clothAt, cutAtLevels, cellOf, type Field } from './field.ts';

/**
 * Which rectangles of cells show the same picture, up to quarter turns: rectangles with equal numbers do. Unequal
 * pictures get unequal numbers but for a chance in 2^50; a wrong guess would only make a plan less natural, never wrong.
 */
export type ContentOf = (i0: number, j0: number, i1: number, j1: number) => number;

/** 32-bit mixing; equal input, equal output. */
function mixed(seed: number, values: readonly number[]): number {
  let h = seed;
  for (const v of values) {
    h = Math.imul(h ^ v, 0x9e3779b1);
    h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  }
  return (h ^ (h >>> 13)) | 0;
}

/** A slanted part in its cell: ends relative to the cell's top-left corner as [x, y, w], cloth to the left and right going from → to. */
interface Mark {
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  readonly right: number;
  readonly left: number;
}

/** The number of one cell's picture after `turn` quarter turns clockwise. */
function cellNumber(marks: readonly Mark[], cloth: number, width: number, height: number, turn: number, seed: number): number {
  let sum = mixed(seed, turn % 2 === 0 ? [cloth, width, height] : [cloth, height, width]);
  for (const { from, to, right, left } of marks) {
    const [p, q] = [spin(from, width, height, turn), spin(to, width, height, turn)];
    // Either way round is the same mark: both directions are added.
    sum = (sum + mixed(seed, [...p, ...q, right, left]) + mixed(seed, [...q, ...p, left, right])) | 0;
  }
  return sum;
}

function spin([x, y, w]: readonly [number, number, number], width: number, height: number, turn: number): readonly [number, number, number] {
  if (turn === 0) return [x, y, w];
  if (turn === 1) return [height * w - y, x, w];
  if (turn === 2) return [width * w - x, height * w - y, w];
  return [y, width * w - x, w];
}

/** The marks of every cell. */
function marksOf(field: Field, clothNumber: (fabric: string) => number): readonly (readonly Mark[])[] {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const marks: Mark[][] = Array.from({ length: m * n }, () => []);
  for (const { line, drawn, between } of field.boundaries.values()) {
    if (line.a === 0 || line.b === 0) continue;
    const seams = drawn.map((s) => ({ ...s, front: '', back: '' }));
    for (const stretch of [...between, ...seams]) {
      for (const { from, to } of cutAtLevels(line, stretch, field.xs, field.ys)) {
        const [i, j] = [cellOf(field.xs, from, to, 'x'), cellOf(field.ys, from, to, 'y')];
        const [x0, y0] = [field.xs[i]!, field.ys[j]!];
        // Going from left to right (or down) along a line of positive normal, its front lies to the left when b < 0.
        const frontRight = line.b > 0;
        const [front, back] = [clothNumber(stretch.front), clothNumber(stretch.back)];
        marks[i + j * m]!.push({
          from: [from.x - x0 * from.w, from.y - y0 * from.w, from.w],
          to: [to.x - x0 * to.w, to.y - y0 * to.w, to.w],
          right: frontRight ? front : back,
          left: frontRight ? back : front,
        });
      }
    }
  }
  return marks;
}

/** @returns the numbering of a field's rectangles by what they show */
export function contentOf(field: Field): ContentOf {
  const { xs, ys } = field;
  const [m, n] = [xs.length - 1, ys.length - 1];
  const [width, height] = [xs[m]!, ys[n]!];
  const cloths = new Map<string, number>();
  const clothNumber = (fabric: string): number => {
    let number = cloths.get(fabric);
    if (number === undefined) cloths.set(fabric, (number = cloths.size + 1));
    return number;
  };
  const marks = marksOf(field, clothNumber);
  const cloth = marks.map((own, cell) => (own.length === 0 ? clothNumber(clothAt(field, cell % m, (cell - (cell % m)) / m).fabric) : 0));
  const far = Math.max(width, height);
  const halves = [
    { p: 0x01000193, q: 0x27d4eb2f, seed: 17 },
    { p: 0x165667b1, q: 0x3c6ef35f, seed: 91 },
  ].map(({ p, q, seed }) => {
    const [px, qy] = [powers(p, far), powers(q, far)];
    const tables = [0, 1, 2, 3].map((turn) => {
      const table = new Int32Array((m + 1) * (n + 1));
      for (let j = 0; j < n; j++) {
        for (let i = 0; i < m; i++) {
          const [x0, y0, x1, y1] = [xs[i]!, ys[j]!, xs[i + 1]!, ys[j + 1]!];
          const [u, v] = turn === 0 ? [x0, y0] : turn === 1 ? [height - y1, x0] : turn === 2 ? [width - x1, height - y1] : [y0, width - x1];
          const own = cellNumber(marks[i + j * m]!, cloth[i + j * m]!, x1 - x0, y1 - y0, turn, seed);
          const term = Math.imul(own, Math.imul(px[u]!, qy[v]!));
          const at = (j + 1) * (m + 1) + i + 1;
          table[at] = (term + table[at - 1]! + table[at - m - 1]! - table[at - m - 2]!) | 0;
        }
      }
      return table;
    });
    return (i0: number, j0: number, i1: number, j1: number, turn: number): number => {
      const t = tables[turn]!;
      const s = m + 1;
      const sum = (t[j1 * s + i1]! - t[j0 * s + i1]! - t[j1 * s + i0]! + t[j0 * s + i0]!) | 0;
      const [x0, y0, x1, y1] = [xs[i0]!, ys[j0]!, xs[i1]!, ys[j1]!];
      const [u, v] = turn === 0 ? [x0, y0] : turn === 1 ? [height - y1, x0] : turn === 2 ? [width - x1, height - y1] : [y0, width - x1];
      return Math.imul(sum, Math.imul(px[far - u]!, qy[far - v]!));
    };
  });
  return (i0, j0, i1, j1) => {
    let least = Infinity;
    for (let turn = 0; turn < 4; turn++) {
      const number = (halves[0]!(i0, j0, i1, j1, turn) >>> 0) * 0x200000 + (halves[1]!(i0, j0, i1, j1, turn) & 0x1fffff);
      if (number < least) least = number;
    }
    return least;
  };
}

function powers(base: number, most: number): Int32Array {
  const table = new Int32Array(most + 1);
  table[0] = 1;
  for (let i = 1; i <= most; i++) table[i] = Math.imul(table[i - 1]!, base);
  return table;
}
