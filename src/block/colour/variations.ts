import { allColourings, countColourings, someColourings, type Colouring, type Held, type Repeats, type Roles } from './colourings.ts';
import { contrastsOf, type Contrasts } from './contrasts.ts';
import type { CommonEdge } from './roles.ts';

/** One colouring, and how far its shapes stand out. */
export interface Variation {
  readonly colouring: Colouring;
  readonly contrasts: Contrasts;
}

/** Colourings to look at, those that stand out most first. */
export interface Variations {
  readonly shown: readonly Variation[];
  /** How many there are; null where only so much is known that there are more than are shown. */
  readonly total: bigint | null;
}

/**
 * @param light how light each cloth is, in L*
 * @param most so many are looked at: all where there are no more, else as many drawn at random
 * @returns colourings of a block's roles, ordered by contrast: by the two neighbours that are closest, then over all edges
 */
export function variationsOf(
  roles: Roles & { readonly edges: readonly CommonEdge[] },
  light: readonly number[],
  { repeats, held, most, seed }: { readonly repeats: Repeats; readonly held: Held; readonly most: number; readonly seed: number },
): Variations {
  const total = held.size === 0 ? countColourings(roles, light.length, repeats) : null;
  const few = total === null || total <= BigInt(most) ? firstOf(allColourings(roles, light.length, repeats, held), most + 1) : null;
  const all = few !== null && few.length <= most;
  const colourings = all ? few : someColourings(roles, light.length, repeats, most, seed, held);
  const shown = colourings
    .map((colouring): Variation => ({ colouring, contrasts: contrastsOf(roles.edges, colouring, light) }))
    .sort((a, b) => b.contrasts.least - a.contrasts.least || b.contrasts.mean - a.contrasts.mean);
  return { shown, total: all ? BigInt(shown.length) : total };
}

function firstOf<T>(things: Iterable<T>, most: number): readonly T[] {
  const first: T[] = [];
  for (const thing of things) {
    if (first.length === most) break;
    first.push(thing);
  }
  return first;
}
