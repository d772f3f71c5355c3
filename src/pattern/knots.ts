import type { Block } from '../block/block.ts';
import { leastCommonMultiple } from '../block/lattice.ts';
import { remedied } from '../block/remedy.ts';
import type { Drawing } from '../geometry/patchwork/drawing.ts';
import type { Piecing } from '../geometry/piecing/assembly.ts';
import { knotIn, type Knot, type SetIn, type WayOut } from '../geometry/piecing/knot.ts';
import type { Way } from '../geometry/piecing/way.ts';
import { sewing } from '../geometry/piecing/ways.ts';
import { gcd, type Point } from '../geometry/point.ts';
import type { Problem, Remedy } from '../measure/problem.ts';
import { capital, listed, several } from '../measure/words.ts';
import { contradictsItself } from './contradiction.ts';
import { pointText, stretchText, type Measure } from './places.ts';

/** @returns "patch 3 (Rust)", counted from 1 as in the file */
function named(block: Block, patch: number): string {
  const { fabric } = block.patches[patch]!;
  return `patch ${patch + 1} (${block.fabrics.find((f) => f.id === fabric)?.name ?? fabric})`;
}

/**
 * @param way the way to sew it that is wished for: the price of a remedy is that of the pattern that comes out
 * @returns the sentence for whole patches that cannot all stay whole, and what frees them; every remedy was tried
 */
export function knotProblem(block: Block, drawing: Drawing, measure: Measure, way: Way): Problem {
  const sewable = (changed: Drawing): boolean => sewing(changed).sewable();
  const plan = (changed: Drawing): Piecing | null => {
    if (contradictsItself(changed)) return null;
    const sew = sewing(changed);
    return sew.way(way) ?? sew.way('standard units');
  };
  const knot = knotIn(drawing, { sewable, plan });
  const remedies = [...knot.waysOut.map((out) => freeing(block, drawing, out, measure)), ...(knot.setIn ? [settingIn(block, drawing, knot.setIn, measure)] : [])];
  const possible = remedies.filter((remedy) => remedied(block, remedy).ok);
  const [cheapest] = possible.filter(({ price }) => price !== null);
  const { code, what, advice } = wordsFor(block, knot);
  const sentence = `${what}; ${cheapest ? `the cheapest way out found: ${cheapest.sentence.charAt(0).toLowerCase()}${cheapest.sentence.slice(1)}` : advice}`;
  return { code, sentence, patches: knot.patches, remedies: possible };
}

/** @returns what is wrong, in words, and what to do where no way out was found */
function wordsFor(block: Block, { patches, broken: [broken] }: Knot): { readonly code: string; readonly what: string; readonly advice: string } {
  if (broken) {
    const which = capital(named(block, broken.patch));
    const what =
      broken.why === 'seam'
        ? `${which} must stay whole, but a drawn seam runs through it`
        : `${which} must stay whole, but what shows of it has an inner corner or lies in several parts, so that no straight seams can leave it in one piece`;
    const advice = broken.why === 'seam' ? 'take that seam away or let the patch be divided.' : 'let it be divided, or draw it as several patches.';
    return { code: 'broken-whole', what, advice };
  }
  const names = capital(listed(patches.map((patch) => named(block, patch))));
  if (patches.length === 1) {
    return { code: 'knot', what: `${names} must stay whole, and every straight seam through ${block.name} would divide it`, advice: 'let it be divided.' };
  }
  return {
    code: 'knot',
    what: `${names} must all stay whole and lock each other, so that no straight seam passes between them`,
    advice: 'let some of them be divided.',
  };
}

/** @returns places one after another; each has commas of its own */
const inTurn = (places: readonly string[]): string => places.join('; ');

/** Patches and places that are named one by one, at most. */
const NAMED = 6;

/** @returns "patch 3 (Rust)", "patches 3 and 5", "17 of the patches" */
function namedAll(block: Block, patches: readonly number[]): string {
  if (patches.length === 1) return named(block, patches[0]!);
  return patches.length <= NAMED ? `patches ${listed(patches.map((patch) => `${patch + 1}`))}` : `${patches.length} of the patches`;
}

/** @returns a way out in words and as a change of the block, with its price */
function freeing(block: Block, drawing: Drawing, { freed, parts, divided, partial, piecing }: WayOut, measure: Measure): Remedy {
  const { pieces, seams, partialSeams } = piecing.figures;
  const told = divided.length <= NAMED ? inTurn(divided.map((stretch) => stretchText(stretch, measure))) : `in ${divided.length} places`;
  const places = told && ` ${told}`;
  const goes = partial.length === 0 ? '' : `, with ${several(partialSeams, 'partial seam')} (${inTurn(partial.map((stretch) => stretchText(stretch, measure)))})`;
  const what = parts ? `Divide ${namedAll(block, freed)} in two${places}, each part whole` : `Let ${namedAll(block, freed)} be divided${places}`;
  return {
    sentence: `${what}: ${several(pieces, 'piece')}, ${several(seams, 'seam')}${goes}.`,
    price: { pieces, seams, partialSeams },
    free: parts ? [] : freed,
    divide: parts && { patch: freed[0]!, ...inGridSteps(block, drawing, parts) },
    places: divided.map(({ from, to }) => [inGridUnits(block, drawing, from), inGridUnits(block, drawing, to)]),
  };
}

/** @returns what a maker could do by hand, as the last resort */
function settingIn(block: Block, drawing: Drawing, { patch, corners, pieces }: SetIn, measure: Measure): Remedy {
  const turns = inTurn(corners.map((corner) => pointText(corner, measure)));
  return {
    sentence:
      `As a last resort, by hand: sew the rest by straight seams and set ${named(block, patch)} in at the end, its seam turning at ${turns}; ` +
      `stop a seam allowance before each corner and pivot there. ${several(pieces, 'piece')}. This program writes no steps for set-in seams.`,
    price: null,
    free: [],
    divide: null,
    places: corners.map((corner) => [inGridUnits(block, drawing, corner)]),
  };
}

/** @returns a point of the drawing in grid units, for ink */
const inGridUnits = ({ grid }: Block, { width, height }: Drawing, { x, y, w }: Point): readonly [number, number] => [
  (x * grid.columns) / (width * w),
  (y * grid.rows) / (height * w),
];

/** @returns outlines between lattice points of the drawing in steps of the grid, as coarse as they can be */
function inGridSteps({ grid }: Block, { width, height }: Drawing, outlines: readonly (readonly Point[])[]) {
  const [across, down] = [width / grid.columns, height / grid.rows];
  const common = leastCommonMultiple(across, down);
  const placed = outlines.map((outline) => outline.map(({ x, y }) => [x * (common / across), y * (common / down)] as const));
  const coarser = placed.flat(2).reduce(gcd, common);
  return { parts: placed.map((outline) => outline.map(([x, y]) => [x / coarser, y / coarser] as const)), denominator: common / coarser };
}
