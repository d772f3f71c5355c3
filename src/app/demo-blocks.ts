import type { Block } from '../block/block.ts';
import { parseBlock } from '../files/block-file.ts';
import type { Result } from '../measure/problem.ts';

const files = import.meta.glob<string>('../../demo-blocks/*.block.json', { query: '?raw', import: 'default' });

/** A block of the sampler, fetched when it is opened. */
export interface DemoBlock {
  readonly title: string;
  readonly open: () => Promise<Result<Block>>;
}

/** @returns "Harbour light" for "…/03-harbour-light.block.json" */
function titleOf(path: string): string {
  const words = path.replace(/^.*\//, '').replace(/\.block\.json$/, '').replace(/^\d+-/, '').replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The sampler, in the order of the file names. */
export const demoBlocks: readonly DemoBlock[] = Object.entries(files)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, fetchText]) => ({ title: titleOf(path), open: async () => parseBlock(await fetchText()) }));
