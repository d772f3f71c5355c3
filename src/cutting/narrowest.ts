import type { Point } from '../geometry/point.ts';
import { compare, divide, gcd, multiply, ratio, rational, type Rational } from '../measure/rational.ts';
import { compareSurds, rootOf, surd, times, type Surd } from '../measure/surd.ts';
import { cutShape, type CutShape } from './shapes.ts';

/*
 * How small a piece finishes, as the trade says it: a rectangle by its shorter side, a triangle by the side or height that lies along
 * the block ("a half-inch triangle" has legs of half an inch), anything else by the narrowest strip that it fits into.
 */

/**
 * @param outline convex, clockwise, lattice steps
 * @param step length of a lattice step in the block's unit
 * @returns how narrow a piece finishes, in the block's unit
 */
export function finishedWidth(outline: readonly Point[], step: Rational): Surd {
  return byShape(cutShape(outline, step)) ?? narrowestStrip(outline, step);
}

function byShape(shape: CutShape): Surd | null {
  if (shape.form === 'rectangle') return narrower(...shape.sides);
  if (shape.form === 'right') return surd(shape.legs[0]);
  if (shape.form === 'isosceles') return shape.grain === 'legs' ? shape.leg : times(shape.longSide, rational(1, 2));
  return null;
}

/** A convex outline fits into no strip narrower than the narrowest along one of its own edges. */
function narrowestStrip(outline: readonly Point[], step: Rational): Surd {
  return outline.map((from, i) => heightOver(from, outline[(i + 1) % outline.length]!, outline, step)).reduce(narrower);
}

/** How far the outline reaches from the line of one of its edges: twice the area of a triangle over the edge, by the edge's length. */
function heightOver(from: Point, to: Point, outline: readonly Point[], step: Rational): Surd {
  const w = BigInt(from.w);
  const [x, y] = [BigInt(to.x) * w - BigInt(from.x) * BigInt(to.w), BigInt(to.y) * w - BigInt(from.y) * BigInt(to.w)];
  const common = gcd(x, y);
  // The edge's direction in small whole numbers.
  const [a, b] = [x / common, y / common];
  const far = outline
    .map((p) => ratio(a * (BigInt(p.y) * w - BigInt(from.y) * BigInt(p.w)) - b * (BigInt(p.x) * w - BigInt(from.x) * BigInt(p.w)), BigInt(p.w) * w))
    .reduce((one, other) => (compare(one, other) >= 0 ? one : other));
  const squared = ratio(a * a + b * b, 1n);
  return times(rootOf(squared), divide(multiply(far, step), squared));
}

/** @returns for each outline how narrow it finishes; outlines that are equal on the lattice are looked at once */
export function finishedWidths(outlines: readonly (readonly Point[])[], step: Rational): readonly Surd[] {
  const known = new Map<string, Surd>();
  return outlines.map((outline) => {
    const [first] = outline as [Point];
    const key = outline.every(({ w }) => w === 1) ? outline.map(({ x, y }) => `${x - first.x},${y - first.y}`).join(' ') : null;
    const width = (key !== null && known.get(key)) || finishedWidth(outline, step);
    if (key !== null) known.set(key, width);
    return width;
  });
}

/** @returns the narrower of two, exactly */
export const narrower = (a: Surd, b: Surd): Surd => (compareSurds(a, b) <= 0 ? a : b);
