import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Poppler's programs, a reader of PDF that shares nothing with whoever wrote the file; not on every machine. */
export const hasPoppler = ['pdfinfo', 'pdffonts', 'pdftotext'].every((program) => spawnSync(program, ['-v']).status === 0);

function told(program: string, before: readonly string[], file: Uint8Array, after: readonly string[] = []): string {
  const folder = mkdtempSync(join(tmpdir(), 'pages-'));
  try {
    const path = join(folder, 'pages.pdf');
    writeFileSync(path, file);
    const { stdout, stderr, status } = spawnSync(program, [...before, path, ...after], { encoding: 'utf8', maxBuffer: 100_000_000 });
    if (status !== 0 || stderr !== '') throw new Error(`${program}: ${stderr}`);
    return stdout;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** @returns what pdfinfo says, by its names, with the size of every page */
export function infoIn(file: Uint8Array): { readonly facts: ReadonlyMap<string, string>; readonly pages: readonly (readonly [number, number])[] } {
  const lines = told('pdfinfo', ['-f', '1', '-l', '-1'], file).split('\n');
  return {
    facts: new Map(lines.flatMap((line) => (line.includes(':') ? [[line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1).trim()] as const] : []))),
    pages: lines.flatMap((line) => {
      const size = /^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/.exec(line);
      return size ? [[Number(size[1]), Number(size[2])] as const] : [];
    }),
  };
}

/** @returns the tree of tags with its texts, as pdfinfo prints it */
export const tagsIn = (file: Uint8Array): string => told('pdfinfo', ['-struct-text'], file);

/** @returns the named places */
export const placesIn = (file: Uint8Array): readonly string[] =>
  told('pdfinfo', ['-dests'], file)
    .split('\n')
    .flatMap((line) => /"(.*)"$/.exec(line)?.[1] ?? []);

/** @returns of every font its name, and whether it is embedded, a subset, and tells its letters */
export const fontsIn = (file: Uint8Array): readonly { readonly name: string; readonly flags: string }[] =>
  told('pdffonts', [], file)
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => ({ name: line.split(' ')[0]!, flags: /(yes|no) +(yes|no) +(yes|no)(?= +\d+ +\d+$)/.exec(line)![0].replaceAll(/ +/g, ' ') }));

/** @returns the text of every page, as the file has it, line by line */
export const textsIn = (file: Uint8Array): readonly string[] => told('pdftotext', ['-raw'], file, ['-']).split('\f').slice(0, -1);

export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** @returns the words of every page and where they stand, in points */
export const wordsIn = (file: Uint8Array): readonly (readonly Word[])[] =>
  told('pdftotext', ['-bbox'], file, ['-'])
    .split('<page ')
    .slice(1)
    .map((page) =>
      [...page.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)<\/word>/g)].map(
        ([, left, top, right, bottom, text]): Word => ({ text: text!, left: Number(left), top: Number(top), right: Number(right), bottom: Number(bottom) }),
      ),
    );
