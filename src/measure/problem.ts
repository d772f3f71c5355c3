/** What went wrong, said once, in one sentence that names what, where and what to do. Plain data: it crosses workers and goes to the terminal as it is. */
export interface Problem {
  /** Which kind of problem, for tests and for the screen to react to; never shown. */
  readonly code: string;
  /** One sentence for the person: what, where, what to do. */
  readonly sentence: string;
  /** Where it lies: indices of the drawing's patches that the sentence is about, to be shown in the drawing. */
  readonly patches?: readonly number[];
}

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** @returns a result that holds a value */
export const good = <T>(value: T): Result<T> => ({ ok: true, value });

/** @returns a result that holds a problem */
export const bad = (code: string, sentence: string): Result<never> => ({ ok: false, problem: { code, sentence } });
