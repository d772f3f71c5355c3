import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { methodsFor } from '../../src/cutting/methods.ts';
import { report } from '../../src/cli/run.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { caseFile, fileAt, inside, piecewright } from './program.ts';

const FILE = caseFile('shoo-fly-12');

describe('wrong usage ends with 2 and one sentence that names what is possible', () => {
  it.each([
    [[], 'piecewright plan FILE'],
    [['sew', FILE], 'plan, pattern, sizes, templates, pictures, cutter and check'],
    [['plan'], 'plan FILE'],
    [['check'], 'check FILE'],
    [['plan', FILE, FILE], 'One file at a time'],
    [['plan', FILE, '--colour', 'red'], '--method, --trim'],
    [['plan', FILE, '-x'], '--method, --trim'],
    [['plan', FILE, '--trim'], '--trim needs a value'],
    [['plan', FILE, '--json=yes'], 'stands alone'],
    [['check', FILE, '--json'], 'goes with plan'],
    [['plan', FILE, '--trim', 'wide'], '--trim'],
    [['plan', FILE, '--trim', '-1/8'], 'below zero'],
    [['plan', FILE, '--trim', '3'], 'at most 2 in.'],
    [['plan', FILE, '--seam', '0'], 'more than 0'],
    [['plan', FILE, '--seam', '1/0'], 'denominator'],
    [['plan', FILE, '--seam', '7 mm'], 'inches'],
    [['plan', FILE, '--ruler', 'NaN'], '--ruler'],
    [['plan', FILE, '--width', '100000'], 'at most 200 in.'],
    [['plan', FILE, '--blocks', '0'], 'from 1 to 10,000'],
    [['plan', FILE, '--blocks', '2.5'], 'whole number'],
    [['plan', FILE, '--blocks', '1e2'], 'whole number'],
    [['plan', FILE, '--way', 'quickest'], '"standard units", "fewest pieces"'],
    [['plan', FILE, '--method', 'flying geese'], 'half-square triangle=eight-at-a-time'],
    [['plan', FILE, '--method', 'flying geese=triangles=triangles'], 'KIND=METHOD'],
    [['plan', FILE, '--method', 'swans=triangles'], 'half-square triangle, quarter-square triangle'],
    [['plan', FILE, '--method', 'square=triangles'], 'half-square triangle, quarter-square triangle'],
    [['plan', FILE, '--method', 'toString=triangles'], 'half-square triangle, quarter-square triangle'],
    [['plan', FILE, '--method', 'half-square triangle=stitch-and-flip'], methodsFor('half-square triangle').join(' or ')],
    [['plan', FILE, '--method', 'magic'], 'the methods are usual, two-at-a-time'],
    [['plan', FILE, '--method', 'A=magic'], 'for unit A there is no "magic"'],
    [['plan', FILE, '--method', 'Z=triangles'], 'this block has no unit Z; the units that have methods are A'],
    [['plan', FILE, '--method', 'block=triangles'], 'the block is not one unit by itself; the units that have methods are A'],
    [['plan', FILE, '--method', 'B=triangles'], 'unit B is joined of others, or comes but once'],
    [['plan', FILE, '--method', 'A=stitch-and-flip'], 'cannot be cut stitch-and-flip; choose two-at-a-time or'],
    [['plan', FILE, '--method', 'flying geese=eight-at-a-time'], methodsFor('flying geese').join(' or ')],
    [['plan', 'no-such-file', '--way', 'quickest'], '"standard units"'],
  ])('%j', async (args, possible) => {
    const { print, complaint, exit } = await inside(...args);
    expect({ print, exit }).toEqual({ print: '', exit: 2 });
    expect(complaint).toContain(possible);
    expect(complaint).not.toContain('\n');
  });

  it('of the program itself', async () => {
    const { exit, out, err } = await piecewright(['plan', FILE, '--method', 'flying geese=eight-at-a-time']);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toMatch(/^--method: .*\n$/);
  });
});

describe('asked about itself, the program', () => {
  it('tells how to use it, with every kind and every method', async () => {
    const { print, exit } = await inside('--help');
    expect(exit).toBe(0);
    for (const kind of ['half-square triangle', 'flying geese', 'peak', 'free unit'] as const) {
      expect(print).toMatch(new RegExp(`^ +${kind} +${methodsFor(kind).join(', ')}$`, 'm'));
    }
    expect(await inside('plan', '-h')).toMatchObject({ print, exit });
  });

  it('tells its version, that of the package', async () => {
    const { version } = JSON.parse(readFileSync(fileAt('package.json'), 'utf8')) as { version: string };
    expect(await inside('--version')).toMatchObject({ print: `${version}\n`, exit: 0 });
  });
});

describe('what the program reads and writes', () => {
  it('a block that is piped in is planned like the file', async () => {
    const { exit, out } = await piecewright(['plan', '-', '--json'], { input: readFileSync(FILE, 'utf8') });
    const { print } = await inside('plan', FILE, '--json');
    expect(exit).toBe(0);
    expect(out).toBe(print);
  });

  it('a reader that hangs up early is no fault', async () => {
    const { exit, err } = await piecewright(['plan', caseFile('bears-paw-14'), '--json'], { hangUp: true });
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
  });

  it('a failure nobody foresaw is one sentence too', async () => {
    const planted = 'Intl.Segmenter.prototype.segment=()=>{throw(Error(`planted\\nhere`))}';
    const { exit, out, err } = await piecewright(['plan', FILE], {
      env: { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(planted)}` },
    });
    expect({ exit, out }).toEqual({ exit: 1, out: '' });
    expect(err).toMatch(/^Piecewright failed.*\(planted\).*\n$/);
  });
});

describe('a pattern whose proof does not hold', () => {
  const block = parseBlock(readFileSync(FILE, 'utf8'));
  const made = block.ok ? makePattern(block.value) : block;
  if (!made.ok) throw new Error(made.problem.sentence);
  const faulty: Pattern = { ...made.value, proof: { holds: false, seams: 12, faults: ['Cut 2 is 1/8 in. too small.'] } };

  it('is never printed without saying so', () => {
    const text = report('plan', faulty, false);
    expect(text.exit).toBe(1);
    expect(text.complaint).toContain('Cut 2 is 1/8 in. too small.');
    expect(text.print.indexOf('Do not cut yet')).toBeGreaterThan(0);
    expect(text.print.indexOf('Do not cut yet')).toBeLessThan(text.print.indexOf('Cutting'));
    expect(JSON.parse(report('plan', faulty, true).print)).toMatchObject({ proof: { holds: false } });
  });

  it('does not pass a check', () => {
    expect(report('check', faulty, false)).toMatchObject({ exit: 1, print: '' });
    expect(report('check', made.value, false)).toMatchObject({ exit: 0, complaint: null });
  });
});
