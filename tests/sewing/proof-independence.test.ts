import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** @returns what a file of the proof takes from other stages as anything but a type */
function borrowed(text: string): string[] {
  const imports = [...text.matchAll(/^(import|export)\s+(type\s+)?[^;]*?from\s+'([^']+)'/gm)];
  return imports.filter(([, , type, from]) => !type && !/^\.\/proof-[a-z]+\.ts$/.test(from)).map(([, , , from]) => from);
}

test('a checker that shares an algorithm with what it checks proves nothing: the proof takes only types from elsewhere', () => {
  const files = readdirSync('src/sewing').filter((file) => /^proof.*\.ts$/.test(file));
  expect(files.length).toBeGreaterThan(5);
  expect(files.flatMap((file) => borrowed(readFileSync(`src/sewing/${file}`, 'utf8')))).toEqual([]);
});

test('that check can fail', () => {
  expect(borrowed("import type { Cut } from '../cutting/cut.ts';\nimport { halfSquare } from '../cutting/formulas.ts';")).toEqual([
    '../cutting/formulas.ts',
  ]);
  expect(borrowed("import { split,\n  side } from '../geometry/convex.ts';\nimport { say } from './proof-number.ts';")).toEqual([
    '../geometry/convex.ts',
  ]);
});
