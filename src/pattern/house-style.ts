import type { LengthUnit } from '../block/block.ts';
import type { Picture, SectionChoice } from '../block/publication.ts';
import type { Lie, Paper } from './pages/paper.ts';

/** Languages that patterns are written in, as BCP 47 has them. */
export const LANGUAGES = ['en', 'de'] as const;
export type LanguageTag = (typeof LANGUAGES)[number];

/** How a designer has all her patterns look and speak; kept once, beside the drawings, and as a file of its own. */
export interface HouseStyle {
  readonly language: LanguageTag;
  /** Kinds of units by their full names, or as the trade shortens them where it does: HST, QST. */
  readonly kinds: 'in full' | 'short';
  /** ½, or 1/2. */
  readonly fractions: 'set' | 'typed';
  /** Behind lengths in inches. */
  readonly inches: 'in.' | '″';
  readonly paper: Paper;
  readonly lie: Lie;
  readonly columns: 1 | 2;
  /** Fabrics as colours, or as hatches for a printer that has none. */
  readonly ink: 'colours' | 'hatches';
  readonly letters: 'usual' | 'large';
  /** The usual sections where absent. */
  readonly sections?: SectionChoice;
  /** Whose pattern it is, as printed on the cover; nobody's where absent. */
  readonly maker?: string;
  /** What others may do with it. */
  readonly licence?: string;
  /** At the foot of every page. */
  readonly foot?: string;
  readonly logo?: Picture;
}

/** @returns the style of a designer who has chosen nothing, for blocks in a unit: English, Letter in inches and A4 in centimetres */
export const usualStyle = (unit: LengthUnit): HouseStyle => ({
  language: 'en',
  kinds: 'in full',
  fractions: 'set',
  inches: 'in.',
  paper: unit === 'in' ? 'letter' : 'a4',
  lie: 'portrait',
  columns: 1,
  ink: 'colours',
  letters: 'usual',
});
