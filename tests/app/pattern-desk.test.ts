import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { blank } from '../../src/block/blank.ts';
import type { Block } from '../../src/block/block.ts';
import { choose } from '../../src/block/choosing.ts';
import { rename } from '../../src/block/renaming.ts';
import { createDesk, type Bench } from '../../src/app/pattern-desk.ts';
import type { Standing } from '../../src/app/pattern-maker.ts';
import { createRest } from '../../src/app/rest.ts';
import type { Result } from '../../src/measure/problem.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Alternative, Pattern } from '../../src/pattern/pattern.ts';

function drawing(name: string): Block {
  const made = blank({
    name,
    finished: { width: rational(6), height: rational(6), unit: 'in' },
    grid: { columns: 3, rows: 3 },
    fabrics: [{ id: 'oat', name: 'Oat', color: '#f3ede0' }],
  });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

type Answer = Result<Pattern> | readonly Alternative[];

const DONE: Standing = { looking: false, fewest: null, patterns: 1 };

/** A bench whose answers are ready when the test says so. */
interface HeldBench extends Bench {
  /** What was asked of it: "Ebb" for the pattern of a drawing, "better" for a better one, "Ebb's ways" for the ways to sew it. */
  readonly asked: string[];
  /** What it tells when next it has a pattern. */
  standing: Standing;
  stopped: boolean;
  finish: (answer: Answer) => Promise<void>;
  fail: () => Promise<void>;
}

function heldBenches(): { readonly benches: HeldBench[]; readonly begin: () => Bench } {
  const benches: HeldBench[] = [];
  const begin = (): Bench => {
    let resolve: (answer: never) => void = () => undefined;
    let reject: (error: Error) => void = () => undefined;
    let worked: Result<Pattern> | null = null;
    const held = <T>(what: string): Promise<T> => {
      bench.asked.push(what);
      return new Promise<T>((yes, no) => ([resolve, reject] = [yes, no]));
    };
    const bench: HeldBench = {
      asked: [],
      standing: DONE,
      stopped: false,
      workOut: async ({ name }) => {
        worked = await held<Result<Pattern>>(name);
        return bench.standing;
      },
      goOn: async () => {
        worked = await held<Result<Pattern>>('better');
        return bench.standing;
      },
      collect: async () => worked,
      everyWay: ({ name }) => held(`${name}'s ways`),
      stop: () => void (bench.stopped = true),
      finish: async (answer) => {
        resolve(answer as never);
        await everything();
      },
      fail: async () => {
        reject(new Error('stopped'));
        await everything();
      },
    };
    benches.push(bench);
    return bench;
  };
  return { benches, begin };
}

/** Lets everything that is ready happen. */
async function everything(): Promise<void> {
  for (let i = 0; i < 20; i++) await Promise.resolve();
}

const patternNamed = (name: string): Result<Pattern> => ({ ok: true, value: { block: { name } } as Pattern });

const WAYS = [{ way: 'rows' }, { way: 'columns' }] as unknown as readonly Alternative[];

describe('the pattern of the newest drawing', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  test('appears when it is worked out; until then the desk says that it is working', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: null, working: true });
    await benches[0]!.finish(patternNamed('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, problem: null, working: false });
  });

  test('is the only one that appears: an older one that ends late is passed over, the newest is worked out next', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    for (const name of ['Ebb', 'Flood', 'Slack']) want(drawing(name));
    expect(benches[0]!.asked).toEqual(['Ebb']);
    await benches[0]!.finish(patternNamed('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: null, working: true });
    expect(benches[0]!.asked).toEqual(['Ebb', 'Slack']);
    await benches[0]!.finish(patternNamed('Slack'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Slack' } }, working: false });
  });

  test('stops a long search for an older drawing, also while strokes go on and on', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    for (let i = 0; i < 10; i++) {
      want(drawing(`Flood ${i}`));
      vi.advanceTimersByTime(50);
    }
    expect(benches[0]!.stopped).toBe(true);
    vi.advanceTimersByTime(1000);
    const last = benches.at(-1)!;
    expect(last.asked).toEqual(['Flood 9']);
    expect(benches.filter((bench) => !bench.stopped)).toEqual([last]);
    await last.finish(patternNamed('Flood 9'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Flood 9' } }, working: false });
  });

  test('keeps the last sheet while a newer drawing is worked on', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    await benches[0]!.finish(patternNamed('Ebb'));
    want(drawing('Flood'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, working: true });
  });

  test('gives way to a sentence where the drawing has none', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    await benches[0]!.finish({ ok: false, problem: { code: 'locked', sentence: 'These patches lock each other.' } });
    expect(desk.get()).toMatchObject({ pattern: null, problem: { sentence: 'These patches lock each other.' }, working: false });
  });

  test('comes again after a bench has broken', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    await benches[0]!.fail();
    expect(desk.get()).toMatchObject({ problem: { code: 'pattern-stopped' }, working: false });
    want(drawing('Flood'));
    expect(benches).toHaveLength(2);
    await benches[1]!.finish(patternNamed('Flood'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Flood' } }, problem: null, working: false });
  });

  test('comes first; then every way to sew it is looked for, and the pattern stays meanwhile', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    await benches[0]!.finish(patternNamed('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, ways: null, working: false });
    expect(benches[0]!.asked).toEqual(['Ebb', "Ebb's ways"]);
    const { pattern } = desk.get();
    await benches[0]!.finish(WAYS);
    expect(desk.get()).toMatchObject({ ways: WAYS, working: false });
    expect(desk.get().pattern).toBe(pattern);
  });

  test('does not wait for the other ways to sew an older drawing', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    await benches[0]!.finish(patternNamed('Ebb'));
    want(drawing('Flood'));
    vi.advanceTimersByTime(50);
    expect(benches.map(({ asked, stopped }) => [asked.at(-1), stopped])).toEqual([["Ebb's ways", true], ['Flood', false]]);
    await benches[1]!.finish(patternNamed('Flood'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Flood' } }, ways: null });
    await benches[1]!.finish(WAYS);
    expect(desk.get().ways).toBe(WAYS);
  });

  test('leaves the ways as they are where only a choice or a name changes, and looks for them again where the drawing does', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    const ebb = drawing('Ebb');
    want(ebb);
    await benches[0]!.finish(patternNamed('Ebb'));
    await benches[0]!.finish(WAYS);
    const chosen = choose(ebb, { way: 'rows' });
    const named = rename(ebb, 'Neap');
    if (!chosen.ok || !named.ok) throw new Error('refused');
    for (const block of [chosen.value, named.value]) {
      want(block);
      await benches[0]!.finish(patternNamed(block.name));
      expect(desk.get()).toMatchObject({ pattern: { block: { name: block.name } }, ways: WAYS, working: false });
    }
    expect(benches[0]!.asked).toEqual(['Ebb', "Ebb's ways", 'Ebb', 'Neap']);
    want({ ...ebb, seams: [[[0, 1], [3, 1]]] });
    await benches[0]!.finish(patternNamed('Ebb'));
    expect(desk.get().ways).toBeNull();
    want(ebb);
    vi.advanceTimersByTime(50);
    await benches[1]!.finish(patternNamed('Ebb'));
    expect(benches[1]!.asked).toEqual(['Ebb', "Ebb's ways"]);
  });

  test('stands alone where the search for other ways breaks', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    await benches[0]!.finish(patternNamed('Ebb'));
    await benches[0]!.fail();
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, ways: [], problem: null, working: false });
  });

  test('waits until the hand rests, and is passed over where the hand has drawn on', async () => {
    const { benches, begin } = heldBenches();
    const rest = createRest();
    const { desk, want } = createDesk(begin, rest.reached);
    want(drawing('Ebb'));
    rest.stir();
    await benches[0]!.finish(patternNamed('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: null, working: true });
    rest.settle();
    await everything();
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, working: false });
    want(drawing('Flood'));
    vi.advanceTimersByTime(50);
    rest.stir();
    await benches[1]!.finish(patternNamed('Flood'));
    want(drawing('Slack'));
    rest.settle();
    await everything();
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, working: true });
    expect(benches[1]!.asked).toEqual(['Flood', 'Slack']);
  });

  test('is a first one where the search takes long; a better one takes its place, and only then the other ways are looked for', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    const bench = benches[0]!;
    bench.standing = { looking: true, fewest: { pieces: 29, bound: 25 }, patterns: 1 };
    await bench.finish(patternNamed('Ebb, first'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb, first' } }, working: false, standing: { looking: true } });
    const first = desk.get().pattern;
    bench.standing = { looking: true, fewest: { pieces: 29, bound: 27 }, patterns: 1 };
    await bench.finish(patternNamed('not collected again'));
    expect(desk.get().pattern).toBe(first);
    expect(desk.get().standing).toMatchObject({ fewest: { bound: 27 } });
    bench.standing = { looking: false, fewest: { pieces: 28, bound: 28 }, patterns: 2 };
    await bench.finish(patternNamed('Ebb, last'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb, last' } }, ways: null, standing: { looking: false } });
    expect(bench.asked).toEqual(['Ebb', 'better', 'better', "Ebb's ways"]);
  });

  test('is not made better once there is a newer drawing', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    benches[0]!.standing = { looking: true, fewest: null, patterns: 1 };
    await benches[0]!.finish(patternNamed('Ebb'));
    want(drawing('Flood'));
    vi.advanceTimersByTime(50);
    expect(benches.map(({ asked, stopped }) => [asked, stopped])).toEqual([[['Ebb', 'better'], true], [['Flood'], false]]);
    await benches[0]!.finish(patternNamed('Ebb, better'));
    await benches[1]!.finish(patternNamed('Flood'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Flood' } }, standing: DONE });
  });

  test('stays where the search for a better one breaks', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin, createRest().reached);
    want(drawing('Ebb'));
    benches[0]!.standing = { looking: true, fewest: null, patterns: 1 };
    await benches[0]!.finish(patternNamed('Ebb'));
    await benches[0]!.fail();
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, problem: null, standing: { looking: false } });
    expect(benches[1]!.asked).toEqual(["Ebb's ways"]);
  });
});
