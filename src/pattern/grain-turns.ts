import { grainOf } from '../cutting/grain.ts';
import type { Cut } from '../cutting/cut.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import type { Pattern } from './pattern.ts';

/** By how much cloth is turned clockwise where a piece lies, in degrees: from how it lies on the table to be cut, its length up and down. */
export type GrainTurns = ReadonlyMap<number, number>;

/**
 * @returns how the cloth of every piece lies in the block: as it is cut, and then turned with its unit; slantwise where its straight grain runs
 * aslant. A print that runs one way lies upright wherever a piece can. As ink: nearest doubles.
 */
export function grainTurns({ pieces, units, cuts, lattice, choices, steps }: Pattern): GrainTurns {
  const roles = new Map(steps.flatMap(({ parts }) => parts.flatMap(({ from }) => ('cut' in from ? [[from.cut, from.role] as const] : []))));
  const cutOf = new Map<number, Cut>(cuts.flatMap((cut) => cut.pieces.map((id) => [id, cut] as const)));
  const turnOf = new Map<number, number>();
  // Units come smallest first, and a piece is cut for the smallest that it is in; how that one lies in the block is told of its first place.
  for (const { unit } of units) {
    for (const { assembly, turn } of unit.places) for (const { id } of piecesOf(assembly)) if (!turnOf.has(id)) turnOf.set(id, turn);
  }
  return new Map(pieces.map(({ id, outline }) => {
    const cut = cutOf.get(id);
    const role = cut && roles.get(cut.id);
    const slant = cut && role && grainOf({ outline, role, cut }, { step: lattice.step, seam: choices.seam, trim: choices.trim }) === 'slanted';
    return [id, 90 * (turnOf.get(id) ?? 0) + (slant ? 45 : 0)] as const;
  }));
}
