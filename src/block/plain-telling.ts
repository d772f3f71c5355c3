import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { printHundredths } from '../measure/about.ts';
import { printLength } from '../measure/lengths.ts';
import type { Telling } from './telling.ts';

/** Kinds whose names do not simply take an s. */
const MANY: Readonly<Partial<Record<UnitKind, string>>> = { 'flying geese': 'flying geese', 'square in a square': 'squares in a square' };

/**
 * @param fabricName what a fabric is called, by its id
 * @returns values printed plainly, as on the sheet and in the terminal: "1 7/8 in.", "4", "Fog"; a fabric without a name by its id
 */
export const plainTelling = (fabricName: (id: string) => string): Telling => ({
  length: printLength,
  about: printHundredths,
  count: String,
  cloth: (id) =>
    fabricName(id)
      .replaceAll(/\s+/g, ' ')
      .replace(/[\s.]+$/, '')
      .trim() || id,
  unit: (letter) => letter,
  cut: (id) => id,
  kind: (kind, number) => (number === 'one' ? kind : (MANY[kind] ?? `${kind}s`)),
});
