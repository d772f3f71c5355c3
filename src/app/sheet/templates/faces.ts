import type { FaceFiles } from '../../../pattern/pages/face.ts';
import { FAMILY, WEIGHTS } from '../../../pattern/pages/page-svg.ts';

const [regular, strong] = await Promise.all([
  import('@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?bytes'),
  import('@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?bytes'),
]);

/** The face of printed pages. */
export const FACES: FaceFiles = { regular: regular.default, strong: strong.default };

/** Lets the pages on the screen be set in the face that the paper will be set in. */
export async function showFaces(): Promise<void> {
  for (const weight of ['regular', 'strong'] as const) {
    const face = new FontFace(FAMILY, FACES[weight].slice().buffer, { weight: String(WEIGHTS[weight]) });
    document.fonts.add(await face.load());
  }
}
