import type { Chance } from '../../measure/chance.ts';

/** What must differ from what: for each thing, by index, the others. */
export type Neighbours = readonly ReadonlySet<number>[];

/** How often each print may be used: between the two, both included. */
export interface Use {
  readonly least: number;
  readonly most: number;
}

/** Prints from 0 on, by thing; 'none' where it is proved that there are none; 'unknown' where looking took too long. */
export type Coloured = readonly number[] | 'none' | 'unknown';

/** Things whose print is settled, and which it is. */
export type Held = ReadonlyMap<number, number>;

export const NONE: Held = new Map();

/** Which print is tried first: the one used least, or the first that may be; then as many as need not be used are left. */
export type First = 'least used' | 'first';

/**
 * Gives every thing a print that none of its neighbours has, by trying: the thing with the fewest prints left comes first
 * (D. Brélaz, New methods to color the vertices of a graph, Communications of the ACM 22, 1979).
 * @param held things whose print is settled
 * @param effort how many prints may be tried in all
 */
export function coloured(neighbours: Neighbours, prints: number, use: Use, first: First, effort: number, chance: Chance, held: Held = NONE): Coloured {
  const count = neighbours.length;
  if (count < prints * use.least || count > prints * use.most) return 'none';
  const given = new Array<number>(count).fill(-1);
  const used = new Array<number>(prints).fill(0);
  // How many neighbours of a thing have a print, and how many different prints they have.
  const taken = neighbours.map(() => new Int32Array(prints));
  const barred = new Int32Array(count);
  // Chance decides between things that are alike.
  const rank = chance.shuffled(neighbours.map((_, i) => i));
  let [left, wanting] = [effort, prints * use.least];

  const place = (thing: number, print: number, by: 1 | -1): void => {
    given[thing] = by > 0 ? print : -1;
    if (by > 0 ? used[print]! < use.least : used[print]! <= use.least) wanting -= by;
    used[print]! += by;
    for (const other of neighbours[thing]!) {
      const there = (taken[other]![print]! += by);
      if (by > 0 ? there === 1 : there === 0) barred[other]! += by;
    }
  };

  const next = (): number => {
    let best = -1;
    for (let i = 0; i < count; i++) {
      if (given[i]! >= 0) continue;
      if (best >= 0) {
        const more = barred[i]! - barred[best]! || neighbours[i]!.size - neighbours[best]!.size || rank[best]! - rank[i]!;
        if (more <= 0) continue;
      }
      best = i;
    }
    return best;
  };

  const fill = (done: number): boolean | null => {
    if (done === count) return true;
    if (wanting > count - done) return false;
    const thing = next();
    const fresh = used.indexOf(0);
    // One print that is not used yet is as good as another.
    const possible = used
      .map((_, print) => print)
      .filter((print) => taken[thing]![print] === 0 && used[print]! < use.most && (used[print]! > 0 || print === fresh));
    if (first === 'least used') possible.splice(0, possible.length, ...chance.shuffled(possible).sort((a, b) => used[a]! - used[b]!));
    for (const print of possible) {
      if (left-- <= 0) return null;
      place(thing, print, 1);
      const found = fill(done + 1);
      if (found !== false) return found;
      place(thing, print, -1);
    }
    return false;
  };

  for (const [thing, print] of held) {
    if (taken[thing]![print]! > 0 || used[print] === use.most) return 'none';
    place(thing, print, 1);
  }
  const found = fill(held.size);
  return found === true ? given : found === false ? 'none' : 'unknown';
}

/** @returns how many of these things, all of which are each other's neighbours, were found: so many prints are needed at least */
export function cliqueIn(neighbours: Neighbours): number {
  let largest = 0;
  neighbours.forEach((around, thing) => {
    const clique = [thing];
    for (const other of [...around].sort((a, b) => neighbours[b]!.size - neighbours[a]!.size)) {
      if (clique.every((each) => neighbours[each]!.has(other))) clique.push(other);
    }
    largest = Math.max(largest, clique.length);
  });
  return largest;
}
