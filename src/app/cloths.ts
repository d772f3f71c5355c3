import { equals } from '../measure/rational.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Desk } from './pattern-desk.ts';
import { createStore, type Store } from './store.ts';

/** How the layout of one fabric stands: a first one, a better one looked for just now, proved least, the best that was found. */
export type ClothState = 'quick' | 'solving' | 'proved' | 'best known';

/** The pattern on the sheet, cut from the least cloth that is found so far. */
export interface Cloths {
  /** The pattern as it came from the pattern maker; null where there is none to cut. */
  readonly of: Pattern | null;
  /** The same with the best layouts there are. */
  readonly pattern: Pattern | null;
  /** By fabric id. */
  readonly states: ReadonlyMap<string, ClothState>;
}

const NONE: Cloths = { of: null, pattern: null, states: new Map() };

/** How long a pattern stands before its cloth is solved, in milliseconds: whoever draws on wants the machine for that. */
const STANDS = 2_500;

/**
 * Follows the desk: when a pattern stands, its fabrics are cut better and better; as soon as a newer drawing comes, that is given up.
 * What does it is loaded when it is first wanted.
 * @param rest resolves when the hand rests
 */
export function followCloths(desk: Store<Desk>, rest: () => Promise<void>): Store<Cloths> {
  const cloths = createStore(NONE);
  let show: ((pattern: Pattern | null) => void) | null = null;
  let followed: Pattern | null = null;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  desk.subscribe(() => {
    const { pattern, working, standing } = desk.get();
    const stands = working || standing?.looking ? null : pattern;
    if (stands === followed) return;
    followed = stands;
    clearTimeout(waiting);
    if (stands === null) return show?.(null);
    if (show === null && stands.fabrics.every(({ layout }) => equals(layout.takes, layout.least))) return;
    const cut = async (): Promise<void> => {
      if (show === null) {
        const { createClothDesk, workerBench } = await import('./cloth-desk.ts');
        show ??= createClothDesk(cloths, workerBench, rest);
      }
      if (followed === stands) show(stands);
    };
    // A page that cannot fetch it keeps the first layouts, which are sound.
    waiting = setTimeout(() => void cut().catch(() => undefined), STANDS);
  });
  return cloths;
}

/** @returns the pattern as it is cut best so far */
export const bestCut = ({ of, pattern: cut }: Cloths, pattern: Pattern | null): Pattern | null => (of !== null && of === pattern ? cut : pattern);
