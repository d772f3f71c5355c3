import { describe, expect, test } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices, Method } from '../../src/block/choices.ts';
import { chooseMethod } from '../../src/block/choosing-methods.ts';
import { formatBlock, parseBlock } from '../../src/files/block-file.ts';
import { equals, rational } from '../../src/measure/rational.ts';
import { good } from '../../src/measure/problem.ts';
import { effectNow, linesOfKind, optionsFor, type MethodOption, type MethodScope } from '../../src/pattern/effects.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern, UnitLine } from '../../src/pattern/pattern.ts';
import { unitPlaces } from '../../src/pattern/unit-places.ts';
import { blockNamed, namesIn } from './made.ts';

/** The chosen way alone, for many patterns. */
function planned(block: Block, choices: Choices = {}): Pattern {
  const made = makePattern(block, choices, 'chosen way');
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

/** @returns the block once somebody has taken an option that is offered for a unit */
function taken(block: Block, pattern: Pattern, line: UnitLine, scope: MethodScope, { method }: Pick<MethodOption, 'method'>): Block {
  const asked = method === 'usual' ? null : method;
  const places = unitPlaces(pattern, scope === 'unit' ? [line] : linesOfKind(pattern, line.unit.kind), block.grid);
  const next = chooseMethod(
    block,
    scope === 'pattern' ? { scope, method: asked } : scope === 'unit' ? { scope, method: asked, places } : { scope, method: asked, kind: line.unit.kind, places },
  );
  if (!next.ok) throw new Error(next.problem.sentence);
  return next.value;
}

const unitOf = (pattern: Pattern, kind: UnitLine['unit']['kind']): UnitLine => pattern.units.find(({ unit }) => unit.kind === kind)!;

describe('what is chosen for one unit, its kind and the whole pattern', () => {
  const star = blockNamed('cases', 'sawtooth-star-8');

  test('goes from the particular to the general', () => {
    const by = (block: Block, choices: Choices): readonly unknown[] => {
      const { method, settledBy } = unitOf(planned(block, choices), 'flying geese');
      return [method, settledBy];
    };
    const alone = taken(star, planned(star), planned(star).units[0]!, 'unit', { method: 'template' });
    const all: Choices = { method: 'triangles', methods: { 'flying geese': 'four-at-a-time' } };
    expect(by(alone, all)).toEqual(['template', 'unit']);
    expect(by(star, all)).toEqual(['four-at-a-time', 'kind']);
    expect(by(star, { method: 'triangles' })).toEqual(['triangles', 'pattern']);
    expect(by(star, {})).toEqual(['stitch-and-flip', 'usual']);
  });

  test('of the whole pattern means its like in kinds that do not know it', () => {
    const method = (choices: Choices, name: string, kind: UnitLine['unit']['kind']): Method | null =>
      unitOf(planned(blockNamed('cases', name), choices), kind).method;
    expect(method({ method: 'triangles' }, 'shoo-fly-12', 'half-square triangle')).toBe('one-at-a-time');
    expect(method({ method: 'one-at-a-time' }, 'sawtooth-star-8', 'flying geese')).toBe('triangles');
    expect(method({ method: 'eight-at-a-time' }, 'sawtooth-star-8', 'flying geese')).toBe('four-at-a-time');
    expect(method({ method: 'eight-at-a-time' }, 'ohio-star-12-triangles', 'quarter-square triangle')).toBe('two-at-a-time');
    expect(method({ method: 'stitch-and-flip' }, 'shoo-fly-12', 'half-square triangle')).toBe('two-at-a-time');
  });

  test('of one unit is true wherever it comes again, and of no other', () => {
    const block = blockNamed('gallery', 'four-small-stars-12');
    const pattern = planned(block);
    const [line, ...others] = pattern.units.filter(({ methods }) => methods.includes('template'));
    const again = planned(taken(block, pattern, line!, 'unit', { method: 'template' }));
    expect(again.units.filter(({ settledBy }) => settledBy === 'unit').map(({ unit }) => unit.id)).toEqual([line!.unit.id]);
    const cuts = again.cuts.filter(({ uses }) => uses.some(({ unit }) => unit === line!.unit.id));
    expect(cuts.every(({ shape }) => shape === 'template')).toBe(true);
    expect(again.units.filter(({ unit }) => others.some((other) => other.unit.id === unit.id)).map(({ method }) => method)).toEqual(others.map(({ method }) => method));
  });

  test('more widely ends what was chosen more narrowly, so that it is true of every one', () => {
    const pattern = planned(star);
    const alone = taken(star, pattern, pattern.units[0]!, 'unit', { method: 'template' });
    const every = taken(alone, planned(alone), planned(alone).units[0]!, 'kind', { method: 'triangles' });
    expect([every.unitMethods, every.choices?.methods]).toEqual([undefined, { 'flying geese': 'triangles' }]);
    const whole = taken(every, planned(every), planned(every).units[0]!, 'pattern', { method: 'triangles-from-strips' });
    expect(whole.choices).toEqual({ method: 'triangles-from-strips' });
    expect(taken(whole, planned(whole), planned(whole).units[0]!, 'pattern', { method: 'usual' })).toEqual(star);
  });

  test('may be chosen for a block that is one unit by itself', () => {
    const patches = [{ fabric: 'sea', points: [[0, 0], [1, 0], [0, 1]] }];
    const file = { format: 'piecewright/block', version: 1, name: 'Ebb', finished: { width: '4', height: '4', unit: 'in' }, grid: { columns: 1, rows: 1 }, fabrics: [{ id: 'fog', name: 'Fog', color: '#ece8dc' }, { id: 'sea', name: 'Sea', color: '#2e7896' }], ground: 'fog', patches };
    const read = parseBlock(JSON.stringify(file));
    if (!read.ok) throw new Error(read.problem.sentence);
    const pattern = planned(read.value);
    const whole = pattern.whole!;
    const options = optionsFor(pattern, whole, 'unit');
    expect(options.map(({ method }) => method)).toEqual(['two-at-a-time', 'one-at-a-time', 'eight-at-a-time', 'triangles-from-strips', 'template']);
    for (const scope of ['unit', 'kind', 'pattern'] as const) {
      const made = planned(taken(read.value, pattern, whole, scope, { method: 'triangles-from-strips' }));
      expect(made.whole).toMatchObject({ method: 'triangles-from-strips', settledBy: scope });
      expect(made.proof.holds).toBe(true);
      expect(effectNow(made)).toEqual(options[3]!.effect);
    }
  });

  test('comes back out of a file', () => {
    const pattern = planned(star);
    const chosen = taken(taken(star, pattern, pattern.units[0]!, 'pattern', { method: 'triangles' }), pattern, pattern.units[0]!, 'unit', { method: 'template' });
    const read = parseBlock(formatBlock(chosen));
    expect(read).toEqual(good(chosen));
  });

  test('for a unit that is sewn there no more is told, and does nothing', () => {
    const block: Block = { ...star, unitMethods: [{ from: [0, 0], to: [1, 1], method: 'template' }] };
    const pattern = planned(block);
    expect(pattern.cuts).toEqual(planned(star).cuts);
    expect(pattern.notes.join(' ')).toMatch(/method template is chosen for a unit from 0 .*across, 0 .*down to 2 in\. across, 2 in\. down, but none is sewn there; it does nothing/);
  });
});

/** Blocks of the gallery and published ones, so many apart, with one way each to choose. */
const SAMPLE = [...namesIn('gallery').map((name) => ['gallery', name] as const), ...namesIn('cases').map((name) => ['cases', name] as const)].filter((_, i) => i % 10 === 1);

describe('whatever is chosen for whatever unit', () => {
  test.each(SAMPLE)('of %s %s, the proof holds, and the pattern takes what was told before', (folder, name) => {
    const block = blockNamed(folder, name);
    const metric = block.finished.unit === 'cm';
    const choices: Choices = { blocks: 3, trim: metric ? rational(3, 10) : rational(1, 8) };
    const pattern = planned(block, choices);
    const lines = pattern.units.filter(({ methods }) => methods.length > 1);
    const scopes: readonly MethodScope[] = ['unit', 'kind', 'pattern'];
    // Of every unit and scope one option, another each time.
    lines.slice(0, 2).forEach((line, i) =>
      scopes.forEach((scope, j) => {
        const options = optionsFor(pattern, line, scope);
        const option = options[(i + j + 1) % options.length]!;
        const made = planned(taken(block, pattern, line, scope, option), choices);
        expect(made.proof).toMatchObject({ holds: true, faults: [] });
        expect(effectNow(made)).toEqual(option.effect);
        // A small row inside larger ones is made nowhere once these come of strip sets.
        const own = made.units.find(({ unit }) => unit.id === line.unit.id);
        expect([own?.method ?? null, made.steps.find(({ makes }) => makes === line.unit.id)?.trimmed ?? false]).toEqual([option.becomes, option.trimmed]);
      }),
    );
  });
});

describe('what a method takes', () => {
  // Elizabeth Hartman for Sew Mama Sew, 2009: the star of 8 in. from 1 at 4 1/2, 8 + 4 at 2 1/2 and 4 at 2 1/2 by 4 1/2: 17 pieces.
  // blocksnswaps, 2009-09 (of 6 in.): 4 + 1 squares, and for its geese 1 and 4: 10. sewingwithstitcher, block 6: 4 + 1 and 1 and 4: 10.
  test('is counted as the published lists are', () => {
    const pattern = planned(blockNamed('cases', 'sawtooth-star-8'));
    const pieces = Object.fromEntries(optionsFor(pattern, pattern.units[0]!, 'kind').map(({ method, effect }) => [method, effect.pieces]));
    expect(pieces).toEqual({ 'stitch-and-flip': 17, 'four-at-a-time': 10, triangles: 10, 'triangles-from-strips': 7, template: 17 });
  });

  // Mesquite Quilt Guild: eight from two squares; a Shoo Fly needs four.
  test('counts what is left over in units where squares are sewn before they are cut: four of eight', () => {
    const pattern = planned(blockNamed('cases', 'shoo-fly-12'));
    const options = optionsFor(pattern, pattern.units[0]!, 'unit');
    expect(options.find(({ method }) => method === 'eight-at-a-time')!.effect.spare).toBe(4);
  });

  test('says how many pieces are sewn on the bias: none where squares are sewn first, all three of a goose from triangles', () => {
    const pattern = planned(blockNamed('cases', 'sawtooth-star-8'));
    const bias = Object.fromEntries(optionsFor(pattern, pattern.units[0]!, 'unit').map(({ method, effect }) => [method, effect.bias]));
    expect(bias).toEqual({ 'stitch-and-flip': 0, 'four-at-a-time': 0, triangles: 12, 'triangles-from-strips': 12, template: 12 });
  });

  test('is less cloth from strips where many triangles are wanted', () => {
    const pattern = planned(blockNamed('cases', 'bears-paw-14'), { blocks: 12 });
    const options = optionsFor(pattern, unitOf(pattern, 'half-square triangle'), 'kind');
    const cloth = (method: Method): number => {
      const { n, d } = options.find((option) => option.method === method)!.effect.cloth;
      return n / d;
    };
    expect(cloth('triangles-from-strips')).toBeLessThan(cloth('one-at-a-time'));
  });

  test('cut large, is the same for every unit that has something to trim, and the step says so', () => {
    const pattern = planned(blockNamed('cases', 'sawtooth-star-8'), { trim: rational(1, 4) });
    const options = optionsFor(pattern, pattern.units[0]!, 'unit');
    expect(options.filter(({ trimmed }) => !trimmed).map(({ method }) => method)).toEqual(['template']);
    const [geese] = pattern.steps;
    expect(geese!.text).toContain('Trim to 4 1/2 by 2 1/2 in.');
    expect(equals(pattern.choices.trim, rational(1, 4))).toBe(true);
  });
});
