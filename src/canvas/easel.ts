import type { Layer } from 'konva/lib/Layer.js';
import type { Block, Patch } from '../block/block.ts';
import type { Stroke } from '../block/painting.ts';
import { printLength } from '../measure/lengths.ts';
import { createClothBitmap } from './cloth-bitmap.ts';
import { drawCloth, drawGrid, drawLetters, drawSeams, drawTape, type TapeMark } from './draw-grid.ts';
import { drawKnot, drawPins, drawWholes, type KnotInk } from './draw-sewing.ts';
import { drawMarks, NO_MARKS, type Marks } from './draw-marks.ts';
import type { GridPoint } from './gesture.ts';
import type { InkColors } from './ink.ts';
import type { PieceInk } from './piece-ink.ts';
import { rulerMarks, type RulerMark } from './ruler-marks.ts';
import { createSweepBitmap } from './sweep-bitmap.ts';
import type { LayerKeeper, LayerName, Painter } from './TableLayers.tsx';
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

/**
 * Draws the layers, each only when something on it has changed: the cloth when the drawing changes, the sweep while one is drawn,
 * the grid when the table is resized, the marks with every move of the pointer.
 */
export interface Easel {
  readonly painters: Readonly<Record<LayerName, Painter>>;
  readonly keep: LayerKeeper;
  readonly show: (canvas: Canvas) => void;
  readonly showPieces: (pieces: readonly PieceInk[], letters: ReadonlyMap<string, string> | null) => void;
  /** Shows the patches that lock each other. */
  readonly showKnot: (knot: readonly KnotInk[]) => void;
  readonly light: (pieces: readonly PieceInk[]) => void;
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
  let pieces: readonly PieceInk[] = [];
  let letters: ReadonlyMap<string, string> | null = null;
  let knot: readonly KnotInk[] = [];
  let ink: InkColors | null = null;
  let font = 'sans-serif';
  let sweeping = false;

  const draw = (...names: LayerName[]): void => {
    for (const name of names) layers.get(name)?.batchDraw();
  };
  const drawAll = (): void => draw('cloth', 'sweep', 'grid', 'marks');

  const painters: Easel['painters'] = {
    cloth: (pen) => {
      if (canvas && ink && canvas.view.width > 0) drawCloth(pen, canvas.view, ink, cloth.canvas);
    },
    sweep: (pen) => {
      if (sweeping && canvas) pen.drawImage(sweepCloth.canvas, canvas.view.left, canvas.view.top, canvas.view.width, canvas.view.height);
    },
    grid: (pen) => {
      if (!canvas || !ink || canvas.view.width === 0) return;
      const { block, view } = canvas;
      const { finished, grid, denominator } = block;
      drawGrid(pen, view);
      const inGridUnits = ([x, y]: readonly [number, number]): GridPoint => [x / denominator, y / denominator];
      drawWholes(pen, view, ink, block);
      drawSeams(pen, view, ink, block.seams.map(([from, to]) => [inGridUnits(from), inGridUnits(to)]));
      const label = ({ at, length }: RulerMark): TapeMark => ({ at, label: printLength(length, finished.unit, 'bare') });
      const along = rulerMarks(finished.width, grid.columns, grid.across, view.width, APART_ALONG * canvas.tapeText).map(label);
      const down = rulerMarks(finished.height, grid.rows, grid.down, view.height, APART_DOWN * canvas.tapeText).map(label);
      drawTape(pen, view, ink, `${canvas.tapeText}px ${font}`, along, down);
      if (letters) drawLetters(pen, view, pieces, letters, font);
      drawKnot(pen, view, ink, knot, font);
      drawPins(pen, view, ink, block, font);
    },
    marks: (pen) => {
      if (canvas && ink && canvas.view.width > 0) drawMarks(pen, canvas.view, ink, { ...marks, lit });
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
      if (next.view.width > 0) cloth.paint(next.block, next.view, next.ratio);
      if (before?.ratio !== next.ratio) for (const layer of layers.values()) layer.getCanvas().setPixelRatio(next.ratio);
      if (before?.view !== next.view || before.ratio !== next.ratio) drawAll();
      else draw('cloth', ...(sewnAlike(before.block, next.block) ? [] : (['grid'] as const)));
    },
    showPieces: (nextPieces, nextLetters) => {
      const visible = letters !== null || nextLetters !== null;
      [pieces, letters] = [nextPieces, nextLetters];
      if (visible) draw('grid');
    },
    showKnot: (nextKnot) => {
      if (nextKnot.length === 0 && knot.length === 0) return;
      knot = nextKnot;
      draw('grid');
    },
    light: (nextLit) => {
      lit = nextLit;
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
        if (!sweeping) sweepCloth.begin(canvas.view, canvas.ratio);
        sweeping = true;
        const color = canvas.block.fabrics.find((each) => each.id === fabric)?.color ?? '#ffffff';
        for (const stroke of added) sweepCloth.lay(stroke, color);
      }
      draw('sweep');
    },
    dress: (nextInk, nextFont) => {
      [ink, font] = [nextInk, nextFont];
      drawAll();
    },
  };
}
