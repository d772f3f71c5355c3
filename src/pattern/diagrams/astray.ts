import type { Rational } from '../../measure/rational.ts';
import { add, ZERO } from '../../measure/rational.ts';
import { samePoint } from '../../geometry/point.ts';
import { comesOut, type ComesOut, type SeamError } from '../../sewing/errors/comes-out.ts';
import { near, type Roots } from '../../sewing/errors/roots.ts';
import type { Pattern } from '../pattern.ts';
import { depthIn, middleOf, type Polygon, type Spot } from '../polygons.ts';
import { direction, ink, inkAt, plus, times } from './diagram.ts';
import type { MovedPiece } from './play-through.ts';

/** Two seams that should meet and do not. */
export interface Missed {
  /** Number of the step. */
  readonly step: number;
  readonly makes: string;
  /** How far they are apart along the seam between them, in the block's unit; more than 0. */
  readonly apart: Rational;
}

/** A block as it really comes out, when every seam and every piece is off by the same. */
export interface Astray {
  /** Every piece, finished, where it comes to lie, from the block's top-left corner as it should be; in the block's unit. */
  readonly pieces: readonly MovedPiece[];
  /** Where seams of the last step miss each other, as the pieces there come to lie. */
  readonly spots: readonly Spot[];
  /** From raw edge to raw edge, along the four sides, in the block's unit. */
  readonly width: { readonly top: Rational; readonly bottom: Rational };
  readonly height: { readonly left: Rational; readonly right: Rational };
  /** The worst of each step, those that are furthest apart first. */
  readonly missed: readonly Missed[];
}

/**
 * @param magnified how many times as far as they are things are shown astray
 * @returns the pattern's block sewn with an error
 */
export function astray(pattern: Pattern, error: SeamError, magnified: number): Astray {
  const made = comesOut(pattern.steps, error);
  const block = made.at(-1)!;
  const scale = ink(pattern.lattice.step);
  const moved = ({ x, y }: ComesOut['pieces'][number]['shift']): Spot => times([ink(near(x)), ink(near(y))], magnified);
  const fabrics = fabricsOf(pattern, 'block');
  // What shows of a piece on each side of it: half of what was cut too much, less what the seam takes too much.
  const more = ink(error.cutting) / 2 - ink(error.allowance);
  const { width, height } = pattern.block.unfinished;
  const grown = (side: Rational, by: Roots): Rational => add(side, near(by));
  return {
    pieces: block.pieces.map(({ outline, shift }, i) => {
      const by = moved(shift);
      const patch = grownBy(outline.map((point) => inkAt(point, scale)), more * magnified);
      return { fabric: fabrics[i]!, outline: patch.map((spot) => plus(spot, by)) };
    }),
    spots: block.misses.filter(({ by }) => lengthOf(by) > NOTHING).map(({ at }) => {
      const there = block.pieces.find(({ outline }) => outline.some((point) => samePoint(point, at)));
      return plus(inkAt(at, scale), there ? moved(there.shift) : [0, 0]);
    }),
    width: { top: grown(width, block.wider.top), bottom: grown(width, block.wider.bottom) },
    height: { left: grown(height, block.higher.left), right: grown(height, block.higher.right) },
    missed: worstOf(pattern, made),
  };
}

/** How much of itself a piece may lose in a picture, so that something of it is left. */
const SHRINKS = 0.9;

/** @returns a convex outline, clockwise, with every side further out by so much; a negative one never takes all of it */
function grownBy(outline: Polygon, by: number): Polygon {
  const ways = outline.map((p, i) => direction(p, outline[(i + 1) % outline.length]!));
  const out = Math.max(by, -SHRINKS * depthIn(outline, middleOf(outline)));
  return outline.map((p, i) => {
    const [[ax, ay], [bx, by]] = [ways.at(i - 1)!, ways[i]!];
    // Outward of a side that runs clockwise is its left; the corner goes where both sides do.
    const k = out / (1 + ax * bx + ay * by);
    return plus(p, [k * (ay + by), -k * (ax + bx)]);
  });
}

/** @returns the fabrics of a step's pieces, in the order in which they come to lie: part by part, units as they were made */
function fabricsOf({ steps }: Pick<Pattern, 'steps'>, makes: string): readonly string[] {
  const step = steps.find((each) => each.makes === makes)!;
  return step.parts.flatMap(({ from }) => ('unit' in from ? fabricsOf({ steps }, from.unit) : [from.fabric]));
}

const lengthOf = ({ x, y }: { readonly x: Roots; readonly y: Roots }): number => Math.hypot(ink(near(x)), ink(near(y)));

/** What is not worth telling, in the block's unit: it comes of writing roots as fractions. */
const NOTHING = 1e-4;

function worstOf({ steps }: Pattern, made: readonly ComesOut[]): readonly Missed[] {
  const worst = made.flatMap(({ makes, misses }, i): readonly (Missed & { readonly length: number })[] => {
    const lengths = misses.map(({ by }) => lengthOf(by));
    const length = Math.max(0, ...lengths);
    return length <= NOTHING ? [] : [{ step: steps[i]!.number, makes, length, apart: rounded(length) }];
  });
  return worst.sort((a, b) => b.length - a.length).map(({ step, makes, apart }) => ({ step, makes, apart }));
}

const THOUSANDTHS = 1000;
const rounded = (length: number): Rational => (length === 0 ? ZERO : { n: Math.max(1, Math.round(length * THOUSANDTHS)), d: THOUSANDTHS });
