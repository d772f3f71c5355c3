import { readdirSync, readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SCHEMA_FILE, schemaText, STYLE_SCHEMA_FILE, styleSchemaText } from '../../scripts/schema.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { formatHouseStyle } from '../../src/files/house-style-file.ts';
import { usualStyle } from '../../src/pattern/house-style.ts';
import { SEED } from '../block/drawn.ts';
import { uneven } from '../block/uneven.ts';
import { shooFly, spoilt } from './shoo-fly.ts';

const published = readFileSync(SCHEMA_FILE, 'utf8');
const validate = new Ajv({ strict: true, allowUnionTypes: true, strictTuples: false }).compile(JSON.parse(published) as object);
const folders = ['../cases/', '../../demo-blocks/'].map((folder) => new URL(folder, import.meta.url));
const files = folders.flatMap((folder) =>
  readdirSync(folder).filter((file) => file.endsWith('.block.json')).map((file) => [file, new URL(file, folder)] as const),
);

/** Faults that a schema can see: one value of the wrong kind. */
const shapeFaults: readonly (readonly [path: readonly (string | number)[], value: unknown])[] = [
  [['format'], 'other'], [['format'], undefined], [['version'], 2], [['version'], '1'], [['name'], undefined], [['name'], 7],
  [['name'], 'a'.repeat(201)], [['name'], 'two\nlines'], [['name'], null],
  [['finished', 'unit'], 'yd'], [['finished', 'width'], 'twelve'], [['finished', 'width'], '1/0'], [['finished', 'depth'], '1'],
  [['grid', 'columns'], 0], [['grid', 'columns'], 65], [['grid', 'rows'], 1.5], [['grid', 'rows'], '3'], [['grid'], undefined],
  [['grid', 'across'], 1], [['grid', 'across'], ['one']], [['grid', 'down'], [null]], [['grid', 'down'], ['1/0']],
  [['grid', 'across'], Array.from({ length: 64 }, (_, i) => `${i + 1}/65`)],
  [['fabrics'], []], [['fabrics'], {}], [['fabrics', 0, 'color'], 'red'], [['fabrics', 0, 'colour'], '#ffffff'],
  [['patches', 0, 'points'], [[0, 0], [1, 1]]], [['patches', 0, 'points', 0], [1]], [['patches', 0, 'points', 0], [1, 2, 3]],
  [['patches', 0, 'points', 0], ['1/0', 1]], [['patches', 0, 'points', 0], [null, 1]], [['patches', 0, 'points', 0], ['1 1', 1]],
  [['patches', 0, 'whole'], 1], [['patches', 0, 'hole'], true], [['patches', 0, 'fabric'], undefined],
  [['patches'], Array.from({ length: 5001 }, () => shooFly().patches[1])],
  [['seams', 0], [[0, 1]]], [['seams', 0, 0], 'start'], [['seams'], null], [['extra'], 1],
  [['pins'], {}], [['pins', 0, 'pin'], 'sewn first'], [['pins', 0, 'from'], [1]], [['pins', 0, 'to'], undefined], [['pins', 0, 'why'], 1],
  [['pins'], Array.from({ length: 51 }, () => shooFly().pins[0])],
  [['choices'], { methods: { 'flying geese': 'magic' } }], [['choices'], { methods: { duck: 'triangles' } }],
  [['fabrics', 1, 'directional'], 'up'], [['fabrics', 1, 'scraps'], {}], [['fabrics', 1, 'scraps', 'prints'], 1], [['fabrics', 1, 'scraps', 'seed'], 0.5],
  [['fabrics', 1, 'same'], 3], [['fabrics', 0, 'value'], 'middling'], [['fuses'], 'yes'], [['colourways'], {}], [['colourways'], [{ name: 'Dawn' }]],
  [['colourways'], [{ name: 'Dawn', looks: { oat: { name: 'Oat' } } }]], [['unitMethods'], {}], [['unitMethods', 0, 'method'], 'magic'], [['unitMethods', 0, 'to'], undefined],
  [['pressedSeams'], {}], [['pressedSeams', 0, 'lies'], 'up'], [['pressedSeams', 0, 'from'], undefined],
  [['choices'], { cloths: { teal: { sold: 'by weight' } } }], [['choices'], { cloths: { teal: { have: [{ width: 9, length: 9 }] } } }],
  [['choices'], { cloths: 3 }], [['choices'], { margin: { percent: 5, length: 5 } }], [['choices'], { margin: '10%' }],
  [['choices'], { method: 'magic' }], [['choices'], { squaringUp: 'an inch' }], [['choices'], { shopStep: '1/0' }],
  [['publication'], 3], [['publication'], { foot: 'x' }], [['publication'], { subtitle: 7 }], [['publication'], { sections: [{ section: 'units' }] }],
  [['publication'], { words: [{ at: 'a', language: 'English', was: 'b', now: 'c' }] }], [['publication'], { parts: [{ id: 'a', section: 'care', part: 'song', text: '' }] }],
  [['publication'], { pictures: [{ id: 'a', width: 0, height: 2, jpeg: '' }] }], [['publication'], { pictures: [{ id: 'a', width: 1, height: 2 }] }],
  [['choices'], { way: 'fast' }], [['choices'], { blocks: 0 }], [['choices'], { blocks: 1.5 }], [['choices'], { seam: [] }],
];

describe('the published schema of the block file', () => {
  it('is the one that the program checks by (npx tsx scripts/schema.ts writes it)', () => {
    expect(published).toBe(schemaText());
  });

  it('of a house style is too, and takes whatever the program writes of one', () => {
    const style = readFileSync(STYLE_SCHEMA_FILE, 'utf8');
    expect(style).toBe(styleSchemaText());
    const fits = new Ajv({ strict: true, strictTuples: false }).compile(JSON.parse(style) as object);
    expect(fits(JSON.parse(formatHouseStyle(usualStyle('cm')))), JSON.stringify(fits.errors)).toBe(true);
    expect(fits({ ...(JSON.parse(formatHouseStyle(usualStyle('in'))) as object), paper: 'legal' })).toBe(false);
  });

  it('is of draft 2020-12 and describes each property', () => {
    const schema = JSON.parse(published) as { $schema: string; properties: Record<string, { description?: string; const?: unknown }> };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const bare = Object.entries(schema.properties).filter(([, property]) => !property.description && property.const === undefined);
    expect(bare).toEqual([]);
  });

  it('has examples to agree on', () => {
    expect(files.length).toBeGreaterThanOrEqual(13);
  });

  it.each(files)('agrees with the program that %s is a block', (_, file) => {
    const text = readFileSync(file, 'utf8');
    expect(validate(JSON.parse(text)), JSON.stringify(validate.errors)).toBe(true);
    expect(parseBlock(text)).toMatchObject({ ok: true });
  });

  it.each(shapeFaults)('agrees with the program that %j cannot be %j', (path, value) => {
    const data = spoilt(shooFly(), path, value);
    expect(validate(data)).toBe(false);
    expect(parseBlock(JSON.stringify(data))).toMatchObject({ ok: false });
  });

  it('takes whatever the program writes', () => {
    fc.assert(fc.property(uneven, (drawn) => validate(JSON.parse(formatBlock(drawn)))), SEED);
  });
});
