import { box, leastCorner } from '../convex.ts';
import { compareX, compareY, gcd, moved, turned, type Point } from '../point.ts';
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
  gather(assembly, found);
  return found;
}

function gather({ piece, parts }: Assembly, into: Piece[]): void {
  if (piece) into.push(piece);
  for (const part of parts) gather(part, into);
}

/** @returns an outline's text from a given corner on, all corners measured from (least x, least y) where those are given as exact points */
function outlineText(points: readonly Point[], start: number, left: Point, top: Point): string {
  let text = '';
  for (let i = 0; i < points.length; i++) {
    const p = points[(start + i) % points.length]!;
    text += `${i > 0 ? ' ' : ''}${difference(p.x, p.w, left.x, left.w)},${difference(p.y, p.w, top.y, top.w)}`;
  }
  return text;
}

/** @returns the text of n/d − m/e in lowest terms */
function difference(n: number, d: number, m: number, e: number): string {
  if (d === e && d === 1) return `${n - m}`;
  const [over, under] = [n * e - m * d, d * e];
  const common = gcd(over, under);
  return under === common ? `${over / common}` : `${over / common}/${under / common}`;
}

/** @returns a text that two sets of shapes share exactly when one is the other moved (not turned) */
function picture(fabrics: readonly string[], shapes: readonly (readonly Point[])[]): string {
  let [left, top] = [shapes[0]![0]!, shapes[0]![0]!];
  for (const shape of shapes) {
    for (const p of shape) {
      if (compareX(p, left) < 0) left = p;
      if (compareY(p, top) < 0) top = p;
    }
  }
  return shapes
    .map((shape, i) => `${fabrics[i]!}:${outlineText(shape, leastCorner(shape), left, top)}`)
    .sort()
    .join(';');
}

/**
 * @returns a function that gives an assembly's key: a text that two assemblies share exactly when their pieces are congruent, cloth by
 * cloth, up to quarter turns (a mirror image has another key); and the turn that brings it into the form the key describes. Most are the
 * same ones moved or turned: each is looked at once by itself, whatever it is part of, and only a new one in all its turns
 */
export function congruences(): (assembly: Assembly) => Congruence {
  const numbers = new Map<string, number>();
  const known = new Map<Assembly, number>();
  const found: Congruence[] = [];
  /** By what an assembly shows: what it shows after each turn, and at which of these it is. */
  const seen = new Map<string, { readonly pictures: readonly string[]; readonly at: number; readonly best: string }>();
  /** Equal for assemblies made of equal parts, lying alike. */
  const numberOf = (node: Assembly): number => {
    let number = known.get(node);
    if (number !== undefined) return number;
    const origin = node.outline[0]!;
    let text = `${node.kind ?? ''}|${outlineText(node.outline, 0, origin, origin)}|`;
    if (node.piece) text += JSON.stringify(node.piece.fabric);
    for (const part of node.parts) {
      const { x, y, w } = part.outline[0]!;
      text += `${numberOf(part)}@${difference(x, w, origin.x, origin.w)},${difference(y, w, origin.y, origin.w)} `;
    }
    number = numbers.get(text);
    if (number === undefined) numbers.set(text, (number = numbers.size));
    known.set(node, number);
    return number;
  };
  const look = (assembly: Assembly): Congruence => {
    const pieces = piecesOf(assembly);
    const fabrics = pieces.map((piece) => piece.fabric);
    let shapes = pieces.map((piece) => piece.outline);
    const own = picture(fabrics, shapes);
    let before = seen.get(own);
    if (!before) {
      const pictures = [own];
      while (pictures.length < 4) {
        shapes = shapes.map((shape) => shape.map(turned));
        pictures.push(picture(fabrics, shapes));
      }
      const best = pictures.reduce((least, text) => (text < least ? text : least));
      pictures.forEach((text, at) => seen.has(text) || seen.set(text, { pictures, at, best }));
      before = seen.get(own)!;
    }
    const { pictures, at, best } = before;
    const turn = ([0, 1, 2, 3] as const).find((t) => pictures[(at + t) % 4] === best)!;
    return { key: `${assembly.kind ?? 'part'}|${best}`, turn };
  };
  return (assembly) => (found[numberOf(assembly)] ??= look(assembly));
}

/** @returns the key and turn of one assembly, see `congruences` */
export const congruence = (assembly: Assembly): Congruence => congruences()(assembly);

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
