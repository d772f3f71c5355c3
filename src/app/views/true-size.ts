import type { LengthUnit } from '../../block/block.ts';
import { remember, remembered } from './remembered.ts';

/** Device pixels to a measured inch of this screen; null until she has measured it. */
const NAME = 'piecewright screen';

const isMeasure = (value: unknown): value is number => typeof value === 'number' && value > 10 && value < 10_000;

const CSS_INCH = 96;
const INCH: Readonly<Record<LengthUnit, number>> = { in: 1, cm: 1 / 2.54 };

/** The bar to be measured: how long it is where a CSS inch is an inch, in a unit. */
export const BAR: Readonly<Record<LengthUnit, number>> = { in: 2.5, cm: 6 };

export const barPixels = (unit: LengthUnit): number => BAR[unit] * INCH[unit] * CSS_INCH;

/** @returns whether this screen has been measured */
export const isMeasured = (): boolean => remembered(NAME, isMeasure, 0) > 0;

/** @returns how many CSS pixels a unit takes on this screen as it is zoomed now: as measured, else a CSS inch to the inch */
export function pixelsPer(unit: LengthUnit): number {
  const inch = remembered(NAME, isMeasure, 0) / window.devicePixelRatio || CSS_INCH;
  return inch * INCH[unit];
}

/** Remembers that the bar for a unit was measured to be so long, whatever the page's zoom. @returns whether that can be */
export function measureScreen(length: number, unit: LengthUnit, bar: LengthUnit): boolean {
  const inch = (barPixels(bar) * window.devicePixelRatio) / (length * INCH[unit]);
  if (!isMeasure(inch)) return false;
  remember(NAME, inch);
  return true;
}
