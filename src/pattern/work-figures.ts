import { biasEdges, type Edge } from '../cutting/bias.ts';
import { finishedWidths, narrower } from '../cutting/narrowest.ts';
import type { Assembly } from '../geometry/piecing/assembly.ts';
import { lineThrough, side } from '../geometry/point.ts';
import type { Surd } from '../measure/surd.ts';
import { layersOf } from '../sewing/pressing/layers.ts';
import { listNow } from './effects.ts';
import type { Pattern } from './pattern.ts';
import { straightCuts } from './straight-cuts.ts';
import { workTime, type Assumptions, type WorkTime } from './work-time.ts';

/** What a pattern asks of its maker, to choose by; of one block where nothing else is said. */
export interface WorkFigures {
  readonly pieces: number;
  readonly seams: number;
  /** Points where seams from both sides of a seam must meet. */
  readonly pointsToMatch: number;
  /** Of the points where seams could lock into each other: those where two lie the same way, or one lies open. */
  readonly pointsApart: { readonly sameWay: number; readonly open: number };
  /** Of cloth, where the most lie on one another along a join. */
  readonly layers: number;
  /** How narrow the narrowest piece finishes, in the block's unit. */
  readonly narrowest: Surd;
  /** Pieces with bias on the outer edge of the block, and seams along an edge that lies loose on the bias. */
  readonly bias: { readonly outer: number; readonly seams: number };
  /** Before anything is sewn, all blocks together. */
  readonly straightCuts: number;
  readonly time: WorkTime;
}

/** @returns everything by which a maker may weigh a pattern, the time by what is assumed of her, else by the usual assumptions */
export function workFigures(pattern: Pattern, assumed?: Assumptions): WorkFigures {
  const { figures, pressing, pieces, lattice, steps, warnings } = pattern;
  return {
    pieces: figures.pieces,
    seams: figures.seams,
    pointsToMatch: figures.matchedPoints,
    pointsApart: { sameWay: pressing.sameWay, open: pressing.open },
    layers: Math.max(...layersOf(steps)),
    narrowest: finishedWidths(pieces.map(({ outline }) => outline), lattice.step).reduce(narrower),
    bias: { outer: warnings.find(({ code }) => code === 'bias on the edge')?.pieces.length ?? 0, seams: biasSeams(pattern) },
    straightCuts: straightCuts(pattern),
    time: workTime(pattern, assumed),
  };
}

/** Seams of one block along which a piece has an edge that lies loose on the bias. */
function biasSeams(pattern: Pattern): number {
  const { cuts, pieces } = listNow(pattern);
  if (cuts.every(({ subcut, shape }) => subcut === 'none' && shape !== 'template')) return 0;
  const roles = new Map(pieces.map(({ piece, role }) => [piece, role]));
  let seams = 0;
  /** Sews a part of the block. @returns what of it may lie on the bias along later seams */
  const sewn = ({ piece, parts, seams: joins }: Assembly): readonly Edge[] => {
    if (piece) return biasEdges(piece.outline, roles.get(piece.id)!, pattern.lattice.step);
    const edges = parts.map(sewn);
    const lines = joins.map(({ from, to }) => lineThrough(from, to));
    const along = (line: (typeof lines)[number]) => ([p, q]: Edge): boolean => side(line, p) === 0 && side(line, q) === 0;
    lines.forEach((line, i) => {
      if (edges.slice(0, i + 2).some((each) => each.some(along(line)))) seams++;
    });
    return edges.flat().filter((edge) => !lines.some((line) => along(line)(edge)));
  };
  sewn(pattern.piecing.root);
  return seams;
}
