import { add, multiply, rational, ZERO, type Rational } from '../../measure/rational.ts';
import { ceilToStep, rootOf, surd } from '../../measure/surd.ts';

/** An exact length: a sum of rationals times roots of whole numbers without square factors, by these numbers; 1 for the rational part. */
export type Roots = ReadonlyMap<number, Rational>;

/** How far something has moved, across and down. */
export interface Shift {
  readonly x: Roots;
  readonly y: Roots;
}

export const NONE: Roots = new Map();
export const STILL: Shift = { x: NONE, y: NONE };

export const whole = (value: Rational): Roots => (value.n === 0 ? NONE : new Map([[1, value]]));

export function plus(a: Roots, b: Roots): Roots {
  if (b.size === 0) return a;
  if (a.size === 0) return b;
  const sum = new Map(a);
  for (const [root, value] of b) {
    const total = add(sum.get(root) ?? ZERO, value);
    if (total.n === 0) sum.delete(root);
    else sum.set(root, total);
  }
  return sum;
}

export const times = (a: Roots, by: Rational): Roots =>
  by.n === 0 ? NONE : new Map([...a].map(([root, value]) => [root, multiply(value, by)]));

export const minus = (a: Roots, b: Roots): Roots => plus(a, times(b, rational(-1)));

export const together = (a: Shift, b: Shift): Shift => ({ x: plus(a.x, b.x), y: plus(a.y, b.y) });
export const apart = (a: Shift, b: Shift): Shift => ({ x: minus(a.x, b.x), y: minus(a.y, b.y) });

/** @returns a shift along dx, dy: so many times these whole numbers */
export const along = (by: Roots, dx: number, dy: number): Shift => ({ x: times(by, rational(dx)), y: times(by, rational(dy)) });

/** @returns dx, dy times a shift, as vectors are multiplied */
export const product = ({ x, y }: Shift, dx: number, dy: number): Roots => plus(times(x, rational(dx)), times(y, rational(dy)));

/** @returns a length divided by that of dx, dy: what `along` these makes that long */
export function perLength(length: Rational, dx: number, dy: number): Roots {
  if (length.n === 0) return NONE;
  const square = dx * dx + dy * dy;
  const { p, q, r } = rootOf(rational(square));
  const by = multiply(length, rational(1, square));
  return r === 0 ? whole(multiply(p, by)) : new Map([[r, multiply(q, by)]]);
}

const NEAR = rational(1, 2 ** 20);

/** @returns a rational that is as much or more, by less than 1/2²⁰ for every root in it; for telling and drawing */
export const near = (roots: Roots): Rational =>
  [...roots].reduce((sum, [root, value]) => add(sum, root === 1 ? value : ceilToStep(surd(ZERO, value, root), NEAR)), ZERO);
