import { formatLength } from '../measure/lengths.ts';
import type { Problem } from '../measure/problem.ts';
import { compare, rational, ZERO, type Rational } from '../measure/rational.ts';
import type { LengthUnit } from './block.ts';
import type { Choices, ClothChoice } from './choices.ts';
import { MAX_CLOTH, MAX_FINISHED, MAX_HAVE, MAX_HAVE_COUNT, MAX_MARGIN } from './limits.ts';
import * as say from './choice-problems.ts';
import { quoted } from './problems.ts';

/** @returns whether what is chosen about the cloth can be bought and cut: null, or the first problem; fabrics are not looked up */
export function checkCloths({ cloths = {}, margin }: Choices, unit: LengthUnit): Problem | null {
  for (const [id, cloth] of Object.entries(cloths)) {
    const fault = checkCloth(clothPlace(id), cloth, unit);
    if (fault) return fault;
  }
  if (!margin) return null;
  const [value, most, of] = 'percent' in margin ? [margin.percent, MAX_MARGIN, '%' as const] : [margin.length, MAX_CLOTH[unit], unit];
  const fits = compare(value, ZERO) >= 0 && compare(value, rational(most)) <= 0;
  return fits ? null : say.marginOutOfRange(formatLength(value), of);
}

/** @returns where a fabric's cloth is spoken of, as a sentence begins with it: 'The cloth of "oat"' */
export const clothPlace = (id: string): string => `The cloth of ${quoted(id)}`;

function checkCloth(where: string, { size, width, have = [] }: ClothChoice, unit: LengthUnit): Problem | null {
  const lengths: (readonly [string, Rational | undefined, number])[] = [
    ['size, width', size?.width, MAX_FINISHED[unit]],
    ['size, length', size?.length, MAX_CLOTH[unit]],
    ['width', width, MAX_FINISHED[unit]],
  ];
  for (const [i, piece] of have.entries()) {
    lengths.push([`have ${i + 1}, width`, piece.width, MAX_FINISHED[unit]], [`have ${i + 1}, length`, piece.length, MAX_CLOTH[unit]]);
  }
  for (const [name, length, most] of lengths) {
    const fits = !length || (compare(length, ZERO) > 0 && compare(length, rational(most)) <= 0);
    if (!fits) return say.clothOutOfRange(`${where}, ${name}`, most, formatLength(length), unit);
  }
  if (have.length > MAX_HAVE) return say.tooMuchToHave(where, have.length);
  const few = have.findIndex(({ count }) => !Number.isInteger(count) || count < 1 || count > MAX_HAVE_COUNT);
  return few < 0 ? null : say.noHaveCount(`${where}, have ${few + 1}, count`, String(have[few]!.count));
}
