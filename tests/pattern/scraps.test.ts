import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { toDrawing } from '../../src/block/drawing.ts';
import { holdPrint } from '../../src/block/held-prints.ts';
import { turn } from '../../src/block/turning.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import { eachWords, scrapsOf } from '../../src/pattern/scraps.ts';
import { prove } from '../../src/sewing/proof.ts';
import { must, unpainted } from '../block/drawn.ts';

const square = (x: number, y: number) => ({ fabric: 'teal', points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] as const });

/** Eight squares of a family in a checkerboard of 4 by 4 cells of 3 in. */
const checkers = (prints: number, change: Partial<Block> = {}): Block => {
  const drawn = unpainted(4, 4, { patches: [0, 1, 2, 3].flatMap((y) => [y % 2, (y % 2) + 2].map((x) => square(x, y))), ...change });
  return { ...drawn, fabrics: drawn.fabrics.map((fabric) => (fabric.id === 'teal' ? { ...fabric, scraps: { prints, seed: 3 } } : fabric)) };
};

/** @returns a text as if it had no lines */
const flowing = (text: string): string => text.replace(/\s+/g, ' ');

describe('a fabric that stands for scraps', () => {
  it('is asked for in pieces of each print, not in yards', () => {
    const pattern = must(makePattern(checkers(4, { choices: { blocks: 2 } })));
    expect([pattern.fabrics.map(({ fabric }) => fabric.id), pattern.scraps.map(({ id }) => id)]).toEqual([['oat'], ['teal']]);
    expect(pattern.proof.holds).toBe(true);
    const text = patternText(pattern);
    expect(text).toMatch(/^ {2}scraps of 4 prints {2}Teal$/m);
    expect(flowing(text)).toMatch(/ Teal \(scraps of 4 prints\) cut \d 16 squares 3 1\/2 in\. for A: 4 of each of 4 prints /);
    expect(text).toContain('Teal: all 2 blocks are spread alike.');
    expect(text).not.toMatch(/yd +Teal/);
  });

  it('is in the data with every piece and its print', () => {
    const pattern = must(makePattern(checkers(4)));
    const { scraps, fabrics } = patternJson(pattern);
    expect(fabrics.map(({ id }) => id)).toEqual(['oat']);
    expect(scraps).toMatchObject([{ id: 'teal', name: 'Teal', prints: 4, cuts: [{ each: [2, 2, 2, 2] }], equalAlongSeams: 0, equalAtCorners: 0 }]);
    expect((scraps as { spread: unknown[] }[])[0]!.spread).toHaveLength(8);
    expect((scraps as { spread: { corners: unknown }[] }[])[0]!.spread.map(({ corners }) => JSON.stringify(corners))).toContain(
      '[["0","0"],["3","0"],["3","3"],["0","3"]]',
    );
  });

  it('lies in the block patch by patch: side by side they are pieces of their own, which the proof sees to', () => {
    const four = [square(0, 0), square(1, 0), square(0, 1), square(1, 1)];
    const family = must(makePattern(checkers(3, { patches: four })));
    const plain = must(makePattern(unpainted(4, 4, { patches: four })));
    const own = (pattern: typeof family) => pattern.pieces.filter(({ fabric }) => fabric === 'teal').map(({ patches }) => patches);
    expect(own(plain)).toEqual([[0, 1, 2, 3]]);
    expect(own(family).sort()).toEqual([[0], [1], [2], [3]]);
    expect(family.proof).toMatchObject({ holds: true });
    expect(scrapsOf(family)[0]).toMatchObject({ seams: 0 });
    // The steps of the plain block, held against the drawing in scraps.
    const { drawing, step } = must(toDrawing(checkers(3, { patches: four })));
    const { choices, cuts, steps } = plain;
    const { faults } = prove({ drawing, step, ...choices, cuts, steps });
    expect(faults).toEqual([expect.stringContaining('joins patch 4, which lies apart, to others.')]);
  });

  it('may be all there is', () => {
    const only = checkers(2);
    const pattern = must(makePattern({ ...only, ground: 'teal', patches: [], seams: [[[0, 2], [4, 2]]] }));
    expect(pattern.fabrics).toEqual([]);
    expect(flowing(patternText(pattern))).toContain('Teal (scraps of 2 prints) cut 1 2 rectangles 6 1/2 by 12 1/2 in. for the block: 1 of each of 2 prints');
  });

  it('says how many prints would do, and which are not used', () => {
    const three = { ground: 'teal', patches: [], seams: [[[0, 2], [4, 2]], [[1, 2], [1, 4]]] } as const;
    const says = (prints: number) => scrapsOf(must(makePattern({ ...checkers(prints), ...three })))[0]!.says;
    expect(says(2)).toEqual(['Teal: 1 pair of pieces of one print touches along a seam, because 3 of its pieces all touch each other; 3 prints would do.']);
    expect(says(3)).toEqual([]);
    expect(says(5)).toEqual(['Teal: 2 prints are not used, for there are fewer pieces than prints.']);
  });

  it('is counted in words as short as can be', () => {
    expect(eachWords([4, 4, 4, 4])).toBe('4 of each of 4 prints');
    expect(eachWords([2, 3, 3, 0])).toBe('3 of each of prints 2 and 3, 2 of print 1');
    expect(eachWords([1, 1, 1, 2, 1, 0])).toBe('2 of print 4, 1 of each of prints 1 to 3 and 5');
  });
});

describe('a patch that is held in a print', () => {
  const printOf = (pattern: Pattern): ReadonlyMap<number, number> => {
    const [family] = scrapsOf(pattern);
    return new Map(pattern.pieces.flatMap(({ id, patches: [patch] }) => (family!.of.has(id) ? [[patch!, family!.of.get(id)!] as const] : [])));
  };
  const seeded = (pattern: Pattern, seed: number): Pattern => ({ ...pattern, scraps: pattern.scraps.map((family) => ({ ...family, scraps: { ...family.scraps!, seed } })) });

  it('keeps it however the rest is spread, evenly and with no two alike side by side', () => {
    const four = [square(0, 0), square(1, 0), square(2, 0), square(0, 1), square(1, 1), square(2, 1)];
    const pattern = must(makePattern(holdPrint(holdPrint(checkers(3, { patches: four }), 'teal', [0], 3), 'teal', [4], 2)));
    for (let seed = 1; seed <= 12; seed++) {
      const [family, prints] = [scrapsOf(seeded(pattern, seed))[0]!, printOf(seeded(pattern, seed))];
      expect([prints.get(0), prints.get(4)]).toEqual([3, 2]);
      expect(family).toMatchObject({ seams: 0, lost: 0, cuts: [{ each: [2, 2, 2] }] });
    }
  });

  it('keeps it where equal prints come to touch by that, and the pattern says why', () => {
    const pair = holdPrint(checkers(3, { patches: [square(0, 0), square(1, 0), square(2, 0)] }), 'teal', [0, 1], 1);
    const family = scrapsOf(must(makePattern(pair)))[0]!;
    expect(family.seams).toBe(1);
    expect(family.says.join()).toContain('because of prints that are held');
    expect(scrapsOf(must(makePattern(holdPrint(pair, 'teal', [0, 1], null))))[0]!.seams).toBe(0);
  });

  it('is still held when the block was saved, opened and turned', () => {
    const block = holdPrint(checkers(4), 'teal', [5], 4);
    const again = must(parseBlock(formatBlock(block)));
    expect(again.patches[5]).toEqual(block.patches[5]);
    expect(printOf(must(makePattern(turn(again, 'right')))).get(5)).toBe(4);
    expect(parseBlock(formatBlock(block).replace('"print": 4', '"print": 0')).ok).toBe(false);
  });

  it('says so where what comes from one square is held in two prints', () => {
    const triangles = [0, 1].map((x): Block['patches'][number] => ({ fabric: 'teal', points: [[x, 0], [x + 1, 0], [x, 1]] }));
    const block = checkers(4, { patches: triangles });
    const family = scrapsOf(must(makePattern(holdPrint(holdPrint(block, 'teal', [0], 1), 'teal', [1], 2))))[0]!;
    expect(family.lost).toBe(1);
    expect(family.says.join()).toContain('1 piece does not keep the print held for it');
  });
});
