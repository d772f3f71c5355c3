import { useEffect, useState } from 'react';
import type { Block } from '../../block/block.ts';
import type { PrintsOnCloth } from '../../canvas/draw-prints.ts';
import type { Pattern } from '../../pattern/pattern.ts';

/** @returns how photos of cloth and the prints of scraps are drawn on the cloth; null where there are none, and until it is known */
export function usePrints(pattern: Pattern | null, block: Block, wanted: boolean): PrintsOnCloth | null {
  const [found, setFound] = useState<{ readonly pattern: Pattern; readonly prints: PrintsOnCloth } | null>(null);
  useEffect(() => {
    if (!pattern || !wanted || (pattern.scraps.length === 0 && !block.photos)) return undefined;
    let asked = true;
    void import('./spreading.ts')
      .then(({ printsFor }) => printsFor(pattern, block))
      // Without it the cloth is as it was painted.
      .then((prints) => asked && setFound({ pattern, prints }), () => undefined);
    return () => void (asked = false);
  }, [pattern, block, wanted]);
  return wanted && found && found.pattern === pattern ? found.prints : null;
}
