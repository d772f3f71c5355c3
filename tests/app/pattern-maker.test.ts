import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { randomHalves } from '../../bench/drawings.ts';
import type { Block } from '../../src/block/block.ts';
import { choose } from '../../src/block/choosing.ts';
import type { Way } from '../../src/geometry/piecing/way.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { last } from '../../src/geometry/piecing/steps.ts';
import { answersBy, mayAskForRare } from '../../src/pattern/answers.ts';
import { patternJson } from '../../src/pattern/pattern-json.ts';
import { RARE_PARTS } from '../../src/pattern/rare-parts.ts';
import { createPatternMaker, type Standing } from '../../src/app/pattern-maker.ts';
import { standingWords } from '../../src/app/sheet/StandingLine.tsx';

function sewn(block: Block, way: Way): Block {
  const chosen = choose(block, { way });
  if (!chosen.ok) throw new Error(chosen.problem.sentence);
  return chosen.value;
}

function sound(made: ReturnType<typeof makePattern> | null): Pattern {
  if (!made?.ok) throw new Error(made?.problem.sentence ?? 'nothing was made');
  return made.value;
}

/** Drawings in which nothing repeats: the longest to look into. */
const DRAWINGS = [[6, 3, 11], [7, 2, 12], [8, 4, 13]] as const;

/** Everything a pattern maker tells of a drawing, with the pattern that is there each time, by a clock that goes on so much at every look. */
async function toldOf(block: Block, tick: number): Promise<readonly { readonly standing: Standing; readonly pattern: Pattern }[]> {
  let time = 0;
  const maker = createPatternMaker(() => (time += tick), async () => RARE_PARTS);
  const told = [{ standing: await maker.workOut(block), pattern: sound(maker.collect()) }];
  while (told.at(-1)!.standing.looking) told.push({ standing: maker.goOn(), pattern: sound(maker.collect()) });
  return told;
}

describe.each(DRAWINGS)('a drawing of %i x %i cells in %i fabrics', (cells, fabrics, seed) => {
  const block = randomHalves(cells, fabrics, seed);

  test.each(['standard units', 'fewest pieces'] as const)('has %s found step by step: each is proved, none costs more, the last is what the terminal prints', (way) => {
    const steps = answersBy(RARE_PARTS, sewn(block, way));
    const seen: Pattern[] = [];
    const written = new Map<() => unknown, Pattern>();
    const bounds: number[] = [];
    let end;
    for (let step = steps.next(); ; step = steps.next()) {
      const { pattern: write, fewest } = step.value;
      const pattern = written.get(write) ?? sound(write());
      written.set(write, pattern);
      expect(pattern.proof.holds).toBe(true);
      if (fewest) {
        expect(pattern.figures.pieces).toBe(fewest.pieces);
        expect(fewest.bound).toBeLessThanOrEqual(fewest.pieces);
        bounds.push(fewest.bound);
      }
      seen.push(pattern);
      if (step.done) {
        end = pattern;
        break;
      }
    }
    expect(seen.length).toBeGreaterThan(1);
    if (way === 'fewest pieces') {
      expect(bounds).toHaveLength(seen.length);
      expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
      const pieces = seen.map(({ figures }) => figures.pieces);
      expect(pieces).toEqual([...pieces].sort((a, b) => b - a));
    }
    const terminal = sound(makePattern(sewn(block, way)));
    expect({ ...patternJson(end!), alternatives: [] }).toEqual({ ...patternJson(terminal), alternatives: [] });
  });

  test('comes to the same pattern whether the clock runs fast or slow', async () => {
    for (const way of ['standard units', 'fewest pieces'] as const) {
      const [fast, slow] = [await toldOf(sewn(block, way), 1_000), await toldOf(sewn(block, way), 0)];
      expect(slow).toHaveLength(1);
      expect(fast.length).toBeGreaterThan(1);
      expect(fast.at(-1)!.standing).toMatchObject({ looking: false, fewest: slow[0]!.standing.fewest });
      expect(patternJson(fast.at(-1)!.pattern)).toEqual(patternJson(slow[0]!.pattern));
    }
  });
});

test('drawings without whole patches, put together as found, come to the same without the parts that few ask for', () => {
  const folder = 'tests/cases';
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.block.json'))) {
    const read = parseBlock(readFileSync(`${folder}/${name}`, 'utf8'));
    if (!read.ok || mayAskForRare(read.value)) continue;
    const [without, whole] = [last(answersBy(null, read.value)).pattern(), makePattern(read.value, {}, 'chosen way')];
    expect(patternJson(sound(without))).toEqual(patternJson(sound(whole)));
  }
  const [whole] = DRAWINGS.map(([cells, fabrics, seed]) => randomHalves(cells, fabrics, seed));
  expect(mayAskForRare({ ...whole!, patches: whole!.patches.map((patch) => ({ ...patch, whole: true })) })).toBe(true);
  expect(mayAskForRare(whole!, { assembly: 'columns' })).toBe(true);
});

test('what is known is said in one line', () => {
  const say = (looking: boolean, pieces: number, bound: number): string => standingWords({ looking, fewest: { pieces, bound }, patterns: 1 });
  expect(say(true, 29, 25)).toBe('29 pieces; at least 25 are needed; still looking');
  expect(say(false, 29, 27)).toBe('29 pieces; at least 27 are needed; no way with fewer was found');
  expect(say(false, 28, 28)).toBe('28 pieces: proved least');
  expect(standingWords({ looking: true, fewest: null, patterns: 1 })).toContain('first way');
  expect(standingWords({ looking: false, fewest: null, patterns: 2 })).toContain('over');
  expect(standingWords({ looking: false, fewest: null, patterns: 1 })).toBe('');
});
