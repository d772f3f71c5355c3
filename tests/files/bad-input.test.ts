import { describe, expect, it } from 'vitest';
import { fileSizeProblem, parseBlock } from '../../src/files/block-file.ts';
import { shooFly, spoilt } from './shoo-fly.ts';

const good = JSON.stringify(shooFly(), null, 2);

/** @returns the problem with a text, which must be one plain sentence */
function problemWith(text: string): { code: string; sentence: string } {
  const result = parseBlock(text);
  if (result.ok) throw new Error('the file was taken');
  const { sentence } = result.problem;
  expect(sentence).toMatch(/^[^\n]{10,300}$/);
  expect(sentence).toMatch(/[^.]\.$/);
  expect(sentence).not.toMatch(/\bat \S+:\d+|Error|undefined|\[object|Expected/);
  return result.problem;
}

/** What is spoilt in the good file, and what is said about it: a code, and words that the sentence must have. */
type Case = readonly [what: string, path: readonly (string | number)[], value: unknown, code: string, words: string];

const square = [[0, 0], [1, 0], [1, 1], [0, 1]];
const patches = (count: number) => Array.from({ length: count }, () => ({ fabric: 'teal', points: square }));

const cases: readonly Case[] = [
  ['a file of another format', ['format'], 'somebody/else', 'wrong-format', '"somebody/else"'],
  ['a file without a format', ['format'], undefined, 'wrong-format', 'piecewright/block'],
  ['a version from the future', ['version'], 2, 'newer-version', 'version 2'],
  ['a version that is text', ['version'], '1', 'wrong-version', '"1"'],
  ['a file without a version', ['version'], undefined, 'wrong-version', 'missing'],

  ['a block without a name', ['name'], undefined, 'missing-key', 'The block has no "name"'],
  ['a name that is a number', ['name'], 7, 'not-text', "The block's name must be text in quotes; the file has 7."],
  ['a name of 10,000 characters', ['name'], 'a'.repeat(10_000), 'name-too-long', '10,000 characters; shorten it to at most 200'],
  ['a name on two lines', ['name'], 'Shoo\nFly', 'control-characters', "The block's name"],
  ['a name that turns the writing round', ['name'], 'Shoo\u202eFly', 'control-characters', "The block's name"],
  ['a name with half a character', ['name'], 'Shoo \ud800', 'control-characters', "The block's name"],
  ['a fabric name with a bell', ['fabrics', 1, 'name'], 'Teal\u0007', 'control-characters', "Fabric 2's name"],

  ['a width of 0', ['finished', 'width'], '0', 'size-out-of-range', 'The finished width must be more than 0'],
  ['a negative height', ['finished', 'height'], -3, 'size-out-of-range', 'at most 200 in.; this one is -3.'],
  ['a width over 200 in.', ['finished', 'width'], '200 1/8', 'size-out-of-range', 'this one is 200 1/8'],
  ['a width beyond all bounds', ['finished', 'width'], 1e300, 'size-out-of-range', 'The finished width'],
  ['a height over 508 cm', ['finished'], { width: 508, height: 509, unit: 'cm' }, 'size-out-of-range', 'at most 508 cm; this one is 509'],
  ['a width finer than exact', ['finished', 'width'], 0.1 + 0.2, 'too-fine', 'The finished width has the number 0.30000000000000004'],
  ['a width that is no number', ['finished', 'width'], 'twelve', 'not-a-number', 'The finished width must be a whole number'],
  ['a width over 0', ['finished', 'width'], '12/0', 'zero-denominator', 'The finished width has the fraction "12/0"'],
  ['a unit of yards', ['finished', 'unit'], 'yd', 'not-a-unit', '"in" or "cm"; the file has "yd"'],
  ['a size that is a list', ['finished'], [12, 12], 'missing-key', 'The finished size has no "width"'],
  ['sides without a common step', ['finished', 'height'], '12 1/997', 'too-fine', '12 by 12 1/997 in.'],

  ['a grid of 65 columns', ['grid', 'columns'], 65, 'grid-out-of-range', 'The grid has 65 columns'],
  ['a grid of no rows', ['grid', 'rows'], 0, 'grid-out-of-range', 'The grid has 0 rows'],
  ['a grid of 2.5 rows', ['grid', 'rows'], 2.5,
    'grid-out-of-range', 'The grid has 2.5 rows; it must have a whole number of them from 1 to 64.'],
  ['a grid in words', ['grid', 'columns'], 'three', 'grid-out-of-range', '"three" columns'],

  ['a line beyond the right edge', ['grid', 'across'], [1, 3], 'line-off-the-grid', "The grid's upright line 2 is at 3; put it between 0 and 3"],
  ['a line on the top edge', ['grid', 'down'], ['0/7', 1], 'line-off-the-grid', "The grid's level line 1 is at 0"],
  ['a negative line', ['grid', 'down'], ['-1/2'], 'line-off-the-grid', 'level line 1 is at -1/2'],
  ['a line beyond all bounds', ['grid', 'down'], [1e300], 'line-off-the-grid', 'level line 1 is at 1e+300'],
  ['lines out of order', ['grid', 'down'], [2, 1], 'lines-out-of-order', 'level line 2 is at 1 and the one before it at 2'],
  ['a line listed twice', ['grid', 'across'], [1, '4/4'], 'lines-out-of-order', 'once, in order from the left edge'],
  ['64 lines', ['grid', 'across'], Array.from({ length: 64 }, (_, i) => `${i + 1}/65`), 'grid-out-of-range', 'The grid has 65 columns'],
  ['a line finer than exact', ['grid', 'across'], [0.1 + 0.2], 'too-fine', "The grid's upright line 1 has the number 0.30000000000000004"],
  ['lines finer than the lattice', ['grid', 'across'], ['1/997', '1/991', '1/2'], 'too-fine', 'The lines of the grid need 2,964,081 steps'],
  ['lines finer than the lattice, with the points', ['grid'], { columns: 3, rows: 3, across: ['1/997'], down: ['1/30'] }, 'too-fine', 'steps'],
  ['a line in words', ['grid', 'across'], ['one'], 'not-a-number', "The grid's upright line 1 must be a whole number"],
  ['a line over 0', ['grid', 'down'], [1, '1/0'], 'zero-denominator', `The grid's level line 2 has the fraction "1/0"`],
  ['lines that are no list', ['grid', 'down'], 2, 'not-a-list', 'The grid down must be a list'],

  ['a block without fabrics', ['fabrics'], [], 'no-fabrics', 'at least one'],
  ['501 fabrics', ['fabrics'], Array.from({ length: 501 }, (_, i) => ({ id: `f${i}`, name: 'F', color: '#000000' })),
    'too-many-fabrics', '501'],
  ['two fabrics with one id', ['fabrics', 1, 'id'], 'oat', 'duplicate-fabric', 'Fabrics 1 and 2 have the same id "oat"'],
  ['a colour by name', ['fabrics', 0, 'color'], 'red', 'not-a-color', 'Fabric 1\'s color has the colour "red"'],
  ['an unknown ground', ['ground'], 'plum', 'unknown-fabric', 'The ground uses the fabric "plum"'],
  ['a missing ground', ['ground'], undefined, 'missing-key', 'The block has no "ground"'],
  ['a patch without a fabric', ['patches', 1, 'fabric'], undefined, 'missing-key', 'Patch 2 has no "fabric"'],
  ['a patch of an unknown fabric', ['patches', 2, 'fabric'], 'plum', 'unknown-fabric', 'Patch 3 uses the fabric "plum"'],

  ['a patch of no points', ['patches', 1, 'points'], [], 'too-few-points', 'Patch 2 has 0 points'],
  ['a patch of two points', ['patches', 1, 'points'], [[0, 0], [1, 1]], 'too-few-points', 'Patch 2 has 2 points'],
  ['a point twice in a row', ['patches', 1, 'points'], [[0, 0], [1, 0], [1, 0], [0, 1]],
    'repeated-points', 'Patch 2 comes to the same place at points 2 and 3'],
  ['an outline closed by hand', ['patches', 1, 'points'], [...square, [0, 0]], 'repeated-points', 'points 1 and 5'],
  ['the same point written two ways', ['patches', 1, 'points'], [[0, 0], [1.5, 0], [1, 1], ['3/2', 0]],
    'repeated-points', 'points 2 and 4'],
  ['three points on a line', ['patches', 1, 'points'], [[0, 0], [1, 0], [2, 0], [2, 2]],
    'points-on-a-line', 'points 1, 2 and 3 on one line; leave out point 2'],
  ['nothing but a line', ['patches', 1, 'points'], [[0, 0], [1, 1], [2, 2]], 'points-on-a-line', 'Patch 2'],
  ['a bow tie', ['patches', 1, 'points'], [[0, 0], [1, 1], [1, 0], [0, 1]], 'outline-crosses-itself', 'Patch 2 crosses or touches itself'],
  ['an outline that touches itself', ['patches', 1, 'points'], [[0, 0], [3, 0], [3, 2], [1, 0], [0, 2]],
    'outline-crosses-itself', 'Patch 2'],
  ['2,001 points', ['patches', 1, 'points'], Array.from({ length: 2001 }, () => [0, 0]), 'too-many-points', 'Patch 2 has 2,001 points'],

  ['a point left of the grid', ['patches', 0, 'points', 2], [-1, 2], 'off-the-grid', 'Patch 1, point 3 at -1, 2 is off the grid'],
  ['a point below the grid', ['patches', 2, 'points', 1], [3, '10/3'], 'off-the-grid', 'Patch 3, point 2 at 3, 10/3'],
  ['a point far off', ['patches', 2, 'points', 1], [1e30, 1], 'off-the-grid', 'Patch 3, point 2'],
  ['a point that is null', ['patches', 2, 'points', 1], [null, 1], 'not-a-number', 'Patch 3, point 2'],
  ['a point with one number', ['patches', 2, 'points', 1], [1], 'not-a-point', 'Patch 3, point 2 must be two numbers'],
  ['a point with three numbers', ['patches', 2, 'points', 1], [1, 1, 1], 'not-a-point', 'Patch 3, point 2'],
  ['a point that is text', ['patches', 2, 'points', 1], '1,1', 'not-a-point', 'Patch 3, point 2'],
  ['a coordinate in words', ['patches', 2, 'points', 1], ['one', 1], 'not-a-number', 'Patch 3, point 2 must be'],
  ['the text NaN', ['patches', 2, 'points', 1], ['NaN', 1], 'not-a-number', '"NaN"'],
  ['a fraction over 0', ['patches', 2, 'points', 1], ['1/0', 1], 'zero-denominator', 'Patch 3, point 2 has the fraction "1/0"'],
  ['0 over 0', ['patches', 2, 'points', 1], [1, '0/00'], 'zero-denominator', 'Patch 3, point 2'],
  ['points finer than exact', ['patches', 2, 'points', 1], ['1/99999', 1], 'too-fine', 'patch 3, point 2 need 299,997 steps'],
  ['a long decimal', ['patches', 2, 'points', 1], [1.3333333333, 1], 'too-fine', 'patch 3, point 2'],
  ['a decimal with an exponent', ['patches', 2, 'points', 1], [2.5e-7, 1], 'too-fine', 'patch 3, point 2'],
  ['a decimal beyond whole numbers', ['patches', 2, 'points', 1], [0.1 + 0.2, 1],
    'too-fine', 'Patch 3, point 2 has the number 0.30000000000000004'],
  ['points that are fine only together', ['patches', 2, 'points'], [['1/211', 1], ['2 1/223', 1], [1, 3]],
    'too-fine', 'The points up to patch 3, point 2'],
  ['points too fine once diagonals must meet', ['patches', 2, 'points', 1], ['1/10923', 1], 'too-fine', 'held exactly'],

  ['5,001 patches', ['patches'], patches(5001), 'too-many-patches', '5,001 patches; it may have at most 5,000'],
  ['patches that are an object', ['patches'], { fabric: 'teal' }, 'not-a-list', "The block's patches must be a list"],
  ['a patch that is text', ['patches', 1], 'teal', 'not-an-object', 'Patch 2 must be an object'],
  ['"whole" in words', ['patches', 0, 'whole'], 'yes', 'not-yes-or-no', "Patch 1's whole must be true or false"],

  ['a seam off the block', ['seams', 0, 1], [4, 1], 'off-the-grid', 'Seam 1, end 2 at 4, 1'],
  ['a seam of no length', ['seams', 0, 1], [0, 1], 'seam-without-length', 'Seam 1 has no length'],
  ['a seam with one end', ['seams', 0], [[0, 1]], 'not-a-seam', 'Seam 1 must be two points'],
  ['5,001 seams', ['seams'], Array.from({ length: 5001 }, () => [[0, 1], [3, 1]]), 'too-many-seams', '5,001'],

  ['a pin off the block', ['pins', 0, 'to'], [1, 4], 'off-the-grid', 'Pin 1, to at 1, 4 is off the grid'],
  ['a pin of no length', ['pins', 0, 'to'], [1, 0], 'pin-without-extent', 'Pin 1 has no length'],
  ['a pin round nothing', ['pins', 0], { pin: 'one unit', from: [0, 0], to: [0, 2] }, 'pin-without-extent', 'Pin 1 spans no area'],
  ['a pin of an unknown kind', ['pins', 0, 'pin'], 'sewn first', 'unknown-pin', 'Pin 1\'s pin must be "sewn last" or "one unit"'],
  ['a pin with one point', ['pins', 0, 'to'], undefined, 'missing-key', 'Pin 1 has no "to"; add it, like "to": [2, 4].'],
  ['a pin at half a point', ['pins', 0, 'from'], [1], 'not-a-point', 'Pin 1, from must be two numbers'],
  ['a pin finer than exact', ['pins', 0, 'from'], ['1/99999', 0], 'too-fine', 'pin 1, from need 299,997 steps'],
  ['51 pins', ['pins'], Array.from({ length: 51 }, () => shooFly().pins[0]), 'too-many-pins', '51 pins; it may have at most 50'],

  ['a print that points up in words', ['fabrics', 1, 'directional'], 'up', 'not-yes-or-no', "Fabric 2's directional must be true or false"],
  ['scraps of one print', ['fabrics', 1, 'scraps', 'prints'], 1, 'no-prints', "Fabric 2's scraps, prints must be a whole number of prints from 2 to 99"],
  ['scraps of half a print', ['fabrics', 1, 'scraps', 'prints'], 2.5, 'no-prints', 'this one is 2.5'],
  ['scraps of a hundred prints', ['fabrics', 1, 'scraps', 'prints'], 100, 'no-prints', 'this one is 100'],
  ['scraps with a seed in words', ['fabrics', 1, 'scraps', 'seed'], 'barley', 'no-seed', 'a whole number from 0 to 4,294,967,295; this one is "barley"'],
  ['scraps with a negative seed', ['fabrics', 1, 'scraps', 'seed'], -1, 'no-seed', "Fabric 2's scraps, seed"],
  ['scraps without a seed', ['fabrics', 1, 'scraps', 'seed'], undefined, 'missing-key', 'Fabric 2\'s scraps has no "seed"; add it, like "seed": 1.'],
  ['a fabric cut from one that is not there', ['fabrics', 0, 'same'], 'rust', 'unknown-cloth', 'Fabric 1 is cut from the cloth of "rust", which is no other fabric'],
  ['a fabric cut from its own copy', ['fabrics', 0, 'same'], 'oat', 'unknown-cloth', 'name one that is'],
  ['a fabric cut from scraps', ['fabrics', 0, 'same'], 'teal', 'no-own-cloth', 'Fabric 1 cannot be cut from "Teal"'],
  ['a value in between', ['fabrics', 0, 'value'], 'middling', 'no-value', 'Fabric 1\'s value must be "light", "medium" or "dark"'],
  ['two colourways of one name', ['colourways'], [{ name: 'Dawn', looks: {} }, { name: 'Dawn', looks: {} }], 'colourway-twice', 'Colourways 1 and 2 are both called "Dawn"'],
  ['a colourway of no colour', ['colourways'], [{ name: 'Dawn', looks: { oat: { name: 'Oat', color: 'white' } } }], 'not-a-color', 'like "#2f5d62"'],
  ['51 colourways', ['colourways'], Array.from({ length: 51 }, (_, i) => ({ name: `${i}`, looks: {} })), 'many-colourways', '51 colourways'],
  ['scraps that are a number', ['fabrics', 1, 'scraps'], 4, 'not-an-object', "Fabric 2's scraps must be an object"],

  ['a unit off the block', ['unitMethods', 0, 'to'], [1, 4], 'off-the-grid', 'Unit method 1, to at 1, 4 is off the grid'],
  ['a unit of no width', ['unitMethods', 0, 'to'], [0, 1], 'unit-without-area', 'Unit method 1 spans no area'],
  ['a unit without a method', ['unitMethods', 0, 'method'], undefined, 'missing-key', 'Unit method 1 has no "method"; add it, like "method": "triangles".'],
  ['a unit cut by magic', ['unitMethods', 0, 'method'], 'by-magic', 'unknown-method', "Unit method 1's method must be the name of a method"],
  ['a unit finer than exact', ['unitMethods', 0, 'to'], ['1/99999', 1], 'too-fine', 'unit method 1, to need 299,997 steps'],
  ['one unit twice, from other corners', ['unitMethods', 1], { from: [1, 0], to: [0, 1], method: 'template' }, 'unit-twice', 'Unit methods 1 and 2'],
  ['a pressing off the block', ['pressedSeams', 0, 'to'], [1, 4], 'off-the-grid', 'Pressing 1, to at 1, 4 is off the grid'],
  ['a pressing of no length', ['pressedSeams', 0, 'to'], [1, 0], 'seam-without-length', 'Pressing 1 has no length'],
  ['a pressing upward', ['pressedSeams', 0, 'lies'], 'up', 'not-pressed-so', '"right", "left" or "open"'],
  ['one seam pressed twice, from its other end', ['pressedSeams', 1], { from: [1, 1], to: [1, 0], lies: 'open' }, 'pressed-twice', 'Pressings 1 and 2'],
  ['501 pressings', ['pressedSeams'], Array.from({ length: 501 }, () => shooFly().pressedSeams[0]), 'too-many-pressed-seams', '501 seams'],
  ['501 unit methods', ['unitMethods'], Array.from({ length: 501 }, () => shooFly().unitMethods[0]), 'too-many-unit-methods', '501 units'],

  ['cloth of a fabric that is not there', ['choices'], { cloths: { plum: {} } }, 'unknown-fabric', 'The cloth of "plum" uses the fabric "plum"'],
  ['cloth sold by weight', ['choices'], { cloths: { teal: { sold: 'by weight' } } }, 'not-sold-so', 'The cloth of "teal", sold must be "by length"'],
  ['cloth of no width', ['choices'], { cloths: { teal: { width: 0 } } }, 'choice-out-of-range', 'The cloth of "teal", width must be more than 0'],
  ['cloth beyond all looms', ['choices'], { cloths: { teal: { width: 1e300 } } }, 'choice-out-of-range', 'at most 200 in.; this one is 1e+300'],
  ['a precut without a length', ['choices'], { cloths: { teal: { size: { width: 5 } } } }, 'missing-key', 'The cloth of "teal", size has no "length"'],
  ['a precut in words', ['choices'], { cloths: { teal: { size: { width: 'five', length: 5 } } } }, 'not-a-number', 'The cloth of "teal", size, width must be'],
  ['half a piece in the cupboard', ['choices'], { cloths: { teal: { have: [{ width: 9, length: 9, count: 0.5 }] } } },
    'choice-out-of-range', 'The cloth of "teal", have 1, count must be a whole number from 1 to 1,000; this one is 0.5.'],
  ['a piece of no length in the cupboard', ['choices'], { cloths: { teal: { have: [{ width: 9, length: '0', count: 1 }] } } },
    'choice-out-of-range', 'The cloth of "teal", have 1, length must be more than 0 and at most 4,000 in.'],
  ['51 sizes in the cupboard', ['choices'], { cloths: { teal: { have: Array.from({ length: 51 }, () => ({ width: 9, length: 9, count: 1 })) } } },
    'too-much-to-have', 'The cloth of "teal", have lists 51 sizes of cloth; it may list at most 50'],
  ['a negative margin', ['choices'], { margin: { percent: -1 } }, 'choice-out-of-range', 'The chosen margin must be 0 or more and at most 100 per cent'],
  ['a margin of miles', ['choices'], { margin: { length: 63_360 } }, 'choice-out-of-range', 'at most 4,000 in.; this one is 63360.'],
  ['a margin of two kinds', ['choices'], { margin: { percent: 5, length: 5 } }, 'not-a-margin', 'The chosen margin must be { "percent": "10" }'],
  ['a margin in words', ['choices'], { margin: { percent: 'plenty' } }, 'not-a-margin', 'the file has an object'],
  ['a negative squaring-up', ['choices'], { squaringUp: '-1' }, 'choice-out-of-range', 'The chosen squaring-up must be 0 or more and at most 4 in.'],
  ['a shop that sells by nothing', ['choices'], { shopStep: 0 }, 'choice-out-of-range', 'The chosen step of the shop must be more than 0'],
  ['a method for all that is none', ['choices'], { method: 'magic' }, 'unknown-method', 'The chosen method must be the name of a method'],

  ['a key of no version', ['author'], 'me', 'unknown-key', 'The block has "author"'],
  ['a misspelt key', ['fabrics', 0, 'colour'], '#ffffff', 'unknown-key', 'Fabric 1 has "colour"'],
  ['a patch with a hole', ['patches', 0, 'holes'], [], 'unknown-key', 'Patch 1 has "holes"'],

  ['a choice of no seam allowance', ['choices'], { seam: '0' },
    'choice-out-of-range', 'The chosen seam must be more than 0 and at most 2 in.'],
  ['a negative trim', ['choices'], { trim: '-1/8' }, 'choice-out-of-range', 'The chosen trim must be 0 or more'],
  ['a ruler in words', ['choices'], { ruler: 'an eighth' }, 'not-a-number', 'The chosen ruler'],
  ['half a block', ['choices'], { blocks: 0.5 }, 'choice-out-of-range', 'The number of blocks must be a whole number'],
  ['an unknown method', ['choices'], { methods: { 'flying geese': 'by-magic' } }, 'unknown-method', 'The chosen method for flying geese'],
  ['an unknown kind of unit', ['choices'], { methods: { 'flying ducks': 'triangles' } }, 'unknown-key', '"flying ducks"'],
  ['an unknown way', ['choices'], { way: 'quickly' }, 'unknown-way', 'The chosen way must be one of "standard units"'],
];

describe('a block file is refused with one sentence that says what and where:', () => {
  it.each(cases)('%s', (_, path, value, code, words) => {
    const problem = problemWith(JSON.stringify(spoilt(shooFly(), path, value)));
    expect(problem.code).toBe(code);
    expect(problem.sentence).toContain(words);
  });

  it.each([
    ['nothing', '', 'not-json', 'ends on line 1'],
    ['a photograph', '\u0089PNG\r\n\u001a', 'not-json', 'line 1'],
    ['a file cut short', good.slice(0, 200), 'not-json', `it ends on line ${good.slice(0, 200).split('\n').length}`],
    ['a comma too many', good.replace('"rows": 3', '"rows": 3,'), 'not-json', 'line 13 has "}"'],
    ['a missing comma', good.replace('"version": 1,', '"version": 1'), 'not-json', 'line 4 has "\\""'],
    ['single quotes', good.replace('"Shoo Fly"', "'Shoo Fly'"), 'not-json', 'line 4'],
    ['NaN', good.replace('"columns": 3', '"columns": NaN'), 'not-a-number', 'Line 11 has NaN, which is no number'],
    ['-Infinity', good.replace('"columns": 3', '"columns": -Infinity'), 'not-a-number', 'Line 11 has -Infinity'],
    ['words after the end', `${good} the end`, 'not-json', 'has "the"'],
    ['a lone number', '12', 'wrong-format', 'does not say that it is a block'],
    ['a list', '[]', 'wrong-format', 'does not say that it is a block'],
    ['null', 'null', 'wrong-format', 'does not say that it is a block'],
    ['a number beyond all numbers', good.replace('"columns": 3', '"columns": 1e999'), 'grid-out-of-range', 'columns'],
    ['a point beyond all numbers', JSON.stringify(shooFly()).replace('[0,1]', '[1e999,1]'), 'not-a-number', 'Patch 2, point 1'],
    ['a hundred thousand brackets', '['.repeat(100_000), 'not-json', 'ends'],
  ])('%s', (_, text, code, words) => {
    const problem = problemWith(text);
    expect(problem.code).toBe(code);
    expect(problem.sentence).toContain(words);
  });

  it('100 MB, before any of it is looked at', () => {
    expect(problemWith(' '.repeat(100_000_000))).toMatchObject({ code: 'file-too-large' });
    expect(fileSizeProblem(100_000_000)!.sentence).toBe('The file is 100 MB long, and a block file has at most 26 MB; choose another file.');
    expect(fileSizeProblem(26_000_000)).toBeNull();
  });

  it('quotes no more of a long text than fits in a sentence', () => {
    const text = JSON.stringify(spoilt(shooFly(), ['patches', 0, 'fabric'], 'plum'.repeat(50)));
    expect(problemWith(text).sentence.length).toBeLessThan(160);
  });
});

describe('a block file is taken with', () => {
  it.each([
    ['5,000 patches', ['patches'], patches(5000)],
    ['a name of 200 characters', ['name'], 'a'.repeat(200)],
    ['64 columns', ['grid', 'columns'], 64],
    ['a width of 200 in.', ['finished', 'width'], 200],
    ['the address of its schema', ['$schema'], './block.schema.json'],
    ['no seams', ['seams'], undefined],
    ['no pins', ['pins'], undefined],
    ['an empty list of pins', ['pins'], []],
    ['fractions of many forms', ['patches', 1, 'points'], [['0', '1.25'], ['1 1/3', 0.75], ['5/3', '2/1']]],
  ] as const)('%s', (_, path, value) => {
    expect(parseBlock(JSON.stringify(spoilt(shooFly(), path, value)))).toMatchObject({ ok: true });
  });

  it('a byte order mark before it', () => {
    expect(parseBlock(`\ufeff${good}`)).toMatchObject({ ok: true });
  });

  it('a name that looks like HTML, which is text like any other', () => {
    const name = '<img src=x onerror="alert(1)"> & Sons';
    expect(parseBlock(JSON.stringify(spoilt(shooFly(), ['name'], name)))).toMatchObject({ value: { name } });
  });
});
