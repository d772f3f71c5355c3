/** What went wrong, said once, in one sentence that names what, where and what to do. Plain data: it crosses workers and goes to the terminal as it is. */
export interface Problem {
  /** Which kind of problem, for tests and for the screen to react to; never shown. */
  readonly code: string;
  /** One sentence for the person: what, where, what to do. */
  readonly sentence: string;
  /** Where it lies: indices of the drawing's patches that the sentence is about, to be shown in the drawing. */
  readonly patches?: readonly number[];
  /** What would mend it, the cheapest first; each was tried. */
  readonly remedies?: readonly Remedy[];
}

/** One thing that mends a problem: a change of the drawing, or something to be done by hand. */
export interface Remedy {
  /** What to do, where, and what comes out of it. */
  readonly sentence: string;
  /** Figures of the pattern that comes out; null where this program writes none for it. */
  readonly price: { readonly pieces: number; readonly seams: number; readonly partialSeams: number } | null;
  /** Indices of patches that need not stay whole any more. */
  readonly free: readonly number[];
  /**
   * A patch in whose place come others of its fabric that stay whole; their corners in steps of 1/denominator of a grid
   * unit, across and down.
   */
  readonly divide: {
    readonly patch: number;
    readonly parts: readonly (readonly (readonly [number, number])[])[];
    readonly denominator: number;
  } | null;
  /** Where it is in the drawing, in grid units, for ink: two ends of a seam, or one corner. */
  readonly places: readonly (readonly (readonly [number, number])[])[];
}

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** @returns a result that holds a value */
export const good = <T>(value: T): Result<T> => ({ ok: true, value });

/** @returns a result that holds a problem */
export const bad = (code: string, sentence: string): Result<never> => ({ ok: false, problem: { code, sentence } });
