/*
 * The least trouble of things that each lie one of two ways, where the trouble is a sum over things and over pairs of them. Solved
 * exactly by elimination of one thing after another (non-serial dynamic programming: Bertelè and Brioschi, 1972; the buckets are
 * Dechter's, Artificial Intelligence 113, 1999). Where a bucket holds too many things at once it is divided (mini-buckets: Dechter and
 * Rish, Journal of the ACM 50, 2003): what is then found is a bound from below, which guides branch and bound.
 */

/** Trouble in whole numbers, ≥ 0. */
export interface Puzzle {
  /** By thing: lying the one way (0), and the other (1). */
  readonly single: readonly (readonly [number, number])[];
  /** Of two things lying alike, and unlike. */
  readonly pairs: readonly { readonly one: number; readonly other: number; readonly alike: number; readonly unlike: number }[];
}

export interface Least {
  /** By thing: 0 or 1. */
  readonly ways: readonly (0 | 1)[];
  readonly trouble: number;
  /** No other choice has less than this; equal to `trouble`: proved least. */
  readonly atLeast: number;
}

/** Things held at once in one bucket, besides the one that is eliminated: tables of 2 to this many numbers. */
const WIDTH = 14;

/** Nodes of branch and bound; a puzzle that no bucket was divided for takes as many as it has things. */
const NODES = 20_000;

/** A sum of troubles that depends on some things: the entry of bits is that of these things' ways, the first the lowest bit. */
interface Part {
  readonly scope: readonly number[];
  readonly table: Float64Array;
}

interface Bucket {
  readonly thing: number;
  readonly parts: readonly Part[];
  /** What the bucket told those after it. */
  readonly messages: readonly Part[];
}

/** @returns the least trouble, and how the things then lie; deterministic: of equal choices, the other way before the one */
export function leastTrouble({ single, pairs }: Puzzle, width = WIDTH, nodes = NODES): Least {
  const holding: Part[][] = single.map(([one, other], thing) => [{ scope: [thing], table: Float64Array.of(one, other) }]);
  const beside: Set<number>[] = single.map(() => new Set());
  for (const { one, other, alike, unlike } of pairs) {
    const part = { scope: [one, other], table: Float64Array.of(alike, unlike, unlike, alike) };
    holding[one]!.push(part);
    holding[other]!.push(part);
    beside[one]!.add(other);
    beside[other]!.add(one);
  }
  let atLeast = 0;
  const buckets: Bucket[] = [];
  const left = new Set(single.keys());
  while (left.size > 0) {
    const thing = nextOf(left, beside);
    const parts = holding[thing]!;
    const messages = groups(parts, thing, width).map((group) => without(group, thing));
    for (const part of parts) for (const each of part.scope) if (each !== thing) drop(holding[each]!, part);
    for (const each of beside[thing]!) beside[each]!.delete(thing);
    for (const message of messages) {
      if (message.scope.length === 0) atLeast += message.table[0]!;
      for (const each of message.scope) {
        holding[each]!.push(message);
        for (const other of message.scope) if (other !== each) beside[each]!.add(other);
      }
    }
    left.delete(thing);
    buckets.push({ thing, parts, messages });
  }
  return searched(buckets.reverse(), atLeast, nodes);
}

/** Depth first, the last eliminated first; what a thing's bucket holds, less what it told, is what its way adds to the bound. */
function searched(buckets: readonly Bucket[], atLeast: number, nodes: number): Least {
  const ways: (0 | 1)[] = buckets.map(() => 0);
  const bounds: number[] = [atLeast];
  /** At each depth: what the second choice would come to; −1: it was taken, or need not be. */
  const second: number[] = [];
  let best: Pick<Least, 'ways' | 'trouble'> = { ways, trouble: Infinity };
  let [depth, spent] = [0, 0];
  for (;;) {
    if (depth === buckets.length) {
      if (bounds[depth]! < best.trouble) best = { ways: [...ways], trouble: bounds[depth]! };
    } else if (bounds[depth]! < best.trouble) {
      spent++;
      const { thing, parts, messages } = buckets[depth]!;
      const told = valueOf(messages, ways);
      const after = ([0, 1] as const).map((way) => {
        ways[thing] = way;
        return bounds[depth]! - told + valueOf(parts, ways);
      }) as [number, number];
      ways[thing] = after[0] < after[1] ? 0 : 1;
      second[depth] = Math.max(...after);
      bounds[depth + 1] = Math.min(...after);
      depth++;
      continue;
    }
    // Back to the last thing that may lie otherwise.
    do depth--;
    while (depth >= 0 && (second[depth]! < 0 || second[depth]! >= best.trouble));
    if (depth < 0) return { ...best, atLeast: best.trouble };
    if (best.trouble === atLeast || spent >= nodes) return { ...best, atLeast };
    const { thing } = buckets[depth]!;
    ways[thing] = ways[thing] === 0 ? 1 : 0;
    bounds[depth + 1] = second[depth]!;
    second[depth] = -1;
    depth++;
  }
}

function valueOf(parts: readonly Part[], ways: readonly (0 | 1)[]): number {
  let sum = 0;
  for (const { scope, table } of parts) {
    let at = 0;
    for (let i = 0; i < scope.length; i++) at |= ways[scope[i]!]! << i;
    sum += table[at]!;
  }
  return sum;
}

/** @returns the thing to eliminate next: one beside no more than one, else the one that would tie the fewest that are not yet beside each other */
function nextOf(left: ReadonlySet<number>, beside: readonly ReadonlySet<number>[]): number {
  let [found, fewest] = [-1, Infinity];
  for (const thing of left) {
    const many = beside[thing]!.size;
    if (many <= 1) return thing;
    const ties = tiesOf(thing, beside, fewest);
    if (ties < fewest) [found, fewest] = [thing, ties];
  }
  return found;
}

/** @returns how many pairs of those beside a thing are not beside each other; counted no further than up to `enough` */
function tiesOf(thing: number, beside: readonly ReadonlySet<number>[], enough: number): number {
  const around = [...beside[thing]!];
  let ties = 0;
  for (let i = 0; i < around.length && ties < enough; i++) {
    for (let j = i + 1; j < around.length; j++) if (!beside[around[i]!]!.has(around[j]!)) ties++;
  }
  return ties;
}

/** @returns the parts of a bucket in groups that together hold few enough things, one group wherever that can be */
function groups(parts: readonly Part[], thing: number, width: number): readonly (readonly Part[])[] {
  const found: { readonly parts: Part[]; readonly scope: Set<number> }[] = [];
  for (const part of [...parts].sort((a, b) => b.scope.length - a.scope.length)) {
    const fits = found.find(({ scope }) => scope.size + part.scope.filter((each) => !scope.has(each)).length <= width + 1);
    if (fits) {
      fits.parts.push(part);
      part.scope.forEach((each) => fits.scope.add(each));
    } else found.push({ parts: [part], scope: new Set([thing, ...part.scope]) });
  }
  return found.map((group) => group.parts);
}

/** @returns the least sum of some parts over both ways of a thing, by the ways of all others */
function without(parts: readonly Part[], thing: number): Part {
  const scope = [...new Set(parts.flatMap((part) => part.scope))].filter((each) => each !== thing).sort((a, b) => a - b);
  const table = new Float64Array(1 << scope.length);
  // Where each thing of a part stands among the bits, the eliminated one above all.
  const places = parts.map((part) => part.scope.map((each) => (each === thing ? scope.length : scope.indexOf(each))));
  const sum = (bits: number): number => {
    let total = 0;
    for (let p = 0; p < parts.length; p++) {
      const at = places[p]!;
      let entry = 0;
      for (let i = 0; i < at.length; i++) entry |= ((bits >> at[i]!) & 1) << i;
      total += parts[p]!.table[entry]!;
    }
    return total;
  };
  for (let bits = 0; bits < table.length; bits++) table[bits] = Math.min(sum(bits), sum(bits | table.length));
  return { scope, table };
}

function drop(parts: Part[], part: Part): void {
  const at = parts.indexOf(part);
  if (at >= 0) parts.splice(at, 1);
}
