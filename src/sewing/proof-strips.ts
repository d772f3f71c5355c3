import type { Cut } from '../cutting/cut.ts';
import { compareRoots, exactly, fraction, minus, order, over, plus, root, say, scaled, straight, times } from './proof-number.ts';
import type { Fraction, Roots } from './proof-number.ts';
import type { Plan } from './proof-table.ts';

/** How a triangle lies in its strip: on a leg, or on its long side. */
type Lying = 'half' | 'quarter';

/**
 * Where the cuts of one strip arrive, so many triangles head to tail between its two edges, h apart: m is measured along the edge on
 * which a triangle stands, and a slanted cut, at 45°, is h further back on the other edge. On a leg, every second cut is straight.
 * @returns how far the last cut reaches
 */
function walked(lying: Lying, triangles: number, h: Fraction, m: Fraction): Fraction {
  const back = (x: Fraction): Fraction => minus(x, h);
  // The first triangle stands on the lower edge; on a leg both edges begin straight, else the first slant leaves the upper edge at h.
  let [lower, upper] = [fraction(0n), lying === 'half' ? fraction(0n) : h];
  for (let i = 0; i < triangles; i += 1) {
    if (i % 2 === 0) {
      lower = plus(lower, m);
      upper = back(lower);
    } else {
      upper = plus(upper, m);
      lower = lying === 'half' ? upper : back(upper);
    }
  }
  return order(lower, upper) < 0 ? upper : lower;
}

/**
 * What a strip's triangles must have round them: s beyond a straight side, and along a side s beyond its right angle, but s/tan 22.5° =
 * (1 + √2)s beyond a tip of 45°, for its allowance ends where both raw edges meet. Of the height nothing but s beyond the tip counts.
 * @param leg squared, in steps
 * @returns what is wrong with the strip for a triangle of this leg, or null; with trim, whether the strip has more than without
 */
export function stripFault(plan: Plan, cut: Cut, lying: Lying, leg: Fraction): { readonly fault: string | null; readonly large: boolean } {
  const { nested } = cut;
  const wrong = (fault: string): ReturnType<typeof stripFault> => ({ fault, large: false });
  if (!nested || cut.shape === 'template') return wrong('comes from a strip, but its line does not say how the strip is cut');
  if (nested.form !== lying) return wrong('lies otherwise in its strip than the line says');
  if (!Number.isInteger(nested.triangles) || nested.triangles < 1) return wrong('comes from a strip that gives no count of triangles');
  const [unit, s, trim, ruler] = [plan.step, plan.seam, plan.trim, plan.ruler].map(exactly);
  const [one, two] = [fraction(1n), fraction(2n)];
  const length = (squared: Fraction): Roots => root(one, times(times(squared, unit), unit));
  const tip: Roots = [...straight(s), ...root(s, two)];
  const along: Roots = lying === 'half' ? [...length(leg), ...straight(s), ...tip] : [...length(scaled(2, leg)), ...tip, ...tip];
  // On its long side a triangle is half as high as that is long: the square of the height is half of the leg's.
  const high: Roots = [...length(lying === 'half' ? leg : over(leg, two)), ...straight(scaled(2, s))];
  const [h, m] = [exactly(cut.width), exactly(nested.measure)];
  const checks: readonly (readonly [string, Fraction, Roots, Fraction])[] = [
    ['high', h, high, lying === 'half' ? trim : over(trim, two)],
    ['measured along its edges', m, along, trim],
  ];
  let large = false;
  for (const [what, has, least, more] of checks) {
    if (over(has, ruler).d !== 1n) return wrong(`comes from a strip ${say(has)} ${what}, which the ruler does not show`);
    if (compareRoots(straight(has), least) < 0) return wrong(`comes from a strip ${say(has)} ${what}, too small for what is sewn from it`);
    const before = straight(minus(has, ruler));
    if (compareRoots(before, [...least, ...straight(more)]) >= 0)
      return wrong(`comes from a strip ${say(has)} ${what}, larger than the ruler and the trim ask for`);
    large ||= compareRoots(before, least) >= 0;
  }
  const end = walked(lying, nested.triangles, h, m);
  if (order(end, exactly(cut.height)) !== 0)
    return wrong(`comes from a strip ${say(exactly(cut.height))} long, but its ${nested.triangles} triangles take ${say(end)}`);
  return { fault: null, large };
}
