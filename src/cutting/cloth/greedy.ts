import { fillerOf, type Filled } from './filling.ts';
import { piecesIn, type CutSheet, type Job, type Strip } from './job.ts';
import { sheetPricerOf } from './plans.ts';

/*
 * One strip after another, each the one worth most for what it takes, from what is still wanted.
 */

/** Strips of this many different lengths are filled before one is chosen. */
const TRIED = 40;

/** Lays everything that is left; `left` and `worths` are by kind. */
export type Layer = (left: readonly number[], worths: readonly number[]) => readonly CutSheet[];

/** @returns how a job is laid by what its kinds are worth */
export function layerOf(job: Job): Layer {
  const tools = job.sheets.map((sheet) => ({ price: sheetPricerOf(job, sheet), fill: fillerOf(job, sheet) }));
  return (wanted, worths) => {
    const left = [...wanted];
    const cloths: CutSheet[] = [];
    const worthLeft = (): readonly number[] => worths.map((worth, kind) => (left[kind]! > 0 ? worth : 0));
    const take = (strips: readonly Strip[], times: number): void => piecesIn(strips).forEach((count, kind) => void (left[kind]! -= count * times));
    const again = (strips: readonly Strip[], most: number): number =>
      [...piecesIn(strips)].reduce((times, [kind, count]) => Math.min(times, Math.floor(left[kind]! / count)), most);
    job.sheets.forEach((sheet, at) => {
      const { price, fill } = tools[at]!;
      if (sheet.length === Infinity) {
        const strips: Strip[] = [];
        let [kinds, prices] = [-1, price(worthLeft()).prices];
        while (left.some((count) => count > 0)) {
          // What a strip is worth at most changes only when a kind is used up.
          const still = left.filter((count) => count > 0).length;
          if (still !== kinds && kinds >= 0) prices = price(worthLeft()).prices;
          kinds = still;
          const best = bestStrip(prices.steps, prices.worth, (height) => fill(height, left, worths));
          if (best === null) break;
          const times = Math.max(1, again([best.strip], Infinity));
          take([best.strip], times);
          strips.push({ ...best.strip, times });
        }
        if (strips.length > 0) cloths.push({ sheet: at, strips, times: 1 });
        return;
      }
      for (let unused = sheet.count; unused > 0; ) {
        const strips: Strip[] = [];
        let room = sheet.length;
        const whole = [...left];
        while (room > 0) {
          const { heights } = price(worthLeft()).best(room);
          const [height] = heights;
          if (height === undefined) break;
          const { strip } = fill(height, left, worths);
          if (strip.columns.length === 0) break;
          take([strip], 1);
          strips.push(strip);
          room -= strip.height;
        }
        if (strips.length === 0) break;
        whole.forEach((count, kind) => (left[kind] = count));
        const times = Math.max(1, again(strips, unused));
        take(strips, times);
        cloths.push({ sheet: at, strips, times });
        unused -= times;
      }
    });
    return cloths;
  };
}

/** Of the lengths that promise most for what they are, the one whose strip is worth most for its length. */
function bestStrip(steps: readonly number[], worth: Float64Array, fill: (height: number) => Filled): Filled | null {
  const promising = [...steps].sort((a, b) => worth[b]! * a - worth[a]! * b).slice(0, TRIED);
  let best: Filled | null = null;
  for (const height of promising) {
    // No strip is worth more than it promises, and the others promise less.
    if (best !== null && worth[height]! * best.strip.height <= best.worth * height) break;
    const filled = fill(height);
    if (filled.strip.height === 0) continue;
    if (best === null || filled.worth * best.strip.height > best.worth * filled.strip.height) best = filled;
  }
  return best;
}
