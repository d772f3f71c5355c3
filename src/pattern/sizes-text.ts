import { aboutLength } from '../measure/about.ts';
import { printLength } from '../measure/lengths.ts';
import { sentence } from '../sewing/sentences.ts';
import type { Pattern, Size } from './pattern.ts';
import { columnsOf, padded, wrapped } from './plain-lines.ts';
import { cutText, offText } from './size-words.ts';
import { cutsAt, listAt, type OtherSize } from './sizes.ts';

/** Columns of the narrowest terminal that is still common. */
const COLUMNS = 80;

/** @returns the table of a block's sizes as plain text, each with its cutting list; no line wider than 80 columns, ending in a line break */
export function sizesText(pattern: Pattern, sizes: readonly OtherSize[]): string {
  const { block, choices } = pattern;
  const title = wrapped(`${block.name.trim() || 'Block'} at other sizes`, COLUMNS);
  const mark = printLength(choices.ruler, block.unit);
  const wide = Math.max(...sizes.map(({ finished }) => columnsOf(sizeText(finished, pattern))));
  const lines = [
    ...title,
    '='.repeat(Math.max(...title.map(columnsOf))),
    ...wrapped(sentence(`Every plain cut and every unit falls on a mark of the ruler, whose steps are ${mark}`), COLUMNS, 'ON    '),
    ...wrapped('Some fall between two marks and are rounded up to the next one.', COLUMNS, 'UP    '),
    ...wrapped('There is no such block.', COLUMNS, 'NO    '),
    ...wrapped('What is cut for a diagonal seam is rounded up at any size, by its own rule.', COLUMNS, '      '),
    ...(choices.blocks > 1 ? [`The lists are for ${choices.blocks} blocks.`] : []),
    ...sizes.flatMap((size) => ['', ...sizeLines(pattern, size, wide)]),
  ];
  return `${lines.join('\n')}\n`;
}

function sizeLines(pattern: Pattern, size: OtherSize, wide: number): readonly string[] {
  const { unit } = pattern.block;
  const { finished, asItIs, cannot, off, narrowest } = size;
  const head = `${cannot !== null ? 'NO' : off.length > 0 ? 'UP' : 'ON'}    ${padded(sizeText(finished, pattern), wide)}   `;
  if (cannot !== null) return wrapped(cannot, COLUMNS, head);
  const said = [`narrowest piece ${aboutLength(narrowest, unit)}`];
  if (off.length > 0) said.push(`between marks ${offText(off, unit)}`);
  if (asItIs) said.push('as it is drawn');
  const lists = listAt(pattern, cutsAt(pattern, finished.width)).flatMap(({ fabric, buy, cuts }) =>
    wrapped(`${fabric.name.trim() || fabric.id} (${buy}): ${cuts.map((cut) => cutText(cut, unit)).join('; ')}`, COLUMNS, '      '),
  );
  return [...wrapped(said.join('; '), COLUMNS, head), ...lists];
}

const sizeText = ({ width, height }: Size, { block }: Pattern): string => `${printLength(width, block.unit, 'bare')} by ${printLength(height, block.unit)}`;
