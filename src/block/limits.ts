import type { LengthUnit } from './block.ts';

/** Most columns or rows of a grid. */
export const MAX_CELLS = 64;
export const MAX_PATCHES = 5_000;
export const MAX_SEAMS = 5_000;
export const MAX_PINS = 50;
/** Most units that have a method of their own. */
export const MAX_UNIT_METHODS = 500;
/** Most seams pressed as the maker wants. */
export const MAX_PRESSED_SEAMS = 500;
export const MAX_FABRICS = 500;
/** Most photos of cloth in one block. */
export const MAX_PHOTOS = 40;
/** Most colourways of one block. */
export const MAX_COLOURWAYS = 50;
/** Most points of one outline. */
export const MAX_POINTS = 2_000;
/** Most characters of a block's or fabric's name, and of a fabric's id. */
export const MAX_NAME = 200;
/**
 * Most lattice steps along one side of a block. It keeps every product of two coordinate differences under 2^34
 * and every crossing of two drawn lines under 2^53, where doubles hold whole numbers exactly.
 */
export const MAX_STEPS = 65_536;
/** Longest finished side, in the unit. */
export const MAX_FINISHED: Readonly<Record<LengthUnit, number>> = { in: 200, cm: 508 };
/** The chosen lengths that are one number. */
export type ChosenLength = 'seam' | 'ruler' | 'trim' | 'width' | 'squaringUp' | 'shopStep';
/** Longest chosen lengths, in the unit. */
export const MAX_CHOSEN: Readonly<Record<ChosenLength, Readonly<Record<LengthUnit, number>>>> = {
  seam: { in: 2, cm: 5 },
  ruler: { in: 1, cm: 2 },
  trim: { in: 2, cm: 5 },
  width: { in: 200, cm: 508 },
  squaringUp: { in: 4, cm: 10 },
  shopStep: { in: 72, cm: 200 },
};
/** Chosen lengths that may be 0. */
export const MAY_BE_NONE: ReadonlySet<ChosenLength> = new Set(['trim', 'squaringUp']);
/** Longest piece of cloth, and most that is bought to spare, in the unit: a whole bolt. */
export const MAX_CLOTH: Readonly<Record<LengthUnit, number>> = { in: 4_000, cm: 10_000 };
/** Most kinds of pieces that a maker has of one fabric, and most of one kind. */
export const MAX_HAVE = 50;
export const MAX_HAVE_COUNT = 1_000;
/** Most that is bought to spare, in per cent. */
export const MAX_MARGIN = 100;
/** Fewest and most prints of a family of scraps. */
export const PRINTS = { least: 2, most: 99 } as const;
/** Largest seed of a spread of prints. */
export const MAX_SEED = 4_294_967_295;
/** Most blocks that one pattern is cut for. */
export const MAX_BLOCKS = 10_000;

/** Most characters of a sentence or paragraph of the designer's own, and of what tells where it stands. */
export const MAX_SAID = 2_000;
export const MAX_PLACE = 400;
/** Most sentences in her own words, most parts and most pictures of her own. */
export const MAX_WORDS = 2_000;
export const MAX_PARTS = 200;
export const MAX_PICTURES = 24;
/** Most pixels along a side of a picture, and most signs of one in base 64: about a megabyte. */
export const MAX_PIXELS = 4_000;
export const MAX_JPEG = 1_400_000;
/** Most signs of all pictures of a block together. */
export const MAX_JPEGS = 12_000_000;

/** Text without control characters, line separators or marks that turn the writing direction. */
export const PLAIN_TEXT = /^[^\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]*$/;
/** A colour as #rrggbb. */
export const COLOR = /^#[0-9a-fA-F]{6}$/;

/** @returns whether a text is free of halves of characters, which no encoding can write */
export const isWellFormed = (text: string): boolean => !/\p{Cs}/u.test(text);
