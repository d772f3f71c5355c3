import type { DrawnPatch, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { add, multiply, rational } from '../../src/measure/rational.ts';
import type { Plan } from '../../src/sewing/proof-table.ts';
import type { Step } from '../../src/sewing/step.ts';
import { areaOf, laidPieces, sharedArea } from './laid-pieces.ts';
import type { LaidPiece } from './laid-pieces.ts';
import { ruled } from './sabotage-cloth.ts';
import type { Sabotage } from './sabotage.ts';

/** What can be wrong between a pattern and what was ordered: the drawing, the size, the number of blocks. */

const redrawn = (plan: Plan, change: Partial<Plan['drawing']>): Plan => ({ ...plan, drawing: { ...plan.drawing, ...change } });

interface Shared {
  readonly piece: LaidPiece;
  readonly area: number;
}

/** @returns the patch that lies over all others, and how much of it each piece shows: all of it is seen */
function topmost(plan: Plan): { readonly patch: DrawnPatch; readonly shared: readonly Shared[] } | null {
  const patch = plan.drawing.patches.at(-1);
  if (!patch) return null;
  const shared = laidPieces(plan.steps).map((piece) => ({ piece, area: sharedArea(patch.points, piece.outline) }));
  return { patch, shared: shared.filter(({ area }) => area > 1e-6) };
}

const withTop = (plan: Plan, change: Partial<DrawnPatch>): Plan =>
  redrawn(plan, { patches: plan.drawing.patches.map((patch, i, { length }) => (i === length - 1 ? { ...patch, ...change } : patch)) });

export const DRAWN: readonly Sabotage[] = [
  {
    says: 'half a cell was painted after the pattern was made',
    found: /where the drawing shows ochre/,
    spoil: (plan, choose) => {
      const { columns, rows, patches } = plan.drawing;
      const [i, j] = [choose([...columns.keys()].slice(1))!, choose([...rows.keys()].slice(1))!];
      const points: Lattice[] = [[columns[i - 1]!, rows[j - 1]!], [columns[i]!, rows[j - 1]!], [columns[i]!, rows[j]!]];
      return redrawn(plan, { patches: [...patches, { fabric: 'ochre', points }] });
    },
  },
  {
    says: 'a patch that must stay whole is sewn from several pieces',
    found: /must stay whole, but/,
    spoil: (plan) => {
      const top = topmost(plan);
      return !top || top.patch.whole || top.shared.length < 2 ? null : withTop(plan, { whole: true });
    },
  },
  {
    says: 'a scrap is cut in one with its neighbour',
    found: /which lies apart, to others/,
    spoil: (plan) => {
      const top = topmost(plan);
      return top?.shared.some(({ piece, area }) => area < areaOf(piece.outline) - 1e-6) ? withTop(plan, { apart: true }) : null;
    },
  },
  {
    says: 'a seam that was drawn runs through a piece, unsewn',
    found: /is not sewn: it runs through/,
    spoil: (plan, choose) => {
      // Whole patches may forbid a seam.
      if (plan.drawing.patches.some(({ whole }) => whole)) return null;
      const across = laidPieces(plan.steps).flatMap(({ outline }): (readonly [Lattice, Lattice])[] => {
        const [p, , q] = outline;
        return outline.length > 3 && [p!, q!].flat().every(Number.isInteger) ? [[p!, q!]] : [];
      });
      const seam = choose(across);
      return seam ? redrawn(plan, { seams: [...plan.drawing.seams, seam] }) : null;
    },
  },
  {
    says: 'everything is cut for one block fewer than was ordered',
    found: /blocks are wanted/,
    spoil: (plan) => ({ ...plan, blocks: plan.blocks + 1 }),
  },
  {
    says: 'the pattern is of a block an eighth smaller than was ordered',
    found: /says finished .* but it measures/,
    spoil: (plan) => ({ ...plan, step: multiply(plan.step, rational(9, 8)) }),
  },
  {
    says: 'it is cut for one seam allowance and sewn with a wider one',
    found: /too small for/,
    spoil: (plan) => {
      // Cloth for a template goes as far as its tips do, which need no allowance of their own.
      if (ruled(plan).length === 0) return null;
      // Wider by more than the ruler and the trim could make up for.
      const more = add(plan.ruler, multiply(plan.trim, rational(2)));
      const unfinished = ({ width, height }: Step['unfinished']): Step['unfinished'] => ({
        width: add(width, multiply(more, rational(2))),
        height: add(height, multiply(more, rational(2))),
      });
      const steps = plan.steps.map((step) => ({ ...step, unfinished: unfinished(step.unfinished) }));
      return { ...plan, seam: add(plan.seam, more), steps };
    },
  },
];
