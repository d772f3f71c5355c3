import { rational } from '../../measure/rational.ts';
import type { Blank, Facts, Measure, Photo } from '../document/content.ts';
import { printed } from '../telling/kept.ts';
import type { Composing } from './composing.ts';
import { INK } from './looks.ts';
import { boxPath, type Area, type Item } from './page.ts';
import { POINTS } from './paper.ts';
import type { Row } from './rows.ts';
import { levelRule } from './rules.ts';
import { blockItems, heightOf, linesOf, saidLines, widthsOf } from './text-lines.ts';
import { HAIR } from './typography.ts';

/** How high a photo is at most, as a share of the page. */
const PHOTO = 0.42;
/** A photo is printed with at least so many of its pixels to a point: 110 to the inch. */
const PIXELS = 110 / 72;

/** @returns a photo as wide as the column where it is not too high, with what is said under it */
export function photoRow({ picture, caption, at }: Photo, width: number, composing: Composing, most = composing.height * PHOTO): Row {
  const { type, telling } = composing;
  const lines = caption ? saidLines(caption, type.caption, Math.min(width, type.longest), composing) : [];
  const words = heightOf(lines);
  const scale = Math.min(width / picture.width, most / picture.height, Math.max(1 / PIXELS, (width * 0.5) / picture.width));
  const area = { width: picture.width * scale, height: picture.height * scale };
  const under = lines.length > 0 ? type.half * 0.6 : 0;
  return {
    height: area.height + under + words,
    above: type.half * 1.8,
    held: false,
    at: (x, y) => [
      { kind: 'image', what: caption ? printed(caption.told, telling) : composing.title, area: { left: x, top: y, ...area }, picture },
      ...blockItems(lines, x, y + area.height + under, { of: caption?.at ?? at }),
    ],
  };
}

/** So many lines to write on are enough where a page has no room for more. */
const FEW_LINES = 4;

/** @returns lines to write on; fewer where only so they come onto a page that is begun */
export function blankRow({ lines }: Blank, width: number, { type }: Composing): Row {
  const high = Math.max(22, type.half * 3);
  const least = Math.min(lines, FEW_LINES);
  const rowOf = (n: number): Row => ({
    height: n * high,
    above: 0,
    held: false,
    lower: { least: least * high, to: (height) => rowOf(Math.max(least, Math.floor(height / high))) },
    at: (x, y) =>
      Array.from({ length: n }, (_, i) => levelRule(x, y + (i + 1) * high - HAIR.width, width, HAIR, 'line to write on')),
  });
  return rowOf(lines);
}

/** @returns facts side by side, as many in a row as there is room for, between hairlines */
export function factRows({ facts }: Facts, width: number, composing: Composing): readonly Row[] {
  const { type } = composing;
  const gap = type.half * 2.4;
  const wished = Math.max(
    ...facts.flatMap(({ label, value }) => [
      widthsOf(label.told, type.caption, composing).wide,
      widthsOf(value.told, type.value, composing).wide,
    ]),
    1,
  );
  const most = Math.max(1, Math.min(facts.length, 5, Math.floor((width + gap) / (Math.min(wished, width) + gap))));
  // As many in each row.
  const across = Math.ceil(facts.length / Math.ceil(facts.length / most));
  const each = (width - gap * (across - 1)) / across;
  const rows = Array.from({ length: Math.ceil(facts.length / across) }, (_, i) => facts.slice(i * across, (i + 1) * across));
  return rows.map((row, i): Row => {
    const cells = row.map(({ label, value }) => ({
      label,
      value,
      labelLines: linesOf(label.told, type.caption, each, composing),
      valueLines: linesOf(value.told, type.value, each, composing),
    }));
    const pad = type.half * 0.8;
    const labels = Math.max(...cells.map(({ labelLines }) => heightOf(labelLines)));
    const height = pad * 2 + labels + Math.max(...cells.map(({ valueLines }) => heightOf(valueLines)));
    const rule = (x: number, y: number): Item => levelRule(x, y, width, HAIR);
    return {
      height,
      above: i === 0 ? type.half * 1.8 : 0,
      held: i > 0 && 'if it fits',
      at: (x, y) => [
        ...(i === 0 ? [rule(x, y + HAIR.width / 2)] : []),
        ...cells.flatMap(({ label, value, labelLines, valueLines }, k) => {
          const left = x + k * (each + gap);
          return [
            ...blockItems(labelLines, left, y + pad + labels - heightOf(labelLines), { of: label.at }),
            ...blockItems(valueLines, left, y + pad + labels, { of: value.at }),
          ];
        }),
        rule(x, y + height),
      ],
    };
  });
}

/** Squares to measure: of an inch, and of two centimetres. */
const SQUARES = [
  { side: POINTS.in, length: rational(1), unit: 'in', what: 'square of 1 in.' },
  { side: 2 * POINTS.cm, length: rational(2), unit: 'cm', what: 'square of 2 cm' },
] as const;

/** @returns the squares to measure at true size, with what is said of them beside them */
export function measureRow({ said }: Measure, width: number, composing: Composing): Row {
  const { type, setting, telling } = composing;
  const gap = type.half * 1.4;
  const [line, high] = [0.5, POINTS.in + 1];
  const words = SQUARES.reduce((sum, { side }) => sum + side + gap, line);
  const beside = width - words >= type.half * 16;
  const parts = said.map((one) => ({
    one,
    lines: saidLines(one, type.body, Math.min(type.longest, beside ? width - words : width), composing),
  }));
  const text = parts.reduce((sum, { lines }, i) => sum + heightOf(lines) + (i > 0 ? type.half * 0.5 : 0), 0);
  return {
    height: beside ? Math.max(high, text) : high + type.half + text,
    above: type.half * 1.8,
    held: false,
    at: (x, y) => {
      let left = x + line;
      const squares = SQUARES.flatMap(({ side, length, unit, what }): readonly Item[] => {
        const name = setting.shown(telling.length(length, unit));
        const area: Area = { left, top: y + high - line - side, width: side, height: side };
        const size = 10;
        const wide = setting.widthOf(name, size, 'strong');
        left += side + gap;
        return [
          { kind: 'path', what, steps: boxPath(area), stroke: { color: INK, width: line } },
          {
            kind: 'text',
            text: name,
            x: area.left + (side - wide) / 2,
            y: area.top + side / 2 + 0.328 * size,
            size,
            weight: 'strong',
            color: INK,
            width: wide,
          },
        ];
      });
      let top = beside ? y + Math.max(0, (high - text) / 2) : y + high + type.half;
      const words = parts.flatMap(({ one, lines }) => {
        const items = blockItems(lines, beside ? left : x, top, { of: one.at });
        top += heightOf(lines) + type.half * 0.5;
        return items;
      });
      return [...squares, ...words];
    },
  };
}
