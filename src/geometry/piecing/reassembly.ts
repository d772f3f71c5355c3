import { leastCorner, rectangle, sameOutline } from '../convex.ts';
import { compareAlong, latticePoint, lineThrough, side, type Point } from '../point.ts';
import type { Pin } from '../patchwork/drawing.ts';
import type { Assembly, Piecing, SewnSeam } from './assembly.ts';
import { Congruences } from './congruence.ts';
import { figuresOf } from './figures.ts';
import { ORDERS, type AssemblyOrder } from './order.ts';
import { alike, unitsOf } from './units.ts';
import { isWeb } from './web.ts';

/** A finished unit with its place: a level rectangle on whole steps. */
interface Placed {
  readonly node: Assembly;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** 'across': side by side, parted by upright seams; 'down': under one another. */
type Direction = 'across' | 'down';

const other = (direction: Direction): Direction => (direction === 'across' ? 'down' : 'across');
const begin = (at: Pick<Placed, 'x0' | 'y0'>, direction: Direction): number => (direction === 'across' ? at.x0 : at.y0);
const end = (at: Pick<Placed, 'x1' | 'y1'>, direction: Direction): number => (direction === 'across' ? at.x1 : at.y1);

/** A web has at least so many units; fewer are a pair of pairs. */
const FEWEST_IN_WEB = 6;

/**
 * Puts the same finished units together in another order, by straight through-seams: whatever is not itself a row or column of others
 * stays as it is, and so does what lies in one cell of the order and was made by itself.
 * @param pins what the designer set apart stays a unit, and what she wants sewn last is
 * @returns the same way to sew, its pieces the very same ones; null where the units do not lie so
 */
export function inOrder(piecing: Piecing, order: AssemblyOrder, pins: readonly Pin[] = []): Piecing | null {
  const found = piecing.reassembled?.found ?? piecing.root;
  const root = order === 'as found' ? found : rootIn(found, order, pins);
  if (!root || !pins.every((pin) => isHonoured(root, pin))) return null;
  if (order === 'as found' ? root === piecing.root : isSewnAlike(root, piecing.root) && isWeb(root) === isWeb(piecing.root)) return piecing;
  const congruence = new Congruences();
  const told = root === found ? found : alike(inReadingOrder(root), congruence);
  const units = unitsOf(told, congruence);
  const { way, pieces, divisions } = piecing;
  const { bound } = piecing.figures;
  const figures = { ...figuresOf({ root: told, pieces, units }), ...(bound !== undefined && { bound }) };
  const whence = root === found || (isSewnAlike(told, found) && !isWeb(told)) ? {} : { reassembled: { order, found } };
  return { way, root: told, pieces, units, figures, divisions, ...whence };
}

/** One order that a block's units allow. */
export interface Ordered {
  readonly order: AssemblyOrder;
  /** The order that the way was found in, where it is one of the others; only of 'as found'. */
  readonly same?: AssemblyOrder;
  readonly piecing: Piecing;
}

/** @returns every order in which a block may be put together, as it was found first; each way of sewing once */
export function ordersOf(piecing: Piecing, pins: readonly Pin[] = []): readonly Ordered[] {
  const found = inOrder(piecing, 'as found', pins) ?? piecing;
  const orders: Ordered[] = [{ order: 'as found', piecing: found }];
  for (const order of ORDERS) {
    const put = order === 'as found' ? null : inOrder(found, order, pins);
    if (!put) continue;
    const known = order === 'web' ? -1 : orders.findIndex((each) => each.order !== 'web' && isSewnAlike(each.piecing.root, put.root));
    if (known < 0) orders.push({ order, piecing: put });
    else if (known === 0) orders[0] = { same: order, ...orders[0]! };
  }
  return orders;
}

function rootIn(found: Assembly, order: AssemblyOrder, pins: readonly Pin[]): Assembly | null {
  const made = new Map<string, Assembly>();
  const units = unitsIn(found, pins, made);
  if (!units || units.length < 2) return null;
  const lay = (all: readonly Placed[], first: Direction): Assembly => {
    const known = made.get(nameOf(extentOf(all)));
    return known ?? inLine(all, first, lay) ?? inLine(all, other(first), lay)!;
  };
  /** What lies side by side between two seams right across the block: a cell of the block's own grid is made by itself, unless it is a row. */
  const inBand = (band: readonly Placed[], lines: readonly number[], direction: Direction): readonly (readonly Placed[])[] =>
    parted(band, lines, direction).flatMap((cell) => {
      const bands = bandsOf(cell, direction);
      return lines.length > 0 && bands.some((each) => each.length > 1) ? [cell] : bands;
    });
  const inBands = (direction: Direction, kind: { readonly kind?: 'joined unit' }): Assembly | null => {
    const lines = linesOf(bandsOf(units, other(direction)), other(direction));
    const bands = bandsOf(units, direction).map((band) => inBand(band, lines, other(direction)));
    const places = bands.map((band) => linesOf(band, other(direction)).join());
    const isGrid = places[0] !== '' && places.every((each) => each === places[0]) && bands.length * bands[0]!.length >= FEWEST_IN_WEB;
    if (bands.length < 2 || (!kind.kind && !isGrid)) return null;
    const rows = bands.map((band): Assembly => {
      const parts = band.map((cell) => lay(cell, direction));
      return parts.length === 1 ? parts[0]! : joined(extentOf(band.flat()), parts, linesOf(band, other(direction)), other(direction), kind);
    });
    return joined(extentOf(units), rows, linesOf(bands.map((band) => band.flat()), direction), direction);
  };
  switch (order) {
    case 'rows':
      return inBands('down', UNIT);
    case 'columns':
      return inBands('across', UNIT);
    case 'web':
      return inBands('down', {});
    default: {
      const first: Direction = found.seams.length === 1 && found.seams[0]!.from.x === found.seams[0]!.to.x ? 'across' : 'down';
      return inQuarters(units, first, made, lay);
    }
  }
}

/**
 * @param made takes up every unit on the way there, by its place
 * @returns what is not itself a row or column of others; null where the block is no row or column
 */
function unitsIn(found: Assembly, pins: readonly Pin[], made: Map<string, Assembly>): readonly Placed[] | null {
  const units: Placed[] = [];
  const open = (node: Assembly): boolean => {
    const places = isLine(node) ? node.parts.map(placed) : [];
    if (places.length === 0 || places.includes(null)) return false;
    node.parts.forEach((part, i) => {
      const place = places[i]!;
      made.set(nameOf(place), part);
      if (isPinned(place, pins) || !open(part)) units.push(place);
    });
    return true;
  };
  return open(found) ? units : null;
}

/** @returns whether things are joined side by side or under one another, all seams one way */
function isLine({ kind, parts, seams }: Assembly): boolean {
  if (parts.length < 2 || kind !== 'joined unit') return false;
  return seams.every(({ from, to }) => from.x * to.w === to.x * from.w) || seams.every(({ from, to }) => from.y * to.w === to.y * from.w);
}

/** @returns where a thing lies; null where that is no level rectangle on whole steps */
function placed(node: Assembly): Placed | null {
  const { outline } = node;
  if (outline.length !== 4 || outline.some(({ w }) => w !== 1)) return null;
  const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
  const [x0, y0, x1, y1] = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  return sameOutline(outline, rectangle(x0, y0, x1, y1).points) ? { node, x0, y0, x1, y1 } : null;
}

type Extent = Omit<Placed, 'node'>;

const nameOf = ({ x0, y0, x1, y1 }: Extent): string => `${x0} ${y0} ${x1} ${y1}`;

function extentOf(units: readonly Placed[]): Extent {
  let { x0, y0, x1, y1 } = units[0]!;
  for (const unit of units) [x0, y0, x1, y1] = [Math.min(x0, unit.x0), Math.min(y0, unit.y0), Math.max(x1, unit.x1), Math.max(y1, unit.y1)];
  return { x0, y0, x1, y1 };
}

/** @returns the units between one straight seam right across them all and the next, in order */
function bandsOf(units: readonly Placed[], direction: Direction): readonly (readonly Placed[])[] {
  const bands: Placed[][] = [];
  let reach = -Infinity;
  for (const unit of [...units].sort((a, b) => begin(a, direction) - begin(b, direction))) {
    if (begin(unit, direction) >= reach) bands.push([unit]);
    else bands.at(-1)!.push(unit);
    reach = Math.max(reach, end(unit, direction));
  }
  return bands;
}

/** @returns units joined along every straight seam right across them all; the unit itself where it is one; null where there is no such seam */
function inLine(units: readonly Placed[], direction: Direction, lay: (band: readonly Placed[], next: Direction) => Assembly): Assembly | null {
  if (units.length === 1) return units[0]!.node;
  const bands = bandsOf(units, direction);
  if (bands.length < 2) return null;
  return joined(extentOf(units), bands.map((band) => lay(band, other(direction))), linesOf(bands, direction), direction);
}

/** @returns where the seams between bands lie */
const linesOf = (bands: readonly (readonly Placed[])[], direction: Direction): readonly number[] =>
  bands.slice(1).map((band) => begin(extentOf(band), direction));

/** @returns the units between these lines, none of which divides one */
function parted(units: readonly Placed[], lines: readonly number[], direction: Direction): readonly (readonly Placed[])[] {
  const cells: Placed[][] = [];
  let next = 0;
  for (const unit of [...units].sort((a, b) => begin(a, direction) - begin(b, direction))) {
    const before = next;
    while (next < lines.length && lines[next]! <= begin(unit, direction)) next++;
    if (cells.length === 0 || next > before) cells.push([unit]);
    else cells.at(-1)!.push(unit);
  }
  return cells;
}

/** A row by itself is a unit; a row of a web is none. */
const UNIT = { kind: 'joined unit' } as const;

/** @param kind none for a row of a web, which is no unit by itself */
function joined(
  { x0, y0, x1, y1 }: Extent,
  parts: readonly Assembly[],
  places: readonly number[],
  direction: Direction,
  kind: { readonly kind?: 'joined unit' } = UNIT,
): Assembly {
  const seams = places.map((at): SewnSeam => {
    const [from, to] = direction === 'across' ? [latticePoint(at, y0), latticePoint(at, y1)] : [latticePoint(x0, at), latticePoint(x1, at)];
    return { from, to };
  });
  return { outline: rectangle(x0, y0, x1, y1).points, ...kind, parts, seams };
}

/** @returns two halves of two equal quarters each; a quarter that was not made by itself is quartered in its turn, if it can be */
function inQuarters(
  units: readonly Placed[],
  first: Direction,
  made: ReadonlyMap<string, Assembly>,
  lay: (quarter: readonly Placed[], first: Direction) => Assembly,
): Assembly | null {
  const halves = halved(units, first);
  const quarters = halves?.map((half) => halved(half, other(first)));
  if (!quarters?.every((pair) => pair !== null)) return null;
  const middle = (at: Extent, direction: Direction): number => (begin(at, direction) + end(at, direction)) / 2;
  const quartered = (quarter: readonly Placed[]): Assembly =>
    made.get(nameOf(extentOf(quarter))) ?? inQuarters(quarter, first, made, lay) ?? lay(quarter, first);
  const pairs = quarters.map((pair) => {
    const place = extentOf(pair.flat());
    return joined(place, pair.map(quartered), [middle(place, other(first))], other(first));
  });
  const whole = extentOf(units);
  return joined(whole, pairs, [middle(whole, first)], first);
}

/** @returns the units on both sides of the middle; null where one lies across it */
function halved(units: readonly Placed[], direction: Direction): readonly [readonly Placed[], readonly Placed[]] | null {
  const whole = extentOf(units);
  const twice = begin(whole, direction) + end(whole, direction);
  const [before, after] = [units.filter((unit) => 2 * end(unit, direction) <= twice), units.filter((unit) => 2 * begin(unit, direction) >= twice)];
  return before.length > 0 && after.length > 0 && before.length + after.length === units.length ? [before, after] : null;
}

const pinnedBox = ({ from, to }: Pin): Extent => ({
  x0: Math.min(from[0], to[0]),
  y0: Math.min(from[1], to[1]),
  x1: Math.max(from[0], to[0]),
  y1: Math.max(from[1], to[1]),
});

const isPinned = (place: Extent, pins: readonly Pin[]): boolean =>
  pins.some((pin) => pin.pin === 'one unit' && nameOf(pinnedBox(pin)) === nameOf(place));

/** @returns whether a seam that is to be sewn last is one of the last; what is to be a unit was kept as one */
function isHonoured({ seams }: Assembly, pin: Pin): boolean {
  if (pin.pin !== 'sewn last') return true;
  const [from, to] = [latticePoint(...pin.from), latticePoint(...pin.to)];
  return seams.some((seam) => {
    const line = lineThrough(seam.from, seam.to);
    return side(line, from) === 0 && side(line, to) === 0;
  });
}

/** @returns the same with rows that read from left to right and columns that read from top to bottom, also where they were turned copies */
function inReadingOrder(node: Assembly): Assembly {
  if (node.parts.length === 0) return node;
  const parts = node.parts.map(inReadingOrder);
  const line = node.kind === undefined || isLine(node);
  const [one, last] = [parts[0]!, parts.at(-1)!].map(({ outline }) => outline[leastCorner(outline)]!) as [Point, Point];
  return line && compareAlong(one, last) > 0 ? { ...node, parts: parts.reverse(), seams: node.seams.toReversed() } : { ...node, parts };
}

/** @returns whether two assemblies of the same pieces come apart alike, whichever part is told first */
function isSewnAlike(one: Assembly, two: Assembly): boolean {
  if (one === two) return true;
  if (one.parts.length !== two.parts.length || !sameOutline(one.outline, two.outline)) return false;
  return one.parts.every((part, i) => isSewnAlike(part, two.parts[i]!)) || one.parts.every((part) => two.parts.some((each) => isSewnAlike(part, each)));
}
