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

const blocks = new Map<string, Block>();

/** @returns a block of tests/cases or tests/gallery; the same one whenever it is asked for, in whatever file */
export function blockNamed(folder: Folder, name: string): Block {
  const path = `../${folder}/${name}${ENDING}`;
  const known = blocks.get(path);
  if (known) return known;
  const read = parseBlock(readFileSync(new URL(path, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  blocks.set(path, read.value);
  return read.value;
}

const usual = new WeakMap<Block, Pattern>();

/** @returns the pattern of a block; with the usual choices it is made once, for all files of a worker together */
export function patternOf(block: Block, choices: Choices = {}): Pattern {
  const known = Object.keys(choices).length === 0 ? usual.get(block) : undefined;
  if (known) return known;
  const made = makePattern(block, choices);
  if (!made.ok) throw new Error(made.problem.sentence);
  if (Object.keys(choices).length === 0) usual.set(block, made.value);
  return made.value;
}
