import type { Count } from '../block/counting.ts';
import { chainOf } from '../sewing/chains.ts';
import { ranges } from '../sewing/pressing/ranges.ts';
import { isOnFoundations, sectionsOf } from '../sewing/sections.ts';
import type { Step } from '../sewing/step.ts';
import { inEnglish } from './english.ts';
import type { Speech } from './language.ts';
import type { Pattern } from './pattern.ts';

/**
 * @returns for each step of a pattern what else is worth saying, beside how it is sewn and pressed: how many equal ones are chain-pieced,
 * explained where it comes first, or how it is sewn onto foundations; null for most
 */
export function alsoOf(pattern: Pick<Pattern, 'steps' | 'way' | 'fabrics' | 'scraps'>, { language, telling }: Speech = inEnglish(pattern)): readonly (string | null)[] {
  const { also } = language.pattern;
  const counted = (n: number): Count => ({ n, said: telling.count(n) });
  let explained = false;
  return pattern.steps.map((step) => {
    if (isOnFoundations(step, pattern.way)) return also.foundations(foundationsIn(step));
    const chain = chainOf(step);
    if (!chain) return null;
    const said = also.chain(counted(chain.fed), chain.seams, explained);
    explained = true;
    return said;
  });
}

const foundationsIn = (step: Step): Parameters<Speech['language']['pattern']['also']['foundations']>[0] =>
  sectionsOf(step).sections.map(({ letter, parts }) => ({
    letter,
    pieces: ranges(parts.map((part) => part + 1).sort((a, b) => a - b)),
    single: parts.length === 1,
  }));
