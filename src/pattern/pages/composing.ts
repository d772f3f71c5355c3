import type { Telling } from '../../block/telling.ts';
import type { ClothLook } from './cloth-look.ts';
import type { Setting } from './face.ts';
import type { Typography } from './typography.ts';

/** What everything that is set on the pages of one document has in common. */
export interface Composing {
  /** The pattern's name: what a photo shows that nothing is said of. */
  readonly title: string;
  readonly type: Typography;
  readonly setting: Setting;
  readonly telling: Telling;
  readonly cloth: ClothLook;
  /** Of rules and numbers. */
  readonly accent: string;
  /** Names of the places that links may lead to. */
  readonly places: ReadonlySet<string>;
  /** As `Content.words`. */
  readonly words: { readonly page: string; readonly continued: string };
  /** How high the room for text on a page is. */
  readonly height: number;
  /** How high it would be on the same paper upright: what pictures are measured by. */
  readonly long: number;
  /** How far numbers stand out to the left of the column; 0 where there is no room for that. */
  readonly gutter: number;
}
