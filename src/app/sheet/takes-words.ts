import type { LengthUnit } from '../../block/block.ts';
import { printLength } from '../../measure/lengths.ts';
import { equals, subtract, ZERO } from '../../measure/rational.ts';
import type { Cloth } from '../../pattern/pattern.ts';

/** @returns "takes 4 1/2 in. of cloth 42 in. wide, proved least": what the pieces of one fabric take of what is bought, and how near that is to the least */
export function takesWords({ layout: { takes, least, cloths }, order: { bought }, added }: Cloth, unit: LengthUnit): string {
  if (equals(takes, ZERO)) return cloths.length === 0 ? '' : 'all of it from what you have';
  const own = cloths.some(({ source }) => source.form === 'own') ? ' beside what you have' : '';
  const { width, length } = bought;
  const what =
    length === null
      ? `takes ${printLength(takes, unit)} of cloth ${printLength(width, unit)} wide${own}`
      : `each ${printLength(width, unit, 'bare')} × ${printLength(length, unit)}${own}`;
  const over = subtract(takes, least);
  const more = length === null ? printLength(over, unit) : String(over.n);
  const bound = equals(over, ZERO) ? 'proved least' : `at most ${more} above the least`;
  return `${what}; ${bound}${added === null ? '' : `; with ${added}`}`;
}
