/*
 * Files on the device. Some browsers let a page write to a file that was chosen for it; in the others a file is handed over as a
 * download. See the File System Access drafts of the WICG.
 */

interface FilePickers {
  readonly showSaveFilePicker?: (asked: {
    readonly suggestedName: string;
    readonly types: readonly { readonly description: string; readonly accept: Readonly<Record<string, readonly string[]>> }[];
  }) => Promise<FileSystemFileHandle>;
  readonly showOpenFilePicker?: () => Promise<readonly FileSystemFileHandle[]>;
}

interface Permitted {
  readonly queryPermission?: (asked: { readonly mode: 'readwrite' }) => Promise<PermissionState>;
  readonly requestPermission?: (asked: { readonly mode: 'readwrite' }) => Promise<PermissionState>;
}

const pickers = (): FilePickers => window as unknown as FilePickers;

/** Sooner than this, in milliseconds, no hand has closed a window: the browser has none to show. */
const NO_HAND = 300;

/**
 * Asks where to save.
 * @param accept the kinds of file: media type to endings
 */
export async function askForFile(
  suggestedName: string,
  accept: Readonly<Record<string, readonly string[]>>,
): Promise<FileSystemFileHandle | 'changed her mind' | 'no such files'> {
  const ask = pickers().showSaveFilePicker;
  if (!ask) return 'no such files';
  const asked = performance.now();
  try {
    return await ask.call(window, { suggestedName, types: [{ description: 'Block', accept }] });
  } catch (error) {
    const closed = error instanceof DOMException && error.name === 'AbortError';
    return closed && performance.now() - asked > NO_HAND ? 'changed her mind' : 'no such files';
  }
}

/** @returns whether there is a way to ask for a file that can be written again */
export const canAskToOpen = (): boolean => pickers().showOpenFilePicker !== undefined;

/** Asks which file to open. @returns null where she changed her mind */
export async function askToOpen(): Promise<FileSystemFileHandle | null> {
  try {
    return (await pickers().showOpenFilePicker?.())?.[0] ?? null;
  } catch {
    return null;
  }
}

/** @returns whether the page may write to a file, after asking for leave where that is still to be had */
export async function mayWrite(file: FileSystemFileHandle): Promise<boolean> {
  const { queryPermission, requestPermission } = file as unknown as Permitted;
  const asked = { mode: 'readwrite' } as const;
  try {
    if (!queryPermission || (await queryPermission.call(file, asked)) === 'granted') return true;
    return (await requestPermission?.call(file, asked)) === 'granted';
  } catch {
    return false;
  }
}

/** Writes all of a file; one that cannot be written to its end stays as it was. */
export async function writeFile(file: FileSystemFileHandle, content: Blob): Promise<void> {
  const writing = await file.createWritable();
  try {
    await writing.write(content);
  } catch (error) {
    await writing.abort();
    throw error;
  }
  await writing.close();
}

/** Hands a file over as a download. */
export function handOver(content: Blob, name: string): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
