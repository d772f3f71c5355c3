import type { Block } from '../block/block.ts';
import { printLength } from '../measure/lengths.ts';
import { divide, multiply, rational, toNumber, type Rational } from '../measure/rational.ts';
import type { Margins } from './view.ts';

/** A mark on the tape along an edge of the drawing: how many grid units from its beginning, and the finished length there. */
export interface RulerMark {
  readonly at: number;
  readonly length: Rational;
}

/**
 * @param length finished, of the edge
 * @param units how many grid units it has
 * @param lines where the cells' lines meet it, in grid units, its ends left out; absent where there is one after every unit
 * @returns marks for the tape along the edge, both ends included, no two closer than `apart` pixels where it is drawn `pixels` long
 */
export function rulerMarks(length: Rational, units: number, lines: readonly Rational[] | undefined, pixels: number, apart: number): RulerMark[] {
  const mark = (at: Rational): RulerMark => ({ at: toNumber(at), length: multiply(length, divide(at, rational(units))) });
  if (!lines) {
    const divisors = Array.from({ length: units }, (_, i) => i + 1).filter((n) => units % n === 0);
    const every = divisors.find((n) => (n * pixels) / units >= apart) ?? units;
    return Array.from({ length: units / every + 1 }, (_, i) => mark(rational(i * every)));
  }
  const between = (a: RulerMark, b: RulerMark): number => ((b.at - a.at) * pixels) / units;
  const [first, last] = [mark(rational(0)), mark(rational(units))];
  const marks = [first];
  for (const each of lines.map(mark)) if (between(marks.at(-1)!, each) >= apart && between(each, last) >= apart) marks.push(each);
  return [...marks, last];
}

/** Length of a mark on the tape, and the space at both its ends together, in CSS pixels. */
export const TICK = 7;
export const GAP = 8;

/** The text on the tape beside text of 1 on the page, on a roomy table and on a narrow one. */
const TAPE_TEXT = 0.78;
const SMALL_TAPE_TEXT = 0.66;
/** A table narrower than this, in heights of the page's text, has a small tape. */
const NARROW = 26;
/** Width of a figure beside its height, at most. */
const FIGURE = 0.6;

/** How the tape is written on a table. */
export interface Tape {
  /** Height of its text in CSS pixels. */
  readonly text: number;
  readonly margins: Margins;
}

/**
 * @returns the tape that fits a table
 * @param width of the table, @param pageText height of the page's text, both in CSS pixels
 */
export function tapeFor(block: Pick<Block, 'finished' | 'grid'>, width: number, pageText: number): Tape {
  const text = pageText * (width < NARROW * pageText ? SMALL_TAPE_TEXT : TAPE_TEXT);
  const { finished, grid } = block;
  const marks = rulerMarks(finished.height, grid.rows, grid.down, Infinity, 0);
  const longest = Math.max(...marks.map(({ length }) => printLength(length, finished.unit, 'bare').length));
  return { text, margins: { left: Math.round(longest * FIGURE * text) + TICK + GAP, top: Math.round(text) + TICK + GAP + 4, free: 14 } };
}
