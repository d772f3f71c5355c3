import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { parseBlock } from '../../../src/files/block-file.ts';
import { parseLength } from '../../../src/measure/lengths.ts';
import { published } from '../../../src/pattern/document/published.ts';
import { ENGLISH } from '../../../src/pattern/english.ts';
import { GERMAN } from '../../../src/pattern/german.ts';
import { usualStyle, type HouseStyle } from '../../../src/pattern/house-style.ts';
import { makePattern } from '../../../src/pattern/make-pattern.ts';
import { pagesPdf } from '../../../src/pattern/pages/page-pdf.ts';
import type { Page } from '../../../src/pattern/pages/page.ts';
import { MARGIN } from '../../../src/pattern/pages/paper.ts';
import { patternJson } from '../../../src/pattern/pattern-json.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { namesIn } from '../../../src/pattern/plain-speech.ts';
import { styledTelling } from '../../../src/pattern/telling/styled.ts';
import { faces, inkBox, setting, spotsOf, texts } from './laid.ts';
import { bookmarksIn, pagesIn, pagesOf } from './pdf-reader.ts';
import { fontsIn, hasPoppler, infoIn, placesIn, textsIn, wordsIn } from './poppler.ts';

/** Every demo block once, in all the looks there are by turns. */
const LOOKS: readonly Partial<HouseStyle>[] = [
  {},
  { paper: 'a4', language: 'de', inches: '″' },
  { columns: 2, ink: 'hatches' },
  { letters: 'large', fractions: 'typed', kinds: 'short' },
  { lie: 'landscape', columns: 2, paper: 'a4' },
];
const demo = readdirSync('demo-blocks')
  .filter((file) => file.endsWith('.block.json'))
  .map((file, i) => [file.slice(0, -'.block.json'.length), file, LOOKS[i % LOOKS.length]!] as const);

function chosen(block: Block): Pattern {
  const pattern = makePattern(block, {}, 'chosen way');
  if (!pattern.ok) throw new Error(pattern.problem.sentence);
  return pattern.value;
}

async function make(file: string, look: Partial<HouseStyle>) {
  const read = parseBlock(readFileSync(`demo-blocks/${file}`, 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  const block = read.value;
  const pattern = chosen(block);
  const style: HouseStyle = { ...usualStyle(block.finished.unit), maker: 'Guild of Kittiwake Point', foot: 'kittiwake.example', ...look };
  const language = style.language === 'de' ? GERMAN : ENGLISH;
  const { document } = published(block, pattern, style, setting, language);
  const telling = styledTelling(style, namesIn(pattern), language);
  return { pattern, document, telling, bytes: await pagesPdf(document, faces) };
}
type Made = Awaited<ReturnType<typeof make>>;

/** Each once, for both readers. */
const known = new Map<string, Promise<Made>>();
function made(file: string, look: Partial<HouseStyle>): Promise<Made> {
  const making = known.get(file) ?? make(file, look);
  known.set(file, making);
  return making;
}

/** @returns the sizes of the cutting list in its order, as the document writes them, first of what is whole and then of what is cut of it */
function sizesOf(pattern: Pattern, { telling }: Made): readonly string[] {
  const { cuts, block } = patternJson(pattern);
  const fabrics = [...pattern.fabrics.map(({ fabric }) => fabric.id), ...pattern.scraps.map(({ id }) => id)];
  const length = (text: string): string => {
    const read = parseLength(text);
    return telling.length(read.ok ? read.value.value : { n: 0, d: 1 }, block.unit, 'bare');
  };
  return fabrics.flatMap((fabric) =>
    cuts.filter((cut) => cut.fabric === fabric).flatMap(({ width, height }) => (width === height ? [length(width)] : [length(width), length(height)])),
  );
}

/** Where one text after the other is found, from the beginning on; those that are not. */
function missingIn(text: string, wanted: readonly string[]): readonly string[] {
  let at = 0;
  return wanted.filter((each) => {
    const found = text.indexOf(each, at);
    if (found >= 0) at = found + each.length;
    return found < 0;
  });
}

const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ');

function expectWithinMargins({ items, width, height, margin }: Page): void {
  // Where the margin is wider than a printer's, half the width of a rule may stand in it.
  const most = margin > MARGIN ? 0.5 : 0.01;
  const outside = items.filter((item) => {
    const { left, top, right, bottom } = inkBox(item);
    return Math.max(margin - left, margin - top, right - (width - margin), bottom - (height - margin)) > most;
  });
  expect(outside).toEqual([]);
}

function expectTextsApart(page: Page): void {
  const boxes = texts(page).map((text) => [text.text, inkBox(text)] as const);
  for (const [i, [said, a]] of boxes.entries()) {
    for (const [other, b] of boxes.slice(i + 1)) {
      // Letters fill their boxes only in part: a tenth of a point more or less is seen by nobody.
      const apart = a.left >= b.right - 0.1 || b.left >= a.right - 0.1 || a.top >= b.bottom - 0.1 || b.top >= a.bottom - 0.1;
      if (!apart) expect([said, other]).toEqual(['apart', 'apart']);
    }
  }
}

describe('the published pattern of every demo block, read back by another program', () => {
  test.each(demo)('%s', async (_, file, look) => {
    const all = await made(file, look);
    const { document, bytes, pattern } = all;
    document.pages.forEach(expectWithinMargins);
    document.pages.forEach(expectTextsApart);

    const pages = await pagesIn(bytes);
    expect(pages.map(({ width, height }) => [width, height].map((side) => side.toFixed(2)))).toEqual(
      document.pages.map(({ width, height }) => [width, height].map((side) => side.toFixed(2))),
    );
    for (const [i, { drawn, said }] of pages.entries()) {
      const page = document.pages[i]!;
      expect(oneLine(said.join('')).replaceAll(' ', '')).toBe(oneLine(texts(page).map(({ text }) => text).join('')).replaceAll(' ', ''));
      const paths = page.items.filter((item) => item.kind === 'path');
      expect(drawn).toHaveLength(paths.length);
      // Every line, those of templates among them, where it should be to a hundredth of a point.
      const off = paths.flatMap((path, k) => spotsOf(path).map(([x, y], at) => Math.hypot(drawn[k]![at]![0] - x, drawn[k]![at]![1] - y)));
      expect(Math.max(0, ...off)).toBeLessThan(0.01);
    }
    const squares = pages.flatMap(({ drawn }) =>
      drawn.filter(([a, b, c, d]) => a && b && c && d && [b[0] - a[0], c[1] - b[1], c[0] - d[0], d[1] - a[1]].every((side) => side.toFixed(2) === '72.00')),
    );
    expect(squares.length).toBeGreaterThan(0);
    expect(missingIn(oneLine(pages.map(({ said }) => said.join(' ')).join(' ')), sizesOf(pattern, all))).toEqual([]);

    // Links and bookmarks lead where the document has their places.
    const places = new Map(document.pages.flatMap(({ items }, i) => items.flatMap((item) => (item.kind === 'place' ? [[item.name, i] as const] : []))));
    const links = document.pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'link' ? [item.to] : [])));
    expect(links.filter((to) => !places.has(to))).toEqual([]);
    const dests = pages.flatMap((page) => page.links.map(({ dest }) => dest));
    expect(dests).toHaveLength(links.length);
    const names = [...new Set(dests)];
    expect(await pagesOf(bytes, names)).toEqual(names.map((name) => places.get(decodeURIComponent(name))));
    const units = new Set(links.filter((to) => to.startsWith('unit ')));
    expect(units.size).toBeGreaterThan(0);
    const flat = (marks: Awaited<ReturnType<typeof bookmarksIn>>): readonly (readonly [string, number, number])[] =>
      marks.flatMap(({ title, page, down, under }) => [[title, page, down] as const, ...flat(under)]);
    const bookmarks = flat(await bookmarksIn(bytes));
    const marked = document.pages.flatMap(({ items }, i) => items.flatMap((item) => (item.kind === 'place' && item.bookmark ? [[item.bookmark.title, i, item.y] as const] : [])));
    expect(bookmarks.map(([title, page]) => [title, page])).toEqual(marked.map(([title, page]) => [title, page]));
    for (const [i, [, , down]] of bookmarks.entries()) expect(down).toBeCloseTo(marked[i]![2], 3);
  });

  test.skipIf(!hasPoppler)('and by poppler: sizes, fonts, words in order and within the margins, places', async () => {
    for (const [, file, look] of [demo[0]!, demo[1]!, demo[12]!]) {
      const all = await made(file, look);
      const { document, bytes, pattern } = all;
      const { facts, pages } = infoIn(bytes);
      expect([facts.get('Title'), facts.get('Tagged')]).toEqual([document.title, 'yes']);
      expect(pages.map(([width, height]) => [Math.round(width), Math.round(height)])).toEqual(document.pages.map(({ width, height }) => [Math.round(width), Math.round(height)]));
      for (const { flags } of fontsIn(bytes)) expect(flags).toBe('yes yes yes');
      expect(missingIn(oneLine(textsIn(bytes).join(' ')), sizesOf(pattern, all))).toEqual([]);
      for (const [i, words] of wordsIn(bytes).entries()) {
        const { width, height, margin } = document.pages[i]!;
        // Poppler's boxes are as high as the face, a fifth more than its letters above and below.
        for (const { text, left, top, right, bottom } of words) {
          const air = 0.2 * (bottom - top) + 0.1;
          expect([text, left > margin - 0.1, top > margin - air, right < width - margin + 0.1, bottom < height - margin + air]).toEqual([text, true, true, true, true]);
        }
      }
      expect(placesIn(bytes).length).toBe(new Set(document.pages.flatMap(({ items }) => items.flatMap((item) => (item.kind === 'place' ? [item.name] : [])))).size);
    }
  });

  test('says on its pages that the proof does not hold', async () => {
    const read = parseBlock(readFileSync('demo-blocks/05-eddy.block.json', 'utf8'));
    if (!read.ok) throw new Error(read.problem.sentence);
    const pattern = chosen(read.value);
    const broken: Pattern = { ...pattern, proof: { ...pattern.proof, holds: false, faults: ['a fault'] } };
    const { document } = published(read.value, broken, usualStyle('in'), setting, ENGLISH);
    const found = await pagesIn(await pagesPdf(document, faces));
    for (const { said } of found) expect(said.join(' ')).toMatch(/Do not cut yet|does not give the block/);
  });
});
