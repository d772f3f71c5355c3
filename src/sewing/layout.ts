import { box } from '../geometry/convex.ts';
import { compareAlong, gcd, moved, samePoint, type Point } from '../geometry/point.ts';
import type { Assembly, Unit } from '../geometry/piecing/assembly.ts';
import { piecesOf } from '../geometry/piecing/congruence.ts';
import { isWeb } from '../geometry/piecing/web.ts';
import type { Role } from '../cutting/cut.ts';
import { roundByRound } from './corner-rounds.ts';
import type { Join, StepPart } from './step.ts';

/** Where a piece of the block comes from in the cutting list. */
export type SourceOf = (piece: number) => { readonly cut: string; readonly role: Role };

/** One step's parts and seams, moved to start at 0, 0. */
export interface Layout {
  readonly parts: readonly StepPart[];
  readonly joins: readonly Join[];
}

/**
 * Lays out what one step sews: the parts of a joined unit as they are, those of any other unit down to its pieces, in the order
 * in which they are sewn, so that the numbers of what is already one follow one another.
 * @param unitOf finds the unit that an assembly inside this one is a place of
 * @returns parts with outlines in lattice steps from the top-left corner of the result
 */
export function layoutOf(made: Assembly, unitOf: (assembly: Assembly) => { unit: Unit; turn: 0 | 1 | 2 | 3 }, sourceOf: SourceOf): Layout {
  const { left, top } = box(made.outline);
  const local = (p: Point): Point => moved(p, -left.x, -top.y);
  const parts: StepPart[] = [];
  const pending: { readonly node: Assembly; readonly inOrder: Assembly }[] = [];
  const numbers = new Map<Assembly, number>();
  const web = isWeb(made);
  const lay = (node: Assembly): void => {
    const outline = node.outline.map(local);
    if (node.piece) {
      parts.push({ from: { ...sourceOf(node.piece.id), fabric: node.piece.fabric }, turn: 0, outline });
    } else if (node.kind && node !== made) {
      const { unit, turn } = unitOf(node);
      parts.push({ from: { unit: unit.id }, turn, outline });
    } else {
      const inOrder = web || node.kind === 'joined unit' || node.kind === 'partial-seam ring' ? node : fromTheLargest(node);
      inOrder.parts.forEach(lay);
      pending.push({ node, inOrder });
      return;
    }
    numbers.set(node, parts.length - 1);
  };
  lay(made);
  const joins: Join[] = [];
  if (web) sewColumns(made.parts);
  for (const { node, inOrder } of web ? pending.slice(-1) : pending) {
    numbers.set(node, node.kind === 'partial-seam ring' ? sewRing(inOrder) : sewInTurn(inOrder));
  }
  return made.kind === 'free unit' ? roundByRound({ parts, joins }) : { parts, joins };

  function push(join: Join): number {
    joins.push(join);
    return parts.length + joins.length - 1;
  }

  function sewInTurn(node: Assembly): number {
    let whole = numbers.get(node.parts[0]!)!;
    node.seams.forEach((seam, i) => {
      whole = push({ sew: 'through', first: whole, second: numbers.get(node.parts[i + 1]!)!, from: local(seam.from), to: local(seam.to) });
    });
    return whole;
  }

  /** A column onto the one before it, row after row: the thread runs on from one seam to the next. */
  function sewColumns(rows: readonly Assembly[]): void {
    for (const row of rows) numbers.set(row, numbers.get(row.parts[0]!)!);
    rows[0]!.seams.forEach((_, i) => {
      for (const row of rows) {
        const { from, to } = row.seams[i]!;
        numbers.set(row, push({ sew: 'through', first: numbers.get(row)!, second: numbers.get(row.parts[i + 1]!)!, from: local(from), to: local(to) }));
      }
    });
  }

  function sewRing(node: Assembly): number {
    const [centre, first, ...others] = node.parts as [Assembly, Assembly, ...Assembly[]];
    const seam = node.seams[0]!;
    // The seam begins where the centre and the first arm have a corner in common; the arm runs on beyond the other end.
    const starts = centre.outline.some((p) => samePoint(p, seam.from));
    const [start, end] = starts ? [seam.from, seam.to] : [seam.to, seam.from];
    const turnsOff = centre.outline.find((p) => !samePoint(p, start) && onStretch(p, seam.from, seam.to))!;
    const stop = halfway(start, turnsOff);
    let whole = push({ sew: 'part-way', first: numbers.get(first)!, second: numbers.get(centre)!, from: local(start), to: local(stop) });
    const begun = whole;
    others.forEach((arm, i) => {
      const { from, to } = node.seams[i + 1]!;
      whole = push({ sew: 'through', first: whole, second: numbers.get(arm)!, from: local(from), to: local(to) });
    });
    return push({ sew: 'finish', first: begun, second: whole, from: local(stop), to: local(end) });
  }
}

/** @returns a join of several told from its part of most pieces: first on to the end, then back to the beginning */
function fromTheLargest(node: Assembly): Assembly {
  const sizes = node.parts.map((part) => piecesOf(part).length);
  const largest = sizes.indexOf(Math.max(...sizes));
  const order = [...node.parts.keys()];
  const added = [...order.slice(largest + 1), ...order.slice(0, largest).reverse()];
  return {
    ...node,
    parts: [largest, ...added].map((i) => node.parts[i]!),
    seams: added.map((i) => node.seams[i < largest ? i : i - 1]!),
  };
}

/** @returns whether p lies on the straight stretch from … to (a level or upright one) */
function onStretch(p: Point, from: Point, to: Point): boolean {
  const between = compareAlong(from, p) * compareAlong(p, to) >= 0;
  return between && (from.x === to.x ? p.x === from.x : p.y === from.y);
}

/** @returns the exact middle of two points */
function halfway(p: Point, q: Point): Point {
  const [x, y, w] = [p.x * q.w + q.x * p.w, p.y * q.w + q.y * p.w, 2 * p.w * q.w];
  const common = gcd(gcd(x, y), w);
  return { x: x / common, y: y / common, w: w / common };
}
