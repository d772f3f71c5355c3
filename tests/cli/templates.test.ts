import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocumentProxy } from 'unpdf';
import { afterAll, describe, expect, it } from 'vitest';
import { caseFile, fileAt, inside, piecewright } from './program.ts';

const folder = mkdtempSync(join(tmpdir(), 'templates-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);
const LOFTS = fileAt('demo-blocks/09-net-lofts.block.json');
const POINT = fileAt('demo-blocks/13-kittiwake-point.block.json');

describe('piecewright templates', () => {
  it('writes a PDF of the templates and says where, and what to measure', async () => {
    const { exit, out, err } = await piecewright(['templates', LOFTS, '-o', at('lofts.pdf')]);
    expect([exit, err]).toEqual([0, '']);
    expect(out).toMatch(/^The templates of Net Lofts are on 1 page, in ".*lofts\.pdf"\. Print at actual size, and measure the squares first\.\n$/);
    const pdf = await getDocumentProxy(new Uint8Array(readFileSync(at('lofts.pdf'))));
    expect([pdf.numPages, (await pdf.getPage(1)).view]).toEqual([1, [0, 0, 612, 792]]);
  });

  it('lays out for A4, for many blocks, with every piece of a kind cut round a template', async () => {
    const { exit } = await inside('templates', LOFTS, '--out', at('a4.pdf'), '--paper', 'a4', '--blocks', '7', '--method', 'peak=template');
    expect(exit).toBe(0);
    const pdf = await getDocumentProxy(new Uint8Array(readFileSync(at('a4.pdf'))));
    const page = await pdf.getPage(1);
    expect(page.view[2]).toBeCloseTo(595.276, 3);
    const words = (await page.getTextContent()).items.map((item) => ('str' in item ? item.str : '')).join(' ');
    expect(words).toContain('to cut for 7 blocks');
    expect(words).toContain('Cut 21: Deck');
    expect(words).toContain('Cut 21 and 21 reversed');
  });

  it('writes the foundations of a block that is sewn onto some', async () => {
    const { exit, print: out } = await inside('templates', fileAt('demo-blocks/05-eddy.block.json'), '-o', at('eddy.pdf'), '--way', 'foundation');
    expect([exit, out]).toEqual([0, expect.stringMatching(/^The foundations of Eddy are on 8 pages, in ".*eddy\.pdf"\./)]);
    const pdf = await getDocumentProxy(new Uint8Array(readFileSync(at('eddy.pdf'))));
    const words = (await (await pdf.getPage(1)).getTextContent()).items.map((item) => ('str' in item ? item.str : '')).join(' ');
    expect(words).toContain('the mirror image of its part of the block');
  });

  it('writes a drawing (SVG) for every page', async () => {
    expect((await inside('templates', POINT, '-o', at('point.svg'))).exit).toBe(0);
    expect(readdirSync(folder).filter((name) => name.endsWith('.svg')).sort()).toEqual(['point-1.svg', 'point-2.svg']);
    expect(readFileSync(at('point-1.svg'), 'utf8')).toContain('width="612pt" height="792pt"');
  });

  it.each([
    [['templates', LOFTS], 2, '-o OUT.pdf'],
    [['templates', LOFTS, '-o', at('lofts.png')], 2, 'neither in .pdf nor in .svg'],
    [['templates', LOFTS, '-o', at('x.pdf'), '--paper', 'a5'], 2, 'choose letter or a4'],
    [['templates', LOFTS, '-o', at('x.pdf'), '--json'], 2, 'written to a file'],
    [['plan', LOFTS, '-o', at('x.pdf')], 2, 'goes with templates'],
    [['check', LOFTS, '--paper', 'a4'], 2, 'goes with templates'],
    [['templates', caseFile('shoo-fly-12'), '-o', at('x.pdf')], 1, 'needs no templates'],
    [['templates', LOFTS, '-o', at('nowhere/x.pdf')], 1, 'its folder is not there'],
    [['templates', LOFTS, '-o', join(LOFTS, 'x.pdf')], 1, 'its folder is not there'],
  ] as const)('%s ends with one sentence', async (args, code, words) => {
    const { print, complaint, exit } = await inside(...args);
    expect([print, exit]).toEqual(['', code]);
    expect(complaint).toContain(words);
    expect(complaint).not.toContain('\n');
    expect(() => statSync(at('x.pdf'))).toThrow();
  });
});
