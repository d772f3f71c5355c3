import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBlock } from '../../src/block/whole-check.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { removePin, togglePin } from '../../src/block/pins.ts';
import { regrid, subdivide } from '../../src/block/regridding.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import { block, must, SEED, unpainted } from './drawn.ts';

const upright = { pin: 'sewn last', from: [2, 0], to: [2, 4] } as const;
const corner = { pin: 'one unit', from: [0, 0], to: [2, 2] } as const;

describe('a pin', () => {
  it('is set, and set again is taken away, whichever of its points comes first', () => {
    const set = must(togglePin(unpainted(4, 4), corner, 1));
    expect(set.pins).toEqual([corner]);
    expect(must(togglePin(set, { pin: 'one unit', from: [2, 0], to: [0, 2] }, 1))).toEqual(unpainted(4, 4));
    expect(must(togglePin(set, upright, 1)).pins).toEqual([corner, upright]);
  });

  it('is taken away by its number', () => {
    const both = unpainted(4, 4, { pins: [corner, upright] });
    expect(must(removePin(both, 0)).pins).toEqual([upright]);
    expect(must(removePin(must(removePin(both, 1)), 0))).toEqual(unpainted(4, 4));
    expect(removePin(both, 2)).toMatchObject({ problem: { code: 'no-such-pin' } });
  });

  it('may lie between grid lines, on the lattice of its block', () => {
    const halves = must(togglePin(unpainted(4, 4), { pin: 'sewn last', from: [3, 0], to: [3, 8] }, 2));
    expect(halves).toMatchObject({ denominator: 2, pins: [{ from: [3, 0], to: [3, 8] }] });
    expect(must(togglePin(halves, { pin: 'sewn last', from: [6, 0], to: [6, 16] }, 4))).toEqual({ ...unpainted(4, 4), denominator: 4 });
  });

  it('is refused off the block, without extent, or where there are too many', () => {
    const code = (pin: Parameters<typeof togglePin>[1]) => {
      const result = togglePin(unpainted(4, 4), pin, 1);
      return result.ok ? null : result.problem.code;
    };
    expect(code({ pin: 'one unit', from: [0, 0], to: [2, 5] })).toBe('off-the-grid');
    expect(code({ pin: 'one unit', from: [0, 0], to: [2, 0] })).toBe('pin-without-extent');
    expect(code({ pin: 'sewn last', from: [2, 2], to: [2, 2] })).toBe('pin-without-extent');
    const many = unpainted(8, 8, { pins: Array.from({ length: 50 }, (_, i) => ({ pin: 'one unit', from: [0, 0], to: [(i % 8) + 1, 1] })) });
    expect(togglePin(many, { pin: 'one unit', from: [4, 4], to: [5, 5] }, 1)).toMatchObject({ problem: { code: 'too-many-pins' } });
  });

  it('goes where the drawing goes: turned, mirrored, on divided cells, in true proportion', () => {
    const drawn = unpainted(4, 4, { pins: [upright, corner] });
    expect(turn(drawn).pins).toEqual([{ pin: 'sewn last', from: [4, 2], to: [0, 2] }, { pin: 'one unit', from: [4, 0], to: [2, 2] }]);
    expect(mirror(drawn, 'top and bottom').pins![1]).toEqual({ pin: 'one unit', from: [0, 4], to: [2, 2] });
    expect(must(subdivide(drawn, 2)).pins![0]).toEqual({ pin: 'sewn last', from: [4, 0], to: [4, 8] });
    expect(must(toDrawing(drawn)).drawing.pins![1]).toEqual({ pin: 'one unit', from: [0, 0], to: [4, 4] });
    fc.assert(fc.property(block, (each) => void expect(checkBlock(turn(each))).toEqual(checkBlock(each))), SEED);
  });

  it('that does not fit another grid is left out, and told', () => {
    const { block: smaller, lost } = must(regrid(unpainted(4, 4, { pins: [upright, corner] }), { columns: 4, rows: 3 }));
    expect(lost.pins).toEqual([0]);
    expect(smaller.pins).toEqual([corner]);
  });

  it('that no longer fits the drawing is a note on the pattern, not an error', () => {
    // On a grid one row higher the seam does not run right across any more.
    const { block: higher } = must(regrid(unpainted(4, 4, { pins: [upright] }), { columns: 4, rows: 5 }));
    const made = must(makePattern(higher));
    expect(made.refusedPins).toEqual([{ pin: 0, why: expect.any(String), says: expect.stringMatching(/[.]$/) }]);
    expect(patternText(made)).toContain('Pin 1 is not honoured: ');
    expect(made.proof.holds).toBe(true);
  });
});
