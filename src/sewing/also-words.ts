import { chainOf, chainWords } from './chain-words.ts';
import type { Vocabulary } from './naming.ts';
import { ranges } from './pressing/ranges.ts';
import { isOnFoundations, sectionsOf } from './sections.ts';
import type { Step } from './step.ts';

type Wordless = Omit<Step, 'how' | 'text' | 'press'>;

/**
 * @param way the way the block is sewn
 * @returns for each step what else is worth saying: how many equal ones are chain-pieced, or how it is sewn onto foundations; null for most
 */
export function alsoWords(steps: readonly Wordless[], way: string, words: Vocabulary): readonly (string | null)[] {
  const first = steps.findIndex((step) => chainOf(step) !== null);
  return steps.map((step, i) => (isOnFoundations(step, way) ? foundationWords(step, words) : chainWords(step, i > first, words)));
}

function foundationWords(step: Wordless, words: Vocabulary): string {
  const { sections } = sectionsOf(step);
  return words.phrases.assembly.foundations(
    sections.map(({ letter, parts }) => ({ letter, pieces: ranges(parts.map((part) => part + 1).sort((a, b) => a - b)), single: parts.length === 1 })),
  );
}
