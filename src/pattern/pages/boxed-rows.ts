import type { Boxed, Said } from '../document/content.ts';
import type { Composing } from './composing.ts';
import { INK } from './looks.ts';
import { boxPath, type Item } from './page.ts';
import type { Row } from './rows.ts';
import { blockItems, heightOf, saidLines, type Line } from './text-lines.ts';
import { PALE, type TextLook } from './typography.ts';

interface Part {
  readonly said: Said;
  readonly lines: readonly Line[];
  readonly above: number;
}

/** A box is parted between its lines where it is higher than this share of a page. */
const MOST = 0.6;

/** @returns a box with its title; several where it would be too high, each in a frame of its own */
export function boxedRows({ look, title, said }: Boxed, width: number, composing: Composing): readonly Row[] {
  const { type, height } = composing;
  const pad = type.half * 1.2;
  const left = look === 'tip' ? pad + BAR : pad;
  const inner = Math.min(width - left - pad, type.longest);
  const band = look === 'warning';
  const titleLook: TextLook = { ...type.strong, ...(band && { color: '#ffffff' }) };
  const head = title === null ? [] : saidLines(title, titleLook, width - left - pad, composing);
  const parts = said.map((one, i): Part => ({
    said: one,
    lines: saidLines(one, type.body, inner, composing),
    above: i === 0 ? 0 : type.half * 0.6,
  }));
  const boxes = parcels(parts, height * MOST - heightOf(head) - 4 * pad);
  return boxes.map((box, i): Row => {
    const top = i === 0 ? head : [];
    const headHigh = top.length === 0 ? 0 : heightOf(top) + (band ? pad : type.half * 0.4);
    const body = box.reduce((sum, part, k) => sum + heightOf(part.lines) + (k === 0 ? 0 : part.above), 0);
    const high = (band && top.length > 0 ? headHigh + pad * 2 : headHigh + pad * 2) + body;
    return {
      height: high,
      above: type.half * 1.8,
      held: false,
      at: (x, y) => {
        const items: Item[] = [...frameItems(look, x, y, width, high, composing)];
        if (band && top.length > 0)
          items.push({ kind: 'path', what: 'warning', steps: boxPath({ left: x, top: y, width, height: headHigh }), fill: INK });
        items.push(...blockItems(top, x + left, y + (band ? pad / 2 : pad), { of: title?.at ?? '' }));
        let at = y + headHigh + pad;
        box.forEach((part, k) => {
          if (k > 0) at += part.above;
          items.push(...blockItems(part.lines, x + left, at, { of: part.said.at }));
          at += heightOf(part.lines);
        });
        return items;
      },
    };
  });
}

const BAR = 3;

function frameItems(look: Boxed['look'], left: number, top: number, width: number, height: number, { accent }: Composing): readonly Item[] {
  if (look === 'tip') {
    return [
      { kind: 'path', what: 'tip', steps: boxPath({ left, top, width, height }), fill: PALE },
      { kind: 'path', what: 'tip', steps: boxPath({ left, top, width: BAR, height }), fill: accent },
    ];
  }
  const line = look === 'warning' ? 1.6 : 0.7;
  const inside = { left: left + line / 2, top: top + line / 2, width: width - line, height: height - line };
  return [{ kind: 'path', what: look, steps: boxPath(inside), stroke: { color: INK, width: line } }];
}

/** @returns parts in as few boxes as hold them, a long one divided between its lines */
function parcels(parts: readonly Part[], most: number): readonly (readonly Part[])[] {
  const small = parts.flatMap((part): readonly Part[] => {
    const each = Math.max(2, Math.floor(most / (part.lines[0]?.look.leading ?? 1)));
    if (part.lines.length <= each) return [part];
    return Array.from({ length: Math.ceil(part.lines.length / each) }, (_, i) => ({
      ...part,
      lines: part.lines.slice(i * each, (i + 1) * each),
    }));
  });
  const boxes: Part[][] = [[]];
  let high = 0;
  for (const part of small) {
    const more = heightOf(part.lines) + part.above;
    if (boxes.at(-1)!.length > 0 && high + more > most) {
      boxes.push([]);
      high = 0;
    }
    boxes.at(-1)!.push(part);
    high += more;
  }
  return boxes;
}
