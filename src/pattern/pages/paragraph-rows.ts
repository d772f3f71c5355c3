import type { Paragraph } from '../document/content.ts';
import type { Composing } from './composing.ts';
import { closedPath, type Item } from './page.ts';
import type { Row } from './rows.ts';
import { baselineIn, blockItems, saidLines, type Carried, type Line } from './text-lines.ts';

/** @returns the rows of lines, none of which stands alone before or after the rest of its paragraph */
export function lineRows(lines: readonly Line[], above: number, carried: Carried, leadsTo?: string): readonly Row[] {
  return lines.map((line, i): Row => ({
    height: line.look.leading,
    above: i === 0 ? above : 0,
    held: (i === 1 || (i > 0 && i === lines.length - 1)) && 'always',
    at: (x, y) => blockItems([line], x, y, carried, leadsTo),
  }));
}

/** @returns the rows of a paragraph in a column */
export function paragraphRows({ said, look, leadsTo }: Paragraph, width: number, composing: Composing): readonly Row[] {
  const { type, places, accent } = composing;
  const text = look === 'strong' ? type.strong : look === 'quiet' ? type.quiet : type.body;
  const to = leadsTo !== undefined && places.has(leadsTo) ? leadsTo : undefined;
  const inset = look === 'item' ? type.half * 1.6 : 0;
  const lines = saidLines(said, text, Math.min(width, type.longest) - inset, composing);
  const rows = lineRows(lines, look === 'item' ? type.half * 0.5 : type.half, { of: said.at }, to);
  if (inset === 0) return rows;
  // A small patch before each item.
  const side = type.half * 0.48;
  return rows.map((row, i): Row => {
    const mark = (x: number, y: number): readonly Item[] => {
      const [left, top] = [x + 0.5, y + baselineIn(text) - text.size * 0.24 - side / 2];
      const steps = closedPath([
        [left, top],
        [left + side, top],
        [left + side, top + side],
        [left, top + side],
      ]);
      return [{ kind: 'path', what: 'item', steps, fill: accent }];
    };
    return { ...row, at: (x, y) => [...(i === 0 ? mark(x, y) : []), ...row.at(x + inset, y)] };
  });
}
