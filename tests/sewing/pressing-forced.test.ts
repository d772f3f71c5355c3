import { describe, expect, it } from 'vitest';
import type { Block, PressedSeam } from '../../src/block/block.ts';
import { pressSeams } from '../../src/block/pressing.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { must } from '../block/drawn.ts';
import { blockOf } from './told.ts';
import { cross, isOn, seamsInBlock, type LaidSeam, type Place } from './seams-in-block.ts';

const patternFor = (block: Block): Pattern => must(makePattern(block, {}, 'chosen way'));

/** @returns the seams on which a wish lies, as they are pressed; ends in the drawing's lattice steps, `scale` of them to one of the wish's */
function pressedThere({ steps }: Pattern, { from, to }: PressedSeam, scale: number): readonly PressedSeam['lies'][] {
  const place = ([x, y]: readonly [number, number]): Place => [BigInt(x * scale), BigInt(y * scale), 1n];
  const [a, b] = [place(from), place(to)];
  const middle: Place = [a[0] + b[0], a[1] + b[1], 2n];
  const on = (seam: LaidSeam): boolean => isOn(seam, middle, 'between') && cross(a, b, seam.from) === 0n && cross(a, b, seam.to) === 0n;
  return seamsInBlock(steps).flatMap((seam) => (on(seam) ? [!seam.toward ? 'open' : cross(a, b, seam.toward) > 0n ? 'right' : 'left'] : []));
}

/** Lattice steps of the drawing to one of the block's. */
const scaleOf = (block: Block, pattern: Pattern): number => pattern.lattice.width / (block.grid.columns * block.denominator);

describe('a seam that the maker wants pressed', () => {
  const files = [
    'tests/cases/shoo-fly-12',
    'tests/cases/ohio-star-12-triangles',
    'tests/cases/log-cabin-11',
    'tests/gallery/bright-hopes-6',
    'tests/gallery/martha-washington-star-12',
    'demo-blocks/05-eddy',
  ];

  it.each(files)('lies so in %s, in every turn and mirror of the block, and the rest is solved again', (file) => {
    const plain = blockOf(file);
    const before = patternFor(plain);
    const scale = scaleOf(plain, before);
    const level = seamsInBlock(before.steps).filter(({ from, to }) => [...from, ...to].every((n) => Number(n) % scale === 0 || n === 1n));
    expect(level.length).toBeGreaterThan(0);
    const ends = ({ from, to }: LaidSeam): Pick<PressedSeam, 'from' | 'to'> => ({
      from: [Number(from[0]) / scale, Number(from[1]) / scale],
      to: [Number(to[0]) / scale, Number(to[1]) / scale],
    });
    const seam = ends(level[Math.trunc(level.length / 2)]!);
    for (const lies of ['right', 'left', 'open'] as const) {
      const wished = must(pressSeams(plain, [seam], lies, plain.denominator));
      for (const block of [wished, turn(wished), mirror(wished, 'left and right'), turn(mirror(wished, 'top and bottom'))]) {
        const pattern = patternFor(block);
        expect(pressedThere(pattern, block.pressedSeams![0]!, scaleOf(block, pattern))).toEqual([lies]);
        expect(pattern.pressing.apart).toBe(pattern.pressing.apartAtLeast);
        expect(pattern.proof.holds).toBe(true);
      }
      // No plan that keeps to a wish leaves fewer points apart than the plan without; but what is open is not apart.
      if (lies !== 'open') expect(patternFor(wished).pressing.apart).toBeGreaterThanOrEqual(before.pressing.apart);
      expect(must(pressSeams(wished, [{ from: seam.to, to: seam.from }], null, plain.denominator))).toEqual(plain);
    }
  });

  it('turns the whole nine-patch about, so that all still nests', () => {
    const plain = blockOf('tests/gallery/nine-patch-9');
    const was = patternFor(plain);
    // The upright seam in the first row, beside the first square.
    const third = (plain.grid.columns * plain.denominator) / 3;
    const seam = { from: [third, 0], to: [third, third] } as const;
    const lies = pressedThere(was, { ...seam, lies: 'open' }, scaleOf(plain, was))[0]!;
    const other = lies === 'left' ? 'right' : 'left';
    const pattern = patternFor(must(pressSeams(plain, [seam], other, plain.denominator)));
    expect(pattern.pressing).toMatchObject({ points: 4, sameWay: 0, open: 0, proved: true });
    const rows = (made: Pattern): readonly string[] => made.steps.slice(0, 2).map(({ press }) => press);
    expect(rows(pattern)).not.toEqual(rows(was));
  });

  it('holds for all equal units; of two wishes for equal units the later', () => {
    const plain = blockOf('tests/cases/friendship-star-6');
    const star = patternFor(plain);
    const scale = scaleOf(plain, star);
    const triangles = seamsInBlock(star.steps).filter(({ step }) => step === 1);
    expect(triangles).toHaveLength(4);
    const wish = ({ from, to, toward }: LaidSeam, turned: boolean): PressedSeam => ({
      from: [Number(from[0]) / scale, Number(from[1]) / scale],
      to: [Number(to[0]) / scale, Number(to[1]) / scale],
      lies: cross(from, to, toward!) > 0n !== turned ? 'right' : 'left',
    });
    const of = (...wishes: readonly PressedSeam[]): string => patternFor({ ...plain, pressedSeams: wishes }).steps[0]!.press;
    expect(star.steps[0]!.press).toBe('Press toward Red.');
    for (const seam of triangles) expect(of(wish(seam, true))).not.toBe('Press toward Red.');
    expect(of(wish(triangles[0]!, true), wish(triangles[2]!, false))).toBe('Press toward Red.');
  });

  it('is still found where a change of the drawing makes its seam longer, and told of where no seam is left', () => {
    const plain = blockOf('tests/gallery/nine-patch-9');
    const third = (plain.grid.columns * plain.denominator) / 3;
    // On a lattice three times as fine: the second third of the seam.
    const part = { from: [3 * third, third], to: [3 * third, 2 * third] } as const;
    const block = must(pressSeams(plain, [part], 'open', 3 * plain.denominator));
    const pattern = patternFor(block);
    expect(pressedThere(pattern, block.pressedSeams![0]!, scaleOf(block, pattern))).toEqual(['open']);
    const told = ({ notes }: Pattern): readonly string[] => notes.filter((note) => note.startsWith('A pressing'));
    expect(told(pattern)).toEqual([]);
    // Through the middle of a square there is no seam.
    const nowhere = { from: [third, 0], to: [third, 2 * third] } as const;
    expect(told(patternFor(must(pressSeams(plain, [nowhere], 'open', 2 * plain.denominator))))).toEqual([
      'A pressing is chosen for a seam from 1 1/2 in. across, 0 in. down to 1 1/2 in. across, 3 in. down, but none is sewn there; it does nothing.',
    ]);
  });
});
