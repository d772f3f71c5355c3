import type { Block } from '../../block/block.ts';
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
  const telling = styledTelling(style, namesIn(pattern), language);
  const content = contentOf({ block, pattern: told(block, pattern, language), style, language, telling, setting });
  return { document: laidOut(content, style, telling, setting), content };
}
