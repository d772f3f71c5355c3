import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contrast, lightness } from '../../../src/block/colour/lightness.ts';

const colour = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);

describe('how light a fabric is', () => {
  it('is in the order of CIE L* as a colour library has it (colorjs.io, under the white of sRGB)', () => {
    const colours = fc.sample(colour, { numRuns: 500, seed: 5 });
    const ours = colours.map(lightness);
    const theirs = colours.map((each) => new Color(each).to('lab-d65').coords[0]!);
    ours.forEach((l, i) => expect(l).toBeCloseTo(theirs[i]!, 2));
    // The guidelines give the shares of red, green and blue to four digits only: what differs by less than that may tell is not put in order.
    for (const [i, l] of theirs.entries()) {
      for (const [j, other] of theirs.entries()) if (l - other > 0.01) expect(ours[i]! > ours[j]!).toBe(true);
    }
  });

  it('contrasts as the Web Content Accessibility Guidelines have it', () => {
    // W3C, Understanding Success Criterion 1.4.3: black on white is 21:1, #777777 on white 4.48:1, #767676 4.54:1 (w3.org/WAI/WCAG22/Understanding/contrast-minimum, from memory).
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
    expect(contrast('#ffffff', '#767676')).toBeCloseTo(4.54, 2);
    fc.assert(
      fc.property(colour, colour, (one, other) => {
        expect(contrast(one, other) / new Color(one).contrast(new Color(other), 'WCAG21')).toBeCloseTo(1, 3);
      }),
      { seed: 6, numRuns: 500 },
    );
  });
});
