import { inOrder } from '../geometry/piecing/reassembly.ts';
import { knotProblem } from './knots.ts';

/** Parts of the engine that few drawings ask for: a page fetches them when the first one does. */
export interface RareParts {
  readonly inOrder: typeof inOrder;
  readonly knotProblem: typeof knotProblem;
}

export const RARE_PARTS: RareParts = { inOrder, knotProblem };
