import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Step } from '../../src/sewing/step.ts';
import { drawings, EVERYTHING, tries } from '../geometry/drawings.ts';
import { FILES, lastStep, patternOf, sewnBy } from './told.ts';

/** @returns the numbers of the parts a thing is made of */
function membersOf({ parts, joins }: Step, thing: number): readonly number[] {
  if (thing < parts.length) return [thing];
  const { first, second } = joins[thing - parts.length]!;
  return [...membersOf({ parts, joins } as Step, first), ...membersOf({ parts, joins } as Step, second)].sort((a, b) => a - b);
}

/** @returns whether numbers follow one another without a gap */
const inOneRun = (numbers: readonly number[]): boolean => numbers.every((n, i) => i === 0 || n === numbers[i - 1]! + 1);

describe('what a step lays down', () => {
  it.each(FILES)('%s: begins at the top left, whatever is made', (file) => {
    for (const { parts } of patternOf(file).steps) {
      const points = parts.flatMap(({ outline }) => outline);
      expect([Math.min(...points.map((p) => p.x / p.w)), Math.min(...points.map((p) => p.y / p.w))]).toEqual([0, 0]);
    }
  });

  it('is numbered so that what is already one is one run of numbers, also in free units', () => {
    const pictures = drawings({ ...EVERYTHING, cells: 3, free: 2 });
    let free = 0;
    fc.assert(
      fc.property(pictures, (drawing) => {
        for (const piecing of waysToSew(drawing)) {
          for (const step of sewnBy(drawing, rational(1), piecing).steps) {
            if (step.kind === 'free unit') free++;
            if (step.kind === 'partial-seam ring') continue;
            step.joins.forEach((_, j) => expect(inOneRun(membersOf(step, step.parts.length + j))).toBe(true));
          }
        }
      }),
      tries(40),
    );
    expect(free).toBeGreaterThan(20);
  });

  it('in a row lies from left to right, in a column from top to bottom', () => {
    for (const file of FILES) {
      for (const { how, parts } of patternOf(file).steps) {
        const row = how.startsWith('Sew in a row, left to right:');
        if (!row && !how.startsWith('Sew in a column, top to bottom:')) continue;
        const starts = parts.map(({ outline }) => Math.min(...outline.map((p) => (row ? p.x : p.y) / p.w)));
        expect(starts).toEqual(starts.toSorted((a, b) => a - b));
        expect(new Set(starts).size).toBe(parts.length);
      }
    }
  });
});

describe('rounds of triangles', () => {
  it('go round by round, opposite ones one after the other (scrappyquilting.com: opposite sides first)', () => {
    const { parts, joins } = lastStep(patternOf('tests/gallery/economy-patch-8'));
    const fabric = (i: number): string => ('cut' in parts[i]!.from ? parts[i]!.from.fabric : '');
    expect(parts.map((_, i) => fabric(i))).toEqual(['brick', 'teal', 'teal', 'teal', 'teal', 'oat', 'oat', 'oat', 'oat']);
    const level = joins.map(({ from, to }) => (to.y - from.y) * Math.sign(to.x - from.x) || 0);
    for (const i of [0, 2, 4, 6]) {
      const [a, b] = [joins[i]!, joins[i + 1]!];
      expect((a.to.x - a.from.x) * (b.to.y - b.from.y), `${level}`).toBe((a.to.y - a.from.y) * (b.to.x - b.from.x));
    }
  });
});

describe('a ring', () => {
  it('begins at a corner of its centre and stops half way along it', () => {
    const { parts, joins } = lastStep(patternOf('tests/cases/whirl-9'));
    const corners = parts[0]!.outline.map(({ x, y, w }) => `${x / w} ${y / w}`);
    const { from, to } = joins[0]!;
    expect(corners).toContain(`${from.x / from.w} ${from.y / from.w}`);
    const xs = parts[0]!.outline.map((p) => p.x / p.w);
    const side = Math.max(...xs) - Math.min(...xs);
    expect(Math.abs(to.x / to.w - from.x / from.w) + Math.abs(to.y / to.w - from.y / from.w)).toBe(side / 2);
    expect(joins.map(({ sew }) => sew)).toEqual(['part-way', 'through', 'through', 'through', 'finish']);
  });
});
