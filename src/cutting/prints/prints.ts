import type { Piece, Piecing } from '../../geometry/piecing/assembly.ts';
import { touching, type Touching } from '../../geometry/piecing/touching.ts';
import type { Cut } from '../cut.ts';
import type { CuttingRules } from '../needs.ts';
import { chanceFrom, type Chance } from '../../measure/chance.ts';
import { cliqueIn } from './colouring.ts';
import { inOneOrder } from './one-order.ts';
import { printsEnough, spreadOf, type Spread, type Spreading } from './spread.ts';
import { poolsOf, type Item, type Pool } from './squares.ts';

/** A family of scraps to be spread over the pieces of its fabric. */
export interface Family {
  readonly fabric: string;
  readonly prints: number;
  readonly seed: number;
  /** Pieces that keep their print, by piece id; prints are counted from 1. */
  readonly held?: ReadonlyMap<number, number>;
}

/** How the prints of a family lie in the block; every block is alike. Prints are counted from 1. */
export interface Prints {
  /** The print of each piece of the fabric, by piece id. */
  readonly of: ReadonlyMap<number, number>;
  /** Of each line of the fabric: how many are cut of each print, over all blocks. */
  readonly cuts: readonly { readonly cut: Cut; readonly each: readonly number[] }[];
  /** How many pairs of pieces of one print touch along a seam, and how many at a corner alone; in one block. */
  readonly seams: number;
  readonly corners: number;
  /** Where equal prints touch along a seam: how many prints would do, and whether it is proved that these do not. */
  readonly enough: { readonly prints: number; readonly proved: boolean; readonly allTouch: boolean } | null;
  /** Whether equal prints touch along a seam only because pieces come from one square, so that cutting each by itself would help. */
  readonly shared: boolean;
  /** Whether equal prints touch along a seam only because some are held. */
  readonly byHolding: boolean;
  /** How many pieces do not have the print that is held, because another piece of their square is held in another. */
  readonly lost: number;
}

/** Pieces of one print, because they come from one square, and how many such squares that are. */
interface Bundle {
  readonly pieces: readonly number[];
  readonly cut: Cut;
  readonly squares: number;
}

/** How many ways to share squares are looked at. */
const TRIES = 8;

/** What the spreads of all families of one block have in common. */
interface Common {
  readonly pieces: readonly Piece[];
  /** Where each piece stands among them, by its id. */
  readonly index: ReadonlyMap<number, number>;
  readonly touch: Touching;
  readonly pools: readonly Pool[];
  readonly cuts: readonly Cut[];
  /** Bundles of the pools whose squares are of several families: they must be the same for each of these. */
  readonly settled: ReadonlyMap<Pool, readonly Bundle[]>;
  /** Prints that are held, of all families, by piece id. */
  readonly held: ReadonlyMap<number, number>;
}

/**
 * Spreads the prints of families over a block's pieces, for each family by itself: see `spreadOf`. The same families and block always
 * come out the same.
 * @returns the prints of each family, in their order
 * @throws RangeError when a size leaves what can be held exactly
 */
export function printsOf(families: readonly Family[], piecing: Piecing, cuts: readonly Cut[], rules: CuttingRules): readonly Prints[] {
  const pieces = inOneOrder(piecing);
  const touch = touching(pieces.map(({ outline }) => outline));
  const index = new Map(pieces.map(({ id }, i) => [id, i]));
  const known = new Set(families.map(({ fabric }) => fabric));
  const pools = poolsOf(piecing, cuts, rules, index);
  const seed = families.reduce((sum, family) => sum + family.seed, 0);
  const held = new Map(families.flatMap((family) => [...(family.held ?? [])].filter(([, print]) => print <= family.prints)));
  const settled = new Map<Pool, readonly Bundle[]>();
  for (const pool of pools) {
    const those = new Set([...pool.squares.values()].map(({ cut }) => cut.fabric).filter((fabric) => known.has(fabric)));
    if (those.size > 1) settled.set(pool, bundlesOf(pool, chanceFrom(seed), touch, index, held));
  }
  return families.map((family) => printsOfOne(family, { pieces, index, touch, pools, cuts, settled, held }));
}

function printsOfOne(family: Family, { pieces, index, touch, pools, cuts, settled, held }: Common): Prints {
  const chance = chanceFrom(family.seed);
  const own = pools.filter(({ squares }) => [...squares.values()].some(({ cut }) => cut.fabric === family.fabric));
  const sharing = own.some(({ items, together }) => together > 1 && items.length > 1);

  let best: { readonly bundles: readonly Bundle[]; readonly spread: Spread; readonly rank: readonly number[] } | null = null;
  for (let i = 0; i < (sharing ? TRIES : 1); i++) {
    const bundles = own
      .flatMap((pool) => settled.get(pool) ?? bundlesOf(pool, chance, touch, index, held))
      .filter(({ cut }) => cut.fabric === family.fabric);
    const spread = spreadOf({ ...spreadingOf(bundles, touch, index), held: heldOf(bundles, held) }, family.prints, chance);
    const rank = [spread.seams + within(bundles, touch, index), spread.uneven, spread.corners];
    if (best === null || isLess(rank, best.rank)) best = { bundles, spread, rank };
    if (rank.every((value, at) => value <= (at === 1 ? 1 : 0))) break;
  }
  const { bundles, spread } = best!;
  const of = new Map(bundles.flatMap(({ pieces: those }, i) => those.map((piece) => [piece, spread.prints[i]! + 1] as const)));
  const those = pieces.filter(({ fabric }) => fabric === family.fabric).map(({ id }) => id);
  const alike = (neighbours: Touching['along']): number =>
    those.reduce((sum, id) => {
      const at = index.get(id)!;
      return sum + [...neighbours[at]!].filter((other) => other > at && of.get(pieces[other]!.id) === of.get(id)).length;
    }, 0);
  const seams = alike(touch.along);
  const help = (): Pick<Prints, 'enough' | 'shared' | 'byHolding'> => {
    const byHolding = heldOf(bundles, held).size > 0 && within(bundles, touch, index) === 0 && spreadOf(spreadingOf(bundles, touch, index), family.prints, chance).seams === 0;
    if (byHolding) return { enough: null, shared: false, byHolding };
    const { enough, shared } = needed(spreadingOf(bundles, touch, index), apartOf(those, touch, index), family.prints, spread.impossible, chance);
    return { enough, shared, byHolding };
  };
  return {
    of,
    cuts: cuts
      .filter((cut) => cut.fabric === family.fabric)
      .map((cut) => ({ cut, each: countsOf(bundles, spread.prints, cut, family.prints) })),
    seams,
    corners: alike(touch.atCorner),
    ...(seams === 0 ? { enough: null, shared: false, byHolding: false } : help()),
    lost: those.filter((id) => held.has(id) && held.get(id) !== of.get(id)).length,
  };
}

function countsOf(bundles: readonly Bundle[], prints: readonly number[], cut: Cut, many: number): readonly number[] {
  const each = new Array<number>(many).fill(0);
  bundles.forEach((bundle, i) => {
    if (bundle.cut === cut) each[prints[i]!]! += bundle.squares;
  });
  return each;
}

/** What would do where equal prints touch. */
function needed(bundled: Spreading, single: Spreading, prints: number, impossible: boolean, chance: Chance): Pick<Prints, 'enough' | 'shared'> {
  const free = spreadOf(single, prints, chance);
  const shared = free.seams === 0;
  const [things, proved] = shared ? [bundled, impossible] : [single, free.impossible];
  const enough = printsEnough(things.along, prints, chance);
  return { enough: { prints: enough, proved, allTouch: cliqueIn(things.along) >= enough }, shared };
}

/** @returns whether a row of numbers comes before another of the same length: the first that differ decide */
function isLess(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && a[at]! < b[at]!;
}

/** Chooses which items of a pool share squares: those that do not touch, as long as there are such. */
function bundlesOf(pool: Pool, chance: Chance, touch: Touching, index: ReadonlyMap<number, number>, held: ReadonlyMap<number, number>): readonly Bundle[] {
  /** Whether pieces of one square are held in two prints. */
  const differ = (a: Item, b: Item): boolean =>
    held.size > 0 && [...a].some(([name, pieces]) => pieces.some((p) => held.has(p) && b.get(name)?.some((q) => held.has(q) && held.get(p) !== held.get(q))));
  const meets = (a: Item, b: Item, how: Touching['along']): boolean =>
    [...a].some(([name, pieces]) => pieces.some((p) => b.get(name)?.some((q) => how[index.get(p)!]!.has(index.get(q)!))));
  const left = chance.shuffled(pool.items);
  const bundles: Bundle[] = [];
  while (left.length > 0) {
    const items = [left.shift()!];
    while (items.length < pool.together && left.length > 0) {
      const cost = (item: Item): number =>
        items.reduce((sum, other) => sum + (differ(item, other) ? 10_000 : meets(item, other, touch.along) ? 100 : meets(item, other, touch.atCorner) ? 1 : 0), 0);
      let [at, least] = [0, Infinity];
      for (let i = 0; i < left.length && least > 0; i++) {
        const each = cost(left[i]!);
        if (each < least) [at, least] = [i, each];
      }
      items.push(...left.splice(at, 1));
    }
    for (const [name, { cut, taken }] of pool.squares) {
      const pieces = items.flatMap((item) => item.get(name) ?? []);
      bundles.push({ pieces, cut, squares: taken(items.length) });
    }
  }
  return bundles;
}

/** @returns the prints, from 0 on, of the bundles in which a piece is held; the first where two are held in different ones */
function heldOf(bundles: readonly Bundle[], held: ReadonlyMap<number, number>): ReadonlyMap<number, number> {
  return new Map(
    bundles.flatMap(({ pieces }, i) => {
      const piece = pieces.find((each) => held.has(each));
      return piece === undefined ? [] : [[i, held.get(piece)! - 1] as const];
    }),
  );
}

/** @returns which bundles touch which, through any of their pieces */
function spreadingOf(bundles: readonly Bundle[], touch: Touching, index: ReadonlyMap<number, number>): Spreading {
  const owner = new Map(bundles.flatMap(({ pieces }, i) => pieces.map((piece) => [index.get(piece)!, i] as const)));
  const around = (neighbours: Touching['along']) =>
    bundles.map(({ pieces }, i) => {
      const found = new Set<number>();
      for (const piece of pieces) {
        for (const other of neighbours[index.get(piece)!]!) {
          const there = owner.get(other);
          if (there !== undefined && there !== i) found.add(there);
        }
      }
      return found;
    });
  const along = around(touch.along);
  const atCorner = around(touch.atCorner).map((set, i) => new Set([...set].filter((other) => !along[i]!.has(other))));
  return { along, atCorner, line: bundles.map(({ cut }) => cut.id) };
}

/** @returns which pieces touch which, each cut by itself */
const apartOf = (pieces: readonly number[], touch: Touching, index: ReadonlyMap<number, number>): Spreading =>
  spreadingOf(pieces.map((piece) => ({ pieces: [piece], cut: { id: '' } as Cut, squares: 1 })), touch, index);

/** @returns how many pairs of pieces that come from one square touch along a seam */
function within(bundles: readonly Bundle[], touch: Touching, index: ReadonlyMap<number, number>): number {
  return bundles.reduce((sum, { pieces }) => {
    return sum + pieces.filter((p, i) => pieces.slice(i + 1).some((q) => touch.along[index.get(p)!]!.has(index.get(q)!))).length;
  }, 0);
}
