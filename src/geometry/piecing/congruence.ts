import { box, fromLeastCorner } from '../convex.ts';
import { moved, turned, type Point } from '../point.ts';
import type { Assembly, Piece } from './assembly.ts';

export type Turn = 0 | 1 | 2 | 3;

/** A quarter-turn placement: turn clockwise about the origin, then move by whole steps. */
export interface Placement {
  readonly turn: Turn;
  readonly dx: number;
  readonly dy: number;
}

/** @returns the point after the placement */
export function placed(p: Point, { turn, dx, dy }: Placement): Point {
  let q = p;
  for (let i = 0; i < turn; i++) q = turned(q);
  return moved(q, dx, dy);
}

/** @returns the pieces of an assembly, in sewing order */
export function piecesOf(assembly: Assembly): readonly Piece[] {
  const found: Piece[] = [];
  const walk = (node: Assembly): void => {
    if (node.piece) found.push(node.piece);
    node.parts.forEach(walk);
  };
  walk(assembly);
  return found;
}

/** @returns an outline's text after turning, moved by −(least x, least y) where those are given as exact points */
function outlineText(points: readonly Point[], turn: Turn, left: Point, top: Point): string {
  const relative = points.map((p) => {
    const q = placed(p, { turn, dx: 0, dy: 0 });
    return { x: q.x * left.w - left.x * q.w, xw: q.w * left.w, y: q.y * top.w - top.y * q.w, yw: q.w * top.w };
  });
  const texts = relative.map(({ x, xw, y, yw }) => `${lowest(x, xw)},${lowest(y, yw)}`);
  return texts.join(' ');
}

function lowest(n: number, d: number): string {
  let [a, b] = [Math.abs(n), d];
  while (b !== 0) [a, b] = [b, a % b];
  return d === a ? `${n / a}` : `${n / a}/${d / a}`;
}

/** @returns a text that two sets of pieces share exactly when one is the other moved (not turned) */
function picture(pieces: readonly Piece[], turn: Turn): string {
  const outlines = pieces.map((p) => {
    const shape = p.outline.map((q) => placed(q, { turn, dx: 0, dy: 0 }));
    return { fabric: p.fabric, shape: fromLeastCorner(shape) };
  });
  const { left, top } = box(outlines.flatMap((o) => o.shape));
  return outlines
    .map((o) => `${o.fabric}:${outlineText(o.shape, 0, left, top)}`)
    .sort()
    .join(';');
}

/**
 * @returns key: a text that two assemblies share exactly when their pieces are congruent, cloth by cloth, up to quarter
 * turns (a mirror image has another key); turn: the turn that brings this one into the form the key describes
 */
export function congruence(assembly: Assembly): { readonly key: string; readonly turn: Turn } {
  const pieces = piecesOf(assembly);
  let best = picture(pieces, 0);
  let bestTurn: Turn = 0;
  for (const turn of [1, 2, 3] as const) {
    const text = picture(pieces, turn);
    if (text < best) [best, bestTurn] = [text, turn];
  }
  return { key: `${assembly.kind ?? 'part'}|${best}`, turn: bestTurn };
}

/**
 * @returns a copy of an assembly under a placement; pieces take their ids and patches from `pieceAt`,
 * which is given the new outline
 */
export function copied(assembly: Assembly, placement: Placement, pieceAt: (outline: readonly Point[]) => Piece): Assembly {
  const outline = assembly.outline.map((p) => placed(p, placement));
  return {
    outline,
    ...(assembly.kind ? { kind: assembly.kind } : {}),
    ...(assembly.piece ? { piece: pieceAt(assembly.piece.outline.map((p) => placed(p, placement))) } : {}),
    parts: assembly.parts.map((part) => copied(part, placement, pieceAt)),
    seams: assembly.seams.map((seam) => ({ ...seam, from: placed(seam.from, placement), to: placed(seam.to, placement) })),
  };
}

/**
 * @returns the placement that lays `from` on `to` after a known turn, by their boxes
 * @throws RangeError when the move is no whole number of steps
 */
export function placementOnto(from: Assembly, to: Assembly, turn: Turn): Placement {
  const a = box(from.outline.map((p) => placed(p, { turn, dx: 0, dy: 0 })));
  const b = box(to.outline);
  const dx = (b.left.x * a.left.w - a.left.x * b.left.w) / (a.left.w * b.left.w);
  const dy = (b.top.y * a.top.w - a.top.y * b.top.w) / (a.top.w * b.top.w);
  if (!Number.isInteger(dx) || !Number.isInteger(dy)) throw new RangeError('congruent units lie off the lattice');
  return { turn, dx, dy };
}
