import { fromLeastCorner } from '../convex.ts';
import { compareAlong, type Point } from '../point.ts';
import { boundariesOf } from '../patchwork/boundaries.ts';
import type { Drawing } from '../patchwork/drawing.ts';
import { canonicalView, inverse, taken, takenDrawing, takenOutline, type Symmetry } from '../patchwork/symmetry.ts';
import { patchworkOf } from '../patchwork/patchwork.ts';
import { arranged } from './arrangement.ts';
import type { Assembly, Figures, Piece, Piecing, Way } from './assembly.ts';
import { fieldOf } from './field.ts';
import { searcher, type Plan } from './grid-search.ts';
import { leavesIn, type Leaves } from './leaves.ts';
import { naturalPlan } from './natural-plan.ts';
import { picturesOf } from './pictures.ts';
import { FEWEST, NATURAL } from './price.ts';
import { mostRepeated } from './repeated.ts';
import { ringsWorthwhile } from './rings.ts';
import { assembled } from './tree.ts';
import { alike, unitsOf } from './units.ts';

/** @returns the plan with the fewest pieces that rows, columns and free units allow */
function fewestPieces(leaves: Leaves): Plan | null {
  const often = leaves.classes.map(() => Infinity);
  const alike = new Int32Array(leaves.classOf.length);
  return searcher(leaves, FEWEST, alike, ringsWorthwhile(leaves))({ leaves: often, joins: [1] }, null);
}

/** @returns the figures of an assembly */
function figuresOf(piecing: Pick<Piecing, 'root' | 'pieces' | 'units'>): Figures {
  let [seams, partialSeams] = [0, 0];
  const walk = (node: Piecing['root']): void => {
    seams += node.seams.length;
    partialSeams += node.seams.filter((s) => s.partial).length;
    node.parts.forEach(walk);
  };
  walk(piecing.root);
  return {
    pieces: piecing.pieces.length,
    seams,
    partialSeams,
    setInSeams: 0,
    units: piecing.units.reduce((sum, u) => sum + u.places.length, 0),
    differentUnits: piecing.units.length,
  };
}

const leastCorner = (assembly: Assembly): Point => fromLeastCorner(assembly.outline)[0]!;

/** @returns an assembly and its pieces after a symmetry */
function inView({ root, pieces }: Pick<Piecing, 'root' | 'pieces'>, view: Symmetry): Pick<Piecing, 'root' | 'pieces'> {
  const moved = pieces.map((piece): Piece => ({ ...piece, outline: takenOutline(view, piece.outline) }));
  const walk = (node: Assembly): Assembly => {
    const parts = node.parts.map(walk);
    const seams = node.seams.map((seam) => ({ ...seam, from: taken(view, seam.from), to: taken(view, seam.to) }));
    // Rows still read from left to right and from top to bottom; a ring keeps its centre first.
    const backwards = node.kind !== 'partial-seam ring' && parts.length > 1 && compareAlong(leastCorner(parts[0]!), leastCorner(parts.at(-1)!)) > 0;
    return {
      ...node,
      outline: takenOutline(view, node.outline),
      ...(node.piece ? { piece: moved[node.piece.id]! } : {}),
      parts: backwards ? parts.reverse() : parts,
      seams: backwards ? seams.reverse() : seams,
    };
  };
  return { root: walk(root), pieces: moved };
}

/** @returns the ways to sew a drawing, the standard one first; empty when whole patches lock each other */
export function waysToSew(drawing: Drawing): readonly Piecing[] {
  const asDrawn = patchworkOf(drawing);
  const boundariesAsDrawn = boundariesOf(asDrawn);
  const view = canonicalView(drawing.width, drawing.height, boundariesAsDrawn.values());
  const patchwork = patchworkOf(takenDrawing(view, drawing));
  const boundaries = boundariesOf(patchwork);
  const back = inverse(view);
  const field = fieldOf(patchwork, boundaries);
  const pictures = picturesOf(field, true);
  const way = (name: Way, goodFor: string, leaves: Leaves, plan: Plan | null): Piecing | null => {
    if (!plan) return null;
    const { root: rough, pieces } = inView(assembled(arranged(plan, leaves, pictures), patchwork), back);
    const root = alike(rough);
    const units = unitsOf(root);
    return { way: name, goodFor, root, pieces, units, figures: figuresOf({ root, pieces, units }) };
  };
  const [natural, fewest] = [leavesIn(field, NATURAL), leavesIn(field, FEWEST)];
  const shapes = picturesOf(field, false);
  const repeated = mostRepeated(field, pictures);
  return [
    way('standard units', 'Familiar units and equal sizes: quick to cut, easy to teach.', natural, naturalPlan(natural, NATURAL, shapes, null)),
    way('fewest pieces', 'The least to cut and the fewest seams; some pieces may be of odd sizes.', fewest, fewestPieces(fewest)),
    repeated &&
      way(
        'largest repeated unit',
        'The same large part made again and again: good for chain piecing and for a class.',
        natural,
        naturalPlan(natural, NATURAL, shapes, repeated),
      ),
  ].filter((w) => w !== null);
}
