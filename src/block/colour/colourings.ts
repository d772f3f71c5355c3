import type { Exchange } from '../../geometry/patchwork/self-symmetry.ts';
import { chanceFrom } from '../../measure/chance.ts';

/*
 * A block's fabrics are its roles; a colouring gives each role one of k cloths. Two colourings are the same where a turn or a mirror that lays
 * the block's areas on each other takes one to the other.
 */

/** For each role, in their order, which of the cloths it takes, from 0 on. */
export type Colouring = readonly number[];

/** Which colourings are asked for: every role any cloth, neighbours different ones, or no cloth twice. */
export type Repeats = 'freely' | 'neighbours differ' | 'each once';

/** What a block's roles are to each other. */
export interface Roles {
  readonly ids: readonly string[];
  /** Pairs of roles that meet somewhere, by their places in `ids`, the smaller first. */
  readonly neighbours: readonly (readonly [number, number])[];
  /** The group of exchanges by symmetries, as places in `ids`. */
  readonly exchanges: readonly (readonly number[])[];
}

/** @returns exchanges of fabrics as exchanges of places in a list of them */
export const exchangesOfPlaces = (ids: readonly string[], exchanges: readonly Exchange[]): readonly (readonly number[])[] =>
  exchanges.map((exchange) => ids.map((id) => ids.indexOf(exchange.get(id)!)));

/**
 * @returns how many different colourings there are, by Burnside's lemma: the mean, over the group, of how many colourings an exchange
 * leaves as they are (Theory of Groups of Finite Order, 2nd ed. 1911, §145); a BigInt, for it grows as k to the power of the roles
 */
export function countColourings(roles: Roles, cloths: number, repeats: Repeats): bigint {
  const kept = roles.exchanges.reduce((sum, exchange) => sum + leftAsTheyAre(roles, exchange, cloths, repeats), 0n);
  return kept / BigInt(roles.exchanges.length);
}

function leftAsTheyAre({ ids, neighbours }: Roles, exchange: readonly number[], cloths: number, repeats: Repeats): bigint {
  const cycle = cyclesOf(exchange);
  const cycles = Math.max(-1, ...cycle) + 1;
  if (repeats === 'freely') return BigInt(cloths) ** BigInt(cycles);
  if (repeats === 'each once') return cycles < ids.length ? 0n : ids.reduce((product, _, i) => product * BigInt(Math.max(0, cloths - i)), 1n);
  // Roles that are exchanged have one cloth: what is left are the proper colourings of the graph in which each cycle is one point.
  const edges = neighbours.map(([a, b]) => [cycle[a]!, cycle[b]!] as const);
  return edges.some(([a, b]) => a === b) ? 0n : properColourings(cycles, edges, cloths);
}

/** @returns for each place the number of its cycle, numbered as they come */
function cyclesOf(exchange: readonly number[]): readonly number[] {
  const cycle = exchange.map(() => -1);
  let next = 0;
  exchange.forEach((_, start) => {
    if (cycle[start] !== -1) return;
    for (let at = start; cycle[at] === -1; at = exchange[at]!) cycle[at] = next;
    next++;
  });
  return cycle;
}

/** @returns the chromatic polynomial at k, counted by how many cloths are really used: partitions of the points into classes without edges */
function properColourings(points: number, edges: readonly (readonly [number, number])[], cloths: number): bigint {
  const meets = Array.from({ length: points }, () => new Set<number>());
  for (const [a, b] of edges) {
    meets[a]!.add(b);
    meets[b]!.add(a);
  }
  const classOf: number[] = [];
  const count = (point: number, used: number): bigint => {
    if (point === points) return Array.from({ length: used }, (_, i) => BigInt(cloths - i)).reduce((product, n) => product * n, 1n);
    let sum = 0n;
    for (let c = 0; c <= used && c < cloths; c++) {
      if ([...meets[point]!].some((other) => other < point && classOf[other] === c)) continue;
      classOf[point] = c;
      sum += count(point + 1, Math.max(used, c + 1));
    }
    return sum;
  };
  return count(0, 0);
}

/** @returns of all colourings that are the same as this one the first */
export function canonical(colouring: Colouring, { exchanges }: Roles): Colouring {
  let best = colouring;
  for (const exchange of exchanges) {
    const seen = exchange.map((from) => colouring[from]!);
    if (before(seen, best)) best = seen;
  }
  return best;
}

function before(one: Colouring, other: Colouring): boolean {
  const at = one.findIndex((cloth, i) => cloth !== other[i]);
  return at >= 0 && one[at]! < other[at]!;
}

const allowed = (colouring: Colouring, { neighbours }: Roles, repeats: Repeats): boolean =>
  repeats === 'freely' ||
  (repeats === 'each once' ? new Set(colouring).size === colouring.length : neighbours.every(([a, b]) => colouring[a] !== colouring[b]));

/** Roles that keep their cloth, by their places. */
export type Held = ReadonlyMap<number, number>;

const NONE: Held = new Map();

/** @returns the roles with those symmetries only that leave each held one where it is */
export const holding = (roles: Roles, held: Held): Roles =>
  held.size === 0 ? roles : { ...roles, exchanges: roles.exchanges.filter((exchange) => [...held.keys()].every((role) => exchange[role] === role)) };

/** @yields of all colourings that are the same, in which held roles keep their cloth, the first, in order */
export function* allColourings(every: Roles, cloths: number, repeats: Repeats, held = NONE): Generator<Colouring> {
  const roles = holding(every, held);
  const { ids, neighbours } = roles;
  const earlier = ids.map((_, role) => neighbours.flatMap(([a, b]) => (b === role ? [a] : [])));
  const colouring: number[] = [];
  function* from(role: number): Generator<Colouring> {
    if (role === ids.length) {
      if (roles.exchanges.every((exchange) => !before(exchange.map((at) => colouring[at]!), colouring))) yield [...colouring];
      return;
    }
    for (let cloth = 0; cloth < cloths; cloth++) {
      if ((held.get(role) ?? cloth) !== cloth) continue;
      if (repeats === 'each once' && colouring.slice(0, role).includes(cloth)) continue;
      if (repeats === 'neighbours differ' && earlier[role]!.some((other) => colouring[other] === cloth)) continue;
      colouring[role] = cloth;
      yield* from(role + 1);
    }
  }
  yield* from(0);
}

/**
 * @returns up to so many different colourings drawn at random, in which held roles keep their cloth, the same for the same seed; fewer where
 * it finds no more
 */
export function someColourings(every: Roles, cloths: number, repeats: Repeats, most: number, seed: number, held = NONE): readonly Colouring[] {
  const roles = holding(every, held);
  const chance = chanceFrom(seed);
  const found = new Map<string, Colouring>();
  const taken = new Set(held.values());
  const left = Array.from({ length: cloths }, (_, cloth) => cloth).filter((cloth) => !taken.has(cloth));
  // So many misses in a row say that there is hardly another.
  for (let misses = 0; found.size < most && misses < 50 + 4 * most; ) {
    const free = repeats === 'each once' ? chance.shuffled(left) : [];
    const drawn = roles.ids.map((_, role) => held.get(role) ?? (repeats === 'each once' ? (free.pop() ?? -1) : chance.below(cloths)));
    const colouring = canonical(drawn, roles);
    const key = colouring.join(' ');
    if (colouring.includes(-1) || !allowed(colouring, roles, repeats) || found.has(key)) misses++;
    else {
      found.set(key, colouring);
      misses = 0;
    }
  }
  return [...found.values()];
}
