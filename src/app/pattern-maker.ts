import type { Block } from '../block/block.ts';
import type { Result } from '../measure/problem.ts';
import { last } from '../geometry/piecing/steps.ts';
import { answersBy, mayAskForRare, type Answer } from '../pattern/answers.ts';
import type { Alternative, Pattern } from '../pattern/pattern.ts';
import type { RareParts } from '../pattern/rare-parts.ts';

/** How the work on a drawing stands. */
export interface Standing {
  /** Whether a better way is still looked for. */
  readonly looking: boolean;
  /** Where the fewest pieces are looked for: pieces of the way found so far, and that no way has fewer than so many. */
  readonly fewest: Answer['fewest'];
  /** How many patterns there have been of this drawing, this one too; the last one is waiting to be collected. */
  readonly patterns: number;
}

/** A search that lasts longer than this, in milliseconds, hands over what it has, if as much again is still to come. */
const FIRST = 300;
/** How long it goes on, in milliseconds, before it tells of something better. */
const NEXT = 1_000;

/**
 * What the worker beside the page does: patterns of drawings, away from the hand that paints. The clock decides when it tells what it
 * has so far, never what it comes to in the end.
 * @param now the time in milliseconds
 * @param fetchRare fetches what few drawings ask for
 */
export function createPatternMaker(now: () => number, fetchRare: () => Promise<RareParts>) {
  let answers: Iterator<Answer, Answer> | null = null;
  let told: Answer | null = null;
  let patterns = 0;
  let made: Result<Pattern> | null = null;

  const tell = (answer: Answer, looking: boolean): Standing => {
    if (answer.pattern !== told?.pattern) {
      made = answer.pattern();
      patterns++;
    }
    told = answer;
    return { looking, fewest: answer.fewest, patterns };
  };

  /** Works until the end, or until there is something to tell and the time for it has come. */
  const work = (time: number): Standing => {
    const start = now();
    for (;;) {
      const { done, value } = answers!.next();
      if (done) {
        answers = null;
        return tell(value, false);
      }
      const spent = now() - start;
      const news = value.pattern !== told?.pattern || value.fewest?.bound !== told.fewest?.bound;
      if (news && spent >= time && spent * value.left >= FIRST) return tell(value, true);
    }
  };

  const rareFor = async (block: Block): Promise<RareParts | null> => (mayAskForRare(block) ? fetchRare() : null);

  return {
    /** Works out the pattern of a drawing, sewn the way that is chosen in it, or where that takes long a first one. */
    workOut: async (block: Block): Promise<Standing> => {
      const rare = await rareFor(block);
      [answers, told, made, patterns] = [answersBy(rare, block), null, null, 0];
      return work(FIRST);
    },
    /** Goes on with the drawing whose search is not over. */
    goOn: (): Standing => work(NEXT),
    /** @returns the pattern worked out last: large, so that unpacking it keeps the page busy for a moment */
    collect: (): Result<Pattern> | null => made,
    /** @returns every way to sew a drawing, the chosen one first, as figures only: a whole pattern is long on its way to the page */
    everyWay: async (block: Block): Promise<readonly Alternative[]> => {
      const all = last(answersBy(await rareFor(block), block, {}, 'all ways')).pattern();
      if (!all.ok) return [];
      const { way, figures, alternatives } = all.value;
      return [{ way, figures }, ...alternatives];
    },
  };
}

export type PatternMaker = ReturnType<typeof createPatternMaker>;
