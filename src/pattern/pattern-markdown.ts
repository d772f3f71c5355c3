import type { Telling } from '../block/telling.ts';
import type { Boxed, Content, Facts, Flow, Said, Table } from './document/content.ts';
import { printed } from './telling/kept.ts';

/*
 * A whole pattern as Markdown (CommonMark 0.31, with the tables of GitHub Flavored Markdown), in the very sentences that stand on its
 * pages. Diagrams are named by their files (`pages/figure-svg.ts`), with their words for whoever does not have these.
 */

/** @returns the document as text, ending in a line break; templates and squares to measure are for paper alone */
export function patternMarkdown(content: Content, telling: Telling): string {
  const say = (said: Said): string => escapedText(printed(said.told, telling));
  const parts = [
    ...(content.alarm === null ? [] : [`> **${escapedText(content.alarm)}**`]),
    ...content.sections.flatMap(({ name, title, items }) => [
      `${name === 'cover' ? '#' : '##'} ${say(title)}`,
      ...items.flatMap((flow) => partsOf(flow, say, telling)),
    ]),
  ];
  const isItem = (part: string | undefined): boolean => part?.startsWith('- ') ?? false;
  return `${parts.map((part, i) => (i === 0 ? '' : isItem(part) && isItem(parts[i - 1]) ? '\n' : '\n\n') + part).join('')}\n`;
}

type Say = (said: Said) => string;

function partsOf(flow: Flow, say: Say, telling: Telling): readonly string[] {
  switch (flow.flow) {
    case 'paragraph': {
      const text = say(flow.said);
      return [flow.look === 'item' ? `- ${text}` : flow.look === 'strong' ? `**${text}**` : text];
    }
    case 'heading':
      return [`${'#'.repeat(flow.level)} ${flow.number === undefined ? '' : `${flow.number}\\. `}${say(flow.said)}`];
    case 'table':
      return tableParts(flow, say);
    case 'figures':
      return flow.figures.flatMap(({ figure, caption, measure }) => [
        `![${escapedText(plain(figure.says))}](${encodeURIComponent(figure.name)}.svg)`,
        ...[caption, measure].flatMap((said) => (said ? [say(said)] : [])),
      ]);
    case 'facts':
      return [factLines(flow, say)];
    case 'boxed':
      return [boxedLines(flow, say)];
    case 'photo':
      return flow.caption ? [`*${say(flow.caption)}*`] : [];
    case 'together':
      return flow.items.flatMap((item) => partsOf(item, say, telling));
    case 'measure':
    case 'blank':
      return [];
  }
}

const plain = (text: string): string => text.replaceAll(/\s+/gu, ' ');

const factLines = ({ facts }: Facts, say: Say): string => facts.map(({ label, value }) => `- ${say(label)}: ${say(value)}`).join('\n');

const boxedLines = ({ title, said }: Boxed, say: Say): string =>
  [...(title ? [`**${say(title)}**`] : []), ...said.map(say)].map((text) => `> ${text}`).join('\n>\n');

/** A table of its own for each group of rows, under the group's name: Markdown has no rows that go across. */
function tableParts({ heads, figures, rows }: Table, say: Say): readonly string[] {
  const cell = (said: Said): string => say(said).replaceAll('|', '\\|');
  const top = [heads.map(cell), figures.map((figure) => (figure ? '---:' : '---'))].map(row);
  const parts: string[] = [];
  let lines: string[] = [];
  const end = (): void => {
    if (lines.length > 0) parts.push([...top, ...lines].join('\n'));
    lines = [];
  };
  for (const { group, cells, below = [] } of rows) {
    if (group) {
      end();
      parts.push(`**${say(group)}**`, ...below.map(say));
      continue;
    }
    const said = cells.map(cell);
    // What is said under a row goes into its last cell, where it stays with it.
    const last = [said.at(-1)!, ...below.map(cell)].filter((text) => text !== '').reduce((all, text) => (/^$|\.$/.test(all) ? `${all} ${text}`.trim() : `${all}; ${text}`), '');
    lines.push(row([...said.slice(0, -1), last]));
  }
  end();
  return parts;
}

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

/** Signs that mean something to Markdown, wherever they stand; what means something only at a line's beginning has one before it. */
const escapedText = (text: string): string =>
  plain(text)
    .replaceAll(/[\\`*_[\]<>&~]/gu, '\\$&')
    .replace(/^([#+=-]|\d+[.)])/u, (sign) => `${sign.slice(0, -1)}\\${sign.at(-1)!}`);
