import { readFileSync } from 'node:fs';
import { getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { parseBlock } from '../../../src/files/block-file.ts';
import { faceMetrics } from '../../../src/pattern/pages/face-file.ts';
import { withFractions } from '../../../src/pattern/pages/face.ts';
import { pagesPdf, plainPdf } from '../../../src/pattern/pages/page-pdf.ts';
import { pageSvg } from '../../../src/pattern/pages/page-svg.ts';
import type { Document } from '../../../src/pattern/pages/page.ts';
import { MARGIN } from '../../../src/pattern/pages/paper.ts';
import { templatePages } from '../../../src/pattern/pages/template-pages.ts';
import { byTemplate, faces, setting, spotsOf, texts } from './laid.ts';
import { infoOf, pagesIn } from './pdf-reader.ts';

const read = parseBlock(readFileSync('demo-blocks/13-kittiwake-point.block.json', 'utf8'));
if (!read.ok) throw new Error(read.problem.sentence);
const block: Block = read.value;
const laid = (paper: 'letter' | 'a4'): Document => templatePages(byTemplate(block), paper, setting);
const letter = laid('letter');
const bytes = await pagesPdf(letter, faces);

describe('templates as PDF, read back by another program', () => {
  test('have their pages, their words in order and their lines, every corner to a hundredth of a point', async () => {
    const found = await pagesIn(bytes);
    expect(found).toHaveLength(letter.pages.length);
    for (const [i, { width, height, drawn, said }] of found.entries()) {
      const page = letter.pages[i]!;
      expect([width, height]).toEqual([page.width, page.height]);
      expect(said).toEqual(texts(page).map(({ text }) => text));
      const paths = page.items.filter((item) => item.kind === 'path');
      expect(drawn).toHaveLength(paths.length);
      for (const [k, path] of paths.entries()) {
        for (const [at, [x, y]] of spotsOf(path).entries()) {
          expect(Math.hypot(drawn[k]![at]![0] - x, drawn[k]![at]![1] - y)).toBeLessThan(0.01);
        }
      }
    }
  });

  test('have a square of exactly 72 points on every page', async () => {
    for (const { drawn, height } of await pagesIn(bytes)) {
      const squares = drawn.filter(([a, b, c, d]) => a && b && c && d && b[0] - a[0] === 72 && c[1] - b[1] === 72 && c[0] - d[0] === 72 && d[1] - a[1] === 72);
      expect(squares).toHaveLength(1);
      for (const [, y] of squares[0]!) expect(y).toBeLessThanOrEqual(height - MARGIN);
    }
  });

  test('carry their own letters, and those alone, their title and language, and tags in reading order', async () => {
    const text = new TextDecoder('latin1').decode(await plainPdf(letter, faces));
    const fonts = [...text.matchAll(/\/BaseFont \/(\S+)/g)].map(([, name]) => name!);
    expect(new Set(fonts.map((name) => name.replace(/^[A-Z]{6}\+/, '')))).toEqual(new Set(['SourceSans3-Regular', 'SourceSans3-SemiBold']));
    expect(fonts.every((name) => /^[A-Z]{6}\+/.test(name))).toBe(true);
    expect(text.match(/\/FontFile2 /g)).toHaveLength(2);
    expect(bytes.length).toBeLessThan(25_000);
    const info = await infoOf(bytes);
    expect([info['Title'], info['Language']]).toEqual(['Kittiwake Point: templates', 'en']);
    const [{ tree, said }] = (await pagesIn(bytes)) as [Awaited<ReturnType<typeof pagesIn>>[number]];
    expect(JSON.stringify(tree)).toContain('"role":"H1"');
    expect(JSON.stringify(tree).match(/"role":"(H1|P)"/g)).toHaveLength(said.length);
  });

  test('are the same bytes twice', async () => {
    expect(Buffer.from(await pagesPdf(laid('letter'), faces)).equals(Buffer.from(bytes))).toBe(true);
  });

  test('on A4 have pages of 210 by 297 mm', async () => {
    for (const { width, height } of await pagesIn(await pagesPdf(laid('a4'), faces))) {
      const [short, long] = [width, height].sort((a, b) => a - b);
      expect(short).toBeCloseTo((210 / 25.4) * 72, 3);
      expect(long).toBeCloseTo((297 / 25.4) * 72, 3);
    }
  });

  test('show names as they are, and signs that no face has as question marks', async () => {
    const fabrics = block.fabrics.map((fabric, i) => ({ ...fabric, name: ['Möwe <b>&"¾', '波 🌊 wave', 'x'.repeat(300), ' '][i % 4]! }));
    const document = templatePages(byTemplate({ ...block, name: 'Küste ⅝ & Łódź 🌊', fabrics }), 'letter', setting);
    const said = (await pagesIn(await pagesPdf(document, faces))).flatMap(({ said: all }) => all);
    expect(said).toContain('Küste ⅝ & Łódź ?');
    expect(said.join(' ')).toContain('Möwe <b>&"¾');
    expect(said.join(' ')).toMatch(/\?( \?)? wave/);
    expect(pageSvg(document.pages[0]!, document.title, 'en')).not.toMatch(/<b>/);
  });
});

describe('a page as SVG', () => {
  test('has its true size and says what every line is', () => {
    const svg = pageSvg(letter.pages[0]!, letter.title, 'en');
    const { width, height } = letter.pages[0]!;
    expect(svg).toContain(`width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}"`);
    expect(svg).toMatch(/<path d="M[^"]+Z" fill="none" stroke="#111111" stroke-width="0.8"><title>cut line T\d+<\/title>/);
    expect(svg.match(/<text /g)).toHaveLength(texts(letter.pages[0]!).length);
  });
});

describe('the face', () => {
  test('has every fraction of a ruler', () => {
    const { advance } = faceMetrics(faces.regular);
    for (const sign of '½⅓⅔¼¾⅛⅜⅝⅞⁄0123456789“”×–…↑→↓←') expect([sign, advance(sign.codePointAt(0)!)]).toEqual([sign, expect.any(Number)]);
    expect(withFractions('1 7/8 in. and 7/16, 3/4 of 12 5/16')).toBe('1⅞ in. and 7⁄16, ¾ of 12\u202f5⁄16');
  });

  test('is measured as wide as the reader finds it', async () => {
    const pdf = await getDocumentProxy(bytes.slice());
    const { items } = await (await pdf.getPage(1)).getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      const size = item.transform[3] as number;
      const widths = (['regular', 'strong'] as const).map((weight) => setting.widthOf(item.str, size, weight));
      expect(Math.min(...widths.map((width) => Math.abs(width - item.width)))).toBeLessThan(0.02 * size);
    }
  });
});
