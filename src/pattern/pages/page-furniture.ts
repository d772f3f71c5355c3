import type { Telling } from '../../block/telling.ts';
import type { Content } from '../document/content.ts';
import type { HouseStyle } from '../house-style.ts';
import { filled } from '../telling/kept.ts';
import type { Setting } from './face.ts';
import { fitted } from './furniture.ts';
import { INK } from './looks.ts';
import { boxPath, type Area, type Item, type TextItem } from './page.ts';
import { levelRule } from './rules.ts';
import { baselineIn, blockItems, heightOf, linesOf } from './text-lines.ts';
import { HAIR, typographyOf, type TextLook } from './typography.ts';

/** What stands on every page beside its text: the alarm above, the foot below. */
export interface PageFurniture {
  /** How much room it takes at the top and at the bottom of a page, within the margins. */
  readonly above: number;
  readonly below: number;
  /** @returns the alarm on a page whose room within the margins this is; nothing where there is none */
  readonly head: (within: Area) => readonly Item[];
  /** @returns the foot of a page, the first being 1 */
  readonly foot: (within: Area, page: number, pages: number) => readonly Item[];
}

/** @returns the furniture of a document's pages */
export function pageFurniture(
  { title, alarm, words }: Pick<Content, 'title' | 'alarm' | 'words'>,
  style: Pick<HouseStyle, 'letters' | 'foot'>,
  width: number,
  { telling, setting }: { readonly telling: Telling; readonly setting: Setting },
): PageFurniture {
  const type = typographyOf(style);
  const pad = type.half * 0.9;
  const alarmLines = alarm === null ? [] : linesOf(alarm, type.alarm, width - 2 * pad, { telling, setting, places: new Set() });
  const bar = heightOf(alarmLines) + 2 * pad * 0.75;
  const line = type.half * 0.5;
  const names = namesAtFoot(title, style.foot ?? '', width * 0.82, type.foot, setting);
  return {
    above: alarm === null ? 0 : bar + type.half * 2,
    below: line + type.foot.leading + type.half * 1.4,
    head: ({ left, top }) =>
      alarm === null
        ? []
        : [
            { kind: 'path', what: 'alarm', steps: boxPath({ left, top, width, height: bar }), fill: INK },
            ...blockItems(alarmLines, left + pad, top + pad * 0.75, { role: 'alarm' }),
          ],
    foot: ({ left, top, height }, page, pages) => {
      const [under, y] = [top + height - type.foot.leading - line, top + height - type.foot.leading + baselineIn(type.foot)];
      const count = textAt(filled(words.page, [String(page), String(pages)]) ?? `${page}`, { ...type.foot, weight: 'strong' }, setting);
      return [
        levelRule(left, under, width, HAIR),
        ...names.map(({ text, x }): TextItem => ({ ...text, x: left + x, y, role: 'of the page' })),
        { ...count, x: left + width - count.width, y, role: 'of the page' },
      ];
    },
  };
}

type Bare = Omit<TextItem, 'x' | 'y'>;

function textAt(said: string, { size, weight, color }: TextLook, { shown, widthOf }: Setting): Bare {
  const text = shown(said);
  return { kind: 'text', text, size, weight, color, width: widthOf(text, size, weight) };
}

/** The pattern's name and her own line beside it, each shortened where there is no room for both. */
function namesAtFoot(
  title: string,
  foot: string,
  width: number,
  look: TextLook,
  setting: Setting,
): readonly { readonly text: Bare; readonly x: number }[] {
  const strong: TextLook = { ...look, weight: 'strong' };
  const gap = look.size * 1.4;
  const most = foot === '' ? width : width * 0.5;
  const name = textAt(fitted(title, most, look.size, 'strong', setting), strong, setting);
  if (foot === '') return [{ text: name, x: 0 }];
  const x = name.width + gap;
  return [
    { text: name, x: 0 },
    { text: textAt(fitted(foot, width - x, look.size, 'regular', setting), look, setting), x },
  ];
}
