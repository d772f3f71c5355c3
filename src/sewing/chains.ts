import type { Step } from './step.ts';

/*
 * Chain-piecing: equal things are fed through the machine one after another, the thread uncut between them (American Patchwork & Quilting,
 * How to chain-piece an entire quilt block, 2022-03-03).
 */

/** So many are worth a chain. */
const ENOUGH = 4;

/** What one feeding makes: two units of a pair of squares, eight of a large one. */
const YIELD = { pair: 2, eight: 8 } as const;

/** @returns how many of a step are fed through one after another, and how many seams each has; null where that is not worth a word */
export function chainOf({ makes, method, count, parts, joins }: Pick<Step, 'makes' | 'method' | 'count' | 'parts' | 'joins'>): {
  readonly fed: number;
  readonly seams: 'one' | 'both sides' | 'several';
} | null {
  const roles = new Set(parts.map(({ from }) => ('cut' in from ? from.role : null)));
  if (makes === 'block' || joins.length === 0 || method === 'strip-sets' || roles.has('large')) return null;
  const shared = roles.has('eight') ? 'eight' : roles.has('pair') ? 'pair' : null;
  // Squares that are crossed once more are another matter: pairs first, then pairs of those.
  if (shared && parts.length > 2) return null;
  const fed = shared ? Math.ceil(count / YIELD[shared]) : count;
  return fed < ENOUGH ? null : { fed, seams: shared ? 'both sides' : joins.length === 1 ? 'one' : 'several' };
}
