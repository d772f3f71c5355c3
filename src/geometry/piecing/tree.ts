import { chord, type Convex } from '../convex.ts';
import { compareAlong, lineThrough, parallel, side, type Line, type Point } from '../point.ts';
import { labelsIn, type Label, type Patchwork } from '../patchwork/patchwork.ts';
import type { Assembly, Piece, SewnSeam, UnitKind } from './assembly.ts';

/**
 * How a region comes apart: read backwards it is the sewing order. A cut without a kind that is parallel to the cut it
 * follows belongs to the same join.
 */
export type Tree =
  | { readonly form: 'piece'; readonly region: Convex; readonly label: Label }
  | { readonly form: 'cut'; readonly region: Convex; readonly line: Line; readonly front: Tree; readonly back: Tree; readonly kind?: UnitKind }
  | { readonly form: 'ring'; readonly region: Convex; readonly centre: Tree; readonly arms: readonly [Tree, Tree, Tree, Tree] };

/** @returns a cut as a named unit */
export const ofKind = ({ region, line, front, back }: Tree & { form: 'cut' }, kind: UnitKind): Tree => ({ form: 'cut', region, line, front, back, kind });

/**
 * Turns a tree of cuts into an assembly: parallel cuts one after another become one join of many parts.
 * @param outermost whether the tree is the whole block, whose own join is not a unit
 */
export function assembled(tree: Tree, patchwork: Patchwork): { readonly root: Assembly; readonly pieces: readonly Piece[] } {
  const pieces: Piece[] = [];
  const build = (node: Tree, insideUnit: boolean): Assembly => {
    const outline = node.region.points;
    if (node.form === 'piece') {
      const patches = labelsIn(patchwork, node.region).map((label) => label.patch);
      const piece: Piece = { id: pieces.length, fabric: node.label.fabric, outline, patches: patches.sort((a, b) => a - b) };
      pieces.push(piece);
      return { outline, piece, parts: [], seams: [] };
    }
    if (node.form === 'ring') {
      const parts = [node.centre, ...node.arms].map((part) => build(part, insideUnit));
      return { outline, kind: 'partial-seam ring', parts, seams: ringSeams(parts) };
    }
    const kind = node.kind ?? (insideUnit ? undefined : 'joined unit');
    const within = insideUnit || (kind !== undefined && kind !== 'joined unit');
    const { parts, seams } = chain(node, kind === 'joined unit' || kind === undefined);
    return { outline, ...(kind ? { kind } : {}), parts: parts.map((part) => build(part, within)), seams };
  };
  const root = build(tree, false);
  return { root, pieces };
}

/** Collects parallel cuts that follow one another: parts in order across, each seam joining the next part. */
function chain(node: Tree & { form: 'cut' }, flatten: boolean): { readonly parts: readonly Tree[]; readonly seams: readonly SewnSeam[] } {
  const parts: Tree[] = [];
  const seams: SewnSeam[] = [];
  collect(node, node, flatten, parts, seams);
  return { parts, seams };
}

function collect(part: Tree, node: Tree & { form: 'cut' }, flatten: boolean, parts: Tree[], seams: SewnSeam[]): void {
  const follows = part === node || (flatten && part.form === 'cut' && part.kind === undefined && parallel(part.line, node.line));
  if (!follows || part.form !== 'cut') {
    parts.push(part);
    return;
  }
  // Left to right, or top to bottom where the line is level: the back of a line with positive normal comes first.
  const [first, second] = comesFirst(part.line) ? [part.front, part.back] : [part.back, part.front];
  collect(first, node, flatten, parts, seams);
  const [from, to] = chord(part.region, part.line)!;
  seams.push({ from, to });
  collect(second, node, flatten, parts, seams);
}

/** @returns whether the front of a line is its left side (its upper side when it is level) */
const comesFirst = (line: Line): boolean => line.a < 0 || (line.a === 0 && line.b < 0);

/** The seams of a ring: each arm lies along the centre and the arm before it, the first (sewn in two goes) along the last. */
function ringSeams(parts: readonly Assembly[]): readonly SewnSeam[] {
  const [centre, ...arms] = parts as [Assembly, ...Assembly[]];
  return arms.map((arm, i) => {
    const neighbour = arms[(i + arms.length - 1) % arms.length]!;
    const [from, to] = sharedEdge(arm.outline, [centre.outline, neighbour.outline]);
    return i === 0 ? { from, to, partial: true } : { from, to };
  });
}

/** @returns the stretch of an outline's edge along which all the others touch it, ends in the order of compareAlong */
function sharedEdge(outline: readonly Point[], others: readonly (readonly Point[])[]): readonly [Point, Point] {
  for (let i = 0; i < outline.length; i++) {
    const edge = lineThrough(outline[i]!, outline[(i + 1) % outline.length]!);
    const touching = others.map((other) => other.filter((p) => side(edge, p) === 0));
    if (touching.some((points) => points.length < 2)) continue;
    const all = touching.flat().sort(compareAlong);
    return [all[0]!, all.at(-1)!];
  }
  throw new RangeError('the parts of a ring do not touch');
}
