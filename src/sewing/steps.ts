import { box } from '../geometry/convex.ts';
import type { Assembly, Piecing, Unit } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { add, compare, multiply, rational, ZERO, type Rational } from '../measure/rational.ts';
import type { CutList } from '../cutting/cutting.ts';
import { layoutOf } from './layout.ts';
import { pressing, type Darkness } from './pressing.ts';
import type { Step } from './step.ts';
import { instruction, type Unworded, type Vocabulary } from './wording.ts';

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
  const rows = rowsOf(piecing);
  const size = (assembly: Assembly): { width: Rational; height: Rational } => {
    const { left, right, top, bottom } = box(assembly.outline);
    const across = rational(right.x * left.w - left.x * right.w, right.w * left.w);
    const down = rational(bottom.y * top.w - top.y * bottom.w, bottom.w * top.w);
    return { width: multiply(across, rules.step), height: multiply(down, rules.step) };
  };
  const write = (assembly: Assembly, unit: Unit | null, number: number): Step => {
    const id = unit?.id ?? 'block';
    const { parts, joins } = layoutOf(assembly, (node) => places.get(node)!, (piece) => list.pieces[piece]!);
    const finished = size(assembly);
    const allowances = multiply(rules.seam, rational(2));
    const made: Unworded = {
      makes: id,
      kind: unit?.kind ?? (assembly.kind === 'joined unit' || assembly.kind === undefined ? 'block' : assembly.kind),
      count: (unit?.places.length ?? 1) * rules.blocks,
      method: list.methods[id] ?? null,
      parts,
      joins,
      finished,
      unfinished: { width: add(finished.width, allowances), height: add(finished.height, allowances) },
      trimmed: compare(rules.trim, ZERO) > 0 && isSlanted(assembly),
      pieces: unit ? unit.places.flatMap((place) => piecesOf(place.assembly).map((p) => p.id)) : piecing.pieces.map((p) => p.id),
    };
    const row = unit && rows.has(unit.id) ? rows.get(unit.id)! : null;
    return { number, ...made, text: instruction(made, words), press: pressing(made, rules.darkness, rules.words.fabricName, row) };
  };
  const steps = piecing.units.map((unit, i) => write(unit.places[0]!.assembly, unit, i + 1));
  return [...steps, write(piecing.root, null, steps.length + 1)];
}

/** @returns whether a unit has a seam that runs along neither side of the block: only there is anything trimmed */
function isSlanted(assembly: Assembly): boolean {
  if (assembly.kind === 'joined unit' || assembly.kind === 'partial-seam ring') return false;
  const slanted = (node: Assembly): boolean =>
    node.seams.some(({ from, to }) => from.x * to.w !== to.x * from.w && from.y * to.w !== to.y * from.w) || node.parts.some(slanted);
  return slanted(assembly);
}

/** @returns the units that are rows (or columns) of the block, numbered from 0 in the order they first lie in it */
function rowsOf(piecing: Piecing): ReadonlyMap<string, number> {
  const rows = new Map<string, number>();
  if (piecing.root.kind !== 'joined unit') return rows;
  piecing.root.parts.forEach((part, i) => {
    const unit = piecing.units.find((u) => u.places.some((place) => place.assembly === part));
    if (unit?.kind === 'joined unit' && !rows.has(unit.id)) rows.set(unit.id, i);
  });
  return rows;
}
