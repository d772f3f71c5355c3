import { good, type Result } from '../../measure/problem.ts';
import { cutterSvg, USUAL_MAT } from '../../pattern/cutter-svg.ts';
import type { Content } from '../../pattern/document/content.ts';
import type { Language } from '../../pattern/language.ts';
import { settingIn, type FaceFiles } from '../../pattern/pages/face.ts';
import { diagramsOf } from '../../pattern/pages/figure-svg.ts';
import { cutsCsv } from '../../pattern/pattern-csv.ts';
import { patternJson } from '../../pattern/pattern-json.ts';
import { patternMarkdown } from '../../pattern/pattern-markdown.ts';
import { namesIn } from '../../pattern/plain-speech.ts';
import { styledTelling } from '../../pattern/telling/styled.ts';
import type { Wish } from './pages-maker.ts';
import { picturesZip } from './pictures.ts';
import type { FileKind } from './room-files.ts';

/** What files are made of. */
export interface FileSource extends Wish {
  readonly content: Content;
  readonly language: Language;
  readonly faces: FaceFiles;
}

/** @returns a file of a pattern besides its pages; in a worker */
export async function otherFile(
  kind: FileKind,
  { block, pattern, style, content, language, faces }: FileSource,
): Promise<Result<string | Uint8Array>> {
  const telling = styledTelling(style, namesIn(pattern), language);
  switch (kind) {
    case 'text':
      return good(patternMarkdown(content, telling));
    case 'cuts':
      return good(cutsCsv(pattern, style.language));
    case 'data':
      return good(`${JSON.stringify(patternJson(pattern), null, 2)}\n`);
    case 'pieces':
      return cutterSvg(pattern, USUAL_MAT[block.finished.unit], style.language);
    case 'pictures':
      return good(await picturesZip(diagramsOf(content, style, telling, settingIn(faces)), content.language, faces));
  }
}
