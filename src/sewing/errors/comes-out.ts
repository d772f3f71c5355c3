import { box } from '../../geometry/convex.ts';
import { placed, type Turn } from '../../geometry/piecing/congruence.ts';
import { compareAlong, gcd, lineThrough, samePoint, side, type Point } from '../../geometry/point.ts';
import { add, multiply, rational, ZERO, type Rational } from '../../measure/rational.ts';
import { placementIn } from '../placement.ts';
import type { Join, Step, StepPart } from '../step.ts';
import { atStart, inCorner } from './ends.ts';
import { along, apart, minus, perLength, plus, product, STILL, times, together, whole, type Roots, type Shift } from './roots.ts';

/*
 * How a block comes out when everything is cut and sewn a little off. A seam taken too wide by e on both cloths brings the two closer by
 * 2e; pieces cut too large by c come to lie c further apart. So k pieces in a row, each with the same error, are
 * k·c − 2e·(k − 1) wider than they should be. Nothing is stretched: what is sewn to another thing is laid with its raw edges even at the
 * left end of the seam, or at its top, and comes as it comes along the rest.
 */

/** What goes wrong, in the block's unit; positive: the seam takes too much cloth, the pieces are cut too large. */
export interface SeamError {
  /** On each of the two cloths of a seam. */
  readonly allowance: Rational;
  /** Of each side of a piece, from raw edge to raw edge. */
  readonly cutting: Rational;
}

/** A piece as it comes to lie. */
export interface Astray {
  /** As it should lie, in lattice steps from the top-left corner of what the step makes. */
  readonly outline: readonly Point[];
  /** From there, in the block's unit. */
  readonly shift: Shift;
}

/** Two seams that should meet on a third. */
export interface Miss {
  readonly join: number;
  /** Where they should meet, in lattice steps from the top-left corner of what the step makes. */
  readonly at: Point;
  /** How far the seam of the join's second thing comes from that of its first, along the join. */
  readonly by: Shift;
}

/** What one step makes. */
export interface ComesOut {
  readonly makes: string;
  readonly pieces: readonly Astray[];
  readonly misses: readonly Miss[];
  /** How much larger it is than it should be, raw edge to raw edge: its width along its top and its bottom, its height left and right. */
  readonly wider: { readonly top: Roots; readonly bottom: Roots };
  readonly higher: { readonly left: Roots; readonly right: Roots };
}

interface Cloth extends Astray {
  /** Whether its unit was trimmed to size, so that it is as it should be. */
  readonly exact: boolean;
}

/** An end of a seam on the outside of something sewn. */
interface End {
  readonly at: Point;
  /** Into the seam, whole steps. */
  readonly dx: number;
  readonly dy: number;
  readonly shift: Shift;
}

interface Thing {
  readonly cloths: readonly Cloth[];
  readonly ends: readonly End[];
}

type Sewn = Pick<Step, 'makes' | 'parts' | 'joins' | 'trimmed'>;

/** @returns how what each step makes comes out, in their order; a trimmed unit is as it should be on the outside */
export function comesOut(steps: readonly Sewn[], error: SeamError): readonly ComesOut[] {
  const made = new Map<string, Thing & { readonly parts: readonly StepPart[] }>();
  return steps.map((step) => {
    const misses: Miss[] = [];
    const things: Thing[] = step.parts.map((part) => laid(part, made));
    step.joins.forEach((join, j) => {
      things.push(join.sew === 'finish' ? things[join.second]! : sewn(things[join.first]!, things[join.second]!, join, j, error, misses));
    });
    const thing = things.at(-1)!;
    made.set(step.makes, {
      parts: step.parts,
      cloths: step.trimmed ? thing.cloths.map(({ outline }) => ({ outline, shift: STILL, exact: true })) : thing.cloths,
      ends: step.trimmed ? thing.ends.map((end) => ({ ...end, shift: STILL })) : thing.ends,
    });
    return { makes: step.makes, pieces: thing.cloths, misses, ...sizeOf(thing.cloths, error) };
  });
}

/** A part as it lies in a step before anything is sewn to it. */
function laid(part: StepPart, made: ReadonlyMap<string, Thing & { readonly parts: readonly StepPart[] }>): Thing {
  const unit = 'unit' in part.from ? made.get(part.from.unit) : undefined;
  if (!unit) return { cloths: [{ outline: part.outline, shift: STILL, exact: false }], ends: [] };
  const { turn } = part;
  const placement = placementIn(unit.parts, turn, part.outline);
  return {
    cloths: unit.cloths.map((cloth) => ({ ...cloth, outline: cloth.outline.map((p) => placed(p, placement)), shift: turnedShift(cloth.shift, turn) })),
    ends: unit.ends.map((end) => {
      const way = placed({ x: end.dx, y: end.dy, w: 1 }, { turn, dx: 0, dy: 0 });
      return { at: placed(end.at, placement), dx: way.x, dy: way.y, shift: turnedShift(end.shift, turn) };
    }),
  };
}

function turnedShift({ x, y }: Shift, turn: Turn): Shift {
  if (turn === 0) return { x, y };
  return turnedShift({ x: times(y, rational(-1)), y: x }, (turn - 1) as Turn);
}

function sewn(first: Thing, second: Thing, join: Join, number: number, error: SeamError, misses: Miss[]): Thing {
  const [start, end] = compareAlong(join.from, join.to) < 0 ? [join.from, join.to] : [join.to, join.from];
  const line = lineThrough(start, end);
  const common = gcd(line.a, line.b);
  const [dx, dy] = [line.b / common, -line.a / common];
  const [one, other] = [clothAt(first, start, end), clothAt(second, start, end)];
  const front = other.outline.some((p) => side(line, p) > 0);
  // From the first to the second, square to the seam.
  const [nx, ny] = front ? [-dy, dx] : [dy, -dx];
  const [taken, added] = [takenBy(one, error), takenBy(other, error)];
  const shift = together(apart(one.shift, other.shift), along(perLength(add(taken, added), nx, ny), nx, ny));
  const moved: Thing = {
    cloths: second.cloths.map((cloth) => ({ ...cloth, shift: together(cloth.shift, shift) })),
    ends: second.ends.map((each) => ({ ...each, shift: together(each.shift, shift) })),
  };
  const isOn = ({ at }: End): boolean =>
    side(line, at) === 0 && compareAlong(start, at) * compareAlong(at, end) > 0;
  // The join runs straight on from where it begins; a slanted seam comes to it elsewhere when it runs higher or lower on the cloth.
  const out = plus(times(product(one.shift, nx, ny), rational(1, nx * nx + ny * ny)), perLength(taken, nx, ny));
  const reaches = ({ dx: x, dy: y, shift: by }: End): Roots =>
    times(minus(product(by, -y, x), times(out, rational(ny * x - nx * y))), rational(1, dy * x - dx * y));
  const ends = first.ends.filter(isOn);
  for (const near of ends) {
    for (const far of moved.ends.filter((each) => isOn(each) && samePoint(each.at, near.at))) {
      misses.push({ join: number, at: near.at, by: along(minus(reaches(far), reaches(near)), dx, dy) });
    }
  }
  const middle = along(perLength(taken, nx, ny), nx, ny);
  return {
    cloths: [...first.cloths, ...moved.cloths],
    ends: [
      ...[...first.ends, ...moved.ends].filter((each) => !isOn(each)),
      { at: start, dx, dy, shift: together(one.shift, middle) },
      { at: end, dx: -dx, dy: -dy, shift: together(one.shift, middle) },
    ],
  };
}

/** How much further out than it should be the seam runs on a cloth: half of what was cut too much, less what the allowance takes too much. */
const takenBy = ({ exact }: Cloth, { allowance, cutting }: SeamError): Rational =>
  add(exact ? ZERO : multiply(cutting, rational(1, 2)), multiply(allowance, rational(-1)));

/** @returns the cloth of a thing that lies at the beginning of a seam */
const clothAt = ({ cloths }: Thing, start: Point, end: Point): Cloth =>
  cloths[atStart(cloths.map(({ outline }) => outline), start, end)]!;

function sizeOf(cloths: readonly Cloth[], { cutting }: SeamError): Pick<ComesOut, 'wider' | 'higher'> {
  const outlines = cloths.map(({ outline }) => outline);
  const { left, right, top, bottom } = box(outlines.flat());
  const corner = (x: Point, y: Point): Cloth => cloths[inCorner(outlines, x, y)]!;
  const [topLeft, topRight, bottomLeft, bottomRight] = [corner(left, top), corner(right, top), corner(left, bottom), corner(right, bottom)];
  const more = (a: Cloth, b: Cloth): Roots =>
    whole([a, b].reduce((sum, { exact }) => (exact ? sum : add(sum, multiply(cutting, rational(1, 2)))), ZERO));
  const across = (a: Cloth, b: Cloth): Roots => plus(apart(b.shift, a.shift).x, more(a, b));
  const down = (a: Cloth, b: Cloth): Roots => plus(apart(b.shift, a.shift).y, more(a, b));
  return {
    wider: { top: across(topLeft, topRight), bottom: across(bottomLeft, bottomRight) },
    higher: { left: down(topLeft, bottomLeft), right: down(topRight, bottomRight) },
  };
}
