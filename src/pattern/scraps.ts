import type { Fabric } from '../block/block.ts';
import { counted } from '../block/counting.ts';
import { plainTelling } from '../block/plain-telling.ts';
import { printsOf, type Prints } from '../cutting/prints/prints.ts';
import { ENGLISH, inEnglish } from './english.ts';
import type { Speech } from './language.ts';
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
export function scrapsOf(pattern: Pattern, speech: Speech = inEnglish(pattern)): readonly ScrapFamily[] {
  const { scraps, piecing, cuts, choices, lattice, heldPrints } = pattern;
  if (scraps.length === 0) return [];
  const print = new Map(heldPrints.map((one) => [one.patch, one.print]));
  // A family's patches lie apart, so that a piece shows one of them.
  const heldIn = (fabric: string): ReadonlyMap<number, number> =>
    new Map(piecing.pieces.filter((piece) => piece.fabric === fabric).flatMap(({ id, patches: [patch] }) => (print.has(patch!) ? [[id, print.get(patch!)!] as const] : [])));
  const families = scraps.map(({ id, scraps: family }) => ({ fabric: id, ...family!, held: heldIn(id) }));
  const found = printsOf(families, piecing, cuts, { ...choices, step: lattice.step });
  return scraps.map((fabric, i) => {
    const { prints } = families[i]!;
    return { ...found[i]!, fabric, prints, says: spreadWords(fabric.id, prints, found[i]!, choices.blocks, speech) };
  });
}

function spreadWords(id: string, prints: number, { of, seams, corners, enough, shared, byHolding, lost }: Prints, blocks: number, { language, telling }: Speech): readonly string[] {
  const phrases = language.pattern;
  const many = (n: number) => counted(n, telling);
  const cloth = telling.cloth(id);
  const says: string[] = [];
  if (lost > 0) says.push(phrases.lostHeld(cloth, many(lost)));
  if (byHolding) {
    says.push(phrases.heldPairs(cloth, many(seams)));
  } else if (enough) {
    const would = many(enough.prints);
    const why = shared
      ? 'one square'
      : enough.allTouch && enough.proved
        ? { touching: many(enough.prints) }
        : { prints: many(prints), proved: enough.proved };
    says.push(phrases.equalPairs(cloth, many(seams), why, would));
  } else if (corners > 0) {
    says.push(phrases.equalCorners(cloth, many(corners)));
  }
  const idle = prints - new Set(of.values()).size;
  if (idle > 0) says.push(phrases.idlePrints(cloth, many(idle)));
  if (blocks > 1) says.push(phrases.spreadAlike(cloth, many(blocks)));
  return says;
}

/** English, for words in which no fabric is named. */
const NAMELESS: Speech = { language: ENGLISH, telling: plainTelling((id) => id) };

/** @returns how many are cut of each print: "4 of each of 4 prints", "3 of each of prints 1 and 2, 2 of print 3" */
export function eachWords(each: readonly number[], { language, telling }: Speech = NAMELESS): string {
  if (each.every((count) => count === each[0])) return language.pattern.ofEachPrint(counted(each[0]!, telling), counted(each.length, telling));
  const counts = [...new Set(each)].filter((count) => count > 0).sort((a, b) => b - a);
  return counts
    .map((count) => {
      const those = each.flatMap((one, i) => (one === count ? [i + 1] : []));
      return language.pattern.ofPrints(counted(count, telling), runs(those));
    })
    .join(', ');
}

/** @returns numbers in order, those that follow each other together: from … to */
function runs(numbers: readonly number[]): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  for (const number of numbers) {
    const run = found.at(-1);
    if (run && run[1] === number - 1) run[1] = number;
    else found.push([number, number]);
  }
  return found;
}

/** @returns a family in a list of materials: "scraps of 4 prints" */
export const familyWords = (prints: number, { language, telling }: Speech = NAMELESS): string => language.pattern.family(counted(prints, telling));
