import { compareAlong, latticePoint, lineKey, lineThrough, undirected, type Line } from '../point.ts';
import { atomEdges, fuses, type Label, type Patchwork } from './patchwork.ts';
import { byStart, earlier, later, merged, type Stretch } from './stretches.ts';
import { isStill, taken, takenLine, type Symmetry } from './symmetry.ts';

/** Everything drawn on one line: where two cloths meet (or a seam is asked for), as disjoint stretches in order. */
export interface Boundary {
  /** Undirected form. */
  readonly line: Line;
  readonly drawn: readonly Stretch[];
  /** The same where two cloths meet, told apart by the cloth in front and behind. */
  readonly between: readonly Between[];
  /** Where the line runs inside one whole patch along atom edges; no seam may run there. */
  readonly locked: readonly Stretch[];
}

/** A stretch where two cloths meet. */
export interface Between extends Stretch {
  readonly front: string;
  readonly back: string;
}

interface Side extends Stretch {
  readonly label: Label;
}

/**
 * Finds the boundaries of a patchwork: the places where a piece of cloth must end.
 * @returns by line key, in the order of a, b, c whatever order the patches were painted in, only lines on which something is drawn or locked; the block's own edge is not among them
 */
export function boundariesOf(patchwork: Patchwork): ReadonlyMap<string, Boundary> {
  const lines = new Map<string | number, { line: Line; front: Side[]; back: Side[]; seams: Stretch[] }>();
  const entry = (line: Line) => {
    // Most lines are upright or level: these are told by whole numbers, even and odd.
    const key = line.b === 0 ? 2 * line.a * line.c : line.a === 0 ? 2 * line.b * line.c + 1 : lineKey(line);
    let found = lines.get(key);
    if (!found) lines.set(key, (found = { line: undirected(line), front: [], back: [], seams: [] }));
    return found;
  };
  for (const pane of patchwork.panes) {
    for (const atom of pane) {
      for (const { line, from, to } of atomEdges(atom)) {
        const on = entry(line);
        // An atom lies in front of its own edges; on the undirected line that may be the back.
        const forward = on.line.a === line.a && on.line.b === line.b;
        (forward ? on.front : on.back).push({ from, to, label: atom.label });
      }
    }
  }
  for (const [[x0, y0], [x1, y1]] of patchwork.drawing.seams) {
    const [p, q] = [latticePoint(x0, y0), latticePoint(x1, y1)];
    const [from, to] = compareAlong(p, q) < 0 ? [p, q] : [q, p];
    entry(lineThrough(p, q)).seams.push({ from, to });
  }
  const result = new Map<string, Boundary>();
  for (const { line, front, back, seams } of [...lines.values()].sort(inOrder)) {
    const onEdge = (line.b === 0 && (line.c === 0 || line.c === patchwork.width)) || (line.a === 0 && (line.c === 0 || line.c === patchwork.height));
    if (onEdge) continue;
    const { differ, locked } = compared(front, back);
    const drawn = merged(seams.length === 0 ? differ : [...differ, ...seams]);
    if (drawn.length > 0 || locked.length > 0) result.set(lineKey(line), { line, drawn, between: joined(differ), locked: merged(locked) });
  }
  return result;
}

const inOrder = ({ line: l }: { line: Line }, { line: m }: { line: Line }): number => l.a - m.a || l.b - m.b || l.c - m.c;

/** @returns the boundaries as they are after a symmetry, in their order */
export function takenBoundaries(s: Symmetry, boundaries: ReadonlyMap<string, Boundary>): ReadonlyMap<string, Boundary> {
  if (isStill(s)) return boundaries;
  const stretch = ({ from, to }: Stretch): Stretch => {
    const [p, q] = [taken(s, from), taken(s, to)];
    return compareAlong(p, q) < 0 ? { from: p, to: q } : { from: q, to: p };
  };
  const all = [...boundaries.values()].map(({ line, drawn, between, locked }): Boundary => {
    const directed = takenLine(s, line);
    const now = undirected(directed);
    const turned = now !== directed;
    return {
      line: now,
      drawn: drawn.map(stretch).sort(byStart),
      between: between
        .map((b): Between => {
          const { from, to } = stretch(b);
          return { from, to, front: turned ? b.back : b.front, back: turned ? b.front : b.back };
        })
        .sort(byStart),
      locked: locked.map(stretch).sort(byStart),
    };
  });
  return new Map(all.sort(inOrder).map((boundary) => [lineKey(boundary.line), boundary]));
}

/** Sweeps both sides of a line; each side's stretches are disjoint. */
function compared(front: Side[], back: Side[]): { readonly differ: Between[]; readonly locked: Stretch[] } {
  front.sort(byStart);
  back.sort(byStart);
  const differ: Between[] = [];
  const locked: Stretch[] = [];
  let [i, j] = [0, 0];
  while (i < front.length && j < back.length) {
    const [f, b] = [front[i]!, back[j]!];
    const [from, to] = [later(f.from, b.from), earlier(f.to, b.to)];
    if (compareAlong(from, to) < 0) {
      if (!fuses(f.label, b.label)) differ.push({ from, to, front: f.label.fabric, back: b.label.fabric });
      else if (f.label.whole >= 0) locked.push({ from, to });
    }
    if (compareAlong(f.to, b.to) <= 0) i++;
    else j++;
  }
  return { differ, locked };
}

/** @returns stretches in order, those of the same two cloths that follow one another as one */
function joined(parts: readonly Between[]): readonly Between[] {
  const result: Between[] = [];
  for (const next of parts) {
    const last = result.at(-1);
    const same = last && last.front === next.front && last.back === next.back && compareAlong(last.to, next.from) === 0;
    if (same) result[result.length - 1] = { ...last, to: next.to };
    else result.push(next);
  }
  return result;
}
