import type { Result } from '../../measure/problem.ts';
import type { Content } from '../../pattern/document/content.ts';
import { published } from '../../pattern/document/published.ts';
import type { Language } from '../../pattern/language.ts';
import { settingIn, type FaceFiles, type Setting } from '../../pattern/pages/face.ts';
import type { Document } from '../../pattern/pages/page.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { answerCalls, handedOver } from '../across.ts';
import { NOTHING_SENT, sent, type SentBefore } from './laid-pages.ts';
import { languageOf } from './language-of.ts';
import type { Sent, SentWish, Wish } from './pages-maker.ts';
import type { FileKind } from './room-files.ts';

let faces: FaceFiles | null = null;
let setting: Setting | null = null;
/** What was laid out last. */
let made: { readonly wish: Wish; readonly language: Language; readonly document: Document; readonly content: Content } | null = null;
/** What came last, the very same object, so that what is remembered of it is found again. */
let lastPattern: Pattern | null = null;
let before: SentBefore = NOTHING_SENT;

/** What the worker of the publishing room does: pages and files, away from the hand. */
const maker = {
  /** Is given the face that pages are set in, before anything else. */
  begin: (files: FaceFiles): void => {
    faces = files;
    setting = settingIn(files);
  },
  /** Lays a pattern out on pages. */
  layOut: async (asked: SentWish): Promise<Sent> => {
    const wish = { ...asked, pattern: (lastPattern = asked.pattern ?? lastPattern)! };
    const language = await languageOf(wish.style.language);
    const start = performance.now();
    made = { wish, language, ...published(wish.block, wish.pattern, wish.style, setting!, language) };
    const [message, now] = sent(made, before);
    before = now;
    return { ...message, took: performance.now() - start };
  },
  /** @returns the pages laid out last as a PDF file */
  pdf: async (): Promise<Uint8Array> => {
    const { pagesPdf } = await import('../../pattern/pages/page-pdf.ts');
    const bytes = await pagesPdf(made!.document, faces!);
    return handedOver(bytes, [bytes.buffer as ArrayBuffer]);
  },
  /** @returns another file of the pattern laid out last */
  file: async (kind: FileKind): Promise<Result<string | Uint8Array>> => {
    const { otherFile } = await import('./other-files.ts');
    const { wish, language, content } = made!;
    return otherFile(kind, { ...wish, language, content, faces: faces! });
  },
};

export type PagesMaker = typeof maker;

answerCalls(maker);
