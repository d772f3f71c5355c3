import type { Assembly, Figures, Piece, Piecing } from './assembly.ts';
import { piecesOf } from './congruence.ts';
import { needsTemplate } from '../shape.ts';
import { lineThrough, samePoint, side, type Line, type Point } from '../point.ts';

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
  if (node.seams.length === 0) return 0;
  const pieces = node.parts.map(piecesOf);
  let matched = 0;
  node.seams.forEach(({ from, to }, i) => {
    const line = lineThrough(from, to);
    const added = cornersOn(line, from, to, pieces[i + 1]!);
    if (added.size === 0) return;
    const before = cornersOn(line, from, to, pieces.slice(0, i + 1).flat());
    for (const corner of added) if (before.has(corner)) matched++;
  });
  return matched;
}

/** The corners of pieces that lie on a seam, its ends left out: by how far across they are, or how far down on an upright seam. */
function cornersOn(line: Line, from: Point, to: Point, pieces: readonly Piece[]): ReadonlySet<number | string> {
  const found = new Set<number | string>();
  for (const { outline } of pieces) {
    for (const p of outline) {
      if (side(line, p) !== 0 || samePoint(p, from) || samePoint(p, to)) continue;
      const far = line.b === 0 ? p.y : p.x;
      found.add(p.w === 1 ? far : `${far}/${p.w}`);
    }
  }
  return found;
}
