import { readFile } from 'node:fs/promises';
import type { Block } from '../block/block.ts';
import { MAX_STYLE_FILE, parseHouseStyle } from '../files/house-style-file.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { several } from '../measure/words.ts';
import { cutterSvg, USUAL_MAT } from '../pattern/cutter-svg.ts';
import { published } from '../pattern/document/published.ts';
import { usualStyle, type HouseStyle, type LanguageTag } from '../pattern/house-style.ts';
import type { Language } from '../pattern/language.ts';
import { settingIn } from '../pattern/pages/face.ts';
import { diagramsOf, diagramSvg } from '../pattern/pages/figure-svg.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { cutsCsv } from '../pattern/pattern-csv.ts';
import { patternMarkdown } from '../pattern/pattern-markdown.ts';
import { zipOf } from '../pattern/pictures-zip.ts';
import { namesIn } from '../pattern/plain-speech.ts';
import { styledTelling } from '../pattern/telling/styled.ts';
import { shownPath } from './block-text.ts';
import { wrongUnit } from './choices.ts';
import { readFaces } from './faces.ts';
import { writeFiles } from './out-files.ts';
import type { PublishingOrder } from './publishing-order.ts';

/**
 * Writes what a designer hands on: pages, text, the cutting list, pictures, pieces for a cutting machine.
 * @returns what was written, in a sentence, or in one why nothing was
 */
export async function writePublishing(block: Block, pattern: Pattern, order: PublishingOrder): Promise<Result<string>> {
  const style = await styleFor(block, order);
  if (!style.ok) return style;
  const made = await contentFor(block, pattern, style.value, order);
  if (!made.ok) return made;
  const written = await writeFiles([{ path: order.out, content: made.value.content }]);
  return written.ok ? good(made.value.says) : written;
}

interface Made {
  readonly content: string | Uint8Array;
  readonly says: string;
}

async function contentFor(block: Block, pattern: Pattern, style: HouseStyle, { what, out, mat }: PublishingOrder): Promise<Result<Made>> {
  const { unit } = block.finished;
  const name = block.name.trim() || 'The block';
  const file = shownPath(out);
  if (what === 'cutter') {
    if (mat !== null && (mat.unit ?? unit) !== unit) return wrongUnit('--mat', unit);
    const svg = cutterSvg(pattern, mat?.value ?? USUAL_MAT[unit], style.language);
    return svg.ok ? good({ content: svg.value, says: `The pieces of ${name} are in ${file}, each shape once, at true size; what is cut of each, and how many, is its title.` }) : svg;
  }
  if (/\.csv$/i.test(out)) return good({ content: cutsCsv(pattern, style.language), says: `The cutting list of ${name} is in ${file}.` });
  const faces = await readFaces();
  const setting = settingIn(faces);
  const language = await languageOf(style.language);
  const { document, content } = published(block, pattern, style, setting, language);
  const telling = styledTelling(style, namesIn(pattern), language);
  if (what === 'pictures') {
    const diagrams = diagramsOf(content, style, telling, setting);
    const zip = zipOf(diagrams.map((diagram) => ({ name: `${diagram.name}.svg`, content: diagramSvg(diagram, content.language) })));
    const says = `${several(diagrams.length, 'picture')} of ${name} ${diagrams.length === 1 ? 'is' : 'are'} in ${file}, as drawings (SVG); the app writes each as PNG too.`;
    return good({ content: zip, says });
  }
  if (/\.md$/i.test(out)) return good({ content: patternMarkdown(content, telling), says: `The pattern of ${name} is in ${file}.` });
  // What writes PDF takes a while to load.
  const { pagesPdf } = await import('../pattern/pages/page-pdf.ts');
  const pages = several(document.pages.length, 'page');
  return good({
    content: await pagesPdf(document, faces),
    says: `The pattern of ${name} is on ${pages}, in ${file}. Print at actual size, and measure the squares first.`,
  });
}

/** The house style: what was said on the command line before what its file says before what is usual. */
async function styleFor({ finished }: Block, { style, styleFile }: PublishingOrder): Promise<Result<HouseStyle>> {
  if (styleFile === null) return good({ ...usualStyle(finished.unit), ...style });
  const file = shownPath(styleFile);
  const text = await readFile(styleFile).then(
    (bytes) => (bytes.length > 4 * MAX_STYLE_FILE ? null : new TextDecoder().decode(bytes)),
    () => null,
  );
  if (text === null) return bad('no-style', `--style: the file ${file} cannot be read; check its name and folder.`);
  const read = parseHouseStyle(text);
  return read.ok ? good({ ...read.value, ...style }) : bad(read.problem.code, `--style: ${read.problem.sentence}`);
}

/** Of the languages only the one that is spoken is loaded. */
const languageOf = async (tag: LanguageTag): Promise<Language> =>
  tag === 'de' ? (await import('../pattern/german.ts')).GERMAN : (await import('../pattern/english.ts')).ENGLISH;
