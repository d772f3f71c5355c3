import { describe, expect, test } from 'vitest';
import { blank } from '../../src/block/blank.ts';
import type { Block } from '../../src/block/block.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, halfCell, quarterCell } from '../../src/block/patch-shapes.ts';
import { cellFabrics, cellInWords, drawingInWords, fabricAt } from '../../src/canvas/cell-fabrics.ts';
import { fabricLetters } from '../../src/canvas/fabric-letters.ts';
import { rulerMarks } from '../../src/canvas/ruler-marks.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';

const fabrics = [
  { id: 'oat', name: 'Oat', color: '#f3ede0' },
  { id: 'tide', name: 'Tide', color: '#2f5d62' },
  { id: 'tern', name: 'Tern', color: '#888888' },
];

function painted(...strokes: readonly (readonly [string, Parameters<typeof paint>[2]])[]): Block {
  const finished = { width: rational(12), height: rational(6), unit: 'in' } as const;
  const empty = blank({ name: 'Mole', finished, grid: { columns: 4, rows: 2 }, fabrics });
  if (!empty.ok) throw new Error(empty.problem.sentence);
  return strokes.reduce((block, [fabric, stroke]) => {
    const next = paint(block, fabric, stroke);
    if (!next.ok) throw new Error(next.problem.sentence);
    return next.value;
  }, empty.value);
}

const nameOf = (id: string): string => fabrics.find((fabric) => fabric.id === id)!.name;

describe('the drawing in words', () => {
  const block = painted(
    ['tide', cell(0, 0)],
    ['tide', cell(1, 0)],
    ['tern', halfCell(2, 0, 'bottom left')],
    ['tern', quarterCell(3, 1, 'left')],
  );

  test('says every row, equal neighbours once', () => {
    expect(drawingInWords(cellFabrics(block), nameOf)).toEqual([
      'Columns 1 to 2: Tide. Column 3: Oat top right, Tern bottom left. Column 4: Oat.',
      'Columns 1 to 3: Oat. Column 4: Oat top, Oat right, Oat bottom, Tern left.',
    ]);
  });

  test('says of one cell what it says of it among all', () => {
    const all = cellFabrics(block);
    for (let row = 0; row < 2; row++) {
      for (let column = 0; column < 4; column++) {
        expect(cellInWords(cellFabrics(block, [column, row]), 0, 0, nameOf)).toBe(cellInWords(all, column, row, nameOf));
      }
    }
  });

  test('knows the fabric under the pointer', () => {
    expect(fabricAt(block, [0.5, 0.5])).toBe('tide');
    expect(fabricAt(block, [2.1, 0.9])).toBe('tern');
    expect(fabricAt(block, [2.9, 0.1])).toBe('oat');
  });
});

describe('the letters of the fabrics', () => {
  test('are the first of the name that nobody has yet, and all different', () => {
    expect([...fabricLetters(fabrics).values()]).toEqual(['O', 'T', 'E']);
  });

  test('stay different for more fabrics than there are letters, and for names without any', () => {
    const many = Array.from({ length: 40 }, (_, i) => ({ id: `f${i}`, name: i % 2 === 0 ? 'Blue' : '12', color: '#0000ff' }));
    expect(new Set(fabricLetters(many).values()).size).toBe(40);
  });
});

describe('the tape along the edge', () => {
  const labels = (cells: number, pixels: number, lines?: readonly Rational[]): string[] =>
    rulerMarks(rational(12), cells, lines, pixels, 50).map(({ length }) => formatLength(length));

  test('has a number at every cell where there is room', () => {
    expect(labels(4, 400)).toEqual(['0', '3', '6', '9', '12']);
    expect(labels(7, 700)[1]).toBe('1 5/7');
  });

  test('leaves numbers out evenly where there is none, and always has both ends', () => {
    expect(labels(12, 200)).toEqual(['0', '3', '6', '9', '12']);
    expect(labels(7, 200)).toEqual(['0', '12']);
  });

  test('of an uneven grid has its numbers at the lines that have room', () => {
    const lines = [rational(1, 2), rational(1), rational(6), rational(23, 2)];
    expect(labels(12, 1200, lines)).toEqual(['0', '1/2', '1', '6', '11 1/2', '12']);
    expect(labels(12, 600, lines)).toEqual(['0', '1', '6', '12']);
  });
});
