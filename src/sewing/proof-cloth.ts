import type { Method } from '../block/choices.ts';
import type { Cut, Role } from '../cutting/cut.ts';
import { compareRoots, exactly, fraction, minus, order, over, plus, root, say, scaled, straight, times } from './proof-number.ts';
import type { Fraction, Roots } from './proof-number.ts';
import { dot, same, squaredDistance } from './proof-outline.ts';
import type { Outline } from './proof-outline.ts';
import { stripFault } from './proof-strips.ts';
import type { Plan, SewnStep, Tell } from './proof-table.ts';
import { templateFault } from './proof-template.ts';

/** The least cloth a patch needs, allowance included; width ≤ height, in the block's unit. */
interface Need {
  readonly width: Roots;
  readonly height: Roots;
  /** What the chosen trim may add to the width and to the height. */
  readonly trims: readonly [Roots, Roots];
}

/** What each way of cutting asks the cutting list to say about diagonal cuts. */
const SUBCUT: Readonly<Partial<Record<Role, Cut['subcut']>>> = {
  half: 'once',
  quarter: 'twice',
  'strip-half': 'head to tail',
  'strip-quarter': 'head to tail',
};

/** The roles a method's instructions can speak of; a step without method only joins. */
const ROLES: Readonly<Record<Method, readonly Role[]>> = {
  'one-at-a-time': ['half'],
  'two-at-a-time': ['pair'],
  'four-at-a-time': ['large', 'small'],
  'eight-at-a-time': ['eight'],
  'stitch-and-flip': ['base', 'corner'],
  triangles: ['plain', 'half', 'quarter', 'template'],
  'triangles-from-strips': ['plain', 'strip-half', 'strip-quarter', 'template'],
  template: ['plain', 'half', 'quarter', 'template'],
  pieces: ['plain'],
  'strip-sets': ['strip'],
};
const JOINING: readonly Role[] = ['plain', 'half', 'quarter', 'template'];

/** @returns squared side lengths of a rectangle, the shorter first; null when the outline is none */
function rectangle(outline: Outline): readonly [Fraction, Fraction] | null {
  if (outline.length !== 4) return null;
  if (outline.some((p, i) => dot(p, outline[(i + 1) % 4], outline[(i + 3) % 4]).n !== 0n)) return null;
  const [a, b] = [squaredDistance(outline[0], outline[1]), squaredDistance(outline[1], outline[2])];
  return order(a, b) <= 0 ? [a, b] : [b, a];
}

/** @returns squared legs of a right triangle, the shorter first, and its right corner; null when the outline is none */
export function rightTriangle(outline: Outline): { readonly short: Fraction; readonly long: Fraction; readonly corner: number } | null {
  if (outline.length !== 3) return null;
  const corner = outline.findIndex((p, i) => dot(p, outline[(i + 1) % 3], outline[(i + 2) % 3]).n === 0n);
  if (corner < 0) return null;
  const [a, b] = [1, 2].map((k) => squaredDistance(outline[corner], outline[(corner + k) % 3]));
  return order(a, b) <= 0 ? { short: a, long: b, corner } : { short: b, long: a, corner };
}

/** @returns the squared leg of a half-square; null when the outline is none */
export function halfSquare(outline: Outline): Fraction | null {
  const triangle = rightTriangle(outline);
  return triangle && order(triangle.short, triangle.long) === 0 ? triangle.short : null;
}

/**
 * What the roles' own geometry asks for, from one rule: an allowance s all round a triangle moves its sides out by s, so the
 * triangle grows about its incentre by (r + s)/r, r its inradius.
 * Half-square of leg f: r = f/(2 + √2), so f + (2 + √2)s. Quarter-square of long side f: r = f/(2(1 + √2)), so f + 2(1 + √2)s.
 * Half-rectangle a × b with diagonal d: r = (a + b − d)/2 = ab/(a + b + d), so a + s(a + b + d)/b and b + s(a + b + d)/a.
 * Two squares sewn on both sides of a diagonal and cut on it make what two such triangles make; sewn on both diagonals and cut
 * in eight, each quarter of the square does.
 */
function needOf(role: Exclude<Role, 'strip-half' | 'strip-quarter' | 'strip'>, outline: Outline, table: SewnStep, plan: Plan): Need | string | null {
  const unit = exactly(plan.step);
  const s = exactly(plan.seam);
  const squared = (f: Fraction): Fraction => times(times(f, unit), unit);
  const [one, two] = [fraction(1n), fraction(2n)];
  const length = (f: Fraction): Roots => root(one, squared(f));
  const sewnAsCut = (f: Fraction): Roots => [...length(f), ...straight(scaled(2, s))];
  const halved = (leg: Fraction): Roots => [...length(leg), ...straight(scaled(2, s)), ...root(s, two)];
  const quartered = (long: Fraction): Roots => [...length(long), ...straight(scaled(2, s)), ...root(scaled(2, s), two)];
  const trim = exactly(plan.trim);
  const trimmed = (times: number): Need['trims'] => [straight(scaled(times, trim)), straight(scaled(times, trim))];
  const square = (side: Roots, times = 1): Need => ({ width: side, height: side, trims: trimmed(times) });
  const slanted = outline.some((p, i) => {
    const q = outline[(i + 1) % outline.length];
    return p.x * q.w !== q.x * p.w && p.y * q.w !== q.y * p.w;
  });

  if (role === 'plain') {
    const sides = rectangle(outline);
    if (!sides) return 'is sewn as cut, but it is not a rectangle';
    return { width: sewnAsCut(sides[0]), height: sewnAsCut(sides[1]), trims: trimmed(slanted ? 1 : 0) };
  }
  if (role === 'half') {
    const triangle = rightTriangle(outline);
    if (!triangle) return 'is cut once diagonally, but it is not a right triangle';
    const { short: a, long: b } = triangle;
    // s(a + b + d)/b with a, b, d as roots: s + s√(a²/b²) + s√((a² + b²)/b²)
    const grown = (own: Fraction, other: Fraction): Roots => [
      ...length(own),
      ...straight(s),
      ...root(s, over(own, other)),
      ...root(s, over(plus(own, other), other)),
    ];
    // The trim keeps the rectangle's proportion, so that the seam keeps its slope.
    return { width: grown(a, b), height: grown(b, a), trims: [straight(trim), root(trim, over(b, a))] };
  }
  if (role === 'template') return null;

  const leg = halfSquare(outline);
  if (role === 'quarter') return leg ? square(quartered(scaled(2, leg))) : 'is cut twice diagonally, but it is not a quarter of a square';
  if (role === 'base') return baseNeed(table, sewnAsCut, trimmed(1));
  if (!leg) return 'is not half or a quarter of a square, which its way of cutting makes';
  const result = table.result && rectangle(table.result);
  if (!result) return table.result ? 'goes into something that is not a rectangle' : null;
  const outlines = table.parts.filter((part): part is Outline => part !== null);
  const legs = outlines.map(halfSquare);
  const is = (f: Fraction | null, g: Fraction): boolean => f !== null && order(f, g) === 0;
  const resultIsSquare = order(result[0], result[1]) === 0;
  const biggest = is(leg, result[0]);

  switch (role) {
    case 'corner': {
      const at = outline[rightTriangle(outline)?.corner ?? 0];
      return table.result?.some((p) => same(p, at)) ? square(sewnAsCut(leg)) : 'is flipped onto a corner, but does not lie in one';
    }
    case 'eight':
      if (!resultIsSquare || outlines.length !== 2 || !legs.every((f) => is(f, result[0])))
        return 'is made eight at a time, but is not half of a square unit';
      return square([...halved(leg), ...halved(leg)], 2);
    case 'pair': {
      // Finished sides: the big triangle's legs, the small triangles' long sides are the unit's side.
      const fits = legs.every((f) => f !== null && (is(f, result[0]) || is(scaled(2, f), result[0])));
      if (!resultIsSquare || !fits || outlines.length > 4)
        return 'is one of a pair of squares, but the unit is not made of halves and quarters of a square';
      return square(biggest ? halved(leg) : quartered(scaled(2, leg)));
    }
    case 'large':
    case 'small': {
      const isGoose = outlines.length === 3 && order(scaled(4, result[0]), result[1]) === 0;
      if (!isGoose) return 'is made four at a time, but the unit is not a goose twice as wide as high';
      if (role === 'large') return is(scaled(2, leg), result[1]) ? square(quartered(result[1])) : 'is not the large triangle of its goose';
      return biggest ? square(halved(leg)) : 'is not a small triangle of its goose';
    }
  }
}

/** The rectangle that corners are flipped onto is as large as the unit. */
function baseNeed(table: SewnStep, sewnAsCut: (squared: Fraction) => Roots, trims: Need['trims']): Need | string | null {
  if (!table.result) return null;
  const sides = rectangle(table.result);
  if (!sides) return 'is what corners are flipped onto, but the unit is not a rectangle';
  const roles = table.step.parts.map((part) => ('cut' in part.from ? part.from.role : 'unit'));
  if (roles.filter((role) => role === 'base').length !== 1) return 'is one of two things that corners are flipped onto in one unit';
  return { width: sewnAsCut(sides[0]), height: sewnAsCut(sides[1]), trims };
}

/** @returns the least multiple of the ruler's step that is at least the length */
function onTheRuler(length: Roots, ruler: Fraction): Fraction {
  let most = 1n;
  while (compareRoots(straight(times(fraction(most), ruler)), length) < 0) most *= 2n;
  let least = 0n;
  while (most - least > 1n) {
    const middle = (least + most) >> 1n;
    if (compareRoots(straight(times(fraction(middle), ruler)), length) < 0) least = middle;
    else most = middle;
  }
  return times(fraction(most), ruler);
}

/** Checks that the cut line of every part is large enough for it, and no larger than the ruler and the trim explain. */
export function checkCloth(plan: Plan, table: SewnStep, tell: Tell): void {
  const allowed = table.step.method === null ? JOINING : ROLES[table.step.method];
  table.step.parts.forEach((part, i) => {
    const outline = table.parts[i];
    if (!('cut' in part.from) || !outline) return;
    const { cut: id, role } = part.from;
    const cut = plan.cuts.find((line) => line.id === id);
    if (!cut) return;
    const name = `${table.name}, part ${i + 1} (line ${id})`;
    if (!allowed.includes(role)) tell(`${name} is cut as "${role}", which ${table.step.method ?? 'a step that only joins'} does not use.`);
    if (cut.subcut !== (SUBCUT[role] ?? 'none')) {
      const times = { none: 'as it is', once: 'once diagonally', twice: 'twice diagonally', 'head to tail': 'head to tail from a strip' };
      tell(`${name} must be cut ${times[SUBCUT[role] ?? 'none']}, but the cutting list says ${times[cut.subcut]}.`);
    }
    if (role === 'template') {
      const fault = templateFault(plan, cut, outline);
      if (fault) tell(`${name} ${fault}.`);
      return;
    }
    // Strips of a set are looked at together: see `checkSet`.
    if (role === 'strip') return;
    if (role === 'strip-half' || role === 'strip-quarter') {
      checkStrip(plan, cut, role, outline, table, name, tell);
      return;
    }
    const need = needOf(role, outline, table, plan);
    if (typeof need === 'string') tell(`${name} ${need}.`);
    else if (need) checkSize(plan, cut, need, table, name, tell);
  });
}

/** Checks a triangle that is cut from a strip. */
function checkStrip(
  plan: Plan,
  cut: Cut,
  role: 'strip-half' | 'strip-quarter',
  outline: Outline,
  table: SewnStep,
  name: string,
  tell: Tell,
): void {
  const leg = halfSquare(outline);
  if (!leg) {
    tell(`${name} is not half or a quarter of a square, which its way of cutting makes.`);
    return;
  }
  const { fault, large } = stripFault(plan, cut, role === 'strip-half' ? 'half' : 'quarter', leg);
  if (fault) tell(`${name} ${fault}.`);
  else if (large && !table.step.trimmed) tell(`${name} is cut to be trimmed, but the step does not say that it is.`);
}

/** Compares one line's size with what one part needs. */
function checkSize(plan: Plan, cut: Cut, need: Need, table: SewnStep, name: string, tell: Tell): void {
  const ruler = exactly(plan.ruler);
  const sizes = [
    [exactly(cut.width), need.width],
    [exactly(cut.height), need.height],
  ] as const;
  const size = `${say(sizes[0][0])} by ${say(sizes[1][0])}`;
  const needed = (): string => sizes.map(([, length]) => say(onTheRuler(length, ruler))).join(' by ');
  /** Whether a side is a whole step of the ruler, or more, longer than it must be, also when `more` is added. */
  const extra = (more: readonly [Roots, Roots] | null): boolean =>
    sizes.some(([has, length], i) => compareRoots(straight(minus(has, ruler)), [...length, ...(more?.[i] ?? [])]) >= 0);
  if (sizes.some(([has, length]) => compareRoots(straight(has), length) < 0)) {
    tell(`${name} is cut ${size}, too small for what is sewn from it: it needs ${needed()}.`);
  } else if (extra(need.trims)) {
    tell(`${name} is cut ${size}, larger than the ruler and the trim ask for: ${needed()} would do.`);
  } else if (!table.step.trimmed && extra(null)) {
    tell(`${name} is cut ${size} to be trimmed, but the step does not say that it is.`);
  }
}
