import type { Block } from '../block/block.ts';
import type { Problem, Result } from '../measure/problem.ts';
import { askForFile, mayWrite, writeFile, handOver } from './device-files.ts';

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

/** @returns a file name for a block: its name with plain signs only, and an ending such as ".block.json" */
export function fileNameOf(block: Pick<Block, 'name'>, ending = '.block.json'): string {
  const plain = block.name
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase()
    .slice(0, 60);
  return `${plain || 'block'}${ending}`;
}

/** What became of a save: which file it went to, and that file where it can be written again; or null where she changed her mind. */
export type SavedFile = { readonly words: string; readonly file?: FileSystemFileHandle } | null;

/**
 * Writes the block to a file of the designer's: to `known`, else to one she chooses, else (where the browser has no such files) as a
 * download.
 * @param known the file the drawing was opened from or saved to; undefined to ask for one
 */
export async function saveBlockFile(block: Block, known: FileSystemFileHandle | undefined): Promise<Result<SavedFile>> {
  const doors = await door().catch(() => null);
  if (!doors) return { ok: false, problem: doorShut };
  const text = new Blob([doors.formatBlock(block)], { type: 'application/json' });
  const file = known && (await mayWrite(known)) ? known : await askForFile(fileNameOf(block), { 'application/json': ['.json'] });
  if (file === 'changed her mind') return { ok: true, value: null };
  if (file === 'no such files') {
    handOver(text, fileNameOf(block));
    return { ok: true, value: { words: `${fileNameOf(block)} is among your downloads.` } };
  }
  try {
    await writeFile(file, text);
    return { ok: true, value: { words: `Saved to ${file.name}.`, file } };
  } catch {
    const sentence = `The file "${file.name}" could not be written; it is as it was. Save a copy somewhere else.`;
    return { ok: false, problem: { code: 'unwritable-file', sentence } };
  }
}
