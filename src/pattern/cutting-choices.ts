import type { Fabric, LengthUnit, UnitMethod } from '../block/block.ts';
import type { Choices, Method } from '../block/choices.ts';
import { sourcesOf } from '../cutting/cloth/sources.ts';
import type { Cut } from '../cutting/cut.ts';
import type { CuttingChoices } from '../cutting/cutting.ts';
import { STRAIGHTENING } from '../cutting/strip-sets.ts';
import { compare, type Rational } from '../measure/rational.ts';
import { listed } from '../measure/words.ts';
import { pointText, type Measure } from './places.ts';

/** What a cutting list needs besides the choices. */
export interface CutFor {
  /** Length of one lattice step. */
  readonly step: Rational;
  readonly unit: LengthUnit;
  /** Ids, in the drawing's order. */
  readonly fabrics: readonly string[];
  /** Ids of those that stand for a family of scraps; none where absent. */
  readonly scraps?: readonly string[];
  /** Methods chosen for single units, by unit id. */
  readonly units: Readonly<Record<string, Method>>;
}

/** @returns what decides the cutting list of a pattern with these choices */
export function cuttingChoices(choices: Required<Choices>, { step, unit, fabrics, scraps, units }: CutFor): CuttingChoices {
  const { seam, ruler, trim, blocks, method, methods } = choices;
  const room = (fabric: string): Rational => {
    const { width, length } = sourcesOf(choices.cloths[fabric] ?? {}, { ...choices, unit }).bought;
    return length !== null && compare(length, width) > 0 ? length : width;
  };
  return { step, seam, ruler, trim, blocks, method, methods, units, fabrics, room, straighten: STRAIGHTENING[unit], scraps: new Set(scraps) };
}

/** @returns which prints that have an up and a down are cut head to tail, so that it is lost: one sentence, or none */
export function upsideDownNotes(cuts: readonly Cut[], fabrics: readonly Fabric[]): readonly string[] {
  const turned = fabrics.filter(({ id, directional }) => directional && cuts.some((cut) => cut.fabric === id && cut.nested !== undefined));
  if (turned.length === 0) return [];
  const names = listed(turned.map(({ name, id }) => name.trim() || id));
  return [`Triangles from strips lie head to tail, so every second one of ${names} is upside down; choose another method where the print must stand.`];
}

/** @returns that a method was chosen for a unit which is not sewn there, or not there alone */
export function lostMethodNote({ from, to, method }: UnitMethod, measure: Measure): string {
  const [left, top, right, bottom] = [Math.min(from[0], to[0]), Math.min(from[1], to[1]), Math.max(from[0], to[0]), Math.max(from[1], to[1])];
  const place = (x: number, y: number): string => pointText({ x, y, w: 1 }, measure);
  return `The method ${method} is chosen for a unit from ${place(left, top)} to ${place(right, bottom)}, but none is sewn there; it does nothing.`;
}
