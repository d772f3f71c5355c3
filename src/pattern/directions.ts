import type { Method } from '../block/choices.ts';
import type { Fabric } from '../block/block.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { listed } from '../measure/words.ts';
import type { Pattern, UnitLine } from './pattern.ts';

/** How many units come from one set of squares, which the maker cannot lay one by one. */
const TOGETHER: Partial<Readonly<Record<Method, string>>> = {
  'two-at-a-time': 'Two',
  'four-at-a-time': 'Four',
  'eight-at-a-time': 'Eight',
};

/**
 * @returns where a print with an up and a down does not come to stand upright by itself, and what to do about it: one sentence for each
 * unit; none for other prints
 */
export function directionNotes(fabric: Fabric, { units, cuts }: Pattern): readonly string[] {
  if (!fabric.directional) return [];
  const corners = new Set(cuts.filter((cut) => cut.fabric === fabric.id).flatMap(({ uses }) => uses.flatMap(({ unit, role }) => (role === 'corner' ? [unit] : []))));
  return ownOf(units, fabric.id).flatMap((line): readonly string[] => {
    const { unit, count, method } = line;
    const all = `${count === 1 ? 'unit' : 'the units'} ${unit.id}`;
    const turned = turnedWords(line);
    const together = (method && TOGETHER[method]) ?? null;
    const flipped = method === 'stitch-and-flip' && corners.has(unit.id);
    const notes: string[] = [];
    if (together && count > 1) {
      const how = together === 'Two' ? `it is upside down in every second of ${all}` : `it runs in all directions in ${all}`;
      notes.push(`${together} at a time, and laid alike, ${how}; cut its triangles one by one if it should stay upright.`);
    } else if (turned) {
      notes.push(`Made alike, ${turned} of ${all} in the block; lay its pieces upright for each place before you cut diagonals and sew, if it should not.`);
    }
    if (flipped) {
      notes.push(`Corners of ${all} are flipped over: lay their squares with the print sideways, try one with a pin, and it comes to stand upright.`);
    }
    return notes;
  });
}

/** @returns the units in which pieces of a fabric are sewn that are in no smaller unit */
function ownOf(units: readonly UnitLine[], fabric: string): readonly UnitLine[] {
  const claimed = new Set<number>();
  return units.filter(({ unit }) => {
    const pieces = unit.places.flatMap(({ assembly }) => piecesOf(assembly));
    const own = pieces.filter((piece) => piece.fabric === fabric && !claimed.has(piece.id));
    for (const { id } of pieces) claimed.add(id);
    return own.length > 0;
  });
}

/** @returns "it runs sideways in 2 and upside down in 1": in how many places of a unit it is turned; empty where it is in none */
function turnedWords({ unit: { places }, count }: UnitLine): string {
  const each = count / places.length;
  const turns = (...which: readonly number[]): number => places.filter(({ turn }) => which.includes(turn)).length * each;
  const [sideways, down] = [turns(1, 3), turns(2)];
  const said = [...(sideways > 0 ? [`sideways in ${sideways}`] : []), ...(down > 0 ? [`upside down in ${down}`] : [])];
  return said.length === 0 ? '' : `it runs ${listed(said)}`;
}

/** @returns the same sentences for all fabrics of a pattern, each with the name of its fabric before it */
export const allDirectionNotes = (pattern: Pattern): readonly string[] =>
  pattern.fabrics.flatMap(({ fabric }) => directionNotes(fabric, pattern).map((note) => `${fabric.name.trim() || fabric.id} has an up and a down. ${note}`));
