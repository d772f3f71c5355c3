import { describe, expect, test } from 'vitest';
import { parseLength } from '../../../src/measure/lengths.ts';
import { cutsCsv } from '../../../src/pattern/pattern-csv.ts';
import { patternJson } from '../../../src/pattern/pattern-json.ts';
import { blockNamed, patternOf } from '../made.ts';

/** Reads a file by the grammar of RFC 4180: fields in quotes may hold anything, quotes doubled; lines end with CR and LF. */
function rowsIn(csv: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  let at = 0;
  while (at < csv.length) {
    const [whole, inQuotes, plain, end] = /^(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/.exec(csv.slice(at)) ?? [];
    if (whole === undefined) throw new Error(`no field at ${at}: ${csv.slice(at, at + 20)}`);
    rows.at(-1)!.push(inQuotes?.replaceAll('""', '"') ?? plain!);
    at += whole.length;
    if (end === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('the cutting list as CSV', () => {
  test.each(['sawtooth-star-12', 'peaked-star-12', 'ohio-star-12-on-48', 'half-rectangle-darts-12x9'])('%s: every line of the list, as the data have it', (name) => {
    const block = blockNamed(name === 'sawtooth-star-12' ? 'cases' : 'gallery', name);
    const pattern = patternOf(block);
    const csv = cutsCsv(pattern, 'en');
    expect(csv.startsWith('\ufefffabric,')).toBe(true);
    const [heads, ...rows] = rowsIn(csv.slice(1));
    expect(heads).toEqual(['fabric', 'line', 'count', 'shape', 'width', 'height', 'unit', 'subcut', 'pieces', 'for', 'notes']);
    const { cuts } = patternJson(pattern);
    expect(rows.map((row) => row.length)).toEqual(cuts.map(() => 11));
    for (const [i, cut] of cuts.entries()) {
      const [fabric, line, count, , width, height, unit, , pieces, goesTo] = rows[i]!;
      expect(block.fabrics.find(({ id }) => id === cut.fabric)!.name).toBe(fabric);
      expect([line, count, unit, goesTo]).toEqual([cut.id, `${cut.quantity}`, 'in', cut.for.join(' ')]);
      expect([width, height].map((length) => parseLength(length!))).toEqual([cut.width, cut.height].map(parseLength));
      // Pieces as the sewn blocks use them, and those to spare where a line is of triangles.
      if (cut.subcut !== 'none') expect(Number(pieces)).toBe(cut.quantity * (cut.subcut === 'once' ? 2 : 4));
    }
  });

  test('holds no formula and no date, whatever fabrics are called', () => {
    const block = blockNamed('cases', 'shoo-fly-12');
    const names = ['=HYPERLINK("http://x","y")', '@SUM(1,2)'];
    const named = { ...block, finished: { ...block.finished, width: { n: 3, d: 4 }, height: { n: 3, d: 4 } }, fabrics: block.fabrics.map((fabric, i) => ({ ...fabric, name: names[i % 2]! })) };
    const [, ...rows] = rowsIn(cutsCsv(patternOf(named), 'en').slice(1));
    expect(new Set(rows.map(([fabric]) => fabric))).toEqual(new Set(names.map((name) => `'${name}`)));
    for (const cell of rows.flat()) expect(cell).not.toMatch(/^[=+@-]/);
    // 3/4 alone would become the third of April.
    expect(rows.flatMap(([, , , , width, height]) => [width!, height!]).filter((length) => /^\d+\/\d+$/.test(length))).toEqual([]);
    expect(rows.flatMap(([, , , , width]) => width!)).toContain('0 3/4');
  });

  test('says in every line that a pattern does not hold', () => {
    const pattern = patternOf(blockNamed('cases', 'shoo-fly-12'));
    const broken = { ...pattern, proof: { ...pattern.proof, holds: false } };
    for (const row of rowsIn(cutsCsv(broken, 'en').slice(1)).slice(1)) expect(row.at(-1)).toMatch(/^do not cut yet/);
    for (const row of rowsIn(cutsCsv(broken, 'de').slice(1)).slice(1)) expect(row.at(-1)).toMatch(/^noch nicht zuschneiden/);
  });
});
