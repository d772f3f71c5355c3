import { plainTelling } from '../../block/plain-telling.ts';
import type { Telling } from '../../block/telling.ts';
import { printHundredths } from '../../measure/about.ts';
import { printLength } from '../../measure/lengths.ts';
import type { HouseStyle } from '../house-style.ts';
import { withFractions } from '../pages/face.ts';
import type { ValueWords } from '../phrases/kind-names.ts';

/** What of a house style decides how values stand in a sentence. */
export type ValueStyle = Pick<HouseStyle, 'kinds' | 'fractions' | 'inches'>;

/** What of a language says how it prints values. */
interface Spoken {
  readonly pattern: { readonly values: ValueWords };
}

/**
 * @param names what a fabric is called, by its id
 * @param language the one whose sentences hold the values
 * @returns values as a designer has them printed: "1⅞ in." or "1 7/8″", "HST"; centimetres with a comma. A name is set on one line and
 * without a full stop at its end; a fabric without one is told by its id
 */
export function styledTelling(style: ValueStyle, names: (id: string) => string, { pattern }: Spoken): Telling {
  const { values } = pattern;
  const set = style.fractions === 'set' ? withFractions : (text: string): string => text;
  const withUnit = (number: string, unit: 'in' | 'cm'): string =>
    unit === 'cm' ? `${number} cm` : style.inches === '″' ? `${number}″` : `${number} ${values.inches}`;
  return {
    ...plainTelling(names),
    length: (value, unit, how) => {
      const number = set(printLength(value, unit, 'bare'));
      return how === 'bare' ? number : withUnit(number, unit);
    },
    about: (value, unit) => {
      const number = printHundredths(value, unit).split(' ')[0]!;
      return withUnit(unit === 'in' ? number.replace('.', values.point) : number, unit);
    },
    kind: (kind, number) => {
      const name = values.kinds[kind];
      return ((style.kinds === 'short' && name.short) || name)[number];
    },
  };
}
