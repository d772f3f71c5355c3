import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { blank } from '../../src/block/blank.ts';
import type { Block } from '../../src/block/block.ts';
import { createDesk, type Bench } from '../../src/app/pattern-desk.ts';
import type { Result } from '../../src/measure/problem.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';

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

/** A bench whose patterns are ready when the test says so. */
interface HeldBench extends Bench {
  readonly asked: string[];
  stopped: boolean;
  finish: (result: Result<Pattern>) => Promise<void>;
  fail: () => Promise<void>;
}

function heldBenches(): { readonly benches: HeldBench[]; readonly begin: () => Bench } {
  const benches: HeldBench[] = [];
  const begin = (): Bench => {
    let resolve: (result: Result<Pattern>) => void = () => undefined;
    let reject: (error: Error) => void = () => undefined;
    const bench: HeldBench = {
      asked: [],
      stopped: false,
      makePattern: (block) => {
        bench.asked.push(block.name);
        return new Promise((yes, no) => ([resolve, reject] = [yes, no]));
      },
      stop: () => void (bench.stopped = true),
      finish: async (result) => {
        resolve(result);
        await Promise.resolve();
      },
      fail: async () => {
        reject(new Error('stopped'));
        await Promise.resolve();
        await Promise.resolve();
      },
    };
    benches.push(bench);
    return bench;
  };
  return { benches, begin };
}

const patternNamed = (name: string): Result<Pattern> => ({ ok: true, value: { block: { name } } as Pattern });

describe('the pattern of the newest drawing', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  test('appears when it is worked out; until then the desk says that it is working', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin);
    want(drawing('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: null, working: true });
    await benches[0]!.finish(patternNamed('Ebb'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, problem: null, working: false });
  });

  test('is the only one that appears: an older one that ends late is passed over, the newest is worked out next', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin);
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
    const { desk, want } = createDesk(begin);
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
    const { desk, want } = createDesk(begin);
    want(drawing('Ebb'));
    await benches[0]!.finish(patternNamed('Ebb'));
    want(drawing('Flood'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Ebb' } }, working: true });
  });

  test('gives way to a sentence where the drawing has none', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin);
    want(drawing('Ebb'));
    await benches[0]!.finish({ ok: false, problem: { code: 'locked', sentence: 'These patches lock each other.' } });
    expect(desk.get()).toMatchObject({ pattern: null, problem: { sentence: 'These patches lock each other.' }, working: false });
  });

  test('comes again after a bench has broken', async () => {
    const { benches, begin } = heldBenches();
    const { desk, want } = createDesk(begin);
    want(drawing('Ebb'));
    await benches[0]!.fail();
    expect(desk.get()).toMatchObject({ problem: { code: 'pattern-stopped' }, working: false });
    want(drawing('Flood'));
    expect(benches).toHaveLength(2);
    await benches[1]!.finish(patternNamed('Flood'));
    expect(desk.get()).toMatchObject({ pattern: { block: { name: 'Flood' } }, problem: null, working: false });
  });
});
