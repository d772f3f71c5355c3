import type { Piece, Piecing } from '../../geometry/piecing/assembly.ts';
import { crossedAt, type Crossed } from '../crossed.ts';
import type { Cut, Role } from '../cut.ts';
import { takenApart } from '../cutting.ts';
import type { CuttingRules } from '../needs.ts';
import { cutShape } from '../shapes.ts';

/*
 * Pieces that come from one square are of one print, whatever is done with it: two triangles of a square cut once, both halves that a
 * square gives when it is sewn to another before it is cut. Which pieces share a square is for the maker to choose among those of a pool.
 */

/** What comes out of the same squares: a piece by itself, or a place where a unit is sewn. Its pieces by the square they come from. */
export type Item = ReadonlyMap<string, readonly number[]>;

/** Things that may come from the same squares, so many at a time in each block. */
export interface Pool {
  readonly items: readonly Item[];
  readonly together: number;
  /** By the name of a square: the line it is cut for, and how many of it so many items take, over all blocks. */
  readonly squares: ReadonlyMap<string, { readonly cut: Cut; readonly taken: (items: number) => number }>;
}

/** How a pool's items come from its squares: how many at a time, and how many of a square so many take, all blocks counted. */
interface Yield {
  readonly together: number;
  readonly taken: (name: string, items: number) => number;
}

const one: Yield = { together: 1, taken: (_, items) => items };
const every = (many: number): Yield => ({ together: many, taken: (_, items) => Math.ceil(items / many) });

/**
 * @param rank of each piece by its id: pools and items come in this order, whatever the order in which they are sewn
 * @returns every piece of the block in the pool of those it may share a square with
 */
export function poolsOf(piecing: Piecing, cuts: readonly Cut[], rules: CuttingRules, rank: ReadonlyMap<number, number>): readonly Pool[] {
  const cutOf = new Map(cuts.flatMap((cut) => cut.pieces.map((piece) => [piece, cut] as const)));
  const pools = new Map<string, { readonly items: Item[]; readonly by: Yield }>();
  const add = (name: string, item: Item, by: Yield): void => {
    const pool = pools.get(name);
    if (pool) pool.items.push(item);
    else pools.set(name, { items: [item], by });
  };
  const addPiece = (piece: Piece, role: Role): void => {
    const cut = cutOf.get(piece.id)!;
    const shape = cut.diagonals ? cutShape(piece.outline, rules.step) : null;
    const hand = shape?.form === 'right' ? shape.hand : '';
    const by = role === 'half' ? every(2) : role === 'quarter' ? every(4) : cut.nested ? every(cut.nested.triangles) : one;
    add(`${by === one ? `piece ${piece.id}` : cut.id} ${hand}`, new Map([['', [piece.id]]]), by);
  };
  const roleOf = (piece: Piece, unit: string): Role => cutOf.get(piece.id)!.uses.find((use) => use.unit === unit)?.role ?? 'plain';

  const rankOf = ({ id }: Piece): number => rank.get(id)!;
  const byRank = (pieces: readonly Piece[]): readonly Piece[] => [...pieces].sort((a, b) => rankOf(a) - rankOf(b));
  const taken = takenApart(piecing);
  const singles = [...taken.singles].sort((a, b) => rankOf(a.piece) - rankOf(b.piece));
  const places = [...taken.places].sort((a, b) => rankOf(byRank(a.pieces)[0]!) - rankOf(byRank(b.pieces)[0]!));
  for (const { piece, unit } of singles) addPiece(piece, roleOf(piece, unit));
  const crossed: Crossed[] = [];
  for (const place of places) {
    const { kind, unit } = place;
    const pieces = byRank(place.pieces);
    const role = roleOf(pieces[0]!, unit);
    const lines = pieces.map(({ id }) => cutOf.get(id)!.id);
    if (role === 'large' || role === 'small') {
      // Four geese at a time take one large square and four small ones, which are all of one print.
      const item = gathered(pieces, (piece) => `${roleOf(piece, unit)} ${cutOf.get(piece.id)!.id}`);
      const taken = (name: string, items: number): number => Math.ceil(items / 4) * (name.startsWith('small') ? 4 : 1);
      add(`four ${[...new Set(lines)].sort().join()}`, item, { together: 4, taken });
    } else if ((role === 'pair' || role === 'eight') && kind === 'half-square triangle') {
      // Two squares of one fabric are still two squares.
      const item = gathered(pieces, (piece, i) => (lines[0] === lines[1] ? `${i}` : cutOf.get(piece.id)!.id));
      add(`${role} ${[...lines].sort().join()}`, item, every(role === 'pair' ? 2 : 8));
    } else {
      const crossing = pieces.every((piece) => roleOf(piece, unit) === 'pair') ? crossedAt(place, rules) : null;
      if (crossing) crossed.push(crossing);
      else for (const piece of pieces) addPiece(piece, roleOf(piece, unit));
    }
  }
  for (const [name, group] of grouped(crossed)) for (const { item, by } of crossings(group)) add(`crossed ${name}`, item, by);

  return [...pools.values()].map(({ items, by }): Pool => {
    const squares = [...items[0]!].map(([name, [piece]]) => {
      return [name, { cut: cutOf.get(piece!)!, taken: (n: number) => by.taken(name, n * rules.blocks) }] as const;
    });
    return { items, together: by.together / common(by.together, rules.blocks), squares: new Map(squares) };
  });
}

/**
 * A half-square unit laid on another (or on a plain square) gives two units that are mirror images. Each pair of squares gives two
 * half-square units, so two crossings.
 */
function crossings(group: readonly Crossed[]): readonly { readonly item: Item; readonly by: Yield }[] {
  const [{ halves, plain, alike }] = group as [Crossed];
  const names = halves.map((half) => half.map(({ fabric }) => fabric).sort().join());
  // Where both half-square units are the same, one pair of squares gives both of a crossing.
  const same = names.length === 2 && names[0] === names[1];
  const per = alike ? 2 : 1;
  const by: Yield = {
    together: same ? per : 2 * per,
    taken: (name, items) => Math.ceil(items / (plain && name === 'plain' ? per : same ? per : 2 * per)),
  };
  const itemOf = (all: readonly Crossed[]): Item => {
    const item = new Map<string, number[]>();
    const put = (name: string, piece: Piece): void => void item.set(name, [...(item.get(name) ?? []), piece.id]);
    for (const each of all) {
      each.halves.forEach((half, i) => half.forEach((piece, j) => put(same && half[0].fabric !== half[1].fabric ? piece.fabric : `${same ? '' : i} ${j}`, piece)));
      if (each.plain) put('plain', each.plain.piece);
    }
    return item;
  };
  if (alike) return group.map((each) => ({ item: itemOf([each]), by }));
  const [first, second] = (['first', 'second'] as const).map((side) => group.filter((each) => each.side === side)) as [Crossed[], Crossed[]];
  const couples = Array.from({ length: Math.max(first.length, second.length) }, (_, i) => [...first.slice(i, i + 1), ...second.slice(i, i + 1)]);
  return couples.map((couple) => ({ item: itemOf(couple), by }));
}

function gathered(pieces: readonly Piece[], name: (piece: Piece, i: number) => string): Item {
  const item = new Map<string, number[]>();
  pieces.forEach((piece, i) => item.set(name(piece, i), [...(item.get(name(piece, i)) ?? []), piece.id]));
  return item;
}

function grouped(crossed: readonly Crossed[]): ReadonlyMap<string, readonly Crossed[]> {
  const groups = new Map<string, Crossed[]>();
  for (const one of crossed) groups.set(one.group, [...(groups.get(one.group) ?? []), one]);
  return groups;
}

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
