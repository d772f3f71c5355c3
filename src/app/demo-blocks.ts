import type { Block } from '../block/block.ts';

const files = import.meta.glob<Block>('../../demo-blocks/*.block.json', { query: '?drawn', import: 'default' });

/** A block of the sampler, fetched when it is opened. */
export interface DemoBlock {
  readonly title: string;
  readonly open: () => Promise<Block>;
}

/** @returns "Harbour light" for "…/03-harbour-light.block.json" */
function titleOf(path: string): string {
  const words = path.replace(/^.*\//, '').replace(/\.block\.json$/, '').replace(/^\d+-/, '').replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The sampler, in the order of the file names. */
export const demoBlocks: readonly DemoBlock[] = Object.entries(files)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([path, open]) => ({ title: titleOf(path), open }));
