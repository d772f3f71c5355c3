import type { PhotoOnPiece } from '../pattern/photo-places.ts';
import { traceOutline, type Pen } from './pen.ts';
import type { PieceInk } from './piece-ink.ts';
import { pixelOf, type View } from './view.ts';

/** A photo of cloth, ready to be drawn. */
export type PhotoInk = CanvasImageSource & { readonly width: number; readonly height: number };

/**
 * @param on how photos lie on the pieces, by their numbers
 * @param inks the photos by their ids; those that are not there are not drawn
 * @param unit how long a grid unit is across, in the block's unit
 * @returns what draws the cloth of every piece as its photo shows it
 */
export function photosOnCloth(pieces: readonly PieceInk[], on: ReadonlyMap<number, PhotoOnPiece>, inks: ReadonlyMap<string, PhotoInk>, unit: number): (pen: Pen, view: View) => void {
  const shown = pieces.flatMap((piece) => {
    const lies = on.get(piece.id);
    const ink = lies && inks.get(lies.picture.id);
    return ink ? [{ piece, lies, ink }] : [];
  });
  return (pen, view) => {
    const inch = view.width / view.columns / unit;
    const patterns = new Map<PhotoInk, CanvasPattern | null>();
    for (const { piece, lies, ink } of shown) {
      if (!patterns.has(ink)) patterns.set(ink, pen.createPattern(ink, 'repeat'));
      const pattern = patterns.get(ink);
      if (!pattern) continue;
      const [left, top] = pixelOf(view, 0, 0);
      const [u, v] = lies.shows;
      const scale = (lies.across * inch) / ink.width;
      const place = new DOMMatrix().translate(left + lies.at[0] * inch, top + lies.at[1] * inch).rotate(lies.turn).scale(scale);
      pattern.setTransform(place.translate(-u * ink.width, -v * ink.height));
      pen.beginPath();
      traceOutline(pen, piece.outline.map(([x, y]) => pixelOf(view, x, y)));
      pen.fillStyle = pattern;
      pen.fill();
    }
  };
}
