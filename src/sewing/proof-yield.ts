import { halfSquare, rightTriangle } from './proof-cloth.ts';
import { fraction, order, over, plus } from './proof-number.ts';
import { area, bounds, dot, nameOf, shifted, spot, turnedBy } from './proof-outline.ts';
import type { Outline, Spot } from './proof-outline.ts';
import type { SewnStep } from './proof-table.ts';

/** One patch of a step that comes straight from the cutting list. */
export interface CutPart {
  readonly index: number;
  readonly outline: Outline;
  readonly line: string;
  readonly role: string;
  /** "3 pair": the line and what is done with its squares. */
  readonly key: string;
}

/** @returns the parts of a step that come from the cutting list and have an outline */
export function cutParts(table: SewnStep): CutPart[] {
  return table.step.parts.flatMap((part, index) => {
    const outline = table.parts[index];
    if (!('cut' in part.from) || !outline) return [];
    return [{ index, outline, line: part.from.cut, role: part.from.role, key: `${part.from.cut} ${part.from.role}` }];
  });
}

/** @returns which way round a right triangle lies; '' for half a square, whose mirror image is the same */
function hand(outline: Outline): string {
  const triangle = rightTriangle(outline);
  if (!triangle || halfSquare(outline)) return '';
  const [p, q, r] = [0, 1, 2].map((k) => outline[(triangle.corner + k) % 3]);
  return order(dot(p, q, q), dot(p, r, r)) < 0 ? 'short side first' : 'long side first';
}

/** @returns a name that two steps share when they lay the same fabrics in the same shapes, up to quarter turns */
export function layout(table: SewnStep, mirrored = false): string {
  const parts = table.parts.map((outline) => (outline ?? []).map((p): Spot => (mirrored ? { x: -p.x, y: p.y, w: p.w } : p)));
  const cloth = table.step.parts.map((part) => ('cut' in part.from ? part.from.fabric : `unit ${part.from.unit} turned ${part.turn}`));
  if (parts.every((part) => part.length === 0)) return '';
  const turns = [0, 1, 2, 3].map((turn) => {
    const turned = parts.map((part) => part.map((p) => turnedBy(p, turn)));
    const { left, top } = bounds(turned.flat());
    const back = spot(-left.n * top.d, -top.n * left.d, left.d * top.d);
    // The corners of a convex outline tell it, in whatever order.
    const named = turned.map((part, i) => `${cloth[i]}: ${part.map((p) => nameOf(shifted(p, back))).sort().join(' ')}`);
    return named.sort().join('; ');
  });
  return turns.sort()[0];
}

/** @returns whether the mirror image of what a step makes is something else */
export const handed = (table: SewnStep): boolean => layout(table) !== layout(table, true);

/** @returns how many patches of this kind one square (rectangle, template) yields */
export function yieldOf(part: CutPart, table: SewnStep): number {
  if (part.role === 'eight') return 8;
  if (part.role === 'quarter' || part.role === 'large') return 4;
  if (part.role === 'half' || part.role === 'small') return 2;
  if (part.role !== 'pair') return 1;
  const whole = cutParts(table).map((other) => area(other.outline)).reduce(plus);
  return order(over(whole, area(part.outline)), fraction(4n)) < 0 ? 2 : 4;
}

const halves = (n: number): number => Math.ceil(n / 2);

/**
 * Squares sewn in pairs to units of three or four triangles: two squares make two halves of two fabrics; two such halves, or one
 * and a third square, are paired again and make two units, which are mirror images of one another.
 * @returns squares by key
 */
function pairedTwice(table: SewnStep, parts: readonly CutPart[], count: number): Map<string, number> {
  const rounds = handed(table) ? count : halves(count);
  const squares = new Map<string, number>();
  const kinds = new Map<string, { readonly keys: readonly string[]; readonly each: number }>();
  const byIndex = new Map(parts.map((part) => [part.index, part.key]));
  const joinedFirst = new Set<number>();
  for (const join of table.step.joins) {
    const [a, b] = [byIndex.get(join.first), byIndex.get(join.second)];
    if (a === undefined || b === undefined) continue;
    joinedFirst.add(join.first).add(join.second);
    const keys = [a, b].sort();
    const kind = keys.join();
    kinds.set(kind, { keys, each: (kinds.get(kind)?.each ?? 0) + 1 });
  }
  const add = (key: string, n: number): void => void squares.set(key, (squares.get(key) ?? 0) + n);
  for (const { keys, each } of kinds.values()) for (const key of keys) add(key, halves(rounds * each));
  for (const part of parts) if (!joinedFirst.has(part.index)) add(part.key, rounds);
  return squares;
}

/** @returns how many squares (rectangles, templates) a step takes for `count` units when it shares none, by key */
export function squaresFor(table: SewnStep, count: number): Map<string, number> {
  const parts = cutParts(table);
  if (parts.length > 2 && parts.every((part) => part.role === 'pair')) return pairedTwice(table, parts, count);
  const squares = new Map<string, number>();
  const add = (key: string, n: number): void => void squares.set(key, (squares.get(key) ?? 0) + n);
  const ofFour = parts.some((part) => part.role === 'large' || part.role === 'small');
  const geese = ofFour ? Math.ceil(count / (handed(table) ? 2 : 4)) : 0;
  for (const part of parts) {
    if (part.role === 'large') add(part.key, geese);
    else if (part.role === 'small') add(part.key, 2 * geese);
    else if (part.role === 'eight') add(part.key, Math.ceil(count / 8));
    else if (part.role === 'pair') add(part.key, halves(count));
    else if (part.role !== 'half' && part.role !== 'quarter') add(part.key, count);
  }
  for (const [key, n] of shared([table], () => count)) add(key, n);
  return squares;
}

/**
 * @returns how many squares or rectangles give all the separate triangles of some steps, by key: triangles of one square may go to
 * different steps, but the two triangles of a rectangle are of one hand
 */
export function shared(tables: readonly SewnStep[], countOf: (table: SewnStep) => number): Map<string, number> {
  const triangles = new Map<string, { readonly key: string; readonly each: number; readonly n: number }>();
  for (const table of tables) {
    for (const part of cutParts(table)) {
      if (part.role !== 'half' && part.role !== 'quarter') continue;
      const kind = `${part.key} ${hand(part.outline)}`;
      triangles.set(kind, { key: part.key, each: yieldOf(part, table), n: (triangles.get(kind)?.n ?? 0) + countOf(table) });
    }
  }
  const squares = new Map<string, number>();
  for (const { key, each, n } of triangles.values()) squares.set(key, (squares.get(key) ?? 0) + Math.ceil(n / each));
  return squares;
}
