import { ASCENT, DESCENT, type Setting } from './face.ts';
import { INK, QUIET, THIN_LINE } from './looks.ts';
import { boxPath, type Area, type Item, type TextItem, type Weight } from './page.ts';
import { TEMPLATES_IN_ENGLISH } from '../phrases/english/templates.ts';
import type { TemplatePhrases } from '../phrases/template-phrases.ts';
import { POINTS } from './paper.ts';

/** What stands on every page of templates: what it belongs to, and the squares to measure. */

/** @returns a line of text from a place on, or ending there */
export function lineOf(
  said: string,
  [x, y]: readonly [number, number],
  { size, weight = 'regular', color = INK, ends = false, role }: {
    readonly size: number;
    readonly weight?: Weight;
    readonly color?: string;
    readonly ends?: boolean;
    readonly role?: TextItem['role'];
  },
  { shown, widthOf }: Setting,
): TextItem {
  const text = shown(said);
  const width = widthOf(text, size, weight);
  return { kind: 'text', text, x: ends ? x - width : x, y, size, weight, color, width, ...(role && { role }) };
}

/** @returns a text cut short with … so that it is no wider */
export function fitted(text: string, width: number, size: number, weight: Weight, { shown, widthOf }: Setting): string {
  const signs = [...shown(text)];
  if (widthOf(signs.join(''), size, weight) <= width) return signs.join('');
  while (signs.length > 0 && widthOf(`${signs.join('').trimEnd()}…`, size, weight) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}

export interface Head {
  readonly title: string;
  /** Beside the title, at the right edge. */
  readonly place: string;
  readonly lines: readonly string[];
}

const TITLE = 15;
const SMALL = 8.5;

/** How high the head of a page with so many lines under its title is, with the air below it. */
export const headHeight = (lines: number): number => TITLE * 1.2 + lines * SMALL * 1.3 + 8;

/** @returns the head of a page, from this corner on */
export function headItems(head: Head, left: number, top: number, width: number, setting: Setting): readonly Item[] {
  const place = lineOf(head.place, [left + width, top + TITLE * ASCENT], { size: SMALL, color: QUIET, ends: true }, setting);
  const title = fitted(head.title, width - place.width - 12, TITLE, 'strong', setting);
  return [
    lineOf(title, [left, top + TITLE * ASCENT], { size: TITLE, weight: 'strong', role: 'heading' }, setting),
    place,
    ...head.lines.map((text, i) => {
      const y = top + TITLE * 1.2 + (i + ASCENT) * SMALL * 1.3;
      return lineOf(fitted(text, width, SMALL, 'regular', setting), [left, y], { size: SMALL, color: QUIET }, setting);
    }),
  ];
}

const INCH = POINTS.in;
const TWO_CM = 2 * POINTS.cm;
const GAP = 7;

/** What is said in and beside the squares to measure. */
export type MeasureWords = Pick<TemplatePhrases, 'measure' | 'inch'>;

/** @returns how much room the squares to measure take, with what is said of them; measured on the paper before any cloth is cut */
export function measureRoom({ widthOf }: Setting, { measure }: MeasureWords = TEMPLATES_IN_ENGLISH): { readonly width: number; readonly height: number } {
  return { width: INCH + TWO_CM + 2 * GAP + Math.max(...measure.map((text) => widthOf(text, SMALL, 'regular'))), height: INCH };
}

/** @returns the two squares and what is said of them, from this corner on */
export function measureItems(left: number, top: number, setting: Setting, words: MeasureWords = TEMPLATES_IN_ENGLISH): readonly Item[] {
  const inch: Area = { left, top, width: INCH, height: INCH };
  const cm: Area = { left: left + INCH + GAP, top: top + INCH - TWO_CM, width: TWO_CM, height: TWO_CM };
  const middle = (area: Area, text: string, size: number): Item => {
    const line = lineOf(text, [0, area.top + area.height / 2 + ((ASCENT - DESCENT) / 2) * size], { size, weight: 'strong' }, setting);
    return { ...line, x: area.left + (area.width - line.width) / 2 };
  };
  const step = SMALL * 1.3;
  const firstLine = top + INCH - (words.measure.length - 1) * step - DESCENT * SMALL;
  return [
    { kind: 'path', what: 'square of 1 in.', steps: boxPath(inch), stroke: { ...THIN_LINE, color: INK } },
    middle(inch, words.inch, 11),
    { kind: 'path', what: 'square of 2 cm', steps: boxPath(cm), stroke: { ...THIN_LINE, color: INK } },
    middle(cm, '2 cm', 10),
    ...words.measure.map((text, i) => lineOf(text, [cm.left + TWO_CM + GAP, firstLine + i * step], { size: SMALL }, setting)),
  ];
}
