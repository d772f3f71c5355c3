/*
 * What the designer adds to the pattern that is written for her, as it is kept with the drawing. Where a sentence stands is told by its
 * place in the pattern (`at`), which outlives changes of the drawing as long as the thing it is about is there.
 */

/** The parts of a pattern, in their usual order. */
export const SECTIONS = [
  'cover', 'skills', 'materials', 'cutting', 'cloth', 'units', 'assembly', 'pressing', 'sizes to check', 'care', 'other sizes', 'notes',
  'colouring page', 'templates',
] as const;

export type SectionName = (typeof SECTIONS)[number];

/** Which sections a pattern has, in which order; those that are not named follow in their usual order, shown. */
export type SectionChoice = readonly { readonly section: SectionName; readonly shown: boolean }[];

/** A sentence in her own words. Values stand in both texts as `{1}`, `{2}` …, numbered as they come in the sentence the program writes. */
export interface OwnWords {
  readonly at: string;
  /** BCP 47 tag of the language it is written in. */
  readonly language: string;
  /** What the program wrote there; where it writes something else now, her words are kept aside. */
  readonly was: string;
  readonly now: string;
}

/** What she adds of her own: a paragraph, a tip in a box, a photo with what is said of it. */
export interface OwnPart {
  readonly id: string;
  /** The section it stands in, and in it the place (`at`) after which it stands; at the section's beginning where absent. */
  readonly section: SectionName;
  readonly after?: string;
  readonly part: 'paragraph' | 'tip' | 'photo';
  /** Plain text on one line; for a photo what is said under it, which may be empty. */
  readonly text: string;
  /** Id of the picture of a photo. */
  readonly picture?: string;
}

/** A photo or logo, made ready when it was chosen: a JPEG of a sensible size, upright and without what cameras add. */
export interface Picture {
  readonly id: string;
  /** In pixels. */
  readonly width: number;
  readonly height: number;
  /** The file, in base 64. */
  readonly jpeg: string;
}

/** Everything she has the last word on in one block's pattern. */
export interface Publication {
  /** Under the name, as on the cover. */
  readonly subtitle?: string;
  readonly sections?: SectionChoice;
  readonly words?: readonly OwnWords[];
  readonly parts?: readonly OwnPart[];
  readonly pictures?: readonly Picture[];
}
