import type { Method } from '../block/choices.ts';
import type { Fabric } from '../block/block.ts';
import { counted } from '../block/counting.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { inEnglish } from './english.ts';
import type { Speech } from './language.ts';
import type { Pattern, UnitLine } from './pattern.ts';

/** How many units come from one set of squares, which the maker cannot lay one by one. */
const TOGETHER: Partial<Readonly<Record<Method, 'two' | 'four' | 'eight'>>> = {
  'two-at-a-time': 'two',
  'four-at-a-time': 'four',
  'eight-at-a-time': 'eight',
};

/**
 * @returns where a print with an up and a down does not come to stand upright by itself, and what to do about it: one sentence for each
 * unit; none for other prints
 */
export function directionNotes(fabric: Fabric, pattern: Pattern, { language, telling }: Speech = inEnglish(pattern)): readonly string[] {
  const { units, cuts } = pattern;
  const phrases = language.pattern;
  if (!fabric.directional) return [];
  const corners = new Set(cuts.filter((cut) => cut.fabric === fabric.id).flatMap(({ uses }) => uses.flatMap(({ unit, role }) => (role === 'corner' ? [unit] : []))));
  return ownOf(units, fabric.id).flatMap((line): readonly string[] => {
    const { unit, count, method } = line;
    const all = { letter: telling.unit(unit.id), one: count === 1 };
    const { sideways, down } = turnedPlaces(line);
    const some = (n: number) => (n > 0 ? counted(n, telling) : null);
    const together = (method && TOGETHER[method]) ?? null;
    const flipped = method === 'stitch-and-flip' && corners.has(unit.id);
    const notes: string[] = [];
    if (together && count > 1) {
      notes.push(phrases.laidTogether(together, all));
    } else if (sideways + down > 0) {
      notes.push((method === 'strip-sets' ? phrases.turnedSets : phrases.turned)(some(sideways), some(down), all));
    }
    if (flipped) notes.push(phrases.flipped(all));
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

/** @returns in how many places a unit lies sideways, and in how many upside down, over all blocks */
function turnedPlaces({ unit: { places }, count }: UnitLine): { readonly sideways: number; readonly down: number } {
  const each = count / places.length;
  const turns = (...which: readonly number[]): number => places.filter(({ turn }) => which.includes(turn)).length * each;
  return { sideways: turns(1, 3), down: turns(2) };
}

/** @returns the same sentences for all fabrics of a pattern, each with the name of its fabric before it */
export const allDirectionNotes = (pattern: Pattern, speech: Speech = inEnglish(pattern)): readonly string[] =>
  pattern.fabrics.flatMap(({ fabric }) => {
    const named = speech.language.pattern.hasUpAndDown(speech.telling.cloth(fabric.id));
    return directionNotes(fabric, pattern, speech).map((note) => `${named} ${note}`);
  });
