/** Tells whether the hand draws just now, so that whatever would make it wait can wait itself. */
export interface Rest {
  /** The hand begins to draw, or goes on. */
  readonly stir: () => void;
  /** The hand is lifted. */
  readonly settle: () => void;
  /** Resolves when the hand rests, at once if it does now. */
  readonly reached: () => Promise<void>;
}

/** @returns a hand that rests */
export function createRest(): Rest {
  let waiting: (() => void)[] | null = null;
  return {
    stir: () => void (waiting ??= []),
    settle: () => {
      const all = waiting ?? [];
      waiting = null;
      for (const go of all) go();
    },
    reached: () => new Promise((go) => (waiting ? waiting.push(go) : go())),
  };
}
