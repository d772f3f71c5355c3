import type { Area, Page, TextItem } from '../../pattern/pages/page.ts';

/** Where on a page a sentence stands: one area for each stretch of lines that follow one another. */
export interface Spot {
  readonly at: string;
  readonly text: string;
  readonly areas: readonly Area[];
}

/** Of a line of text, in its size: how far it reaches above its baseline, and below. */
const ABOVE = 0.85;
const BELOW = 0.3;

/** @returns the sentences of a page that can be pointed at, in reading order */
export function spotsOn({ items }: Page, known: (at: string) => boolean): readonly Spot[] {
  const spots = new Map<string, { texts: string[]; areas: Area[] }>();
  for (const item of items) {
    if (item.kind !== 'text' || item.of === undefined || item.turn || item.role === 'of the page' || !known(item.of)) continue;
    const spot = spots.get(item.of) ?? { texts: [], areas: [] };
    spots.set(item.of, spot);
    spot.texts.push(item.text);
    const last = spot.areas.at(-1);
    const line = areaOf(item);
    if (last && follows(last, line)) spot.areas[spot.areas.length - 1] = around(last, line);
    else spot.areas.push(line);
  }
  return [...spots].map(([at, { texts, areas }]) => ({ at, text: texts.join(' '), areas }));
}

const areaOf = ({ x, y, width, size }: TextItem): Area => ({ left: x, top: y - size * ABOVE, width, height: size * (ABOVE + BELOW) });

/** @returns whether a line is on the same line as an area ends with, or on the next one below it */
const follows = (area: Area, line: Area): boolean =>
  line.top >= area.top && line.top <= area.top + area.height + line.height && line.left < area.left + area.width + 2 * line.height;

function around(one: Area, other: Area): Area {
  const [left, top] = [Math.min(one.left, other.left), Math.min(one.top, other.top)];
  const right = Math.max(one.left + one.width, other.left + other.width);
  return { left, top, width: right - left, height: Math.max(one.top + one.height, other.top + other.height) - top };
}
