import { box } from '../geometry/convex.ts';
import type { Assembly, Piecing, Unit } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import type { PressedSeam } from '../block/block.ts';
import { add, compare, multiply, rational, ZERO, type Rational } from '../measure/rational.ts';
import type { Cut } from '../cutting/cut.ts';
import type { CutList } from '../cutting/cutting.ts';
import { layoutOf } from './layout.ts';
import { mirrorTwins, mirrorWords } from './mirrored.ts';
import type { Vocabulary } from './naming.ts';
import { forcedSeams } from './pressing/forced.ts';
import { pressingPlan, type PressingPlan } from './pressing/plan.ts';
import type { Darkness } from './pressing/trouble.ts';
import { pressingWords } from './pressing/words.ts';
import type { Pressing, SeamPoint, Step } from './step.ts';
import { howTo, instruction, type Unworded } from './wording.ts';

/** What turns a piecing and its cutting list into instructions; lengths in the block's unit. */
export interface SewingRules {
  /** Length of one lattice step. */
  readonly step: Rational;
  readonly seam: Rational;
  readonly trim: Rational;
  readonly blocks: number;
  readonly words: Omit<Vocabulary, 'cut'>;
  readonly darkness: Darkness;
  /** How the maker wants single seams pressed, in lattice steps; of two that contradict each other the later holds. */
  readonly pressed?: readonly PressedSeam[];
}

/** The instructions, and how good their pressing is. */
export interface SewingPlan {
  readonly steps: readonly Step[];
  readonly pressing: Pressing;
  /** Indices of the maker's pressings that lie on no seam. */
  readonly unpressed: readonly number[];
}

/** @returns the instructions alone, see `sewingPlan` */
export const stepsOf = (piecing: Piecing, list: CutList, rules: SewingRules): readonly Step[] => sewingPlan(piecing, list, rules).steps;

/**
 * @returns the instructions in sewing order: units from the smallest, each once with how many to make, then the block.
 * A unit's step comes after the steps of everything it is made from.
 */
export function sewingPlan(piecing: Piecing, list: CutList, rules: SewingRules): SewingPlan {
  const places = new Map<Assembly, { unit: Unit; turn: 0 | 1 | 2 | 3 }>();
  for (const unit of piecing.units) {
    for (const { assembly, turn } of unit.places) places.set(assembly, { unit, turn });
  }
  const words = wordsFor(list.cuts, rules.words);
  const laid = (assembly: Assembly, unit: Unit | null): Unworded => {
    const id = unit?.id ?? 'block';
    const finished = sizeOf(assembly, rules.step);
    const allowances = multiply(rules.seam, rational(2));
    return {
      makes: id,
      kind: unit?.kind ?? (assembly.kind === 'joined unit' || assembly.kind === undefined ? 'block' : assembly.kind),
      count: (unit?.places.length ?? 1) * rules.blocks,
      method: list.methods[id] ?? null,
      ...layoutOf(
        assembly,
        (node) => places.get(node)!,
        (piece) => list.pieces[piece]!,
      ),
      finished,
      unfinished: { width: add(finished.width, allowances), height: add(finished.height, allowances) },
      trimmed: compare(rules.trim, ZERO) > 0 && isSlanted(assembly) && piecesOf(assembly).some(({ id: piece }) => isCutLarge(list.pieces[piece]!)),
      pieces: unit ? unit.places.flatMap((place) => piecesOf(place.assembly).map((p) => p.id)) : piecing.pieces.map((p) => p.id),
    };
  };
  const all = [...piecing.units.map((unit) => laid(unit.places[0]!.assembly, unit)), laid(piecing.root, null)];
  const forced = forcedSeams(all, [...piecing.units.map(({ places: each }) => each), [{ assembly: piecing.root, turn: 0 }]], rules.pressed ?? []);
  const plan = pressingPlan(all, rules.darkness, forced.of);
  const steps = worded(
    all.map((made, i) => ({ number: i + 1, ...made, pressed: plan.pressed[i]!, points: plan.points[i]! })),
    piecing.units,
    words,
  );
  return { steps, pressing: pressingOf(steps, plan, rules.blocks), unpressed: forced.unplaced };
}

/** @returns what sentences about these cuts are made from */
export function wordsFor(list: readonly Cut[], words: Omit<Vocabulary, 'cut'>): Vocabulary {
  const cuts = new Map(list.map((cut) => [cut.id, cut]));
  return { ...words, cut: (id) => cuts.get(id)! };
}

/** A step that may have no words yet. */
type Wordless = Omit<Step, 'how' | 'text' | 'press'>;

/**
 * @param units that the steps make
 * @returns the same steps, told in these words
 */
export function worded(steps: readonly Wordless[], units: readonly Unit[], words: Vocabulary): readonly Step[] {
  const twins = mirrorTwins(units);
  return steps.map((step) => {
    const how = `${howTo(step, words, step.points)}${mirrorWords(twins.get(step.makes), words)}`;
    return { ...step, how, text: instruction(how, step, words), press: pressingWords(step, step.pressed, words) };
  });
}

/** @returns the figures of one block */
function pressingOf(steps: readonly Step[], { apart, apartAtLeast, proved }: PressingPlan, blocks: number): Pressing {
  const many = (...lie: readonly SeamPoint['lie'][]): number =>
    steps.reduce((sum, { points, count }) => sum + (points.filter((point) => lie.includes(point.lie)).length * count) / blocks, 0);
  return {
    points: many('opposite ways', 'the same way', 'open'),
    sameWay: many('the same way'),
    open: many('open'),
    apart: apart / blocks,
    apartAtLeast: apartAtLeast / blocks,
    proved,
  };
}

/** @returns the finished size of an assembly in the unit of the step's length */
function sizeOf({ outline }: Assembly, step: Rational): Step['finished'] {
  const { left, right, top, bottom } = box(outline);
  const across = rational(right.x * left.w - left.x * right.w, right.w * left.w);
  const down = rational(bottom.y * top.w - top.y * bottom.w, bottom.w * top.w);
  return { width: multiply(across, step), height: multiply(down, step) };
}

/** Plain rectangles and what is cut round an outline are cut exactly, also where there is something to trim off. */
const isCutLarge = ({ role }: CutList['pieces'][number]): boolean => role !== 'plain' && role !== 'template' && role !== 'strip';

/** @returns whether a unit has a seam that runs along neither side of the block: only there is anything trimmed */
function isSlanted(assembly: Assembly): boolean {
  if (assembly.kind === 'joined unit' || assembly.kind === 'partial-seam ring') return false;
  const slanted = (node: Assembly): boolean =>
    node.seams.some(({ from, to }) => from.x * to.w !== to.x * from.w && from.y * to.w !== to.y * from.w) || node.parts.some(slanted);
  return slanted(assembly);
}
