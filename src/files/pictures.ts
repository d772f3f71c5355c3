import { openDB, type DBSchema, type IDBPDatabase } from 'idb';

/** A picture that lies under a drawing, as the browser keeps it between visits; beside the drawings, never in a block file. */
export interface KeptPicture {
  /** Id of the drawing it lies under. */
  readonly drawing: string;
  readonly picture: Blob;
  /** How it lies and is shown: whatever the table makes of it. */
  readonly lie: unknown;
  readonly cover: number;
  readonly shown: boolean;
}

interface Pictures extends DBSchema {
  pictures: { key: string; value: KeptPicture };
}

const open = (): Promise<IDBPDatabase<Pictures>> =>
  openDB<Pictures>('piecewright pictures', 1, { upgrade: (fresh) => void fresh.createObjectStore('pictures', { keyPath: 'drawing' }) });

let opened: Promise<IDBPDatabase<Pictures>> | null = null;
const database = (): Promise<IDBPDatabase<Pictures>> => (opened ??= open());

/** @returns the picture kept under a drawing, if there is one; rejects where the browser keeps nothing */
export const pictureUnder = async (drawing: string): Promise<KeptPicture | undefined> => (await database()).get('pictures', drawing);

/** Keeps a picture under a drawing, in place of the one before. */
export const keepPicture = async (picture: KeptPicture): Promise<void> => void (await (await database()).put('pictures', picture));

/** Forgets the picture under a drawing. */
export const forgetPicture = async (drawing: string): Promise<void> => (await database()).delete('pictures', drawing);

/** Lays the picture under one drawing, if there is one, under another as well. */
export async function sharePicture(from: string, to: string): Promise<void> {
  const picture = await pictureUnder(from);
  if (picture) await keepPicture({ ...picture, drawing: to });
}
