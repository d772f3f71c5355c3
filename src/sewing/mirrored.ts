import type { Assembly, Unit } from '../geometry/piecing/assembly.ts';
import { Congruences, piecesOf } from '../geometry/piecing/congruence.ts';
import type { Point } from '../geometry/point.ts';
import type { Vocabulary } from './naming.ts';

const inMirror = (outline: readonly Point[]): readonly Point[] => outline.map(({ x, y, w }) => ({ x: -x + 0, y, w })).reverse();

/** @returns for the letter of each unit that is another one's mirror image the letter of the other: the two look alike, and are not */
export function mirrorTwins(units: readonly Unit[]): ReadonlyMap<string, string> {
  const letters = new Map(units.map(({ key, id }) => [key, id]));
  const congruences = new Congruences();
  const twins = units.flatMap(({ id, kind, places }): [string, string][] => {
    const pieces = piecesOf(places[0]!.assembly);
    const parts = pieces.map((piece): Assembly => {
      const outline = inMirror(piece.outline);
      return { outline, piece: { ...piece, outline }, parts: [], seams: [] };
    });
    const { key } = congruences.of({ outline: inMirror(places[0]!.assembly.outline), kind, parts, seams: [] });
    const twin = letters.get(key);
    return twin === undefined || twin === id ? [] : [[id, twin]];
  });
  return new Map(twins);
}

/** @returns the sentence that warns of a unit's mirror image, a blank before it; empty where it has none */
export const mirrorWords = (twin: string | undefined, { phrases, telling }: Pick<Vocabulary, 'phrases' | 'telling'>): string =>
  twin === undefined ? '' : ` ${phrases.steps.mirrored(telling.unit(twin))}`;
