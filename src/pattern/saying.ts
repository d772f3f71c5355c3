import type { LengthUnit } from '../block/block.ts';
import { nearly } from '../measure/about.ts';
import type { Surd } from '../measure/surd.ts';
import type { Speech, Wording } from './language.ts';
import type { Size } from './pattern.ts';

/** @returns a size in a sentence: "4 by 6 in." */
export const sizeSaid = ({ width, height }: Size, unit: LengthUnit, { language, telling }: Speech<Wording>): string =>
  language.pattern.size(telling.length(width, unit, 'bare'), telling.length(height, unit));

/** @returns a length that is told and not measured, see `aboutLength` */
export function aboutSaid(value: Surd, unit: LengthUnit, { language, telling }: Speech<Wording>): string {
  const { is, length } = nearly(value, unit);
  if (is === 'exact') return telling.length(length, unit);
  return is === 'near' ? telling.about(length, unit) : language.pattern.lessThan(telling.about(length, unit));
}
