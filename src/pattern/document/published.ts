import type { Block } from '../../block/block.ts';
import type { Telling } from '../../block/telling.ts';
import type { HouseStyle } from '../house-style.ts';
import type { Language } from '../language.ts';
import type { Setting } from '../pages/face.ts';
import { laidOut } from '../pages/laid-out.ts';
import type { Document } from '../pages/page.ts';
import type { Pattern } from '../pattern.ts';
import { namesIn } from '../plain-speech.ts';
import { styledTelling } from '../telling/styled.ts';
import { told } from '../told.ts';
import { contentOf } from './content-of.ts';
import type { Content } from './content.ts';

/**
 * The whole way from a pattern to its pages, without a search.
 * @param pattern that of the block
 * @param language that of the style
 * @returns the pages of the published pattern, and what is on them, its values kept: the same for the same block, style and face
 */
export function published(
  block: Block,
  pattern: Pattern,
  style: HouseStyle,
  setting: Setting,
  language: Language,
): { readonly document: Document; readonly content: Content } {
  const telling = tellingFor(pattern, style, language);
  const content = contentOf({ block, pattern: told(block, pattern, language), style, language, telling, setting });
  return { document: laidOut(content, style, telling, setting), content };
}

/** How values stood in the document before, and what that follows from. */
let before: { readonly key: string; readonly language: Language; readonly telling: Telling } | null = null;

/** @returns the very same telling as before where it tells the same, so that what was set with it is found again */
function tellingFor(pattern: Pattern, style: HouseStyle, language: Language): Telling {
  const { kinds, fractions, inches } = style;
  const names = [...pattern.fabrics.map(({ fabric }) => fabric), ...pattern.scraps].map(({ id, name }) => [id, name]);
  const key = JSON.stringify([kinds, fractions, inches, names]);
  if (before?.key === key && before.language === language) return before.telling;
  const telling = styledTelling(style, namesIn(pattern), language);
  before = { key, language, telling };
  return telling;
}
