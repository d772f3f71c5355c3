import type { Choices, Method } from '../../block/choices.ts';
import type { AssemblyOrder } from '../../geometry/piecing/order.ts';
import type { Tool } from '../../canvas/tool.ts';

/*
 * What the history calls a gesture, in the words of somebody who tells what she did.
 */

/** One and many of what a tool lays. */
const LAID: Readonly<Partial<Record<Tool, readonly [one: string, many: string]>>> = {
  square: ['a square', 'squares'],
  half: ['a half-square', 'half-squares'],
  quarter: ['a quarter-square', 'quarter-squares'],
  rectangle: ['a rectangle', 'rectangles'],
  'half rectangle': ['a half-rectangle', 'half-rectangles'],
  peak: ['a peak', 'peaks'],
  outline: ['a shape', 'shapes'],
};

/** @returns "laid 6 squares of Lamp", "took 3 patches back to Marram" */
export function laidWords(tool: Tool, count: number, fabric: string, isGround: boolean): string {
  if (isGround) return count === 1 ? `took cloth back to ${fabric}` : `took ${count} places back to ${fabric}`;
  const [one, many] = LAID[tool] ?? ['a patch', 'patches'];
  return `laid ${count === 1 ? one : `${count} ${many}`} of ${fabric}`;
}

/** @returns "renamed to “Harbour light”" */
export const renamedTo = (name: string): string => `renamed to “${name}”`;

const CHOSEN: Readonly<Record<keyof Choices, string>> = {
  seam: 'the seam allowance',
  ruler: 'the ruler step',
  trim: 'what is trimmed off',
  method: 'how units are cut',
  methods: 'how a unit is cut',
  way: 'the way to sew',
  assembly: 'the order of assembly',
  blocks: 'how many blocks',
  width: 'the width of the cloth',
  cloths: 'where a fabric is cut from',
  squaringUp: 'what straight edges take',
  margin: 'what is bought to spare',
  shopStep: 'by what lengths cloth is sold',
};

const ASSEMBLED: Readonly<Record<AssemblyOrder, string>> = {
  'as found': 'as found',
  rows: 'by rows',
  columns: 'by columns',
  web: 'as a web',
  quarters: 'by quarters',
};

/** @returns "chose the seam allowance", "chose the way “fewest pieces”" */
export function choseWords(some: Choices): string {
  if (some.way) return `chose the way “${some.way}”`;
  if (some.assembly) return `put the units together ${ASSEMBLED[some.assembly]}`;
  const names = (Object.keys(some) as (keyof Choices)[]).map((name) => CHOSEN[name]);
  return `chose ${names.join(' and ')}`;
}

/** How a unit is cut and sewn, in as few words as do. */
export const METHOD_WORDS: Readonly<Record<Method, string>> = {
  'one-at-a-time': 'one at a time',
  'two-at-a-time': 'two at a time',
  'four-at-a-time': 'four at a time',
  'eight-at-a-time': 'eight at a time',
  'stitch-and-flip': 'stitch and flip',
  triangles: 'cut triangles',
  'triangles-from-strips': 'triangles from strips',
  template: 'by template',
  pieces: 'from pieces',
  'strip-sets': 'strip sets',
};
