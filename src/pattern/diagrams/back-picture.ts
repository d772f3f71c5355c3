import type { Pattern } from '../pattern.ts';
import type { Spot } from '../polygons.ts';
import { arrowAcross, backOf } from './back.ts';
import { ink, inkAt, rectangle, type Frame, type Mark } from './diagram.ts';
import type { SheetMark } from './sheet-marks.ts';

/** @returns the back of a pattern's block as one looks at it: an arrow across every seam, a ring where seams meet that do not nest */
export function backPicture(pattern: Pattern): { readonly frame: Frame; readonly marks: readonly (Mark | SheetMark)[] } {
  const { finished } = pattern.block;
  const [width, height] = [ink(finished.width), ink(finished.height)];
  const scale = ink(pattern.lattice.step);
  const { seams, loose } = backOf(pattern);
  const mirrored = ([x, y]: Spot): Spot => [width - x, y];
  const size = Math.max(width, height);
  const cloth = pattern.pieces.map(({ fabric, outline }): Mark => ({
    mark: 'cloth',
    fabric,
    side: 'wrong',
    outline: outline.map((point) => mirrored(inkAt(point, scale))),
  }));
  const arrows = seams.flatMap(({ places }) =>
    places.map((place): Mark => {
      const { from, to } = arrowAcross(place, size);
      return { mark: place.toward === null ? 'pressed open' : 'pressed', from: mirrored(from), to: mirrored(to) };
    }),
  );
  const rings = loose.map(({ at }): SheetMark => ({ mark: 'loose', at: mirrored(at) }));
  return {
    frame: { left: 0, top: 0, width, height },
    marks: [...cloth, { mark: 'edge', outline: rectangle(0, 0, width, height) }, ...arrows, ...rings],
  };
}
