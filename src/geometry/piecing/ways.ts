import { fromLeastCorner } from '../convex.ts';
import { compareAlong, type Point } from '../point.ts';
import { boundariesOf } from '../patchwork/boundaries.ts';
import type { Drawing } from '../patchwork/drawing.ts';
import { canonicalView, inverse, taken, takenDrawing, takenOutline, type Symmetry } from '../patchwork/symmetry.ts';
import { patchworkOf } from '../patchwork/patchwork.ts';
import type { Assembly, Figures, Piece, Piecing, Way } from './assembly.ts';
import { contentOf } from './content.ts';
import { fieldOf, type Field } from './field.ts';
import { cheapestPlan, type Contents, type Counts, type Plan } from './grid-search.ts';
import { leavesIn, rectCount, rectId, type Leaves } from './leaves.ts';
import { clothNovelty, FEWEST, handling, isPlain, NATURAL, sizeNovelty, type Weights } from './price.ts';
import { assembled } from './tree.ts';
import { alike, unitsOf } from './units.ts';

/** Above this many rectangles of cells one round of the search has to do. */
const LARGE = 400_000;

/** @returns the cost of a plan with every novelty paid once */
function fullCost(plan: Plan, leaves: Leaves, weights: Weights): number {
  let cost = plan.joined.size * weights.join + plan.rings * weights.unit['partial-seam ring'];
  const sizes = new Set<string>();
  for (const [c, count] of plan.used) {
    const leaf = leaves.classes[c]!;
    cost += count * handling(leaf, weights) + clothNovelty(leaf, weights);
    if (!sizes.has(leaf.size)) cost += sizeNovelty(leaf, weights);
    sizes.add(leaf.size);
  }
  return cost;
}

/**
 * @param kindOf a number for each rectangle of cells, by rectId; −1 for none
 * @returns of each number, how many can lie side by side in the block (found greedily, so at least half of the most)
 */
function sideBySide(field: Field, kindOf: ArrayLike<number>, kinds: number): readonly number[] {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const counts = new Array<number>(kinds).fill(0);
  const taken = new Map<number, Uint8Array>();
  for (let j0 = 0; j0 < n; j0++) {
    for (let i0 = 0; i0 < m; i0++) {
      for (let j1 = j0 + 1; j1 <= n; j1++) {
        for (let i1 = i0 + 1; i1 <= m; i1++) {
          const c = kindOf[rectId(n, i0, j0, i1, j1)]!;
          if (c < 0) continue;
          let cells = taken.get(c);
          if (!cells) taken.set(c, (cells = new Uint8Array(m * n)));
          if (claim(cells, m, i0, j0, i1, j1)) counts[c]!++;
        }
      }
    }
  }
  return counts;
}

/** @returns the picture each rectangle of cells shows, pictures numbered from 0, and how many can lie side by side */
function picturesOf(field: Field): { readonly contents: Contents; readonly counts: readonly number[] } {
  const contents = new Int32Array(rectCount(field));
  if (contents.length > LARGE) return { contents, counts: [1] };
  const content = contentOf(field);
  const numbers = new Map<number, number>();
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  for (let i1 = 1; i1 <= m; i1++) {
    for (let i0 = 0; i0 < i1; i0++) {
      for (let j1 = 1; j1 <= n; j1++) {
        for (let j0 = 0; j0 < j1; j0++) {
          const picture = content(i0, j0, i1, j1);
          let number = numbers.get(picture);
          if (number === undefined) numbers.set(picture, (number = numbers.size));
          contents[rectId(n, i0, j0, i1, j1)] = number;
        }
      }
    }
  }
  return { contents, counts: sideBySide(field, contents, numbers.size) };
}

/** Takes a rectangle of cells when all of it is free. */
function claim(cells: Uint8Array, across: number, i0: number, j0: number, i1: number, j1: number): boolean {
  for (let j = j0; j < j1; j++) for (let i = i0; i < i1; i++) if (cells[i + j * across]) return false;
  for (let j = j0; j < j1; j++) cells.fill(1, i0 + j * across, i1 + j * across);
  return true;
}

/**
 * Several views of the whole block, each an expectation of how often every leaf is used: as often as it can be found;
 * and, for each size that units have here, as if the units of that size were the ones the block is made of.
 */
function readings(leaves: Leaves, occurrences: readonly number[]): readonly (readonly number[])[] {
  const modules = new Set(leaves.classes.filter((leaf) => !isPlain(leaf)).map((leaf) => leaf.module));
  const asModule = (module: number): readonly number[] =>
    leaves.classes.map((leaf, c) => (isPlain(leaf) || leaf.module === module ? occurrences[c]! : 0));
  return [occurrences, ...[...modules].sort((a, b) => a - b).map(asModule)];
}

/** Searches under several expectations of how often each thing is used, learning from each plan what is really used. */
function bestPlan(leaves: Leaves, weights: Weights, pictures: ReturnType<typeof picturesOf>): Plan | null {
  const large = rectCount(leaves.field) > LARGE;
  const hopes = readings(leaves, sideBySide(leaves.field, leaves.classOf, leaves.classes.length));
  let best: Plan | null = null;
  let least = Infinity;
  for (const hope of large ? hopes.slice(0, 1) : hopes) {
    let counts: Counts = { leaves: hope, joins: pictures.counts };
    for (let round = 0; round < (large ? 1 : 4); round++) {
      const plan = cheapestPlan(leaves, weights, counts, pictures.contents);
      if (!plan) return null;
      const cost = fullCost(plan, leaves, weights);
      if (cost < least - 1e-9) [best, least] = [plan, cost];
      const next: Counts = {
        leaves: hope.map((h, c) => plan.used.get(c) ?? h / 2),
        joins: pictures.counts.map((h, c) => plan.joined.get(c) ?? h / 2),
      };
      if (next.leaves.every((v, c) => v === counts.leaves[c]) && next.joins.every((v, c) => v === counts.joins[c])) break;
      counts = next;
    }
  }
  return best;
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
  const pictures = picturesOf(field);
  const way = (name: Way, goodFor: string, weights: Weights): Piecing | null => {
    const plan = bestPlan(leavesIn(field, weights), weights, pictures);
    if (!plan) return null;
    const { root: rough, pieces } = inView(assembled(plan.tree, patchwork), back);
    const root = alike(rough);
    const units = unitsOf(root);
    return { way: name, goodFor, root, pieces, units, figures: figuresOf({ root, pieces, units }) };
  };
  return [
    way('standard units', 'Familiar units and equal sizes: quick to cut, easy to teach.', NATURAL),
    way('fewest pieces', 'The least to cut and the fewest seams; some pieces may be of odd sizes.', FEWEST),
  ].filter((w) => w !== null);
}
