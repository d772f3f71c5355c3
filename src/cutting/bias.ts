import type { Point } from '../geometry/point.ts';
import type { Rational } from '../measure/rational.ts';
import type { Role } from './cut.ts';
import { cutShape } from './shapes.ts';

/** An edge of a piece from corner to corner. */
export type Edge = readonly [Point, Point];

/** Triangles that are cut before they are sewn: along their long side, or along both legs of a quarter. */
const HALVES: readonly Role[] = ['half', 'strip-half'];
const QUARTERS: readonly Role[] = ['quarter', 'strip-quarter'];

const isSlanted = ([p, q]: Edge): boolean => p.x * q.w !== q.x * p.w && p.y * q.w !== q.y * p.w;

/**
 * Squares that are sewn before they are cut show no bias to the sewer: their diagonals are held by a seam when the cutter comes.
 * @param outline finished, in lattice steps, where the piece lies in the block
 * @param step length of a lattice step in the block's unit
 * @returns the edges of a piece that lie loose on the bias while it is sewn: neither along the grain nor straight across it
 */
export function biasEdges(outline: readonly Point[], role: Role, step: Rational): readonly Edge[] {
  const loose = HALVES.includes(role) || QUARTERS.includes(role) || role === 'template';
  if (!loose) return [];
  const shape = cutShape(outline, step);
  if (shape.form === 'rectangle') return [];
  const edges = outline.map((corner, i): Edge => [corner, outline[(i + 1) % outline.length]!]);
  // A template's arrow of the grain lies along the block's sides; so do the legs of a right triangle that is no half of a square.
  if (role === 'template' || shape.form !== 'isosceles') return edges.filter(isSlanted);
  const { corner } = shape;
  return edges.filter(([p, q]) => (p === corner || q === corner) === QUARTERS.includes(role));
}
