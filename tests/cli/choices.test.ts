import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { caseFile, fileAt, inside, planned, type Data } from './program.ts';

const SHOO_FLY = caseFile('shoo-fly-12');
const STAR = caseFile('sawtooth-star-6');

const cutsOf = ({ cuts }: Data, fabric: string): string[] =>
  cuts.filter((cut) => cut.fabric === fabric).map(({ quantity, width, height }) => `${quantity} of ${width} by ${height}`);

const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));

/** @returns a Shoo Fly with some of its file's entries changed */
function shooFlyWith(changes: object): string {
  const file = join(folder, `${Math.abs(JSON.stringify(changes).length)}-${Object.keys(changes).join('-')}.block.json`);
  writeFileSync(file, JSON.stringify({ ...(JSON.parse(readFileSync(SHOO_FLY, 'utf8')) as object), ...changes }));
  return file;
}

describe('--method', () => {
  // Mesquite Quilt Guild, mesquitequiltguildinc.com/?p=923: eight at a time from squares of twice the finished size and 1 3/4.
  it('cuts eight half-square triangles from a pair of squares of 2 (4 + 7/8), four of them to spare', async () => {
    const data = await planned(SHOO_FLY, '--method', 'half-square triangle=eight-at-a-time');
    expect(cutsOf(data, 'white')).toEqual(['1 of 9 3/4 by 9 3/4']);
    expect(data.cuts.find(({ fabric }) => fabric === 'white')?.spare).toBe(4);
    expect(data.units.find(({ id }) => id === 'A')?.method).toBe('eight-at-a-time');
  });

  it('speaks of one kind and leaves the others alone', async () => {
    const [plain, chosen] = [await planned(STAR), await planned(STAR, '--method', 'half-square triangle=eight-at-a-time')];
    expect(chosen.cuts).toEqual(plain.cuts);
  });

  it('may be given for several kinds, and the last word on a kind counts', async () => {
    const methods = ['flying geese=triangles', 'half-square triangle=one-at-a-time', 'flying geese=four-at-a-time'];
    const data = await planned(STAR, ...methods.flatMap((method) => ['--method', method]));
    expect(data.choices.methods).toEqual({ 'flying geese': 'four-at-a-time', 'half-square triangle': 'one-at-a-time' });
    expect(cutsOf(data, 'print')).toContain('4 of 2 3/8 by 2 3/8');
  });

  it('goes before what the file says, kind by kind', async () => {
    const methods = { 'half-square triangle': 'eight-at-a-time', 'flying geese': 'triangles' };
    const data = await planned(shooFlyWith({ choices: { blocks: 2, methods } }), '--method', 'half-square triangle=two-at-a-time');
    expect(data.choices).toMatchObject({ blocks: 2, methods: { 'half-square triangle': 'two-at-a-time', 'flying geese': 'triangles' } });
    expect(cutsOf(data, 'white')).toEqual(['4 of 4 7/8 by 4 7/8']);
  });
});

describe('--method without a kind, or with a letter', () => {
  // sewingwithstitcher.com, block 6: 1 at 5 1/4, 4 at 2 7/8, 4 at 2 1/2, 1 at 4 1/2.
  it('speaks of every unit that knows it: a star of cut triangles', async () => {
    const data = await planned(caseFile('sawtooth-star-8'), '--method', 'triangles');
    expect(data.cuts.map(({ quantity, width, height }) => `${quantity} of ${width} by ${height}`).sort()).toEqual(
      ['1 of 5 1/4 by 5 1/4', '4 of 2 7/8 by 2 7/8', '4 of 2 1/2 by 2 1/2', '1 of 4 1/2 by 4 1/2'].sort(),
    );
  });

  it('means its like where a kind does not know it: one at a time for half-square triangles', async () => {
    const data = await planned(SHOO_FLY, '--method', 'triangles');
    expect(data.units[0]).toMatchObject({ kind: 'half-square triangle', method: 'one-at-a-time', settledBy: 'pattern' });
  });

  // blocksnswaps.blogspot.com, 2009-09: four geese of 3 by 1 1/2 from one square 4 1/4 and four 2 3/8.
  it('speaks of one unit, before its kind and before the whole pattern', async () => {
    const data = await planned(STAR, '--method', 'A=four-at-a-time', '--method', 'flying geese=triangles', '--method', 'template');
    expect(data.units.find(({ id }) => id === 'A')).toMatchObject({ method: 'four-at-a-time', settledBy: 'unit' });
    expect(cutsOf(data, 'print')).toContain('4 of 2 3/8 by 2 3/8');
    expect(cutsOf(data, 'solid')).toContain('1 of 4 1/4 by 4 1/4');
  });

  it('tells beforehand what the whole pattern will take', async () => {
    const [{ effects }] = (await planned(STAR)).units as unknown as [{ effects: Record<string, { pieces: number; spare: number }> }];
    expect(Object.keys(effects)).toContain('triangles-from-strips');
    for (const [method, told] of Object.entries(effects)) {
      const { cuts } = await planned(STAR, '--method', `A=${method}`);
      const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
      expect(told).toMatchObject({ pieces: sum(cuts.map(({ quantity }) => quantity)), spare: sum(cuts.map(({ spare }) => spare)) });
    }
  });
});

describe('--trim', () => {
  const nine = (): string => shooFlyWith({ finished: { width: '9', height: '9', unit: 'in' } });

  it.each([
    ['1/8', '4', 'Judy Laquidara, Half square triangles, 2006: finished 3 from 4, trimmed to 3 1/2'],
    ['1/4', '4 1/8', 'North Hampshire Quilters, half-square triangles: finished 3 from 4 1/8, trimmed to 3 1/2'],
  ])('%s cuts half-square triangles from %s in. (%s)', async (trim, side) => {
    const data = await planned(nine(), '--trim', trim);
    expect(cutsOf(data, 'white')).toEqual([`2 of ${side} by ${side}`]);
    expect(cutsOf(data, 'mustard')).toContain('4 of 3 1/2 by 3 1/2');
    expect(data.steps[0]).toMatchObject({ makes: 'A', trimmed: true, unfinished: ['3 1/2', '3 1/2'] });
    expect(data.steps[0]?.text).toContain('Trim to 3 1/2 by 3 1/2 in.');
  });
});

describe('--blocks', () => {
  it('cuts and makes everything that many times, with what a method leaves over only once', async () => {
    const data = await planned(SHOO_FLY, '--blocks', '3', '--method', 'half-square triangle=eight-at-a-time');
    // Twelve half-square triangles: two pairs make sixteen.
    expect(cutsOf(data, 'white')).toEqual(['2 of 9 3/4 by 9 3/4']);
    expect(cutsOf(data, 'mustard')).toContain('12 of 4 1/2 by 4 1/2');
    expect(data.units.find(({ id }) => id === 'A')?.count).toBe(12);
    expect(data.patches).toBe(13);
  });
});

describe('--seam, --ruler and --width', () => {
  it('a seam of 3/8 in. widens every plain square by 3/4 in.', async () => {
    const data = await planned(SHOO_FLY, '--seam', '3/8');
    expect(data.block.unfinished).toEqual(['12 3/4', '12 3/4']);
    expect(cutsOf(data, 'yellow')).toEqual(['1 of 4 3/4 by 4 3/4']);
  });

  it('a ruler of 1/64 in. rounds 4 + (2 + √2)/4 = 4.8535… up to 4 55/64', async () => {
    const data = await planned(SHOO_FLY, '--ruler', '1/64');
    expect(cutsOf(data, 'white')).toEqual(['2 of 4 55/64 by 4 55/64']);
    expect(data.cuts.find(({ fabric }) => fabric === 'white')?.exact?.width).toBe('4 1/2 + 1/4 √2');
  });

  it('cloth of 10 in. gives two squares of 4 7/8 in. to a strip', async () => {
    const strips = async (width: string): Promise<unknown> =>
      (await planned(SHOO_FLY, '--blocks', '2', '--width', width)).fabrics.find(({ id }) => id === 'white')?.strips;
    expect(await strips('42')).toEqual([{ width: '4 7/8', count: 1 }]);
    expect(await strips('10')).toEqual([{ width: '4 7/8', count: 2 }]);
  });

  it('lengths may be typed with the block’s own unit', async () => {
    expect(await planned(SHOO_FLY, '--seam', '3/8 in')).toEqual(await planned(SHOO_FLY, '--seam', '0.375'));
  });
});

describe('--way', () => {
  it('fewest pieces leaves out the seams of a Shoo Fly that standard units need, and each way names the other', async () => {
    const [standard, fewest] = [await planned(SHOO_FLY), await planned(SHOO_FLY, '--way', 'fewest pieces')];
    expect([standard.way, fewest.way]).toEqual(['standard units', 'fewest pieces']);
    const { patches, seams } = fewest;
    expect(standard.alternatives).toContainEqual(expect.objectContaining({ way: 'fewest pieces', patches, seams }));
    expect(fewest.alternatives).toContainEqual(expect.objectContaining({ way: 'standard units', patches: 13, seams: 12 }));
    expect(fewest.patches).toBeLessThan(13);
  });
});

describe('centimetres', () => {
  // Three 4 cm cells a side; the usual metric seam is 0.75 cm.
  const metric = (): string => shooFlyWith({ finished: { width: '12', height: '12', unit: 'cm' } });

  // weednstitch.blogspot.com, 2012-01-11: 1.5 cm more for a rectangle. It adds 2.5 for a half-square triangle, less than the exact 2.561.
  it('a plain square is cut 1.5 cm larger, the squares of half-square triangles 2.561 rounded up to 2.6', async () => {
    const data = await planned(metric());
    expect(data.block).toMatchObject({ unit: 'cm', finished: ['12', '12'], unfinished: ['13 1/2', '13 1/2'] });
    expect(cutsOf(data, 'yellow')).toEqual(['1 of 5 1/2 by 5 1/2']);
    expect(cutsOf(data, 'white')).toEqual(['2 of 6 3/5 by 6 3/5']);
  });

  it('people read decimals with a comma', async () => {
    const { print } = await inside('plan', metric());
    expect(print).toContain('squares  6,6 cm');
    expect(print).not.toMatch(/\bin\./);
  });

  it('millimetres are read as centimetres, and inches are refused', async () => {
    expect(await planned(metric(), '--seam', '6 mm')).toEqual(await planned(metric(), '--seam', '0,6'));
    expect(await inside('plan', metric(), '--seam', '1/4 in.')).toMatchObject({ exit: 2, print: '' });
  });
});

describe('check', () => {
  it('says that a sound file is sound', async () => {
    const { print, complaint, exit } = await inside('check', SHOO_FLY);
    expect({ complaint, exit }).toEqual({ complaint: null, exit: 0 });
    expect(print).toMatch(/^Shoo Fly is sound: 13 pieces, 12 seams; .*\n$/);
  });

  it('takes the same choices as plan', async () => {
    expect(await inside('check', fileAt('tests/cases/whirl-9.block.json'), '--trim', '1/8', '--blocks', '4')).toMatchObject({ exit: 0 });
  });
});
