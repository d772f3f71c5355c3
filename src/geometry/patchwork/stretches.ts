import { compareAlong, type Point } from '../point.ts';

/** A stretch of one line, from < to in the order of compareAlong. */
export interface Stretch {
  readonly from: Point;
  readonly to: Point;
}

/** The order of stretches along their line. */
export const byStart = (a: Stretch, b: Stretch): number => compareAlong(a.from, b.from);

/** @returns the one of two points of a line that comes later */
export const later = (p: Point, q: Point): Point => (compareAlong(p, q) >= 0 ? p : q);

/** @returns the one that comes earlier */
export const earlier = (p: Point, q: Point): Point => (compareAlong(p, q) <= 0 ? p : q);

/** @returns the union of stretches on one line, disjoint and in order */
export function merged(stretches: readonly Stretch[]): readonly Stretch[] {
  if (stretches.length < 2) return stretches;
  const sorted = [...stretches].sort(byStart);
  const result: Stretch[] = [];
  for (const next of sorted) {
    const last = result.at(-1);
    if (last && compareAlong(next.from, last.to) <= 0) result[result.length - 1] = { from: last.from, to: later(last.to, next.to) };
    else result.push(next);
  }
  return result;
}

/** @returns the parts of disjoint, ordered stretches that lie between two points of their line */
export function within(stretches: readonly Stretch[], from: Point, to: Point): readonly Stretch[] {
  const result: Stretch[] = [];
  for (const s of stretches) {
    if (compareAlong(s.to, from) <= 0) continue;
    if (compareAlong(s.from, to) >= 0) break;
    result.push({ from: later(s.from, from), to: earlier(s.to, to) });
  }
  return result;
}

/** @returns whether something is drawn all the way between two points of the line */
export function covers(stretches: readonly Stretch[], from: Point, to: Point): boolean {
  return stretches.some((s) => compareAlong(s.from, from) <= 0 && compareAlong(to, s.to) <= 0);
}
