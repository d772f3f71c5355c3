import { formatLength } from '../measure/lengths.ts';
import { gcd, lesser, multiply, rational, subtract, type Rational } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import type { Point } from '../geometry/point.ts';

/** @returns an exact length as text without a unit: "4 1/2", "4 1/2 + 1/4 √2", "√2" */
export function exactText({ p, q, r }: Surd): string {
  if (r === 0) return formatLength(p);
  const size: Rational = { n: Math.abs(q.n), d: q.d };
  const root = `${size.n === size.d ? '' : `${formatLength(size)} `}√${r}`;
  if (p.n === 0) return q.n < 0 ? `-${root}` : root;
  return `${formatLength(p)} ${q.n < 0 ? '-' : '+'} ${root}`;
}

/** @returns how far each corner lies from the left and the top of the rectangle that holds them, in the unit of the step's length */
export function cornersOf(outline: readonly Point[], step: Rational): readonly (readonly [Rational, Rational])[] {
  const across = outline.map(({ x, w }) => multiply(rational(x, w), step));
  const down = outline.map(({ y, w }) => multiply(rational(y, w), step));
  const [left, top] = [across.reduce(lesser), down.reduce(lesser)];
  return across.map((x, i) => [subtract(x, left), subtract(down[i]!, top)]);
}

/** @returns n/w steps as an exact length, whole part and fraction in lowest terms, however fine: "3 1/2" */
export function placeText(n: number, w: number, step: Rational): string {
  const [above, below] = [BigInt(n) * BigInt(step.n), BigInt(w) * BigInt(step.d)];
  const common = gcd(above, below);
  const [whole, rest] = [above / below, above % below];
  if (rest === 0n) return `${whole}`;
  return `${whole > 0n ? `${whole} ` : ''}${rest / common}/${below / common}`;
}
