import { compareX, compareY, lineThrough, signOfProducts, type Line, type Point } from './point.ts';

/** What a ruler and rotary cutter can make of a piece, by its finished outline. */
export type Shape =
  /** All corners square; `level` when its sides run along the block's. */
  | { readonly shape: 'rectangle'; readonly level: boolean }
  /** One square corner at points[corner]; legs along the block's sides (`level`), or the long side (`longLevel`), or neither. */
  | { readonly shape: 'right triangle'; readonly corner: number; readonly isosceles: boolean; readonly level: boolean; readonly longLevel: boolean }
  | { readonly shape: 'other' };

/**
 * @param outline convex, no three corners on a line, lattice steps
 * @returns how the outline can be cut without a template
 */
export function shapeOf(outline: readonly Point[]): Shape {
  const n = outline.length;
  const edges = outline.map((p, i) => lineThrough(p, outline[(i + 1) % n]!));
  const square = edges.map((e, i) => {
    const before = edges[(i + n - 1) % n]!;
    return signOfProducts(before.a, e.a, before.b, e.b, 0, 0) === 0;
  });
  if (n === 4 && square.every(Boolean)) return { shape: 'rectangle', level: level(edges[0]!) };
  if (n === 3 && square.includes(true)) {
    const corner = square.indexOf(true);
    const long = edges[(corner + 1) % 3]!;
    return {
      shape: 'right triangle',
      corner,
      isosceles: sameLength(outline[corner]!, outline[(corner + 1) % 3]!, outline[(corner + 2) % 3]!),
      level: level(edges[corner]!),
      longLevel: level(long),
    };
  }
  return { shape: 'other' };
}

/** @returns whether an outline is a rectangle along the block's sides: every other side of four is level, the rest upright */
function isLevelRectangle(outline: readonly Point[]): boolean {
  if (outline.length !== 4) return false;
  const [p, q, r, s] = outline as readonly [Point, Point, Point, Point];
  const [along, across] = compareY(p, q) === 0 ? [compareY, compareX] : [compareX, compareY];
  return along(p, q) === 0 && across(q, r) === 0 && along(r, s) === 0 && across(s, p) === 0;
}

const level = (e: Line): boolean => e.a === 0 || e.b === 0;

/** @returns whether two points are equally far from a third, exactly */
export function sameLength(from: Point, p: Point, q: Point): boolean {
  if (from.w === 1 && p.w === 1 && q.w === 1) {
    const [a, b, c, d] = [p.x - from.x, p.y - from.y, q.x - from.x, q.y - from.y];
    const [one, other] = [a * a + b * b, c * c + d * d];
    if (one <= Number.MAX_SAFE_INTEGER && other <= Number.MAX_SAFE_INTEGER) return one === other;
  }
  const [a, u] = squaredDistance(from, p);
  const [b, v] = squaredDistance(from, q);
  return a * v * v === b * u * u;
}

/** @returns the square of the distance of two points, as n/d² */
function squaredDistance(from: Point, to: Point): readonly [bigint, bigint] {
  const dx = BigInt(to.x) * BigInt(from.w) - BigInt(from.x) * BigInt(to.w);
  const dy = BigInt(to.y) * BigInt(from.w) - BigInt(from.y) * BigInt(to.w);
  return [dx * dx + dy * dy, BigInt(to.w)];
}

/** @returns whether a piece of this outline needs a printed template */
export function needsTemplate(outline: readonly Point[]): boolean {
  if (isLevelRectangle(outline)) return false;
  const s = shapeOf(outline);
  if (s.shape === 'rectangle') return false;
  return !(s.shape === 'right triangle' && (s.level || (s.isosceles && s.longLevel)));
}
