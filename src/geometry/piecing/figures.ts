import type { Assembly, Figures, Piece, Piecing } from './assembly.ts';
import { piecesOf } from './congruence.ts';
import { needsTemplate } from '../shape.ts';
import { lineThrough, samePoint, side, type Point } from '../point.ts';

/** @returns the figures by which a way to sew is compared with others */
export function figuresOf({ root, pieces, units }: Pick<Piecing, 'root' | 'pieces' | 'units'>): Figures {
  let [seams, partialSeams, matchedPoints] = [0, 0, 0];
  const walk = (node: Assembly): void => {
    seams += node.seams.length;
    partialSeams += node.seams.filter((seam) => seam.partial).length;
    matchedPoints += matchedIn(node);
    node.parts.forEach(walk);
  };
  walk(root);
  return {
    pieces: pieces.length,
    seams,
    partialSeams,
    setInSeams: 0,
    units: units.reduce((sum, unit) => sum + unit.places.length, 0),
    differentUnits: units.length,
    templates: pieces.filter((piece) => needsTemplate(piece.outline)).length,
    matchedPoints,
  };
}

/** How many points along a join's seams have seams arriving from both sides, which must meet. */
function matchedIn(node: Assembly): number {
  const pieces = node.parts.map(piecesOf);
  return node.seams.reduce((sum, { from, to }, i) => {
    const line = lineThrough(from, to);
    const before = cornersOn(line, from, to, pieces.slice(0, i + 1).flat());
    const added = cornersOn(line, from, to, pieces[i + 1]!);
    return sum + [...added].filter((corner) => before.has(corner)).length;
  }, 0);
}

/** The corners of pieces that lie on a seam, its ends left out. */
function cornersOn(line: ReturnType<typeof lineThrough>, from: Point, to: Point, pieces: readonly Piece[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { outline } of pieces) {
    for (const p of outline) {
      if (side(line, p) === 0 && !samePoint(p, from) && !samePoint(p, to)) found.add(`${p.x},${p.y},${p.w}`);
    }
  }
  return found;
}
