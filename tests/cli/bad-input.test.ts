import { mkdirSync, mkdtempSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { caseFile, inside, piecewright } from './program.ts';

const folder = mkdtempSync(join(tmpdir(), 'piecewright-'));
let files = 0;

function written(content: string | Uint8Array): string {
  const file = join(folder, `${++files}.block.json`);
  writeFileSync(file, content);
  return file;
}

const SHOO_FLY = JSON.parse(readFileSync(caseFile('shoo-fly-12'), 'utf8')) as { readonly patches: readonly object[] };
const text = (changes: object): string => JSON.stringify({ ...SHOO_FLY, ...changes });
/** The block with one more patch. */
const patched = (points: unknown, fabric = 'white'): string => text({ patches: [...SHOO_FLY.patches, { fabric, points }] });
const finished = (width: string): string => text({ finished: { width, height: '12', unit: 'in' } });

/** @returns a file that claims 100 MB and takes no room on the disk */
function hundredMegabytes(): string {
  const file = written('');
  truncateSync(file, 100_000_000);
  return file;
}

function folderNamed(name: string): string {
  const path = join(folder, name);
  mkdirSync(path);
  return path;
}

/** What is wrong, the file, and what the sentence must name. */
const FAULTS: readonly (readonly [string, () => string, RegExp])[] = [
  ['not JSON', () => written('{ "format": "piecewright/block",\n  "name": Shoo }'), /not JSON.*line 2/],
  ['an empty file', () => written(''), /not JSON/],
  ['a picture', () => written(Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xd8])), /UTF-8/],
  ['another format', () => written('{ "format": "something/else" }'), /"piecewright\/block"/],
  ['a version from the future', () => written(text({ version: 2 })), /version 2.*newer/],
  ['no fabrics', () => written(text({ fabrics: undefined })), /"fabrics"/],
  ['an unknown fabric', () => written(patched([[0, 0], [1, 0], [1, 1]], 'velvet')), /Patch 6.*"velvet".*"mustard"/],
  ['two points', () => written(patched([[0, 0], [1, 0]])), /Patch 6.*at least 3/],
  ['repeated points', () => written(patched([[0, 0], [1, 0], [1, 0], [0, 1]])), /Patch 6.*points 2 and 3/],
  ['points on a line', () => written(patched([[0, 0], [1, 0], [2, 0], [0, 1]])), /Patch 6.*on one line/],
  ['an outline that crosses itself', () => written(patched([[0, 0], [2, 2], [2, 0], [0, 2]])), /Patch 6.*crosses/],
  ['a point off the grid', () => written(patched([[0, 0], [4, 0], [0, 1]])), /Patch 6, point 2.*off the grid/],
  ['NaN', () => written(patched([[0, 0], [1, 0], [1, 1]]).replace('[1,1]', '[1,NaN]')), /NaN/],
  ['a fraction with denominator 0', () => written(patched([[0, 0], ['1/0', 0], [1, 1]])), /"1\/0".*denominator is 0/],
  ['a width of 0', () => written(finished('0')), /finished width.*more than 0/],
  ['a negative width', () => written(finished('-12')), /finished width.*more than 0/],
  ['a width of 201 in.', () => written(finished('201')), /at most 200 in\./],
  ['a grid of 65 columns', () => written(text({ grid: { columns: 65, rows: 3 } })), /65 columns.*1 to 64/],
  ['5,001 patches', () => written(text({ patches: Array.from({ length: 5001 }, () => SHOO_FLY.patches[0]) })), /5,001 patches.*5,000/],
  ['a name of 10,000 characters', () => written(text({ name: 'x'.repeat(10_000) })), /name.*10,000 characters/],
  ['a name that would clear the screen', () => written(text({ name: 'Shoo\u001b[2J Fly' })), /name.*cannot be printed/],
  ['a file of 100 MB', hundredMegabytes, /100 MB/],
  ['a seam off the block', () => written(text({ seams: [[[0, 1], [4, 1]]] })), /Seam 1, end 2.*off the grid/],
  ['a method nobody knows', () => written(text({ choices: { methods: { 'flying geese': 'magic' } } })), /method.*"magic"/],
  ['no such file', () => join(folder, 'lost.block.json'), /no file ".*lost\.block\.json"/],
  ['a path through a file', () => join(written('{}'), 'x'), /no file/],
  ['a folder', () => folderNamed('blocks'), /is a folder/],
  ['no such file, its name long and steering', () => join(folder, `${'long'.repeat(1000)}\u001b[31m\n`), /no file|cannot be read/],
];

describe('a bad file ends with 1 and exactly one sentence', () => {
  it.each(FAULTS)('%s', async (_, file, sentence) => {
    const { exit, out, err } = await piecewright(['plan', file(), '--json']);
    expect({ exit, out }).toEqual({ exit: 1, out: '' });
    expect(err).toMatch(sentence);
    expect(err).toMatch(/^[^\n]+[.!?]\n$/);
    expect(err).not.toMatch(/^ *at |\bat .*:\d+:\d+/);
    expect(err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/);
    expect(err.length).toBeLessThan(600);
  });

  it.each(['plan', 'check'])('%s and what is piped in', async (command) => {
    const { exit, out, err } = await piecewright([command, '-'], { input: '[1, 2' });
    expect({ exit, out }).toEqual({ exit: 1, out: '' });
    expect(err).toMatch(/^The file is not JSON[^\n]*\n$/);
  });

  it('a pipe without end is not read to its end', async () => {
    const { exit, err } = await piecewright(['plan', '-'], { input: ' '.repeat(30_000_000) });
    expect(exit).toBe(1);
    expect(err).toMatch(/^Standard input goes on after 26 MB[^\n]*\n$/);
  });
});

describe('strange but sound', () => {
  it('HTML in a name is only text', async () => {
    const name = '<img src=x onerror=alert(1)> & <b>Fly</b>';
    const file = written(text({ name }));
    const { print, exit } = await inside('plan', file);
    expect(exit).toBe(0);
    expect(print.startsWith(`${name}\n`)).toBe(true);
    expect(JSON.parse((await inside('plan', file, '--json')).print)).toMatchObject({ block: { name } });
  });

  it('a byte order mark and Windows line ends', async () => {
    const file = written(`\ufeff${JSON.stringify(SHOO_FLY, null, 2).replaceAll('\n', '\r\n')}`);
    expect(await inside('check', file)).toMatchObject({ exit: 0 });
  });

  it('a method for a kind of unit that the drawing does not have', async () => {
    const file = written(text({ choices: { methods: { 'flying geese': 'triangles' } } }));
    expect(await inside('check', file)).toMatchObject({ exit: 0 });
  });
});
