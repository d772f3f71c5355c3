import { readdirSync, readFileSync } from 'node:fs';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';

const ENDING = '.block.json';

export type Folder = 'cases' | 'gallery';

/** @returns the names of the blocks in tests/cases or tests/gallery */
export const namesIn = (folder: Folder): readonly string[] =>
  readdirSync(new URL(`../${folder}/`, import.meta.url))
    .filter((file) => file.endsWith(ENDING))
    .map((file) => file.slice(0, -ENDING.length));

export function blockNamed(folder: Folder, name: string): Block {
  const read = parseBlock(readFileSync(new URL(`../${folder}/${name}${ENDING}`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
}

export function patternOf(block: Block, choices: Choices = {}): Pattern {
  const made = makePattern(block, choices);
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}
