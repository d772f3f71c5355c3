import type { Rational } from '../measure/rational.ts';
import type { Assembly, Piece, Piecing, Unit, UnitKind } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import type { Method } from '../block/choices.ts';
import type { Crossed } from './crossed.ts';
import { crossedAt, crossedNeeds } from './crossed.ts';
import type { Cut, Role } from './cut.ts';
import { cutLines } from './lines.ts';
import { methodsFor, usualMethod } from './methods.ts';
import type { CuttingRules, Need } from './needs.ts';
import type { UnitPlace } from './recipes.ts';
import { allowsFourAtATime, pieceNeed, unitNeeds } from './recipes.ts';

/** Everything that decides a cutting list besides the piecing; lengths in the block's unit. */
export interface CuttingChoices extends CuttingRules {
  /** Absent kinds take the trade's usual method. */
  readonly methods: Readonly<Partial<Record<UnitKind, Method>>>;
  /** Ids in the drawing's order; the list follows it. */
  readonly fabrics: readonly string[];
}

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
  /** The method each unit is really cut by, by unit id ('block' where the block is one unit); joined units are not among them. */
  readonly methods: Readonly<Record<string, Method>>;
  /** What a maker should know: one sentence each. */
  readonly notes: readonly string[];
}

/**
 * @returns what to cut for a block sewn this way: every line rounded up to the ruler, equal cuts of a fabric together, squares that
 * serve several units counted once
 * @throws RangeError when a size leaves what can be held exactly
 */
export function cutList(piecing: Piecing, choices: CuttingChoices): CutList {
  const { places, singles } = takenApart(piecing);
  const methods: Record<string, Method> = {};
  const notes: string[] = [];
  const needs: Need[] = singles.map(({ piece, unit }) => pieceNeed(piece, unit, choices));
  const crossed: Crossed[] = [];
  for (const place of places) {
    const { method, note } = methodAt(place, choices);
    if (note !== null && !notes.includes(note)) notes.push(note);
    methods[place.unit] = method;
    const crossing = method === 'two-at-a-time' && place.kind !== 'half-square triangle' ? crossedAt(place, choices) : null;
    if (crossing !== null) crossed.push(crossing);
    else needs.push(...(unitNeeds(place, method, choices) ?? place.pieces.map((piece) => pieceNeed(piece, place.unit, choices))));
  }
  // Rings and free units have no recipe: their pieces, or the units in them, are cut by themselves.
  for (const { id, kind } of piecing.units) {
    const usual = usualMethod(kind);
    if (usual !== null) methods[id] ??= usual;
  }
  const { needs: shared, unasked } = crossedNeeds(crossed, choices);
  for (const { unit, count } of unasked) notes.push(mirrorNote(unit, count));
  const lines = cutLines([...needs, ...shared], choices.fabrics);
  const pieces = lines.flatMap(({ cut, needs: served }) =>
    served.flatMap((need) => need.pieces.map((piece) => ({ piece, cut: cut.id, role: need.role }))),
  );
  return { cuts: lines.map(({ cut }) => cut), pieces: pieces.sort((a, b) => a.piece - b.piece), methods, notes };
}

/** @returns the methods that can cut this unit, the usual one first: those of its kind without what its fabrics rule out */
export function methodsThatFit({ id, kind, places }: Unit, step: Rational): readonly Method[] {
  const { assembly } = places[0]!;
  const place = { unit: id, kind, outline: assembly.outline, pieces: piecesOf(assembly) };
  return methodsFor(kind).filter((method) => method !== 'four-at-a-time' || allowsFourAtATime(place, step));
}

/** The method a place is cut by, and what to say when it is not the one that was asked for. */
function methodAt(place: UnitPlace, { methods, step }: CuttingChoices): { method: Method; note: string | null } {
  const usual = usualMethod(place.kind) ?? 'template';
  const asked = methods[place.kind] ?? usual;
  const name = place.unit === 'block' ? 'The block' : `Unit ${place.unit}`;
  if (asked !== usual && !methodsFor(place.kind).includes(asked)) {
    return { method: usual, note: `${name} (${place.kind}) cannot be cut ${asked}; it is cut ${usual}.` };
  }
  if (asked === 'four-at-a-time' && !allowsFourAtATime(place, step)) {
    const note = `${name} (${place.kind}) has corners of two fabrics, which four at a time cannot make; it is cut stitch-and-flip.`;
    return { method: 'stitch-and-flip', note };
  }
  return { method: asked, note: null };
}

const mirrorNote = (unit: string, count: number): string => {
  const whose = unit === 'block' ? 'the block' : `unit ${unit}`;
  return `Two at a time makes mirror images: ${count} of ${whose} ${count === 1 ? 'is' : 'are'} left over.`;
};

/** A piece that is cut by itself, and the unit it goes into. */
interface Single {
  readonly piece: Piece;
  readonly unit: string;
}

/** The places where units of the catalogue are sewn, and the pieces that belong to none. */
function takenApart({ root, units }: Piecing): { readonly places: readonly UnitPlace[]; readonly singles: readonly Single[] } {
  const names = new Map(units.flatMap(({ id, places }) => places.map(({ assembly }) => [nameKey(assembly), id])));
  const places: UnitPlace[] = [];
  const singles: Single[] = [];
  const walk = (node: Assembly, around: string): void => {
    if (node.piece !== undefined) singles.push({ piece: node.piece, unit: around });
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
  node.kind !== undefined && methodsFor(node.kind).some((method) => method !== 'template') && !node.parts.some(holdsUnit);

const holdsUnit = (node: Assembly): boolean => (node.kind !== undefined && node.parts.length > 0) || node.parts.some(holdsUnit);

/** A unit's place is known by its pieces, also when the tree has been copied. */
const nameKey = (assembly: Assembly): string =>
  `${assembly.kind}|${piecesOf(assembly)
    .map(({ id }) => id)
    .sort((a, b) => a - b)
    .join()}`;
