import type { Block } from '../block/block.ts';
import { printLength } from '../measure/lengths.ts';
import { multiply, rational, type Rational } from '../measure/rational.ts';
import type { Margins } from './view.ts';

/** A mark on the tape along an edge of the drawing: how many cells from its beginning, and the finished length there. */
export interface RulerMark {
  readonly cell: number;
  readonly length: Rational;
}

/**
 * @returns marks for the tape along an edge of `cells` cells and finished length `length`, both ends included, no two closer than
 * `apart` pixels where the edge is drawn `pixels` long
 */
export function rulerMarks(length: Rational, cells: number, pixels: number, apart: number): RulerMark[] {
  const between = pixels / cells;
  const divisors = Array.from({ length: cells }, (_, i) => i + 1).filter((n) => cells % n === 0);
  const every = divisors.find((n) => n * between >= apart) ?? cells;
  return Array.from({ length: cells / every + 1 }, (_, i) => ({ cell: i * every, length: multiply(length, rational(i * every, cells)) }));
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
  const lengths = Array.from({ length: grid.rows + 1 }, (_, row) => multiply(finished.height, rational(row, grid.rows)));
  const longest = Math.max(...lengths.map((length) => printLength(length, finished.unit, 'bare').length));
  return { text, margins: { left: Math.round(longest * FIGURE * text) + TICK + GAP, top: Math.round(text) + TICK + GAP + 4, free: 14 } };
}
