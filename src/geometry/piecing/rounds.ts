import { box, type Box } from '../convex.ts';
import { lineThrough, parallel, signOfProducts, type Point } from '../point.ts';
import type { Pin } from '../patchwork/drawing.ts';
import type { Assembly, SewnSeam } from './assembly.ts';
import { Congruences, piecesOf } from './congruence.ts';

/** Fewer plain strips than this round a centre are told as rows. */
const FEWEST_STRIPS = 4;

/** One strip sewn to what is there. */
interface Addition {
  readonly part: Assembly;
  readonly seam: SewnSeam;
}

/** A join that adds strips to one side of something or to two opposite sides. */
interface Level {
  readonly core: Assembly;
  readonly additions: readonly Addition[];
}

/** Joins inside one another, the outermost first, that turn a quarter from each to the next. */
type Chain = readonly Level[];

/**
 * Tells as rounds what is built from a centre outward: log cabins, courthouse steps, frames. A chain of joins that each add a plain
 * strip (or one strip pieced from plain pieces) to one side of what is there, or plain strips to two opposite sides, becomes one
 * joined unit whose parts are the centre and the strips in the order they are sewn on; each seam runs along the whole of what is
 * there, so they turn. A unit that is also made elsewhere in the block stays a unit.
 * @param pins what the designer set apart stays apart
 * @param blockStays whether the block's own join stays as it is, as it does where a pin asks for its last seam
 * @param congruence may know assemblies from before
 * @returns the same pieces and seams; the very same assembly where nothing in it is built outward
 */
export function inRounds(root: Assembly, pins: readonly Pin[] = [], blockStays = false, congruence = new Congruences()): Assembly {
  const stays = blockStays || pins.some(({ pin }) => pin === 'sewn last');
  const apart = (node: Assembly): boolean => pins.some((pin) => pin.pin === 'one unit' && fills(node, pin));
  const repeated = new Set<string>();
  for (;;) {
    const kept = (node: Assembly): boolean => apart(node) || (repeated.size > 0 && repeated.has(congruence.of(node).key));
    const chains = new Map<Assembly, Chain>();
    const find = (node: Assembly): void => {
      const chain = node === root && stays ? [] : chainOf(node, kept);
      if (isLongEnough(chain)) chains.set(node, chain);
      const inner = isLongEnough(chain)
        ? [chain.at(-1)!.core, ...chain.flatMap(({ additions }) => additions.map(({ part }) => part))]
        : node.parts;
      inner.forEach(find);
    };
    find(root);
    const more = madeElsewhere(root, chains, congruence);
    if (more.every((key) => repeated.has(key))) return chains.size === 0 ? root : flattened(root, chains);
    for (const key of more) repeated.add(key);
  }
}

/** @returns whether a node is exactly the rectangle between a pin's two corners */
function fills({ outline }: Assembly, { from, to }: Pin): boolean {
  const { left, right, top, bottom } = box(outline);
  const is = (value: number, at: number, w: number): boolean => value === at * w;
  return (
    is(left.x, Math.min(from[0], to[0]), left.w) &&
    is(right.x, Math.max(from[0], to[0]), right.w) &&
    is(top.y, Math.min(from[1], to[1]), top.w) &&
    is(bottom.y, Math.max(from[1], to[1]), bottom.w)
  );
}

const isLongEnough = (chain: Chain): boolean =>
  chain.length > 1 && chain.flatMap(({ additions }) => additions).filter(({ part }) => part.piece).length >= FEWEST_STRIPS;

/** @returns the levels from a node inward, the last one's core being the centre */
function chainOf(node: Assembly, kept: (node: Assembly) => boolean): Chain {
  const chain: Level[] = [];
  let core = node;
  while (chain.length === 0 || (!kept(core) && turnsFrom(core, chain.at(-1)!))) {
    const level = levelOf(core) ?? innermost(core, chain);
    if (!level) break;
    chain.push(level);
    core = level.core;
  }
  return chain;
}

const direction = ({ from, to }: SewnSeam): ReturnType<typeof lineThrough> => lineThrough(from, to);

/** @returns whether the seams of a join run across those of the level round it */
const turnsFrom = ({ seams }: Assembly, { additions: [outer] }: Level): boolean =>
  seams.length > 0 && !parallel(direction(seams[0]!), direction(outer!.seam));

/** @returns a join with something to be told from the inside as its core; null when strips are not all that is added to it */
function levelOf({ kind, parts, seams }: Assembly): Level | null {
  if (kind !== 'joined unit' || parts.length > 3) return null;
  const sewn = parts.map((part, i) => ({ part, i })).filter(({ part }) => !part.piece);
  const core = sewn.length === 1 ? sewn[0]!.i : parts.length === 2 && sewn.length === 2 ? coreOfTwo(parts, seams[0]!) : -1;
  if (core < 0 || (parts.length === 3 && core !== 1)) return null;
  return around({ parts, seams }, core);
}

/** @returns which of two sewn things the other, a pieced strip, is added to; −1 when neither is a strip, or both are */
function coreOfTwo([one, two]: readonly Assembly[], seam: SewnSeam): number {
  const strips = [isStrip(one!, seam), isStrip(two!, seam)];
  return strips[0] === strips[1] ? -1 : strips.indexOf(false);
}

/** @returns whether a thing is plain pieces in a line along the seam */
const isStrip = ({ kind, parts, seams }: Assembly, along: SewnSeam): boolean =>
  kind === 'joined unit' && parts.every((part) => part.piece) && seams.every((seam) => !parallel(direction(seam), direction(along)));

function around({ parts, seams }: Pick<Assembly, 'parts' | 'seams'>, core: number): Level {
  const additions = parts.flatMap((part, i) => (i === core ? [] : [{ part, seam: seams[i < core ? i : i - 1]! }]));
  return { core: parts[core]!, additions };
}

/**
 * @returns the level where only plain pieces are left; the centre is the middle one of three. Of two it is the one whose cloth comes
 * less often in the strips round them, then the larger one, then the one that lets all strips turn the same way round
 */
function innermost({ kind, parts, seams }: Assembly, outer: Chain): Level | null {
  if (kind !== 'joined unit' || outer.length === 0 || !parts.every((part) => part.piece)) return null;
  if (parts.length === 3) return around({ parts, seams }, 1);
  if (parts.length !== 2) return null;
  const strips = outer.flatMap(({ additions }) => additions.map(({ part }) => part));
  const often = parts.map(({ piece }) => strips.filter((strip) => strip.piece?.fabric === piece!.fabric).length);
  if (often[0] !== often[1]) return around({ parts, seams }, often[0]! < often[1]! ? 0 : 1);
  const order = compareSizes(box(parts[0]!.outline), box(parts[1]!.outline));
  if (order !== 0) return around({ parts, seams }, order > 0 ? 0 : 1);
  const level = around({ parts, seams }, 0);
  const next = outer.at(-1)!;
  const beyond = outer.at(-2);
  // The strip after the next lies opposite the first one when they go round.
  const opposite = beyond && sideOf(beyond.additions[0]!.part, beyond.core) !== sideOf(level.additions[0]!.part, level.core);
  return next.additions.length > 1 || !beyond || opposite ? level : around({ parts, seams }, 1);
}

/** @returns the order (−1, 0, 1) of two boxes by width and then by height */
function compareSizes(one: Box, two: Box): number {
  const size = (n: number, w: number, m: number, v: number): readonly [number, number] => [n * v - m * w, w * v];
  const compare = ([n, w]: readonly [number, number], [m, v]: readonly [number, number]): number => signOfProducts(n, v, -m, w, 0, 0);
  const across = ({ left, right }: Box): readonly [number, number] => size(right.x, right.w, left.x, left.w);
  const down = ({ top, bottom }: Box): readonly [number, number] => size(bottom.y, bottom.w, top.y, top.w);
  return compare(across(one), across(two)) || compare(down(one), down(two));
}

/** @returns on which side of a thing a strip lies that is sewn to it */
function sideOf(strip: Assembly, to: Assembly): 'top' | 'right' | 'bottom' | 'left' {
  const [a, b] = [box(strip.outline), box(to.outline)];
  const meets = (p: Point, q: Point, axis: 'x' | 'y'): boolean => p[axis] * q.w === q[axis] * p.w;
  if (meets(a.bottom, b.top, 'y')) return 'top';
  if (meets(a.left, b.right, 'x')) return 'right';
  return meets(a.top, b.bottom, 'y') ? 'bottom' : 'left';
}

/** @returns the keys of units that would vanish in rounds although they are made in other places, too */
function madeElsewhere(root: Assembly, chains: ReadonlyMap<Assembly, Chain>, congruence: Congruences): readonly string[] {
  const vanishing = [...chains.values()].flatMap((chain) => chain.slice(0, -1).map(({ core }) => core));
  const vanishes = new Set(vanishing);
  const sizes = new Set(vanishing.map((node) => piecesOf(node).length));
  const staying = new Set<string>();
  const walk = (node: Assembly): void => {
    if (node !== root && node.kind === 'joined unit' && !vanishes.has(node) && sizes.has(piecesOf(node).length))
      staying.add(congruence.of(node).key);
    node.parts.forEach(walk);
  };
  if (vanishing.length > 0) walk(root);
  return vanishing.map((node) => congruence.of(node).key).filter((key) => staying.has(key));
}

function flattened(node: Assembly, chains: ReadonlyMap<Assembly, Chain>): Assembly {
  const chain = chains.get(node);
  if (!chain) return node.piece ? node : { ...node, parts: node.parts.map((part) => flattened(part, chains)) };
  const additions = chain.toReversed().flatMap((level) => level.additions);
  const parts = [chain.at(-1)!.core, ...additions.map(({ part }) => part)];
  return { ...node, parts: parts.map((part) => flattened(part, chains)), seams: additions.map(({ seam }) => seam) };
}
