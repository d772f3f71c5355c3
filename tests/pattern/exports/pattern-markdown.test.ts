import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import type { Flow, Said } from '../../../src/pattern/document/content.ts';
import { published } from '../../../src/pattern/document/published.ts';
import { ENGLISH } from '../../../src/pattern/english.ts';
import { usualStyle } from '../../../src/pattern/house-style.ts';
import { diagramsOf } from '../../../src/pattern/pages/figure-svg.ts';
import { patternMarkdown } from '../../../src/pattern/pattern-markdown.ts';
import { namesIn } from '../../../src/pattern/plain-speech.ts';
import { printed } from '../../../src/pattern/telling/kept.ts';
import { styledTelling } from '../../../src/pattern/telling/styled.ts';
import { blockNamed, patternOf } from '../made.ts';
import { setting } from '../pages/laid.ts';

const style = usualStyle('in');

function written(block: Block) {
  const pattern = patternOf(block);
  const { content } = published(block, pattern, style, setting, ENGLISH);
  const telling = styledTelling(style, namesIn(pattern), ENGLISH);
  return { content, telling, text: patternMarkdown(content, telling) };
}

/** Every sentence of a part, in its order. */
function sentencesIn(flow: Flow): readonly Said[] {
  switch (flow.flow) {
    case 'paragraph':
    case 'heading':
      return [flow.said];
    case 'together':
      return flow.items.flatMap(sentencesIn);
    case 'boxed':
      return [...(flow.title ? [flow.title] : []), ...flow.said];
    case 'facts':
      return flow.facts.flatMap(({ label, value }) => [label, value]);
    case 'table':
      return flow.rows.flatMap(({ group, cells, below = [] }) => [...(group ? [group] : []), ...cells, ...below]);
    default:
      return [];
  }
}

/** @returns the text as somebody reads it: signs that are escaped as they are meant */
const read = (markdown: string): string => markdown.replaceAll(/\\([!-/:-@[-`{-~])/g, '$1');

describe('a pattern as Markdown', () => {
  test('says every sentence of the pages, in their order', () => {
    const { content, telling, text } = written(blockNamed('cases', 'sawtooth-star-12'));
    const plain = read(text);
    let at = 0;
    for (const { title, items } of content.sections) {
      for (const said of [title, ...items.flatMap(sentencesIn)].map(({ told }) => printed(told, telling))) {
        const found = plain.indexOf(said, at);
        expect([said, found >= at]).toEqual([said, true]);
        at = found;
      }
    }
  });

  test('shows every diagram by the name of its file', () => {
    const { content, telling, text } = written(blockNamed('cases', 'sawtooth-star-12'));
    const named = [...text.matchAll(/^!\[[^\n]*\]\(([^)]+)\.svg\)$/gm)].map(([, name]) => name);
    expect(named).toEqual(diagramsOf(content, style, telling, setting).map(({ name }) => name));
  });

  test('takes no name for a mark of its own', () => {
    const block = blockNamed('cases', 'shoo-fly-12');
    const { text } = written({
      ...block,
      name: '# *Star* <b>&amp; [tide](x) `~`',
      fabrics: block.fabrics.map((fabric, i) => ({ ...fabric, name: ['| - _Fog_ |', '> 1. Sea'][i % 2]! })),
    });
    expect(text).toMatch(/^# \\# \\\*Star\\\* \\<b\\>\\&amp; \\\[tide\\\]\(x\) \\`\\~\\`\n/);
    // Bars in cells are escaped: every row of a table has as many cells as its head.
    for (const table of text.matchAll(/(?:^\|.*\n)+/gm)) {
      const cells = table[0].trim().split('\n').map((row) => row.replaceAll('\\|', '').split('|').length);
      expect(new Set(cells).size).toBe(1);
    }
  });
});
