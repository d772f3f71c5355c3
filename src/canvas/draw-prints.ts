import { middleOf, traceOutline, type Pen } from './pen.ts';
import type { PieceInk } from './piece-ink.ts';
import { pixelOf, type View } from './view.ts';

/** Pieces of families of scraps, each with its print and the number of prints there are of its family. */
export interface PrintInk {
  readonly piece: PieceInk;
  /** From 1 on. */
  readonly print: number;
  readonly of: number;
}

/** How the prints of scraps are shown on the cloth: shades under the lines, numbers over them. */
export interface PrintsOnCloth {
  readonly shade: (pen: Pen, view: View) => void;
  /** @param aside whether the middle of a piece is taken */
  readonly number: (pen: Pen, view: View, font: string, aside: boolean) => void;
}

/**
 * @param print from 1 on
 * @param of how many prints there are
 * @returns what makes one print of its family's colour: a thin layer of black for the first half of them, of white for the others
 */
export function shadeOf(print: number, of: number): string {
  const step = ((print - 1) / Math.max(1, of - 1)) * 2 - 1;
  return step < 0 ? `rgb(0 0 0 / ${Math.round(-step * 26)}%)` : `rgb(255 255 255 / ${Math.round(step * 42)}%)`;
}

/** Height of the writing, and the room it needs round it, in pixels. */
const TALL = 11;
const ROOM = 9;

/** @returns the prints as they are drawn on the cloth; hatches and greys of the cloth show through */
export function printsOnCloth(inks: readonly PrintInk[]): PrintsOnCloth {
  const shades = new Map<string, PieceInk[]>();
  for (const { piece, print, of } of inks) {
    const shade = shadeOf(print, of);
    shades.set(shade, [...(shades.get(shade) ?? []), piece]);
  }
  return {
    shade: (pen, view) => {
      for (const [shade, pieces] of shades) {
        pen.beginPath();
        for (const { outline } of pieces) traceOutline(pen, outline.map(([x, y]) => pixelOf(view, x, y)));
        pen.fillStyle = shade;
        pen.fill();
      }
    },
    number: (pen, view, font, aside) => {
      pen.font = `600 ${TALL}px ${font}`;
      pen.textAlign = 'center';
      pen.textBaseline = 'middle';
      for (const { piece, print } of inks) {
        const corners = piece.outline.map(([x, y]) => pixelOf(view, x, y));
        const [x, middle] = middleOf(corners);
        const y = aside ? middle + 2 * ROOM : middle;
        const inside = [[x - ROOM, y - ROOM], [x + ROOM, y - ROOM], [x + ROOM, y + ROOM], [x - ROOM, y + ROOM]].every(([px, py]) =>
          corners.every(([ax, ay], i) => {
            const [bx, by] = corners[(i + 1) % corners.length]!;
            return (bx - ax) * (py! - ay) - (by - ay) * (px! - ax) >= 0;
          }),
        );
        if (!inside) continue;
        pen.beginPath();
        pen.roundRect(x - ROOM + 1, y - ROOM + 1, 2 * ROOM - 2, 2 * ROOM - 2, 4);
        pen.fillStyle = 'rgb(255 255 255 / 82%)';
        pen.fill();
        pen.fillStyle = '#16202a';
        pen.fillText(String(print), x, y + 0.5);
      }
    },
  };
}
