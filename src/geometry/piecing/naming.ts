import { chord, type Convex } from '../convex.ts';
import { compareAlong, lineKey, parallel, type Line, type Point } from '../point.ts';
import { recognise, type Rect } from './catalogue.ts';
import type { UnitKind } from './assembly.ts';
import type { Tree } from './tree.ts';

/**
 * Names the units in a tree that was found without regard to units: level rectangles of the catalogue by their kind,
 * rows and columns of rectangles as joined units, and any other rectangle as a free unit.
 * @returns the same tree with kinds
 */
export function named(tree: Tree): Tree {
  if (tree.form !== 'cut') return tree;
  const [front, back] = [named(tree.front), named(tree.back)];
  const rect = rectOf(tree.region);
  if (!rect) return { ...tree, front, back };
  if (rectOf(front.region) && rectOf(back.region)) return { ...tree, front: goesOn(tree.line, front), back: goesOn(tree.line, back), kind: 'joined unit' };
  return { ...tree, front, back, kind: catalogueKind(tree, rect) ?? 'free unit' };
}

/** A row within a row is one row. */
function goesOn(line: Line, part: Tree): Tree {
  if (part.form !== 'cut' || part.kind !== 'joined unit' || !parallel(part.line, line)) return part;
  const { kind: _, ...open } = part;
  return open;
}

/** @returns a region as a level rectangle between lattice points; null when it is none */
function rectOf({ points, lines }: Convex): Rect | null {
  if (points.length !== 4 || lines.some((line) => line.a !== 0 && line.b !== 0) || points.some((p) => p.w !== 1)) return null;
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}

/** @returns the trade's kind of a rectangle by the seams in it; null when it is no unit of the catalogue */
function catalogueKind(tree: Tree, rect: Rect): UnitKind | null {
  const seams = new Map<string, Point[]>();
  const walk = (node: Tree): void => {
    if (node.form !== 'cut') return;
    const key = lineKey(node.line);
    seams.set(key, [...(seams.get(key) ?? []), ...chord(node.region, node.line)!]);
    walk(node.front);
    walk(node.back);
  };
  walk(tree);
  const inside = [...seams.values()].map((ends) => {
    const sorted = ends.sort(compareAlong);
    return { from: sorted[0]!, to: sorted.at(-1)! };
  });
  return recognise(rect, inside)?.kind ?? null;
}
