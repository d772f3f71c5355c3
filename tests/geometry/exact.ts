import type { Point } from '../../src/geometry/point.ts';

/*
 * Exact plane geometry of the tests' own, in BigInt from end to end and sharing no code with src/geometry:
 * what is tested must not vouch for itself.
 */

/** A fraction in lowest terms, d > 0. */
export interface Q {
  readonly n: bigint;
  readonly d: bigint;
}

const common = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
};

/** @returns n/d in lowest terms; d ≠ 0 */
export function q(n: bigint | number, d: bigint | number = 1n): Q {
  const [a, b] = [BigInt(n), BigInt(d)];
  if (b === 0n) throw new RangeError('a fraction with denominator 0');
  const g = (b < 0n ? -1n : 1n) * common(a, b);
  return { n: a / g, d: b / g };
}

export const add = (a: Q, b: Q): Q => q(a.n * b.d + b.n * a.d, a.d * b.d);
export const times = (a: Q, b: Q): Q => q(a.n * b.n, a.d * b.d);
export const minus = (a: Q, b: Q): Q => q(a.n * b.d - b.n * a.d, a.d * b.d);
export const total = (parts: readonly Q[]): Q => parts.reduce(add, q(0));
export const order = (a: Q, b: Q): number => Number(sign(a.n * b.d - b.n * a.d));
export const printed = ({ n, d }: Q): string => (d === 1n ? `${n}` : `${n}/${d}`);

const sign = (a: bigint): bigint => (a > 0n ? 1n : a < 0n ? -1n : 0n);

/** A point (x/w, y/w), w > 0; a corner of the drawing or of a piece. */
export interface P {
  readonly x: bigint;
  readonly y: bigint;
  readonly w: bigint;
}

/** @returns a point of src/geometry, or a lattice point, in BigInt */
export function exactly(p: Point | readonly [number, number]): P {
  return 'w' in p ? { x: BigInt(p.x), y: BigInt(p.y), w: BigInt(p.w) } : { x: BigInt(p[0]), y: BigInt(p[1]), w: 1n };
}

export const xOf = (p: P): Q => q(p.x, p.w);
export const yOf = (p: P): Q => q(p.y, p.w);
export const same = (p: P, r: P): boolean => p.x * r.w === r.x * p.w && p.y * r.w === r.y * p.w;

/** @returns a name that two points share exactly when they are the same */
export const nameOf = (p: P): string => `${printed(xOf(p))},${printed(yOf(p))}`;

/** The determinant of three points with their weights: its sign tells the turn, positive for a right turn on screen (y down). */
const determinant = (a: P, b: P, c: P): bigint =>
  a.x * (b.y * c.w - c.y * b.w) - a.y * (b.x * c.w - c.x * b.w) + a.w * (b.x * c.y - c.x * b.y);

/** @returns 1 when a → b → c turns clockwise as seen on screen, −1 the other way, 0 on one line */
export const turning = (a: P, b: P, c: P): number => Number(sign(determinant(a, b, c)));

/** @returns the area in square steps of a simple outline, either way round */
export function areaOf(outline: readonly P[]): Q {
  const twice = total(
    outline.map((p, i) => {
      const r = outline[(i + 1) % outline.length]!;
      return q(p.x * r.y - r.x * p.y, p.w * r.w);
    }),
  );
  return q(twice.n < 0n ? -twice.n : twice.n, twice.d * 2n);
}

/** @returns whether corners run clockwise on screen, turn right at each, and go round once */
export function isConvex(outline: readonly P[]): boolean {
  const n = outline.length;
  if (n < 3) return false;
  return outline.every((p, i) => outline.every((r, j) => j === i || j === (i + 1) % n || turning(p, outline[(i + 1) % n]!, r) === 1));
}

function lowest(p: P): P {
  const g = common(common(p.x, p.y), p.w) * (p.w < 0n ? -1n : 1n);
  return { x: p.x / g, y: p.y / g, w: p.w / g };
}

/** @returns the part of a convex outline to the right of a → b as seen on screen; empty when it has no area */
export function rightOf(outline: readonly P[], a: P, b: P): readonly P[] {
  const found: P[] = [];
  const far = outline.map((p) => determinant(a, b, p));
  if (!far.some((s) => s > 0n)) return found;
  outline.forEach((p, i) => {
    const j = (i + 1) % outline.length;
    const [s, t] = [far[i]!, far[j]!];
    if (s >= 0n) found.push(p);
    const r = outline[j]!;
    if (s * t < 0n) found.push(lowest({ x: s * r.x - t * p.x, y: s * r.y - t * p.y, w: s * r.w - t * p.w }));
  });
  return found;
}

/** @returns what two convex outlines share; empty when that has no area */
export function shared(one: readonly P[], other: readonly P[]): readonly P[] {
  let rest = one;
  other.forEach((a, i) => {
    if (rest.length > 0) rest = rightOf(rest, a, other[(i + 1) % other.length]!);
  });
  return rest;
}

/** @returns the mean of a convex outline's corners, which lies inside */
export function middleOf(outline: readonly P[]): P {
  const x = total(outline.map(xOf));
  const y = total(outline.map(yOf));
  const n = BigInt(outline.length);
  return lowest({ x: x.n * y.d, y: y.n * x.d, w: x.d * y.d * n });
}

/** @returns whether p lies on the stretch from a to b, ends included */
export function isOn(p: P, a: P, b: P): boolean {
  if (determinant(a, b, p) !== 0n) return false;
  const between = (u: Q, v: Q, t: Q): boolean => order(u, t) * order(v, t) <= 0;
  return between(xOf(a), xOf(b), xOf(p)) && between(yOf(a), yOf(b), yOf(p));
}

/**
 * @returns whether p lies inside a simple outline, by counting the edges that a ray to the right meets
 * @throws when p lies on the outline, where the question has no answer
 */
export function isInside(p: P, outline: readonly P[]): boolean {
  let inside = false;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    if (isOn(p, a, b)) throw new Error(`${nameOf(p)} lies on an edge`);
    const [above, below] = [order(yOf(a), yOf(p)) <= 0, order(yOf(b), yOf(p)) <= 0];
    if (above !== below && (turning(a, b, p) === 1) === above) inside = !inside;
  });
  return inside;
}

/** @returns the smallest convex outline round the points, clockwise on screen (Andrew's monotone chain) */
export function hullOf(points: readonly P[]): readonly P[] {
  const byX = (p: P, r: P): number => order(xOf(p), xOf(r)) || order(yOf(p), yOf(r));
  const sorted = [...points].sort(byX).filter((p, i, all) => i === 0 || !same(p, all[i - 1]!));
  const chain = (ordered: readonly P[]): P[] => {
    const found: P[] = [];
    for (const p of ordered) {
      while (found.length > 1 && turning(found.at(-2)!, found.at(-1)!, p) <= 0) found.pop();
      found.push(p);
    }
    return found.slice(0, -1);
  };
  return [...chain(sorted), ...chain([...sorted].reverse())];
}

/** A stretch of a line, in either direction. */
export type Span = readonly [P, P];

const alongOrder = (p: P, r: P): number => order(xOf(p), xOf(r)) || order(yOf(p), yOf(r));

/** @returns stretches of one line as their disjoint union, each from left to right (top to bottom when upright), in order */
export function unionOf(spans: readonly Span[]): readonly Span[] {
  const sorted = spans.map(([a, b]): Span => (alongOrder(a, b) <= 0 ? [a, b] : [b, a])).sort((s, t) => alongOrder(s[0], t[0]));
  const found: Span[] = [];
  for (const [from, to] of sorted) {
    const last = found.at(-1);
    if (last && alongOrder(from, last[1]) <= 0) found[found.length - 1] = [last[0], alongOrder(last[1], to) >= 0 ? last[1] : to];
    else found.push([from, to]);
  }
  return found;
}

/** @returns the edges of outlines that lie on the line through a and b, as their union */
export function edgesOn(outlines: readonly (readonly P[])[], a: P, b: P): readonly Span[] {
  return unionOf(
    outlines.flatMap((outline) =>
      outline.flatMap((p, i): Span[] => {
        const r = outline[(i + 1) % outline.length]!;
        return turning(a, b, p) === 0 && turning(a, b, r) === 0 ? [[p, r]] : [];
      }),
    ),
  );
}

/** @returns the common part of two lists of disjoint, ordered stretches of one line */
export function commonOf(some: readonly Span[], others: readonly Span[]): readonly Span[] {
  const found: Span[] = [];
  for (const [a, b] of some) {
    for (const [c, d] of others) {
      const from = alongOrder(a, c) >= 0 ? a : c;
      const to = alongOrder(b, d) <= 0 ? b : d;
      if (alongOrder(from, to) < 0) found.push([from, to]);
    }
  }
  return found;
}

/** @returns stretches as text, for comparing */
export const spanText = (spans: readonly Span[]): string =>
  unionOf(spans)
    .map(([a, b]) => `${nameOf(a)}–${nameOf(b)}`)
    .join(' ');

/** @returns an outline as text that does not depend on the corner it starts from */
export function outlineText(outline: readonly P[]): string {
  const names = outline.map(nameOf);
  const least = names.indexOf([...names].sort()[0]!);
  return [...names.slice(least), ...names.slice(0, least)].join(' ');
}
