import type { Block, ClothPhoto, PhotoPlace } from '../block/block.ts';
import type { Picture } from '../block/publication.ts';
import { toNumber } from '../measure/rational.ts';
import { ink, inkAt } from './diagrams/diagram.ts';
import { grainTurns } from './grain-turns.ts';
import type { Pattern } from './pattern.ts';
import type { Spot } from './polygons.ts';

/** How a photo lies on a piece of its cloth, in the block's unit from its top-left corner: ink. */
export interface PhotoOnPiece {
  readonly picture: Picture;
  /** How much cloth the photo shows from left to right. */
  readonly across: number;
  /** A place of the block, and the place of the photo that lies there, as shares of its width and height. */
  readonly at: Spot;
  readonly shows: Spot;
  /** By how much it is turned clockwise, in degrees. */
  readonly turn: number;
}

/** How far the cloth of one piece is cut from that of the next, as shares of the photo: no two pieces that are counted near each other show the same. */
const APART = [0.6180339887, 0.4142135623] as const;

/**
 * @returns how photos lie on the pieces whose fabrics show one, by the pieces' numbers: at the block's own scale, the grain as the piece is
 * cut, a directional print upright; each from another place of the photo, but where the maker has placed it in a patch
 */
export function photosOnPieces({ fabrics, photos = [], patches, grid, denominator, finished }: Block, pattern: Pattern): ReadonlyMap<number, PhotoOnPiece> {
  const pictures = new Map(photos.map((picture) => [picture.id, picture]));
  const shown = new Map(
    fabrics.flatMap(({ id, photo, directional }) => {
      const picture = photo && pictures.get(photo.picture);
      return picture ? [[id, { picture, across: acrossOf(photo), upright: directional === true }] as const] : [];
    }),
  );
  if (shown.size === 0) return new Map();
  const turns = grainTurns(pattern);
  const scale = ink(pattern.lattice.step);
  const [wide, high] = [toNumber(finished.width) / (grid.columns * denominator), toNumber(finished.height) / (grid.rows * denominator)];
  const placed = patches.flatMap(({ fabric, points, photoAt }) => [{ fabric, photoAt, outline: points.map(([x, y]): Spot => [x * wide, y * high]) }]);
  const anyPlaced = placed.some(({ photoAt }) => photoAt);
  return new Map(
    pattern.pieces.flatMap(({ id, fabric, outline }) => {
      const photo = shown.get(fabric);
      if (!photo) return [];
      const corners = outline.map((point) => inkAt(point, scale));
      const { picture, across, upright } = photo;
      const turn = upright ? 0 : (turns.get(id) ?? 0);
      const middle = meanOf(corners);
      const own = anyPlaced ? placed.findLast((patch) => holds(patch.outline, middle)) : undefined;
      const lies = own?.photoAt && own.fabric === fabric ? { at: middleOf(own.outline), shows: sharesOf(own.photoAt) } : { at: corners[0]!, shows: byChance(id) };
      return [[id, { picture, across, turn, ...lies }] as const];
    }),
  );
}

const acrossOf = ({ across }: ClothPhoto): number => toNumber(across);
const sharesOf = ([across, down]: PhotoPlace): Spot => [across / 1000, down / 1000];
const byChance = (piece: number): Spot => [(piece * APART[0]) % 1, (piece * APART[1]) % 1];

/** @returns the middle of the box round an outline, which turns and is mirrored with it */
export function middleOf(outline: readonly Spot[]): Spot {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

const meanOf = (corners: readonly Spot[]): Spot => [
  corners.reduce((sum, [x]) => sum + x, 0) / corners.length,
  corners.reduce((sum, [, y]) => sum + y, 0) / corners.length,
];

/** @returns whether a place lies in an outline, by how often a line to the right of it is crossed */
function holds(outline: readonly Spot[], [x, y]: Spot): boolean {
  return outline.reduce((inside, [ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax) ? !inside : inside;
  }, false);
}
