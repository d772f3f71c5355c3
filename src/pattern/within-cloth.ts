import type { Block } from '../block/block.ts';
import { counted } from '../block/counting.ts';
import type { Boundary } from '../geometry/patchwork/boundaries.ts';
import type { Stretch } from '../geometry/patchwork/stretches.ts';
import { seamText, type Measure } from './places.ts';

/** Where areas of different fabrics meet that are cut from the cloth of one, and the seams between them stay. */
export interface WithinCloth {
  /** Id of the fabric whose cloth it is. */
  readonly fabric: string;
  /** Stretches of straight lines, in lattice steps. */
  readonly lines: readonly (readonly Stretch[])[];
}

/** So many lines are told by where they lie; more are counted. */
const TOLD = 3;

/** @returns the seams that stay between areas of one cloth, cloth by cloth in the block's order; none where such areas become one */
export function withinCloths({ fabrics, fuses }: Block, boundaries: ReadonlyMap<string, Boundary>): readonly WithinCloth[] {
  const shared = new Set(fabrics.flatMap(({ same }) => same ?? []));
  if (fuses || shared.size === 0) return [];
  return fabrics.flatMap(({ id }): readonly WithinCloth[] => {
    if (!shared.has(id)) return [];
    const lines = [...boundaries.values()].map(({ between }) => between.filter(({ front, back }) => front === id && back === id)).filter(({ length }) => length > 0);
    return lines.length > 0 ? [{ fabric: id, lines: lines.map((line) => line.map(({ from, to }) => ({ from, to }))) }] : [];
  });
}

/** @returns where areas of one cloth meet and stay apart, in one sentence */
export function withinClothText({ fabric, lines }: WithinCloth, measure: Measure): string {
  const { language, telling } = measure.speech;
  const places = lines.length > TOLD ? null : lines.map((line) => seamText(line, measure));
  return language.pattern.withinCloth(telling.cloth(fabric), places, counted(lines.length, telling));
}
