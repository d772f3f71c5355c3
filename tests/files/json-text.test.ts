import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '../../src/files/json-text.ts';
import { SEED } from '../block/drawn.ts';
import { shooFly } from './shoo-fly.ts';

const text = JSON.stringify(shooFly(), null, 1);
const splinters = ['', ',', '}', ']', '{', '[', ':', '"', 'NaN', '01', '-', '.5', '\\', "'", 'tru', '//', '\u0000'];

describe('a text that is not JSON', () => {
  it('goes wrong on the line where the engine, too, finds it wrong', () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.nat(text.length), fc.nat(3), fc.constantFrom(...splinters), (at, removed, splinter) => {
        const broken = text.slice(0, at) + splinter + text.slice(at + removed);
        try {
          JSON.parse(broken);
        } catch (error) {
          // V8 gives the position for most faults.
          const position = /position (\d+)/.exec((error as Error).message);
          if (position === null) return;
          compared++;
          expect(jsonFault(broken).line).toBe(broken.slice(0, Number(position[1])).split('\n').length);
        }
      }),
      { ...SEED, numRuns: 3000 },
    );
    expect(compared).toBeGreaterThan(500);
  });
});
