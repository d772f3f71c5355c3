import { halfSquare, rightTriangle } from './proof-cloth.ts';
import { order } from './proof-number.ts';
import { bounds, dot, nameOf, shifted, spot, turnedBy } from './proof-outline.ts';
import type { Outline, Spot } from './proof-outline.ts';
import type { SewnStep } from './proof-table.ts';

/** Which diagonal of a rectangle a triangle comes from; '' where it does not matter. */
export type Hand = 'falling' | 'rising' | '';

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

/**
 * @returns which diagonal a right triangle is cut along when its rectangle stands on the short side, right side up: falling from the
 * top left or rising; '' for half a square, whose mirror image is the same
 */
export function hand(outline: Outline): Hand {
  const triangle = rightTriangle(outline);
  if (!triangle || halfSquare(outline)) return '';
  // Under a falling diagonal lies a triangle whose long side comes first, clockwise from its right corner.
  const [p, q, r] = [0, 1, 2].map((k) => outline[(triangle.corner + k) % 3]);
  return order(dot(p, q, q), dot(p, r, r)) < 0 ? 'rising' : 'falling';
}

/** @returns a name that two steps share when they lay the same fabrics in the same shapes, up to quarter turns */
function layout(table: SewnStep, mirrored = false): string {
  const parts = table.parts.map((outline) => (outline ?? []).map((p): Spot => (mirrored ? { x: -p.x, y: p.y, w: p.w } : p)));
  const cloth = table.step.parts.map((part) => ('cut' in part.from ? part.from.fabric : `unit ${part.from.unit} turned ${part.turn}`));
  if (parts.every((part) => part.length === 0)) return '';
  const turns = [0, 1, 2, 3].map((turn) => {
    const turned = parts.map((part) => part.map((p) => turnedBy(p, turn)));
    const { left, top } = bounds(turned.flat());
    const back = spot(-left.n * top.d, -top.n * left.d, left.d * top.d);
    // The corners of a convex outline tell it, in whatever order.
    const named = turned.map(
      (part, i) =>
        `${cloth[i]}: ${part
          .map((p) => nameOf(shifted(p, back)))
          .sort()
          .join(' ')}`,
    );
    return named.sort().join('; ');
  });
  return turns.sort()[0];
}

/** What a line is asked for one role. */
export interface Asked {
  readonly line: string;
  readonly role: string;
  /** Only for triangles from rectangles: the diagonal. */
  readonly hand: Hand;
  /** Squares, rectangles or templates that are cut. */
  readonly squares: number;
  /** What is made of them beyond what is wanted: triangles, halves or units. */
  readonly spare: number;
  /** The same in triangles where both squares of a pair come from this line. */
  readonly triangles: number;
}

/** Squares that are used up together, a round of them giving so many results. */
interface Pool {
  readonly results: number;
  /** Keys of the lines that give squares to it, as often as they give one to a round. */
  readonly keys: readonly string[];
  readonly hand: Hand;
  readonly wanted: number;
  /** Units that come out unasked after the results are sewn on. */
  readonly beyond: number;
}

type Pools = Map<string, Pool>;

/** Units that two squares, sewn twice, make together with their mirror images. */
interface Twins {
  readonly table: SewnStep;
  readonly alike: boolean;
  readonly count: number;
  readonly mirrored: number;
}

/** Asks a pool for more; what is asked of one name shares its squares. */
function ask(pools: Pools, name: string, more: Omit<Pool, 'hand' | 'beyond'> & Partial<Pool>): void {
  const { wanted = 0, beyond = 0 } = pools.get(name) ?? {};
  pools.set(name, { hand: '', ...more, wanted: wanted + more.wanted, beyond: beyond + (more.beyond ?? 0) });
}

/** Asks for units or halves sewn from two squares on one diagonal (two of them) or on both (eight). */
function askPair(pools: Pools, role: string, pair: readonly [string, string], wanted: number, beyond = 0): void {
  const keys = [...pair].sort();
  ask(pools, `${role} ${keys.join()}`, { keys, wanted, beyond, results: role === 'eight' ? 8 : 2 });
}

/** A goose or a crossed unit may come with its mirror image. */
const isTwin = (parts: readonly CutPart[]): boolean =>
  parts.length > 2 && parts.every(({ role }) => role === 'pair' || role === 'large' || role === 'small');

/**
 * Counts the squares that steps use up. Triangles of one square, and halves sewn from one pair of squares, may go to different
 * units; the two triangles of a rectangle are of one hand. Squares sewn twice come out as units and their mirror images.
 *
 * @param steps how many units each step makes; for one step alone: what it takes when it shares nothing
 * @param perStrip how many triangles, or segments, a strip of a line gives
 */
export function asked(
  steps: readonly { readonly table: SewnStep; readonly count: number }[],
  perStrip: (line: string) => number,
): Asked[] {
  const pools: Pools = new Map();
  const twins = new Map<string, Twins>();
  for (const { table, count } of steps) {
    const parts = cutParts(table);
    if (!isTwin(parts)) {
      askSingly(parts, count, pools, perStrip);
      askSets(table.step.makes, parts, count, pools, perStrip);
      continue;
    }
    const [here, mirror] = [layout(table), layout(table, true)];
    const name = here < mirror ? here : mirror;
    const group = twins.get(name) ?? { table, alike: here === mirror, count: 0, mirrored: 0 };
    twins.set(name, here === name ? { ...group, count: group.count + count } : { ...group, mirrored: group.mirrored + count });
  }
  for (const group of twins.values()) askTwins(group, pools);
  return [...pools.values()].flatMap(({ wanted, results, keys, hand: cutAlong, beyond }) => {
    const rounds = Math.ceil(wanted / results);
    return [...new Set(keys)].map((key) => {
      const [line, role] = key.split(' ');
      const each = keys.filter((other) => other === key).length;
      const spare = rounds * results - wanted + beyond;
      return { line, role, hand: cutAlong, squares: rounds * each, spare, triangles: spare * (role === 'small' ? 1 : each) };
    });
  });
}

/** Asks for what is cut or sewn once. */
function askSingly(parts: readonly CutPart[], count: number, pools: Pools, perStrip: (line: string) => number): void {
  for (const { key, role, outline, line } of parts) {
    const along = hand(outline);
    if (role === 'half') ask(pools, `${key} ${along}`, { keys: [key], wanted: count, results: 2, hand: along });
    else if (role === 'quarter') ask(pools, key, { keys: [key], wanted: count, results: 4 });
    else if (role.startsWith('strip-')) ask(pools, key, { keys: [key], wanted: count, results: perStrip(line) });
    else if (role !== 'pair' && role !== 'eight' && role !== 'strip') ask(pools, key, { keys: [key], wanted: count, results: 1 });
  }
  const [a, b] = parts.filter(({ role }) => role === 'pair' || role === 'eight');
  if (a && b) askPair(pools, a.role, [a.key, b.key], count);
}

/** Each set takes all strips of a unit, as many of a line as the unit has of its parts, and serves no other unit. */
function askSets(makes: string, parts: readonly CutPart[], count: number, pools: Pools, perStrip: (line: string) => number): void {
  const strips = parts.filter(({ role }) => role === 'strip');
  for (const key of new Set(strips.map((part) => part.key))) {
    const same = strips.filter((part) => part.key === key);
    ask(pools, `${makes} ${key}`, { keys: same.map(() => key), wanted: count, results: perStrip(same[0].line) });
  }
}

/**
 * Four geese come from one large square and four small ones, two of them mirror images where the wings differ.
 * Squares sewn in pairs twice: two squares make two halves; two halves, or a half and a third square, are crossed and make two
 * units, mirror images of one another.
 */
function askTwins({ table, alike, count, mirrored }: Twins, pools: Pools): void {
  const parts = cutParts(table);
  const both = alike ? count + mirrored : Math.max(count, mirrored);
  if (parts.some(({ role }) => role === 'large')) {
    const keys = parts.flatMap(({ key, role }) => (role === 'large' ? [key] : [key, key]));
    ask(pools, keys.join(), { keys, wanted: both, results: alike ? 4 : 2 });
    return;
  }
  const crossings = alike ? Math.ceil(both / 2) : both;
  const beyond = 2 * crossings - count - mirrored;
  const keys = new Map(parts.map(({ index, key }) => [index, key]));
  const loose = new Map(keys);
  const pairs = table.step.joins.flatMap(({ first, second }): [string, string][] => {
    const [a, b] = [keys.get(first), keys.get(second)];
    if (a === undefined || b === undefined) return [];
    loose.delete(first);
    loose.delete(second);
    return [[a, b]];
  });
  const names = pairs.map((pair) => [...pair].sort().join());
  // Halves of one kind come from one pile; what is left over of the units is counted with each pile once.
  pairs.forEach((pair, i) => askPair(pools, 'pair', pair, crossings, names.indexOf(names[i]) === i ? beyond : 0));
  for (const key of loose.values()) ask(pools, `${key} crossed`, { keys: [key], wanted: crossings, results: 1, beyond });
}
