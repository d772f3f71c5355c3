import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Content, Flow } from '../../../src/pattern/document/content.ts';
import type { HouseStyle } from '../../../src/pattern/house-style.ts';
import { laidOut } from '../../../src/pattern/pages/laid-out.ts';
import type { Document, Page, TextItem } from '../../../src/pattern/pages/page.ts';
import { printed } from '../../../src/pattern/telling/kept.ts';
import { allSaid, anyContent, anyStyle, telling } from './any-content.ts';
import { inkBox, setting, texts } from './laid.ts';

const RUNS = Number(process.env['DOCUMENTS'] ?? 60);
const law = (holds: (content: Content, style: HouseStyle, document: Document) => void, alarm: string | null = null): void =>
  fc.assert(
    fc.property(anyContent({ alarm }), anyStyle, (content, style) => holds(content, style, laidOut(content, style, telling, setting))),
    { seed: 20261125, numRuns: RUNS },
  );

const bare = (text: string): string => setting.shown(text).replace(/\s/gu, '');
/** The texts of a page that are its own content. */
const own = (page: Page): readonly TextItem[] => texts(page).filter(({ role }) => role !== 'of the page');

/** The column a text stands in, by where the middle of a page is; 0 too for what goes right across. */
const columnOf = (page: Page, x: number, { columns }: HouseStyle): number => (columns === 2 && x > page.width / 2 ? 1 : 0);

describe('a content laid out on pages', () => {
  test('is there once, in its order, word for word', () => {
    law((content, _style, { pages }) => {
      const found = new Map<string, string>();
      for (const { of, text } of pages.flatMap(own)) if (of !== undefined) found.set(of, (found.get(of) ?? '') + bare(text));
      const meant = allSaid(content).filter(({ told }) => bare(printed(told, telling)) !== '');
      expect([...found.keys()]).toEqual(meant.map(({ at }) => at));
      for (const { at, told } of meant) expect(found.get(at)).toBe(bare(printed(told, telling)));
    });
  });

  test('stays within the margins, and no text lies on another', () => {
    law((_content, _style, { pages }) => {
      for (const page of pages) {
        for (const item of page.items) {
          const { left, top, right, bottom } = inkBox(item);
          expect(Math.min(left, top, page.width - right, page.height - bottom)).toBeGreaterThanOrEqual(page.margin - 0.01);
        }
        const boxes = texts(page).map((item) => ({ ...inkBox(item), text: item.text }));
        for (const [i, a] of boxes.entries()) {
          for (const b of boxes.slice(i + 1)) {
            const over =
              Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.05 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.05;
            if (over) throw new Error(`“${a.text}” lies on “${b.text}”`);
          }
        }
      }
    });
  });

  test('has no heading at the foot of a column', () => {
    law((_content, style, { pages }) => {
      for (const page of pages) {
        for (const column of [0, 1]) {
          const inColumn = page.items.filter(
            (item) => item.kind !== 'link' && item.kind !== 'place' && !(item.kind === 'text' && item.role === 'of the page'),
          );
          const last = own(page)
            .filter(({ x }) => columnOf(page, x, style) === column)
            .sort((a, b) => a.y - b.y)
            .at(-1);
          if (last?.role !== 'heading') continue;
          // A picture or lines to write on may be what it heads; the rule over the foot is not.
          const below = inColumn.filter(
            (item) =>
              inkBox(item).top > last.y &&
              inkBox(item).bottom < page.height - page.margin - 18 &&
              columnOf(page, inkBox(item).left, style) === column,
          );
          expect(below.length, `“${last.text}” stands alone`).toBeGreaterThan(0);
        }
      }
    });
  });

  test('says the heads of a table above every part of it, and never ends a column with a group', () => {
    let parts = 0;
    law((content, style, { pages }) => {
      const heads = new Map(tablesIn(content).map(({ at, heads: [first] }) => [at, first!.at]));
      for (const page of pages) {
        for (const [name, of] of heads) {
          for (const column of [0, 1]) {
            const inTable = texts(page).filter(
              ({ x, cell, of: at }) =>
                columnOf(page, x, style) === column &&
                ((cell?.name === name && cell.column === 0) || at === of) &&
                beginsLine(page, x, at!),
            );
            const cells = inTable.filter(({ cell }) => cell && cell.row > 0);
            if (cells.length === 0) continue;
            parts++;
            const first = inTable.reduce((a, b) => (b.y < a.y ? b : a));
            expect(first.of, `no heads above ${name}`).toBe(of);
            const last = cells.reduce((a, b) => (b.y > a.y ? b : a));
            expect(last.cell!.head).toBeUndefined();
          }
        }
      }
    });
    expect(parts).toBeGreaterThan(RUNS / 2);
  });

  test('keeps together what a column holds', () => {
    let kept = 0;
    law((content, style, document) => {
      const all = content.sections.flatMap((section) =>
        section.items.flatMap((item) => (item.flow === 'together' ? [{ ...section, items: [item] }] : [])),
      );
      for (const section of all) {
        const only: Content = { ...content, sections: [section] };
        const alone = laidOut(only, style, telling, setting);
        const figures = section.items[0]!.items.flatMap((item) =>
          item.flow === 'figures' ? item.figures.map(({ figure }) => figure.name) : [],
        );
        const ofItem = new Set([
          ...allSaid(only)
            .slice(1)
            .map(({ at }) => at),
          ...figures,
        ]);
        const where = ({ pages }: Document): Set<string> =>
          new Set(
            pages.flatMap((page, i) =>
              page.items.flatMap((each) => {
                const isPart =
                  (each.kind === 'text' && ofItem.has(each.of ?? '')) || (each.kind === 'path' && ofItem.has(each.figure?.name ?? ''));
                return isPart ? [`${i} ${columnOf(page, inkBox(each).left, style)}`] : [];
              }),
            ),
          );
        const pagesOf = (places: Set<string>): Set<string> => new Set([...places].map((place) => place.split(' ')[0]!));
        if (alone.pages.length > 1 || where(alone).size !== 1) continue;
        kept++;
        expect(pagesOf(where(document)).size).toBe(1);
        // Pictures right across the page may reach into its other half when they are larger than alone.
        const columns = document.pages.flatMap((page) => {
          const words = own(page).filter(({ of }) => section.items[0]!.items.some((item) => paragraphsIn(item).includes(of ?? '')));
          return words.filter(({ x, of }) => beginsLine(page, x, of!)).map(({ x }) => columnOf(page, x, style));
        });
        expect(new Set(columns).size).toBeLessThanOrEqual(1);
      }
    });
    expect(kept).toBeGreaterThan(RUNS / 4);
  });

  test('leaves no line of a paragraph alone', () => {
    law((content, style, { pages }) => {
      const paragraphs = new Set(content.sections.flatMap(({ items }) => items.flatMap(paragraphsIn)));
      const lines = new Map<string, Map<string, Set<number>>>();
      pages.forEach((page, i) => {
        for (const { of, x, y } of own(page)) {
          if (of === undefined || !paragraphs.has(of)) continue;
          const parts = lines.get(of) ?? new Map<string, Set<number>>();
          lines.set(of, parts);
          // A paragraph right across has one column; its strong letters may stand at the right.
          const part = `${i} ${columnOf(page, x, style)}`;
          parts.set(part, (parts.get(part) ?? new Set()).add(y));
        }
      });
      for (const parts of lines.values()) {
        const onPages = new Map<string, Set<number>>();
        for (const [part, ys] of parts) {
          const page = part.split(' ')[0]!;
          onPages.set(page, new Set([...(onPages.get(page) ?? []), ...ys]));
        }
        if (onPages.size > 1) for (const ys of onPages.values()) expect(ys.size).toBeGreaterThan(1);
      }
    });
  });

  test('leads from units’ letters to places that are there, each once', () => {
    let links = 0;
    law((_content, _style, { pages }) => {
      const places = pages.flatMap(({ items }) =>
        items.flatMap((item) => (item.kind === 'place' && item.name.startsWith('unit') ? [item.name] : [])),
      );
      expect(new Set(places).size).toBe(places.length);
      for (const item of pages.flatMap(({ items }) => items)) {
        if (item.kind !== 'link') continue;
        links++;
        expect(places).toContain(item.to);
      }
    });
    expect(links).toBeGreaterThan(RUNS);
  });

  test('says an alarm on every page, before anything else', () => {
    const alarm = 'Do not cut: this pattern is not the drawing.';
    law((_content, _style, { pages }) => {
      for (const page of pages) {
        const lines = texts(page);
        const end = lines.findIndex(({ of, role }) => of !== undefined || role !== 'alarm');
        expect(
          lines
            .slice(0, end < 0 ? undefined : end)
            .map(({ text }) => text)
            .join('')
            .replaceAll(' ', ''),
        ).toContain(alarm.replaceAll(' ', ''));
        expect(Math.min(...lines.map(({ y }) => y))).toBe(lines[0]!.y);
      }
    }, alarm);
  });
});

/** Whether nothing of a sentence ends where this begins. */
const beginsLine = (page: Page, left: number, at: string): boolean =>
  texts(page).every(({ of, x, width }) => of !== at || Math.abs(x + width - left) > 0.01);

const tablesIn = ({ sections }: Content): readonly Extract<Flow, { flow: 'table' }>[] =>
  sections.flatMap(({ items }) => items.filter((item) => item.flow === 'table'));

const paragraphsIn = (flow: Flow): readonly string[] =>
  flow.flow === 'paragraph' ? [flow.said.at] : flow.flow === 'together' ? flow.items.flatMap(paragraphsIn) : [];
