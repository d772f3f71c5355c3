import { boundariesOf } from '../patchwork/boundaries.ts';
import type { Drawing } from '../patchwork/drawing.ts';
import { patchworkOf } from '../patchwork/patchwork.ts';
import type { Figures, Piecing } from './assembly.ts';
import { fieldOf } from './field.ts';
import { cheapestPlan, type Plan } from './grid-search.ts';
import { leavesIn, rectCount, type Leaves } from './leaves.ts';
import { clothNovelty, FEWEST, handling, NATURAL, sizeNovelty, type Weights } from './price.ts';
import { assembled } from './tree.ts';
import { alike, unitsOf } from './units.ts';

/** Above this many rectangles of cells one round of the search has to do. */
const LARGE = 400_000;

/** @returns the cost of a plan with every novelty paid once */
function fullCost(plan: Plan, leaves: Leaves, weights: Weights): number {
  let cost = plan.joins * weights.join + plan.rings * weights.unit['partial-seam ring'];
  const sizes = new Set<string>();
  for (const [c, count] of plan.used) {
    const leaf = leaves.classes[c]!;
    cost += count * handling(leaf, weights) + clothNovelty(leaf, weights);
    if (!sizes.has(leaf.size)) cost += sizeNovelty(leaf, weights);
    sizes.add(leaf.size);
  }
  return cost;
}

/** Searches under several expectations of how often each leaf is used, learning from each plan what is really used. */
function bestPlan(leaves: Leaves, weights: Weights): Plan | null {
  const occurrences = new Array<number>(leaves.classes.length).fill(0);
  for (const c of leaves.classOf) if (c >= 0) occurrences[c]!++;
  const large = rectCount(leaves.field) > LARGE;
  const hopes: readonly (readonly number[])[] = [occurrences, occurrences.map(() => Infinity), occurrences.map(() => 1)];
  let best: Plan | null = null;
  let least = Infinity;
  for (const hope of large ? hopes.slice(0, 1) : hopes) {
    let counts: readonly number[] = hope;
    for (let round = 0; round < (large ? 1 : 4); round++) {
      const plan = cheapestPlan(leaves, weights, counts);
      if (!plan) return null;
      const cost = fullCost(plan, leaves, weights);
      if (cost < least - 1e-9) [best, least] = [plan, cost];
      const next = hope.map((h, c) => plan.used.get(c) ?? Math.min(h, Math.max(1, occurrences[c]! / 2)));
      if (next.every((v, c) => v === counts[c])) break;
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

/** @returns the ways to sew a drawing, the standard one first; empty when whole patches lock each other */
export function waysToSew(drawing: Drawing): readonly Piecing[] {
  const patchwork = patchworkOf(drawing);
  const boundaries = boundariesOf(patchwork);
  const field = fieldOf(patchwork, boundaries);
  const way = (name: string, goodFor: string, weights: Weights): Piecing | null => {
    const plan = bestPlan(leavesIn(field, weights), weights);
    if (!plan) return null;
    const { root: rough, pieces } = assembled(plan.tree, patchwork);
    const root = alike(rough);
    const units = unitsOf(root);
    return { way: name, goodFor, root, pieces, units, figures: figuresOf({ root, pieces, units }) };
  };
  return [
    way('standard units', 'Familiar units and equal sizes: quick to cut, easy to teach.', NATURAL),
    way('fewest pieces', 'The least to cut and the fewest seams; some pieces may be of odd sizes.', FEWEST),
  ].filter((w) => w !== null);
}
