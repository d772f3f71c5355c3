import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Data } from './program.ts';
import { caseFile, fileAt, piecewright, planned } from './program.ts';

/** What a published pattern says; `source` names it. Methods are those of the pattern, and the usual ones for kinds it does not have. */
interface Published {
  readonly source: string;
  readonly methods: Readonly<Record<string, string>>;
  readonly unfinished: string;
  readonly patches: number;
  readonly partialSeams?: number;
  readonly units: Readonly<Record<string, number>>;
  readonly cuts: readonly { readonly fabric: string; readonly quantity: number; readonly width: string; readonly height: string }[];
}

const ENDING = '.expect.json';
const CASES = readdirSync(fileAt('tests/cases'))
  .filter((file) => file.endsWith(ENDING))
  .map((file) => {
    const published = JSON.parse(readFileSync(fileAt(`tests/cases/${file}`), 'utf8')) as Published;
    return { name: file.slice(0, -ENDING.length), source: published.source, published };
  });

const methodsOf = ({ methods }: Published): string[] =>
  Object.entries(methods).flatMap(([kind, method]) => ['--method', `${kind}=${method}`]);

/** Everything a published pattern states and a plan must repeat, in one form for both. */
function agree(data: Data, published: Published): void {
  const lines = (cuts: Published['cuts']): string[] =>
    cuts.map(({ fabric, quantity, width, height }) => `${fabric}: ${quantity} of ${width} by ${height}`).sort();
  expect(lines(data.cuts)).toEqual(lines(published.cuts));
  expect(data.patches).toBe(published.patches);
  expect(data.seams).toBe(published.patches - 1);
  expect(data.partialSeams).toBe(published.partialSeams ?? 0);
  expect(data.setInSeams).toBe(0);
  expect(data.block.unfinished).toEqual([published.unfinished, published.unfinished]);
  const counts: Record<string, number> = {};
  for (const { kind, count } of data.units) if (kind !== 'joined unit') counts[kind] = (counts[kind] ?? 0) + count;
  expect(counts).toEqual(published.units);
  expect(data.proof.holds).toBe(true);
}

describe('the plan of a published block is the published one', () => {
  it('for thirteen blocks', () => expect(CASES).toHaveLength(13));

  it.each(CASES)('$name, after $source', async ({ name, published }) => {
    agree(await planned(caseFile(name), ...methodsOf(published)), published);
  });
});

describe('the program itself prints them', () => {
  it.each(CASES.filter(({ name }) => ['shoo-fly-12', 'sawtooth-star-6-four-at-a-time', 'whirl-9'].includes(name)))(
    '$name, after $source',
    async ({ name, published }) => {
      const { exit, out, err } = await piecewright(['plan', caseFile(name), '--json', ...methodsOf(published)]);
      expect({ exit, err }).toEqual({ exit: 0, err: '' });
      agree(JSON.parse(out) as Data, published);
    },
  );
});
