import { box } from '../geometry/convex.ts';
import type { Assembly, Piecing } from '../geometry/piecing/assembly.ts';
import { stripRowOf, type StripRow } from '../geometry/piecing/strip-rows.ts';
import { add, compare, lesser, multiply, rational, ratio, subtract, timesInto, upToStep, ZERO, type Rational } from '../measure/rational.ts';
import { ceilToStep, surd, type Surd } from '../measure/surd.ts';
import { plainSide } from './formulas.ts';
import type { CutSize, CuttingRules, Need } from './needs.ts';
import { plainNeed } from './needs.ts';

/*
 * Strip sets: a row of plain rectangles that comes several times is sewn of long strips, one for each piece, side by side along their
 * length; the set is pressed and cut across into segments, each of them one unit. Strips are as wide as the pieces with their allowances,
 * segments as wide as the unit's other side with its own; a set is as long as its segments and what straightening its ends takes.
 *
 * What straightening takes is custom: published are 1 in. to three segments (generations-quilt-patterns.com, Nine patch quilt), 1 1/4 by
 * 11 in. strips for eight segments of 1 1/4 in. (temeculaquiltco.blogspot.com, 2018-10-26) and 1 1/4 by 15 in. for four of 3 1/2 in.
 * (pamelaquilts.com, 2021-06-02), 1 in. all of them; 1/2 in. (the same two for smaller ones), 2 in. (mybluprint.com, Rail fence quilt
 * block), 4 in. (All People Quilt, Rail fence quilt block).
 */
export const STRAIGHTENING: Readonly<Record<'in' | 'cm', Rational>> = { in: rational(1), cm: rational(5, 2) };

/** A unit that strip sets can make, wherever it is sewn by itself. */
export interface SetUnit {
  readonly unit: string;
  /** As the unit is described, and then in each further place. */
  readonly rows: readonly [StripRow, ...StripRow[]];
  readonly segment: { readonly exact: Surd; readonly width: Rational };
  /** Over all blocks. */
  readonly wanted: number;
}

/** What decides about strip sets besides the rules of cutting. */
export interface SetRules extends CuttingRules {
  /** Cut off each set to make its ends straight; 0 where absent. */
  readonly straighten?: Rational;
  /** Fabrics that stand for a family of scraps: there is no long strip of them. */
  readonly scraps?: ReadonlySet<string>;
}

/**
 * Asks for every row of plain rectangles that comes twice or more, the widest first, whether it is to be sewn in strip sets.
 * @param chosen called for each that can; the smaller units inside those that are to be are made there no more, and not asked for
 * @returns ids of the units that are thus made nowhere
 */
export function eachSetUnit({ way, root, units }: Piecing, rules: SetRules, chosen: (unit: SetUnit) => boolean): ReadonlySet<string> {
  const inSets = new Set<Assembly>();
  const nowhere = new Set<string>();
  // On a foundation patch is sewn after patch.
  if (way === 'foundation') return nowhere;
  const absorb = (node: Assembly): void => {
    inSets.add(node);
    node.parts.forEach(absorb);
  };
  const all = [{ id: 'block', kind: root.kind, places: [{ assembly: root }] }, ...units.toReversed()];
  for (const { id, kind, places } of all) {
    if (kind !== 'joined unit') continue;
    const left = places.map(({ assembly }) => assembly).filter((assembly) => !inSets.has(assembly));
    const found = setUnit(id, left, rules);
    if (left.length === 0) nowhere.add(id);
    if (found && chosen(found)) left.forEach(absorb);
  }
  return nowhere;
}

function setUnit(unit: string, places: readonly Assembly[], rules: SetRules): SetUnit | null {
  const wanted = places.length * rules.blocks;
  const [first] = places;
  const row = first && stripRowOf(first);
  if (!row || wanted < 2 || row.parts.some(({ piece }) => rules.scraps?.has(piece!.fabric))) return null;
  const exact = plainSide(along(row.parts[0]!, row.lie === 'row' ? 'down' : 'across', rules.step), rules.seam);
  const segment = { exact, width: ceilToStep(exact, rules.ruler) };
  const found: SetUnit = { unit, rows: [row, ...places.slice(1).map((place) => stripRowOf(place)!)], segment, wanted };
  return segmentsIn(found, rules) >= 2 ? found : null;
}

/** @returns the finished length of a piece along the block's side */
function along({ outline }: Assembly, way: 'across' | 'down', step: Rational): Rational {
  const { left, right, top, bottom } = box(outline);
  const between = (from: number, w: number, to: number, v: number): Rational =>
    multiply(ratio(BigInt(to) * BigInt(w) - BigInt(from) * BigInt(v), BigInt(w) * BigInt(v)), step);
  return way === 'across' ? between(left.x, left.w, right.x, right.w) : between(top.y, top.w, bottom.y, bottom.w);
}

const straightening = ({ straighten = ZERO, ruler }: SetRules): Rational => upToStep(straighten, ruler);

/** @returns how many segments the longest strips give that the cloth of all fabrics allows; as many as are wanted where that does not matter */
function segmentsIn({ rows: [{ parts }], segment, wanted }: SetUnit, rules: SetRules): number {
  const { room } = rules;
  if (!room) return wanted;
  const longest = subtract(parts.map(({ piece }) => room(piece!.fabric)).reduce(lesser), straightening(rules));
  return compare(longest, ZERO) > 0 ? Math.min(wanted, timesInto(longest, segment.width)) : 0;
}

/** @returns what a unit asks for: as few sets as the cloth allows, all alike, and as many strips of each sort as a set has */
export function setNeeds(unit: SetUnit, rules: SetRules): readonly Need[] {
  const { rows, segment, wanted } = unit;
  const [{ lie, parts }] = rows;
  const sets = Math.ceil(wanted / segmentsIn(unit, rules));
  const segments = Math.ceil(wanted / sets);
  const length = add(multiply(segment.width, rational(segments)), straightening(rules));
  const sorts = new Map<string, { readonly fabric: string; readonly finished: Rational; readonly pieces: number[]; each: number }>();
  rows.forEach((row, place) => {
    for (const part of row.parts) {
      const { fabric, id } = part.piece!;
      const finished = along(part, row.lie === 'row' ? 'across' : 'down', rules.step);
      const key = `${fabric}|${finished.n}/${finished.d}`;
      const sort = sorts.get(key) ?? { fabric, finished, pieces: [], each: 0 };
      sorts.set(key, sort);
      sort.pieces.push(id);
      if (place === 0) sort.each += 1;
    }
  });
  if (parts.length !== [...sorts.values()].reduce((sum, { each }) => sum + each, 0)) throw new RangeError(`unit ${unit.unit} is not alike in all its places`);
  return [...sorts.values()].map(({ fabric, finished, pieces, each }): Need => {
    const exact = plainSide(finished, rules.seam);
    const across = ceilToStep(exact, rules.ruler);
    const set = { across, length, segments, segment: segment.width, exact: segment.exact, down: lie === 'row' };
    const size = stripSize(exact, set);
    const need = plainNeed(fabric, { pool: `set ${unit.unit}`, unit: unit.unit, size, role: 'strip', pieces, wanted });
    return { ...need, squares: each, results: segments, set };
  });
}

function stripSize(exact: Surd, { across, length, segments, segment }: NonNullable<Need['set']>): CutSize {
  const key = `set ${across.n}/${across.d} ${segments} of ${segment.n}/${segment.d} in ${length.n}/${length.d}`;
  const order = compare(across, length);
  const [width, height] = order <= 0 ? [across, length] : [length, across];
  const lengthwise = surd(length);
  const sides = order <= 0 ? { width: exact, height: lengthwise } : { width: lengthwise, height: exact };
  return { shape: order === 0 ? 'square' : 'rectangle', width, height, exact: sides, template: null, key };
}
