import type { Block } from '../block/block.ts';
import { fileSizeProblem, formatBlock, parseBlock } from '../files/block-file.ts';
import type { Result } from '../measure/problem.ts';

/** @returns the block in a file the designer chose or dropped, or why it cannot be opened */
export async function readBlockFile(file: File): Promise<Result<Block>> {
  const tooLarge = fileSizeProblem(file.size);
  if (tooLarge) return { ok: false, problem: tooLarge };
  try {
    return parseBlock(await file.text());
  } catch {
    const sentence = `The file "${file.name.slice(0, 80)}" could not be read from the device; check that it is still there and try again.`;
    return { ok: false, problem: { code: 'unreadable-file', sentence } };
  }
}

/** @returns a file name for a block: its name with plain signs only */
export function fileNameOf(block: Block): string {
  const plain = block.name
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60);
  return `${plain || 'block'}.block.json`;
}

/** Hands the designer the block as a file. */
export function saveBlockFile(block: Block): void {
  const address = URL.createObjectURL(new Blob([formatBlock(block)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileNameOf(block);
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
