import { useEffect, useState } from 'react';

/** A file that was chosen or dropped, with what can write it again where the browser gives that. */
export interface GivenFile {
  readonly file: File;
  readonly again?: FileSystemFileHandle;
}

/** @returns the first file that is dropped; what is asked of the drop must be asked while it happens */
async function dropped(data: DataTransfer): Promise<GivenFile | null> {
  const item = [...data.items].find(({ kind }) => kind === 'file') as
    | (DataTransferItem & { readonly getAsFileSystemHandle?: () => Promise<FileSystemHandle | null> })
    | undefined;
  const file = data.files[0];
  if (!file) return null;
  const handle = await item?.getAsFileSystemHandle?.().catch(() => null);
  return handle?.kind === 'file' ? { file, again: handle as FileSystemFileHandle } : { file };
}

/** Opens a file that is dropped anywhere on the window. @returns whether one is being held over it */
export function useFileDrop(open: (given: GivenFile) => void): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;
    const onOver = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const onLeave = (event: DragEvent): void => {
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent): void => {
      if (!holdsFile(event) || !event.dataTransfer) return;
      event.preventDefault();
      setOver(false);
      void dropped(event.dataTransfer).then((given) => given && open(given));
    };
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, [open]);
  return over;
}
