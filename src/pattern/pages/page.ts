/*
 * A finished layout: pages of items at fixed places. Whoever writes or shows a page only draws its items and computes no place. Lengths
 * are in points (1/72 in.), x right and y down from the page's upper left corner.
 */

import type { Picture } from '../../block/publication.ts';

export type PathStep =
  | readonly ['M' | 'L', x: number, y: number]
  | readonly ['C', x1: number, y1: number, x2: number, y2: number, x: number, y: number]
  | readonly ['Z'];

export interface Stroke {
  readonly color: string;
  readonly width: number;
  /** Lengths of dashes and gaps by turns; a whole line where absent. */
  readonly dash?: readonly number[];
}

/** Lines or areas; colours as #rrggbb. */
export interface PathItem {
  readonly kind: 'path';
  /** What it shows: "cut line T1". Writers that can name things use it. */
  readonly what: string;
  readonly steps: readonly PathStep[];
  readonly stroke?: Stroke;
  readonly fill?: string;
  /** Over the fill, under the lines. */
  readonly photo?: PhotoFill;
  readonly figure?: InFigure;
}

/** A photo that fills an area, again and again side by side. */
export interface PhotoFill {
  readonly picture: Picture;
  /** Where the upper left corner of one of them lies. */
  readonly at: readonly [x: number, y: number];
  /** How wide one is. */
  readonly width: number;
  /** By how much all are turned clockwise about that corner, in degrees. */
  readonly turn: number;
}

/** Which picture a line or a letter is part of; items of one picture follow one another. */
export interface InFigure {
  /** No other picture of the document has it. */
  readonly name: string;
  /** What the picture shows, for whoever cannot see it. */
  readonly says: string;
}

/** Where in a table a text stands; cells follow one another row by row. */
export interface InTable {
  /** No other table of the document has it; a table that goes on on the next page keeps it. */
  readonly name: string;
  readonly row: number;
  readonly column: number;
  /** It says what its column holds, or its whole row. */
  readonly head?: true;
}

export type Weight = 'regular' | 'strong';

/** One line of text in our own face. */
export interface TextItem {
  readonly kind: 'text';
  readonly text: string;
  /** Where its baseline begins. */
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly weight: Weight;
  readonly color: string;
  /** How wide the line is. */
  readonly width: number;
  /** Quarter turns clockwise about where its baseline begins; none where absent. */
  readonly turn?: 1 | 2 | 3;
  /**
   * What it is to somebody who listens: a heading; the page's own, said again on the next (a foot, a table's heads), which is not told;
   * the alarm of a pattern that must not be cut, told on every page; else text like any other.
   */
  readonly role?: 'heading' | 'of the page' | 'alarm';
  /** How deep a heading is: 1 the title, 2 a section. 1 where absent. */
  readonly level?: 1 | 2 | 3;
  /** Which sentence of the pattern it belongs to (`Said.at`). */
  readonly of?: string;
  readonly cell?: InTable;
  readonly figure?: InFigure;
}

/** A photo or logo, as large as the area. */
export interface ImageItem {
  readonly kind: 'image';
  /** What it shows, for whoever cannot see it. */
  readonly what: string;
  readonly area: Area;
  readonly picture: Picture;
}

/** An area that leads to a place of the document when it is pressed. */
export interface LinkItem {
  readonly kind: 'link';
  readonly area: Area;
  /** Name of the place. */
  readonly to: string;
}

/** A place that links lead to; with a title it is a bookmark of the document too. */
export interface PlaceItem {
  readonly kind: 'place';
  readonly name: string;
  readonly y: number;
  readonly bookmark?: { readonly title: string; readonly level: 1 | 2 | 3 };
}

export type Item = PathItem | TextItem | ImageItem | LinkItem | PlaceItem;

export interface Page {
  readonly width: number;
  readonly height: number;
  /** No item reaches into the margin, which is the same all round. */
  readonly margin: number;
  /** In reading order. */
  readonly items: readonly Item[];
}

export interface Document {
  readonly title: string;
  /** As BCP 47 has it: "en". */
  readonly language: string;
  readonly pages: readonly Page[];
}

/** A rectangle on a page. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** @returns a closed path through places */
export const closedPath = (places: readonly (readonly [number, number])[]): readonly PathStep[] => [
  ...places.map(([x, y], i): PathStep => [i === 0 ? 'M' : 'L', x, y]),
  ['Z'],
];

/** @returns a path of one straight line */
export const linePath = ([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): readonly PathStep[] => [
  ['M', x1, y1],
  ['L', x2, y2],
];

/** @returns the path round a rectangle */
export const boxPath = ({ left, top, width, height }: Area): readonly PathStep[] =>
  closedPath([
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ]);

/** @returns the path of a circle, by the usual four curves */
export function circlePath([x, y]: readonly [number, number], radius: number): readonly PathStep[] {
  // 4/3·(√2 − 1): how far the handles of a quarter circle reach.
  const reach = radius * 0.5522847498;
  return [
    ['M', x + radius, y],
    ['C', x + radius, y + reach, x + reach, y + radius, x, y + radius],
    ['C', x - reach, y + radius, x - radius, y + reach, x - radius, y],
    ['C', x - radius, y - reach, x - reach, y - radius, x, y - radius],
    ['C', x + reach, y - radius, x + radius, y - reach, x + radius, y],
    ['Z'],
  ];
}

/** @returns an item moved */
export function movedItem(item: Item, dx: number, dy: number): Item {
  if (item.kind === 'text') return { ...item, x: item.x + dx, y: item.y + dy };
  if (item.kind === 'place') return { ...item, y: item.y + dy };
  if (item.kind !== 'path') return { ...item, area: { ...item.area, left: item.area.left + dx, top: item.area.top + dy } };
  const steps = item.steps.map((step): PathStep => {
    if (step[0] === 'Z') return step;
    if (step[0] !== 'C') return [step[0], step[1] + dx, step[2] + dy];
    return ['C', step[1] + dx, step[2] + dy, step[3] + dx, step[4] + dy, step[5] + dx, step[6] + dy];
  });
  const { photo } = item;
  return { ...item, steps, ...(photo && { photo: { ...photo, at: [photo.at[0] + dx, photo.at[1] + dy] as const } }) };
}
