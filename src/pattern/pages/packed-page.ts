import type { Setting } from './face.ts';
import { headItems, measureItems, measureRoom, type Head, type MeasureWords } from './furniture.ts';
import type { Laid } from './packing.ts';
import { movedItem, type Item, type Page } from './page.ts';
import { MARGIN } from './paper.ts';

/** A sheet that things are packed on, and these in each of their turns. */
export interface PackedSheet {
  readonly width: number;
  readonly height: number;
  /** Where the room for them begins. */
  readonly top: number;
  readonly loose: readonly (readonly { readonly items: readonly Item[] }[])[];
}

/** @returns a page with its head, what is packed on it in its own order, and the squares to measure */
export function packedPage(laid: readonly Laid[], { width, height, top, loose }: PackedSheet, head: Head, setting: Setting, words: MeasureWords): Page {
  const packed = [...laid]
    .sort((a, b) => a.item - b.item)
    .flatMap(({ item, turn, at }) => loose[item]![turn]!.items.map((one) => movedItem(one, MARGIN + at[0], top + at[1])));
  return {
    width,
    height,
    margin: MARGIN,
    items: [
      ...headItems(head, MARGIN, MARGIN, width - 2 * MARGIN, setting),
      ...packed,
      ...measureItems(MARGIN + 0.5, height - MARGIN - measureRoom(setting, words).height - 0.5, setting, words),
    ],
  };
}
