import type { Cells } from './clusters.ts';
import type { Field } from './field.ts';
import { keeping } from './keep.ts';
import type { Pictures } from './pictures.ts';
import { rectId } from './rect-id.ts';

/**
 * Finds the part of the block that is most worth making again: the largest total area saved by making one and repeating it.
 * @param pictures of the field, other cloth counting as another picture
 * @returns how every rectangle of cells lies to the places of that part; null when nothing larger than a cell comes again
 */
export function mostRepeated(field: Field, pictures: Pictures): Uint8Array | null {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  let [bestPicture, most] = [-1, 0];
  const area = ({ i0, j0, i1, j1 }: Cells): number => (field.xs[i1]! - field.xs[i0]!) * (field.ys[j1]! - field.ys[j0]!);
  const places = new Map<number, Cells[]>();
  for (let j0 = 0; j0 < n; j0++) {
    for (let i0 = 0; i0 < m; i0++) {
      for (let j1 = j0 + 1; j1 <= n; j1++) {
        for (let i1 = i0 + 1; i1 <= m; i1++) {
          const cells = { i0, j0, i1, j1 };
          // What is drawn right through one cloth is no unit.
          if (field.edgesIn(i0, j0, i1, j1) + field.slantsIn(i0, j0, i1, j1) === 0) continue;
          const picture = pictures.contents[rectId(n, i0, j0, i1, j1)]!;
          const count = pictures.counts[picture]!;
          if (count < 2) continue;
          const saved = (count - 1) * area(cells);
          if (saved > most) [bestPicture, most] = [picture, saved];
          if (picture === bestPicture) places.set(picture, [...(places.get(picture) ?? []), cells]);
        }
      }
    }
  }
  const apart: Cells[] = [];
  for (const cells of places.get(bestPicture) ?? []) {
    if (apart.every((other) => cells.i1 <= other.i0 || other.i1 <= cells.i0 || cells.j1 <= other.j0 || other.j1 <= cells.j0)) apart.push(cells);
  }
  return apart.length > 1 ? keeping(field, apart) : null;
}
