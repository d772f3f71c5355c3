import type { Telling } from '../../block/telling.ts';
import { filled, printed } from '../telling/kept.ts';
import type { Content } from '../document/content.ts';
import { ASCENT, type Setting } from './face.ts';
import { fitted } from './furniture.ts';
import { INK, QUIET } from './looks.ts';
import { boxPath, type Item, type Page, type TextItem } from './page.ts';

/** How high the line of a ready page is that holds its title, and what its letters keep from the edge of a bar. */
const LINE = 15.5;
const PAD = 5;
const COUNT = 8.5;

/**
 * Pages that come laid out at true size can be neither moved nor made smaller: what every page says stands in the line of their title, the
 * alarm in its place, and which page it is at its right end, if there is room.
 * @param page the first being 1
 */
export function withHead(
  ready: Page,
  { alarm, words }: Pick<Content, 'alarm' | 'words'>,
  page: number,
  pages: number,
  { telling, setting }: { readonly telling: Telling; readonly setting: Setting },
): Page {
  const title = ready.items.find((item) => item.kind === 'text');
  if (title === undefined) return ready;
  const { margin, width } = ready;
  const isInLine = (item: Item): item is TextItem => item.kind === 'text' && Math.abs(item.y - title.y) < 1;
  if (alarm !== null) {
    const said = printed(alarm, telling);
    const inner = width - 2 * margin - 2 * PAD;
    const size = Math.max(7, Math.min(11, inner / setting.widthOf(setting.shown(said), 1, 'strong')));
    const text = fitted(said, inner, size, 'strong', setting);
    const top = title.y - title.size * ASCENT;
    return {
      ...ready,
      items: [
        { kind: 'path', what: 'alarm', steps: boxPath({ left: margin, top, width: width - 2 * margin, height: LINE }), fill: INK },
        {
          kind: 'text',
          text,
          x: margin + PAD,
          y: top + LINE / 2 + 0.328 * size,
          size,
          weight: 'strong',
          color: '#ffffff',
          width: setting.widthOf(text, size, 'strong'),
          role: 'alarm',
        },
        ...ready.items.filter((item) => !isInLine(item)),
      ],
    };
  }
  const text = setting.shown(filled(words.page, [String(page), String(pages)]) ?? String(page));
  const wide = setting.widthOf(text, COUNT, 'strong');
  const others = ready.items.filter(isInLine).filter((item) => item !== title);
  const right = Math.min(width - margin, ...others.map(({ x }) => x - 1.6 * COUNT));
  if (right - wide < title.x + title.width + COUNT) return ready;
  const count: Item = {
    kind: 'text',
    text,
    x: right - wide,
    y: title.y,
    size: COUNT,
    weight: 'strong',
    color: QUIET,
    width: wide,
    role: 'of the page',
  };
  return { ...ready, items: [...ready.items, count] };
}
