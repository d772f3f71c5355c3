import type { Block, Fabric } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { toDrawing, type TrueDrawing } from '../block/drawing.ts';
import type { Cut } from '../cutting/cut.ts';
import { chosenUnits } from '../cutting/chosen-units.ts';
import { cutList, methodsThatFit } from '../cutting/cutting.ts';
import { STRAIGHTENING } from '../cutting/strip-sets.ts';
import { box } from '../geometry/convex.ts';
import type { Figures, Piecing, Unit } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { sewnInRows } from '../geometry/piecing/strip-rows.ts';
import { otherWays, sewing, type Sewing } from '../geometry/piecing/ways.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { add, multiply, rational } from '../measure/rational.ts';
import { prove } from '../sewing/proof.ts';
import { sewingPlan } from '../sewing/steps.ts';
import { settled } from './choices.ts';
import { cuttingChoices } from './cutting-choices.ts';
import { clothOf } from './cloths.ts';
import { darknessIn } from './darkness.ts';
import { divisionLines } from './divisions.ts';
import { contradictsItself } from './contradiction.ts';
import type { RareParts } from './rare-parts.ts';
import { refusedPin } from './refused-pins.ts';
import type { Pattern, Size, UnitLine } from './pattern.ts';
import { plainSpeech } from './plain-speech.ts';
import { notesOf, type Unmet } from './unmet.ts';
import { warningsOf } from './warnings.ts';
import { withinCloths } from './within-cloth.ts';

/** How much is worked out: every way with its figures, or first of all the chosen one. */
export type Scope = 'all ways' | 'chosen way';

/** What is known on the way to a pattern. */
export interface Answer {
  /** Writes the pattern of the way found so far; the same function from answer to answer while no better way is found. */
  readonly pattern: () => Result<Pattern>;
  /** Pieces of the way found so far, where the fewest pieces are looked for, and that no way has fewer than so many; else null. */
  readonly fewest: { readonly pieces: number; readonly bound: number } | null;
  /** How much longer the search may take, for what it has taken; 0 in the end. */
  readonly left: number;
}

/** @returns whether a drawing may ask for the parts of the engine that few drawings do */
export const mayAskForRare = (block: Block, choices: Choices = {}): boolean =>
  block.patches.some(({ whole }) => whole) || settled(block, choices).assembly !== 'as found';

/**
 * Looks for the pattern of a drawing step by step. What is found depends on the drawing and the choices alone, however long one waits
 * between the steps.
 * @param rare may be null where `mayAskForRare` says so
 * @yields what is known so far: sound ways, each as good as the one before or better
 * @returns the last answer, which is that of `makePattern`
 */
export function* answersBy(rare: RareParts | null, block: Block, choices: Choices = {}, scope: Scope = 'chosen way'): Generator<Answer, Answer> {
  const finer = (): Result<Pattern> =>
    bad('too-fine', `The drawing of ${block.name} is finer than can be held exactly: draw it on fewer or simpler fractions of the grid.`);
  /** A RangeError says that a number left what can be held exactly. */
  const exactly = (write: () => Result<Pattern>) => (): Result<Pattern> => {
    try {
      return write();
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      return finer();
    }
  };
  const final = (pattern: () => Result<Pattern>, figures?: Figures): Answer => ({ pattern, fewest: fewestOf(figures), left: 0 });
  const placed = toDrawing(block);
  if (!placed.ok) return final(() => placed);
  const { drawing, step } = placed.value;
  const chosen = settled(block, choices);
  try {
    const locked = (): Result<Pattern> => ({ ok: false, problem: rare!.knotProblem(block, drawing, { step, unit: block.finished.unit, speech: plainSpeech((id) => id) }, chosen.way) });
    if (contradictsItself(drawing)) return final(exactly(locked));
    const sew = sewing(drawing);
    const steps = sew.steps(chosen.way);
    let [known, pattern] = [null as (() => Piecing) | null, finer];
    for (;;) {
      const { done, value } = steps.next();
      if (!done) {
        const { piecing, cost, bound, left } = value;
        if (piecing !== known) [known, pattern] = [piecing, exactly(() => good(patternOf(rare, block, placed.value, chosen, sew, piecing(), [], [])))];
        yield { pattern, fewest: bound === null ? null : { pieces: cost, bound }, left };
        continue;
      }
      const wished = value;
      const piecing = wished ?? sew.way('standard units');
      if (!piecing) return final(exactly(locked));
      // What was found before, and is the last of it, is not written again.
      if (known?.() === piecing && scope === 'chosen way') return final(pattern, piecing.figures);
      const unmet: readonly Unmet[] = wished ? [] : [{ what: 'way', asked: chosen.way, taken: piecing.way }];
      const others = (): readonly Piecing[] => (scope === 'all ways' ? otherWays(sew, piecing) : []);
      return final(exactly(() => good(patternOf(rare, block, placed.value, chosen, sew, piecing, others(), unmet))), piecing.figures);
    }
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return final(finer);
  }
}

const fewestOf = (figures: Figures | undefined): Answer['fewest'] =>
  figures?.bound === undefined ? null : { pieces: figures.pieces, bound: figures.bound };

function patternOf(
  rare: RareParts | null,
  block: Block,
  { drawing, step, unitMethods, pressedSeams }: TrueDrawing,
  choices: Required<Choices>,
  sew: Sewing,
  found: Piecing,
  others: readonly Piecing[],
  otherWay: readonly Unmet[],
): Pattern {
  const { seam, ruler, trim, blocks, assembly } = choices;
  const put = assembly === 'as found' ? found : rare!.inOrder(found, assembly, drawing.pins);
  const plan = put ?? found;
  const { unit } = block.finished;
  const { methods: chosen, lost } = chosenUnits(plan, unitMethods);
  const list = cutList(plan, cuttingChoices(choices, { step, unit, fabrics: block.fabrics.map((f) => f.id), scraps: scrapsIn(block), units: chosen }));
  const piecing = sewnInRows(plan, new Set(Object.keys(list.methods).filter((id) => list.methods[id] === 'strip-sets')));
  const names = new Map(block.fabrics.map((f) => [f.id, f]));
  const speech = plainSpeech((id) => names.get(id)!.name);
  const { language, telling } = speech;
  const measure = { step, unit, speech };
  const { steps, pressing, unpressed } = sewingPlan(piecing, list, {
    step,
    seam,
    trim,
    blocks,
    words: { telling, phrases: language.sewing, unit, seam },
    darkness: darknessIn(block.fabrics),
    pressed: pressedSeams,
  });
  const cutsOf = (fabric: Fabric): readonly Cut[] => list.cuts.filter((cut) => cut.fabric === fabric.id);
  const cutFrom = block.fabrics.filter((fabric) => cutsOf(fabric).length > 0);
  const fabrics = cutFrom
    .filter(({ scraps }) => !scraps)
    .map((fabric) => clothOf(fabric, cutsOf(fabric), piecing.pieces, choices, unit, speech));
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
      methods: methodsThatFit(u, step, list),
      settledBy: list.settledBy[u.id] ?? null,
      pieces: piecesOf(u.places[0]!.assembly).length,
    };
  };
  const finished = { width: block.finished.width, height: block.finished.height };
  const lattice = { width: drawing.width, height: drawing.height, step };
  const units = piecing.units.map(unitLine);
  const { root } = piecing;
  const wholeUnit = root.kind && unitLine({ id: 'block', kind: root.kind, key: '', places: [{ assembly: root, turn: 0 }] });
  const within = withinCloths(block, sew.boundaries);
  const unmet: readonly Unmet[] = [
    ...otherWay,
    ...(put ? [] : [{ what: 'assembly', asked: assembly } as const]),
    ...lost.map((one) => ({ what: 'method', ...one }) as const),
    ...unpressed.map((i) => ({ what: 'pressing', from: pressedSeams[i]!.from, to: pressedSeams[i]!.to }) as const),
  ];
  return {
    block: { name: block.name, finished, unfinished: withSeams(finished), unit },
    lattice,
    choices: { ...choices, way: piecing.way, ...(!put && { assembly: 'as found' as const }) },
    way: piecing.way,
    figures: piecing.figures,
    pieces: piecing.pieces,
    piecing,
    plan,
    withinCloths: within,
    divisions: divisionLines(piecing, sew.boundaries, measure),
    units,
    whole: wholeUnit && wholeUnit.methods.length > 0 ? wholeUnit : null,
    chosenUnits: chosen,
    cuts: list.cuts,
    steps,
    pressing,
    fabrics,
    scraps: cutFrom.filter(({ scraps }) => scraps),
    heldPrints: block.patches.flatMap(({ print }, patch) => (print ? [{ patch, print }] : [])),
    alternatives: others.map(({ way, figures }) => ({ way, figures })),
    proof: prove({ drawing, step, seam, ruler, trim, straighten: STRAIGHTENING[unit], blocks, cuts: list.cuts, steps }),
    refusedPins: sew.refused.map((refused) => refusedPin(refused, speech)),
    warnings: warningsOf({ piecing, list, block: { finished, unit }, lattice, choices, fabrics, units: units.map((line) => line.finished), speech }),
    unmet,
    notes: notesOf({ unmet, list, fabrics: block.fabrics, cloths: fabrics, withinCloths: within }, measure),
    cautions: language.pattern.cautions,
  };
}

const scrapsIn = ({ fabrics }: Block): readonly string[] => fabrics.filter(({ scraps }) => scraps).map(({ id }) => id);
