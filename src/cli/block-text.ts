import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { fileSizeProblem, MAX_FILE } from '../files/block-file.ts';
import { bad, good, type Result } from '../measure/problem.ts';

const LONGEST_NAME = 200;

/** @returns a file's name as a sentence shows it */
export const shownPath = (path: string): string => `"${path.length > LONGEST_NAME ? `…${path.slice(-LONGEST_NAME)}` : path}"`;

/**
 * @param path a file's path, or - for standard input
 * @returns the text of a block file, never reading on past the longest one; or in one sentence why it cannot be read
 */
export async function readBlockText(path: string, standardInput: NodeJS.ReadableStream): Promise<Result<string>> {
  const name = path === '-' ? 'Standard input' : `The file ${shownPath(path)}`;
  try {
    if (path === '-') return await textOf(standardInput, name);
    const found = await stat(path);
    if (found.isDirectory()) return bad('a-folder', `${shownPath(path)} is a folder; name a block file in it.`);
    const tooLarge = fileSizeProblem(found.size);
    if (tooLarge) return bad(tooLarge.code, tooLarge.sentence);
    return await textOf(createReadStream(path), name);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (code === 'ENOENT' || code === 'ENOTDIR') return bad('no-file', `There is no file ${shownPath(path)}; check its name and folder.`);
    if (code === 'EACCES' || code === 'EPERM') return bad('unreadable', `${name} may not be read; ask for the right to read it.`);
    return bad('unreadable', `${name} cannot be read${code === '' ? '' : ` (${code})`}; check it and try again.`);
  }
}

/** Reads a stream as UTF-8; pipes and devices do not say beforehand how much is to come. */
async function textOf(stream: NodeJS.ReadableStream, name: string): Promise<Result<string>> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.from(chunk);
    length += bytes.length;
    if (length > MAX_FILE) {
      return bad('file-too-large', `${name} goes on after ${MAX_FILE / 1_000_000} MB, the most a block file has; choose another file.`);
    }
    chunks.push(bytes);
  }
  try {
    return good(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks)));
  } catch {
    return bad('not-text', `${name} is not text in UTF-8; open a block file, or save it as UTF-8.`);
  }
}
