import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { rational } from '../../src/measure/rational.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import { columnsOf, harmless, padded, wrapped } from '../../src/pattern/plain-lines.ts';
import { blockNamed, namesIn, patternOf } from './made.ts';

const SHOO_FLY = blockNamed('cases', 'shoo-fly-12');
const STEERING = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;

/** Names that somebody could type or paste: plain, long, wide, steering. */
const name = fc.oneof(
  fc.string({ maxLength: 200, unit: 'grapheme' }),
  fc.string({ maxLength: 200, unit: fc.constantFrom('a', ' ', '\u001b', '\n', '\u202e', '\u009b', '海', '🧵', 'é', '1/2', '\ud800') }),
);

const renamed = (block: Block, title: string, cloth: string): Block => ({
  ...block,
  name: title,
  fabrics: block.fabrics.map((fabric) => ({ ...fabric, name: cloth })),
});

describe('the pattern as text', () => {
  const text = patternText(patternOf(SHOO_FLY));

  it('tells the sizes, what to buy and what to cut, its columns in line', () => {
    expect(text).toContain('12 by 12 in. finished, 12 1/2 by 12 1/2 in. unfinished');
    expect(text).toContain('\n  1/4 yd  Mustard\n  1/8 yd  Yellow\n  1/4 yd  White\n');
    // American Patchwork & Quilting, Shoo Fly quilt block, 2019-04-02.
    expect(text).toContain(
      [
        '  Mustard (1/4 yd)',
        '    cut 1  2  squares  4 7/8 in.  for A',
        '    cut 2  4  squares  4 1/2 in.  for B and C',
        '    from 1 strip 4 7/8 in. wide',
        '',
        '  Yellow (1/8 yd)',
        '    cut 3  1  square   4 1/2 in.  for B',
      ].join('\n'),
    );
  });

  it('lists the units and numbers the steps, with what to press', () => {
    const [unit, sizes] = ['half-square triangle, two at a time', '4 by 4 in. finished, 4 1/2 by 4 1/2 in. unfinished'];
    expect(text).toContain(`\n  A  make 4  ${unit}\n             ${sizes}\n`);
    const numbers = [...text.matchAll(/^ {2}(\d)\. (.*)$/gm)].map(([, number, what]) => `${number} ${what}`);
    expect(numbers).toEqual(['1 Unit A, half-square triangle', '2 Unit B, joined unit', '3 Unit C, joined unit', '4 The block']);
    expect(text.match(/^ {5}Press .*$/gm)).toHaveLength(4);
  });

  it('says that the proof holds, names the other way and ends with the cautions in a frame', () => {
    expect(text).toContain('Sewn back in exact arithmetic: 12 seams, all straight, and the result is the\n  drawing.');
    expect(text).toContain('  - fewest pieces: ');
    const frame = text.slice(text.indexOf('+- Take care')).trimEnd().split('\n');
    expect(frame.length).toBeGreaterThan(3);
    for (const line of frame) expect(line).toMatch(/^[+|].{78}[+|]$/u);
  });

  it('speaks of several blocks, of a trim and of squares to spare', () => {
    const methods = { 'half-square triangle': 'eight-at-a-time' } as const;
    const many = patternText(patternOf(SHOO_FLY, { blocks: 3, trim: rational(1, 8), methods }));
    expect(many).toContain('All that follows is for 3 blocks.');
    expect(many).toContain('1/8 in. to trim off');
    // Twelve half-square triangles, eight from a pair: two pairs, four left over. Unfinished 4 1/2, oversize, from 10 in. squares:
    // quiltingboard.com, magic eight table.
    expect(many).toMatch(/2 {2}squares {2}10 in\. +for A, 4 to spare/);
  });

  it('gives centimetres with a decimal comma', () => {
    const metric = patternText(patternOf({ ...SHOO_FLY, finished: { width: rational(12), height: rational(15, 2), unit: 'cm' } }));
    expect(metric).toContain('12 by 7,5 cm finished, 13,5 by 9 cm unfinished');
    expect(metric).not.toMatch(/\bin\.|\d\.\d/);
  });

  it('says of a template where its corners are and of a rectangle which diagonal', () => {
    const star = patternText(patternOf(blockNamed('gallery', 'peaked-star-12')));
    expect(star).toMatch(/templates? {2}.*\n +Finished corners, across by down: \d+ by \d+; /);
    expect(star).toMatch(/cut once on the diagonal\n +Right side up, standing on the short side, cut 2 from the top\s+left/);
  });
});

describe('on a terminal of 80 columns', () => {
  const drawn = (['cases', 'gallery'] as const).flatMap((folder) => namesIn(folder).map((each) => [each, folder] as const));

  it.each(drawn)('%s fits', (each, folder) => {
    const lines = patternText(patternOf(blockNamed(folder, each))).split('\n');
    for (const line of lines) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
  });

  it('every name fits and none steers it', () => {
    fc.assert(
      fc.property(name, name, (title, cloth) => {
        const text = patternText(patternOf(renamed(SHOO_FLY, title, cloth)));
        expect(text).not.toMatch(STEERING);
        for (const line of text.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(80);
      }),
      { seed: 20261125, numRuns: 100 },
    );
  });
});

describe('a paragraph', () => {
  it('holds every word in order, however it is wrapped', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,60}$/), { minLength: 1 }), fc.integer({ min: 8, max: 80 }), (words, columns) => {
        const lines = wrapped(words.join(' '), columns, '  1. ');
        expect(lines.map((line) => line.slice(5)).join('').replaceAll(' ', '')).toBe(words.join(''));
        expect(lines.every((line) => line.length <= columns)).toBe(true);
        expect(lines[0]?.startsWith('  1. ')).toBe(true);
        expect(lines.slice(1).every((line) => line.startsWith('     '))).toBe(true);
      }),
      { seed: 20261125 },
    );
  });

  it('never parts a length from its fraction or its unit', () => {
    for (let columns = 16; columns < 60; columns++) {
      const lines = wrapped('It measures 12 1/2 by 4 7/8 in. and then 4,8 by 10 cm, cut 2 of 3 1/2 in.', columns);
      for (const line of lines) expect(line).not.toMatch(/^(\d+\/\d+|in\.|cm)/);
    }
  });

  it('counts wide signs twice and joined signs once', () => {
    expect(['ab', '海', 'é', 'e\u0301', '🧵', '👩‍👧'].map(columnsOf)).toEqual([2, 2, 1, 1, 2, 2]);
    expect(padded('海', 4)).toBe('海  ');
    expect(padded('12', 4, 'right')).toBe('  12');
  });

  it('shows where a steering sign was', () => expect(harmless('a\u001b[2Jb\nc\u202ed')).toBe('a\ufffd[2Jb\ufffdc\ufffdd'));
});
