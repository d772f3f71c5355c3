import { checkText, type Checked } from './checks.ts';
import { isWhole } from './file-checks.ts';
import { jpegFault } from './jpeg.ts';
import {
  isWellFormed, MAX_JPEG, MAX_JPEGS, MAX_NAME, MAX_PARTS, MAX_PICTURES, MAX_PIXELS, MAX_PLACE, MAX_SAID, MAX_WORDS, PLAIN_TEXT,
} from './limits.ts';
import { nameUnprintable } from './problems.ts';
import * as say from './publication-problems.ts';
import type { OwnPart, OwnWords, Picture, Publication, SectionChoice } from './publication.ts';

/*
 * What everything obeys that a designer adds to a pattern.
 */

/** A language as BCP 47 has it, as far as it may stand here: "en", "de-AT". */
export const LANGUAGE = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}$/;

/** @returns the first of some things that is said twice, by what it is called by, as the numbers of both; null where there is none */
function twice<T>(items: readonly T[], nameOf: (item: T) => string): readonly [number, number] | null {
  const numbers = new Map<string, number>();
  for (const [i, item] of items.entries()) {
    const before = numbers.get(nameOf(item));
    if (before !== undefined) return [before, i + 1];
    numbers.set(nameOf(item), i + 1);
  }
  return null;
}

function checkLine(where: string, text: string, most: number): Checked {
  if (text.length > most) return say.textTooLong(where, text.length, most);
  return PLAIN_TEXT.test(text) && isWellFormed(text) ? null : nameUnprintable(where);
}

/** @returns whether a text of hers is plain, on one line and without braces, which stand for live values */
export const checkSaid = (where: string, text: string, most = MAX_SAID): Checked =>
  checkLine(where, text, most) ?? (/[{}]/.test(text) ? say.textWithBraces(where) : null);

/** @returns whether the order of sections names each at most once */
export function checkSections(sections: SectionChoice): Checked {
  const found = twice(sections, ({ section }) => section);
  return found && say.sectionTwice(sections[found[1] - 1]!.section);
}

/** @returns whether braces stand in a sentence for nothing but values by their numbers */
const checkNumbered = (where: string, text: string): Checked =>
  checkLine(where, text, MAX_SAID) ?? (/[{}]/.test(text.replace(/\{[1-9]\d{0,2}\}/g, '')) ? say.textWithBraces(where) : null);

const checkWords = (where: string, { at, language, was, now }: OwnWords): Checked =>
  checkLine(`${where}'s place`, at, MAX_PLACE) ??
  (LANGUAGE.test(language) ? null : say.noLanguage(`${where}'s language`, language)) ??
  checkNumbered(`What was written for ${where.toLowerCase()}`, was) ??
  checkNumbered(where, now) ??
  (now.trim() === '' ? say.partWithoutText(where) : null);

/** @param pictures ids of the pictures there are */
function checkPart(where: string, { id, after, part, text, picture }: OwnPart, pictures: ReadonlySet<string>): Checked {
  const place = after === undefined ? null : checkLine(`${where}'s place`, after, MAX_PLACE);
  const fault = checkText(`${where}'s id`, id) ?? place ?? checkSaid(where, text);
  if (fault) return fault;
  if (part !== 'photo') return picture !== undefined ? say.partWithPicture(where) : text.trim() === '' ? say.partWithoutText(where) : null;
  return picture !== undefined && pictures.has(picture) ? null : say.photoWithoutPicture(where);
}

/** Pictures that were looked at and are sound: every change of a pattern checks all of it. */
const sound = new WeakSet<Picture>();

/** @returns whether a picture is a whole JPEG as it is said to be, and not too long */
export function checkPicture(where: string, picture: Picture): Checked {
  if (sound.has(picture)) return null;
  const { id, width, height, jpeg } = picture;
  const fault = checkText(`${where}'s id`, id);
  if (fault) return fault;
  for (const [name, side] of [['width', width], ['height', height]] as const) {
    if (!isWhole(side, 1, MAX_PIXELS)) return say.pictureOutOfRange(`${where}'s ${name}`, String(side));
  }
  if (jpeg.length > MAX_JPEG) return say.pictureTooLong(where, jpeg.length);
  const broken = jpegFault(jpeg, width, height);
  if (broken) return say.brokenPicture(where, broken);
  sound.add(picture);
  return null;
}

/** Checks all that a designer adds to one pattern. */
export function checkPublication({ subtitle = '', sections = [], words = [], parts = [], pictures = [] }: Publication): Checked {
  const fault = checkSaid('The subtitle', subtitle, MAX_NAME) ?? checkSections(sections);
  if (fault) return fault;
  if (words.length > MAX_WORDS) return say.tooManyWords(words.length);
  if (parts.length > MAX_PARTS) return say.tooManyParts(parts.length);
  if (pictures.length > MAX_PICTURES) return say.tooManyPictures(pictures.length);
  const long = pictures.reduce((sum, { jpeg }) => sum + jpeg.length, 0);
  if (long > MAX_JPEGS) return say.picturesTooLong(long);
  const known = new Set(pictures.map(({ id }) => id));
  for (const [i, each] of words.entries()) {
    const found = checkWords(`Own words ${i + 1}`, each);
    if (found) return found;
  }
  for (const [i, each] of parts.entries()) {
    const found = checkPart(`Own part ${i + 1}`, each, known);
    if (found) return found;
  }
  for (const [i, each] of pictures.entries()) {
    const found = checkPicture(`Picture ${i + 1}`, each);
    if (found) return found;
  }
  const sentence = twice(words, ({ at, language, was }) => JSON.stringify([at, language, was]));
  const [part, picture] = [twice(parts, idOf), twice(pictures, idOf)];
  if (sentence) return say.wordsTwice(...sentence);
  if (part) return say.sameId('Own parts', ...part, parts[part[0] - 1]!.id);
  return picture && say.sameId('Pictures', ...picture, pictures[picture[0] - 1]!.id);
}

const idOf = ({ id }: { readonly id: string }): string => id;
