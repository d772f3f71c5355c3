import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typedTime } from '../../src/app/sheet/figures/typed-time.ts';

describe('a time that somebody types', () => {
  test.each([
    ['15', 15], [' 15 s ', 15], ['7.5', 7.5], ['7,5 sec', 7.5], ['.5', 0.5], ['0', 0], ['2 min', 120], ['1,5 min', 90], ['1 min 30 s', 90], ['1m30', 90], ['3600', 3600], ['60 Minutes', 3600],
  ])('%j is %d seconds', (text, seconds) => expect(typedTime(text)).toEqual({ ok: true, value: seconds }));

  test.each(['', '   ', 'soon', '-3', '1/2', '3601', '61 min', '1e3', 'NaN', 'Infinity', '15 in.', '1 2', '9'.repeat(400), '<b>15</b>'])('%j is answered with one short sentence', (text) => {
    const read = typedTime(text);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problem.sentence).toMatch(/^.{1,140}\.$/u);
  });

  test('whatever it is, is a time from 0 to an hour, or refused', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[\d.,]{0,8} ?(s|min|m)? ?[\d.,]{0,5}$/)), (text) => {
        const read = typedTime(text);
        if (read.ok) expect(read.value >= 0 && read.value <= 3600).toBe(true);
      }),
      { seed: 20261125 },
    );
  });
});
