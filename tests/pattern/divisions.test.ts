import { describe, expect, it } from 'vitest';
import { parseBlock } from '../../src/files/block-file.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import { blockNamed, namesIn, patternOf } from './made.ts';

/** A block of 4 by 4 cells, 12 inches square, of sail patches on fog. */
function block(...patches: readonly (readonly (readonly [number, number])[])[]) {
  const read = parseBlock(
    JSON.stringify({
      format: 'piecewright/block',
      version: 1,
      name: 'Sail',
      finished: { width: 12, height: 12, unit: 'in' },
      grid: { columns: 4, rows: 4 },
      fabrics: [
        { id: 'fog', name: 'Fog', color: '#c9d2d6' },
        { id: 'marram', name: 'Marram', color: '#7c8a4d' },
      ],
      ground: 'fog',
      patches: patches.map((points) => ({ fabric: 'marram', points })),
    }),
  );
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

const rectangle = (x0: number, y0: number, x1: number, y1: number) => [[x0, y0], [x1, y0], [x1, y1], [x0, y1]] as const;
/** The text in one line. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('seams that run through one fabric', () => {
  it('are told with their place and price: a corner of one fabric takes one more piece and seam than areas', () => {
    const made = patternOf(block(rectangle(0, 0, 2, 2)), { way: 'fewest pieces' });
    expect(made.divisions).toHaveLength(1);
    const [{ says, more, places }] = made.divisions as [(typeof made.divisions)[number]];
    expect(more).toBe(1);
    expect(places).toHaveLength(1);
    // The corner of fog goes either to the square's row or to its column; both are the same picture, turned over.
    expect(says).toMatch(/^The seam at 6 in\. (across|down) runs through Fog from 6 to 12 in\. (across|down): one more piece, one more seam\.$/);
    expect(made.figures).toMatchObject({ pieces: 3, seams: 2 });
    expect(flat(patternText(made))).toContain(`1 piece and 1 seam more than there are areas drawn, for the sake of straight seams and equal units: - ${says}`);
    const data = patternJson(made);
    expect(data.divisions).toBe(1);
    expect(data.dividedAt).toEqual([
      { fabric: 'fog', places: [{ from: expect.any(Array), to: expect.any(Array) }], patches: 1, seams: 1, text: says },
    ]);
    expect(data.dividedAt[0]!.places[0]!.from).toEqual(['6', '6']);
    expect([data.dividedAt[0]!.places[0]!.to]).toContainEqual(says.includes('at 6 in. across') ? ['6', '12'] : ['12', '6']);
  });

  it('round another fabric one of them costs nothing: four places, three pieces more than two areas', () => {
    const made = patternOf(block(rectangle(1, 1, 3, 3)));
    expect(made.figures.pieces).toBe(5);
    expect(patternJson(made).divisions).toBe(4);
    expect(made.divisions.reduce((sum, { more }) => sum + more, 0)).toBe(3);
  });

  it('are nothing to mention where every seam is drawn', () => {
    const made = patternOf(block(rectangle(0, 0, 4, 2)));
    expect(made.divisions).toEqual([]);
    expect(patternText(made)).not.toContain('Seams through one fabric');
  });

  it('name pieces of that fabric, in every block of the gallery', () => {
    for (const name of namesIn('gallery').slice(0, 30)) {
      const made = patternOf(blockNamed('gallery', name));
      for (const { fabric, places } of made.divisions) {
        for (const { pieces } of places) expect(pieces.map((id) => made.pieces[id]!.fabric)).toEqual(pieces.map(() => fabric));
      }
    }
  });
});
