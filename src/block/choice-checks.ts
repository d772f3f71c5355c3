import { formatLength } from '../measure/lengths.ts';
import { compare, rational, ZERO } from '../measure/rational.ts';
import type { LengthUnit } from './block.ts';
import type { Checked } from './checks.ts';
import { isWhole } from './file-checks.ts';
import * as say from './choice-problems.ts';
import type { Choices } from './choices.ts';
import { checkCloths } from './cloth-checks.ts';
import { MAX_BLOCKS, MAX_CHOSEN, MAY_BE_NONE } from './limits.ts';

/** @returns whether what is chosen can be cut and sewn; for what is chosen by fabric, fabrics are not looked up */
export function checkChoices(choices: Choices, unit: LengthUnit): Checked {
  for (const name of ['seam', 'ruler', 'trim', 'width', 'squaringUp', 'shopStep'] as const) {
    const length = choices[name];
    if (length === undefined) continue;
    const enough = MAY_BE_NONE.has(name) ? compare(length, ZERO) >= 0 : compare(length, ZERO) > 0;
    const fits = enough && compare(length, rational(MAX_CHOSEN[name][unit])) <= 0;
    if (!fits) return say.choiceOutOfRange(name, formatLength(length), unit);
  }
  const { blocks = 1 } = choices;
  return isWhole(blocks, 1, MAX_BLOCKS) ? checkCloths(choices, unit) : say.blocksOutOfRange(String(blocks));
}
