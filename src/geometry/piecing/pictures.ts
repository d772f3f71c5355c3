import type { ContentOf, Looks } from './content.ts';
import type { Field } from './field.ts';
import type { Contents } from './grid-search.ts';
import { rectCount, rectId } from './rect-id.ts';

/** What the rectangles of cells show. */
export interface Pictures {
  /** Equal for equal seams up to quarter turns, numbered from 0, by rectId. */
  readonly contents: Contents;
  /** How many of each can lie side by side. */
  readonly counts: readonly number[];
  /** Equal for rectangles that show the same seams the same way up. */
  readonly upright: ContentOf;
}

/** Above this many rectangles of cells all are taken to be different. */
const MOST = 400_000;

/**
 * @param looks tells rectangles apart, with or without regard to cloth
 * @returns what a field's rectangles show
 */
export function picturesOf(field: Field, looks: Looks): Pictures {
  const { content, upright } = looks;
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const contents = new Int32Array(rectCount(field));
  if (contents.length > MOST) return { contents, counts: [1], upright: (i0, j0, i1, j1) => rectId(n, i0, j0, i1, j1) };
  const numberOf = numbering(contents.length);
  let count = 0;
  for (let i1 = 1; i1 <= m; i1++) {
    for (let i0 = 0; i0 < i1; i0++) {
      for (let j1 = 1; j1 <= n; j1++) {
        for (let j0 = 0; j0 < j1; j0++) {
          const number = numberOf(content(i0, j0, i1, j1));
          if (number === count) count++;
          contents[rectId(n, i0, j0, i1, j1)] = number;
        }
      }
    }
  }
  return { contents, counts: sideBySide(field, contents, count), upright };
}

/** @returns numbers for at most so many pictures: 0, 1, … as they come, the same ones for the same */
function numbering(most: number): (picture: number) => number {
  let size = 16;
  while (size < 2 * most) size *= 2;
  const pictures = new Float64Array(size).fill(-1);
  const numbers = new Int32Array(size);
  let count = 0;
  return (picture) => {
    // A picture's upper half is as good as random.
    let at = (picture / 0x200000) & (size - 1);
    for (; pictures[at] !== picture; at = (at + 1) & (size - 1)) {
      if (pictures[at]! >= 0) continue;
      pictures[at] = picture;
      numbers[at] = count++;
      break;
    }
    return numbers[at]!;
  };
}

/**
 * @param kindOf a number for each rectangle of cells, by rectId; −1 for none
 * @returns of each number, how many can lie side by side in the block (taken greedily from the top left)
 */
export function sideBySide(field: Field, kindOf: ArrayLike<number>, kinds: number): readonly number[] {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const counts = new Array<number>(kinds).fill(0);
  // Rectangles of one kind one after another, from the top left: as a linked list in reverse order of reading.
  const last = new Int32Array(kinds).fill(-1);
  const before = new Int32Array(kindOf.length).fill(-1);
  const corners = new Uint8Array(kindOf.length * 4);
  for (let j0 = n - 1; j0 >= 0; j0--) {
    for (let i0 = m - 1; i0 >= 0; i0--) {
      for (let j1 = n; j1 > j0; j1--) {
        for (let i1 = m; i1 > i0; i1--) {
          const id = rectId(n, i0, j0, i1, j1);
          const kind = kindOf[id]!;
          if (kind < 0) continue;
          corners[id * 4] = i0;
          corners[id * 4 + 1] = j0;
          corners[id * 4 + 2] = i1;
          corners[id * 4 + 3] = j1;
          before[id] = last[kind]!;
          last[kind] = id;
        }
      }
    }
  }
  const takenBy = new Int32Array(m * n).fill(-1);
  for (let kind = 0; kind < kinds; kind++) {
    if (last[kind]! >= 0 && before[last[kind]!]! < 0) {
      counts[kind] = 1;
      continue;
    }
    for (let id = last[kind]!; id >= 0; id = before[id]!) {
      const [i0, j0, i1, j1] = [corners[id * 4]!, corners[id * 4 + 1]!, corners[id * 4 + 2]!, corners[id * 4 + 3]!];
      if (claim(takenBy, kind, m, i0, j0, i1, j1)) counts[kind]!++;
    }
  }
  return counts;
}

/** Takes a rectangle of cells for a kind when none of it is taken by that kind. */
function claim(takenBy: Int32Array, kind: number, across: number, i0: number, j0: number, i1: number, j1: number): boolean {
  for (let j = j0; j < j1; j++) for (let i = i0; i < i1; i++) if (takenBy[i + j * across] === kind) return false;
  for (let j = j0; j < j1; j++) takenBy.fill(kind, i0 + j * across, i1 + j * across);
  return true;
}
