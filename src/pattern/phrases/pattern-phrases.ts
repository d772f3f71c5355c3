import type { Count } from '../../block/counting.ts';
import type { Method } from '../../block/choices.ts';
import type { Cut } from '../../cutting/cut.ts';
import type { Act, Stage } from '../work-time.ts';
import type { ValueWords } from './kind-names.ts';
import type { AlsoPhrases } from './also-phrases.ts';
import type { FoundationPhrases } from './foundation-phrases.ts';
import type { WrittenPhrases } from './written-phrases.ts';

/** What is done in a picture, in few words. */
export type PanelCaption =
  | 'one piece'
  | 'lay out and sew'
  | 'right sides together'
  | 'seams nested'
  | 'seams matched'
  | 'both sides'
  | 'on each half'
  | 'in four'
  | 'flip a corner'
  | 'head to tail'
  | 'strips side by side'
  | 'cut across'
  | 'a segment'
  | 'put together'
  | 'web'
  | 'foundations'
  | 'sections'
  | 'press'
  | 'press and trim';

/** Figures for choosing, in the order in which they are told; the last by itself where there are several blocks. */
export type FigureName = 'pieces' | 'seams' | 'points to match' | 'points apart' | 'layers' | 'narrowest' | 'bias' | 'bias seams' | 'straight cuts';

/** A step in which what is too large is trimmed: its number, to what size, and whether that size is itself between two marks. */
export interface TrimmedIn {
  readonly step: string;
  readonly size: string;
  readonly between: boolean;
}

/** Some of the units of one letter, or the one there is. */
export interface UnitsOf {
  readonly letter: string;
  readonly one: boolean;
}

/** Everything about a pattern that is told when somebody asks for it, beside what `makePattern` writes. */
export interface PatternPhrases extends WrittenPhrases {
  readonly values: ValueWords;
  /** How a unit is cut, by itself: "two at a time". */
  readonly method: Readonly<Record<Method, string>>;

  /** A pin, by its number, is not honoured for the reason that is given. */
  readonly refusedPin: (number: string, says: string) => string;

  /** Lines of the list are rounded up by so much; where that is trimmed off, and whether some are sewn in untrimmed. */
  readonly large: (ids: readonly string[], much: string, off: readonly TrimmedIn[], kept: boolean) => string;

  /** What a line of the list is for: units by their letters, null the block itself. */
  readonly goesInto: (units: readonly (string | null)[]) => string;
  readonly cutOnce: string;
  readonly cutTwice: string;
  /** So many triangles from each of so many strips. */
  readonly headToTail: (strips: number, triangles: Count) => string;
  /** Into how many segments each strip set is cut across. */
  readonly segments: (count: Count) => string;
  readonly spare: (count: Count) => string;
  /** Rectangles are cut along these diagonals; at least one is not null. */
  readonly diagonals: (falling: Count | null, rising: Count | null) => string;
  /** Corners of a finished template, each across and down. */
  readonly corners: (corners: readonly (readonly [string, string])[]) => string;

  /** "3 5/12, 4 1/3 and 2 more"; `more` is null where all are listed. */
  readonly offMarks: (lengths: readonly string[], more: Count | null) => string;
  /** One line of a list in short; of a square `height` is null. */
  readonly shortCut: (count: Count, shape: Cut['shape'], size: string, subcut: Cut['subcut'], units: readonly (string | null)[]) => string;
  readonly fromScraps: string;
  readonly tooNarrow: (narrowest: string, seam: string) => string;

  /** Prints with an up and a down. */
  readonly hasUpAndDown: (cloth: string) => string;
  readonly laidTogether: (method: 'two' | 'four' | 'eight', units: UnitsOf) => string;
  readonly turned: (sideways: Count | null, down: Count | null, units: UnitsOf) => string;
  readonly turnedSets: (sideways: Count | null, down: Count | null, units: UnitsOf) => string;
  readonly flipped: (units: UnitsOf) => string;

  /** Families of scraps. */
  readonly family: (prints: Count) => string;
  readonly equalPairs: (cloth: string, pairs: Count, why: 'one square' | { readonly touching: Count } | { readonly prints: Count; readonly proved: boolean }, enough: Count) => string;
  /** The same because of prints that are held; held prints that come from one square with others. */
  readonly heldPairs: (cloth: string, pairs: Count) => string;
  readonly lostHeld: (cloth: string, pieces: Count) => string;
  readonly equalCorners: (cloth: string, corners: Count) => string;
  readonly idlePrints: (cloth: string, prints: Count) => string;
  readonly spreadAlike: (cloth: string, blocks: Count) => string;
  readonly ofEachPrint: (count: Count, prints: Count) => string;
  /** So many of each of these prints, by their numbers: single ones, and those that follow one another. */
  readonly ofPrints: (count: Count, prints: readonly (readonly [number, number])[]) => string;

  /** Figures: what each is called and what it means; `least` is under which a piece is small. */
  readonly none: string;
  readonly figure: (name: FigureName, said: { readonly least: string; readonly blocks: Count }) => readonly [name: string, means: string];
  readonly apart: (sameWay: Count | null, open: Count | null) => string;
  /** Each thing that takes time: one of it, and many; an inch of seam is told in the block's unit. */
  readonly act: (act: Act, unit: 'in' | 'cm', number: 'one' | 'many') => string;
  readonly stage: Readonly<Record<Stage, string>>;
  readonly assumed: string;

  /** Under the pictures of the sewing. */
  readonly panel: Readonly<Record<PanelCaption, string>>;
  readonly also: AlsoPhrases;
  readonly foundations: FoundationPhrases;
}
