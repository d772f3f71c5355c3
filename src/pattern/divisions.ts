import type { Boundary } from '../geometry/patchwork/boundaries.ts';
import { merged } from '../geometry/patchwork/stretches.ts';
import { counted } from '../block/counting.ts';
import type { Piecing } from '../geometry/piecing/assembly.ts';
import { divisionsIn, type Division } from '../geometry/piecing/divisions.ts';
import { compareAlong, lineKey, lineThrough } from '../geometry/point.ts';
import type { DivisionLine } from './pattern.ts';
import { seamText, type Measure } from './places.ts';

/** @returns where seams run through one fabric and what that costs: one line for each straight line and fabric, those that come apart first first */
export function divisionLines(
  piecing: Pick<Piecing, 'divisions' | 'pieces'>,
  boundaries: ReadonlyMap<string, Boundary>,
  measure: Measure,
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
    return { fabric, places, more, says: divisionText({ fabric, places, more }, measure) };
  });
}

/** @returns where seams run through one fabric and what that costs, in one sentence */
export function divisionText({ fabric, places, more }: Omit<DivisionLine, 'says'>, measure: Measure): string {
  const { language, telling } = measure.speech;
  const { at, runs } = seamText(merged(places), measure);
  return language.pattern.division(at, telling.cloth(fabric), runs, counted(more, telling));
}

/** @returns how many pieces, and so how many seams, a pattern has beyond the areas drawn */
export const piecesMore = (divisions: readonly DivisionLine[]): number => divisions.reduce((sum, { more }) => sum + more, 0);
