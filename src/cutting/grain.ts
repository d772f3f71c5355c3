import type { Point } from '../geometry/point.ts';
import { compareSurds, plus } from '../measure/surd.ts';
import type { Cut, Role } from './cut.ts';
import { quarterSquare } from './formulas.ts';
import type { CuttingRules } from './needs.ts';
import { cutShape, type CutShape } from './shapes.ts';

/*
 * Cloth has its straight grain along its length and across it; everything between is bias, and stretches. Squares, rectangles and strips
 * are cut along the grain, so how a piece comes out of one says how the grain lies in it (quiltville.blogspot.com, Cutting quarter square
 * triangles, 2005: the straight grain lies on the long edge of a quarter, on the short edges of a half).
 */

/** How a piece is cut. */
export interface Grained {
  /** Finished, where it lies in the block; lattice steps. */
  readonly outline: readonly Point[];
  readonly role: Role;
  readonly cut: Pick<Cut, 'exact'>;
}

/** The lengths that a square to cut is reckoned by, in the block's unit; step is that of the lattice. */
type Reckoning = Pick<CuttingRules, 'step' | 'seam' | 'trim'>;

/** @returns whether the straight grain of a piece runs along the block's sides where it lies, or slantwise */
export function grainOf({ outline, role, cut }: Grained, rules: Reckoning): 'level' | 'slanted' {
  const shape = cutShape(outline, rules.step);
  switch (role) {
    case 'plain':
      return shape.form !== 'rectangle' || shape.level ? 'level' : 'slanted';
    // The base is as large as its unit, which lies level, and so do strips; a template has its arrow along a level edge where it has one.
    case 'base':
    case 'template':
    case 'strip':
      return 'level';
    case 'half':
    case 'eight':
    case 'corner':
    case 'small':
    case 'strip-half':
      return along(shape, 'legs');
    case 'quarter':
    case 'large':
    case 'strip-quarter':
      return along(shape, 'long side');
    case 'pair':
      return along(shape, isQuarter(shape, cut, rules) ? 'long side' : 'legs');
  }
}

const along = (shape: CutShape, straight: 'legs' | 'long side'): 'level' | 'slanted' =>
  shape.form === 'isosceles' && shape.grain !== straight ? 'slanted' : 'level';

/** Of a square sewn to another on both sides of a diagonal a piece is a half, or a quarter where the two are then crossed with two more. */
function isQuarter(shape: CutShape, { exact }: Grained['cut'], { seam, trim }: Reckoning): boolean {
  return shape.form === 'isosceles' && exact !== null && compareSurds(exact.width, plus(quarterSquare(shape.longSide, seam), trim)) >= 0;
}
