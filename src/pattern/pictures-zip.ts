import { zipSync } from 'fflate';

/** A file in an archive. */
export interface Packed {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/**
 * @returns some files as one ZIP archive, the same bytes for the same files: packed by the same code everywhere, and all dated to the
 * beginning of 1980, the first date an archive knows. Pictures (PNG) are packed already and stay as they are.
 */
export function zipOf(files: readonly Packed[]): Uint8Array {
  const entries = files.map(({ name, content }) => {
    const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
    return [name, [bytes, { level: name.endsWith('.png') ? 0 : 9 }]] as const;
  });
  // The archive holds a local time, so that it is the same wherever it is written.
  return zipSync(Object.fromEntries(entries) as Parameters<typeof zipSync>[0], { mtime: new Date(1980, 0, 1) });
}
