import { clipAll, rectangle, split, type Convex } from '../convex.ts';
import { compareAlong, side, type Line, type Point } from '../point.ts';
import { convexParts } from './triangulate.ts';
import type { Drawing, Lattice } from './drawing.ts';
import { paneIndex } from './pane-index.ts';

/** What one place of the drawing shows. */
export interface Label {
  readonly fabric: string;
  /** Index of the patch on top here; −1 is the ground. */
  readonly patch: number;
  /** Index of the patch when it must stay one piece, else −1. */
  readonly whole: number;
  /** Index of the patch when it must stay one piece or is no cloth with its neighbours, else −1. Two places of one fabric fuse unless this differs. */
  readonly own: number;
}

/** A convex piece of the plane inside one pane, all of one label. */
export interface Atom {
  readonly shape: Convex;
  readonly label: Label;
}

/** The drawing as an exact partition: panes (columns × rows) that hold atoms. */
export interface Patchwork {
  readonly width: number;
  readonly height: number;
  /** Pane edges, in lattice steps: every vertical (horizontal) drawn edge, and the grid lines on which anything ends or crosses; block edges included. */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  /** Atoms of the pane in column i, row j stand at i + j · (columns.length − 1). */
  readonly panes: readonly (readonly Atom[])[];
  /** Labels by patch index + 1; the ground is first. */
  readonly labels: readonly Label[];
  /** Whether any patch must stay one piece. */
  readonly anyWhole: boolean;
  readonly drawing: Drawing;
}

/** @returns whether two places of the drawing are the same cloth where they touch */
export const fuses = (a: Label, b: Label): boolean => a.fabric === b.fabric && a.own === b.own;

const ascending = (values: Iterable<number>): number[] => [...new Set(values)].sort((a, b) => a - b);

/** The levels of a drawing across (axis 0) and down (axis 1) at which something is drawn or asked for. */
function drawnLevels(drawing: Drawing, axis: 0 | 1): readonly number[] {
  const far = axis === 0 ? drawing.width : drawing.height;
  const gridLines = new Set(axis === 0 ? drawing.columns : drawing.rows);
  const levels = [0, far];
  const edge = ([p, q]: readonly [Lattice, Lattice]): void => {
    for (const v of [p[axis], q[axis]]) if (p[axis] === q[axis] || gridLines.has(v)) levels.push(v);
  };
  for (const { points } of drawing.patches) points.forEach((p, i) => edge([p, points[(i + 1) % points.length]!]));
  drawing.seams.forEach(edge);
  for (const { from, to } of drawing.pins ?? []) levels.push(from[axis], to[axis]);
  if (gridLines.has(far / 2)) levels.push(far / 2);
  return ascending(levels.filter((v) => v >= 0 && v <= far));
}

/** The levels with those grid lines beside them on which drawn lines cross. */
function withCrossings(levels: readonly number[], gridLines: readonly number[], panes: readonly (readonly Atom[])[], axis: 'x' | 'y'): readonly number[] {
  const known = new Set(levels);
  const others = new Set(gridLines.filter((v) => !known.has(v)));
  if (others.size === 0) return levels;
  const crossed = new Set<number>();
  for (const { shape } of panes.flat()) {
    for (const p of shape.points) if (p[axis] % p.w === 0 && others.has(p[axis] / p.w)) crossed.add(p[axis] / p.w);
  }
  return crossed.size === 0 ? levels : ascending([...levels, ...crossed]);
}

/**
 * Lays the patches one over another, later ones on top, exactly.
 * @returns panes that cover the block once, without gap or overlap
 * @throws RangeError when a crossing leaves the range that is held exactly
 */
export function patchworkOf(drawing: Drawing): Patchwork {
  const shared = (role = 0): number => -1 - role;
  const ground: Label = { fabric: drawing.ground, patch: -1, whole: -1, own: shared(drawing.groundRole) };
  const labels = [
    ground,
    ...drawing.patches.map((p, i): Label => ({ fabric: p.fabric, patch: i, whole: p.whole ? i : -1, own: p.whole || p.apart ? i : shared(p.role) })),
  ];
  const [columns, rows] = [drawnLevels(drawing, 0), drawnLevels(drawing, 1)];
  const panes = laidOut(drawing, columns, rows, labels);
  const [allColumns, allRows] = [withCrossings(columns, drawing.columns, panes, 'x'), withCrossings(rows, drawing.rows, panes, 'y')];
  const finer = allColumns !== columns || allRows !== rows;
  return {
    width: drawing.width,
    height: drawing.height,
    columns: allColumns,
    rows: allRows,
    panes: finer ? divided(panes, columns, rows, allColumns, allRows) : panes,
    labels,
    anyWhole: labels.some((label) => label.whole >= 0),
    drawing,
  };
}

/** Lays the patches of a drawing into panes between given levels. */
function laidOut(drawing: Drawing, columns: readonly number[], rows: readonly number[], labels: readonly Label[]): readonly (readonly Atom[])[] {
  const across = columns.length - 1;
  const wholes: Convex[] = [];
  for (let j = 0; j + 1 < rows.length; j++) {
    for (let i = 0; i < across; i++) wholes.push(rectangle(columns[i]!, rows[j]!, columns[i + 1]!, rows[j + 1]!));
  }
  const panes = wholes.map((shape): readonly Atom[] => [{ shape, label: labels[0]! }]);
  drawing.patches.forEach((patch, index) => {
    for (const part of convexParts(patch.points)) {
      const xs = part.points.map((p) => p.x);
      const ys = part.points.map((p) => p.y);
      const lastColumn = Math.min(across - 1, paneIndex(columns, Math.max(...xs)));
      const lastRow = Math.min(rows.length - 2, paneIndex(rows, Math.max(...ys)));
      for (let j = paneIndex(rows, Math.min(...ys)); j <= lastRow; j++) {
        for (let i = paneIndex(columns, Math.min(...xs)); i <= lastColumn; i++) {
          const pane = i + j * across;
          panes[pane] = laid(panes[pane]!, wholes[pane]!, part, labels[index + 1]!);
        }
      }
    }
  });
  return panes;
}

/** Divides panes along more levels, among which are those that they have. */
function divided(
  panes: readonly (readonly Atom[])[],
  columns: readonly number[],
  rows: readonly number[],
  moreColumns: readonly number[],
  moreRows: readonly number[],
): readonly (readonly Atom[])[] {
  const result: (readonly Atom[])[] = [];
  for (let j = 0; j + 1 < moreRows.length; j++) {
    for (let i = 0; i + 1 < moreColumns.length; i++) {
      const pane = panes[paneIndex(columns, moreColumns[i]!) + paneIndex(rows, moreRows[j]!) * (columns.length - 1)]!;
      const { lines } = rectangle(moreColumns[i]!, moreRows[j]!, moreColumns[i + 1]!, moreRows[j + 1]!);
      result.push(
        pane.flatMap(({ shape, label }) => {
          const part = clipAll(shape, lines);
          return part === null ? [] : [{ shape: part, label }];
        }),
      );
    }
  }
  return result;
}

/** Lays one convex shape over the atoms of a pane. */
function laid(atoms: readonly Atom[], pane: Convex, shape: Convex, label: Label): readonly Atom[] {
  const cuts = shape.lines.filter((line) => pane.points.some((p) => side(line, p) < 0));
  if (cuts.length === 0) return [{ shape: pane, label }];
  if (clipAll(pane, cuts) === null) return atoms;
  const result: Atom[] = [];
  for (const atom of atoms) {
    let inside: Convex | null = atom.shape;
    const outside: Convex[] = [];
    for (const line of cuts) {
      if (inside === null) break;
      const halves: { front: Convex | null; back: Convex | null } = split(inside, line);
      if (halves.back !== null) outside.push(halves.back);
      inside = halves.front;
    }
    if (inside === null) {
      result.push(atom);
    } else {
      for (const rest of outside) result.push({ shape: rest, label: atom.label });
      result.push({ shape: inside, label });
    }
  }
  return result;
}

/** @returns the largest whole number ≤ n/d for n, d ≥ 0: remainders of doubles are exact, quotients are not */
const wholePart = (n: number, d: number): number => (n - (n % d)) / d;

/** @returns the largest whole number < n/d for n, d ≥ 0 */
const lastBefore = (n: number, d: number): number => (n % d === 0 ? n / d - 1 : wholePart(n, d));

const paneAt = (edges: readonly number[], value: number): number => Math.min(edges.length - 2, paneIndex(edges, value));

/** @returns the columns and rows of panes that the box of these points reaches into, as [first, last] indices */
export function panesUnder(
  patchwork: Patchwork,
  points: readonly Point[],
): { readonly columns: readonly [number, number]; readonly rows: readonly [number, number] } {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of points) {
    x0 = Math.min(x0, wholePart(p.x, p.w));
    y0 = Math.min(y0, wholePart(p.y, p.w));
    x1 = Math.max(x1, lastBefore(p.x, p.w));
    y1 = Math.max(y1, lastBefore(p.y, p.w));
  }
  const { columns, rows } = patchwork;
  return {
    columns: [paneAt(columns, Math.max(0, x0)), paneAt(columns, x1)],
    rows: [paneAt(rows, Math.max(0, y0)), paneAt(rows, y1)],
  };
}

/** @returns the labels that show inside a convex region, each once */
export const labelsIn = (patchwork: Patchwork, region: Convex): readonly Label[] => labelsUpTo(Infinity, patchwork, region);

/** @returns the label of a convex region known to be one piece of cloth (one of them where several patches make it up) */
export const labelOf = (patchwork: Patchwork, region: Convex): Label => labelsUpTo(1, patchwork, region)[0]!;

function labelsUpTo(most: number, patchwork: Patchwork, region: Convex): readonly Label[] {
  const found = new Set<Label>();
  const { columns, rows } = panesUnder(patchwork, region.points);
  for (let j = rows[0]; j <= rows[1]; j++) {
    for (let i = columns[0]; i <= columns[1]; i++) {
      for (const atom of patchwork.panes[i + j * (patchwork.columns.length - 1)]!) {
        if (!found.has(atom.label) && meets(atom.shape, region)) found.add(atom.label);
        if (found.size === most) return [...found];
      }
    }
  }
  return [...found];
}

/** @returns whether two convex polygons share area: they do unless an edge of one has all of the other behind it */
const meets = (p: Convex, q: Convex): boolean => !parts(p.lines, q.points) && !parts(q.lines, p.points);

/** @returns whether one of the lines has none of the points in front */
function parts(lines: readonly Line[], points: readonly Point[]): boolean {
  for (const line of lines) {
    let behind = true;
    for (let i = 0; behind && i < points.length; i++) behind = side(line, points[i]!) <= 0;
    if (behind) return true;
  }
  return false;
}

/** @returns the directed edge lines of an atom with their ends, in the order of compareAlong */
export function atomEdges(atom: Atom): readonly { readonly line: Line; readonly from: Point; readonly to: Point }[] {
  const { points, lines } = atom.shape;
  return lines.map((line, i) => {
    const [p, q] = [points[i]!, points[(i + 1) % points.length]!];
    return compareAlong(p, q) < 0 ? { line, from: p, to: q } : { line, from: q, to: p };
  });
}
