import { compareAlong, lineThrough, side, type Point } from '../../geometry/point.ts';

type Outlines = readonly (readonly Point[])[];

/** @returns the index of the piece that lies along the beginning of a seam; 0 where none does */
export function atStart(outlines: Outlines, start: Point, end: Point): number {
  const line = lineThrough(start, end);
  const found = outlines.findIndex((outline) =>
    outline.some((p, i) => {
      const q = outline[(i + 1) % outline.length]!;
      if (side(line, p) !== 0 || side(line, q) !== 0) return false;
      const [from, to] = compareAlong(p, q) < 0 ? [p, q] : [q, p];
      return compareAlong(from, start) <= 0 && compareAlong(start, to) < 0;
    }),
  );
  return Math.max(0, found);
}

/** @returns the index of the piece that has a corner as far across as one point and as far down as another; 0 where none has */
export const inCorner = (outlines: Outlines, x: Point, y: Point): number =>
  Math.max(0, outlines.findIndex((outline) => outline.some((p) => p.x * x.w === x.x * p.w && p.y * y.w === y.y * p.w)));
