import { describe, expect, it } from 'vitest';
import { typedLength, typedSize } from '../../src/block/typed-size.ts';
import { rational } from '../../src/measure/rational.ts';
import { must } from './drawn.ts';

describe('a finished size as people type it', () => {
  it('is taken in the unit that is chosen, or in the one that is typed with either side', () => {
    expect(must(typedSize('6 1/2', '6.5', 'in'))).toEqual({ width: rational(13, 2), height: rational(13, 2), unit: 'in' });
    expect(must(typedSize('16,5 cm', '12', 'in'))).toEqual({ width: rational(33, 2), height: rational(12), unit: 'cm' });
    expect(must(typedSize('16,5', '120 mm', 'in'))).toEqual({ width: rational(33, 2), height: rational(12), unit: 'cm' });
  });

  it('is not guessed from two units', () => {
    expect(typedSize('6 in', '15 cm', 'in')).toMatchObject({ problem: { code: 'two-units' } });
    expect(typedSize('six', '6', 'in')).toMatchObject({ problem: { code: 'length-not-a-number' } });
    expect(typedSize('6', '1/0', 'in')).toMatchObject({ problem: { code: 'length-denominator-0' } });
  });

  it('goes into the other unit exactly: an inch is 2.54 cm (international yard and pound agreement, 1959)', () => {
    expect(must(typedLength('12 in', 'cm'))).toEqual(rational(762, 25));
    expect(must(typedLength('30,48 cm', 'in'))).toEqual(rational(12));
    expect(must(typedLength('2,54 cm', 'in'))).toEqual(rational(1));
    expect(must(typedLength('1/2', 'cm'))).toEqual(rational(1, 2));
    expect(typedLength('9007199254740991 in', 'cm')).toMatchObject({ problem: { code: 'too-fine' } });
  });
});
