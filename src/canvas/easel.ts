import type { Layer } from 'konva/lib/Layer.js';
import type { Block, Fabric, Patch } from '../block/block.ts';
import type { Stroke } from '../block/painting.ts';
import { printLength } from '../measure/lengths.ts';
import { createClothBitmap, type ClothStyle } from './cloth-bitmap.ts';
import { clipToWindow, drawCloth, drawGrid, drawSeams, drawTape, type TapeMark } from './draw-grid.ts';
import type { PrintsOnCloth } from './draw-prints.ts';
import { drawEdges, drawLabels, drawPieceSeams, drawUnits } from './draw-over.ts';
import { drawDivisions, drawKnot, drawPins, drawPlaces, drawWholes, NOTHING_SEWN, type KnotInk, type SewnInk } from './draw-sewing.ts';
import { drawMarks, NO_MARKS, type Marks } from './draw-marks.ts';
import type { GridOutline, GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import { hatchingOf } from './hatching.ts';
import type { SizeInk, UnitInk } from './over-ink.ts';
import { drawPart } from './part.ts';
import type { PieceInk } from './piece-ink.ts';
import { rulerMarks, type RulerMark } from './ruler-marks.ts';
import { createSweepBitmap } from './sweep-bitmap.ts';
import type { LayerKeeper, LayerName, Painter } from './TableLayers.tsx';
import { drawTracing, type Tracing } from './tracing.ts';
import { luminance } from '../block/colour/luminance.ts';
import type { View } from './view.ts';

/** What stands on the easel. */
export interface Canvas {
  readonly block: Block;
  readonly view: View;
  /** Device pixels to a CSS pixel. */
  readonly ratio: number;
  /** Height of the numbers on the tape, in CSS pixels. */
  readonly tapeText: number;
}

/** What is drawn over the cloth. The pieces are those of the chosen piecing, while they are those of this very drawing. */
export interface Over {
  readonly pieces: readonly PieceInk[];
  readonly grid: boolean;
  /** The patches' own outlines. */
  readonly edges: boolean;
  /** The seams of the chosen piecing. */
  readonly seams: boolean;
  /** The units of the chosen piecing; none to leave them off. */
  readonly units: readonly UnitInk[];
  /** The fabrics' letters, to write them on the pieces; null to leave them off. */
  readonly letters: ReadonlyMap<string, string> | null;
  /** How large the pieces are cut, by their ids; null to leave it off. */
  readonly sizes: ReadonlyMap<number, SizeInk> | null;
  /** The prints of scraps; null to leave them off. */
  readonly prints: PrintsOnCloth | null;
  /** What the pattern makes of what the drawing asks for. */
  readonly sewn: SewnInk;
}

/** Nothing but the grid. */
export const PLAIN: Over = { pieces: [], grid: true, edges: false, seams: false, units: [], letters: null, sizes: null, prints: null, sewn: NOTHING_SEWN };

/**
 * Draws the layers, each only when something on it has changed: the cloth when the drawing changes, the sweep while one is drawn,
 * the grid when the table is resized, the marks with every move of the pointer.
 */
export interface Easel {
  readonly painters: Readonly<Record<LayerName, Painter>>;
  readonly keep: LayerKeeper;
  readonly show: (canvas: Canvas) => void;
  readonly layOver: (over: Over) => void;
  /** Hatches every fabric in its own way, or leaves that off. */
  readonly hatch: (hatched: boolean) => void;
  /** Lays a picture under the cloth, whose ground then lets it through; null to take it away. */
  readonly trace: (tracing: Tracing | null) => void;
  /** Shows the patches that lock each other. */
  readonly showKnot: (knot: readonly KnotInk[]) => void;
  /** Lights pieces, and the places, in grid units, that a line of the sheet points at. */
  readonly light: (pieces: readonly PieceInk[], places: readonly GridOutline[]) => void;
  readonly mark: (marks: Marks) => void;
  readonly sweep: (added: readonly Stroke[] | null, fabric: string) => void;
  readonly dress: (ink: InkColors, fontFamily: string) => void;
}

/** Distance between two numbers on the tape, along and down, at least; in heights of its text. */
const APART_ALONG = 4;
const APART_DOWN = 2.2;

/** @returns whether two drawings ask the same of the sewing, as far as the grid shows it */
function sewnAlike(a: Block, b: Block): boolean {
  if (a.seams !== b.seams || a.pins !== b.pins || a.denominator !== b.denominator) return false;
  const [wholes, others] = [a, b].map(({ patches }) => patches.filter(({ whole }) => whole)) as [Patch[], Patch[]];
  return wholes.length === others.length && wholes.every((patch, i) => patch === others[i]);
}

/** @returns an easel with nothing on it */
export function createEasel(): Easel {
  const cloth = createClothBitmap();
  const sweepCloth = createSweepBitmap();
  const layers = new Map<LayerName, Layer>();
  let canvas: Canvas | null = null;
  let marks: Marks = NO_MARKS;
  let lit: readonly PieceInk[] = [];
  let places: readonly GridOutline[] = [];
  let over = PLAIN;
  let tracing: Tracing | null = null;
  let hatched = false;
  let style: ClothStyle & { readonly fabrics: readonly Fabric[]; readonly ratio: number } = { hatching: null, open: false, fabrics: [], ratio: 1 };
  let knot: readonly KnotInk[] = [];
  let ink: InkColors | null = null;
  let font = 'sans-serif';
  let sweeping = false;

  const draw = (...names: LayerName[]): void => {
    for (const name of names) layers.get(name)?.batchDraw();
  };
  const drawAll = (): void => draw('cloth', 'sweep', 'grid', 'marks');

  /** Brings the picture of the cloth up to date; nothing but what changed is painted. */
  const paintCloth = (): void => {
    if (!canvas || canvas.view.width === 0) return;
    const { block: { fabrics }, ratio } = canvas;
    const open = tracing !== null;
    if (style.fabrics !== fabrics || style.ratio !== ratio || style.open !== open || (style.hatching !== null) !== hatched) {
      style = { fabrics, ratio, open, hatching: hatched ? hatchingOf(fabrics, luminance, ratio) : null };
    }
    cloth.paint(canvas.block, canvas.view, ratio, style);
  };

  /** Draws with the pen kept to the window. */
  const inWindow = (pen: CanvasRenderingContext2D, view: View, drawing: () => void): void => {
    pen.save();
    clipToWindow(pen, view);
    drawing();
    pen.restore();
  };

  const painters: Easel['painters'] = {
    cloth: (pen) => {
      if (!canvas || !ink || canvas.view.width === 0) return;
      const { view } = canvas;
      const colors = ink;
      const traced = tracing;
      inWindow(pen, view, () =>
        drawCloth(pen, view, colors, cloth.canvas, traced?.cover ?? 1, traced && ((under) => drawTracing(under, view, traced))));
    },
    sweep: (pen) => {
      if (!sweeping || !canvas) return;
      pen.globalAlpha = tracing?.cover ?? 1;
      drawPart(pen, canvas.view, sweepCloth.canvas);
      pen.globalAlpha = 1;
    },
    grid: (pen) => {
      if (!canvas || !ink || canvas.view.width === 0) return;
      const { block, view } = canvas;
      const { finished, grid, denominator } = block;
      const colors = ink;
      const inGridUnits = ([x, y]: readonly [number, number]): GridPoint => [x / denominator, y / denominator];
      inWindow(pen, view, () => {
        over.prints?.shade(pen, view);
        if (over.grid) drawGrid(pen, view);
        if (over.edges) drawEdges(pen, view, block);
        if (over.seams) drawPieceSeams(pen, view, over.pieces);
        drawDivisions(pen, view, colors, over.sewn.divisions);
        drawWholes(pen, view, colors, block);
        drawSeams(pen, view, colors, block.seams.map(([from, to]) => [inGridUnits(from), inGridUnits(to)]));
        const tags = drawUnits(pen, view, colors, over.units, font);
        if (over.letters || over.sizes) drawLabels(pen, view, over.pieces, over.letters, over.sizes, font, tags);
        over.prints?.number(pen, view, font, over.letters !== null || over.sizes !== null);
        drawKnot(pen, view, colors, knot, font);
        drawPins(pen, view, colors, block, font, over.sewn.refused);
      });
      const label = ({ at, length }: RulerMark): TapeMark => ({ at, label: printLength(length, finished.unit, 'bare') });
      const along = rulerMarks(finished.width, grid.columns, grid.across, view.width, APART_ALONG * canvas.tapeText).map(label);
      const down = rulerMarks(finished.height, grid.rows, grid.down, view.height, APART_DOWN * canvas.tapeText).map(label);
      drawTape(pen, view, ink, `${canvas.tapeText}px ${font}`, along, down);
    },
    marks: (pen) => {
      if (!canvas || !ink || canvas.view.width === 0) return;
      const { view } = canvas;
      const colors = ink;
      inWindow(pen, view, () => {
        drawMarks(pen, view, colors, { ...marks, lit });
        drawPlaces(pen, view, colors, places);
      });
    },
  };

  return {
    painters,
    keep: (name, layer) => {
      if (!layer) {
        layers.delete(name);
        return;
      }
      layers.set(name, layer);
      if (canvas) layer.getCanvas().setPixelRatio(canvas.ratio);
      draw(name);
    },
    show: (next) => {
      const before = canvas;
      canvas = next;
      paintCloth();
      if (sweeping && (before?.view !== next.view || before.ratio !== next.ratio)) sweepCloth.look(next.view, next.ratio);
      if (before?.ratio !== next.ratio) for (const layer of layers.values()) layer.getCanvas().setPixelRatio(next.ratio);
      if (before?.view !== next.view || before.ratio !== next.ratio) drawAll();
      else draw('cloth', ...(sewnAlike(before.block, next.block) && !over.edges ? [] : (['grid'] as const)));
    },
    layOver: (next) => {
      const before = over;
      over = next;
      const shows = ({ grid, edges, seams, units, letters, sizes, sewn }: Over): string =>
        `${grid} ${edges} ${seams} ${units.length > 0} ${letters !== null} ${sizes !== null} ${sewn.divisions.length} ${[...sewn.refused]}`;
      const usesPieces = (each: Over): boolean => each.seams || each.units.length > 0 || each.letters !== null || each.sizes !== null || each.sewn.divisions.length > 0;
      if (shows(before) !== shows(next) || usesPieces(next) || before.prints !== next.prints) draw('grid');
    },
    hatch: (next) => {
      if (next === hatched) return;
      hatched = next;
      paintCloth();
      draw('cloth');
    },
    trace: (next) => {
      if (next === tracing) return;
      tracing = next;
      paintCloth();
      draw('cloth', 'sweep');
    },
    showKnot: (nextKnot) => {
      if (nextKnot.length === 0 && knot.length === 0) return;
      knot = nextKnot;
      draw('grid');
    },
    light: (nextLit, nextPlaces) => {
      [lit, places] = [nextLit, nextPlaces];
      draw('marks');
    },
    mark: (nextMarks) => {
      if (nextMarks === NO_MARKS && marks === NO_MARKS) return;
      marks = nextMarks;
      draw('marks');
    },
    sweep: (added, fabric) => {
      if (added === null) {
        sweeping = false;
        sweepCloth.clear();
      } else if (canvas) {
        const color = canvas.block.fabrics.find((each) => each.id === fabric)?.color ?? '#ffffff';
        if (!sweeping) sweepCloth.begin(canvas.view, canvas.ratio, color);
        sweeping = true;
        for (const stroke of added) sweepCloth.lay(stroke);
      }
      draw('sweep');
    },
    dress: (nextInk, nextFont) => {
      [ink, font] = [nextInk, nextFont];
      drawAll();
    },
  };
}
