import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import type { Point } from '../../src/geometry/point.ts';
import { biasEdges } from '../../src/cutting/bias.ts';
import { grainOf } from '../../src/cutting/grain.ts';
import { cutShape } from '../../src/cutting/shapes.ts';
import { rational, toNumber } from '../../src/measure/rational.ts';
import { effectNow } from '../../src/pattern/effects.ts';
import { figureLines } from '../../src/pattern/figure-words.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { patternText } from '../../src/pattern/pattern-text.ts';
import { aboutTime, secondsTime } from '../../src/pattern/time-words.ts';
import { workFigures } from '../../src/pattern/work-figures.ts';
import { ACTS, actsOf, STAGES, USUAL_TIMES, workTime, type Act } from '../../src/pattern/work-time.ts';
import type { Step } from '../../src/sewing/step.ts';
import { blockNamed, namesIn } from './made.ts';

/** The chosen way alone. */
function planned(block: Block, choices: Choices = {}): Pattern {
  const made = makePattern(block, choices, 'chosen way');
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

const SHOO_FLY = blockNamed('cases', 'shoo-fly-12');
const SAMPLE = [...namesIn('gallery').map((name) => ['gallery', name] as const), ...namesIn('cases').map((name) => ['cases', name] as const)].filter((_, i) => i % 13 === 1);
const METHODS = ['usual', 'triangles', 'template'] as const;

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
const xy = ({ x, y, w }: Point): readonly [number, number] => [x / w, y / w];

/** Of all copies of a step in one block. */
const over = (pattern: Pattern, count: (step: Step) => number): number =>
  sum(pattern.steps.map((step) => count(step) * step.count)) / pattern.choices.blocks;

/** How narrow a polygon is, in doubles: what it measures across, along the directions of its edges; legs and heights as the trade says it. */
function narrowness(outline: readonly Point[], pattern: Pattern): number {
  const corners = outline.map(xy);
  const shape = cutShape(outline, pattern.lattice.step);
  const legs = shape.form === 'right' || (shape.form === 'isosceles' && shape.grain === 'legs');
  const sides = corners.map(([x, y], i) => {
    const [p, q] = corners[(i + 1) % corners.length]!;
    return [p - x, q - y] as const;
  });
  const lengths = sides.map(([a, b]) => Math.hypot(a, b));
  if (legs) return Math.min(...lengths) * toNumber(pattern.lattice.step);
  const across = sides.map(([a, b], i) => Math.max(...corners.map(([x, y]) => Math.abs(a * (y - corners[i]![1]) - b * (x - corners[i]![0])))) / lengths[i]!);
  return Math.min(...across) * toNumber(pattern.lattice.step);
}

describe('the figures of a pattern', () => {
  test.each(SAMPLE)('of %s %s are what its steps and pieces give when they are counted by hand', (folder, name) => {
    const pattern = planned(blockNamed(folder, name), { blocks: 3 });
    const figures = workFigures(pattern);
    // A seam in two goes is one seam; every seam makes two things one.
    expect(figures.seams).toBe(over(pattern, ({ joins }) => joins.filter(({ sew }) => sew !== 'part-way').length));
    expect(figures.pieces).toBe(over(pattern, ({ parts }) => parts.filter(({ from }) => 'cut' in from).length));
    expect(figures.pieces - figures.seams).toBe(1);
    const lying = (lie: string) => over(pattern, ({ points }) => points.filter((point) => point.lie === lie).length);
    expect(figures.pointsApart).toEqual({ sameWay: lying('the same way'), open: lying('open') });
    expect(figures.pointsToMatch).toBeGreaterThanOrEqual(lying('the same way') + lying('open') + lying('opposite ways'));
    const { p, q, r } = figures.narrowest;
    expect(toNumber(p) + toNumber(q) * Math.sqrt(r)).toBeCloseTo(Math.min(...pattern.pieces.map(({ outline }) => narrowness(outline, pattern))), 9);
  });

  test.each(SAMPLE)('of %s %s tell as many straight cuts as the methods do, and four for each piece of scraps', (folder, name) => {
    const block = blockNamed(folder, name);
    for (const method of METHODS) {
      const pattern = planned(block, { method });
      const edges = sum(pattern.cuts.map(({ template, quantity }) => (template?.length ?? 0) * quantity));
      expect(workFigures(pattern).straightCuts).toBe(effectNow(pattern).cuts + edges);
      const scraps = planned({ ...block, fabrics: block.fabrics.map((fabric) => ({ ...fabric, scraps: { prints: 2, seed: 1 } })) }, { method });
      const diagonals = sum(scraps.cuts.map(({ quantity, subcut }) => ({ none: 0, once: 1, twice: 2, 'head to tail': NaN })[subcut] * quantity));
      const rims = sum(scraps.cuts.map(({ template, quantity }) => (template?.length ?? 0) * quantity));
      expect(workFigures(scraps).straightCuts).toBe(4 * sum(scraps.cuts.map(({ quantity }) => quantity)) + diagonals + rims);
    }
  });
});

/** Roles of pieces that are cut to their shape before they are sewn. */
const SHAPED = ['half', 'quarter', 'strip-half', 'strip-quarter'];

/** @returns seams of one block along which a triangle lies slantwise to its grain, looked for inside each step, in doubles */
function biasInSteps(pattern: Pattern): number {
  const { lattice, choices, cuts } = pattern;
  return over(pattern, ({ parts, joins }) => {
    const partsOf = (thing: number): readonly number[] =>
      thing < parts.length ? [thing] : [joins[thing - parts.length]!.first, joins[thing - parts.length]!.second].flatMap(partsOf);
    return joins.filter(({ first, second, from, to }) => {
      const [[x, y], [p, q]] = [xy(from), xy(to)];
      const isOn = ([a, b]: readonly [number, number]): boolean => Math.abs((p - x) * (b - y) - (q - y) * (a - x)) < 1e-9;
      const level = x === p || y === q;
      return [first, second].flatMap(partsOf).some((part) => {
        const { from: source, outline } = parts[part]!;
        if (!('role' in source) || !SHAPED.includes(source.role) || outline.filter((corner) => isOn(xy(corner))).length < 2) return false;
        const grain = grainOf({ outline, role: source.role, cut: cuts.find(({ id }) => id === source.cut)! }, { step: lattice.step, seam: choices.seam, trim: choices.trim });
        return grain === 'level' ? !level : level;
      });
    }).length;
  });
}

describe('seams along bias', () => {
  test('are the long sides of halves, if triangles are cut before they are sewn', () => {
    expect(workFigures(planned(SHOO_FLY)).bias.seams).toBe(0);
    for (const method of ['one-at-a-time', 'triangles-from-strips'] as const) {
      const pattern = planned(SHOO_FLY, { method });
      // Four half-square triangles; nothing else in a Shoo Fly is slanted.
      expect(workFigures(pattern).bias).toEqual({ outer: 0, seams: 4 });
    }
  });

  test('are the legs of quarters: three seams in each hourglass, and none at its outside', () => {
    const star = planned(blockNamed('cases', 'ohio-star-12-triangles'), { method: 'triangles' });
    expect(star.units.filter(({ unit }) => unit.kind === 'quarter-square triangle').map(({ count }) => count)).toEqual([4]);
    expect(workFigures(star).bias).toEqual({ outer: 0, seams: 12 });
  });

  test.each(SAMPLE)('in %s %s are those where a triangle lies slantwise to its grain, and none in squares that are sewn before they are cut', (folder, name) => {
    const block = blockNamed(folder, name);
    for (const method of ['usual', 'triangles', 'triangles-from-strips'] as const) {
      const pattern = planned(block, { method });
      if (pattern.cuts.some(({ shape }) => shape === 'template')) continue;
      expect(workFigures(pattern).bias.seams, method).toBe(biasInSteps(pattern));
      if (pattern.cuts.every(({ subcut }) => subcut === 'none')) expect(biasInSteps(pattern)).toBe(0);
    }
  });

  test('are the slanted ones of a block that is cut round outlines', () => {
    const pattern = planned(blockNamed('gallery', 'dutchmans-puzzle-12'), { method: 'template' });
    // Eight geese, two slanted seams each.
    expect(workFigures(pattern).bias).toEqual({ outer: 0, seams: 16 });
  });

  test('lie on a piece where its grain does not', () => {
    const at = (x: number, y: number): Point => ({ x, y, w: 1 });
    const half = [at(0, 0), at(4, 0), at(0, 4)];
    const long = [at(4, 0), at(0, 4)];
    expect(biasEdges(half, 'half', rational(1))).toEqual([long]);
    expect(biasEdges(half, 'quarter', rational(1))).toEqual([[at(0, 0), at(4, 0)], [at(0, 4), at(0, 0)]]);
    expect(biasEdges(half, 'template', rational(1))).toEqual([long]);
    expect(biasEdges([at(0, 0), at(4, 0), at(0, 2)], 'half', rational(1))).toEqual([[at(4, 0), at(0, 2)]]);
    for (const role of ['pair', 'eight', 'corner', 'base', 'large', 'small'] as const) expect(biasEdges(half, role, rational(1))).toEqual([]);
  });
});

describe('the time of a pattern', () => {
  test('of a Shoo Fly is counted as a maker would', () => {
    const pattern = planned(SHOO_FLY);
    // Four half-square triangles from two pairs of squares: two lines, four seams beside them, two cuts. Then three rows of three, and the rows.
    // The diagonals are 4√2 in. and the seams across 4 or 12 in., with a quarter inch at either end.
    const inches = 4 * (4 * Math.SQRT2 + 0.5) + 6 * 4.5 + 2 * 12.5;
    const acts = actsOf(pattern);
    expect({ ...acts, inch: 0 }).toEqual({ cut: acts.cut, line: 2, start: 12, inch: 0, match: 4, press: 12, apart: 2, trim: 0 });
    expect(acts.inch).toBeCloseTo(inches, 9);
    expect(actsOf(planned(SHOO_FLY, { trim: rational(1, 8) })).trim).toBe(4);
  });

  test.each([
    // Eight halves from two squares: two lines, four seams, eight pressed, four cuts; beside what is sewn without them, eight seams.
    ['eight-at-a-time', { line: 2, start: 4 + 16, press: 8 + 16, apart: 4 }],
    ['two-at-a-time', { line: 4, start: 8 + 16, press: 8 + 16, apart: 4 }],
    ['one-at-a-time', { line: 0, start: 8 + 16, press: 8 + 16, apart: 0 }],
  ] as const)('of two Shoo Flies %s counts lines, seams and cuts by what is really done', (method, acts) => {
    expect(actsOf(planned(SHOO_FLY, { blocks: 2, methods: { 'half-square triangle': method } }))).toMatchObject(acts);
  });

  test('of four geese at a time is four lines, six seams and three cuts; of flipped corners one of each for each corner', () => {
    const star = blockNamed('cases', 'sawtooth-star-8');
    // Four geese, and with them eight seams: the star's three rows and columns.
    expect(actsOf(planned(star, { methods: { 'flying geese': 'four-at-a-time' } }))).toMatchObject({ line: 4, start: 6 + 8, press: 6 + 8, apart: 3 });
    expect(actsOf(planned(star))).toMatchObject({ line: 8, start: 8 + 8, press: 8 + 8, apart: 8 });
  });

  test.each(SAMPLE)('of %s %s adds up, and twice the blocks take twice as long to sew, press and trim', (folder, name) => {
    const block = blockNamed(folder, name);
    for (const method of METHODS) {
      const [one, two] = [planned(block, { method }), planned(block, { method, blocks: 2 })].map((pattern) => workTime(pattern));
      for (const { acts, stages, total } of [one!, two!]) {
        for (const stage of STAGES) expect(stages[stage]).toBeCloseTo(sum(acts.filter((act) => act.stage === stage).map(({ takes }) => takes)), 6);
        expect(total).toBeCloseTo(sum(acts.map(({ takes }) => takes)), 6);
      }
      for (const stage of ['sewing', 'pressing', 'trimming'] as const) expect(two!.stages[stage]).toBeCloseTo(2 * one!.stages[stage], 6);
      // Straight cuts are those of the cloth as it is laid out, which two blocks share; the lines that are drawn are each block's own.
      const lines = [one!, two!].map(({ acts }) => acts.find(({ act }) => act === 'line')!.takes);
      expect(lines[1]).toBe(2 * lines[0]!);
      expect(two!.perBlock).toBe(two!.total / 2);
    }
  });

  test('depends on each assumption by as much as that thing is done', () => {
    const pattern = planned(blockNamed('cases', 'sawtooth-star-8'), { trim: rational(1, 8) });
    const usual = workTime(pattern);
    for (const { act } of ACTS) {
      const more = workTime(pattern, { ...USUAL_TIMES, [act]: USUAL_TIMES[act] + 7 });
      expect(more.total - usual.total).toBeCloseTo(7 * actsOf(pattern)[act], 6);
      expect(actsOf(pattern)[act], act).toBeGreaterThan(0);
    }
    const nothing = Object.fromEntries(ACTS.map(({ act }) => [act, 0])) as Record<Act, number>;
    expect(workTime(pattern, nothing).total).toBe(0);
  });

  test('is the same in centimetres as in inches', () => {
    const [inch, cm] = [planned(SHOO_FLY, { seam: rational(1, 4) }), planned({ ...SHOO_FLY, finished: { width: rational(762, 25), height: rational(762, 25), unit: 'cm' } }, { seam: rational(127, 200) })];
    expect(actsOf(cm).inch).toBeCloseTo(actsOf(inch).inch, 9);
  });
});

describe('what is said of it', () => {
  test.each([
    [5, '1 min', '5 s'],
    [875, '15 min', '14 min 35 s'],
    [59.6 * 60, '1 h', '59 min 36 s'],
    [7800, '2 h 10 min', '2 h 10 min'],
    [0, '1 min', '0 s'],
    [37 * 3600 + 1700, '37 h', '37 h 28 min 20 s'],
  ])('of %d s is %s, to the second %s', (seconds, about, exact) => {
    expect([aboutTime(seconds), secondsTime(seconds)]).toEqual([about, exact]);
  });

  test('stands in the text and in the data, as an estimate', () => {
    const pattern = planned(SHOO_FLY, { blocks: 3 });
    const [text, { figures }] = [patternText(pattern), patternJson(pattern)];
    const { total, perBlock } = workTime(pattern);
    expect(text).toContain(`Time, an estimate: about ${aboutTime(total)}, ${aboutTime(perBlock)} a block`);
    expect(text.replace(/\s+/g, ' ')).toContain('No source gives these times: they are assumptions');
    for (const { name, says } of figureLines(workFigures(pattern), pattern)) expect(text).toContain(`  ${name}: ${says}\n`);
    expect(figures).toMatchObject({ pointsToMatch: 4, pointsNotNested: 0, narrowest: '4', biasOnOuterEdge: 0, biasSeams: 0, time: { estimate: true } });
    const { all, perBlock: each, ...stages } = figures.time.seconds;
    expect(all).toBe(sum(Object.values(stages)));
    expect(Math.abs(all - 3 * each)).toBeLessThanOrEqual(5);
  });
});
