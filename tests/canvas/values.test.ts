import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { luminance } from '../../src/block/colour/luminance.ts';
import { greyOf } from '../../src/canvas/values.ts';

const contrast = (a: string, b: string): number => {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};

describe('values', () => {
  // W3C, Understanding WCAG 2.2, Success Criterion 1.4.3: #777777 on white, 4.47:1, is just not enough (from memory).
  it.each([
    ['#777777', 4.47],
    ['#000000', 21],
  ])('%s on white has the contrast that the W3C gives it', (color, ratio) => {
    expect(Math.floor(contrast(color, '#ffffff') * 100) / 100).toBe(ratio);
  });

  // ITU-R BT.709 (from memory): the share of each primary in the luminance of white.
  it.each([
    ['#ff0000', 0.2126],
    ['#00ff00', 0.7152],
    ['#0000ff', 0.0722],
    ['#fff', 1],
  ])('%s has a luminance of %d', (color, share) => expect(luminance(color)).toBeCloseTo(share, 10));

  it('a grey is its own value, and every colour is as light as its grey', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (number) => {
        const color = `#${number.toString(16).padStart(6, '0')}`;
        const grey = greyOf(color);
        expect(greyOf(grey)).toBe(grey);
        // Within half a step of 255.
        const step = Math.abs(luminance(grey) - luminance(color));
        expect(step).toBeLessThanOrEqual(0.0045);
      }),
      { seed: 4, numRuns: 500 },
    );
  });
});
