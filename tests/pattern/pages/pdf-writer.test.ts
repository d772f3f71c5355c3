import { describe, expect, test } from 'vitest';
import { pagesPdf, plainPdf } from '../../../src/pattern/pages/page-pdf.ts';
import { boxPath, type Document, type Item, type TextItem } from '../../../src/pattern/pages/page.ts';
import { faces, setting } from './laid.ts';
import { bookmarksIn, infoOf, pagesIn, pagesOf } from './pdf-reader.ts';
import { fontsIn, hasPoppler, infoIn, placesIn, tagsIn, textsIn } from './poppler.ts';

const JPEG =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAA0JCgsKCA0LCgsODg0PEyAVExISEyccHhcgLikxMC4pLSwzOko+MzZGNywtQFdBRkxOUlNSMj5aYVpQYEpRUk//2wBDAQ4ODhMREyYVFSZPNS01T09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT09PT0//wAARCAAEAAgDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAb/xAAXEAEAAwAAAAAAAAAAAAAAAAAAAxRS/8QAFQEBAQAAAAAAAAAAAAAAAAAABAb/xAAbEQABBAMAAAAAAAAAAAAAAAABAAMUkQRSU//aAAwDAQACEQMRAD8Aibk2gFhEx+YoJMp/c2V//9k=';

const line = (text: string, y: number, more: Partial<TextItem> = {}): TextItem => ({
  kind: 'text',
  text,
  x: 72,
  y,
  size: 10,
  weight: 'regular',
  color: '#111111',
  width: setting.widthOf(text, 10, 'regular'),
  ...more,
});
const place = (name: string, y: number, title: string, level: 1 | 2 | 3): Item => ({ kind: 'place', name, y, bookmark: { title, level } });
const link = (to: string, text: TextItem): Item => ({ kind: 'link', to, area: { left: text.x, top: text.y - 8, width: text.width, height: 11 } });
const star = { name: 'step-1', says: 'Two triangles, right sides together' };
const photo: Item = {
  kind: 'image',
  what: 'The block on a boat',
  area: { left: 72, top: 400, width: 80, height: 40 },
  picture: { id: 'boat', width: 8, height: 4, jpeg: JPEG },
};
const toUnit = line('A', 160, { x: 200, of: 'step/2' });
const page = (items: readonly Item[]): Document['pages'][number] => ({ width: 612, height: 792, margin: 36, items });

/** A pattern in small: every kind of item, a sentence and a table over the end of a page. */
const made: Document = {
  title: 'Möwe & <Co>',
  language: 'de',
  pages: [
    page([
      place('section cover', 50, 'Möwe', 1),
      line('Möwe', 70, { role: 'heading', level: 1 }),
      place('section units', 90, 'Units', 2),
      line('Units', 100, { role: 'heading', level: 2 }),
      place('unit A', 110, 'A: goose', 3),
      line('A: goose', 120, { role: 'heading', level: 3 }),
      { kind: 'path', what: 'cloth', steps: boxPath({ left: 72, top: 200, width: 40, height: 30 }), fill: '#aabbcc', figure: star },
      line('1', 220, { figure: star }),
      { kind: 'path', what: 'rule', steps: boxPath({ left: 72, top: 130, width: 400, height: 0.5 }), fill: '#555555' },
      line('Sew two triangles,', 140, { of: 'step/1' }),
      line('page 1', 760, { role: 'of the page' }),
    ]),
    page([
      line('then press.', 50, { of: 'step/1' }),
      line('Do not cut', 60, { role: 'alarm' }),
      toUnit,
      link('unit A', toUnit),
      link('unit Q', toUnit),
      line('Fabric', 180, { role: 'of the page', cell: { name: 'list', row: 0, column: 0, head: true } }),
      line('Fog', 200, { cell: { name: 'list', row: 1, column: 0 } }),
      line('4⅞ in.', 200, { x: 200, cell: { name: 'list', row: 1, column: 1 } }),
      line('two at a time', 212, { x: 200, cell: { name: 'list', row: 1, column: 1 } }),
      photo,
      line('up', 300, { turn: 3 }),
      line('page 2', 760, { role: 'of the page' }),
    ]),
    page([photo]),
  ],
};
const bytes = await pagesPdf(made, faces);

describe('a document as PDF, read back by another program', () => {
  test('has bookmarks in their levels, each of which leads where its title stands', async () => {
    expect(await bookmarksIn(bytes)).toEqual([
      { title: 'Möwe', page: 0, down: 50, under: [{ title: 'Units', page: 0, down: 90, under: [{ title: 'A: goose', page: 0, down: 110, under: [] }] }] },
    ]);
  });

  test('links to places that are there, and to no others', async () => {
    const links = (await pagesIn(bytes)).flatMap(({ links }, i) => links.map(({ dest, rect }) => ({ dest, rect, from: i })));
    expect(links).toHaveLength(1);
    const [{ dest, rect, from }] = links as [(typeof links)[number]];
    expect([from, ...(await pagesOf(bytes, [dest, 'unit Q']))]).toEqual([1, 0, null]);
    // y upwards, as PDF has it.
    [200, 792 - 163, 200 + toUnit.width, 792 - 152].forEach((edge, i) => expect(rect[i]).toBeCloseTo(edge, 3));
  });

  test('tells the tree of what it says: headings, sentences whole, tables, pictures by their words', async () => {
    const [first, second] = (await pagesIn(bytes)).map(({ tree }) => JSON.stringify(tree)) as [string, string];
    for (const role of ['H1', 'H2', 'H3', 'Figure']) expect(first).toContain(`"role":"${role}"`);
    expect(first).toContain(`"alt":"${star.says}"`);
    expect(second).toContain('"role":"Link"');
    expect(second).toContain('"alt":"The block on a boat"');
    expect(second.match(/"role":"T[RD]"/g)).toEqual(['"role":"TR"', '"role":"TD"', '"role":"TD"']);
    expect(second.match(/"role":"H/g)).toBe(null);
  });

  test('says its title, which may have any signs, its language, and no date', async () => {
    const info = await infoOf(bytes);
    expect([info['Title'], info['Language'], info['CreationDate']]).toEqual(['Möwe & <Co>', 'de', undefined]);
  });

  test('has a photo twice and holds it once', async () => {
    expect((await pagesIn(bytes)).map(({ images }) => images)).toEqual([0, 1, 1]);
    expect(Buffer.from(bytes).toString('latin1').split(Buffer.from(JPEG, 'base64').toString('latin1')).length - 1).toBe(1);
  });

  test('is read the same packed and plain, is much smaller packed, and the same bytes twice', async () => {
    const plain = await plainPdf(made, faces);
    expect(await pagesIn(bytes)).toEqual(await pagesIn(plain));
    expect(await bookmarksIn(bytes)).toEqual(await bookmarksIn(plain));
    expect(bytes.length).toBeLessThan(0.6 * plain.length);
    expect(Buffer.from(await pagesPdf(made, faces)).equals(Buffer.from(bytes))).toBe(true);
  });
});

describe.skipIf(!hasPoppler)('the same document, read by poppler', () => {
  test('has its pages, its title, its tags, its fonts', () => {
    const { facts, pages } = infoIn(bytes);
    expect([facts.get('Title'), facts.get('Tagged'), facts.get('Pages')]).toEqual(['Möwe & <Co>', 'yes', '3']);
    expect(pages).toEqual([[612, 792], [612, 792], [612, 792]]);
    expect(fontsIn(bytes).map(({ name, flags }) => [name.replace(/^[A-Z]{6}\+/, ''), flags])).toEqual([['SourceSans3-Regular', 'yes yes yes']]);
    expect(placesIn(bytes)).toHaveLength(3);
  });

  test('says its words in order, and none of the page itself to those who listen', () => {
    expect(textsIn(bytes)[1]!.split('\n').slice(0, 2)).toEqual(['then press.', 'Do not cut']);
    const tags = tagsIn(bytes);
    expect(tags.replaceAll(/\s+/g, ' ')).toContain('P (block) "Sew two triangles," "then press."');
    expect(tags.replaceAll(/\s+/g, ' ')).toContain('"4⅞ in."');
    expect(tags).toContain('Do not cut');
    expect(tags).not.toContain('page 1');
  });
});
