import { fitsIn, jobOf, liesOf, type CutSheet, type Job } from './job.ts';
import type { ClothLayout } from '../layout.ts';
import type { ClothOrder } from './order.ts';
import { quickLayout, takenBy } from './quick.ts';
import { writtenLayout } from './written.ts';

/**
 * @returns a layout that is there at once: never longer than first fit by decreasing height; `least` is what area and the longest piece
 * alone tell
 */
export function quickCloth(order: ClothOrder): ClothLayout {
  const job = jobOf(order);
  const { cloths } = quickLayout(job);
  return writtenLayout(job, cloths, roughBound(job, cloths));
}

/**
 * @returns what is bought at least, in marks or precut pieces: no less than the area of the pieces less that of all the maker has; no
 * less than the longest piece that must be bought
 */
export function roughBound(job: Job, cloths: readonly CutSheet[]): number {
  if (takenBy(job, cloths) === 0) return 0;
  const bought = job.sheets.at(-1)!;
  const own = job.sheets.slice(0, -1);
  const need = job.kinds.map((kind, at) => ({ kind, lies: liesOf(kind, at) }));
  const fits = need.filter(({ lies }) => lies.some((lie) => fitsIn(lie, bought)));
  const area = fits.reduce((sum, { kind }) => sum + kind.width * kind.height * kind.count, 0);
  const had = own.reduce((sum, { width, length, count }) => sum + width * length * count, 0);
  const rest = Math.max(0, area - had);
  if (bought.length !== Infinity) return Math.ceil(rest / (bought.width * bought.length));
  const mustBeBought = fits.filter(({ lies }) => !own.some((sheet) => lies.some((lie) => fitsIn(lie, sheet))));
  const heights = mustBeBought.map(({ lies }) => Math.min(...lies.filter((lie) => fitsIn(lie, bought)).map(({ height }) => height)));
  return Math.max(0, Math.ceil(rest / bought.width), ...heights);
}
