import type { LengthUnit } from '../../../block/block.ts';
import type { Method } from '../../../block/choices.ts';
import type { SectionName } from '../../../block/publication.ts';
import type { ClothForm } from '../../../cutting/layout.ts';
import type { TemplatePhrases } from '../../phrases/template-phrases.ts';
import type { LanguageTag } from '../../house-style.ts';

/** What is cut of one line: so many of a shape; `named` is a template's name. */
export interface CutWords {
  readonly quantity: number;
  readonly shape: 'square' | 'rectangle' | 'strip' | 'template';
  readonly size: string;
  readonly named: string;
}

/**
 * Everything a published pattern says beside the sentences of the sewing, in one language. Arguments that are texts hold values already,
 * kept (`telling/kept.ts`); numbers are given as numbers, for the grammar, and are kept in what comes back. Except for short words in
 * tables and headings all are whole sentences.
 */
export interface DocumentPhrases {
  readonly tag: LanguageTag;
  /** Headings of the sections; the cover's is the pattern's name. */
  readonly titles: Readonly<Record<Exclude<SectionName, 'cover'>, string>>;
  /** A block without a name. */
  readonly noName: string;

  /** What the layout says, as `Content.words` has it. */
  readonly layout: { readonly page: string; readonly continued: string };

  readonly cover: {
    /** Each figure at a glance: what it is, in a word or two. */
    readonly facts: {
      readonly finished: string;
      readonly unfinished: string;
      readonly pieces: string;
      readonly units: string;
      readonly blocks: string;
    };
    readonly maker: (name: string) => string;
    readonly picture: (name: string) => string;
    readonly beforeCutting: string;
    readonly beforeBuying: string;
    readonly doNotCut: string;
    readonly notTheDrawing: string;
  };

  readonly skills: {
    readonly intro: string;
    readonly rotary: string;
    /** A method and the kinds it makes; null where the method wants no words of its own. */
    readonly method: (method: Method, kinds: string) => string;
    readonly straightSeams: string;
    readonly partial: (seams: number) => string;
    readonly templates: (outlines: number) => string;
    readonly bias: (seams: number) => string;
    readonly points: (points: number) => string;
    readonly loose: (points: number) => string;
    readonly trimming: (amount: string) => string;
    readonly smallest: (width: string) => string;
  };

  readonly materials: {
    readonly heads: readonly [fabric: string, buy: string, goesInto: string];
    readonly added: (what: string) => string;
    readonly own: (n: number, size: string) => string;
    readonly directional: string;
    readonly width: (width: string) => string;
    readonly widthOf: (cloth: string, width: string) => string;
    readonly block: string;
    readonly alsoNeeded: string;
    readonly tools: (unit: LengthUnit, mark: string) => string;
    readonly sewing: (seam: string) => string;
    readonly pencil: string;
    readonly forTemplates: string;
    readonly backing: string;
  };

  readonly cutting: {
    readonly heads: readonly [line: string, cut: string, then: string, goesInto: string];
    readonly intro: string;
    readonly cuts: (what: CutWords) => string;
    /** What a line is cut into next, and how many of them that gives: triangles, or pieces of a template. */
    readonly once: (triangles: number) => string;
    readonly twice: (triangles: number) => string;
    /** So many segments from each of so many strip sets. */
    readonly segments: (sets: number, each: number, wide: string) => string;
    /** What a line gives beyond what is needed. */
    readonly spare: (n: number, what: 'units' | 'triangles') => string;
    readonly nested: (strips: number, each: number, measure: string) => string;
    readonly block: string;
    readonly strips: (bands: readonly { readonly count: number; readonly width: string }[]) => string;
    readonly joined: (line: string, n: number, widths: number, length: string) => string;
    readonly unplaced: (line: string, n: number) => string;
  };

  readonly rules: {
    readonly title: string;
    readonly seam: (seam: string) => string;
    readonly rounded: (mark: string) => string;
    readonly measure: string;
    readonly rightSides: string;
    readonly pressing: string;
    readonly strips: string;
    readonly abbreviations: (pairs: readonly string[]) => string;
  };

  readonly cloth: {
    readonly intro: string;
    readonly shows: (cloth: string, form: string) => string;
    /** A cloth and its size; by the length with what is bought of it. */
    readonly form: (form: ClothForm, buy: string, size: string) => string;
    readonly alike: (n: number) => string;
    readonly more: (n: number) => string;
    readonly strip: (n: number, width: string) => string;
    readonly left: (pieces: readonly { readonly count: number; readonly size: string }[]) => string;
    readonly directional: string;
  };

  readonly units: {
    readonly intro: string;
    readonly unit: (letter: string) => string;
    readonly block: (blocks: number) => string;
    /** How many of which kind, as one or as many as there are, and how. */
    readonly what: (n: number, kind: string, method: string | null) => string;
    /** A method after a kind: "from triangles". */
    readonly method: Readonly<Record<Method, string>>;
    readonly measures: (size: string) => string;
    readonly trims: (size: string) => string;
    readonly blockMeasures: (size: string) => string;
    readonly says: (step: number, of: string, does: string) => string;
  };

  readonly assembly: {
    readonly intro: string;
    readonly picture: string;
    readonly caption: string;
    readonly web: string;
  };

  readonly pressing: {
    readonly intro: string;
    readonly picture: string;
    readonly noPoints: string;
    readonly allNest: (points: number) => string;
    readonly someLoose: (points: number, loose: number, proved: boolean) => string;
    readonly open: string;
  };

  readonly sizes: {
    readonly intro: string;
    readonly heads: readonly [unit: string, kind: string, count: string, size: string];
    readonly block: string;
    readonly measure: string;
  };

  readonly templates: {
    readonly leads: string;
    /** On the pages themselves. */
    readonly pages: TemplatePhrases;
  };

  readonly colouring: {
    readonly intro: string;
    readonly large: string;
    readonly small: (n: number) => string;
  };

  readonly otherSizes: {
    readonly intro: (mark: string) => string;
    readonly friendly: (sizes: string) => string;
    readonly none: (mark: string) => string;
    readonly table: string;
    readonly templates: string;
    readonly heads: readonly [line: string, shape: string];
    readonly shape: (what: Pick<CutWords, 'quantity' | 'shape'>) => string;
  };

  readonly care: { readonly title: string };
}
