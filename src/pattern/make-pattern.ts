import type { Block } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { toDrawing } from '../block/drawing.ts';
import { cutList, methodsThatFit } from '../cutting/cutting.ts';
import { stripPlan } from '../cutting/strips.ts';
import { box } from '../geometry/convex.ts';
import { boundariesOf } from '../geometry/patchwork/boundaries.ts';
import type { Drawing } from '../geometry/patchwork/drawing.ts';
import { patchworkOf } from '../geometry/patchwork/patchwork.ts';
import type { Piecing, Unit } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { otherWays, sewing } from '../geometry/piecing/ways.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { add, multiply, rational, type Rational } from '../measure/rational.ts';
import { prove } from '../sewing/proof.ts';
import { stepsOf } from '../sewing/steps.ts';
import { CAUTIONS } from './cautions.ts';
import { settled } from './choices.ts';
import { divisionLines } from './divisions.ts';
import { contradictsItself, knotProblem, refusedPin } from './knots.ts';
import type { Cloth, Pattern, RefusedPin, Size, UnitLine } from './pattern.ts';

/** How much is worked out: every way with its figures, or first of all the chosen one. */
export type Scope = 'all ways' | 'chosen way';

/**
 * The whole way from drawing to pattern.
 * @param choices override those saved in the block, which override the trade's usual values
 * @param scope 'chosen way' leaves the alternatives out, for a first answer sooner
 * @returns the pattern with its proof; a problem where the drawing cannot be held exactly or cannot be sewn by straight seams
 */
export function makePattern(block: Block, choices: Choices = {}, scope: Scope = 'all ways'): Result<Pattern> {
  const placed = toDrawing(block);
  if (!placed.ok) return placed;
  const { drawing, step } = placed.value;
  const chosen = settled(block, choices);
  try {
    const locked = (): Result<Pattern> => ({ ok: false, problem: knotProblem(block, drawing, { step, unit: block.finished.unit }, chosen.way) });
    if (contradictsItself(drawing)) return locked();
    const sew = sewing(drawing);
    const wished = sew.way(chosen.way);
    const piecing = wished ?? sew.way('standard units');
    if (!piecing) return locked();
    const others = scope === 'all ways' ? otherWays(sew, piecing) : [];
    const notes = wished ? [] : [`This drawing has no way "${chosen.way}"; it is sewn in ${piecing.way}.`];
    return good(patternOf(block, drawing, step, chosen, piecing, others, sew.refused.map(refusedPin), notes));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return bad('too-fine', `The drawing of ${block.name} is finer than can be held exactly: draw it on fewer or simpler fractions of the grid.`);
  }
}

function patternOf(
  block: Block,
  drawing: Drawing,
  step: Rational,
  choices: Required<Choices>,
  piecing: Piecing,
  others: readonly Piecing[],
  refusedPins: readonly RefusedPin[],
  notes: readonly string[],
): Pattern {
  const { seam, ruler, trim, blocks, methods } = choices;
  const { unit } = block.finished;
  const list = cutList(piecing, { step, seam, ruler, trim, blocks, methods, fabrics: block.fabrics.map((f) => f.id) });
  const names = new Map(block.fabrics.map((f) => [f.id, f]));
  const steps = stepsOf(piecing, list, {
    step,
    seam,
    trim,
    blocks,
    words: { unit, seam, fabricName: (id) => names.get(id)!.name },
    darkness: (id) => -brightness(names.get(id)!.color),
  });
  const cloths = block.fabrics.flatMap((fabric): (Cloth & { notes: readonly string[] })[] => {
    const cuts = list.cuts.filter((cut) => cut.fabric === fabric.id);
    return cuts.length === 0 ? [] : [{ fabric, ...stripPlan(cuts, choices.width, unit) }];
  });
  const allowances = multiply(seam, rational(2));
  const withSeams = ({ width, height }: Size): Size => ({ width: add(width, allowances), height: add(height, allowances) });
  const unitLine = (u: Unit): UnitLine => {
    const { left, right, top, bottom } = box(u.places[0]!.assembly.outline);
    const finished = { width: multiply(rational(right.x - left.x), step), height: multiply(rational(bottom.y - top.y), step) };
    return {
      unit: u,
      count: u.places.length * blocks,
      finished,
      unfinished: withSeams(finished),
      method: list.methods[u.id] ?? null,
      methods: methodsThatFit(u, step),
      pieces: piecesOf(u.places[0]!.assembly).length,
    };
  };
  const finished = { width: block.finished.width, height: block.finished.height };
  return {
    block: { name: block.name, finished, unfinished: withSeams(finished), unit },
    lattice: { width: drawing.width, height: drawing.height, step },
    choices: { ...choices, way: piecing.way },
    way: piecing.way,
    figures: piecing.figures,
    pieces: piecing.pieces,
    divisions: divisionLines(piecing, boundariesOf(patchworkOf(drawing)), { step, unit }, (id) => names.get(id)!.name),
    units: piecing.units.map(unitLine),
    cuts: list.cuts,
    steps,
    fabrics: cloths.map(({ fabric, strips, length, buy }) => ({ fabric, strips, length, buy })),
    alternatives: others.map(({ way, figures }) => ({ way, figures })),
    proof: prove({ drawing, step, seam, ruler, trim, blocks, cuts: list.cuts, steps }),
    refusedPins,
    notes: [...notes, ...list.notes, ...cloths.flatMap((cloth) => cloth.notes)],
    cautions: CAUTIONS,
  };
}

/** Brightness of #rrggbb as a whole number (the luma weights of ITU-R BT.601); only its order means anything. */
function brightness(color: string): number {
  const channel = (at: number): number => Number.parseInt(color.slice(at, at + 2), 16);
  return 299 * channel(1) + 587 * channel(3) + 114 * channel(5);
}
