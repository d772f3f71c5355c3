import type { Problem } from '../../measure/problem.ts';
import { MAX_COLOURWAYS, MAX_FABRICS, MAX_JPEGS, MAX_PHOTOS } from '../limits.ts';
import { count, problem, quoted } from '../problems.ts';

export const sameAsNone = (where: string, id: string): Problem =>
  problem('unknown-cloth', `${where} is cut from the cloth of ${quoted(id)}, which is no other fabric of the block; name one that is.`);

export const sameAsNoCloth = (where: string, name: string): Problem =>
  problem('no-own-cloth', `${where} cannot be cut from ${quoted(name)}: both must be one cloth, and that one cut from its own; name another fabric.`);

export const tooManyColourways = (colourways: number): Problem =>
  problem('many-colourways', `The block would have ${colourways} colourways, and at most ${MAX_COLOURWAYS} are kept; take one away first.`);

export const tooManyPhotos = (photos: number): Problem =>
  problem('many-photos', `The block has ${photos} photos of cloth; it may have at most ${MAX_PHOTOS}, so take some away.`);

export const photosTooLong = (length: number): Problem =>
  problem('photos-too-long', `All photos of cloth together are ${length} signs long; a block may have ${MAX_JPEGS}, so take one away or save them smaller.`);

export const samePhoto = (id: string): Problem =>
  problem('duplicate-photo', `Two photos have the same id ${quoted(id)}; give each an id of its own.`);

export const noSuchPhoto = (where: string, id: string): Problem =>
  problem('no-such-photo', `${where} shows the photo ${quoted(id)}, which the block does not have; name one that is there.`);

export const photoOutOfRange = (where: string, most: number): Problem =>
  problem('photo-across', `${where}'s photo must show more than 0 and at most ${most} of cloth from left to right; say how much it shows.`);

export const colourwayTwice = (first: number, second: number, name: string): Problem =>
  problem('colourway-twice', `Colourways ${first} and ${second} are both called ${quoted(name)}; give each a name of its own.`);

export const fabricTwice = (first: number, second: number, id: string): Problem =>
  problem('duplicate-fabric', `Fabrics ${first} and ${second} have the same id ${quoted(id)}; give each fabric an id of its own.`);

export const tooManyFabrics = (fabrics: number): Problem =>
  problem('too-many-fabrics', `The block has ${count(fabrics)} fabrics; it may have at most ${count(MAX_FABRICS)}, so remove some.`);

export const noColor = (where: string, found: string): Problem =>
  problem('not-a-color', `${where} has the colour ${found}; write it as # and six digits, like "#2f5d62".`);

export const ownPlace = (name: string): Problem =>
  problem('own-place', `The fabric ${quoted(name)} cannot take its own place; choose another one for its patches.`);
