import type { TemplatePhrases } from './template-phrases.ts';

/** What stands on printed foundations; the squares to measure as on templates. */
export interface FoundationPhrases extends Pick<TemplatePhrases, 'measure' | 'inch'> {
  /** "Harbour light: foundations" */
  readonly title: (block: string) => string;
  readonly place: (page: number, pages: number) => string;
  /** Under the title: that they are mirror images, what the lines are, how many copies are to be printed. */
  readonly lines: (seam: string, blocks: number) => readonly string[];
  /** Said first where the pattern is not the drawing. */
  readonly alarm: string;
  /** On one of several pages of one foundation. */
  readonly part: (section: string, part: number, parts: number) => string;
  /** A foundation by its letter; '' where it is the only one. */
  readonly section: (letter: string) => string;
}
