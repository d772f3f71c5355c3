import type { Picture, SectionName } from '../../block/publication.ts';
import type { Frame, Mark } from '../diagrams/diagram.ts';
import type { SheetMark } from '../diagrams/sheet-marks.ts';
import type { Document } from '../pages/page.ts';

/*
 * What a published pattern holds, before it is laid out on pages: sections of things that follow one another. Texts are told with their
 * values kept (`telling/kept.ts`), so that a house style can print them and links can be made of units' letters; her own words are in it
 * already. Nothing here has a place on a page.
 */

/** A sentence or a few, and where it stands, for edits and for whoever points at it. */
export interface Said {
  /** The same for the same sentence as long as what it is about is there: "step/half-square-triangle-4x4-1/how" (`unit-names.ts`). */
  readonly at: string;
  readonly told: string;
  /** What the program wrote, where these are her words. */
  readonly was?: string;
}

/** A picture that geometry draws, in units of its own, at true scale to the other pictures of its flow. */
export interface Figure {
  /** What a file of it is called: "step-03-unit-b-2". */
  readonly name: string;
  /** What it shows, for whoever cannot see it. */
  readonly says: string;
  readonly frame: Frame;
  readonly marks: readonly (Mark | SheetMark)[];
}

/** Figures side by side, each with what is said under it; all to one scale. */
export interface Figures {
  readonly flow: 'figures';
  readonly at: string;
  readonly figures: readonly { readonly figure: Figure; readonly caption?: Said; readonly measure?: Said }[];
  /** How high the highest may be, as a share of the page's height. */
  readonly most: number;
}

export interface Paragraph {
  readonly flow: 'paragraph';
  readonly said: Said;
  readonly look: 'plain' | 'strong' | 'quiet' | 'item';
  /** The place that the whole paragraph leads to, as it stands in a `leadsHere`. */
  readonly leadsTo?: string;
}

export interface Heading {
  readonly flow: 'heading';
  readonly level: 2 | 3;
  readonly said: Said;
  /** A step's number, set large beside the heading; the sentence does not say it again. */
  readonly number?: number;
  /** What links lead here for: values as sentences keep them, "unit A", "cut 3"; "section templates". */
  readonly leadsHere?: readonly string[];
}

/** Rows of cells under headings that are said again on every page. */
export interface Table {
  readonly flow: 'table';
  readonly at: string;
  readonly heads: readonly Said[];
  /** Which columns hold figures, set to the right. */
  readonly figures: readonly boolean[];
  /** Before each row an empty box to tick. */
  readonly ticks?: boolean;
  readonly rows: readonly TableRow[];
}

export interface TableRow {
  /** A row that begins a group stands alone, across the table, and has no cells: a fabric. */
  readonly group?: Said;
  /** By its id, the fabric of which a swatch stands before the row or the group. */
  readonly fabric?: string;
  /** One for each head; their order is that of the heads. */
  readonly cells: readonly Said[];
  /** Sentences under the row, from its second column on. */
  readonly below?: readonly Said[];
  /** What links lead here for: "cut 3". */
  readonly leadsHere?: readonly string[];
}

/** A few things to know at a glance, side by side: what it is in small letters, and what it comes to. */
export interface Facts {
  readonly flow: 'facts';
  readonly at: string;
  readonly facts: readonly { readonly label: Said; readonly value: Said }[];
}

/** In a frame: cautions, warnings, tips. */
export interface Boxed {
  readonly flow: 'boxed';
  readonly at: string;
  readonly look: 'warning' | 'care' | 'tip';
  readonly title: Said | null;
  readonly said: readonly Said[];
}

export interface Photo {
  readonly flow: 'photo';
  readonly at: string;
  readonly picture: Picture;
  readonly caption: Said | null;
}

/** Blank lines to write on. */
export interface Blank {
  readonly flow: 'blank';
  readonly lines: number;
}

/** The squares to measure on the printed page, at true size, with what is said of them. */
export interface Measure {
  readonly flow: 'measure';
  readonly at: string;
  readonly said: readonly Said[];
}

/** Things that stay on one page as long as a page holds them: a step with its pictures. */
export interface Together {
  readonly flow: 'together';
  readonly items: readonly Flow[];
}

export type Flow = Paragraph | Heading | Table | Figures | Facts | Boxed | Photo | Blank | Measure | Together;

export interface Section {
  readonly name: SectionName;
  /** Of the cover the pattern's name. Links that ask for "section units" lead to it. */
  readonly title: Said;
  /** Begins on a page of its own. */
  readonly ownPage: boolean;
  readonly items: readonly Flow[];
  /** Pages that are laid out by themselves and stand at the section's end: templates at full size. Without items the title is theirs. */
  readonly pages?: Document['pages'];
}

/** A whole pattern, ready to be laid out. */
export interface Content {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  readonly sections: readonly Section[];
  /** Colours of fabrics by id, as #rrggbb; cloth of any other fabric is left white, to be coloured. */
  readonly colors: ReadonlyMap<string, string>;
  /** By fabric, the photos of those that show one. */
  readonly photos?: ReadonlyMap<string, Picture>;
  /** Fabrics in their order; where hatches stand for them, the lightest colour has the lightest hatch. */
  readonly fabrics: readonly string[];
  /** What the layout itself says, with numbered values: "{1} of {2}", page and pages; "{1}, continued", a group of a table. */
  readonly words: { readonly page: string; readonly continued: string };
  /** Where the open warning of a pattern that must not be cut stands, every page says so. */
  readonly alarm: string | null;
  /** Her words that have no place now. */
  readonly aside: readonly { readonly at: string; readonly now: string; readonly was: string }[];
}
