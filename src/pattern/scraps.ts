import type { Fabric } from '../block/block.ts';
import { printsOf, type Prints } from '../cutting/prints/prints.ts';
import { listed, several } from '../measure/words.ts';
import type { Pattern } from './pattern.ts';

/** A fabric that stands for scraps: how many of which print are cut, and which piece is of which. */
export interface ScrapFamily extends Prints {
  readonly fabric: Fabric;
  readonly prints: number;
  /** What a maker should know of the spread: one sentence each. */
  readonly says: readonly string[];
}

/**
 * Spreads the prints of a pattern's scraps. What it takes is not worked out with the pattern, for few patterns have scraps.
 * @returns each family, in the order of the fabrics; none where the pattern has none, or sizes that cannot be held exactly
 */
export function scrapsOf({ scraps, piecing, cuts, choices, lattice }: Pattern): readonly ScrapFamily[] {
  if (scraps.length === 0) return [];
  const families = scraps.map(({ id, scraps: family }) => ({ fabric: id, ...family! }));
  const found = printsOf(families, piecing, cuts, { ...choices, step: lattice.step });
  return scraps.map((fabric, i) => {
    const { prints } = families[i]!;
    return { ...found[i]!, fabric, prints, says: spreadWords(nameOf(fabric), prints, found[i]!, choices.blocks) };
  });
}

const nameOf = ({ name, id }: Fabric): string => name.trim() || id;

function spreadWords(name: string, prints: number, { of, seams, corners, enough, shared }: Prints, blocks: number): readonly string[] {
  const says: string[] = [];
  if (enough) {
    const pairs = `${several(seams, 'pair')} of pieces of one print ${seams === 1 ? 'touches' : 'touch'} along a seam`;
    const would = `${enough.prints} prints would do`;
    if (shared) {
      says.push(`${name}: ${pairs}, because what comes from one square is of one print: cut each piece by itself, or take more prints; ${would}.`);
    } else if (enough.allTouch && enough.proved) {
      says.push(`${name}: ${pairs}, because ${enough.prints} of its pieces all touch each other; ${would}.`);
    } else {
      const why = enough.proved ? `${prints} prints cannot be kept apart in this block` : `no spread of ${prints} prints was found that keeps them apart`;
      says.push(`${name}: ${pairs}; ${why}, ${would}.`);
    }
  } else if (corners > 0) {
    const where = corners === 1 ? 'one corner' : `${corners} corners`;
    says.push(`${name}: no pieces of one print touch along a seam, but at ${where} they do.`);
  }
  const idle = prints - new Set(of.values()).size;
  if (idle > 0) says.push(`${name}: ${several(idle, 'print')} ${idle === 1 ? 'is' : 'are'} not used, for there are fewer pieces than prints.`);
  if (blocks > 1) says.push(`${name}: all ${blocks} blocks are spread alike.`);
  return says;
}

/** @returns how many are cut of each print: "4 of each of 4 prints", "3 of each of prints 1 and 2, 2 of print 3" */
export function eachWords(each: readonly number[]): string {
  if (each.every((count) => count === each[0])) return `${each[0]} of each of ${each.length} prints`;
  const counts = [...new Set(each)].filter((count) => count > 0).sort((a, b) => b - a);
  return counts
    .map((count) => {
      const those = each.flatMap((one, i) => (one === count ? [i + 1] : []));
      return `${count} of ${those.length === 1 ? 'print' : 'each of prints'} ${runs(those)}`;
    })
    .join(', ');
}

/** @returns "1 and 2", "1 to 4, 6 and 9": numbers in order, those that follow each other together */
function runs(numbers: readonly number[]): string {
  const found: [number, number][] = [];
  for (const number of numbers) {
    const run = found.at(-1);
    if (run && run[1] === number - 1) run[1] = number;
    else found.push([number, number]);
  }
  return listed(found.flatMap(([from, to]) => (to - from > 1 ? [`${from} to ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`])));
}

/** @returns a family in a list of materials: "scraps of 4 prints" */
export const familyWords = (prints: number): string => `scraps of ${prints} prints`;
