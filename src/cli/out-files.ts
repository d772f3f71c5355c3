import { writeFile } from 'node:fs/promises';
import { bad, good, type Result } from '../measure/problem.ts';
import { shownPath } from './block-text.ts';

/** A file to write. */
export interface OutFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Writes some files. @returns null, or in one sentence why one could not be written */
export async function writeFiles(files: readonly OutFile[]): Promise<Result<null>> {
  for (const { path, content } of files) {
    try {
      await writeFile(path, content);
    } catch (error) {
      return cannotWrite(path, error);
    }
  }
  return good(null);
}

function cannotWrite(path: string, error: unknown): Result<never> {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const file = shownPath(path);
  if (code === 'ENOENT' || code === 'ENOTDIR') return bad('no-folder', `${file} cannot be written: its folder is not there; make it, or name another.`);
  if (code === 'EISDIR') return bad('a-folder', `${file} is a folder; name a file in it.`);
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return bad('unwritable', `${file} may not be written; name another place.`);
  return bad('unwritable', `${file} cannot be written${code === '' ? '' : ` (${code})`}; check the place and try again.`);
}
