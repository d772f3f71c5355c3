import { rectangle } from '../convex.ts';
import { boundariesOf, takenBoundaries, type Boundary } from '../patchwork/boundaries.ts';
import type { Drawing } from '../patchwork/drawing.ts';
import { patchworkOf } from '../patchwork/patchwork.ts';
import { canonicalView, inverse, takenPatchwork } from '../patchwork/symmetry.ts';
import { arranged } from './arrangement.ts';
import type { Assembly, Piecing } from './assembly.ts';
import { equalParts } from './clusters.ts';
import { Congruences } from './congruence.ts';
import { looksOf } from './content.ts';
import { divisionsOf } from './divisions.ts';
import { fieldOf } from './field.ts';
import { figuresOf } from './figures.ts';
import { drawnIn, searchSections } from './free-search.ts';
import { searcher, type Joined, type Plan } from './grid-search.ts';
import { keeping } from './keep.ts';
import { leastPieces, type Deepened, type Least } from './least.ts';
import { leavesIn, type Leaves } from './leaves.ts';
import { naturalPlans, type Looked } from './natural-plan.ts';
import { picturesOf } from './pictures.ts';
import { pinned, together, type Pinned } from './pins.ts';
import { FEWEST, NATURAL } from './price.ts';
import { mostRepeated } from './repeated.ts';
import { ringsWorthwhile } from './rings.ts';
import { inRounds } from './rounds.ts';
import { last } from './steps.ts';
import { named } from './naming.ts';
import { assembled, ofKind, type Tree } from './tree.ts';
import { alike, unitsOf } from './units.ts';
import { inView } from './views.ts';
import { WAYS, type Way } from './way.ts';

/** More regions than this are not looked into for a foundation. */
const FOUNDATION_BUDGET = 3_000;

/** How many times the pieces of the standard way another one may have. */
const MOST_MORE = 1.6;

/** A foundation is offered where a section holds at least so many patches on average. */
const PATCHES_TO_SECTION = 3;

/** Ways that are about the last seams of the block: these stay as they were asked for. */
const JOINED_LAST: readonly Way[] = ['rows', 'columns', 'quarters'];

/** How many drawn edges are looked at, at most, to find and prove the fewest pieces. */
const LEAST_EFFORT = 1_000_000;

/** The plan with the fewest pieces that rows, columns and free units allow. */
function fewestPieces(leaves: Leaves, parts: Uint8Array | null): Plan | null {
  const often = leaves.classes.map(() => Infinity);
  const same = new Int32Array(leaves.classOf.length);
  return searcher(leaves, FEWEST, same, ringsWorthwhile(leaves))({ leaves: often, joins: [1] }, parts);
}

/** @returns a value that is worked out when it is first asked for, once */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}

/** A way as far as it is found. */
export interface Step {
  /** Works the way out; the same function from step to step while no better way is found. */
  readonly piecing: () => Piecing;
  /** What the way is searched for: the trouble of it as a whole, or (fewest pieces) its pieces. It never rises from step to step. */
  readonly cost: number;
  /** That no way has fewer pieces is known so far; null where fewest pieces are not what is looked for. */
  readonly bound: number | null;
  /** How much longer the search may take, for what it has taken. */
  readonly left: number;
}

type Steps = Generator<Step, Piecing | null>;

// What follows is no part of `sewing`: a generator that is made anew each time keeps everything it knows from being forgotten soon.

/** @returns no steps, and what is worked out at once when they are asked for */
function* settled(make: () => Piecing | null): Steps {
  return make();
}

/** @returns the same steps; what they come to is told */
function* noted(steps: Steps, tell: (piecing: Piecing | null) => void): Steps {
  const piecing = yield* steps;
  tell(piecing);
  return piecing;
}

/** @returns a search for plans as steps; the way that a plan makes is worked out once */
function* naturalSteps(plans: Generator<Looked, Looked | null>, made: (plan: Plan) => Piecing): Steps {
  let [known, piecing] = [null as Plan | null, null as (() => Piecing) | null];
  const found = (plan: Plan): (() => Piecing) => {
    if (plan !== known || !piecing) [known, piecing] = [plan, once(() => made(plan))];
    return piecing;
  };
  for (;;) {
    const { done, value } = plans.next();
    if (done) return value && found(value.plan)();
    yield { piecing: found(value.plan), cost: value.cost, bound: null, left: value.left };
  }
}

/**
 * @param found the way with the fewest pieces that is known
 * @returns a search for one with fewer as steps
 */
function* leastSteps(found: Piecing, search: Generator<Deepened, Least>, made: (tree: Tree) => Piecing): Steps {
  const piecing = (): Piecing => found;
  for (;;) {
    const { done, value } = search.next();
    if (done) {
      const least = value.better ? made(value.better.tree) : found;
      return { ...least, figures: { ...least.figures, bound: value.bound } };
    }
    yield { piecing, cost: found.figures.pieces, bound: value.bound, left: value.left };
  }
}

/** A drawing made ready for sewing. */
export interface Sewing {
  /**
   * Looks for a way step by step; what is found depends on the drawing alone, however long one waits between the steps.
   * @returns what `way` returns
   */
  readonly steps: (way: Way) => Steps;
  /** Works out one way; null where there is no such way, or (the standard one) where whole patches lock each other. */
  readonly way: (way: Way) => Piecing | null;
  /** Whether any way is found when only the pieces are counted: quicker than the standard way, and hardly ever of another mind. */
  readonly sewable: () => boolean;
  /** Which of the drawing's pins cannot be honoured, by index, and why. */
  readonly refused: Pinned['refused'];
  /** Where cloths meet in the drawing, as it lies. */
  readonly boundaries: ReadonlyMap<string, Boundary>;
}

/** Prepares a drawing for sewing; each way is worked out when it is asked for. */
export function sewing(drawing: Drawing): Sewing {
  const asDrawn = patchworkOf(drawing);
  const drawn = boundariesOf(asDrawn);
  const view = canonicalView(drawing.width, drawing.height, drawn.values());
  const patchwork = takenPatchwork(view, asDrawn);
  const boundaries = takenBoundaries(view, drawn);
  const field = fieldOf(patchwork, boundaries);
  const turnedOver = view.a === 0;
  const looksIn = looksOf(field);
  const looks = looksIn(true);
  const pictures = once(() => picturesOf(field, looks));
  const shapes = once(() => picturesOf(field, looksIn(false)));
  const natural = once(() => leavesIn(field, NATURAL, looks.content));
  const fewest = once(() => leavesIn(field, FEWEST, looks.content));

  const finished = (way: Way, tree: Tree): Piecing => {
    const congruence = new Congruences();
    const { root: first, pieces: laid } = assembled(tree, patchwork);
    // Which of several is the one that the others are made like is settled in the canonical view, where nothing depends on how the
    // block lies.
    const madeAlike = alike(first, congruence);
    const { root: rough, pieces } = inView({ root: madeAlike, pieces: laid }, inverse(view), congruence);
    const told = inRounds(rough, drawing.pins, JOINED_LAST.includes(way), congruence);
    const root = told === madeAlike ? madeAlike : alike(told, congruence);
    const units = unitsOf(root, congruence);
    return { way, root, pieces, units, figures: figuresOf({ root, pieces, units }), divisions: divisionsOf(root, drawn) };
  };
  const { parts: pins, refused } = pinned(field, patchwork.drawing.pins ?? [], (parts) => fewestPieces(fewest(), parts) !== null);
  const withPins = (parts: Uint8Array | null): Uint8Array | null => (parts && pins ? together(pins, parts) : (parts ?? pins));
  const planned = (way: Way, leaves: Leaves, plan: Plan | null, parts: Uint8Array | null, last: Joined): Piecing | null =>
    plan && finished(way, arranged(plan, leaves, pictures(), parts, last));
  const naturally = (way: Way, parts: Uint8Array | null, joined: Joined = null): Steps => {
    const bounds = { parts: withPins(parts), last: joined, framed: parts === null };
    const made = (plan: Plan): Piecing => planned(way, natural(), plan, bounds.parts, joined)!;
    return naturalSteps(naturalPlans(natural(), NATURAL, shapes(), bounds), made);
  };
  /** The way with the fewest pieces, and how few there can be. */
  const leastWay = (): Steps => {
    const plan = fewestPieces(fewest(), pins);
    const found = planned('fewest pieces', fewest(), plan, pins, null);
    if (!plan || !found || pins) return settled(() => found);
    const whole = rectangle(0, 0, patchwork.width, patchwork.height);
    // Rings are beyond what the search for the least weighs: beside them only its first bound holds, which no seams can undercut.
    const effort = plan.rings > 0 ? 0 : LEAST_EFFORT;
    const search = leastPieces(patchwork, whole, drawnIn(whole, boundaries.values()), found.figures.pieces, effort);
    return leastSteps(found, search, (tree) => finished('fewest pieces', named(tree)));
  };
  let standardWay: { readonly piecing: Piecing | null } | null = null;
  const standardSteps = (): Steps => {
    const known = standardWay;
    return known ? settled(() => known.piecing) : noted(naturally('standard units', null), (piecing) => (standardWay = { piecing }));
  };
  const standard = (): Piecing | null => last(standardSteps());
  /** A way that is bound to something is offered as long as it does not cut the cloth up for it. */
  const worthwhile = (piecing: Piecing | null): Piecing | null =>
    piecing && piecing.figures.pieces <= MOST_MORE * (standard()?.figures.pieces ?? Infinity) ? piecing : null;

  const way = (name: Way): Piecing | null => {
    switch (name) {
      case 'standard units':
        return standard();
      case 'fewest pieces':
        return last(leastWay());
      case 'largest repeated unit': {
        const repeated = mostRepeated(field, pictures());
        return repeated && worthwhile(last(naturally(name, repeated)));
      }
      case 'rows':
        return worthwhile(last(naturally(name, null, turnedOver ? 'columns' : 'rows')));
      case 'columns':
        return worthwhile(last(naturally(name, null, turnedOver ? 'rows' : 'columns')));
      case 'quarters': {
        const quarters = equalParts(field, 2);
        return quarters.length === 0 ? null : worthwhile(last(naturally(name, keeping(field, quarters))));
      }
      case 'foundation': {
        // Patches are added one by one: there are no units to pin.
        if (pins) return null;
        const found = searchSections(patchwork, boundaries.values(), rectangle(0, 0, patchwork.width, patchwork.height), FOUNDATION_BUDGET);
        if (!found || found.tree.form !== 'cut') return null;
        const piecing = finished(name, ofKind(found.tree, 'free unit'));
        return piecing.pieces.length >= PATCHES_TO_SECTION * found.sections ? piecing : null;
      }
    }
  };
  const steps = (name: Way): Steps => {
    if (name === 'standard units') return standardSteps();
    return name === 'fewest pieces' ? leastWay() : settled(() => way(name));
  };
  return { steps, way, sewable: once(() => fewestPieces(fewest(), pins) !== null), refused, boundaries: drawn };
}

/** A text that two assemblies share exactly when they are sewn alike. */
function sewnText(node: Assembly): string {
  const corners = node.outline.map((p) => `${p.x},${p.y},${p.w}`).sort().join(' ');
  return `${corners}(${node.parts.map(sewnText).join(';')})`;
}

/**
 * @returns the ways to sew a drawing, the standard one and the one with the fewest pieces first; of the others those that
 * differ from all before them; empty when whole patches lock each other
 */
export function waysToSew(drawing: Drawing): readonly Piecing[] {
  const sew = sewing(drawing);
  const standard = sew.way('standard units');
  return standard ? [standard, ...otherWays(sew, standard)] : [];
}

/** @returns the other ways beside one that is chosen: the one with the fewest pieces, and those that differ from all before them */
export function otherWays(sew: Sewing, chosen: Piecing): readonly Piecing[] {
  const known = new Set([sewnText(chosen.root)]);
  const others: Piecing[] = [];
  for (const way of WAYS) {
    const piecing = way === chosen.way ? null : sew.way(way);
    if (!piecing) continue;
    const text = sewnText(piecing.root);
    if (!known.has(text) || way === 'standard units' || way === 'fewest pieces') others.push(piecing);
    known.add(text);
  }
  return others;
}
