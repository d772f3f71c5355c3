import type { Boundary } from '../patchwork/boundaries.ts';
import { within, type Stretch } from '../patchwork/stretches.ts';
import { compareAlong, lineKey, lineThrough, meet, parallel, side, type Point } from '../point.ts';
import type { Assembly, Piece, Piecing } from './assembly.ts';

/** A place where a seam runs through one cloth, though nothing is drawn there. */
export interface Division extends Stretch {
  readonly fabric: string;
  /** Ids of the pieces that meet there, on both sides. */
  readonly pieces: readonly number[];
  /**
   * By how many pieces, and so by how many seams, the block has more for it: 1; or 0 where it only opens a cloth that lies
   * right round another one.
   */
  readonly more: 0 | 1;
}

/**
 * Finds where seams run through one cloth, though nothing is drawn there: each such stretch divides an area in two pieces.
 * @param boundaries what is drawn, by line key, in the same view as the assembly
 * @returns the undrawn stretches of all seams, in sewing order
 */
export function divisionsOf(root: Assembly, boundaries: ReadonlyMap<string, Boundary>): readonly Stretch[] {
  const found: Stretch[] = [];
  const walk = (node: Assembly): void => {
    node.parts.forEach(walk);
    for (const seam of node.seams) {
      const [from, to] = compareAlong(seam.from, seam.to) < 0 ? [seam.from, seam.to] : [seam.to, seam.from];
      const drawn = boundaries.get(lineKey(lineThrough(from, to)))?.drawn ?? [];
      let at = from;
      for (const stretch of within(drawn, from, to)) {
        if (compareAlong(at, stretch.from) < 0) found.push({ from: at, to: stretch.from });
        at = stretch.to;
      }
      if (compareAlong(at, to) < 0) found.push({ from: at, to });
    }
  };
  walk(root);
  return found;
}

/**
 * Tells what the divisions of a way divide and cost. Sewing undoes them one after another: where the two sides of one are
 * parts of one area by then already, it has cost no piece, and elsewhere exactly one. So the costs add up to the pieces less
 * the areas drawn; and there is a division more for every place where one cloth lies right round another (Euler's formula).
 * @param boundaries what is drawn, by line key, in the same view as the piecing
 * @returns one for each area that a seam divides, in sewing order
 */
export function divisionsIn({ divisions, pieces }: Pick<Piecing, 'divisions' | 'pieces'>, boundaries: ReadonlyMap<string, Boundary>): readonly Division[] {
  const edges = edgesByLine(pieces);
  const area = pieces.map((_, id) => id);
  const areaOf = (id: number): number => {
    let at = id;
    while (area[at] !== at) at = area[at] = area[area[at]!]!;
    return at;
  };
  return divisions.flatMap((stretch) => uncrossed(stretch, boundaries)).map(({ from, to }): Division => {
    const beside = (edges.get(lineKey(lineThrough(from, to))) ?? []).filter((edge) => within([edge], from, to).length > 0);
    const [one, other] = [beside.find(({ ahead }) => ahead)!, beside.find(({ ahead }) => !ahead)!];
    const [a, b] = [areaOf(one.piece), areaOf(other.piece)];
    area[a] = b;
    const ids = [...new Set(beside.map(({ piece }) => piece))].sort((p, q) => p - q);
    return { from, to, fabric: pieces[one.piece]!.fabric, pieces: ids, more: a === b ? 0 : 1 };
  });
}

/** An edge of a piece; whether it runs in the order of compareAlong as the outline goes round, and so on which side the piece lies. */
interface PieceEdge extends Stretch {
  readonly piece: number;
  readonly ahead: boolean;
}

function edgesByLine(pieces: readonly Piece[]): ReadonlyMap<string, readonly PieceEdge[]> {
  const found = new Map<string, PieceEdge[]>();
  for (const { id, outline } of pieces) {
    outline.forEach((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      const key = lineKey(lineThrough(p, q));
      const ahead = compareAlong(p, q) < 0;
      const edge = ahead ? { from: p, to: q, piece: id, ahead } : { from: q, to: p, piece: id, ahead };
      const known = found.get(key);
      if (known) known.push(edge);
      else found.set(key, [edge]);
    });
  }
  return found;
}

/** @returns a stretch in parts, divided wherever something drawn meets or crosses it: there another area begins */
function uncrossed({ from, to }: Stretch, boundaries: ReadonlyMap<string, Boundary>): readonly Stretch[] {
  const line = lineThrough(from, to);
  const inside: Point[] = [];
  for (const { line: other, drawn } of boundaries.values()) {
    if (drawn.length === 0 || parallel(line, other) || side(other, from) * side(other, to) >= 0) continue;
    const at = meet(line, other);
    if (drawn.some((s) => compareAlong(s.from, at) <= 0 && compareAlong(at, s.to) <= 0)) inside.push(at);
  }
  inside.sort(compareAlong);
  const corners = [from, ...inside.filter((p, i) => i === 0 || compareAlong(inside[i - 1]!, p) < 0), to];
  return corners.slice(1).map((p, i) => ({ from: corners[i]!, to: p }));
}
