import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aboutLength } from '../../src/measure/about.ts';
import { parseLength } from '../../src/measure/lengths.ts';
import { rational, toNumber } from '../../src/measure/rational.ts';
import { surd } from '../../src/measure/surd.ts';
import { SEED } from '../block/drawn.ts';

describe('how much a length is, for people', () => {
  it.each([
    [surd(rational(3, 8)), 'in', '3/8 in.'],
    [surd(rational(1, 24)), 'in', '0.04 in.'],
    // 7/8 − (2 + √2)/4
    [surd(rational(3, 8), rational(-1, 4), 2), 'in', '0.02 in.'],
    [surd(rational(3), rational(-2), 2), 'in', '0.17 in.'],
    [surd(rational(1, 1000), rational(0)), 'in', 'less than 0.01 in.'],
    [surd(rational(1, 3)), 'cm', '0,33 cm'],
    [surd(rational(6, 5)), 'cm', '1,2 cm'],
    [surd(rational(0)), 'in', '0 in.'],
  ] as const)('is told exactly where a ruler has it, else to the nearest hundredth', (length, unit, said) => {
    expect(aboutLength(length, unit)).toBe(said);
  });

  it('is read back within half a hundredth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 300 }), fc.integer({ min: 0, max: 40 }), fc.integer({ min: 2, max: 7 }), (n, d, q, r) => {
        const length = surd(rational(n, d), rational(q, 8), r);
        const said = aboutLength(length, 'in');
        if (said.startsWith('less')) return;
        const read = parseLength(said);
        expect(read.ok && Math.abs(toNumber(read.value.value) - (n / d + (q / 8) * Math.sqrt(r)))).toBeLessThanOrEqual(0.005 + 1e-9);
      }),
      SEED,
    );
  });
});
