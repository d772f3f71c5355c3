import type { Choices, Method } from '../block/choices.ts';
import type { Cut } from '../cutting/cut.ts';
import { makesWholeUnits } from '../cutting/whole-units.ts';
import { cutList, type CutList } from '../cutting/cutting.ts';
import { cutShape } from '../cutting/shapes.ts';
import { methodsFor, methodsLike, usualMethod } from '../cutting/methods.ts';
import { sewnInRows } from '../geometry/piecing/strip-rows.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { add, compare, ZERO, type Rational } from '../measure/rational.ts';
import { cuttingChoices } from './cutting-choices.ts';
import { clothOf } from './cloths.ts';
import type { Pattern, UnitLine } from './pattern.ts';
import { namesIn, plainSpeech } from './plain-speech.ts';
import { layoutCuts, setCuts, subcuts } from './straight-cuts.ts';

/** What the methods of a pattern come to, all its blocks together. */
export interface Effect {
  /** Squares, rectangles, strips and pieces round an outline, as they are cut from cloth. */
  readonly pieces: number;
  /** Straight cuts until all of these lie there and all triangles are cut from them, before anything is sewn; and those across strip sets. */
  readonly cuts: number;
  /** The strips of all fabrics together along the length of the cloth, laid out at once, scraps left aside; in the block's unit. */
  readonly cloth: Rational;
  /** Triangles and units beyond what the blocks need, a unit counted once. */
  readonly spare: number;
  /** Pieces that are sewn with an edge on the bias. */
  readonly bias: number;
  /** Pieces that are cut round a printed outline. */
  readonly outlined: number;
}

/** For what a method is chosen: one unit wherever it comes again, all units of its kind, or every unit there is. */
export type MethodScope = 'unit' | 'kind' | 'pattern';

/** Everything that is chosen about methods. */
export type ChosenMethods = Pick<Required<Choices>, 'method' | 'methods'> & { readonly units: Pattern['chosenUnits'] };

/** One thing that can be chosen, and what would come of it. */
export interface MethodOption {
  /** null: back to what is chosen more widely; for the whole pattern 'usual'. */
  readonly method: Method | 'usual' | null;
  /** How the unit itself would be cut; null where it would be made nowhere, since larger units are sewn of strips at once. */
  readonly becomes: Method | null;
  /** Whether the unit would be cut large and trimmed. */
  readonly trimmed: boolean;
  readonly effect: Effect;
}

const chosenMethods = ({ choices: { method, methods }, chosenUnits: units }: Pattern): ChosenMethods => ({ method, methods, units });

/**
 * @returns what is chosen once a method is chosen, or taken back (null), for a unit: a wider choice ends the narrower ones inside it,
 * so that what is chosen for every unit of a kind, or for the whole pattern, is true of every one
 */
export function choosing(pattern: Pattern, { unit }: UnitLine, scope: MethodScope, method: MethodOption['method']): ChosenMethods {
  const chosen = chosenMethods(pattern);
  const asked = method === 'usual' ? null : method;
  if (scope === 'pattern') return { method: asked ?? 'usual', methods: {}, units: {} };
  if (scope === 'unit') return { ...chosen, units: given(chosen.units, unit.id, asked) };
  const same = linesOfKind(pattern, unit.kind).map((line) => line.unit.id);
  const units = Object.fromEntries(Object.entries(chosen.units).filter(([id]) => !same.includes(id)));
  return { ...chosen, methods: given<UnitKind>(chosen.methods, unit.kind, asked), units };
}

/** @returns the units of a kind, the block itself among them where it is one */
export const linesOfKind = ({ units, whole }: Pattern, kind: UnitKind): readonly UnitLine[] =>
  [...units, ...(whole ? [whole] : [])].filter(({ unit }) => unit.kind === kind);

function given<K extends string>(map: Readonly<Partial<Record<K, Method>>>, key: K, method: Method | null): Record<K, Method> {
  const rest = Object.entries(map).filter(([name]) => name !== key);
  return Object.fromEntries(method === null ? rest : [...rest, [key, method]]) as Record<K, Method>;
}

/** @returns the cutting list of a pattern as it stands, with what each piece does in its unit */
export const listNow = (pattern: Pattern): CutList => listFor(pattern, chosenMethods(pattern));

/** @returns what the pattern's methods come to as it stands */
export const effectNow = (pattern: Pattern): Effect => effectOf(pattern, listNow(pattern));

/**
 * @returns everything that can be chosen for a unit in a scope, the way back first where there is one, then in the order in which the trade
 * would think of it; nothing for units that have no method
 */
export function offeredFor({ units, choices, chosenUnits }: Pattern, { unit, method: own, methods }: UnitLine, scope: MethodScope): readonly MethodOption['method'][] {
  if (own === null) return [];
  if (scope !== 'pattern') {
    const set = scope === 'unit' ? chosenUnits[unit.id] : choices.methods[unit.kind];
    return set === undefined ? methods : [null, ...methods];
  }
  const kinds = [...new Set([unit.kind, ...units.map((line) => line.unit.kind)])];
  const known = [...new Set(kinds.flatMap((kind) => methodsFor(kind)))];
  const answered = known.filter((method) => kinds.some((kind) => methodsLike(method, kind).some((one) => one !== usualMethod(kind))));
  return ['usual', ...answered];
}

/** @returns what the pattern would come to with one thing that is offered for a unit */
export function optionOf(pattern: Pattern, line: UnitLine, scope: MethodScope, method: MethodOption['method']): MethodOption {
  const list = listFor(pattern, choosing(pattern, line, scope, method));
  return { method, becomes: list.methods[line.unit.id] ?? null, trimmed: isTrimmed(pattern, line, list), effect: effectOf(pattern, list) };
}

/** @returns everything that is offered for a unit in a scope, each with what the pattern would come to with it */
export const optionsFor = (pattern: Pattern, line: UnitLine, scope: MethodScope): readonly MethodOption[] =>
  offeredFor(pattern, line, scope).map((method) => optionOf(pattern, line, scope, method));

function listFor({ plan, choices, lattice, block, fabrics, scraps }: Pattern, { method, methods, units }: ChosenMethods): CutList {
  const cutFor = { step: lattice.step, unit: block.unit, fabrics: fabrics.map(({ fabric }) => fabric.id), scraps: scraps.map(({ id }) => id), units };
  return cutList(plan, cuttingChoices({ ...choices, method, methods }, cutFor));
}

function isTrimmed({ choices: { trim } }: Pattern, { unit }: UnitLine, { cuts }: CutList): boolean {
  const roles = cuts.flatMap(({ uses }) => uses.filter((use) => use.unit === unit.id).map(({ role }) => role));
  return compare(trim, ZERO) > 0 && roles.some((role) => role !== 'plain' && role !== 'template' && role !== 'strip');
}

function effectOf(pattern: Pattern, list: CutList): Effect {
  const { fabrics, pieces, choices, block, lattice, plan } = pattern;
  const speech = plainSpeech(namesIn(pattern));
  const { cuts, pieces: from, methods } = list;
  const cloths = fabrics.map(({ fabric }) => {
    const own = cuts.filter((cut) => cut.fabric === fabric.id);
    return clothOf(fabric, own, pieces, choices, block.unit, speech);
  });
  const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
  const sets = new Set(Object.keys(methods).filter((id) => methods[id] === 'strip-sets'));
  const counts = new Map([['block', choices.blocks], ...sewnInRows(plan, sets).units.map(({ id, places }) => [id, places.length * choices.blocks] as const)]);
  const slanted = new Set(pieces.filter(({ outline }) => cutShape(outline, lattice.step).form !== 'rectangle').map(({ id }) => id));
  const biased = ({ piece, role }: CutList['pieces'][number]): boolean => ON_BIAS.has(role) || (role === 'template' && slanted.has(piece));
  return {
    pieces: sum(cuts.map(({ quantity }) => quantity)),
    cuts: sum(cloths.map(({ layout }) => layoutCuts(layout))) + sum(cuts.map(subcuts)) + setCuts(cuts, counts),
    cloth: cloths.map(({ fabric, length }) => (fabric.scraps ? ZERO : length)).reduce(add, ZERO),
    spare: sparesOf(cuts),
    bias: from.filter(biased).length * choices.blocks,
    outlined: sum(cuts.filter(({ shape }) => shape === 'template').map(({ quantity }) => quantity)),
  };
}

/** Triangles that are cut before they are sewn: their slanted side, or the two of a quarter. */
const ON_BIAS: ReadonlySet<string> = new Set(['half', 'quarter', 'strip-half', 'strip-quarter']);

function sparesOf(cuts: readonly Cut[]): number {
  const units = new Map<string, number>();
  let single = 0;
  for (const cut of cuts) {
    const { spare, uses } = cut;
    const key = uses.map(({ unit }) => unit).join();
    if (makesWholeUnits(cut)) units.set(key, Math.max(spare, units.get(key) ?? 0));
    else single += spare;
  }
  return [...units.values()].reduce((a, b) => a + b, single);
}
