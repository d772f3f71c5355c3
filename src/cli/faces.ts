import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { FaceFiles } from '../pattern/pages/face.ts';

const FAMILY = '@expo-google-fonts/source-sans-3';

/** @returns the face that pages are set in, from the package that brings it */
export async function readFaces(): Promise<FaceFiles> {
  const { resolve } = createRequire(import.meta.url);
  const read = async (file: string): Promise<Uint8Array> => new Uint8Array(await readFile(resolve(`${FAMILY}/${file}`)));
  const [regular, strong] = await Promise.all([
    read('400Regular/SourceSans3_400Regular.ttf'),
    read('600SemiBold/SourceSans3_600SemiBold.ttf'),
  ]);
  return { regular, strong };
}
