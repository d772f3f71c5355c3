import { describe, expect, it } from 'vitest';
import { placesOf, threadsOf } from '../../src/app/lights.ts';
import type { Block } from '../../src/block/block.ts';
import { NOTHING_SEWN, sewnInk } from '../../src/canvas/draw-sewing.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';

/** A sail of marram in the middle of fog, 4 by 4 cells; one pin that can be honoured and one that cannot. */
const read = parseBlock(
  JSON.stringify({
    format: 'piecewright/block',
    version: 1,
    name: 'Sail',
    finished: { width: 12, height: 6, unit: 'in' },
    grid: { columns: 4, rows: 4 },
    fabrics: [{ id: 'fog', name: 'Fog', color: '#c9d2d6' }, { id: 'marram', name: 'Marram', color: '#7c8a4d' }],
    ground: 'fog',
    patches: [{ fabric: 'marram', points: [[1, 1], [3, 1], [3, 3], [1, 3]] }],
    pins: [{ pin: 'one unit', from: [1, 1], to: [4, 3] }, { pin: 'sewn last', from: [2, 0], to: [2, 4] }],
  }),
);
const block = (read.ok && read.value) as Block;
const made = makePattern(block);
if (!made.ok) throw new Error(made.problem.sentence);
const pattern = made.value;

describe('a line about seams through one fabric', () => {
  it('lights the pieces on both sides, and the seam itself, in grid units', () => {
    const { piecesOf, linesOf } = threadsOf(pattern);
    pattern.divisions.forEach(({ fabric }, i) => {
      const pieces = [...piecesOf.get(`division ${i}`)!];
      expect(pieces.length).toBeGreaterThan(1);
      expect(pieces.map((id) => pattern.pieces[id]!.fabric)).toEqual(pieces.map(() => fabric));
      expect(linesOf.get(pieces[0]!)).toContain(`division ${i}`);
      // Every seam here runs on a grid line, from one grid line to another.
      const places = placesOf(`division ${i}`, pattern, [], block.grid);
      expect(places.length).toBeGreaterThan(0);
      for (const [[ax, ay], [bx, by]] of places as [[[number, number], [number, number]]]) {
        expect([ax, ay, bx, by].every(Number.isInteger)).toBe(true);
        expect(ax === bx || ay === by).toBe(true);
      }
    });
    expect(pattern.divisions.length).toBeGreaterThan(0);
  });

  it('and no other line lights a place; nor does one that is no longer there', () => {
    expect(placesOf('cut 1', pattern, [], block.grid)).toEqual([]);
    expect(placesOf(null, pattern, [], block.grid)).toEqual([]);
    expect(placesOf('division 99', pattern, [], block.grid)).toEqual([]);
    expect(placesOf('remedy 0', null, [], block.grid)).toEqual([]);
  });
});

describe('what the table draws of a pattern', () => {
  it('is which pins are not honoured, and the seams through one fabric while they are asked for', () => {
    expect([...sewnInk(pattern, block.grid, false).refused]).toEqual([1]);
    expect(sewnInk(pattern, block.grid, false).divisions).toEqual([]);
    const all = pattern.divisions.flatMap((_, i) => placesOf(`division ${i}`, pattern, [], block.grid));
    expect(sewnInk(pattern, block.grid, true).divisions).toEqual(all);
    expect(sewnInk(null, block.grid, true)).toBe(NOTHING_SEWN);
  });
});
