import { listed } from '../../../measure/words.ts';
import type { CornerPhrases, CornersOf } from '../corners.ts';
import { eachOf, onBothSides, yields } from './half-squares.ts';
import { pieceName, piecesName, sizeName, thingName } from './things.ts';

const CARE: Readonly<Record<CornersOf, string>> = {
  // Equal angles at both ends of a seam stand out equally; a goose has them at its base alone.
  'square in a square': ', middles matched',
  'flying geese': ', tips even at the ends of its long side',
  'corner-triangle unit': '',
};

export const corners: CornerPhrases = {
  fourGeese: (small, large, seam, single, spare) =>
    `Take 4 ${pieceName(small, true)} to each ${pieceName(large)}. ` +
    `Lay 2 ${small.cloth} squares on opposite corners of the ${large.cloth} square, right sides together; ` +
    `draw the diagonal that runs through both, ${onBothSides(seam)}, and press the ${small.cloth} triangles out. ` +
    `On each half lay 1 ${small.cloth} square in the corner that is left, ` +
    `draw its diagonal from that corner to where the first two triangles meet, ${onBothSides(seam)}: ` +
    yields(4, eachOf(single, `${large.cloth} square`), spare),
  stitchAndFlip: (squares, base, seam) =>
    `Draw a diagonal on the back of the ${piecesName(squares)}. Sew them on one at a time: ` +
    `lay a square on a corner of the ${thingName(base)}, right sides together, the line across the corner; ` +
    `sew on the line, cut ${seam} outside it and press the corner out.`,
  fromTriangles: (triangles, base, whose) =>
    `Sew ${piecesName(triangles)} to the ${thingName(base)} by their long sides${CARE[whose]}, and press each out before the next.`,
  toAllCorners: (cloth) => `${cloth} goes to all 4 corners, opposite ones first.`,
  toCorners: (where) =>
    `${where
      .map(({ cloth, size, corners: at }, i) => {
        const name = size ? `${cloth} ${sizeName(size)}` : cloth;
        return `${name} ${i === 0 ? 'goes ' : ''}to the ${listed(at)} corner${at.length > 1 ? 's' : ''}`;
      })
      .join(', ')}.`,
};
