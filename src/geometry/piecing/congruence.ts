import { box, fromLeastCorner } from '../convex.ts';
import { gcd, moved, turned, type Point } from '../point.ts';
import type { Assembly, Piece } from './assembly.ts';

export type Turn = 0 | 1 | 2 | 3;

/** What is congruent to what. */
export interface Congruence {
  readonly key: string;
  readonly turn: Turn;
}

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

/** @returns an outline's text, its corners measured from (least x, least y) where those are given as exact points */
const outlineText = (points: readonly Point[], left: Point, top: Point): string =>
  points.map((p) => `${difference(p.x, p.w, left.x, left.w)},${difference(p.y, p.w, top.y, top.w)}`).join(' ');

/** @returns the text of n/d − m/e in lowest terms */
function difference(n: number, d: number, m: number, e: number): string {
  if (d === e && d === 1) return `${n - m}`;
  const [over, under] = [n * e - m * d, d * e];
  const common = gcd(over, under);
  return under === common ? `${over / common}` : `${over / common}/${under / common}`;
}

/** @returns a text that two sets of shapes share exactly when one is the other moved (not turned) */
function picture(fabrics: readonly string[], shapes: readonly (readonly Point[])[]): string {
  const { left, top } = box(shapes.flat());
  return shapes
    .map((shape, i) => `${fabrics[i]!}:${outlineText(fromLeastCorner(shape), left, top)}`)
    .sort()
    .join(';');
}

/**
 * @returns key: a text that two assemblies share exactly when their pieces are congruent, cloth by cloth, up to quarter
 * turns (a mirror image has another key); turn: the turn that brings this one into the form the key describes
 */
export function congruence(assembly: Assembly): Congruence {
  const pieces = piecesOf(assembly);
  const fabrics = pieces.map((piece) => piece.fabric);
  let shapes = pieces.map((piece) => piece.outline);
  let best = picture(fabrics, shapes);
  let bestTurn: Turn = 0;
  for (const turn of [1, 2, 3] as const) {
    shapes = shapes.map((shape) => shape.map(turned));
    const text = picture(fabrics, shapes);
    if (text < best) [best, bestTurn] = [text, turn];
  }
  return { key: `${assembly.kind ?? 'part'}|${best}`, turn: bestTurn };
}

/**
 * @returns `congruence` for many assemblies and their parts, which are mostly the same ones moved: each is looked at once
 * by itself, whatever it is part of, and only what lies in a new way is compared in all its turns
 */
export function congruences(): (assembly: Assembly) => Congruence {
  const numbers = new Map<string, number>();
  const known = new Map<Assembly, number>();
  const found = new Map<number, Congruence>();
  /** Equal for assemblies made of equal parts, lying alike. */
  const numberOf = (node: Assembly): number => {
    let number = known.get(node);
    if (number !== undefined) return number;
    const origin = node.outline[0]!;
    const parts = node.parts.map((part) => `${numberOf(part)}@${outlineText([part.outline[0]!], origin, origin)}`);
    const cloth = node.piece ? JSON.stringify(node.piece.fabric) : '';
    const text = `${node.kind ?? ''}|${cloth}|${outlineText(node.outline, origin, origin)}|${parts.join(' ')}`;
    number = numbers.get(text);
    if (number === undefined) numbers.set(text, (number = numbers.size));
    known.set(node, number);
    return number;
  };
  return (assembly) => {
    const number = numberOf(assembly);
    let result = found.get(number);
    if (!result) found.set(number, (result = congruence(assembly)));
    return result;
  };
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
