import type { Heading, Section } from '../document/content.ts';
import { printed } from '../telling/kept.ts';
import type { Composing } from './composing.ts';
import { INK } from './looks.ts';
import { boxPath, type Item, type PlaceItem } from './page.ts';
import type { Row } from './rows.ts';
import { levelRule } from './rules.ts';
import { blockItems, heightOf, linesOf } from './text-lines.ts';

/** @returns the place that links to a section lead to, and its bookmark */
export const sectionPlace = (
  { name, title }: Section,
  y: number,
  { telling, setting }: Pick<Composing, 'telling' | 'setting'>,
): PlaceItem => ({
  kind: 'place',
  name: `section ${name}`,
  y,
  bookmark: { title: setting.shown(printed(title.told, telling)), level: 1 },
});

/** How much of the rule above a section's title is thick, in half lines. */
const THICK = 6;

/** A title of more lines is set smaller. */
const TITLE_LINES = 2;

/** @returns the title of a section under its rule, which begins where numbers stand */
export function titleRow(section: Section, width: number, composing: Composing): Row {
  const { type, gutter, accent } = composing;
  const usual = linesOf(section.title.told, type.section, width + gutter, composing);
  const lines = usual.length <= TITLE_LINES ? usual : linesOf(section.title.told, type.heading[2], width + gutter, composing);
  const air = type.half * 1.1;
  return {
    height: air + heightOf(lines) + type.half * 0.4,
    above: type.half * 4.5,
    held: false,
    at: (x, y) => {
      const left = x - gutter;
      return [
        levelRule(left, y + 1.5, x + width - left, { color: INK, width: 0.5 }),
        { kind: 'path', what: 'rule', steps: boxPath({ left, top: y, width: type.half * THICK, height: 3 }), fill: accent },
        sectionPlace(section, y, composing),
        ...blockItems(lines, left, y + air, { role: 'heading', level: 2, of: section.title.at }),
      ];
    },
  };
}

/** @returns a heading, with its number in a patch beside it */
export function headingRow({ level, said, number, leadsHere = [] }: Heading, width: number, composing: Composing): Row {
  const { type, gutter, telling, setting } = composing;
  const look = type.heading[level];
  const side = number === undefined ? 0 : patchSide(number, composing);
  const inset = number === undefined || gutter > 0 ? 0 : side + type.half;
  // A heading leads nowhere itself.
  const plain = { ...composing, places: new Set<string>() };
  const usual = linesOf(said.told, look, width - inset, plain);
  const lines = usual.length <= TITLE_LINES ? usual : linesOf(said.told, type.strong, width - inset, plain);
  const text = heightOf(lines);
  // The number's middle is at the height of the first line's.
  const drop = Math.max(0, (side - look.leading) / 2);
  const title = setting.shown(printed(said.told, telling));
  return {
    height: Math.max(drop + text, side),
    above: type.half * (level === 2 ? 3 : 2.2),
    held: false,
    at: (x, y) => {
      const named = [...new Set(leadsHere.length > 0 ? leadsHere : [said.at])];
      const places = named.map((name, i): PlaceItem => ({
        kind: 'place',
        name,
        y,
        ...(i === 0 && { bookmark: { title: number === undefined ? title : `${number} · ${title}`, level: level === 2 ? 2 : 3 } }),
      }));
      const left = gutter > 0 ? x - gutter : x;
      return [
        ...places,
        ...(number === undefined ? [] : numberItems(number, left, y + Math.max(0, (look.leading - side) / 2), side, said.at, composing)),
        ...blockItems(lines, x + inset, y + drop, { role: 'heading', level: 3, of: said.at }),
      ];
    },
  };
}

const patchSide = (number: number, { type, setting }: Composing): number =>
  Math.max(type.number.leading * 1.45, setting.widthOf(String(number), type.number.size, 'strong') + type.half);

function numberItems(
  number: number,
  left: number,
  top: number,
  side: number,
  of: string,
  { type, accent, setting }: Composing,
): readonly Item[] {
  const text = String(number);
  const { size, weight, color } = type.number;
  const width = setting.widthOf(text, size, weight);
  return [
    { kind: 'path', what: `patch of ${text}`, steps: boxPath({ left, top, width: side, height: side }), fill: accent },
    {
      kind: 'text',
      text,
      x: left + (side - width) / 2,
      y: top + side / 2 + 0.328 * size,
      size,
      weight,
      color,
      width,
      role: 'heading',
      level: 3,
      of,
    },
  ];
}

/** How much room is left under a heading. */
export const underHeading = (level: 2 | 3, { type }: Pick<Composing, 'type'>): number => type.half * (level === 2 ? 0.9 : 0.45);

/** How much room is left under a section's title. */
export const underTitle = ({ type }: Pick<Composing, 'type'>): number => type.half * 1.4;
