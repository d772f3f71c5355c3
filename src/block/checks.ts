import type { Pin } from '../geometry/patchwork/drawing.ts';
import { formatLength } from '../measure/lengths.ts';
import type { Problem } from '../measure/problem.ts';
import { rational } from '../measure/rational.ts';
import type { Block, DrawnSeam, Fabric, LatticePoint, UnitMethod } from './block.ts';
import { isWellFormed, MAX_NAME, MAX_POINTS, PLAIN_TEXT } from './limits.ts';
import { outlineFault, type Outline } from './outline.ts';
import * as say from './problems.ts';

/*
 * What every block obeys, part by part. Each check returns null, or the first problem it finds.
 */

export type Checked = Problem | null;

/** The lattice that points must lie on. */
export type Ground = Pick<Block, 'grid' | 'denominator'>;

/** @param what the words a sentence begins with: "The block's name" */
export function checkText(what: string, text: string): Checked {
  if (text.length > MAX_NAME) return say.nameTooLong(what, text.length);
  return PLAIN_TEXT.test(text) && isWellFormed(text) ? null : say.nameUnprintable(what);
}

/** @param where what is to be of this fabric: "Patch 3", "The ground" */
export function checkFabricKnown(where: string, id: string, fabrics: readonly Fabric[]): Checked {
  if (fabrics.some((fabric) => fabric.id === id)) return null;
  return say.unknownFabric(where, id, fabrics.map((fabric) => fabric.id));
}

/** @returns whether a lattice point lies on the block, its edges included */
export function checkPoint(where: string, [x, y]: LatticePoint, { grid, denominator }: Ground): Checked {
  const on = x >= 0 && y >= 0 && x <= grid.columns * denominator && y <= grid.rows * denominator;
  if (on) return null;
  const at = `${formatLength(rational(x, denominator))}, ${formatLength(rational(y, denominator))}`;
  return say.offBlock(where, at, grid.columns, grid.rows);
}

/** @returns whether points make a simple outline on the block */
export function checkOutline(where: string, points: Outline, ground: Ground): Checked {
  if (points.length > MAX_POINTS) return say.tooManyPoints(where, points.length);
  for (const [i, point] of points.entries()) {
    const off = checkPoint(`${where}, point ${i + 1}`, point, ground);
    if (off) return off;
  }
  const fault = outlineFault(points);
  return fault === null ? null : say.noOutline(where, points.length, fault);
}

/** @returns whether a drawn seam has length and lies on the block */
export function checkSeam(where: string, [from, to]: DrawnSeam, ground: Ground): Checked {
  const off = checkPoint(`${where}, end 1`, from, ground) ?? checkPoint(`${where}, end 2`, to, ground);
  if (off) return off;
  return from[0] === to[0] && from[1] === to[1] ? say.seamWithoutLength(where) : null;
}

/** @returns whether a pin lies on the block and has extent; whether the block can be sewn so is found when it is pieced */
export function checkPin(where: string, { pin, from, to }: Pin, ground: Ground): Checked {
  const off = checkPoint(`${where}, from`, from, ground) ?? checkPoint(`${where}, to`, to, ground);
  if (off) return off;
  const [across, down] = [from[0] !== to[0], from[1] !== to[1]];
  if (pin === 'one unit') return across && down ? null : say.pinWithoutArea(where);
  return across || down ? null : say.pinWithoutLength(where);
}

/** @returns what the rectangle between two opposite corners is called by, whichever two they are */
export const boxName = ({ from, to }: Pick<UnitMethod, 'from' | 'to'>): string =>
  [Math.min(from[0], to[0]), Math.min(from[1], to[1]), Math.max(from[0], to[0]), Math.max(from[1], to[1])].join();
