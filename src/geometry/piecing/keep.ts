import type { Cells } from './clusters.ts';
import type { Field } from './field.ts';
import { rectCount, rectId } from './rect-id.ts';

/**
 * How a rectangle of cells lies to parts of the block that are to be made by themselves: apart from all, inside one,
 * exactly one, round one or more, across the edge of one; and exactly one that is put together from such parts.
 */
export const [FREE, INSIDE, KEPT, AROUND, ACROSS, JOINED] = [0, 1, 2, 3, 4, 5] as const;

/**
 * Marks how every rectangle of cells lies to parts of the block that are each to be made as one, disjoint from each other.
 * @returns by rectId: FREE of them, INSIDE one, exactly one that is KEPT, AROUND one or more, or ACROSS the edge of one
 */
export function keeping(field: Field, parts: readonly Cells[]): Uint8Array {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const marks = new Uint8Array(rectCount(field));
  const owner = new Array<number>(m * n).fill(-1);
  // Running sums: cells that belong to a part, and cell edges that lie inside one.
  const owned = new Array<number>((m + 1) * (n + 1)).fill(0);
  const upright = new Array<number>((m + 1) * (n + 1)).fill(0);
  const level = new Array<number>((m + 1) * (n + 1)).fill(0);
  parts.forEach(({ i0, j0, i1, j1 }, part) => {
    for (let j = j0; j < j1; j++) owner.fill(part, i0 + j * m, i1 + j * m);
  });
  const ownerAt = (i: number, j: number): number => (i < 0 || j < 0 || i >= m || j >= n ? -1 : owner[i + j * m]!);
  const s = m + 1;
  for (let j = 0; j <= n; j++) {
    for (let i = 0; i <= m; i++) {
      const own = ownerAt(i, j);
      // upright: along the edge i downward; level: along the edge j to the right.
      if (j < n) upright[i + (j + 1) * s] = upright[i + j * s]! + (own >= 0 && own === ownerAt(i - 1, j) ? 1 : 0);
      if (i < m) level[i + 1 + j * s] = level[i + j * s]! + (own >= 0 && own === ownerAt(i, j - 1) ? 1 : 0);
      if (i < m && j < n) owned[i + 1 + (j + 1) * s] = (own >= 0 ? 1 : 0) + owned[i + (j + 1) * s]! + owned[i + 1 + j * s]! - owned[i + j * s]!;
    }
  }
  for (let i1 = 1; i1 <= m; i1++) {
    for (let i0 = 0; i0 < i1; i0++) {
      for (let j1 = 1; j1 <= n; j1++) {
        for (let j0 = 0; j0 < j1; j0++) {
          const own = ownerAt(i0, j0);
          const id = rectId(n, i0, j0, i1, j1);
          if (own >= 0 && own === ownerAt(i1 - 1, j1 - 1)) {
            const part = parts[own]!;
            const all = part.i0 === i0 && part.j0 === j0 && part.i1 === i1 && part.j1 === j1;
            marks[id] = all ? KEPT : INSIDE;
            continue;
          }
          const crossed =
            upright[i0 + j1 * s]! > upright[i0 + j0 * s]! ||
            upright[i1 + j1 * s]! > upright[i1 + j0 * s]! ||
            level[i1 + j0 * s]! > level[i0 + j0 * s]! ||
            level[i1 + j1 * s]! > level[i0 + j1 * s]!;
          const holds = owned[i1 + j1 * s]! - owned[i0 + j1 * s]! - owned[i1 + j0 * s]! + owned[i0 + j0 * s]! > 0;
          marks[id] = crossed ? ACROSS : holds ? AROUND : FREE;
        }
      }
    }
  }
  return marks;
}
