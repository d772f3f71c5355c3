import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { caseFile, inside, planned } from './program.ts';

type Written = { readonly fabrics: readonly { readonly id: string; readonly name: string; readonly color: string }[]; readonly colourways?: unknown };

const STAR = JSON.parse(readFileSync(caseFile('sawtooth-star-6'), 'utf8')) as Written;
const TIDE: Readonly<Record<string, { readonly name: string; readonly color: string }>> = Object.fromEntries(
  STAR.fabrics.map(({ id }, i) => [id, { name: `Tide ${i + 1}`, color: ['#20304a', '#e8e2d4', '#b4553a'][i % 3]! }]),
);

const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));
const written = (name: string, changes: object): string => {
  writeFileSync(join(folder, name), JSON.stringify({ ...STAR, ...changes }));
  return join(folder, name);
};

const kept = written('kept.json', { colourways: [{ name: 'Tide', looks: TIDE }] });
const painted = written('painted.json', { fabrics: STAR.fabrics.map(({ id }) => ({ id, ...TIDE[id] })) });

describe('--colourway', () => {
  it('plans the block as if it had been painted so from the start: the same cuts, the same cloth to buy', async () => {
    expect(await planned(kept, '--colourway', 'Tide')).toEqual(await planned(painted));
    expect(await planned(kept)).toEqual(await planned(caseFile('sawtooth-star-6')));
  });

  it('that is not in the file is answered with those that are', async () => {
    const answer = await inside('check', kept, '--colourway', 'Ebb');
    expect(answer).toMatchObject({ exit: 2, print: '' });
    expect(answer.complaint).toContain('The block has no colourway "Ebb"; it has "Tide".');
    expect((await inside('check', painted, '--colourway', 'Ebb')).complaint).toContain('none is kept in it');
  });
});
