import type { Rational } from '../measure/rational.ts';
import type { Assembly, Piece, Piecing, Unit, UnitKind } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import type { Method } from '../block/choices.ts';
import type { Crossed } from './crossed.ts';
import { crossedAt, crossedNeeds } from './crossed.ts';
import type { Cut, Role } from './cut.ts';
import { cutLines } from './lines.ts';
import { methodsFor, methodsLike, usualMethod } from './methods.ts';
import type { CutNote } from './notes.ts';
import type { Need } from './needs.ts';
import type { UnitPlace } from './recipes.ts';
import { allowsFourAtATime, pieceNeed, unitNeeds } from './recipes.ts';
import { eachSetUnit, setNeeds, type SetRules } from './strip-sets.ts';

/** Everything that decides a cutting list besides the piecing; lengths in the block's unit. */
export interface CuttingChoices extends SetRules {
  /** By unit id ('block' where the block is one unit): before what is chosen for its kind. */
  readonly units?: Readonly<Record<string, Method>>;
  /** Before what is chosen for all kinds. */
  readonly methods: Readonly<Partial<Record<UnitKind, Method>>>;
  /** For all kinds that know it or something of its nature; the others, and all where it is absent, take the trade's usual method. */
  readonly method?: Method | 'usual';
  /** Ids in the drawing's order; the list follows it. */
  readonly fabrics: readonly string[];
}

/** Whose choice a unit's method is: made for this unit, for its kind or for the whole pattern, or nobody's. */
export type SettledBy = 'unit' | 'kind' | 'pattern' | 'usual';

export interface PieceCut {
  readonly piece: number;
  /** Id of the line the piece comes from. */
  readonly cut: string;
  readonly role: Role;
}

export interface CutList {
  readonly cuts: readonly Cut[];
  /** One for each piece of the block, in the order of their ids. */
  readonly pieces: readonly PieceCut[];
  /**
   * The method each unit is really cut by, by unit id ('block' where the block is one unit). Joined units are among them only where strip
   * sets could make them.
   */
  readonly methods: Readonly<Record<string, Method>>;
  /** What settled each of these. */
  readonly settledBy: Readonly<Record<string, SettledBy>>;
  /** What a maker should know; in words: `cutNoteText`. */
  readonly notes: readonly CutNote[];
}

/**
 * @returns what to cut for a block sewn this way: every line rounded up to the ruler, equal cuts of a fabric together, squares that
 * serve several units counted once
 * @throws RangeError when a size leaves what can be held exactly
 */
export function cutList(piecing: Piecing, choices: CuttingChoices): CutList {
  const methods: Record<string, Method> = {};
  const settledBy: Record<string, SettledBy> = {};
  const sets = inSets(piecing, choices, methods, settledBy);
  const { places, singles } = takenApart(piecing, sets.pieces);
  const notes = new Map<string, CutNote>();
  for (const unit of sets.refused) notes.set(unit, { note: 'otherMethod', unit, kind: 'joined unit', asked: 'strip-sets', taken: 'pieces', why: 'no strips' });
  const needs: Need[] = [...sets.needs, ...singles.map(({ piece, unit }) => pieceNeed(piece, unit, choices))];
  const crossed: Crossed[] = [];
  for (const place of places) {
    const { method, by, note } = methodAt(place, choices);
    if (note !== null) notes.set(JSON.stringify(note), note);
    methods[place.unit] = method;
    settledBy[place.unit] = by;
    const crossing = method === 'two-at-a-time' && place.kind !== 'half-square triangle' ? crossedAt(place, choices) : null;
    if (crossing !== null) crossed.push(crossing);
    else needs.push(...(unitNeeds(place, method, choices) ?? place.pieces.map((piece) => pieceNeed(piece, place.unit, choices))));
  }
  // Rings and free units have no recipe: their pieces, or the units in them, are cut by themselves.
  for (const { id, kind } of piecing.units) {
    const usual = kind === 'joined unit' ? null : usualMethod(kind);
    if (usual === null) continue;
    methods[id] ??= usual;
    settledBy[id] ??= 'usual';
  }
  const { needs: shared, unasked } = crossedNeeds(crossed, choices);
  const lines = cutLines([...needs, ...shared], choices.fabrics, choices.room);
  const pieces = lines.flatMap(({ cut, needs: served }) =>
    served.flatMap((need) => need.pieces.map((piece) => ({ piece, cut: cut.id, role: need.role }))),
  );
  return {
    cuts: lines.map(({ cut }) => cut),
    pieces: pieces.sort((a, b) => a.piece - b.piece),
    methods,
    settledBy,
    notes: [...notes.values(), ...unasked.map((left): CutNote => ({ note: 'mirrorImages', ...left })), ...trimNotes(places, methods, choices)],
  };
}

/**
 * Decides which units are sewn in strip sets, and takes down the method of each that could be.
 * @returns what these take, and their pieces; the units for which strip sets are chosen though they cannot make them
 */
function inSets(
  piecing: Piecing,
  choices: CuttingChoices,
  methods: Record<string, Method>,
  settledBy: Record<string, SettledBy>,
): { readonly needs: readonly Need[]; readonly pieces: ReadonlySet<number>; readonly refused: readonly string[] } {
  const needs: Need[] = [];
  const nowhere = eachSetUnit(piecing, choices, (unit) => {
    const asked: readonly (readonly [SettledBy, Method | undefined])[] = [
      ['unit', choices.units?.[unit.unit]],
      ['kind', choices.methods['joined unit']],
      ['pattern', methodsLike(choices.method ?? 'usual', 'joined unit')[0]],
    ];
    const [by, method] = asked.find(([, one]) => one === 'pieces' || one === 'strip-sets') ?? (['usual', 'pieces'] as const);
    methods[unit.unit] = method!;
    settledBy[unit.unit] = by;
    if (method === 'strip-sets') needs.push(...setNeeds(unit, choices));
    return method === 'strip-sets';
  });
  const refused = [{ id: 'block', kind: piecing.root.kind }, ...piecing.units].filter(({ id, kind }) => {
    return kind === 'joined unit' && choices.units?.[id] === 'strip-sets' && methods[id] === undefined && !nowhere.has(id);
  });
  return { needs, pieces: new Set(needs.flatMap(({ pieces }) => pieces)), refused: refused.map(({ id }) => id) };
}

/** @returns the methods that can cut this unit, the usual one first: those of its kind without what its fabrics, or its place, rule out */
export function methodsThatFit({ id, kind, places }: Unit, step: Rational, { methods }: Pick<CutList, 'methods'>): readonly Method[] {
  if (kind === 'joined unit') return methods[id] === undefined ? [] : methodsFor(kind);
  const { assembly } = places[0]!;
  const place = { unit: id, kind, outline: assembly.outline, pieces: piecesOf(assembly) };
  return methodsFor(kind).filter((method) => method !== 'four-at-a-time' || allowsFourAtATime(place, step));
}

/** The method a place is cut by, and what to say when it is not the one that was asked for it or for its kind. */
function methodAt(place: UnitPlace, { units, methods, method, step }: CuttingChoices): { method: Method; by: SettledBy; note: CutNote | null } {
  const { unit, kind } = place;
  const usual = usualMethod(kind) ?? 'template';
  const fits = (one: Method): boolean =>
    (one === usual || methodsFor(kind).includes(one)) && (one !== 'four-at-a-time' || allowsFourAtATime(place, step));
  const asked: readonly (readonly [SettledBy, Method | undefined])[] = [
    ['unit', units?.[unit]],
    ['kind', methods[kind]],
    ...methodsLike(method ?? 'usual', kind).map((one) => ['pattern', one] as const),
    ['usual', usual],
  ];
  const [by, taken] = asked.find((one): one is readonly [SettledBy, Method] => one[1] !== undefined && fits(one[1]))!;
  const refused = asked.find(([whose, one]) => one !== undefined && (whose === 'unit' || whose === 'kind') && !fits(one))?.[1];
  if (refused === undefined) return { method: taken, by, note: null };
  const why = refused === 'four-at-a-time' && methodsFor(kind).includes(refused) ? 'two corners' : 'not its kind';
  return { method: taken, by, note: { note: 'otherMethod', unit, kind, asked: refused, taken, why } };
}

/** Where nothing is cut larger though there is something to trim off elsewhere. */
function trimNotes(places: readonly UnitPlace[], methods: CutList['methods'], { trim }: CuttingChoices): readonly CutNote[] {
  if (trim.n === 0) return [];
  const centred = new Set(
    places.filter(({ unit, kind }) => kind === 'square in a square' && methods[unit]!.startsWith('triangles')).map(({ unit }) => unit),
  );
  const outlined = new Set(Object.keys(methods).filter((unit) => methods[unit] === 'template' && places.some((place) => place.unit === unit)));
  return [
    ...(centred.size > 0 ? [{ note: 'centreUntrimmed', units: [...centred] } as const] : []),
    ...(outlined.size > 0 ? [{ note: 'outlinedUntrimmed', units: [...outlined] } as const] : []),
  ];
}

/** A piece that is cut by itself, and the unit it goes into. */
interface Single {
  readonly piece: Piece;
  readonly unit: string;
}

/**
 * @param apart ids of pieces that are cut otherwise
 * @returns the places where units of the catalogue are sewn, and the pieces that belong to none
 */
export function takenApart({ root, units }: Piecing, apart: ReadonlySet<number> = new Set()): { readonly places: readonly UnitPlace[]; readonly singles: readonly Single[] } {
  const names = new Map(units.flatMap(({ id, places }) => places.map(({ assembly }) => [nameKey(assembly), id])));
  const places: UnitPlace[] = [];
  const singles: Single[] = [];
  const walk = (node: Assembly, around: string): void => {
    if (node.piece !== undefined && !apart.has(node.piece.id)) singles.push({ piece: node.piece, unit: around });
    if (node.parts.length === 0) return;
    const unit = (node.kind === undefined ? undefined : names.get(nameKey(node))) ?? around;
    if (isOfCatalogue(node)) places.push({ unit, kind: node.kind!, outline: node.outline, pieces: piecesOf(node) });
    else for (const part of node.parts) walk(part, unit);
  };
  walk(root, 'block');
  return { places, singles };
}

/** Units of the catalogue have methods of their own and hold no other unit. */
const isOfCatalogue = (node: Assembly): boolean =>
  node.kind !== undefined && node.kind !== 'joined unit' && methodsFor(node.kind).some((method) => method !== 'template') && !node.parts.some(holdsUnit);

const holdsUnit = (node: Assembly): boolean => (node.kind !== undefined && node.parts.length > 0) || node.parts.some(holdsUnit);

/** A unit's place is known by its pieces, also when the tree has been copied. */
const nameKey = (assembly: Assembly): string =>
  `${assembly.kind}|${piecesOf(assembly)
    .map(({ id }) => id)
    .sort((a, b) => a - b)
    .join()}`;
