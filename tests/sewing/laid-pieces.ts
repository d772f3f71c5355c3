import type { Point } from '../../src/geometry/point.ts';
import type { Step, StepPart } from '../../src/sewing/step.ts';

/*
 * Where every piece of a block comes to lie, told from the steps alone, in doubles and by clipping: nothing of it is taken from the
 * proof, so that it can tell whether a spoilt plan still shows what it showed before.
 */

type Spot = readonly [number, number];
type Outline = readonly Spot[];

export interface LaidPiece {
  readonly fabric: string;
  /** Line of the cutting list, and what is done with what is cut there. */
  readonly from: string;
  readonly outline: Outline;
}

type Sewable = Pick<Step, 'makes' | 'parts'>;

const spotOf = ({ x, y, w }: Point): Spot => [x / w, y / w];
const span = (points: Outline): { left: number; top: number; right: number; bottom: number } => ({
  left: Math.min(...points.map(([x]) => x)),
  top: Math.min(...points.map(([, y]) => y)),
  right: Math.max(...points.map(([x]) => x)),
  bottom: Math.max(...points.map(([, y]) => y)),
});

/** @returns the pieces of one block; none where a unit is used that no step makes */
export function laidPieces(steps: readonly Sewable[]): readonly LaidPiece[] {
  const made = new Map<string, readonly LaidPiece[]>();
  for (const { makes, parts } of steps) made.set(makes, parts.flatMap((part) => laidPart(part, made)));
  return made.get('block') ?? [];
}

function laidPart({ from, turn, outline }: StepPart, made: ReadonlyMap<string, readonly LaidPiece[]>): readonly LaidPiece[] {
  const spots = outline.map(spotOf);
  if ('cut' in from) return [{ fabric: from.fabric, from: `${from.cut} ${from.role}`, outline: spots }];
  const turned = (made.get(from.unit) ?? []).map((piece) => ({ ...piece, outline: piece.outline.map((p) => quarterTurns(p, turn)) }));
  const [there, here] = [span(spots), span(turned.flatMap((piece) => piece.outline))];
  const home = ([x, y]: Spot): Spot => [x - here.left + there.left, y - here.top + there.top];
  return turned.map((piece) => ({ ...piece, outline: piece.outline.map(home) }));
}

/** Clockwise on screen about the corner of everything. */
const quarterTurns = ([x, y]: Spot, turns: number): Spot => (turns === 0 ? [x, y] : quarterTurns([-y, x], turns - 1));

const NEAR = 1e-7;

/** @returns the area of an outline, in steps squared; clockwise on screen it is positive */
export const areaOf = (outline: Outline): number =>
  outline.reduce((sum, [x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);

/** @returns how much of any outline lies inside a convex one that runs clockwise (clipped by one edge after the other) */
export function sharedArea(outline: Outline, convex: Outline): number {
  const [a, b] = [span(outline), span(convex)];
  if (a.left >= b.right || b.left >= a.right || a.top >= b.bottom || b.top >= a.bottom) return 0;
  let rest: Outline = outline;
  convex.forEach(([x, y], i) => {
    const [u, v] = convex[(i + 1) % convex.length]!;
    const depth = ([p, q]: Spot): number => (u - x) * (q - y) - (v - y) * (p - x);
    rest = rest.flatMap((p, k): Spot[] => {
      const q = rest[(k + 1) % rest.length]!;
      const [d, e] = [depth(p), depth(q)];
      const along = (axis: 0 | 1): number => p[axis] + ((q[axis] - p[axis]) * d) / (d - e);
      const crossing: Spot[] = (d < 0 && e > 0) || (d > 0 && e < 0) ? [[along(0), along(1)]] : [];
      return d >= 0 ? [p, ...crossing] : crossing;
    });
  });
  return Math.abs(areaOf(rest));
}

const differs = (a: number, b: number): boolean => Math.abs(a - b) > NEAR * Math.max(1, Math.abs(a), Math.abs(b));

/** @returns whether two ways to lay pieces show the same fabric everywhere */
export function showTheSame(one: readonly LaidPiece[], other: readonly LaidPiece[]): boolean {
  const sum = (pieces: readonly LaidPiece[]): number => pieces.reduce((total, { outline }) => total + Math.abs(areaOf(outline)), 0);
  if (differs(sum(one), sum(other))) return false;
  return one.every(({ fabric, outline }) => {
    const shared = other.reduce((total, piece) => (piece.fabric === fabric ? total + sharedArea(outline, piece.outline) : total), 0);
    return !differs(shared, areaOf(outline));
  });
}

/** @returns whether both lay the very same pieces, from the same lines of the list, in the same places */
export function areTheSame(one: readonly LaidPiece[], other: readonly LaidPiece[]): boolean {
  const place = ([x, y]: Spot): string => `${Math.round(x * 1e6)},${Math.round(y * 1e6)}`;
  const name = ({ fabric, from, outline }: LaidPiece): string => `${fabric} ${from}: ${outline.map(place).sort().join(' ')}`;
  const names = (pieces: readonly LaidPiece[]): string => pieces.map(name).sort().join('\n');
  return names(one) === names(other);
}
