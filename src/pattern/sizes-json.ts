import { formatLength } from '../measure/lengths.ts';
import { exactText } from './exact-text.ts';
import { cutJson, sizeText } from './pattern-json.ts';
import type { Pattern } from './pattern.ts';
import { multiply, divide } from '../measure/rational.ts';
import { clothsAt, cutsAt, type OtherSize } from './sizes.ts';

/** @returns a block's sizes as a plain object for other programs; lengths as in `patternJson` */
export function sizesJson(pattern: Pattern, sizes: readonly OtherSize[]) {
  const { block, choices, lattice } = pattern;
  return {
    block: { name: block.name, finished: sizeText(block.finished), unit: block.unit },
    ruler: formatLength(choices.ruler),
    sizes: sizes.map(({ finished, unfinished, asItIs, cannot, off, narrowest }) => {
      const cuts = cannot === null ? cutsAt(pattern, finished.width) : [];
      const step = multiply(lattice.step, divide(finished.width, block.finished.width));
      return {
        finished: sizeText(finished),
        unfinished: sizeText(unfinished),
        asItIs,
        /** Why there is no such block; null where there is. */
        cannot,
        onTheRuler: cannot === null && off.length === 0,
        betweenMarks: off.map(formatLength),
        narrowest: exactText(narrowest),
        cuts: cuts.map((cut) => cutJson(cut, step)),
        fabrics: cannot === null ? clothsAt(pattern, cuts).map(({ fabric, length, buy }) => ({ id: fabric.id, length: formatLength(length), buy })) : [],
      };
    }),
  };
}
