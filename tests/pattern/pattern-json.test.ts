import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/measure/lengths.ts';
import { compare, multiply, rational, toNumber, ZERO, type Rational } from '../../src/measure/rational.ts';
import { surd } from '../../src/measure/surd.ts';
import { exactText } from '../../src/pattern/exact-text.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { blockNamed, namesIn, patternOf } from './made.ts';

const length = (text: string): Rational => {
  const read = parseLength(text);
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value.value;
};

const published = namesIn('cases').map((name) => [name, patternJson(patternOf(blockNamed('cases', name)))] as const);
/** Half-rectangle triangles and peaks: diagonals of either hand, templates. */
const slanted = ['half-rectangle-darts-12x9', 'peaked-star-12'].map(
  (name) => [name, patternJson(patternOf(blockNamed('gallery', name), { blocks: 3 }))] as const,
);

describe.each([...published, ...slanted])('the data of %s', (_, data) => {
  it('survive JSON', () => expect(JSON.parse(JSON.stringify(data))).toEqual(data));

  it('hold every length as text that reads back to a positive number, width before height', () => {
    for (const { width, height } of data.cuts) {
      expect(compare(length(width), ZERO)).toBe(1);
      expect(compare(length(width), length(height))).toBeLessThanOrEqual(0);
    }
    const sizes = [data.block, ...data.units].flatMap(({ finished, unfinished }) => [...finished, ...unfinished]);
    for (const text of [...sizes, ...data.steps.flatMap(({ unfinished }) => unfinished), ...data.fabrics.map((cloth) => cloth.length)]) {
      expect(compare(length(text), ZERO)).toBe(1);
    }
  });

  it('call a cut a square exactly when it is as wide as high', () => {
    for (const { shape, width, height } of data.cuts) if (shape !== 'template') expect(shape === 'square').toBe(width === height);
  });

  it('list the sewn units smallest first, and no plain square or rectangle among them', () => {
    const areas = data.units.map(({ finished: [width, height] }) => multiply(length(width), length(height)));
    areas.slice(1).forEach((area, i) => expect(compare(areas[i]!, area)).toBeLessThanOrEqual(0));
    expect(data.units.filter(({ kind }) => kind === 'square' || kind === 'rectangle')).toEqual([]);
  });

  it('name for every cut the units of the list, or the block', () => {
    const ids = ['block', ...data.units.map(({ id }) => id)];
    for (const cut of data.cuts) {
      expect(cut.for.length).toBeGreaterThan(0);
      for (const id of cut.for) expect(ids).toContain(id);
    }
  });

  it('make every unit in a step of its own, in as many as are counted, and the block last', () => {
    const made = data.steps.map(({ makes, count }) => [makes, count]);
    for (const { id, count } of data.units) expect(made).toContainEqual([id, count]);
    expect(data.steps.map(({ number }) => number)).toEqual(data.steps.map((_step, i) => i + 1));
    expect(data.steps.at(-1)?.makes).toBe('block');
  });
});

describe('the plan of a Shoo Fly as data', () => {
  const data = patternJson(patternOf(blockNamed('cases', 'shoo-fly-12')));

  it('has the shape that other programs rely on', () => {
    expect(data).toMatchObject({
      block: { name: 'Shoo Fly', finished: ['12', '12'], unfinished: ['12 1/2', '12 1/2'], unit: 'in' },
      way: 'standard units',
      patches: 13,
      seams: 12,
      partialSeams: 0,
      setInSeams: 0,
      proof: { holds: true },
    });
    expect(data.alternatives.map(({ way }) => way)).toContain('fewest pieces');
    expect(data.alternatives.map(({ way }) => way)).not.toContain('standard units');
    expect(data.units[0]).toMatchObject({
      id: 'A',
      kind: 'half-square triangle',
      count: 4,
      finished: ['4', '4'],
      unfinished: ['4 1/2', '4 1/2'],
      method: 'two-at-a-time',
      pieces: 2,
    });
    // American Patchwork & Quilting, Shoo Fly quilt block, 2019-04-02: two 4 7/8 in. squares of the contrasting print.
    expect(data.cuts).toContainEqual(
      expect.objectContaining({ fabric: 'white', quantity: 2, shape: 'square', width: '4 7/8', height: '4 7/8', subcut: 'none' }),
    );
    expect(data.cuts.find(({ fabric }) => fabric === 'white')?.for).toEqual(['A']);
    expect(data.steps[0]).toMatchObject({ number: 1, makes: 'A', count: 4, unfinished: ['4 1/2', '4 1/2'] });
    expect([typeof data.steps[0]?.text, typeof data.steps[0]?.press]).toEqual(['string', 'string']);
    // Rows pressed to alternate sides (common practice): its four corners nest.
    expect(data.pressing).toEqual({ points: 4, sameWay: 0, open: 0, provedBest: true, layers: expect.any(Number) });
    expect(data.steps.at(-1)?.meet.map(({ at, lie }) => [at.join(), lie]).sort()).toEqual(
      ['4,4', '4,8', '8,4', '8,8'].map((at) => [at, 'opposite ways']),
    );
    const white = data.fabrics.find(({ id }) => id === 'white');
    expect(white).toMatchObject({ strips: [{ width: '4 7/8', count: 1 }], length: '4 7/8', buy: '1/4 yd' });
  });

  it('counts joined units too: the rows', () => {
    const rows = data.units.filter(({ kind }) => kind === 'joined unit');
    expect(rows.map(({ count, finished, method }) => ({ count, finished, method }))).toEqual([
      { count: 1, finished: ['12', '4'], method: null },
      { count: 2, finished: ['12', '4'], method: null },
    ]);
  });
});

describe('a template as data', () => {
  const data = patternJson(patternOf(blockNamed('gallery', 'peaked-star-12'), { methods: { peak: 'template' } }));
  const templates = data.cuts.filter(({ shape }) => shape === 'template');

  it('tells its finished corners within its own rectangle: the middle of a peak is as high as it is wide', () => {
    // A peak of 4 in.: 0, 0 – 4, 0 – 2, 4 in one of its four turns.
    const turns = ['0 0,2 4,4 0', '0 2,4 0,4 4', '0 4,2 0,4 4', '0 0,0 4,4 2'];
    const middles = templates.filter(({ fabric }) => fabric === 'oat');
    expect(middles).toHaveLength(1);
    expect(turns).toContain((middles[0]?.corners ?? []).map((corner) => corner.join(' ')).sort().join());
  });

  it('cuts nothing of it again', () => expect(templates.map(({ subcut }) => subcut)).toEqual(templates.map(() => 'none')));
});

describe('an exact size as text', () => {
  it.each([
    [surd(rational(9, 2)), '4 1/2'],
    [surd(rational(9, 2), rational(1, 4), 2), '4 1/2 + 1/4 √2'],
    [surd(rational(3), rational(-1), 5), '3 - √5'],
    [surd(ZERO, rational(3, 2), 2), '1 1/2 √2'],
    [surd(ZERO, rational(-1), 3), '-√3'],
    [surd(rational(1), rational(1, 2), 4), '2'],
  ])('%j', (value, text) => expect(exactText(value)).toBe(text));

  it('is never more than the size on the list, and less than one step of the ruler below it', () => {
    const value = (text: string): number => {
      const [, p = '0', , sign = '+', q = '', r = '0'] = /^(?:([\d /]+?))?( ([+-]) )?(?:([\d /]*?) ?√(\d+))?$/.exec(text) ?? [];
      const times = q === '' ? 1 : toNumber(length(q));
      return toNumber(length(p === '' ? '0' : p)) + (sign === '-' ? -1 : 1) * times * Math.sqrt(Number(r));
    };
    for (const [, data] of [...published, ...slanted]) {
      for (const { exact, width, height } of data.cuts) {
        if (exact === null) continue;
        for (const [listed, wanted] of [[width, exact.width], [height, exact.height]] as const) {
          const over = toNumber(length(listed)) - value(wanted);
          expect(over, `${listed} for ${wanted}`).toBeGreaterThan(-1e-9);
          expect(over, `${listed} for ${wanted}`).toBeLessThan(1 / 8);
        }
      }
    }
  });
});
