import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { getDocumentProxy } from 'unpdf';
import { afterAll, describe, expect, it } from 'vitest';
import { formatHouseStyle } from '../../src/files/house-style-file.ts';
import { usualStyle } from '../../src/pattern/house-style.ts';
import { caseFile, fileAt, inside, piecewright } from './program.ts';

const folder = mkdtempSync(join(tmpdir(), 'pattern-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);
const EDDY = fileAt('demo-blocks/05-eddy.block.json');
const STAR = caseFile('friendship-star-6');
const read = async (name: string) => getDocumentProxy(new Uint8Array(readFileSync(at(name))));

describe('piecewright pattern', () => {
  it('writes the pages, the same bytes twice, and says where, and what to measure', async () => {
    const { exit, out, err } = await piecewright(['pattern', EDDY, '-o', at('eddy.pdf')]);
    expect([exit, err]).toEqual([0, '']);
    expect(out).toMatch(/^The pattern of Eddy is on \d+ pages, in ".*eddy\.pdf"\. Print at actual size, and measure the squares first\.\n$/);
    expect((await inside('pattern', EDDY, '-o', at('again.pdf'))).exit).toBe(0);
    expect(readFileSync(at('again.pdf')).equals(readFileSync(at('eddy.pdf')))).toBe(true);
  });

  it('follows a house style, and what is said on the command line before it', async () => {
    writeFileSync(at('style.json'), formatHouseStyle({ ...usualStyle('in'), paper: 'a4', foot: 'guild.example', maker: 'The Guild' }));
    expect((await inside('pattern', EDDY, '-o', at('a4.pdf'), '--style', at('style.json'), '--landscape', '--columns', '2', '--hatches', '--large')).exit).toBe(0);
    const pdf = await read('a4.pdf');
    const [, , width, height] = (await pdf.getPage(2)).view as [number, number, number, number];
    expect([width.toFixed(1), height.toFixed(1)]).toEqual(['841.9', '595.3']);
    const words = (await (await pdf.getPage(2)).getTextContent()).items.map((item) => ('str' in item ? item.str : '')).join(' ');
    expect(words).toContain('guild.example');
  });

  it('writes the whole pattern as Markdown, and its cutting list as CSV', async () => {
    expect((await inside('pattern', STAR, '-o', at('star.md'))).exit).toBe(0);
    const text = readFileSync(at('star.md'), 'utf8');
    expect(text).toMatch(/^# Friendship Star\n/);
    expect(text).toMatch(/^\| 1 \| 2 squares, 2⅞ in\. \| A \|$/m);
    expect(text).not.toMatch(/\{(length|unit|cut|count|cloth|kind) /);
    expect((await inside('pattern', STAR, '-o', at('star.csv'))).exit).toBe(0);
    expect(readFileSync(at('star.csv'), 'utf8')).toMatch(/^\ufefffabric,line,count,/);
  });

  it('writes every diagram alone, and pieces for a cutting machine', async () => {
    const { print } = await inside('pictures', STAR, '-o', at('star.zip'));
    const files = unzipSync(new Uint8Array(readFileSync(at('star.zip'))));
    expect(print).toContain(`${Object.keys(files).length} pictures of Friendship Star`);
    expect(Object.keys(files)).toContain('step-01-unit-a-1.svg');
    for (const svg of Object.values(files).map((file) => new TextDecoder().decode(file))) {
      expect(svg).toMatch(/^<\?xml [^>]*\?>\n<svg [^>]*viewBox="0 0 [\d.]+ [\d.]+">\n<title>[^<]+<\/title>/);
    }
    expect((await inside('cutter', STAR, '-o', at('star.svg'), '--mat', '9')).exit).toBe(0);
    expect(readFileSync(at('star.svg'), 'utf8')).toContain('width="9in"');
  });

  it.each([
    [['pattern', EDDY], 2, '-o OUT.pdf'],
    [['pattern', STAR, '-o', at('x.doc')], 2, 'does not end in .pdf, .md or .csv'],
    [['pattern', STAR, '-o', at('x.pdf'), '--paper', 'a5'], 2, 'choose letter or a4'],
    [['pattern', STAR, '-o', at('x.pdf'), '--columns', '3'], 2, 'neither 1 nor 2'],
    [['pattern', STAR, '-o', at('x.pdf'), '--language', 'fr'], 2, 'choose en or de'],
    [['pattern', STAR, '-o', at('x.pdf'), '--style', at('none.json')], 1, 'cannot be read'],
    [['pattern', STAR, '-o', at('x.pdf'), '--style', EDDY], 1, '--style: '],
    [['pattern', STAR, '-o', at('x.pdf'), '--json'], 2, 'written to a file'],
    [['pattern', STAR, '-o', at('nowhere/x.pdf')], 1, 'its folder is not there'],
    [['pictures', EDDY, '-o', at('x.pdf')], 2, 'does not end in .zip'],
    [['cutter', STAR, '-o', at('x.svg'), '--mat', '30 cm'], 2, 'measured in inches'],
    [['cutter', STAR, '-o', at('x.svg'), '--mat', '0'], 2, 'a mat is wider'],
    [['cutter', STAR, '-o', at('x.svg'), '--mat', '1'], 1, 'choose a wider one'],
    [['plan', EDDY, '--hatches'], 2, 'goes with pattern and pictures, not with plan'],
    [['pattern', STAR, '-o', at('x.pdf'), '--mat', '12'], 2, 'goes with cutter, not with pattern'],
  ] as const)('%s ends with one sentence', async (args, code, words) => {
    const { print, complaint, exit } = await inside(...args);
    expect([print, exit]).toEqual(['', code]);
    expect(complaint).toContain(words);
    expect(complaint).not.toContain('\n');
    for (const name of ['x.pdf', 'x.svg', 'x.doc']) expect(() => statSync(at(name))).toThrow();
  });
});
