import type { Bounds } from '../block/outline.ts';
import type { GridOutline, GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import { traceOutline, type Pen } from './pen.ts';
import { pixelOf, type View } from './view.ts';

/** What is seen of a patch: outlines of its parts and of the holes in them, in grid units. */
export interface SeenPatch {
  readonly fabric: string;
  readonly outlines: readonly GridOutline[];
}

/** The patches that are chosen. */
export interface Chosen {
  readonly indices: ReadonlySet<number>;
  readonly patches: readonly SeenPatch[];
  /** The box around what is seen of them, in steps of 1/denominator of a grid unit; null where nothing is chosen. */
  readonly box: (Bounds & { readonly denominator: number }) | null;
  /** @returns what is seen of any patch of the drawing */
  readonly seen: (index: number) => SeenPatch | null;
}

export const NOTHING_CHOSEN: Chosen = { indices: new Set(), patches: [], box: null, seen: () => null };

/** Ink for the patches that are chosen. */
export interface SelectionInk {
  readonly patches: readonly SeenPatch[];
  /** How far the hand has carried them, in grid units; null while they lie. */
  readonly carried: GridPoint | null;
  /** The patch that a click or a key would take. */
  readonly near: SeenPatch | null;
  /** Two opposite corners of a frame that is being dragged. */
  readonly frame: readonly [GridPoint, GridPoint] | null;
  /** @returns the colour of a fabric */
  readonly color: (fabric: string) => string;
}

/** Length of a whip stitch, distance from one to the next, and the least length of an edge that has any, in pixels. */
const STITCH = 5;
const APART = 12;
const LEAST = 5;

function trace(pen: Pen, view: View, outlines: readonly GridOutline[], [dx, dy]: GridPoint = [0, 0]): void {
  for (const outline of outlines) traceOutline(pen, outline.map(([x, y]) => pixelOf(view, x + dx, y + dy)));
}

/** Adds small stitches across every edge, as a hem is whipped: a sign that needs no colour. */
function traceStitches(pen: Pen, view: View, outlines: readonly GridOutline[], [dx, dy]: GridPoint = [0, 0]): void {
  for (const outline of outlines) {
    outline.forEach(([x, y], i) => {
      const [u, v] = outline[(i + 1) % outline.length]!;
      const [ax, ay] = pixelOf(view, x + dx, y + dy);
      const [bx, by] = pixelOf(view, u + dx, v + dy);
      const long = Math.hypot(bx - ax, by - ay);
      if (long < LEAST) return;
      const count = Math.max(1, Math.round(long / APART));
      const [ex, ey] = [((bx - ax) / long) * STITCH * 0.5, ((by - ay) / long) * STITCH * 0.5];
      for (let k = 0; k < count; k++) {
        const t = (k + 0.5) / count;
        const [cx, cy] = [ax + (bx - ax) * t, ay + (by - ay) * t];
        // Slanted, as a hand stitches.
        pen.moveTo(cx - ey - ex * 0.6, cy + ex - ey * 0.6);
        pen.lineTo(cx + ey + ex * 0.6, cy - ex + ey * 0.6);
      }
    });
  }
}

function drawEdges(pen: Pen, view: View, ink: InkColors, outlines: readonly GridOutline[], by?: GridPoint): void {
  pen.lineJoin = 'round';
  pen.lineCap = 'round';
  pen.setLineDash([]);
  pen.beginPath();
  trace(pen, view, outlines, by);
  pen.strokeStyle = ink.paper;
  pen.lineWidth = 4;
  pen.stroke();
  pen.strokeStyle = ink.accent;
  pen.lineWidth = 1.75;
  pen.stroke();
  for (const [color, width] of [[ink.paper, 3.5], [ink.accent, 1.75]] as const) {
    pen.beginPath();
    traceStitches(pen, view, outlines, by);
    pen.strokeStyle = color;
    pen.lineWidth = width;
    pen.stroke();
  }
  pen.lineCap = 'butt';
}

/** Draws the patches that are chosen, where they are carried, what would be taken next, and the frame being dragged. */
export function drawSelection(pen: Pen, view: View, ink: InkColors, { patches, carried, near, frame, color }: SelectionInk): void {
  const outlines = patches.flatMap((patch) => patch.outlines);
  if (carried) {
    // Where they were taken, the table is bare.
    pen.beginPath();
    trace(pen, view, outlines);
    pen.globalAlpha = 0.7;
    pen.fillStyle = ink.linen;
    pen.fill('evenodd');
    pen.globalAlpha = 0.9;
    for (const patch of patches) {
      pen.beginPath();
      trace(pen, view, patch.outlines, carried);
      pen.fillStyle = color(patch.fabric);
      pen.fill('evenodd');
    }
    pen.globalAlpha = 1;
  }
  if (outlines.length > 0) drawEdges(pen, view, ink, outlines, carried ?? undefined);
  if (near && !carried) {
    pen.beginPath();
    trace(pen, view, near.outlines);
    pen.lineJoin = 'round';
    pen.strokeStyle = ink.paper;
    pen.lineWidth = 5;
    pen.stroke();
    pen.setLineDash([3, 4]);
    pen.strokeStyle = ink.ink;
    pen.lineWidth = 2;
    pen.stroke();
    pen.setLineDash([]);
  }
  if (frame) {
    const [[ax, ay], [bx, by]] = frame;
    const [left, top] = pixelOf(view, Math.min(ax, bx), Math.min(ay, by));
    const [right, bottom] = pixelOf(view, Math.max(ax, bx), Math.max(ay, by));
    pen.beginPath();
    pen.rect(left, top, right - left, bottom - top);
    pen.globalAlpha = 0.12;
    pen.fillStyle = ink.accent;
    pen.fill();
    pen.globalAlpha = 1;
    pen.strokeStyle = ink.paper;
    pen.lineWidth = 4;
    pen.stroke();
    pen.setLineDash([9, 5]);
    pen.strokeStyle = ink.accent;
    pen.lineWidth = 2;
    pen.stroke();
    pen.setLineDash([]);
  }
}
