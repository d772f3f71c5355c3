import type { Cut } from '../cutting/cut.ts';
import { box } from '../geometry/convex.ts';
import type { Assembly, Piece } from '../geometry/piecing/assembly.ts';
import { compareX, compareY, type Point } from '../geometry/point.ts';
import { add, compare, multiply, ratio, rational, subtract, upToStep, ZERO, type Rational } from '../measure/rational.ts';

/** The lengths that decide how much a block outgrows its size, in the block's unit. */
export interface Measures {
  /** Length of one lattice step. */
  readonly step: Rational;
  readonly seam: Rational;
  readonly ruler: Rational;
}

/** How much larger than planned a block comes out, sewn of pieces that are cut up to the ruler. */
export interface Outgrowth {
  /** Of the widest row and the highest column; in the block's unit. */
  readonly width: Rational;
  readonly height: Rational;
  /** Whether all rows grow alike, and all columns; else they do not meet each other. */
  readonly even: boolean;
  /** Ids of the pieces and units' pieces that are too large. */
  readonly pieces: readonly number[];
}

/** A piece that comes into the block as it is cut, or a unit that is trimmed; too wide and too high by so much. */
interface Part {
  readonly outline: readonly Point[];
  readonly pieces: readonly Piece[];
  readonly wide: Rational;
  readonly high: Rational;
}

/**
 * @param cuts the list, whose lines say what size each plain piece is cut
 * @returns by how much the rows of a block outgrow it: plain pieces are as large as they are cut, units with a diagonal seam are trimmed
 * to their unfinished size, or to the next mark where that is between two; null where nothing is too large
 */
export function outgrowth(root: Assembly, cuts: readonly Cut[], measures: Measures): Outgrowth | null {
  const lineOf = new Map(cuts.flatMap((cut) => cut.pieces.map((piece) => [piece, cut])));
  const parts = partsOf(root).map((part) => grown(part, lineOf, measures));
  const large = parts.filter(({ wide, high }) => wide.n > 0 || high.n > 0);
  if (large.length === 0) return null;
  const rows = sums(parts, ({ wide }) => wide, (outline) => [box(outline).top, box(outline).bottom], compareY);
  const columns = sums(parts, ({ high }) => high, (outline) => [box(outline).left, box(outline).right], compareX);
  return {
    width: rows.most,
    height: columns.most,
    even: compare(rows.least, rows.most) === 0 && compare(columns.least, columns.most) === 0,
    pieces: large.flatMap(({ pieces }) => pieces.map(({ id }) => id)).sort((a, b) => a - b),
  };
}

/** The things that make up the rows: trimmed units, and the pieces that are in none. */
function partsOf(node: Assembly): readonly { readonly node: Assembly; readonly trimmed: boolean }[] {
  if (node.piece !== undefined) return [{ node, trimmed: false }];
  return hasSlant(node) ? [{ node, trimmed: true }] : node.parts.flatMap(partsOf);
}

/** Whether a unit, or the block, has a diagonal seam of its own, not only in the units that it is made of. */
const hasSlant = ({ seams, parts }: Assembly): boolean =>
  seams.some(({ from, to }) => compareX(from, to) !== 0 && compareY(from, to) !== 0) || parts.some((part) => part.kind === undefined && hasSlant(part));

function grown({ node, trimmed }: ReturnType<typeof partsOf>[number], lineOf: ReadonlyMap<number, Cut>, { step, seam, ruler }: Measures): Part {
  const { outline } = node;
  const { left, right, top, bottom } = box(outline);
  const unfinished = (from: number, w: number, to: number, v: number): Rational =>
    add(multiply(ratio(BigInt(to) * BigInt(w) - BigInt(from) * BigInt(v), BigInt(w) * BigInt(v)), step), multiply(seam, rational(2)));
  const sides = [unfinished(left.x, left.w, right.x, right.w), unfinished(top.y, top.w, bottom.y, bottom.w)] as const;
  const line = node.piece && lineOf.get(node.piece.id);
  const [wide, high] = line
    ? compare(...sides) <= 0
      ? cutTo(line)
      : cutTo(line).toReversed()
    : sides.map((side) => upToStep(side, ruler));
  const over = (cut: Rational, side: Rational): Rational => (line?.shape === 'template' && !trimmed ? ZERO : subtract(cut, side));
  return { outline, pieces: piecesIn(node), wide: over(wide!, sides[0]), high: over(high!, sides[1]) };
}

/** What a piece of a line measures, its shorter side first: of a strip set what is cut across the strips. */
const cutTo = ({ width, height, set }: Cut): readonly Rational[] =>
  set ? [set.across, set.segment].sort(compare) : [width, height];

const piecesIn = (node: Assembly): readonly Piece[] => (node.piece ? [node.piece] : node.parts.flatMap(piecesIn));

/** The greatest and the least sum of the parts that lie side by side anywhere. */
function sums(
  parts: readonly Part[],
  growth: (part: Part) => Rational,
  span: (outline: readonly Point[]) => readonly [Point, Point],
  order: (p: Point, q: Point) => number,
): { readonly most: Rational; readonly least: Rational } {
  const spans = parts.map(({ outline }) => span(outline));
  const levels: Point[] = [];
  for (const point of spans.flat().sort(order)) if (levels.length === 0 || order(levels.at(-1)!, point) !== 0) levels.push(point);
  const place = (point: Point): number => {
    let [low, high] = [0, levels.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (order(levels[middle]!, point) < 0) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  // Few amounts differ, so they are counted before they are added up.
  const bands = levels.slice(1).map(() => new Map<string, { readonly by: Rational; count: number }>());
  parts.forEach((part, i) => {
    const by = growth(part);
    if (by.n === 0) return;
    for (let band = place(spans[i]![0]); band < place(spans[i]![1]); band += 1) {
      const same = bands[band]!.get(`${by.n}/${by.d}`);
      if (same) same.count += 1;
      else bands[band]!.set(`${by.n}/${by.d}`, { by, count: 1 });
    }
  });
  const totals = bands.map((band) => [...band.values()].reduce((sum, { by, count }) => add(sum, multiply(by, rational(count))), ZERO));
  return { most: totals.reduce((a, b) => (compare(a, b) >= 0 ? a : b)), least: totals.reduce((a, b) => (compare(a, b) <= 0 ? a : b)) };
}
