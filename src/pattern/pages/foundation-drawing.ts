import type { SectionInk } from '../diagrams/foundation.ts';
import { chordIn, depthIn, middleOf, partBeside, turnedBy, type Polygon, type Spot } from '../polygons.ts';
import { ASCENT, DESCENT, type Setting } from './face.ts';
import { lineOf } from './furniture.ts';
import { CUT_LINE, INK, QUIET, SEAM_LINE, THIN_LINE } from './looks.ts';
import { closedPath, linePath, type Item, type Stroke, type TextItem } from './page.ts';

/** A foundation as it is printed: the mirror image of its section, in points, from an origin of its own. */
export interface FoundationInk {
  /** Its section's letter; '' where it is the only one. */
  readonly letter: string;
  /** Where it is trimmed, an allowance outside its edge. */
  readonly cut: Polygon;
  /** Its edge: sewn when sections are joined. */
  readonly edge: Polygon;
  /** The lines to sew on, in sewing order. */
  readonly lines: readonly (readonly [Spot, Spot])[];
  readonly pieces: readonly { readonly name: string; readonly fabric: string; readonly outline: Polygon }[];
}

/**
 * @param points how many points go to one of the block's unit
 * @param seam the allowance, in the block's unit
 * @returns a section's foundation, seen from the side it is printed on
 */
export function foundationInk(section: SectionInk, letter: string, points: number, seam: number, nameOf: (fabric: string) => string): FoundationInk {
  const mirrored = ([x, y]: Spot): Spot => [-x * points, y * points];
  const edge = section.outline.map(mirrored).reverse();
  return {
    letter,
    cut: withAllowance(edge, seam * points),
    edge,
    lines: section.lines.map(([from, to]) => [mirrored(from), mirrored(to)] as const),
    pieces: section.pieces.map(({ name, fabric, outline }) => ({ name, fabric: nameOf(fabric), outline: outline.map(mirrored).reverse() })),
  };
}

/** How many allowances a sharp tip reaches beyond its corner, before it is cut across. */
const TIP = 2;

/** @returns a convex outline, clockwise, with so much all round; tips are cut across */
export function withAllowance(edge: Polygon, by: number): Polygon {
  const ways = edge.map((p, i): Spot => {
    const q = edge[(i + 1) % edge.length]!;
    const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
    return [(q[0] - p[0]) / long, (q[1] - p[1]) / long];
  });
  const out = edge.map((_, i): Spot => {
    const [[ax, ay], [bx, by_]] = [ways.at(i - 1)!, ways[i]!];
    // Outward of a side that runs clockwise is its left; the corner goes where both sides do.
    const k = by / (1 + ax * bx + ay * by_);
    return [k * (ay + by_), -k * (ax + bx)];
  });
  const full = edge.map(([x, y], i): Spot => [x + out[i]![0], y + out[i]![1]]);
  return edge.reduce((polygon: Polygon, [x, y], i) => {
    const [ox, oy] = out[i]!;
    const long = Math.hypot(ox, oy);
    if (long <= TIP * by) return polygon;
    return partBeside(polygon, ([px, py]) => TIP * by - ((px - x) * ox + (py - y) * oy) / long);
  }, full);
}

/** A foundation in one of its turns. */
export interface TurnedFoundation {
  readonly items: readonly Item[];
  readonly cut: Polygon;
  readonly edge: Polygon;
}

const SEWN: Stroke = { color: INK, width: 1.1 };
const SIZES: readonly number[] = [15, 12, 10, 8.5, 7, 6, 5];
const FABRIC = 0.72;
const AIR = 1.5;

/** @returns a foundation turned clockwise by so many degrees, its words level */
export function drawFoundation(ink: FoundationInk, degrees: number, setting: Setting): TurnedFoundation {
  const turn = turnedBy(degrees);
  const [cut, edge] = [ink.cut.map(turn), ink.edge.map(turn)];
  const what = ink.letter === '' ? 'foundation' : `foundation ${ink.letter}`;
  const pieces = ink.pieces.map(({ outline, ...piece }) => ({ ...piece, outline: outline.map(turn) }));
  return {
    cut,
    edge,
    items: [
      { kind: 'path', what: `cut line ${what}`, steps: closedPath(cut), stroke: ink.lines.length === 0 ? THIN_LINE : CUT_LINE },
      { kind: 'path', what: `seam line ${what}`, steps: closedPath(edge), stroke: SEAM_LINE },
      ...ink.lines.map(([from, to], i): Item => ({ kind: 'path', what: `sewing line ${i + 1} ${what}`, steps: linePath(turn(from), turn(to)), stroke: SEWN })),
      ...pieces.flatMap((piece) => wordsIn(piece, setting)),
    ],
  };
}

/** @returns a piece's number, and its cloth below it where there is room: as large as they find room, the number in any case */
function wordsIn({ name, fabric, outline }: FoundationInk['pieces'][number], setting: Setting): readonly TextItem[] {
  for (const size of SIZES) {
    const both = placed([[name, size, 'strong'], [fabric, size * FABRIC, 'regular']], outline, setting);
    if (both && size * FABRIC >= SIZES.at(-1)!) return both;
  }
  for (const size of SIZES) {
    const alone = placed([[name, size, 'strong']], outline, setting);
    if (alone) return alone;
  }
  const [x, y] = middleOf(outline);
  const line = lineOf(name, [x, y], { size: SIZES.at(-1)!, weight: 'strong' }, setting);
  return [{ ...line, x: x - line.width / 2, y: y + ((ASCENT - DESCENT) / 2) * line.size }];
}

/** @returns lines under one another in the middle of an outline; null where they touch its edges wherever they are moved up or down */
function placed(texts: readonly (readonly [string, number, 'regular' | 'strong'])[], outline: Polygon, setting: Setting): readonly TextItem[] | null {
  const lines = texts.map(([text, size, weight]) => lineOf(text, [0, 0], { size, weight, color: weight === 'strong' ? INK : QUIET }, setting));
  const high = lines.reduce((sum, { size }) => sum + size, 0);
  const [, middle] = middleOf(outline);
  for (const off of [0, 0.25, -0.25, 0.5, -0.5]) {
    const top = middle - high / 2 + off * high;
    const chord = chordIn(outline, [middleOf(outline)[0], top + high / 2], [1, 0], AIR);
    if (!chord) continue;
    const x = (chord[0][0] + chord[1][0]) / 2;
    let y = top;
    const set = lines.map((line): TextItem => {
      const item = { ...line, x: x - line.width / 2, y: y + ASCENT * line.size };
      y += line.size;
      return item;
    });
    const corners = set.flatMap((line): readonly Spot[] => {
      const [left, right] = [line.x, line.x + line.width];
      const [above, below] = [line.y - ASCENT * line.size, line.y + DESCENT * line.size];
      return [[left, above], [right, above], [right, below], [left, below]];
    });
    if (corners.every((corner) => depthIn(outline, corner) >= AIR)) return set;
  }
  return null;
}
