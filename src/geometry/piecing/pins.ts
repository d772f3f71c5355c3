import type { Pin } from '../patchwork/drawing.ts';
import type { Cells } from './clusters.ts';
import type { Field } from './field.ts';
import { ACROSS, AROUND, FREE, INSIDE, JOINED, KEPT, keeping } from './keep.ts';
import { rectId } from './rect-id.ts';

/** Why a pin is not honoured. */
export type Refusal =
  /** It does not lie on the block as a seam right across, or as a rectangle. */
  | 'no place'
  /** It cuts into the unit of an earlier pin. */
  | 'crosses'
  /** A whole patch would be divided, or no way to sew the rest is found. */
  | 'locks';

/** What was made of the pins of a drawing. */
export interface Pinned {
  /** How every rectangle of cells lies to the parts that the honoured pins set apart; null: there are none. */
  readonly parts: Uint8Array | null;
  /** By index of the drawing's pin. */
  readonly refused: readonly { readonly pin: number; readonly why: Refusal }[];
}

/**
 * Takes pins one after another as long as the block can still be sewn.
 * @param sewable tells whether any way is left when these parts are to be made by themselves
 */
export function pinned(field: Field, pins: readonly Pin[], sewable: (parts: Uint8Array) => boolean): Pinned {
  let parts: Uint8Array | null = null;
  const refused: { pin: number; why: Refusal }[] = [];
  pins.forEach((pin, index) => {
    const asked = partsOf(field, pin);
    if (!asked) {
      refused.push({ pin: index, why: 'no place' });
      return;
    }
    const marks = keeping(field, asked);
    const both: Uint8Array = parts === null ? marks : together(parts, marks);
    if (crosses(field, asked, both)) refused.push({ pin: index, why: 'crosses' });
    else if (!sewable(both)) refused.push({ pin: index, why: 'locks' });
    else parts = both;
  });
  return { parts, refused };
}

/** @returns the parts a pin sets apart, as cells; null when it has no place on the block */
function partsOf({ xs, ys }: Field, { pin, from, to }: Pin): readonly Cells[] | null {
  const [m, n] = [xs.length - 1, ys.length - 1];
  const [i0, i1] = [xs.indexOf(Math.min(from[0], to[0])), xs.indexOf(Math.max(from[0], to[0]))];
  const [j0, j1] = [ys.indexOf(Math.min(from[1], to[1])), ys.indexOf(Math.max(from[1], to[1]))];
  if (i0 < 0 || i1 < 0 || j0 < 0 || j1 < 0) return null;
  if (pin === 'one unit') {
    const whole = i0 === 0 && j0 === 0 && i1 === m && j1 === n;
    return i0 < i1 && j0 < j1 && !whole ? [{ i0, j0, i1, j1 }] : null;
  }
  if (i0 === i1 && j0 === 0 && j1 === n && i0 > 0 && i0 < m) return [{ i0: 0, j0: 0, i1: i0, j1: n }, { i0, j0: 0, i1: m, j1: n }];
  if (j0 === j1 && i0 === 0 && i1 === m && j0 > 0 && j0 < n) return [{ i0: 0, j0: 0, i1: m, j1: j0 }, { i0: 0, j0, i1: m, j1: n }];
  return null;
}

/** @returns whether a part asked for can no longer be made by itself because of others */
function crosses({ ys }: Field, asked: readonly Cells[], marks: Uint8Array): boolean {
  return asked.some(({ i0, j0, i1, j1 }) => {
    const mark = marks[rectId(ys.length - 1, i0, j0, i1, j1)]!;
    return mark !== KEPT && mark !== JOINED;
  });
}

/**
 * @returns how rectangles lie to two sets of parts at once, of which one may lie inside the other: what is a part of
 * either is finished by itself, and what is put together from parts is no leaf
 */
export function together(a: Uint8Array, b: Uint8Array): Uint8Array {
  return a.map((one, id) => {
    const other = b[id]!;
    if (one === ACROSS || other === ACROSS) return ACROSS;
    const made = one === KEPT || one === JOINED || other === KEPT || other === JOINED;
    const around = one === AROUND || one === JOINED || other === AROUND || other === JOINED;
    if (made) return around ? JOINED : KEPT;
    if (around) return AROUND;
    return one === INSIDE || other === INSIDE ? INSIDE : FREE;
  });
}
