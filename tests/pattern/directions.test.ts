import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import { allDirectionNotes } from '../../src/pattern/directions.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import { must, unpainted } from '../block/drawn.ts';

/** A pinwheel: four half-square units of teal, each turned a quarter against the one before it. */
const pinwheel: Block['patches'] = [
  { fabric: 'teal', points: [[0, 0], [1, 0], [1, 1]] },
  { fabric: 'teal', points: [[2, 0], [2, 1], [1, 1]] },
  { fabric: 'teal', points: [[2, 2], [1, 2], [1, 1]] },
  { fabric: 'teal', points: [[0, 2], [0, 1], [1, 1]] },
];

const drawn = (patches: Block['patches'], directional = true): Block => {
  const plain = unpainted(2, 2, { patches });
  return { ...plain, fabrics: plain.fabrics.map((fabric) => (fabric.id === 'teal' && directional ? { ...fabric, directional } : fabric)) };
};

const notes = (block: Block, choices: Choices = {}): readonly string[] => allDirectionNotes(must(makePattern(block, choices, 'chosen way')));

describe('a print with an up and a down', () => {
  it('is told where units are turned, and what to do', () => {
    expect(notes(drawn(pinwheel), { method: 'one-at-a-time', blocks: 3 })).toEqual([
      'Teal has an up and a down. Made alike, it runs sideways in 6 and upside down in 3 of the units A in the block; ' +
        'lay its pieces upright for each place before you cut diagonals and sew, if it should not.',
    ]);
  });

  it('is told where units come several at a time, so that it cannot be laid for each', () => {
    expect(notes(drawn(pinwheel))).toEqual([
      'Teal has an up and a down. Two at a time, and laid alike, it is upside down in every second of the units A; ' +
        'cut its triangles one by one if it should stay upright.',
    ]);
    expect(notes(drawn(pinwheel), { methods: { 'half-square triangle': 'eight-at-a-time' } })[0]).toContain('Eight at a time, and laid alike, it runs in all directions');
  });

  it('is told where corners are flipped over', () => {
    const geese = [0, 1].map((y) => ({ fabric: 'rust', points: [[0, y + 1], [1, y], [2, y + 1]] as const }));
    const two = { ...drawn(geese), ground: 'teal' };
    expect(notes(two, { method: 'stitch-and-flip' })).toEqual([
      'Teal has an up and a down. Corners of the units A are flipped over: lay their squares with the print sideways, try one with a pin, and it comes to stand upright.',
    ]);
  });

  it('is not spoken of where there is none, nor where it stands upright by itself', () => {
    expect(notes(drawn(pinwheel, false))).toEqual([]);
    expect(notes(drawn([{ fabric: 'teal', points: [[0, 0], [1, 0], [1, 1], [0, 1]] }]))).toEqual([]);
  });

  it('is in the text before the cutting', () => {
    expect(patternText(must(makePattern(drawn(pinwheel)))).replace(/\s+/g, ' ')).toContain('Before you cut -------------- - Teal has an up and a down.');
  });
});
