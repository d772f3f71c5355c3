import * as v from 'valibot';
import { MAX_JPEG, MAX_NAME, MAX_PARTS, MAX_PICTURES, MAX_PIXELS, MAX_PLACE, MAX_SAID, MAX_WORDS } from '../block/limits.ts';
import { LANGUAGE } from '../block/publication-checks.ts';
import { SECTIONS, type OwnPart } from '../block/publication.ts';
import type { ShapeFault } from './shape-problems.ts';

/*
 * How what a designer adds to a pattern looks in a file.
 */

const fault = (code: ShapeFault): ShapeFault => code;

const PARTS = ['paragraph', 'tip', 'photo'] as const satisfies readonly OwnPart['part'][];

const text = (most: number, description: string) =>
  v.pipe(v.string(fault('no-text')), v.maxLength(most, fault('long-line')), v.description(description));

const id = (description: string) => text(MAX_NAME, description);

const list = <Item extends v.GenericSchema>(item: Item, most: number, tooMany: ShapeFault, description: string) =>
  v.pipe(v.array(item, fault('no-list')), v.maxLength(most, tooMany), v.description(description));

const section = v.picklist(SECTIONS, fault('no-section'));

/** Which sections there are, in which order. */
export const sections = list(
  v.strictObject(
    {
      section,
      shown: v.pipe(v.boolean(fault('no-yes-or-no')), v.description('False where it is left out.')),
    },
    fault('no-object'),
  ),
  SECTIONS.length,
  'many-sections',
  'Sections in their order, each at most once; those that are not named follow in their usual order, shown.',
);

const words = v.strictObject(
  {
    at: text(MAX_PLACE, 'Which sentence of the pattern it is.'),
    language: v.pipe(
      v.string(fault('no-text')),
      v.regex(LANGUAGE, fault('no-language')),
      v.description('Language it is written in, as BCP 47 has it.'),
    ),
    was: text(
      MAX_SAID,
      'What the program wrote there, its values as {1}, {2} …; where it writes something else, these words are kept aside.',
    ),
    now: text(MAX_SAID, 'What is said instead, with those of the values that it needs.'),
  },
  fault('no-object'),
);

const part = v.strictObject(
  {
    id: id('Different for each part.'),
    section,
    after: v.optional(text(MAX_PLACE, 'The place in the section that it stands behind; at its beginning where absent.')),
    part: v.picklist(PARTS, fault('no-part')),
    text: text(MAX_SAID, 'Plain text on one line; of a photo what is said under it, which may be empty.'),
    picture: v.optional(id('Id of the picture of a photo.')),
  },
  fault('no-object'),
);

const side = (description: string) =>
  v.pipe(
    v.number(fault('no-pixels')),
    v.integer(fault('no-pixels')),
    v.minValue(1, fault('no-pixels')),
    v.maxValue(MAX_PIXELS, fault('no-pixels')),
    v.description(description),
  );

/** A photo or logo. */
export const picture = v.pipe(
  v.strictObject(
    {
      id: id('Different for each picture.'),
      width: side('In pixels.'),
      height: side('In pixels.'),
      jpeg: v.pipe(
        v.string(fault('no-text')),
        v.maxLength(MAX_JPEG, fault('long-picture')),
        v.description("A JPEG in greys or colours of a screen, without a camera's notes (Exif, XMP), in base 64."),
      ),
    },
    fault('no-object'),
  ),
  v.description('A picture as large as it says.'),
);

export const publication = v.pipe(
  v.strictObject(
    {
      subtitle: v.optional(text(MAX_NAME, 'Stands under the name.')),
      sections: v.optional(sections),
      words: v.optional(list(words, MAX_WORDS, 'many-words', 'Sentences in the words of the designer.')),
      parts: v.optional(list(part, MAX_PARTS, 'many-parts', 'What the designer adds: paragraphs, tips in a box, photos.')),
      pictures: v.optional(list(picture, MAX_PICTURES, 'many-pictures', 'The pictures of photos.')),
    },
    fault('no-object'),
  ),
  v.description(
    'What the designer has the last word on in the printed pattern. Texts are plain, on one line, and without braces but for values.',
  ),
);
