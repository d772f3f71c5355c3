import type { Problem } from '../measure/problem.ts';
import type { JpegFault } from './jpeg.ts';
import { MAX_JPEG, MAX_JPEGS, MAX_PARTS, MAX_PICTURES, MAX_PIXELS, MAX_WORDS } from './limits.ts';
import { count, problem, quoted } from './problems.ts';

/*
 * Every sentence about what a designer adds to a pattern. `where` begins a sentence: "Picture 2", "Own part 3's text".
 */

export const textTooLong = (where: string, length: number, most: number): Problem =>
  problem('text-too-long', `${where} is ${count(length)} characters long; shorten it to at most ${count(most)}, or make two of it.`);

export const textWithBraces = (where: string): Problem =>
  problem('braces', `${where} has a curly bracket, which stands for what the drawing fills in; write it without { and }.`);

export const noLanguage = (where: string, found: string): Problem =>
  problem('no-language', `${where} must be the tag of a language, like "en" or "de"; this one is ${quoted(found)}.`);

export const tooManyWords = (found: number): Problem =>
  problem('too-many-own-words', `The pattern has ${count(found)} sentences in words of its own; it may have at most ${count(MAX_WORDS)}.`);

export const tooManyParts = (found: number): Problem =>
  problem('too-many-own-parts', `The pattern has ${count(found)} parts of its own; it may have at most ${MAX_PARTS}.`);

export const tooManyPictures = (found: number): Problem =>
  problem('too-many-pictures', `The pattern has ${count(found)} pictures; it may have at most ${MAX_PICTURES}, so take one out first.`);

export const sectionTwice = (section: string): Problem =>
  problem('section-twice', `The section ${quoted(section)} is listed twice; leave one of them out.`);

export const wordsTwice = (first: number, second: number): Problem =>
  problem('words-twice', `Own words ${first} and ${second} are for the same sentence; leave one of them out.`);

export const sameId = (what: string, first: number, second: number, id: string): Problem =>
  problem('same-id', `${what} ${first} and ${second} have the same id ${quoted(id)}; give each its own.`);

export const partWithoutText = (where: string): Problem =>
  problem('part-without-text', `${where} says nothing; write a sentence, or take it out.`);

export const partWithPicture = (where: string): Problem =>
  problem('part-with-picture', `${where} has a picture and is no photo; make it a photo or leave the picture out.`);

export const photoWithoutPicture = (where: string): Problem =>
  problem('photo-without-picture', `${where} is a photo without a picture that is in the file; add its picture or take the photo out.`);

/** @param side how many pixels it is said to have */
export const pictureOutOfRange = (where: string, side: string): Problem =>
  problem('picture-size', `${where} must be a whole number of pixels from 1 to ${count(MAX_PIXELS)}; this one is ${side}.`);

export const pictureTooLong = (where: string, length: number): Problem =>
  problem(
    'picture-too-long',
    `${where} is ${count(length)} signs long; a picture may have ${count(MAX_JPEG)}, so save it smaller and choose it again.`,
  );

export const picturesTooLong = (length: number): Problem =>
  problem(
    'pictures-too-long',
    `All pictures together are ${count(length)} signs long; a pattern may have ${count(MAX_JPEGS)}, so take one out or save them smaller.`,
  );

const FAULTS: Readonly<Record<JpegFault, string>> = {
  'not base 64': 'is not written in base 64',
  'not a JPEG': 'is not a JPEG',
  'cut short': 'is cut short',
  'not this size': 'has another size than it says',
  'colours for presses': 'is not in the colours of a screen',
  'carries notes': "carries a camera's notes (Exif or XMP)",
};

export const brokenPicture = (where: string, fault: JpegFault): Problem =>
  problem('broken-picture', `${where} ${FAULTS[fault]}; choose it anew in the publishing room.`);
