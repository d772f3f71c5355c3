import type { Rational } from '../measure/rational.ts';
import { ZERO, add, compare, divide, lesser, multiply, rational, subtract, timesInto, upToStep } from '../measure/rational.ts';
import { formatLength, printLength } from '../measure/lengths.ts';
import type { Cut } from './cut.ts';

/** Pieces of one line, side by side along a strip, in stacks of equal height across it. */
export interface Row {
  /** Id of the line. */
  readonly cut: string;
  readonly pieces: number;
  /** How many lie one above another across the strip. */
  readonly stacked: number;
  /** What one piece takes along the strip (across the cloth), and across the strip (along the cloth). */
  readonly along: Rational;
  readonly across: Rational;
}

/** One strip across the usable width, cut with through-cuts only. */
export interface Strip {
  /** Along the length of the cloth. */
  readonly width: Rational;
  /** From one end on; what is left over lies at the other end. */
  readonly rows: readonly Row[];
}

/** What to cut from one fabric, and how much of it to buy; lengths in the block's unit. */
export interface StripPlan {
  /** Widest first. */
  readonly strips: readonly { readonly width: Rational; readonly count: number }[];
  /** All strips together along the length of the cloth. */
  readonly length: Rational;
  /** Rounded up to 1/8 yd or 10 cm: "1/4 yd", "30 cm". */
  readonly buy: string;
  readonly layout: readonly Strip[];
  /** What a maker should know: one sentence each. */
  readonly notes: readonly string[];
}

/** A line as it goes into strips of its own. */
interface Lay {
  readonly cut: Cut;
  readonly along: Rational;
  readonly across: Rational;
}

interface OpenStrip {
  readonly width: Rational;
  room: Rational;
  readonly rows: Row[];
}

const EIGHTH_YARD = rational(9, 2);
const YARD = rational(36);
const TEN = rational(10);

/**
 * @returns how the lines of one fabric come out of strips across its usable width: each line in strips as wide as its shorter side,
 * ⌊width / longer side⌋ to a strip, the widest first; what is left of a strip serves narrower lines before a new strip is begun.
 * A piece longer than the width lies along the length of the cloth. This is a plan that works, not the shortest there is.
 * @param width usable width of the cloth, in the same unit as the cuts
 */
export function stripPlan(cuts: readonly Cut[], width: Rational, unit: 'in' | 'cm'): StripPlan {
  const strips: OpenStrip[] = [];
  const notes: string[] = [];
  const lays = cuts.map((cut) => layOf(cut, width));
  for (const { cut } of lays) {
    if (compare(cut.height, width) > 0) notes.push(longNote(cut, width, unit));
  }
  for (const lay of lays.sort((a, b) => compare(b.across, a.across) || compare(b.along, a.along))) {
    if (compare(lay.along, width) > 0) {
      strips.push(...joinedCloth(lay, width));
      continue;
    }
    let left = lay.cut.quantity;
    for (const strip of strips) left -= fillRoom(strip, lay, left);
    const perStrip = timesInto(width, lay.along);
    while (left > 0) {
      const pieces = Math.min(left, perStrip);
      const row: Row = { cut: lay.cut.id, pieces, stacked: 1, along: lay.along, across: lay.across };
      strips.push({ width: lay.across, room: subtract(width, multiply(lay.along, rational(pieces))), rows: [row] });
      left -= pieces;
    }
  }
  const length = strips.reduce((sum, strip) => add(sum, strip.width), ZERO);
  const layout = strips.map((strip): Strip => ({ width: strip.width, rows: strip.rows }));
  return { strips: counted(layout), length, buy: toBuy(length, unit), layout, notes };
}

/** The longer side across the cloth; along it where that is the only way the piece fits. */
function layOf(cut: Cut, width: Rational): Lay {
  const fits = compare(cut.height, width) <= 0;
  return fits ? { cut, along: cut.height, across: cut.width } : { cut, along: cut.width, across: cut.height };
}

/** Puts as many pieces as fit into what is left of a strip, the way round that takes more; returns how many. */
function fillRoom(strip: OpenStrip, { cut }: Lay, wanted: number): number {
  if (wanted === 0) return 0;
  const ways = [
    { along: cut.height, across: cut.width },
    { along: cut.width, across: cut.height },
  ].map((way) => {
    const [stacked, rows] = [timesInto(strip.width, way.across), timesInto(strip.room, way.along)];
    return { ...way, stacked, holds: stacked * rows };
  });
  const best = ways[1]!.holds > ways[0]!.holds ? ways[1]! : ways[0]!;
  const pieces = Math.min(wanted, best.holds);
  if (pieces === 0) return 0;
  const { along, across, stacked } = best;
  strip.rows.push({ cut: cut.id, pieces, stacked, along, across });
  strip.room = subtract(strip.room, multiply(along, rational(Math.ceil(pieces / stacked))));
  return pieces;
}

/** Pieces that exceed the cloth both ways: each from as many widths of cloth, sewn together first, as it needs. */
function joinedCloth({ cut, along, across }: Lay, width: Rational): OpenStrip[] {
  const widths = upToStep(divide(along, width), rational(1)).n;
  const strip = (): OpenStrip => ({ width: across, room: ZERO, rows: [] });
  const first = (): OpenStrip => ({ ...strip(), rows: [{ cut: cut.id, pieces: 1, stacked: 1, along, across }] });
  return Array.from({ length: cut.quantity }, () => [first(), ...Array.from({ length: widths - 1 }, strip)]).flat();
}

function longNote(cut: Cut, width: Rational, unit: 'in' | 'cm'): string {
  const size = `${printLength(cut.width, unit, 'bare')} × ${printLength(cut.height, unit)}`;
  const cloth = `the usable width of ${printLength(width, unit)}`;
  return compare(lesser(cut.width, cut.height), width) > 0
    ? `Cut ${cut.id} (${size}) exceeds ${cloth} both ways: sew widths of cloth together before cutting it.`
    : `Cut ${cut.id} (${size}) is longer than ${cloth}: cut it along the length of the cloth.`;
}

function counted(layout: readonly Strip[]): StripPlan['strips'] {
  const strips: { width: Rational; count: number }[] = [];
  for (const { width } of [...layout].sort((a, b) => compare(b.width, a.width))) {
    const last = strips[strips.length - 1];
    if (last !== undefined && compare(last.width, width) === 0) last.count += 1;
    else strips.push({ width, count: 1 });
  }
  return strips;
}

/** @returns a length of cloth as it is asked for in a shop: rounded up to 1/8 yd (4 1/2 in.) or 10 cm, nothing added */
export function toBuy(length: Rational, unit: 'in' | 'cm'): string {
  return unit === 'in' ? `${formatLength(divide(upToStep(length, EIGHTH_YARD), YARD))} yd` : printLength(upToStep(length, TEN), 'cm');
}
