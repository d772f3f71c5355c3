import type { Rational } from '../measure/rational.ts';
import { compare, multiply } from '../measure/rational.ts';
import { compareSurds } from '../measure/surd.ts';
import type { Cut, CutUse, NestedTriangles } from './cut.ts';
import { stripsFor } from './from-strips.ts';
import type { CutSize, CuttingRules, Need } from './needs.ts';

/** Everything that shares squares, or strips. */
interface Pool {
  readonly needs: readonly Need[];
  readonly size: CutSize;
  readonly nested?: NestedTriangles;
  readonly quantity: number;
  readonly spare: number;
}

const SUBCUTS: readonly Cut['subcut'][] = ['none', 'once', 'twice', 'head to tail'];

/**
 * @returns the lines of the cutting list, numbered in cutting order: fabric by fabric in the given order, the largest piece first;
 * equal cuts of a fabric are one line. With them the needs that each line serves.
 */
export function cutLines(
  needs: readonly Need[],
  fabrics: readonly string[],
  room?: CuttingRules['room'],
): readonly { readonly cut: Cut; readonly needs: readonly Need[] }[] {
  const pools = [...gathered(needs, (need) => need.pool).values()].map((same) => poolOf(same, room));
  const byLine = gathered(pools, ({ size, needs: [first] }) => `${first!.fabric}|${first!.subcut}|${size.key}`);
  const lines = [...byLine.values()].map((same) => ({ cut: lineOf(same), needs: same.flatMap((pool) => pool.needs) }));
  const seen = [...new Set([...fabrics, ...needs.map((need) => need.fabric)])];
  const place = new Map(seen.map((fabric, i) => [fabric, i]));
  const order = (a: Cut, b: Cut): number =>
    place.get(a.fabric)! - place.get(b.fabric)! ||
    compare(area(b), area(a)) ||
    compare(b.height, a.height) ||
    SUBCUTS.indexOf(a.subcut) - SUBCUTS.indexOf(b.subcut);
  return lines.sort((a, b) => order(a.cut, b.cut)).map(({ cut, needs: served }, i) => ({ cut: { ...cut, id: `${i + 1}` }, needs: served }));
}

const area = ({ width, height }: Cut): Rational => multiply(width, height);

function poolOf(needs: readonly Need[], room: CuttingRules['room']): Pool {
  const [{ results, squares, size, strip, fabric }] = needs as [Need];
  const wanted = sum(needs.map((need) => need.wanted));
  if (strip !== undefined) {
    const { strips, size: cut, nested } = stripsFor(strip, wanted, room?.(fabric) ?? null);
    const filled = needs.map((need) => ({ ...need, size: cut, results: nested.triangles }));
    return { needs: filled, size: cut, nested, quantity: strips, spare: strips * nested.triangles - wanted };
  }
  const quantity = squaresFor(wanted, needs[0]!);
  const yielded = (quantity / squares) * results;
  return { needs, size, quantity, spare: yielded - wanted + sum(needs.map((need) => need.beyond)) };
}

const squaresFor = (wanted: number, { results, squares }: Need): number => Math.ceil(wanted / results) * squares;

/** One line of the list, not yet numbered. */
function lineOf(pools: readonly Pool[]): Cut {
  const needs = pools.flatMap((pool) => pool.needs);
  const [first] = needs as [Need];
  const [{ nested, size: { shape, width, height, template } }] = pools as [Pool];
  const quantityBy = (hand: Need['hand']): number =>
    sum(pools.filter(({ needs: [one] }) => one!.hand === hand).map(({ quantity }) => quantity));
  return {
    id: '',
    fabric: first.fabric,
    quantity: sum(pools.map(({ quantity }) => quantity)),
    shape,
    width,
    height,
    exact: needs.map((need) => need.size.exact).reduce(larger),
    subcut: first.subcut,
    ...(nested && { nested }),
    ...(first.set && { set: { ...first.set, down: sum(pools.map(({ needs: [one], quantity }) => (one!.set!.down ? quantity : 0))) } }),
    ...(first.hand === undefined ? {} : { diagonals: { falling: quantityBy('falling'), rising: quantityBy('rising') } }),
    uses: usesOf(pools),
    spare: sum(pools.map(({ spare }) => spare)),
    template,
    pieces: needs.flatMap((need) => need.pieces).sort((a, b) => a - b),
  };
}

/** Of two exact sizes that round up to the same the one that asks for more. */
function larger(a: CutSize['exact'], b: CutSize['exact']): CutSize['exact'] {
  if (a === null || b === null) return null;
  return (compareSurds(a.width, b.width) || compareSurds(a.height, b.height)) >= 0 ? a : b;
}

/** What each unit takes from a line by itself; units that share a square each count it. */
function usesOf(pools: readonly Pool[]): readonly CutUse[] {
  const uses = new Map<string, CutUse>();
  for (const { needs } of pools) {
    for (const same of gathered(needs, (need) => `${need.unit}|${need.role}`).values()) {
      const [{ unit, role }] = same as [Need];
      const quantity = squaresFor(sum(same.map((need) => need.alone)), same[0]!);
      const before = uses.get(`${unit}|${role}`)?.quantity ?? 0;
      uses.set(`${unit}|${role}`, { unit, role, quantity: before + quantity });
    }
  }
  return [...uses.values()].sort((a, b) => compareUnits(a.unit, b.unit));
}

/** Units in the order A … Z, AA …; the block last. */
function compareUnits(a: string, b: string): number {
  if (a === b) return 0;
  if (a === 'block' || b === 'block') return a === 'block' ? 1 : -1;
  return a.length - b.length || (a < b ? -1 : 1);
}

function gathered<T>(all: readonly T[], name: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const group = groups.get(name(one));
    if (group === undefined) groups.set(name(one), [one]);
    else group.push(one);
  }
  return groups;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);
