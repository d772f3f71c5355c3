import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseBlock } from '../../../src/files/block-file.ts';
import { published } from '../../../src/pattern/document/published.ts';
import { ENGLISH } from '../../../src/pattern/english.ts';
import { usualStyle } from '../../../src/pattern/house-style.ts';
import { diagramsOf, diagramSvg } from '../../../src/pattern/pages/figure-svg.ts';
import { namesIn } from '../../../src/pattern/plain-speech.ts';
import { styledTelling } from '../../../src/pattern/telling/styled.ts';
import { patternOf } from '../made.ts';
import { inkBox, setting } from '../pages/laid.ts';

const read = parseBlock(readFileSync('demo-blocks/01-point-light.block.json', 'utf8'));
if (!read.ok) throw new Error(read.problem.sentence);
const pattern = patternOf(read.value);
const style = usualStyle('in');
const { content } = published(read.value, pattern, style, setting, ENGLISH);
const diagrams = diagramsOf(content, style, styledTelling(style, namesIn(pattern), ENGLISH), setting);

describe('diagrams alone', () => {
  test('are named for their steps, each once, with pictures of every step', () => {
    const names = diagrams.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const { number } of pattern.steps) expect(names.some((name) => name.startsWith(`step-${String(number).padStart(2, '0')}-`))).toBe(true);
    for (const name of names) expect(name).toMatch(/^[a-z0-9-]+$/);
  });

  test('are as large as their picture, which is 4 in. at the most, and all of it lies on them', () => {
    for (const { name, width, height, items, says } of diagrams) {
      expect([name, Math.max(width, height) <= 4 * 72 + 4, says !== '']).toEqual([name, true, true]);
      for (const item of items) {
        const { left, top, right, bottom } = inkBox(item);
        expect([name, left > -0.75, top > -0.75, right < width + 0.75, bottom < height + 0.75]).toEqual([name, true, true, true, true]);
      }
    }
  });

  test('are SVG of that size, told in words', () => {
    const [first] = diagrams;
    const svg = diagramSvg(first!, 'en');
    expect(svg).toMatch(/<svg [^>]*xml:lang="en" width="[\d.]+pt" height="[\d.]+pt"/);
    expect(svg).toContain(`<title>${first!.says}</title>`);
  });
});
