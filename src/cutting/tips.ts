import type { Assembly, Piece, Piecing } from '../geometry/piecing/assembly.ts';
import { lineThrough, side, type Point } from '../geometry/point.ts';
import { cross, directionFrom, dot, mirroredIn, opposite, outward, type Vector } from '../geometry/vector.ts';
import type { Trims } from './template.ts';

/*
 * How the trade trims the tips of templates: so that the raw edges of a piece and of the one it is first sewn to end together, and no tip
 * stands out beyond what they become. Take a corner P sharper than a square, of angle a, and at the first seam through P the neighbour's
 * corner of angle b.
 *   b ≥ 90°: the neighbour keeps its own corner. With right sides together its other raw edge lies across our tip: there the tip ends.
 *   b < 90°: both end along the raw edge of the sharper one as it lies there, right sides together.
 *   a + b < 180°: and neither goes past the other's raw edge as it lies once the seam is opened.
 * Each of these is a raw edge, or its mirror image in the seam, so it runs at one allowance from P: what lies within an allowance of the
 * finished piece is never cut off, and any number of such lines meet as neighbouring tangents of one circle do.
 */

/** @returns what tells for a piece how its tips are trimmed; a corner that no seam ends at, or that is no sharp tip, has none */
export function tipsIn({ root, pieces }: Pick<Piecing, 'root' | 'pieces'>): (piece: Piece) => Trims {
  const around = new Map<Assembly, Assembly>();
  const leaves = new Map<number, Assembly>();
  const walk = (node: Assembly): void => {
    if (node.piece !== undefined) leaves.set(node.piece.id, node);
    for (const part of node.parts) {
      around.set(part, node);
      walk(part);
    }
  };
  walk(root);
  const meeting = new Map<string, Piece[]>();
  for (const piece of pieces) for (const p of piece.outline) meeting.set(nameOf(p), [...(meeting.get(nameOf(p)) ?? []), piece]);
  return (piece) => {
    const leaf = leaves.get(piece.id);
    const when = leaf === undefined ? [] : sewnWhen(piece.outline, leaf, around);
    return piece.outline.map((corner, i) => {
      const [arriving, leaving] = [when[(i + piece.outline.length - 1) % piece.outline.length] ?? null, when[i] ?? null];
      if (arriving === null && leaving === null) return [];
      const first = leaving === null || (arriving !== null && arriving < leaving) ? 'arriving' : 'leaving';
      return trimsAt(piece.outline, i, first, meeting.get(nameOf(corner)) ?? []);
    });
  };
}

const nameOf = ({ x, y, w }: Point): string => `${x},${y},${w}`;

/** For each edge of a piece (from its corner to the next) in which place of the sewing it gets its seam; null for an edge that gets none. */
function sewnWhen(outline: readonly Point[], leaf: Assembly, around: ReadonlyMap<Assembly, Assembly>): readonly (number | null)[] {
  const when: (number | null)[] = outline.map(() => null);
  let begun = 0;
  for (let node = around.get(leaf); node !== undefined; node = around.get(node)) {
    const { outline: whole, seams } = node;
    outline.forEach((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      if (when[i] !== null || whole.some((from, j) => onLine(from, whole[(j + 1) % whole.length]!, p, q))) return;
      const seam = seams.findIndex(({ from, to }) => onLine(from, to, p, q));
      when[i] = begun + (seam < 0 ? seams.length : seam);
    });
    begun += seams.length + 1;
  }
  return when;
}

function onLine(from: Point, to: Point, p: Point, q: Point): boolean {
  const line = lineThrough(from, to);
  return side(line, p) === 0 && side(line, q) === 0;
}

/** The normals of the lines that a tip is trimmed along; `first`: which of the two edges at the corner is sewn first. */
function trimsAt(outline: readonly Point[], i: number, first: 'arriving' | 'leaving', meeting: readonly Piece[]): readonly Vector[] {
  const n = outline.length;
  const [before, corner, after] = [outline[(i + n - 1) % n]!, outline[i]!, outline[(i + 1) % n]!];
  const [arriving, leaving] = [directionFrom(before, corner), directionFrom(corner, after)];
  if (dot(opposite(arriving), leaving) <= 0n) return [];
  // Away from the corner along the seam.
  const seam = first === 'arriving' ? opposite(arriving) : leaving;
  const across = neighbourAt(corner, seam, first, meeting);
  if (across === null) return [];
  const [own, other] = [outward(first === 'arriving' ? leaving : arriving), across.rawEdge];
  const sharp = dot(seam, across.away) > 0n;
  const narrower = sharp && isNarrower(first === 'arriving' ? leaving : opposite(arriving), across.away, seam);
  const together = sharp ? (narrower ? mirroredIn(seam, own) : other) : mirroredIn(seam, other);
  const [start, end] = [outward(arriving), outward(leaving)];
  const between = [other, together].filter((normal) => cross(start, normal) > 0n && cross(normal, end) > 0n);
  const lines = between.sort((a, b) => (cross(a, b) > 0n ? -1 : 1)).filter((a, j, all) => j === 0 || cross(all[j - 1]!, a) !== 0n);
  return isShortTip(outline, i, lines) ? lines : [];
}

/**
 * @returns whether a tip trimmed along lines of these normals stays within two allowances of its corner: two neighbouring ones are then
 * at most 120° apart. A longer one is better left to the blunt tip, which the size on the cutting list holds
 */
export function isShortTip(outline: readonly Point[], i: number, lines: readonly Vector[]): boolean {
  const n = outline.length;
  const corner = outline[i]!;
  const [arriving, leaving] = [directionFrom(outline[(i + n - 1) % n]!, corner), directionFrom(corner, outline[(i + 1) % n]!)];
  const normals = [outward(arriving), ...lines, outward(leaving)];
  return normals.slice(1).every((b, j) => notFarApart(normals[j]!, b));
}

interface Neighbour {
  /** Its other edge at the corner: the direction away from the corner, and its outward normal. */
  readonly away: Vector;
  readonly rawEdge: Vector;
}

/** The piece that shares a corner and the seam from it, on the other side: the seam runs the other way round its outline. */
function neighbourAt(corner: Point, seam: Vector, first: 'arriving' | 'leaving', meeting: readonly Piece[]): Neighbour | null {
  for (const { outline } of meeting) {
    const n = outline.length;
    const i = outline.findIndex((p) => nameOf(p) === nameOf(corner));
    const [arriving, leaving] = [directionFrom(outline[(i + n - 1) % n]!, corner), directionFrom(corner, outline[(i + 1) % n]!)];
    const [along, away] = first === 'arriving' ? [leaving, opposite(arriving)] : [opposite(arriving), leaving];
    if (along[0] !== seam[0] || along[1] !== seam[1]) continue;
    return { away, rawEdge: outward(first === 'arriving' ? arriving : leaving) };
  }
  return null;
}

/** Whether a makes a smaller angle with the seam than b does, or the same; both are sharp. */
function isNarrower(a: Vector, b: Vector, seam: Vector): boolean {
  const [alongA, alongB] = [dot(a, seam), dot(b, seam)];
  return alongA * alongA * dot(b, b) >= alongB * alongB * dot(a, a);
}

function notFarApart(a: Vector, b: Vector): boolean {
  const along = dot(a, b);
  return along >= 0n || 4n * along * along <= dot(a, a) * dot(b, b);
}
