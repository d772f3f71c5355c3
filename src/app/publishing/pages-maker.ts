import type { Block } from '../../block/block.ts';
import type { SectionName } from '../../block/publication.ts';
import type { PartPlace } from '../../block/publishing.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import type { Document, Page } from '../../pattern/pages/page.ts';
import type { Pattern } from '../../pattern/pattern.ts';

/** What is laid out: the pattern is that of the block. */
export interface Wish {
  readonly block: Block;
  readonly pattern: Pattern;
  readonly style: HouseStyle;
}

/** The same on its way to the worker: a pattern is large, and the one that came last is there already. */
export interface SentWish extends Omit<Wish, 'pattern'> {
  /** Null for the last one. */
  readonly pattern: Pattern | null;
}

/** A sentence of the pages that can be pointed at, and the place behind it where a part of hers can stand. */
export interface Sentence extends PartPlace {
  readonly at: string;
  /** With its values kept. */
  readonly told: string;
  /** What the program wrote, where these are her words. */
  readonly was?: string;
}

/** A section as it came out. */
export interface LaidSection {
  readonly name: SectionName;
  /** The page it begins on, counted from 0, and how far down, as a share of the page's height; null where none is found. */
  readonly page: number | null;
  readonly down: number;
  /** Places in it that something can stand behind, in their order. */
  readonly places: readonly string[];
}

/** Finished pages, and what stands on them. */
export interface Laid {
  readonly document: Document;
  readonly sections: readonly LaidSection[];
  readonly sentences: ReadonlyMap<string, Sentence>;
  readonly aside: readonly { readonly at: string; readonly now: string; readonly was: string }[];
  readonly alarm: string | null;
  /** How long it took, in milliseconds. */
  readonly took: number;
}

/** The same on its way to the page: a page that is as it was comes as its number among the pages before. */
export interface Sent extends Omit<Laid, 'document'> {
  readonly document: Omit<Document, 'pages'> & { readonly pages: readonly (Page | number)[] };
}
