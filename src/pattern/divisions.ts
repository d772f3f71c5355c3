import { merged, type Boundary } from '../geometry/patchwork/boundaries.ts';
import type { Piecing } from '../geometry/piecing/assembly.ts';
import { divisionsIn, type Division } from '../geometry/piecing/divisions.ts';
import { compareAlong, lineKey, lineThrough } from '../geometry/point.ts';
import type { DivisionLine } from './pattern.ts';
import { seamText, type Measure } from './places.ts';

/**
 * @param fabricName what a fabric is called
 * @returns where seams run through one fabric and what that costs: one line for each straight line and fabric, those that come apart first first
 */
export function divisionLines(
  piecing: Pick<Piecing, 'divisions' | 'pieces'>,
  boundaries: ReadonlyMap<string, Boundary>,
  measure: Measure,
  fabricName: (id: string) => string,
): readonly DivisionLine[] {
  const lines = new Map<string, Division[]>();
  for (const division of divisionsIn(piecing, boundaries).toReversed()) {
    const key = `${lineKey(lineThrough(division.from, division.to))} ${division.fabric}`;
    const known = lines.get(key);
    if (known) known.push(division);
    else lines.set(key, [division]);
  }
  return [...lines.values()].map((divisions): DivisionLine => {
    const { fabric } = divisions[0]!;
    const places = divisions.toSorted((a, b) => compareAlong(a.from, b.from));
    const more = places.reduce((sum, place) => sum + place.more, 0);
    const price = more > 1 ? `${more} more pieces, ${more} more seams` : more > 0 ? 'one more piece, one more seam' : 'it opens what lies right round another fabric, and costs nothing by itself';
    const { at, runs } = seamText(merged(places), measure);
    return { fabric, places, more, says: `The seam${at && ` ${at}`} runs through ${fabricName(fabric)} ${runs}: ${price}.` };
  });
}

/** @returns how many pieces, and so how many seams, a pattern has beyond the areas drawn */
export const piecesMore = (divisions: readonly DivisionLine[]): number => divisions.reduce((sum, { more }) => sum + more, 0);
