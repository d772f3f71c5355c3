import type { GrainTurns } from '../pattern/grain-turns.ts';
import { traceOutline, type Pen } from './pen.ts';
import type { PieceInk } from './piece-ink.ts';
import { pixelOf, type View } from './view.ts';

/** A photo of cloth, ready to be drawn. */
export interface PhotoInk {
  readonly picture: CanvasImageSource & { readonly width: number; readonly height: number };
  /** How many grid units of cloth it shows from left to right. */
  readonly across: number;
  /** Whether the print runs one way, so that pieces are laid upright. */
  readonly upright: boolean;
}

/** How far the cloth of one piece is cut from that of the next, as shares of the photo: no two pieces that are counted near each other show the same. */
const APART = [0.6180339887, 0.4142135623] as const;

/** @returns what draws the cloth of every piece as its photo shows it: at the drawing's own scale, its grain as the piece is cut, each from another place */
export function photosOnCloth(pieces: readonly PieceInk[], photos: ReadonlyMap<string, PhotoInk>, turns: GrainTurns): (pen: Pen, view: View) => void {
  const shown = pieces.flatMap((piece) => {
    const photo = photos.get(piece.fabric);
    return photo ? [{ piece, photo }] : [];
  });
  return (pen, view) => {
    const unit = view.width / view.columns;
    const patterns = new Map<PhotoInk, CanvasPattern | null>();
    for (const { piece, photo } of shown) {
      if (!patterns.has(photo)) patterns.set(photo, pen.createPattern(photo.picture, 'repeat'));
      const pattern = patterns.get(photo);
      if (!pattern) continue;
      const corners = piece.outline.map(([x, y]) => pixelOf(view, x, y));
      const [left, top] = corners[0]!;
      const scale = (photo.across * unit) / photo.picture.width;
      const turn = photo.upright ? 0 : (turns.get(piece.id) ?? 0);
      const [u, v] = APART.map((apart) => (piece.id * apart) % 1) as [number, number];
      pattern.setTransform(new DOMMatrix().translate(left, top).rotate(turn).scale(scale).translate(-u * photo.picture.width, -v * photo.picture.height));
      pen.beginPath();
      traceOutline(pen, corners);
      pen.fillStyle = pattern;
      pen.fill();
    }
  };
}
