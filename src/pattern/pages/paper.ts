import type { LengthUnit } from '../../block/block.ts';

/** Papers that printers at home take. */
export type Paper = 'letter' | 'a4';

export const PAPERS: readonly Paper[] = ['letter', 'a4'];

export type Lie = 'portrait' | 'landscape';

/** ANSI/ASME Y14.1 A (8½ by 11 in.) and ISO 216 A4 (210 by 297 mm), in points. */
const SIZES: Readonly<Record<Paper, readonly [number, number]>> = {
  letter: [612, 792],
  a4: [(210 / 25.4) * 72, (297 / 25.4) * 72],
};

/** Half an inch: printers at home leave up to that much blank at the edge a sheet leaves last (common practice). */
export const MARGIN = 36;

/** @returns width and height of a sheet as it lies, in points */
export function sheetOf(paper: Paper, lie: Lie): { readonly width: number; readonly height: number } {
  const [short, long] = SIZES[paper];
  return lie === 'portrait' ? { width: short, height: long } : { width: long, height: short };
}

/** Points to an inch, and to a centimetre. */
export const POINTS: Readonly<Record<LengthUnit, number>> = { in: 72, cm: 72 / 2.54 };
