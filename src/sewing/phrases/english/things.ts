import { listed } from '../../../measure/words.ts';
import type { Some } from '../joins.ts';
import type { Piece, Pieces, Shape, Size, Thing } from '../said.ts';

/** How things are called in an English sentence. */

/** @returns "4 7/8 in." or "2 1/2 by 4 1/2 in." */
export const sizeName = (size: Size): string => size.join(' by ');

const TURNS = ['', ' turned a quarter clockwise', ' turned half round', ' turned a quarter counter-clockwise'] as const;

/** @returns "4 7/8 in. square", "triangles (5 1/4 in. squares cut twice)"; with many more than one of them */
function shapeName(shape: Shape, many: boolean): string {
  const s = many ? 's' : '';
  switch (shape.form) {
    case 'template':
      return `piece${s} (template, line ${shape.cut})`;
    case 'triangle':
      return `triangle${s} (${sizeName(shape.size)} ${shape.from}${s} cut ${shape.cut})`;
    case 'strip triangle':
      return `triangle${s} (from strips ${shape.strip} high)`;
    default:
      return `${sizeName(shape.size)} ${shape.form}${s}`;
  }
}

/** @returns "Fog 4 7/8 in. square" */
export const pieceName = ({ cloth, shape }: Piece, many = false): string => `${cloth} ${shapeName(shape, many)}`;

/** @returns "A turned half round", "Fog 4 7/8 in. square" */
export const thingName = (thing: Thing): string => ('unit' in thing ? `${thing.unit}${TURNS[thing.turn]}` : pieceName(thing));

/** @returns "7 × A and B", in their order */
export const thingsName = (all: readonly Some[]): string =>
  listed(all.map(({ thing, count }) => `${count.n > 1 ? `${count.said} × ` : ''}${thingName(thing)}`));

/** @returns "Fog and Sea triangles (5 1/4 in. squares cut twice) and Oat 2 in. squares" */
export const piecesName = (all: readonly Pieces[]): string =>
  listed(all.map(({ cloths, shape }) => `${listed(cloths)} ${shapeName(shape, true)}`));
