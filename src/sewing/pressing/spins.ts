import { leastTrouble, type Puzzle } from './least.ts';

/** A seam's way: 0 toward its first thing, 1 toward its second. */
export type Way = 0 | 1;

/** What it costs that two things lie alike, and unlike, by pairs. */
export class Pairs {
  readonly beside: readonly Map<number, { alike: number; unlike: number }>[];
  constructor(count: number) {
    this.beside = Array.from({ length: count }, () => new Map());
  }

  add(one: number, other: number, alike: number, unlike: number): void {
    let cost = this.beside[one]!.get(other);
    if (!cost) {
      cost = { alike: 0, unlike: 0 };
      this.beside[one]!.set(other, cost);
      this.beside[other]!.set(one, cost);
    }
    cost.alike += alike;
    cost.unlike += unlike;
  }

  /** Every pair once. */
  *all(): Generator<{ readonly one: number; readonly other: number; readonly alike: number; readonly unlike: number }> {
    for (const [one, others] of this.beside.entries()) {
      for (const [other, { alike, unlike }] of others) if (one < other) yield { one, other, alike, unlike };
    }
  }
}

/** Seams to be pressed: `apart` counts points that do not nest, which come first; the rest is trouble. */
export interface Seams {
  /** By seam: its way where it is given; null where it lies open and concerns no other; undefined where it is free. */
  readonly given: readonly (Way | null | undefined)[];
  readonly single: readonly (readonly [number, number])[];
  readonly apart: Pairs;
  readonly uneven: Pairs;
}

export interface Pressed {
  /** By seam; what is given stays. */
  readonly ways: readonly (Way | null)[];
  readonly apart: number;
  /** No other choice leaves fewer. */
  readonly apartAtLeast: number;
  /** Whether none leaves fewer, and none that leaves as few has less trouble. */
  readonly proved: boolean;
}

/** A seam as one of those that are decided together. */
interface Member {
  readonly knot: number;
  readonly flip: Way;
}

/** @returns the ways that leave the fewest points apart, and of these the ways with the least trouble */
export function pressedBest({ given, single, apart, uneven }: Seams): Pressed {
  const isFree = given.map((way) => way === undefined);
  // What is given moves into what is against either way of a seam.
  const [points, trouble] = [single.map((): [number, number] => [0, 0]), single.map(([a, b]): [number, number] => [a, b])];
  let always = 0;
  const linked = new Pairs(given.length);
  for (const { one, other, alike, unlike } of apart.all()) {
    const [a, b] = [given[one], given[other]];
    if (a === undefined && b === undefined) {
      always += Math.min(alike, unlike);
      if (alike !== unlike) linked.add(one, other, Math.max(0, alike - unlike), Math.max(0, unlike - alike));
    } else if (a !== undefined && b !== undefined) always += a === b ? alike : unlike;
    else addGiven(points[a === undefined ? one : other]!, (a ?? b)!, alike, unlike);
  }
  for (const each of points) {
    const least = Math.min(...each);
    always += least;
    each[0] -= least;
    each[1] -= least;
  }
  for (const { one, other, alike, unlike } of uneven.all()) {
    const [a, b] = [given[one], given[other]];
    if ((a === undefined) !== (b === undefined)) addGiven(trouble[a === undefined ? one : other]!, (a ?? b)!, alike, unlike);
  }
  const { members, knots } = knotted(isFree, linked, points);
  const ofKnots = { points: none(knots), trouble: none(knots), apart: new Pairs(knots), uneven: new Pairs(knots) };
  members.forEach((member, seam) => {
    if (!member) return;
    for (const way of [0, 1] as const) {
      ofKnots.points[member.knot]![way] += points[seam]![flipped(way, member.flip)];
      ofKnots.trouble[member.knot]![way] += trouble[seam]![flipped(way, member.flip)];
    }
  });
  const between = (pairs: Pairs, into: Pairs): void => {
    for (const { one, other, alike, unlike } of pairs.all()) {
      const [a, b] = [members[one], members[other]];
      if (!a || !b || a.knot === b.knot) continue;
      if (a.flip === b.flip) into.add(a.knot, b.knot, alike, unlike);
      else into.add(a.knot, b.knot, unlike, alike);
    }
  };
  between(linked, ofKnots.apart);
  between(uneven, ofKnots.uneven);
  const solved = inParts(ofKnots);
  return {
    ways: given.map((way, seam) => (way === undefined ? flipped(solved.ways[members[seam]!.knot]!, members[seam]!.flip) : way)),
    apart: solved.apart + always,
    apartAtLeast: solved.apartAtLeast + always,
    proved: solved.proved,
  };
}

const flipped = (way: Way, flip: Way): Way => (way ^ flip) as Way;
const none = (count: number): [number, number][] => Array.from({ length: count }, () => [0, 0]);

function addGiven(to: [number, number], given: Way, alike: number, unlike: number): void {
  to[given] += alike;
  to[given === 0 ? 1 : 0] += unlike;
}

/**
 * Seams that can all nest with each other are decided together, for nothing outweighs a point that does not nest; where they cannot,
 * each is decided by itself.
 */
function knotted(
  isFree: readonly boolean[],
  linked: Pairs,
  points: readonly (readonly [number, number])[],
): { readonly members: readonly (Member | undefined)[]; readonly knots: number } {
  const members: (Member | undefined)[] = isFree.map(() => undefined);
  let knots = 0;
  isFree.forEach((free, seam) => {
    if (!free || members[seam]) return;
    const knot = knots++;
    members[seam] = { knot, flip: 0 };
    const together = [seam];
    let agrees = true;
    for (const one of together) {
      for (const [other, { alike }] of linked.beside[one]!) {
        const flip = flipped(members[one]!.flip, alike > 0 ? 1 : 0);
        const before = members[other];
        if (before) agrees &&= before.flip === flip;
        else {
          members[other] = { knot, flip };
          together.push(other);
        }
      }
    }
    const against = ([0, 1] as const).map((way) => together.some((each) => points[each]![flipped(way, members[each]!.flip)] > 0));
    if (agrees && !(against[0] && against[1])) return;
    together.forEach((each, i) => (members[each] = { knot: i === 0 ? knot : knots++, flip: 0 }));
  });
  return { members, knots };
}

/** Knots that have nothing to do with each other are solved by themselves. */
function inParts({ points, trouble, apart, uneven }: {
  readonly points: readonly (readonly [number, number])[];
  readonly trouble: readonly (readonly [number, number])[];
  readonly apart: Pairs;
  readonly uneven: Pairs;
}): { readonly ways: readonly Way[] } & Omit<Pressed, 'ways'> {
  const ways: Way[] = points.map(() => 0);
  const place: number[] = points.map(() => -1);
  let [sum, least, proved] = [0, 0, true];
  points.forEach((_, start) => {
    if (place[start]! >= 0) return;
    const part = [start];
    place[start] = 0;
    for (const one of part) {
      for (const beside of [apart.beside[one]!, uneven.beside[one]!]) {
        for (const other of beside.keys()) {
          if (place[other]! < 0) place[other] = part.push(other) - 1;
        }
      }
    }
    const inside = (pairs: Pairs): { one: number; other: number; alike: number; unlike: number }[] =>
      part.flatMap((one) =>
        [...pairs.beside[one]!].flatMap(([other, cost]) => (one < other ? [{ one: place[one]!, other: place[other]!, ...cost }] : [])),
      );
    const lesser = inside(uneven);
    // One point outweighs all the trouble there can be.
    const weight =
      1 +
      part.reduce((total, each) => total + Math.max(...trouble[each]!), 0) +
      lesser.reduce((total, { alike, unlike }) => total + Math.max(alike, unlike), 0);
    const puzzle: Puzzle = {
      single: part.map((each) => [0, 1].map((way) => points[each]![way]! * weight + trouble[each]![way]!) as [number, number]),
      pairs: [
        ...inside(apart).map(({ alike, unlike, ...pair }) => ({ ...pair, alike: alike * weight, unlike: unlike * weight })),
        ...lesser,
      ],
    };
    const found = leastTrouble(puzzle);
    part.forEach((each, i) => (ways[each] = found.ways[i]!));
    sum += (found.trouble - (found.trouble % weight)) / weight;
    least += (found.atLeast - (found.atLeast % weight)) / weight;
    proved &&= found.trouble === found.atLeast;
  });
  return { ways, apart: sum, apartAtLeast: least, proved };
}
