import type { Fabric, LengthUnit } from '../block/block.ts';
import type { Choices, Method } from '../block/choices.ts';
import { sourcesOf } from '../cutting/cloth/sources.ts';
import type { Cut } from '../cutting/cut.ts';
import type { CuttingChoices } from '../cutting/cutting.ts';
import { STRAIGHTENING } from '../cutting/strip-sets.ts';
import { compare, type Rational } from '../measure/rational.ts';
import type { Speech, Wording } from './language.ts';

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
export function upsideDownNotes(cuts: readonly Cut[], fabrics: readonly Fabric[], { language, telling }: Speech<Wording>): readonly string[] {
  const turned = fabrics.filter(({ id, directional }) => directional && cuts.some((cut) => cut.fabric === id && cut.nested !== undefined));
  return turned.length === 0 ? [] : [language.pattern.upsideDown(turned.map(({ id }) => telling.cloth(id)))];
}
