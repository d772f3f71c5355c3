import fc from 'fast-check';
import type { Cut } from '../../src/cutting/cut.ts';
import type { ClothSource, LaidCloth, LaidColumn, LaidPieces, LaidStrip } from '../../src/cutting/layout.ts';
import { add, multiply, rational, ZERO, type Rational } from '../../src/measure/rational.ts';

const eighths = (n: number): Rational => rational(n, 8);

/** A line of the cutting list. */
export const line = (id: string, some: Partial<Cut> = {}): Cut => ({
  id, fabric: 'oat', quantity: 1, shape: 'rectangle', width: rational(2), height: rational(3), exact: null, subcut: 'none', uses: [], spare: 0,
  template: null, pieces: [], ...some,
});

export const bolt = (width: number): ClothSource => ({ form: 'by length', width: rational(width), length: null, count: null });
export const fatQuarter: ClothSource = { form: 'fat quarter', width: rational(22), length: rational(18), count: null };
export const pieces = (cut: string, width: Rational, length: Rational, count = 1): LaidPieces => ({ cut, width, length, count });
export const column = (width: Rational, times: number, ...within: readonly LaidPieces[]): LaidColumn => ({ width, times, pieces: within });
export const strip = (length: Rational, times: number, ...columns: readonly LaidColumn[]): LaidStrip => ({ length, times, columns });
export const cloth = (source: ClothSource, ...strips: readonly LaidStrip[]): LaidCloth => ({ source, strips, times: 1 });

/** Any cloth on which pieces lie: sides in eighths of an inch, at most a few inches, so that every eighth of it can be looked at. */
export function anyCloth(gen: fc.GeneratorValue): LaidCloth {
  const upTo = (most: number): number => gen(fc.integer, { min: 1, max: most });
  const width = 30 + upTo(20);
  const strips = Array.from({ length: upTo(4) }, () => anyStrip(upTo, width));
  const taken = strips.reduce((sum, { length, times }) => add(sum, multiply(length, rational(times))), ZERO);
  const bought = gen(fc.boolean);
  const source: ClothSource = {
    form: bought ? 'by length' : 'own',
    width: eighths(width),
    length: bought ? null : add(taken, eighths(upTo(9) - 1)),
    count: null,
  };
  return { source, strips, times: upTo(2) };
}

/** Columns until the next would not fit, in each of them pieces until the next would not fit. */
function anyStrip(upTo: (most: number) => number, width: number): LaidStrip {
  const length = 1 + upTo(13);
  const columns: LaidColumn[] = [];
  for (let x = 0; ; ) {
    const [wide, beside] = [upTo(12), upTo(3)];
    x += wide * beside;
    if (x > width) return strip(eighths(length), upTo(3), ...columns);
    const within: LaidPieces[] = [];
    for (let y = 0; ; ) {
      const [long, count] = [upTo(7), upTo(2)];
      y += long * count;
      if (y > length) break;
      // As wide as the column, or less.
      within.push(pieces(String(upTo(3)), eighths(upTo(2) === 1 ? wide : upTo(wide)), eighths(long), count));
    }
    columns.push(column(eighths(wide), beside, ...within));
  }
}
