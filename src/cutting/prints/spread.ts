import type { Chance } from '../../measure/chance.ts';
import { coloured, NONE, type Coloured, type Held, type Neighbours } from './colouring.ts';

/** Things that get prints. All are counted from 0. */
export interface Spreading {
  /** Along a seam: equal prints must not touch there. */
  readonly along: Neighbours;
  /** At a corner alone: they should not touch there either. */
  readonly atCorner: Neighbours;
  /** Of each thing: the line of the cutting list it is cut for, so that each line uses all prints evenly, too. */
  readonly line: readonly string[];
  /** Those that keep their print, whatever touches them. */
  readonly held?: Held;
}

export interface Spread {
  /** Print of each thing. */
  readonly prints: readonly number[];
  /** How many pairs of equal prints touch along a seam, and how many at a corner alone. */
  readonly seams: number;
  readonly corners: number;
  /** How much more often the most used print is used than the least used one. */
  readonly uneven: number;
  /** Whether it was proved that so many prints cannot be kept apart, where they are not. */
  readonly impossible: boolean;
}

/** How long is looked for a spread that has everything, in prints tried; enough to be exact for a few dozen things. */
const EFFORT = 30_000;

/**
 * Spreads prints: first so that equal ones do not touch along a seam, then as evenly as that allows, then so that few of them touch at
 * a corner and each line of the list uses all of them.
 */
export function spreadOf(things: Spreading, prints: number, chance: Chance): Spread {
  const { held = NONE } = things;
  const apart = keptApart(things.along, prints, chance, held);
  if (typeof apart === 'string') {
    return found(things, bettered(things, patchedUp(things.along, prints, chance, held), prints, chance), prints, apart === 'none');
  }
  const even = evenly(things.along, prints, apart, chance, held);
  const best = atCornersToo(things, prints, unevenness(even, prints), chance) ?? even;
  return found(things, bettered(things, best, prints, chance), prints, false);
}

/** Looks for any spread in which nothing equal touches. */
function keptApart(neighbours: Neighbours, prints: number, chance: Chance, held: Held): Coloured {
  const free = { least: 0, most: neighbours.length };
  const even = coloured(neighbours, prints, free, 'least used', EFFORT, chance, held);
  // Fewer prints are sooner found, if they are enough.
  return even === 'unknown' ? coloured(neighbours, prints, free, 'first', EFFORT, chance, held) : even;
}

/** Looks for a spread in which nothing equal touches at a corner either, and that is as even; null where none is found. */
function atCornersToo({ along, atCorner, held = NONE }: Spreading, prints: number, uneven: number, chance: Chance): readonly number[] | null {
  const everywhere = along.map((around, i) => new Set([...around, ...atCorner[i]!]));
  for (const use of usesOf(along.length, prints, uneven)) {
    const even = coloured(everywhere, prints, use, 'least used', EFFORT, chance, held);
    if (typeof even !== 'string') return even;
  }
  const apart = coloured(everywhere, prints, { least: 0, most: along.length }, 'first', EFFORT, chance, held);
  const exchanged = typeof apart === 'string' ? null : exchangedChains(everywhere, prints, apart, held);
  return exchanged && unevenness(exchanged, prints) <= uneven ? exchanged : null;
}

/** @returns how often prints are used, where the most used one is used so much more often than the least used one: every way there is */
function usesOf(count: number, prints: number, uneven: number): readonly { readonly least: number; readonly most: number }[] {
  const uses = [];
  for (let least = Math.floor(count / prints); least >= 0 && prints * (least + uneven) >= count; least--) uses.push({ least, most: least + uneven });
  return uses;
}

/** Looks for a spread that uses the prints as evenly as can be; without effort enough, one that is more even than the given one. */
function evenly(along: Neighbours, prints: number, apart: readonly number[], chance: Chance, held: Held): readonly number[] {
  const exchanged = exchangedChains(along, prints, apart, held);
  const count = along.length;
  for (let uneven = count % prints === 0 ? 0 : 1; uneven < unevenness(exchanged, prints); uneven++) {
    for (const use of usesOf(count, prints, uneven)) {
      const better = coloured(along, prints, use, 'least used', EFFORT, chance, held);
      if (typeof better !== 'string') return better;
    }
  }
  return exchanged;
}

function usedOf(given: readonly number[], prints: number): number[] {
  const used = new Array<number>(prints).fill(0);
  for (const print of given) used[print]!++;
  return used;
}

function unevenness(given: readonly number[], prints: number): number {
  const used = usedOf(given, prints);
  return Math.max(...used) - Math.min(...used);
}

/** Longest chain of things that exchange their prints. */
const LONGEST = 300;

/**
 * Exchanges two prints in a chain of things that have one or the other and touch (a Kempe chain): nothing equal comes to touch by it.
 * @returns the prints after every exchange that makes their use more even
 */
function exchangedChains(along: Neighbours, prints: number, given: readonly number[], held: Held): readonly number[] {
  const now = [...given];
  const used = usedOf(now, prints);
  for (let changed = true; changed; ) {
    changed = false;
    for (let start = 0; start < now.length; start++) {
      for (let other = 0; other < prints; other++) {
        const one = now[start]!;
        const gap = used[one]! - used[other]!;
        const things = gap < 2 ? [] : chainFrom(along, now, start, other, held);
        const more = things.filter((thing) => now[thing] === one).length * 2 - things.length;
        // The gap becomes |gap − 2 · more|.
        if (more <= 0 || more >= gap) continue;
        for (const thing of things) now[thing] = now[thing] === one ? other : one;
        used[one]! -= more;
        used[other]! += more;
        changed = true;
      }
    }
  }
  return now;
}

/** @returns the chain of things of two prints that one of them is in; none where it is too long, or one of them keeps its print */
function chainFrom(along: Neighbours, now: readonly number[], start: number, other: number, held: Held): readonly number[] {
  const seen = new Set([start]);
  for (const thing of seen) {
    if (held.has(thing)) return [];
    for (const next of along[thing]!) if (now[next] === other || now[next] === now[start]) seen.add(next);
    if (seen.size > LONGEST) return [];
  }
  return [...seen];
}

/** @returns prints of which few that are equal touch, where they cannot all be kept apart (or it takes too long to find out) */
function patchedUp(along: Neighbours, prints: number, chance: Chance, held: Held): readonly number[] {
  const now = along.map((_, i) => held.get(i) ?? -1);
  const used = usedOf([...held.values()], prints);
  const order = chance.shuffled(now.map((_, i) => i)).filter((i) => !held.has(i)).sort((a, b) => along[b]!.size - along[a]!.size);
  const quietest = (thing: number): number => {
    const around = new Array<number>(prints).fill(0);
    for (const other of along[thing]!) if (now[other]! >= 0) around[now[other]!]!++;
    return around.map((_, print) => print).reduce((a, b) => (around[b]! - around[a]! || used[b]! - used[a]!) < 0 ? b : a);
  };
  for (const thing of order) used[(now[thing] = quietest(thing))]!++;
  for (let round = 0; round < 40; round++) {
    const touching = order.filter((thing) => [...along[thing]!].some((other) => now[other] === now[thing]));
    let changed = false;
    for (const thing of chance.shuffled(touching)) {
      used[now[thing]!]!--;
      const better = quietest(thing);
      changed ||= better !== now[thing];
      used[(now[thing] = better)]!++;
    }
    if (!changed) break;
  }
  return now;
}

/** Exchanges the prints of two things wherever that is better, so that the use of each print stays; the most important comes first. */
function bettered({ along, atCorner, line, held = NONE }: Spreading, given: readonly number[], prints: number, chance: Chance): readonly number[] {
  const now = [...given];
  const lines = [...new Set(line)];
  const inLine = lines.map(() => new Array<number>(prints).fill(0));
  const lineOf = line.map((name) => lines.indexOf(name));
  now.forEach((print, i) => inLine[lineOf[i]!]![print]!++);
  const equal = (around: ReadonlySet<number>, print: number, not: number): number => {
    let sum = 0;
    for (const other of around) if (other !== not && now[other] === print) sum++;
    return sum;
  };
  /** How many equal prints touch two things less, if they exchange theirs. */
  const gain = (around: Neighbours, a: number, b: number): number => {
    const [p, q] = [now[a]!, now[b]!];
    return equal(around[a]!, p, b) + equal(around[b]!, q, a) - equal(around[a]!, q, b) - equal(around[b]!, p, a);
  };
  for (let round = 0; round < 6; round++) {
    let changed = false;
    for (const a of chance.shuffled(now.map((_, i) => i))) {
      // In a large drawing not every pair is tried.
      const others = now.length <= 200 ? chance.shuffled(now.map((_, i) => i)) : Array.from({ length: 60 }, () => chance.below(now.length));
      for (const b of others) {
        const [p, q] = [now[a]!, now[b]!];
        if (p === q || held.has(a) || held.has(b)) continue;
        // In a line, one more of a print that is there n times adds 2 n + 1 to the sum of squares.
        const [la, lb] = [inLine[lineOf[a]!]!, inLine[lineOf[b]!]!];
        const lineCost = la === lb ? 0 : 2 * (la[q]! - la[p]! + 1) + 2 * (lb[p]! - lb[q]! + 1);
        const seams = gain(along, a, b);
        const corners = seams === 0 ? gain(atCorner, a, b) : 0;
        if (seams < 0 || corners < 0 || (seams === 0 && corners === 0 && lineCost >= 0)) continue;
        [now[a], now[b]] = [q, p];
        la[p]!--;
        la[q]!++;
        lb[q]!--;
        lb[p]!++;
        changed = true;
        break;
      }
    }
    if (!changed) break;
  }
  return now;
}

function found({ along, atCorner }: Spreading, prints: readonly number[], of: number, impossible: boolean): Spread {
  const equal = (neighbours: Neighbours): number =>
    neighbours.reduce((sum, around, i) => sum + [...around].filter((j) => j > i && prints[j] === prints[i]).length, 0);
  return { prints, seams: equal(along), corners: equal(atCorner), uneven: unevenness(prints, of), impossible };
}

/** @returns the fewest prints, more than these, that can be kept apart as far as is known; each tried with the same effort */
export function printsEnough(along: Neighbours, more: number, chance: Chance): number {
  for (let prints = more + 1; ; prints++) {
    if (typeof keptApart(along, prints, chance, NONE) !== 'string') return prints;
  }
}
