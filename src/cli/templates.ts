import { bad, good, type Result } from '../measure/problem.ts';
import { several } from '../measure/words.ts';
import { settingIn } from '../pattern/pages/face.ts';
import { foundationPages, hasFoundations } from '../pattern/pages/foundation-pages.ts';
import type { Document } from '../pattern/pages/page.ts';
import { pageSvg } from '../pattern/pages/page-svg.ts';
import { PAPERS, type Paper } from '../pattern/pages/paper.ts';
import { templatePages } from '../pattern/pages/template-pages.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { readFaces } from './faces.ts';
import { shownPath } from './block-text.ts';
import { writeFiles, type OutFile } from './out-files.ts';

/** Where the templates go, and on what paper they are laid out. */
export interface TemplateOrder {
  readonly out: string;
  readonly paper: Paper;
}

/** @returns where and on what to print, or in one sentence what is wrong with that */
export function readTemplateOrder(out: string | undefined, paper: string | undefined): Result<TemplateOrder> {
  if (out === undefined) return bad('usage', 'Say where the templates go: piecewright templates FILE -o OUT.pdf.');
  if (!/\.(pdf|svg)$/i.test(out)) {
    return bad('usage', `--out: ${shownPath(out)} ends neither in .pdf nor in .svg; templates are written as one of these.`);
  }
  const known = PAPERS.find((each) => each === (paper ?? PAPERS[0]));
  if (known === undefined) return bad('usage', `--paper: there is no paper ${shownPath(paper!)}; choose ${PAPERS.join(' or ')}.`);
  return good({ out, paper: known });
}

/**
 * Writes the templates of a pattern, and the foundations it is sewn onto, to a file, as PDF; as SVG, a page to a file, numbered where there are several.
 * @returns what was written, in a sentence, or in one why nothing was
 */
export async function writeTemplates(pattern: Pattern, { out, paper }: TemplateOrder): Promise<Result<string>> {
  const name = pattern.block.name.trim() || 'The block';
  if (pattern.cuts.every(({ template }) => template === null) && !hasFoundations(pattern)) {
    return bad('no-templates', `${name} needs no templates: a ruler cuts every piece. Nothing was written.`);
  }
  const faces = await readFaces();
  const [templates, foundations] = [templatePages, foundationPages].map((laid) => laid(pattern, paper, settingIn(faces))) as [Document, Document];
  const document = { ...(templates.pages.length > 0 ? templates : foundations), pages: [...templates.pages, ...foundations.pages] };
  const what = [...(templates.pages.length > 0 ? ['templates'] : []), ...(foundations.pages.length > 0 ? ['foundations'] : [])].join(' and ');
  const files = /\.svg$/i.test(out) ? svgFiles(document, out) : [{ path: out, content: await pdfOf(document, faces) }];
  const written = await writeFiles(files);
  if (!written.ok) return written;
  const where = files.length === 1 ? shownPath(files[0]!.path) : `${shownPath(files[0]!.path)} to ${shownPath(files.at(-1)!.path)}`;
  const pages = several(document.pages.length, 'page');
  return good(`The ${what} of ${name} are on ${pages}, in ${where}. Print at actual size, and measure the squares first.`);
}

/** What writes PDF takes a while to load. */
const pdfOf = async (...[document, faces]: Parameters<typeof import('../pattern/pages/page-pdf.ts').pagesPdf>): Promise<Uint8Array> =>
  (await import('../pattern/pages/page-pdf.ts')).pagesPdf(document, faces);

function svgFiles({ title, language, pages }: Document, out: string): readonly OutFile[] {
  return pages.map((page, i) => ({
    path: pages.length === 1 ? out : out.replace(/(?=\.svg$)/i, `-${i + 1}`),
    content: pageSvg(page, pages.length === 1 ? title : `${title}, page ${i + 1} of ${pages.length}`, language),
  }));
}
