import { quoted } from '../block/problems.ts';
import { parseLength, type TypedLength } from '../measure/lengths.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { LANGUAGES, type HouseStyle } from '../pattern/house-style.ts';
import { PAPERS } from '../pattern/pages/paper.ts';
import { shownPath } from './block-text.ts';

/** The commands that write a pattern for others, and the endings of the files they write. */
export const WRITTEN = { pattern: ['.pdf', '.md', '.csv'], pictures: ['.zip'], cutter: ['.svg'] } as const;

export type Publishing = keyof typeof WRITTEN;

export const isPublishing = (command: string): command is Publishing => Object.hasOwn(WRITTEN, command);

/** What is written, where, and how it is to look. */
export interface PublishingOrder {
  readonly what: Publishing;
  readonly out: string;
  /** What of the house style was said on the command line. */
  readonly style: Partial<HouseStyle>;
  /** File of a house style; the usual one where it is null. */
  readonly styleFile: string | null;
  /** Width of a cutting machine's mat; the usual one where it is null. */
  readonly mat: TypedLength | null;
}

/** The options as typed. */
export interface TypedPublishing {
  readonly out?: string | undefined;
  readonly paper?: string | undefined;
  readonly columns?: string | undefined;
  readonly language?: string | undefined;
  readonly style?: string | undefined;
  readonly mat?: string | undefined;
  readonly landscape?: boolean | undefined;
  readonly hatches?: boolean | undefined;
  readonly large?: boolean | undefined;
}

const wrong = (sentence: string): Result<never> => bad('usage', sentence);

/** "en or de", ".pdf, .md or .csv" */
const either = (words: readonly string[]): string => [words.slice(0, -1).join(', '), words.at(-1)!].filter((part) => part !== '').join(' or ');

/** @returns what to write, or in one sentence what is wrong with that and what is possible */
export function readPublishing(what: Publishing, typed: TypedPublishing): Result<PublishingOrder> {
  const { out, paper, columns, language, style, mat, landscape, hatches, large } = typed;
  const endings: readonly string[] = WRITTEN[what];
  if (out === undefined) return wrong(`Say which file to write: piecewright ${what} FILE -o OUT${endings[0]!}.`);
  if (!endings.some((ending) => out.toLowerCase().endsWith(ending))) {
    return wrong(`--out: ${shownPath(out)} does not end in ${either(endings)}; ${SAYS[what]}.`);
  }
  const sheet = PAPERS.find((each) => each === paper);
  if (paper !== undefined && sheet === undefined) return wrong(`--paper: there is no paper ${quoted(paper)}; choose ${either(PAPERS)}.`);
  if (columns !== undefined && columns !== '1' && columns !== '2') return wrong(`--columns: ${quoted(columns)} is neither 1 nor 2; a page has one column or two.`);
  const tag = LANGUAGES.find((each) => each === language);
  if (language !== undefined && tag === undefined) {
    return wrong(`--language: no pattern is written in ${quoted(language)}; choose ${either(LANGUAGES)}.`);
  }
  const width = mat === undefined ? good(null) : parseLength(mat);
  if (!width.ok) return wrong(`--mat: ${width.problem.sentence}`);
  if (width.value !== null && width.value.value.n <= 0) return wrong(`--mat: a mat is wider than ${quoted(mat!)}; give its width, like 12.`);
  return good({
    what,
    out,
    style: {
      ...(sheet && { paper: sheet }),
      ...(landscape && { lie: 'landscape' }),
      ...(columns !== undefined && { columns: columns === '2' ? 2 : 1 }),
      ...(hatches && { ink: 'hatches' }),
      ...(large && { letters: 'large' }),
      ...(tag && { language: tag }),
    },
    styleFile: style ?? null,
    mat: width.value,
  });
}

const SAYS: Readonly<Record<Publishing, string>> = {
  pattern: 'a pattern is written as pages, as Markdown, or as the cutting list alone',
  pictures: 'pictures are written as one archive',
  cutter: 'pieces for a cutting machine are written as a drawing',
};
