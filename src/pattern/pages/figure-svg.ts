import type { Telling } from '../../block/telling.ts';
import type { Content, Figure, Flow } from '../document/content.ts';
import type { HouseStyle } from '../house-style.ts';
import { clothLook } from './cloth-look.ts';
import type { Setting } from './face.ts';
import { FIGURE_EDGE, inkOfMarks } from './mark-ink.ts';
import type { Item, Page } from './page.ts';
import { pageSvg } from './page-svg.ts';
import { typographyOf } from './typography.ts';

/** A diagram by itself, for a layout of her own: items on a clear ground. */
export interface DiagramPicture {
  /** What its file is called, without ending: "step-03-unit-b-2". */
  readonly name: string;
  /** What it shows, for whoever cannot see it. */
  readonly says: string;
  /** In points. */
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

/** How long the longest side of a diagram is, in points; those that are told together are to one scale. */
const LONGEST = 4 * 72;

/** @returns every diagram of a document in its order, each once */
export function diagramsOf(
  content: Content,
  style: Pick<HouseStyle, 'ink' | 'letters'>,
  telling: Telling,
  setting: Setting,
): readonly DiagramPicture[] {
  const cloth = clothLook(content.fabrics, content.colors, style.ink, content.photos);
  const look = { cloth, telling, setting, letters: typographyOf(style).letters };
  const named = new Map<string, DiagramPicture>();
  for (const group of content.sections.flatMap(({ items }) => items.flatMap(groupsIn))) {
    const scale = LONGEST / Math.max(...group.flatMap(({ frame }) => [frame.width, frame.height]));
    for (const { name, says, frame, marks } of group) {
      const [width, height] = [frame.width * scale + 2 * FIGURE_EDGE, frame.height * scale + 2 * FIGURE_EDGE];
      const items = inkOfMarks(marks, frame, { left: 0, top: 0, width, height }, look);
      const free = freeName(name, named);
      named.set(free, { name: free, says, width, height, items });
    }
  }
  return [...named.values()];
}

/** Figures that stand side by side. */
function groupsIn(flow: Flow): readonly (readonly Figure[])[] {
  if (flow.flow === 'together') return flow.items.flatMap(groupsIn);
  return flow.flow === 'figures' ? [flow.figures.map(({ figure }) => figure)] : [];
}

function freeName(name: string, taken: ReadonlyMap<string, unknown>): string {
  let free = name;
  for (let i = 2; taken.has(free); i++) free = `${name}-${i}`;
  return free;
}

/** @returns a diagram as an SVG document of its size, on a clear ground */
export function diagramSvg({ width, height, items, says }: DiagramPicture, language: string): string {
  const page: Page = { width, height, margin: 0, items };
  return pageSvg(page, says, language);
}
