import { box } from '../geometry/convex.ts';
import type { Assembly, Piecing, Unit } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { add, compare, multiply, rational, ZERO, type Rational } from '../measure/rational.ts';
import type { CutList } from '../cutting/cutting.ts';
import { layoutOf } from './layout.ts';
import type { Vocabulary } from './naming.ts';
import { nestingPlan } from './nesting.ts';
import { pressingWish, pressingWords, type Darkness } from './pressing.ts';
import type { Step } from './step.ts';
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
}

/**
 * @returns the instructions in sewing order: units from the smallest, each once with how many to make, then the block.
 * A unit's step comes after the steps of everything it is made from.
 */
export function stepsOf(piecing: Piecing, list: CutList, rules: SewingRules): readonly Step[] {
  const places = new Map<Assembly, { unit: Unit; turn: 0 | 1 | 2 | 3 }>();
  for (const unit of piecing.units) {
    for (const { assembly, turn } of unit.places) places.set(assembly, { unit, turn });
  }
  const cuts = new Map(list.cuts.map((cut) => [cut.id, cut]));
  const words: Vocabulary = { ...rules.words, cut: (id) => cuts.get(id)! };
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
  const { pressed, crossings } = nestingPlan(all, (step, join, ends) => pressingWish(all[step]!, join, ends, rules.darkness));
  return all.map((made, i): Step => {
    const how = howTo(made, words, crossings[i]!);
    const press = pressingWords(made, pressed[i]!, words);
    return { number: i + 1, ...made, pressed: pressed[i]!, how, text: instruction(how, made, words), press };
  });
}

/** @returns the finished size of an assembly in the unit of the step's length */
function sizeOf({ outline }: Assembly, step: Rational): Step['finished'] {
  const { left, right, top, bottom } = box(outline);
  const across = rational(right.x * left.w - left.x * right.w, right.w * left.w);
  const down = rational(bottom.y * top.w - top.y * bottom.w, bottom.w * top.w);
  return { width: multiply(across, step), height: multiply(down, step) };
}

/** Plain rectangles and what is cut round an outline are cut exactly, also where there is something to trim off. */
const isCutLarge = ({ role }: CutList['pieces'][number]): boolean => role !== 'plain' && role !== 'template';

/** @returns whether a unit has a seam that runs along neither side of the block: only there is anything trimmed */
function isSlanted(assembly: Assembly): boolean {
  if (assembly.kind === 'joined unit' || assembly.kind === 'partial-seam ring') return false;
  const slanted = (node: Assembly): boolean =>
    node.seams.some(({ from, to }) => from.x * to.w !== to.x * from.w && from.y * to.w !== to.y * from.w) || node.parts.some(slanted);
  return slanted(assembly);
}
