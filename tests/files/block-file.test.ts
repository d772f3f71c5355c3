import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Choices, ClothChoice } from '../../src/block/choices.ts';
import { coarsest } from '../../src/block/lattice.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { rational } from '../../src/measure/rational.ts';
import { block, must, SEED } from '../block/drawn.ts';
import { uneven } from '../block/uneven.ts';
import { shooFly, spoilt } from './shoo-fly.ts';

const cases = new URL('../cases/', import.meta.url);
const published = readdirSync(cases).filter((file) => file.endsWith('.block.json'));
const contentOf = (file: string): string => readFileSync(new URL(file, cases), 'utf8');

const length = (most: number) => fc.integer({ min: 1, max: most * 64 }).map((n) => rational(n, 64));

const size = { width: length(200), length: length(400) };

const cloth: fc.Arbitrary<ClothChoice> = fc.record(
  {
    sold: fc.constantFrom('by length', 'fat quarter', 'precut strip'),
    size: fc.record(size),
    width: length(200),
    have: fc.array(fc.record({ ...size, count: fc.integer({ min: 1, max: 1000 }) }), { minLength: 1, maxLength: 3 }),
  },
  { requiredKeys: [] },
);

const choices: fc.Arbitrary<Choices> = fc.record(
  {
    seam: length(2),
    ruler: length(1),
    trim: length(2),
    width: length(200),
    methods: fc.constant({ 'flying geese': 'four-at-a-time', 'half-square triangle': 'triangles' } as const),
    way: fc.constantFrom('standard units', 'fewest pieces', 'largest repeated unit'),
    blocks: fc.integer({ min: 1, max: 10_000 }),
    method: fc.constantFrom('usual', 'one-at-a-time', 'stitch-and-flip'),
    cloths: fc.dictionary(fc.constantFrom('oat', 'teal', 'rust'), cloth),
    squaringUp: length(4),
    margin: fc.oneof(length(100).map((percent) => ({ percent })), length(200).map((each) => ({ length: each }))),
    shopStep: length(72),
  },
  { requiredKeys: [] },
);

describe('a block file', () => {
  it('is read back as the block it was written from, on the coarsest lattice', () => {
    fc.assert(
      fc.property(uneven, fc.option(choices), (drawn, chosen) => {
        const whole = chosen === null ? drawn : { ...drawn, choices: chosen };
        // Sides that share no coarse step are no valid block.
        const read = parseBlock(formatBlock(whole));
        if (!read.ok) expect(read.problem.code).toBe('too-fine');
        else expect(read.value).toEqual(coarsest(whole));
      }),
      SEED,
    );
  });

  it('is valid for nearly all random blocks, so the law above says something', () => {
    const sample = fc.sample(block, { numRuns: 200, seed: SEED.seed });
    expect(sample.filter((drawn) => parseBlock(formatBlock(drawn)).ok).length).toBeGreaterThan(190);
  });

  it.each(published)('%s is read, and written and read again the same', (file) => {
    const read = must(parseBlock(contentOf(file)));
    expect(must(parseBlock(formatBlock(read)))).toEqual(read);
  });

  it.each(published)('%s means the same points as its file says', (file) => {
    const raw = JSON.parse(contentOf(file)) as { patches: { points: number[][] }[] };
    const read = must(parseBlock(contentOf(file)));
    expect(read.patches.map((patch) => patch.points.map((point) => point.map((v) => v / read.denominator)))).toEqual(
      raw.patches.map((patch) => patch.points),
    );
  });

  it('keeps what is said of one cloth and leaves out what says nothing', () => {
    const chosen = {
      cloths: { teal: { sold: 'fat quarter', size: { width: 21, length: '18' }, have: [{ width: '21 1/2', length: 9.5, count: 3 }] }, oat: { have: [] } },
      margin: { percent: '12 1/2' }, squaringUp: 0.5, shopStep: '4 1/2', method: 'usual',
    };
    const read = must(parseBlock(JSON.stringify(spoilt(shooFly(), ['choices'], chosen))));
    expect(read.choices).toEqual({
      cloths: {
        teal: { sold: 'fat quarter', size: { width: rational(21), length: rational(18) }, have: [{ width: rational(43, 2), length: rational(19, 2), count: 3 }] },
        oat: {},
      },
      margin: { percent: rational(25, 2) }, squaringUp: rational(1, 2), shopStep: rational(9, 2), method: 'usual',
    });
    expect(must(parseBlock(formatBlock(read)))).toEqual(read);
    const plain = must(parseBlock(JSON.stringify(spoilt(shooFly(), ['fabrics', 1, 'directional'], false))));
    expect(plain.fabrics[1]).not.toHaveProperty('directional');
  });

  it('takes decimals digit by digit and fractions as they are', () => {
    const text = JSON.stringify(spoilt(shooFly(), ['patches', 1, 'points'], [[0.1, '1.25'], ['1 1/3', 0], ['5/3', 2]]));
    const read = must(parseBlock(text));
    expect(read.denominator).toBe(60);
    expect(read.patches[1]!.points).toEqual([[6, 75], [80, 0], [100, 120]]);
  });

  it('takes decimals that JSON writes with an exponent', () => {
    const read = must(parseBlock(JSON.stringify(spoilt(shooFly(), ['choices'], { trim: 1.5e-7 }))));
    expect(read.choices).toEqual({ trim: { n: 3, d: 20_000_000 } });
  });

  it('takes a finished size as a whole number, decimal, fraction or mixed number', () => {
    for (const width of [10.5, '10.5', '21/2', '10 1/2', '10 2/4']) {
      const read = must(parseBlock(JSON.stringify(spoilt(shooFly(), ['finished', 'width'], width))));
      expect(read.finished.width).toEqual({ n: 21, d: 2 });
    }
  });

  it('keeps lines between the cells as they are, and drops those that say nothing', () => {
    const read = must(parseBlock(JSON.stringify(spoilt(shooFly(), ['grid'], { columns: 3, rows: 3, across: [0.25, '1 1/3', 2], down: [1, '2'] }))));
    expect(read.grid).toEqual({ columns: 3, rows: 3, across: [{ n: 1, d: 4 }, { n: 4, d: 3 }, { n: 2, d: 1 }] });
    expect(formatBlock(read)).toContain('"grid": { "columns": 3, "rows": 3, "across": ["1/4", "1 1/3", 2] },');
    const one = must(parseBlock(JSON.stringify(spoilt(shooFly(), ['grid', 'down'], []))));
    expect(one.grid).toEqual({ columns: 3, rows: 3, down: [] });
    expect(must(parseBlock(formatBlock(one)))).toEqual(one);
  });

  it('keeps colourways, and what is cut from the same cloth', () => {
    const oat = { id: 'oat', name: 'Oat', color: '#f3ede0', value: 'dark' };
    const sea = { id: 'sea', name: 'Oat', color: '#f3ede0', same: 'oat' };
    const colourways = [{ name: 'Dawn', looks: { oat: { name: 'Shell', color: '#f4e9dc' }, sea: { name: 'Shell', color: '#f4e9dc', same: 'oat' } } }];
    const file = { ...shooFly(), fabrics: [oat, shooFly().fabrics[1], sea], fuses: true, colourways };
    const read = must(parseBlock(JSON.stringify(file)));
    expect([read.fabrics[0], read.fabrics[2], read.fuses, read.colourways]).toEqual([oat, sea, true, colourways]);
    expect(must(parseBlock(formatBlock(read)))).toEqual(read);
  });

  it('writes one patch to a line, halves as numbers and other fractions as text', () => {
    const text = JSON.stringify(spoilt(shooFly(), ['patches'], [{ fabric: 'teal', points: [[0.5, 0], [3, '5/3'], [0, 3]], whole: true }]));
    expect(formatBlock(must(parseBlock(text)))).toBe(`{
  "format": "piecewright/block",
  "version": 1,
  "name": "Shoo Fly",
  "finished": { "width": "12", "height": "12", "unit": "in" },
  "grid": { "columns": 3, "rows": 3 },
  "fabrics": [
    { "id": "oat", "name": "Oat", "color": "#f3ede0" },
    { "id": "teal", "name": "Teal", "color": "#2f5d62", "directional": true, "scraps": { "prints": 4, "seed": 7 } }
  ],
  "ground": "oat",
  "patches": [
    { "fabric": "teal", "points": [[0.5, 0], [3, "1 2/3"], [0, 3]], "whole": true }
  ],
  "seams": [
    [[0, 1], [3, 1]]
  ],
  "pins": [
    { "pin": "sewn last", "from": [1, 0], "to": [1, 3] }
  ],
  "unitMethods": [
    { "from": [0, 0], "to": [1, 1], "method": "one-at-a-time" }
  ],
  "pressedSeams": [
    { "from": [1, 0], "to": [1, 1], "lies": "right" }
  ]
}
`);
  });
});
