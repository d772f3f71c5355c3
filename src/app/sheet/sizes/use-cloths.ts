import { useEffect, useState } from 'react';
import { plainTelling } from '../../../block/plain-telling.ts';
import { lengthToBuy } from '../../../cutting/cloth/buying.ts';
import { CUTTING_IN_ENGLISH } from '../../../cutting/phrases/english.ts';
import { listed } from '../../../measure/words.ts';
import { add, ZERO } from '../../../measure/rational.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import { clothsAt, cutsAt, type OtherSize } from '../../../pattern/sizes.ts';

/** So long the sizes are laid out before the page may draw again, in milliseconds. */
const SLICE = 8;

/**
 * Lays out the cloth of one size after the other, in the pauses of the page.
 * @returns what is bought of all fabrics together, by finished width ("12/1")
 */
export function useCloths(pattern: Pattern, sizes: readonly OtherSize[]): ReadonlyMap<string, string> {
  const [known, setKnown] = useState<{ readonly of: Pattern; readonly cloths: ReadonlyMap<string, string> }>({ of: pattern, cloths: new Map() });
  const cloths = known.of === pattern ? known.cloths : NOTHING;
  useEffect(() => {
    const missing = sizes.filter(({ cannot, finished }) => cannot === null && !cloths.has(keyOf(finished.width)));
    if (missing.length === 0) return undefined;
    const timer = setTimeout(() => {
      const found = new Map(cloths);
      const until = performance.now() + SLICE;
      for (const { finished } of missing) {
        found.set(keyOf(finished.width), boughtAt(pattern, finished));
        if (performance.now() > until) break;
      }
      setKnown({ of: pattern, cloths: found });
    });
    return () => clearTimeout(timer);
  }, [pattern, sizes, cloths]);
  return cloths;
}

const NOTHING: ReadonlyMap<string, string> = new Map();

const keyOf = ({ n, d }: OtherSize['finished']['width']): string => `${n}/${d}`;

/** How a length is asked for: no fabric is named. */
const WORDS = { telling: plainTelling((id) => id), phrases: CUTTING_IN_ENGLISH };

/** "1 3/8 yd", "1/4 yd and 2 fat quarters": what is sold by the length together, the rest as it is sold. */
function boughtAt(pattern: Pattern, finished: OtherSize['finished']): string {
  const cloths = clothsAt(pattern, cutsAt(pattern, finished.width));
  const lengths = cloths.flatMap(({ bought }) => (bought === null ? [] : [bought]));
  const others = cloths.filter(({ bought, buy }) => bought === null && buy !== 'nothing').map(({ buy }) => buy);
  const { unit } = pattern.block;
  const total = lengths.reduce(add, ZERO);
  const sold = lengths.length === 0 ? [] : [lengthToBuy(total, pattern.choices.shopStep, unit, WORDS)];
  return listed([...sold, ...others]) || 'nothing';
}
