import type { ReactNode } from 'react';
import type { Standing } from '../pattern-maker.ts';

/** @returns in one line what is known of a way that is still looked for, or was for long; empty where there is nothing to say */
export function standingWords({ looking, fewest, patterns }: Standing): string {
  if (fewest) {
    const { pieces, bound } = fewest;
    const found = `${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`;
    if (bound === pieces) return `${found}: proved least`;
    return `${found}; at least ${bound} are needed; ${looking ? 'still looking' : 'no way with fewer was found'}`;
  }
  if (looking) return 'This is a first way to sew it; better ones are still looked for …';
  return patterns > 1 ? 'This is the best way that was found; the search is over.' : '';
}

/** How far the search for the way that is shown has come. */
export function StandingLine({ standing }: { readonly standing: Standing | null }): ReactNode {
  return (
    <p className="quiet standing" role="status" data-looking={standing?.looking || undefined}>
      {standing ? standingWords(standing) : ''}
    </p>
  );
}
