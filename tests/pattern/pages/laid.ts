import { readFaces } from '../../../src/cli/faces.ts';
import type { UnitKind } from '../../../src/geometry/piecing/assembly.ts';
import type { Block } from '../../../src/block/block.ts';
import { makePattern } from '../../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { ASCENT, DESCENT, settingIn } from '../../../src/pattern/pages/face.ts';
import type { Spot } from '../../../src/pattern/polygons.ts';
import type { Item, Page, PathItem, TextItem } from '../../../src/pattern/pages/page.ts';

export const faces = await readFaces();
export const setting = settingIn(faces);

const KINDS: readonly UnitKind[] = [
  'half-square triangle',
  'quarter-square triangle',
  'split quarter-square triangle',
  'flying geese',
  'corner-triangle unit',
  'square in a square',
  'half-rectangle triangle',
  'peak',
];

/** @returns the pattern of a block in which every piece of a unit is cut round a template */
export function byTemplate(block: Block): Pattern {
  const made = makePattern(block, { methods: Object.fromEntries(KINDS.map((kind) => [kind, 'template'])) }, 'chosen way');
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

/** The places a path goes through, by the ends of its lines. */
export const spotsOf = ({ steps }: PathItem): readonly Spot[] =>
  steps.flatMap((step): Spot[] => (step[0] === 'Z' ? [] : [[step.at(-2) as number, step.at(-1) as number]]));

export const paths = (page: Page, what: string): readonly PathItem[] =>
  page.items.filter((item): item is PathItem => item.kind === 'path' && item.what.startsWith(what));

export const texts = (page: Page): readonly TextItem[] => page.items.filter((item): item is TextItem => item.kind === 'text');

/** How far the ink of an item reaches: a line by half its width beyond its places, a curve no further than its handles. */
export function inkBox(item: Item): { left: number; top: number; right: number; bottom: number } {
  if (item.kind === 'text') {
    const { x, y, width, size, turn = 0 } = item;
    // Quarter turns clockwise about where the baseline begins.
    const [[l, t], [r, b]] = [[0, -ASCENT * size], [width, DESCENT * size]] as const;
    const box = ([[l, t, r, b], [-b, l, -t, r], [-r, -b, -l, -t], [t, -r, b, -l]] as const)[turn];
    return { left: x + box[0], top: y + box[1], right: x + box[2], bottom: y + box[3] };
  }
  if (item.kind === 'place') return { left: Infinity, top: item.y, right: -Infinity, bottom: item.y };
  if (item.kind !== 'path') {
    const { left, top, width, height } = item.area;
    return { left, top, right: left + width, bottom: top + height };
  }
  const numbers = item.steps.flatMap(([, ...all]) => all as number[]);
  const [xs, ys] = [0, 1].map((which) => numbers.filter((_, i) => i % 2 === which)) as [number[], number[]];
  const half = (item.stroke?.width ?? 0) / 2;
  return { left: Math.min(...xs) - half, top: Math.min(...ys) - half, right: Math.max(...xs) + half, bottom: Math.max(...ys) + half };
}
