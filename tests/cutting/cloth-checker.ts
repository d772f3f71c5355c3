import type { ClothOrder } from '../../src/cutting/cloth/order.ts';
import type { ClothLayout } from '../../src/cutting/layout.ts';
import type { Rational } from '../../src/measure/rational.ts';

/*
 * Looks at a layout as somebody with the cloth before her would: every piece as a rectangle at its place, in whole numbers. Only types are
 * taken from the source.
 */

interface Laid {
  readonly cut: string;
  readonly left: bigint;
  readonly top: bigint;
  readonly right: bigint;
  readonly bottom: bigint;
}

/** @returns what is wrong with a layout, in sentences; nothing where it is right */
export function faultsOf(order: ClothOrder, layout: ClothLayout): readonly string[] {
  const faults: string[] = [];
  const lengths = [
    ...order.wanted.flatMap(({ width, height }) => [width, height]),
    ...[...order.own, order.bought].flatMap(({ width, length }) => [width, ...(length === null ? [] : [length])]),
    ...layout.cloths.flatMap(({ strips }) =>
      strips.flatMap(({ length, columns }) => [
        length,
        ...columns.flatMap(({ width, pieces }) => [width, ...pieces.flatMap((laid) => [laid.width, laid.length])]),
      ]),
    ),
    layout.takes,
    layout.least,
  ];
  const scale = lengths.map(({ d }) => BigInt(d)).reduce(lcm, 1n);
  const marks = ({ n, d }: Rational): bigint => BigInt(n) * (scale / BigInt(d));
  const counted = new Map<string, number>();
  const used = new Map<string, number>();
  let bought = 0n;

  for (const { source, strips, times } of layout.cloths) {
    const own = order.own.findIndex((one) => JSON.stringify(one) === JSON.stringify(source));
    const name = own >= 0 ? `own cloth ${own + 1}` : source.form;
    if (own < 0 && JSON.stringify(source) !== JSON.stringify(order.bought)) faults.push(`${name} is no cloth of the order`);
    used.set(name, (used.get(name) ?? 0) + times);
    if (source.count !== null && used.get(name)! > source.count) faults.push(`${name} is used ${used.get(name)} times`);
    const laid: Laid[] = [];
    let top = 0n;
    for (const strip of strips) {
      for (let below = 0; below < strip.times; below++) {
        let left = 0n;
        for (const column of strip.columns) {
          for (let beside = 0; beside < column.times; beside++) {
            let at = top;
            for (const { cut, width, length, count } of column.pieces) {
              for (let i = 0; i < count; i++) {
                laid.push({ cut, left, top: at, right: left + marks(width), bottom: at + marks(length) });
                at += marks(length);
              }
            }
            left += marks(column.width);
          }
        }
        top += marks(strip.length);
      }
    }
    faults.push(...faultsOnCloth(laid, marks(source.width), source.length === null ? top : marks(source.length), name));
    if (source.length !== null && top > marks(source.length)) faults.push(`strips are longer than ${name}`);
    if (own < 0) bought += BigInt(times) * (source.length === null ? top : scale);
    for (const { cut, left, right, top: from, bottom } of laid) {
      const size = `${cut}: ${sizeKey(order, cut, right - left, bottom - from, marks)}`;
      counted.set(size, (counted.get(size) ?? 0) + times);
    }
  }

  const wanted = new Map<string, number>();
  for (const { cut, width, height, count, turn } of order.wanted) {
    const size = `${cut}: ${keyOf(marks(width), marks(height), turn)}`;
    wanted.set(size, (wanted.get(size) ?? 0) + count);
  }
  const unplaced = new Map<string, number>();
  for (const { cut, count } of layout.unplaced) unplaced.set(cut, (unplaced.get(cut) ?? 0) + count);
  for (const size of counted.keys()) if (!wanted.has(size)) faults.push(`nobody wants ${size}`);
  const missing = new Map<string, number>();
  for (const [size, count] of wanted) {
    const there = counted.get(size) ?? 0;
    if (there > count) faults.push(`${there} of ${size}, wanted ${count}`);
    const cut = size.slice(0, size.indexOf(':'));
    missing.set(cut, (missing.get(cut) ?? 0) + count - there);
  }
  for (const [cut, count] of missing) if (count !== (unplaced.get(cut) ?? 0)) faults.push(`${count} of ${cut} are missing`);
  if (bought !== marks(layout.takes)) faults.push('it does not take what it says');
  if (marks(layout.least) > marks(layout.takes)) faults.push('the bound is above what is taken');
  return faults;
}

const keyOf = (a: bigint, b: bigint, turn: boolean): string => (turn ? (a <= b ? `${a} by ${b}, any way` : `${b} by ${a}, any way`) : `${a} by ${b}`);

/** A piece as its line knows it: which way round it lies matters only where it may not be turned. */
function sizeKey(order: ClothOrder, cut: string, across: bigint, along: bigint, marks: (length: Rational) => bigint): string {
  const asGiven = order.wanted.find((one) => one.cut === cut && !one.turn && marks(one.width) === across && marks(one.height) === along);
  return keyOf(across, along, asGiven === undefined && order.wanted.some((one) => one.cut === cut && one.turn));
}

function faultsOnCloth(laid: readonly Laid[], width: bigint, length: bigint, name: string): readonly string[] {
  const out = laid.filter(({ left, top, right, bottom }) => left < 0n || top < 0n || right > width || bottom > length || right <= left || bottom <= top);
  if (out.length > 0) return [`${out.length} pieces lie outside ${name}`];
  // Cut right across between all pieces, then across every strip, then every column: each piece must lie alone.
  const upright = (one: Laid): readonly [bigint, bigint] => [one.top, one.bottom];
  const level = (one: Laid): readonly [bigint, bigint] => [one.left, one.right];
  const parts = apart(laid, upright).flatMap((strip) => apart(strip, level)).flatMap((column) => apart(column, upright));
  return parts.every((part) => part.length === 1) ? [] : [`pieces on ${name} overlap, or no cut right across parts them`];
}

/** @returns groups between which one can cut right across without cutting into a piece */
function apart(laid: readonly Laid[], extent: (one: Laid) => readonly [bigint, bigint]): readonly (readonly Laid[])[] {
  const sorted = [...laid].sort((a, b) => (extent(a)[0] < extent(b)[0] ? -1 : 1));
  const groups: Laid[][] = [];
  let end: bigint | null = null;
  for (const one of sorted) {
    const [from, to] = extent(one);
    if (end === null || from >= end) groups.push([one]);
    else groups.at(-1)!.push(one);
    end = end === null || to > end ? to : end;
  }
  return groups;
}

function lcm(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y > 0n) [x, y] = [y, x % y];
  return (a / x) * b;
}
