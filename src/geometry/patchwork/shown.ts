import { chord, split, type Convex } from '../convex.ts';
import { compareAlong, lineKey, lineThrough, samePoint, side, type Line, type Point } from '../point.ts';
import type { Boundary } from './boundaries.ts';
import { merged, within, type Stretch } from './stretches.ts';
import { atomEdges, type Atom, type Patchwork } from './patchwork.ts';

/** @returns the atoms in which a patch shows */
const atomsOf = ({ panes }: Patchwork, patch: number): readonly Atom[] =>
  panes.flatMap((pane) => pane.filter(({ label }) => label.patch === patch));

/**
 * @returns the outline of what shows of a patch, clockwise on screen, no three corners on a line; null where it shows in
 * several parts, round another one, or nowhere
 */
export const shownOutline = (patchwork: Patchwork, patch: number): readonly Point[] | null =>
  outlineAround(atomsOf(patchwork, patch).map(({ shape }) => shape));

/** @returns the outlines of what shows of a patch in front of a line and behind it; null where one of them is not a single convex shape */
export function shownHalves(patchwork: Patchwork, patch: number, line: Line): readonly [readonly Point[], readonly Point[]] | null {
  const cut = atomsOf(patchwork, patch).map(({ shape }) => split(shape, line));
  const [front, back] = (['front', 'back'] as const).map((half) => outlineAround(cut.flatMap((both) => both[half] ?? [])));
  return front && back && isConvex(front) && isConvex(back) ? [front, back] : null;
}

/** @returns whether an outline, clockwise on screen, turns inward at none of its corners */
const isConvex = (outline: readonly Point[]): boolean =>
  outline.every((p, i) => side(lineThrough(outline.at(i - 1)!, p), outline[(i + 1) % outline.length]!) > 0);

/** @returns the outline round shapes that lie side by side; null where they have more than one */
function outlineAround(shapes: readonly Convex[]): readonly Point[] | null {
  const edges = outerEdges(shapes);
  const next = new Map(edges.map(([from, to]) => [pointKey(from), to]));
  if (edges.length === 0 || next.size < edges.length) return null;
  const loop: Point[] = [];
  for (let at = edges[0]![0]; loop.length === 0 || !samePoint(at, loop[0]!); at = next.get(pointKey(at))!) loop.push(at);
  if (loop.length < edges.length) return null;
  return loop.filter((p, i) => side(lineThrough(loop.at(i - 1)!, loop[(i + 1) % loop.length]!), p) !== 0);
}

const pointKey = ({ x, y, w }: Point): string => `${x},${y},${w}`;

/** The edges of shapes that have none of the others on their far side, cut wherever a corner lies on them; clockwise round what they hold. */
function outerEdges(shapes: readonly Convex[]): readonly (readonly [Point, Point])[] {
  const corners = shapes.flatMap(({ points }) => points);
  const found = new Map<string, readonly [Point, Point]>();
  for (const shape of shapes) {
    shape.points.forEach((from, i) => {
      const to = shape.points[(i + 1) % shape.points.length]!;
      const forward = compareAlong(from, to);
      const between = corners
        .filter((p) => side(shape.lines[i]!, p) === 0 && compareAlong(from, p) === forward && compareAlong(p, to) === forward)
        .sort((p, q) => compareAlong(p, q) * -forward);
      const stops = [from, ...between, to];
      for (let k = 1; k < stops.length; k++) {
        const [p, q] = [stops[k - 1]!, stops[k]!];
        if (samePoint(p, q)) continue;
        if (!found.delete(`${pointKey(q)} ${pointKey(p)}`)) found.set(`${pointKey(p)} ${pointKey(q)}`, [p, q]);
      }
    });
  }
  return [...found.values()];
}

/** @returns where a stretch runs through the inside of what shows of a patch, as disjoint stretches in order */
export function throughPatch(patchwork: Patchwork, boundaries: ReadonlyMap<string, Boundary>, patch: number, { from, to }: Stretch): readonly Stretch[] {
  const line: Line = lineThrough(from, to);
  const key = lineKey(line);
  const locked = boundaries.get(key)?.locked ?? [];
  const inside = atomsOf(patchwork, patch).flatMap((atom): readonly Stretch[] => {
    const across = chord(atom.shape, line);
    if (across) return [{ from: across[0], to: across[1] }];
    return atomEdges(atom).flatMap((edge) => (lineKey(edge.line) === key ? within(locked, edge.from, edge.to) : []));
  });
  return within(merged(inside), from, to);
}
