/** An exact point (x/w, y/w): whole numbers, w > 0, no common divisor. Lattice points have w = 1. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly w: number;
}

/** The line a·x + b·y = c through lattice points: whole numbers, gcd 1. The side where a·x + b·y > c is its front. */
export interface Line {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

const SAFE = Number.MAX_SAFE_INTEGER;

/**
 * @returns the sign (−1, 0, 1) of a·b + c·d + e·f, exactly: in doubles while every partial sum is a safe integer,
 * otherwise in BigInt (drawings on lattices of many thousand steps only)
 */
export function signOfProducts(a: number, b: number, c: number, d: number, e: number, f: number): number {
  const p = a * b;
  const q = c * d;
  const r = e * f;
  if (Math.abs(p) + Math.abs(q) + Math.abs(r) <= SAFE) return Math.sign(p + q + r) + 0;
  const sum = BigInt(a) * BigInt(b) + BigInt(c) * BigInt(d) + BigInt(e) * BigInt(f);
  return sum > 0n ? 1 : sum < 0n ? -1 : 0;
}

/** @returns the greatest common divisor of two whole numbers, ≥ 0 */
export function gcd(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

function safe(value: bigint): number {
  if (value > BigInt(SAFE) || value < -BigInt(SAFE)) throw new RangeError('the drawing is finer than can be held exactly');
  return Number(value);
}

/** @returns [a·d − b·c] for two rows of whole numbers, as a BigInt */
const cross = (a: number, b: number, c: number, d: number): bigint => BigInt(a) * BigInt(d) - BigInt(b) * BigInt(c);

/** @returns the three minors of (a b c / d e f), divided by their gcd; RangeError when they leave the safe integers */
function minors(a: number, b: number, c: number, d: number, e: number, f: number): readonly [number, number, number] {
  let x: number = b * f - c * e;
  let y: number = c * d - a * f;
  let z: number = a * e - b * d;
  const bound = Math.max(Math.abs(b * f), Math.abs(c * e), Math.abs(c * d), Math.abs(a * f), Math.abs(a * e), Math.abs(b * d));
  if (bound > SAFE / 2) {
    let [p, q, r] = [cross(b, c, e, f), cross(c, a, f, d), cross(a, b, d, e)];
    let [m, n] = [p < 0n ? -p : p, q < 0n ? -q : q];
    while (n !== 0n) [m, n] = [n, m % n];
    n = r < 0n ? -r : r;
    while (n !== 0n) [m, n] = [n, m % n];
    if (m > 1n) [p, q, r] = [p / m, q / m, r / m];
    [x, y, z] = [safe(p), safe(q), safe(r)];
    return [x, y, z];
  }
  const common = gcd(gcd(x, y), z);
  return common > 1 ? [x / common, y / common, z / common] : [x, y, z];
}

/** @returns the lattice point (x, y) */
export const latticePoint = (x: number, y: number): Point => ({ x, y, w: 1 });

/** @returns whether two points are the same */
export const samePoint = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y && p.w === q.w;

/** @returns the line through two different points with its front to the right of p → q as seen on screen (y down) */
export function lineThrough(p: Point, q: Point): Line {
  const [x, y, z] = minors(p.x, p.y, p.w, q.x, q.y, q.w);
  return { a: x, b: y, c: z === 0 ? 0 : -z };
}

/** @returns the same line with front and back exchanged */
export const reversed = (l: Line): Line => ({ a: l.a === 0 ? 0 : -l.a, b: l.b === 0 ? 0 : -l.b, c: l.c === 0 ? 0 : -l.c });

/** @returns the line with a > 0, or a = 0 and b > 0: one form for both ways round */
export const undirected = (l: Line): Line => (l.a > 0 || (l.a === 0 && l.b > 0) ? l : reversed(l));

/** @returns whether two lines are the same one, either way round */
export const sameLine = (l: Line, m: Line): boolean =>
  l.a === m.a && l.b === m.b ? l.c === m.c : l.a === -m.a && l.b === -m.b && l.c === -m.c;

/** @returns a name that two lines share exactly when they are the same undirected line */
export function lineKey(l: Line): string {
  const u = undirected(l);
  return `${u.a},${u.b},${u.c}`;
}

/** @returns 1 in front of the line, −1 behind it, 0 on it */
export const side = (l: Line, p: Point): number => signOfProducts(l.a, p.x, l.b, p.y, -l.c, p.w);

/** @returns whether two lines run the same way (or opposite ways) */
export const parallel = (l: Line, m: Line): boolean => signOfProducts(l.a, m.b, -l.b, m.a, 0, 0) === 0;

/** @returns the point where two lines that are not parallel meet; RangeError when it cannot be held exactly */
export function meet(l: Line, m: Line): Point {
  const [x, y, w] = minors(l.a, l.b, -l.c, m.a, m.b, -m.c);
  if (w === 0) throw new RangeError('parallel lines do not meet');
  return w > 0 ? { x: x + 0, y: y + 0, w } : { x: x === 0 ? 0 : -x, y: y === 0 ? 0 : -y, w: -w };
}

const order = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

/** @returns the order (−1, 0, 1) of two points from left to right */
export const compareX = (p: Point, q: Point): number => (p.w === q.w ? order(p.x, q.x) : signOfProducts(p.x, q.w, -q.x, p.w, 0, 0));
/** @returns the order (−1, 0, 1) of two points from top to bottom */
export const compareY = (p: Point, q: Point): number => (p.w === q.w ? order(p.y, q.y) : signOfProducts(p.y, q.w, -q.y, p.w, 0, 0));

/** @returns the order of two points along any line: left to right, on a vertical line top to bottom */
export const compareAlong = (p: Point, q: Point): number => compareX(p, q) || compareY(p, q);

/** @returns p moved by a whole number of steps */
export const moved = (p: Point, dx: number, dy: number): Point => ({ x: p.x + dx * p.w, y: p.y + dy * p.w, w: p.w });

/** @returns p turned a quarter turn clockwise (as seen on screen) about the origin */
export const turned = (p: Point): Point => ({ x: p.y === 0 ? 0 : -p.y, y: p.x, w: p.w });
