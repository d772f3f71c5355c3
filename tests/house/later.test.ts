import { existsSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';

const ROOT = new URL('../../', import.meta.url);
const STATIC = /^(?:import|export)\s+(?!type\b)(?:[^'"]*?from\s+)?['"](\.[^'"]+)['"]/gmu;

/** @returns every file of ours that comes along with a file: imported at once, not as types alone and not when first used */
function comesWith(file: string, known = new Set<string>()): ReadonlySet<string> {
  if (known.has(file)) return known;
  known.add(file);
  if (!/\.tsx?$/u.test(file)) return known;
  for (const [, wanted] of readFileSync(new URL(file, ROOT), 'utf8').matchAll(STATIC)) {
    const there = posix.join(posix.dirname(file), wanted!);
    if (existsSync(new URL(there, ROOT))) comesWith(there, known);
  }
  return known;
}

const isGerman = (file: string): boolean => /german/u.test(file);

describe('what is fetched when somebody first wants it', () => {
  const first = ['src/app/main.tsx', 'src/app/pattern-worker.ts'].flatMap((file) => [...comesWith(file)]);

  it('is German, wherever it stands', () => {
    expect(first.filter(isGerman)).toEqual([]);
  });

  it('is what a pattern tells only when it is asked', () => {
    expect(first.filter((file) => /src\/pattern\/(english|document\/|phrases\/english\/shown)/u.test(file))).toEqual([]);
  });

  it('would be found: the engine comes along with the worker, German with the language', () => {
    expect(first).toContain('src/pattern/phrases/english/written.ts');
    expect(first.length).toBeGreaterThan(200);
    expect([...comesWith('src/pattern/german.ts')].filter(isGerman)).toContain('src/sewing/phrases/german.ts');
  });
});
