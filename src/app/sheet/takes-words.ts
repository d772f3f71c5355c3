import type { LengthUnit } from '../../block/block.ts';
import { printLength } from '../../measure/lengths.ts';
import { equals, subtract, ZERO } from '../../measure/rational.ts';
import { several } from '../../measure/words.ts';
import type { Cloth } from '../../pattern/pattern.ts';
import type { ClothState } from '../cloths.ts';

/**
 * @returns what the pieces of one fabric take of what is bought, and how near that is to the least: "takes 4 1/2 in. of cloth 42 in. wide;
 * proved least"
 * @param state how the search for a better layout stands
 */
export function takesWords({ layout, joined, order: { bought }, added }: Cloth, unit: LengthUnit, state?: ClothState): string {
  const { takes, least, cloths } = layout;
  const own = cloths.some(({ source }) => source.form === 'own') ? ' beside what you have' : '';
  const { width, length } = bought;
  const over = subtract(takes, least);
  const said: string[] = [];
  if (equals(takes, ZERO)) {
    if (cloths.length > 0) said.push('all of it from what you have');
  } else if (length === null) {
    said.push(`takes ${printLength(takes, unit)} of cloth ${printLength(width, unit)} wide${own}`);
  } else {
    said.push(`takes ${takes.n}${own}, each ${printLength(width, unit, 'bare')} × ${printLength(length, unit)}`);
  }
  if (equals(over, ZERO)) said.push(...(equals(takes, ZERO) ? [] : ['proved least']));
  else said.push(`at most ${length === null ? printLength(over, unit) : over.n} above the least${state === 'solving' ? '; looking for less …' : ''}`);
  if (added !== null) said.push(`with ${added}`);
  const homeless = layout.unplaced.reduce((sum, { count }) => sum + count, 0) - joined.reduce((sum, { count }) => sum + count, 0);
  if (homeless > 0) said.push(`${several(homeless, 'piece')} ${homeless === 1 ? 'fits' : 'fit'} into none of it`);
  return said.join('; ');
}
