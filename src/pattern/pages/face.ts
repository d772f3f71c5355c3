import { faceMetrics, type FaceMetrics } from './face-file.ts';
import type { Weight } from './page.ts';

/** The two weights of the face that every page is set in, as TrueType files. */
export type FaceFiles = Readonly<Record<Weight, Uint8Array>>;

/** How text is set: what the face can show, and how wide it is. */
export interface Setting {
  /** @returns the text with whatever the face cannot show replaced by what it can */
  readonly shown: (text: string) => string;
  /** @returns how wide a line is at this size, without kerning */
  readonly widthOf: (text: string, size: number, weight: Weight) => number;
}

/** Heights of the face in em: of small letters with an ascender, and of what hangs below the line. */
export const ASCENT = 0.75;
export const DESCENT = 0.21;

/** A digit beside U+2044 is set small and raised, or lowered: about as wide as the raised digit that Unicode has. */
const IN_FRACTION = /\d+(?=\u2044)|(?<=\u2044)\d+/gu;
const RAISED = ['\u2070', '\u00b9', '\u00b2', '\u00b3', '\u2074', '\u2075', '\u2076', '\u2077', '\u2078', '\u2079'];

/** @returns how text is set in a face */
export function settingIn(files: FaceFiles): Setting {
  const metrics: Readonly<Record<Weight, FaceMetrics>> = { regular: faceMetrics(files.regular), strong: faceMetrics(files.strong) };
  const known = (sign: string): boolean => metrics.regular.advance(sign.codePointAt(0)!) !== null;
  const shown = (text: string): string =>
    [...text.normalize('NFC').replace(/\s+/gu, ' ')]
      .map((sign) => (known(sign) ? sign : [...sign.normalize('NFKD')].every(known) ? sign.normalize('NFKD') : '?'))
      .join('');
  const widthOf = (text: string, size: number, weight: Weight): number => {
    const set = text.replace(IN_FRACTION, (digits) => [...digits].map((digit) => RAISED[Number(digit)]).join(''));
    return [...set].reduce((wide, sign) => wide + (metrics[weight].advance(sign.codePointAt(0)!) ?? 0), 0) * size;
  };
  return { shown, widthOf };
}

/** Fractions that Unicode has as one sign. */
const BUILT: Readonly<Record<string, string>> = {
  '1/2': '½', '1/3': '⅓', '2/3': '⅔', '1/4': '¼', '3/4': '¾', '1/8': '⅛', '3/8': '⅜', '5/8': '⅝', '7/8': '⅞',
};

/** @returns a sentence with its lengths set as a pattern prints them: "1 7/8 in." becomes "1⅞ in.", "7/16" the fraction 7⁄16 */
export const withFractions = (text: string): string =>
  text.replace(/(?:(\d+) )?(\d+)\/(\d+)/gu, (_, whole: string | undefined, n: string, d: string) => {
    const built = BUILT[`${n}/${d}`];
    return built === undefined ? `${whole === undefined ? '' : `${whole}\u202f`}${n}\u2044${d}` : `${whole ?? ''}${built}`;
  });
