import type { Block } from '../block/block.ts';
import type { Problem, Result } from '../measure/problem.ts';

/** The door, loaded with the first file. */
const door = () => import('../files/block-file.ts');

const doorShut: Problem = {
  code: 'unreachable',
  sentence: 'The part of the app that reads and writes files could not be fetched; check that the app is still being served and try again.',
};

/** @returns the block in a file the designer chose or dropped, or why it cannot be opened */
export async function readBlockFile(file: File): Promise<Result<Block>> {
  const doors = await door().catch(() => null);
  if (!doors) return { ok: false, problem: doorShut };
  const tooLarge = doors.fileSizeProblem(file.size);
  if (tooLarge) return { ok: false, problem: tooLarge };
  try {
    return doors.parseBlock(await file.text());
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

/** Hands the designer the block as a file. @returns what stood in the way, null where nothing did */
export async function saveBlockFile(block: Block): Promise<Problem | null> {
  const doors = await door().catch(() => null);
  if (!doors) return doorShut;
  const address = URL.createObjectURL(new Blob([doors.formatBlock(block)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileNameOf(block);
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  return null;
}
