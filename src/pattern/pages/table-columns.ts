import type { Table } from '../document/content.ts';
import type { Composing } from './composing.ts';
import { widthsOf } from './text-lines.ts';

/** Where a table's columns are, from its left edge. */
export interface Columns {
  readonly lefts: readonly number[];
  readonly widths: readonly number[];
  /** Side of boxes to tick and of swatches in rows. */
  readonly lead: number;
  /** Where swatches in rows begin. */
  readonly swatch: number;
}

/** Between two columns, in half lines. */
const GAP = 2;
/** Columns grow by so much at most beyond what they hold, in half lines: what belongs together is not torn apart. */
const GROWTH = 5;

/** A word that is longer may be broken, in half lines. */
const WORD = 15;

/** What a table would like: each column on one line, and at least its longest word. */
interface Wish {
  readonly wide: readonly number[];
  readonly least: readonly number[];
  readonly before: number;
  readonly lead: number;
  readonly swatch: number;
}

function wishOf({ heads, rows, ticks }: Table, composing: Composing): Wish {
  const { type } = composing;
  const lead = type.cell.leading * 0.82;
  const each = heads.map((head, c) => {
    const cells = rows.flatMap(({ cells }) => (cells[c] ? [widthsOf(cells[c].told, type.cell, composing)] : []));
    const all = [widthsOf(head.told, type.head, composing), ...cells];
    return {
      wide: Math.max(...all.map(({ wide }) => wide)) + 0.1,
      least: Math.min(type.half * WORD, Math.max(...all.map(({ least }) => least)) + 0.1),
    };
  });
  const swatched = rows.some(({ fabric, group }) => fabric !== undefined && group === undefined);
  const step = lead + type.half * 0.9;
  return {
    wide: each.map(({ wide }) => wide),
    least: each.map(({ least }) => least),
    before: (ticks ? step : 0) + (swatched ? step : 0),
    lead,
    swatch: ticks ? step : 0,
  };
}

const total = (widths: readonly number[]): number => widths.reduce((sum, width) => sum + width, 0);

/** @returns whether a table would be cramped in a column that is so wide */
export function isCramped(table: Table, width: number, composing: Composing): boolean {
  const { wide, least, before } = wishOf(table, composing);
  const room = width - before - composing.type.half * GAP * (wide.length - 1);
  return total(least) > room || total(wide) > room * 1.5;
}

/** @returns columns as wide as what they hold where there is room; else the longer their texts, the more they give way */
export function columnsOf(table: Table, width: number, composing: Composing): Columns {
  const { wide, least, before, lead, swatch } = wishOf(table, composing);
  const gap = composing.type.half * GAP;
  const room = Math.max(1, width - before - gap * (wide.length - 1));
  const widths = shared(
    wide,
    least,
    room,
    table.figures.map((figures) => (figures ? 0 : composing.type.half * GROWTH)),
  );
  let left = before;
  const lefts = widths.map((each) => {
    const at = left;
    left += each + gap;
    return at;
  });
  return { lefts, widths, lead, swatch };
}

function shared(wide: readonly number[], least: readonly number[], room: number, growth: readonly number[]): readonly number[] {
  const [most, fewest] = [total(wide), total(least)];
  if (most <= room) return wide.map((each, c) => each + Math.min(growth[c] ?? 0, (room - most) / wide.length));
  if (fewest >= room) return levelled(least, room);
  // Columns that are narrow anyway stay on one line; the long ones give way.
  const level = levelled(wide, room);
  if (level.every((each, c) => each >= least[c]!)) return level;
  return wide.map((each, c) => least[c]! + ((each - least[c]!) / (most - fewest)) * (room - fewest));
}

/** @returns room shared out so that what asks for little has it, and what asks for more has equal parts of the rest */
function levelled(asked: readonly number[], room: number): readonly number[] {
  let [left, open] = [room, asked.length];
  let most = 0;
  for (const each of [...asked].sort((a, b) => a - b)) {
    most = left / open;
    if (each > most) break;
    left -= each;
    open--;
  }
  return asked.map((each) => Math.min(each, most));
}
