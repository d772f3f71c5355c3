import { box, leastCorner } from '../convex.ts';
import { compareX, compareY, gcd, turned, type Point } from '../point.ts';
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
export function placed({ x, y, w }: Point, { turn, dx, dy }: Placement): Point {
  // Nought has no sign here.
  if (turn === 0) return { x: x + dx * w, y: y + dy * w, w };
  if (turn === 1) return { x: dx * w - y, y: x + dy * w, w };
  if (turn === 2) return { x: dx * w - x, y: dy * w - y, w };
  return { x: y + dx * w, y: dy * w - x, w };
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

/** @returns the text of a level rectangle of whole steps that begins with its top left corner; null for anything else */
function levelText([p, q, r, s, more]: readonly Point[]): string | null {
  if (more !== undefined || s === undefined || p!.w !== 1 || r!.w !== 1 || q!.w !== 1 || s.w !== 1) return null;
  const level = p!.y === q!.y && q!.x === r!.x && r!.y === s.y && s.x === p!.x && p!.x < q!.x;
  return level ? `${r!.x - p!.x}x${r!.y - p!.y}` : null;
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

/** What an assembly shows after each turn, which of these it is, and which is the least. */
interface Look {
  readonly pictures: readonly string[];
  readonly at: number;
  readonly best: string;
}

/**
 * Tells assemblies by a key: a text that two share exactly when their pieces are congruent, cloth by cloth, up to quarter turns (a
 * mirror image has another key); and by the turn that brings one into the form the key describes. Most assemblies are the same ones
 * moved or turned: each is looked at once by itself, whatever it is part of, and only a new one in all its turns.
 */
export class Congruences {
  private readonly numbers = new Map<string, number>();
  private readonly known = new Map<Assembly, number>();
  private readonly byNumber: Look[] = [];
  private readonly looks = new Map<Assembly, Look>();
  private readonly byPicture = new Map<string, Look>();

  /** @returns key and turn of an assembly */
  of(assembly: Assembly): Congruence {
    const { pictures, at, best } = this.look(assembly);
    let turn = 0;
    while (pictures[(at + turn) % 4] !== best) turn++;
    return { key: `${assembly.kind ?? 'part'}|${best}`, turn: turn as Turn };
  }

  /** Makes known that one assembly has the pieces that another one has after a turn. */
  turned(from: Assembly, to: Assembly, turn: Turn): void {
    const look = this.look(from);
    this.looks.set(to, turn === 0 ? look : { ...look, at: (look.at + turn) % 4 });
  }

  private look(assembly: Assembly): Look {
    let look = this.looks.get(assembly);
    if (!look) this.looks.set(assembly, (look = this.byNumber[this.numberOf(assembly)] ??= this.seen(assembly)));
    return look;
  }

  /** Equal for assemblies made of equal parts, lying alike. */
  private numberOf(node: Assembly): number {
    let number = this.known.get(node);
    if (number !== undefined) return number;
    const origin = node.outline[0]!;
    let text = `${node.kind ?? ''}|${levelText(node.outline) ?? outlineText(node.outline, 0, origin, origin)}|`;
    if (node.piece) text += `:${node.piece.fabric}`;
    for (const part of node.parts) {
      const { x, y, w } = part.outline[0]!;
      text += `${this.numberOf(part)}@${difference(x, w, origin.x, origin.w)},${difference(y, w, origin.y, origin.w)} `;
    }
    number = this.numbers.get(text);
    if (number === undefined) this.numbers.set(text, (number = this.numbers.size));
    this.known.set(node, number);
    return number;
  }

  private seen(assembly: Assembly): Look {
    const pieces = piecesOf(assembly);
    const fabrics = pieces.map((piece) => piece.fabric);
    let shapes = pieces.map((piece) => piece.outline);
    const own = picture(fabrics, shapes);
    const before = this.byPicture.get(own);
    if (before) return before;
    const pictures = [own];
    while (pictures.length < 4) {
      shapes = shapes.map((shape) => shape.map(turned));
      pictures.push(picture(fabrics, shapes));
    }
    const best = pictures.reduce((least, text) => (text < least ? text : least));
    pictures.forEach((text, at) => this.byPicture.has(text) || this.byPicture.set(text, { pictures, at, best }));
    return this.byPicture.get(own)!;
  }
}

/** @returns key and turn of one assembly, see `Congruences` */
export const congruence = (assembly: Assembly): Congruence => new Congruences().of(assembly);

/**
 * @returns a copy of an assembly under a placement; pieces take their ids and patches from `pieceAt`,
 * which is given the new outline
 * @param congruence comes to know the copy
 */
export function copied(
  assembly: Assembly,
  placement: Placement,
  pieceAt: (outline: readonly Point[]) => Piece,
  congruence: Congruences,
): Assembly {
  const { kind, piece } = assembly;
  const outline = assembly.outline.map((p) => placed(p, placement));
  const copy: Assembly = {
    outline,
    ...(kind ? { kind } : {}),
    ...(piece ? { piece: pieceAt(piece.outline === assembly.outline ? outline : piece.outline.map((p) => placed(p, placement))) } : {}),
    parts: assembly.parts.map((part) => copied(part, placement, pieceAt, congruence)),
    seams: assembly.seams.map((seam) => ({ ...seam, from: placed(seam.from, placement), to: placed(seam.to, placement) })),
  };
  if (kind) congruence.turned(assembly, copy, placement.turn);
  return copy;
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
