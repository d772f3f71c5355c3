import { good, type Result } from '../../measure/problem.ts';
import { compare, rational, ZERO, type Rational } from '../../measure/rational.ts';
import type { Block, Fabric, PhotoPlace } from '../block.ts';
import type { Checked } from '../checks.ts';
import { MAX_FINISHED, MAX_JPEGS, MAX_PHOTOS } from '../limits.ts';
import { refused } from '../problems.ts';
import { noSuchPhoto, photoOutOfRange, photosTooLong, samePhoto, tooManyPhotos } from './problems.ts';
import { checkPicture } from '../publication-checks.ts';
import type { Picture } from '../publication.ts';
import { freshPhotoId, withoutStrays } from './shown-photos.ts';

/** Checks the photos of a block, and that every fabric's is there. */
export function checkPhotos({ fabrics, colourways = [], photos = [], finished: { unit } }: Block): Checked {
  if (photos.length > MAX_PHOTOS) return tooManyPhotos(photos.length);
  const long = photos.reduce((sum, { jpeg }) => sum + jpeg.length, 0);
  if (long > MAX_JPEGS) return photosTooLong(long);
  const known = new Set<string>();
  for (const [i, photo] of photos.entries()) {
    if (known.has(photo.id)) return samePhoto(photo.id);
    known.add(photo.id);
    const fault = checkPicture(`Photo ${i + 1}`, photo);
    if (fault) return fault;
  }
  const looks = [
    ...fabrics.map((fabric, i) => [`Fabric ${i + 1}`, fabric.photo] as const),
    ...colourways.flatMap(({ looks: each }, i) => Object.values(each).map(({ photo }) => [`Colourway ${i + 1}`, photo] as const)),
  ];
  for (const [where, photo] of looks) {
    if (!photo) continue;
    if (!known.has(photo.picture)) return noSuchPhoto(where, photo.picture);
    if (!isAcross(photo.across, MAX_FINISHED[unit])) return photoOutOfRange(where, MAX_FINISHED[unit]);
  }
  return null;
}

const isAcross = (across: Rational, most: number): boolean => compare(across, ZERO) > 0 && compare(across, rational(most)) <= 0;

/** A photo that is not yet the block's. */
export type NewPhoto = Omit<Picture, 'id'>;

/**
 * @param photo what it shows, and how much cloth from left to right in the block's unit; null for none. A photo the block has already is
 * not kept twice, and one that nothing shows any more is forgotten
 * @returns the block with a photo for a fabric
 */
export function setPhoto(block: Block, id: string, photo: { readonly picture: NewPhoto; readonly across: Rational } | null): Result<Block> {
  const { photos = [], ...rest } = block;
  const known = photo && photos.find(({ jpeg }) => jpeg === photo.picture.jpeg);
  const added = photo && (known ?? { id: freshPhotoId(photos), ...photo.picture });
  const fabrics = block.fabrics.map((fabric): Fabric => {
    if (fabric.id !== id) return fabric;
    const { photo: _, ...plain } = fabric;
    return photo ? { ...plain, photo: { picture: added!.id, across: photo.across } } : plain;
  });
  const kept = [...photos, ...(added && !known ? [added] : [])];
  const next = withoutStrays({ ...rest, fabrics, ...(kept.length > 0 && { photos: kept }) });
  const fault = checkPhotos(next);
  return fault ? refused(fault) : good(next);
}

/**
 * @param selection indices of patches
 * @param at which place of their photo lies in the middle of each; null for as chance has it
 * @returns the block with a photo placed in patches
 */
export function placePhoto(block: Block, selection: readonly number[], at: PhotoPlace | null): Block {
  const meant = new Set(selection);
  const patches = block.patches.map((patch, i) => {
    if (!meant.has(i)) return patch;
    const { photoAt: _, ...rest } = patch;
    return at ? { ...rest, photoAt: at } : rest;
  });
  return { ...block, patches };
}
