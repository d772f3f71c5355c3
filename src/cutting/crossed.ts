import { plus } from '../measure/surd.ts';
import type { Piece } from '../geometry/piecing/assembly.ts';
import { samePoint } from '../geometry/point.ts';
import { halfSquare, quarterSquare } from './formulas.ts';
import type { CutSize, CuttingRules, Need } from './needs.ts';
import { pairCuts, plainNeed, squareOf } from './needs.ts';
import type { UnitPlace } from './recipes.ts';
import { distance } from './shapes.ts';

/*
 * Quarter-square and split quarter-square triangles two at a time: a half-square unit is laid on another (or on a plain square),
 * seam on seam, sewn on both sides of the other diagonal and cut apart. The two units that come out are mirror images of each other,
 * so where a unit and its mirror image are both in the block, they serve each other.
 */

/** One unit told by the squares that are crossed for it. */
export interface Crossed {
  readonly unit: string;
  /** The same for units that come from the same squares. */
  readonly group: string;
  /** Which of the two mirror images this is. */
  readonly side: 'first' | 'second';
  /** Whether its mirror image is the unit itself, turned. */
  readonly alike: boolean;
  /** Half-square units to cross: the two pieces that each of them gives. */
  readonly halves: readonly (readonly [Piece, Piece])[];
  readonly halfSize: CutSize;
  /** The plain square that a half-square unit is crossed with, where there is only one of these. */
  readonly plain: { readonly piece: Piece; readonly size: CutSize } | null;
}

export interface CrossedNeeds {
  readonly needs: readonly Need[];
  /** Units whose mirror images come out unasked, and how many of them. */
  readonly unasked: readonly { readonly unit: string; readonly count: number }[];
}

/** @returns how a place is crossed, or null when its pieces do not lie as its kind has them */
export function crossedAt({ kind, unit, outline, pieces }: UnitPlace, { step, seam, ruler, trim }: CuttingRules): Crossed | null {
  // The piece along each side of the unit, clockwise.
  const along = outline.map((p, i) =>
    pieces.find(({ outline: o }) => [p, outline[(i + 1) % outline.length]!].every((q) => o.some((r) => samePoint(q, r)))),
  );
  if (outline.length !== 4 || along.includes(undefined)) return null;
  const round = along as Piece[];
  const side = distance(outline[0]!, outline[1]!, step);
  const halfSize = squareOf(plus(quarterSquare(side, seam), trim), ruler);
  if (kind === 'quarter-square triangle') {
    if (new Set(round).size !== 4) return null;
    const { mirrored, alike, text } = inOneOrder(round);
    // Pieces come in sewing order: the first seam of each half joins the first two, and the last two.
    const [a, b, c, d] = pieces as [Piece, Piece, Piece, Piece];
    const halves = [inOrder(a, b), inOrder(c, d)].sort((one, other) => (fabricsText(one) < fabricsText(other) ? -1 : 1));
    const split = halves.map(fabricsText).join(' x ');
    return { unit, group: `${kind}|${halfSize.key}|${text}|${split}`, side: mirrored ? 'second' : 'first', alike, halves, halfSize, plain: null };
  }
  const start = round.findIndex((piece, i) => piece === round[(i + 1) % 4]);
  const [large, first, second] = [round[start], round[(start + 2) % 4], round[(start + 3) % 4]];
  if (large === undefined || new Set(round).size !== 3 || first === second) return null;
  const [p, q] = [first!, second!];
  const mirrored = p.fabric > q.fabric;
  return {
    unit,
    group: `${kind}|${halfSize.key}|${large.fabric} ${[p.fabric, q.fabric].sort().join(' + ')}`,
    side: mirrored ? 'second' : 'first',
    alike: p.fabric === q.fabric,
    halves: [mirrored ? [q, p] : [p, q]],
    halfSize,
    plain: { piece: large, size: squareOf(plus(halfSquare(side, seam), trim), ruler) },
  };
}

const inOrder = (a: Piece, b: Piece): readonly [Piece, Piece] => (a.fabric <= b.fabric ? [a, b] : [b, a]);

const fabricsText = (half: readonly [Piece, Piece]): string => half.map(({ fabric }) => fabric).join(' + ');

/** @returns what all units that are cut two at a time need together; units of one group share their squares */
export function crossedNeeds(all: readonly Crossed[], rules: CuttingRules): CrossedNeeds {
  const groups = new Map<string, Crossed[]>();
  for (const one of all) groups.set(one.group, [...(groups.get(one.group) ?? []), one]);
  const found = [...groups.values()].map((group) => groupNeeds(group, rules));
  return { needs: found.flatMap(({ needs }) => needs), unasked: found.flatMap(({ unasked }) => unasked) };
}

function groupNeeds(group: readonly Crossed[], { blocks }: CuttingRules): CrossedNeeds {
  const count = (side: Crossed['side']): number => group.filter((one) => one.side === side).length * blocks;
  const [first, second, alike] = [count('first'), count('second'), group[0]!.alike];
  const crossings = alike ? Math.ceil((first + second) / 2) : Math.max(first, second);
  const beyond = 2 * crossings - first - second;
  const units = [...new Set(group.map(({ unit }) => unit))];
  const needs = units.flatMap((unit, i) => {
    const places = group.filter((one) => one.unit === unit);
    const asked = places.length * blocks;
    // The whole group's crossings are asked for once, with its first unit.
    const share = i === 0 ? { wanted: crossings, beyond } : { wanted: 0, beyond: 0 };
    return unitNeeds(places, unit, { ...share, alone: alike ? Math.ceil(asked / 2) : asked });
  });
  return { needs, unasked: alike || beyond === 0 ? [] : [{ unit: units[0]!, count: beyond }] };
}

/** The needs of one unit of a group; `share` counts crossings. */
function unitNeeds(places: readonly Crossed[], unit: string, share: Pick<Need, 'wanted' | 'alone' | 'beyond'>): readonly Need[] {
  const [{ halves, halfSize, plain }] = places as [Crossed];
  const sides = halves.map((_, i) => [0, 1].map((j) => places.map((one) => one.halves[i]![j]!)) as [Piece[], Piece[]]);
  const pair = { unit, size: halfSize, role: 'pair' as const, beyond: share.beyond };
  const needs: Need[] = [];
  if (sides.length === 2 && fabricsOf(sides[0]!) === fabricsOf(sides[1]!)) {
    // Both half-square units are the same: one pile of squares gives them all.
    const [[a, b], [c, d]] = sides as [[Piece[], Piece[]], [Piece[], Piece[]]];
    const both: [Piece[], Piece[]] =
      a[0]!.fabric === c[0]!.fabric
        ? [
            [...a, ...c],
            [...b, ...d],
          ]
        : [
            [...a, ...d],
            [...b, ...c],
          ];
    needs.push(...pairCuts(both, { ...pair, wanted: 2 * share.wanted, alone: 2 * share.alone }));
  } else {
    for (const two of sides) needs.push(...pairCuts(two, { ...pair, wanted: share.wanted, alone: share.alone }));
  }
  if (plain !== null) {
    const pieces = places.map((one) => one.plain!.piece.id);
    const need = plainNeed(plain.piece.fabric, { pool: 'crossed', unit, size: plain.size, role: 'pair', pieces, wanted: share.wanted });
    needs.push({ ...need, alone: share.alone, beyond: share.beyond });
  }
  return needs;
}

const fabricsOf = (sides: readonly [readonly Piece[], readonly Piece[]]): string =>
  sides
    .map((pieces) => pieces[0]!.fabric)
    .sort()
    .join(' + ');

/** Four pieces round a centre, told in one order whichever quarter turn or mirror image they lie in. */
function inOneOrder(round: readonly Piece[]): { mirrored: boolean; alike: boolean; text: string } {
  const least = (pieces: readonly Piece[]): string =>
    pieces.map((_, i) => [...pieces.slice(i), ...pieces.slice(0, i)].map(({ fabric }) => fabric).join(' ')).reduce((a, b) => (a <= b ? a : b));
  const [here, mirror] = [least(round), least([...round].reverse())];
  const mirrored = mirror < here;
  return { mirrored, alike: here === mirror, text: mirrored ? mirror : here };
}
