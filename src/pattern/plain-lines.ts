/** Controls, line separators, marks that turn the writing direction and halves of characters: what could steer a terminal. */
const STEERING = /[\p{Cc}\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** @returns the text on one line, with a replacement mark for every character that could steer a terminal */
export const harmless = (text: string): string => text.replace(STEERING, '\ufffd');

/** Signs that take two columns of a terminal: East Asian scripts, their wide punctuation, and pictures. */
const WIDE = /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Hangul}\u3000-\u303e\uff01-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}|\ufe0f/u;
const signs = new Intl.Segmenter('en', { granularity: 'grapheme' });
const signsOf = (text: string): readonly string[] => [...signs.segment(text)].map(({ segment }) => segment);

/** @returns how many columns of a terminal the text takes */
export function columnsOf(text: string): number {
  if (/^[ -~]*$/.test(text)) return text.length;
  return signsOf(text).reduce((sum, sign) => sum + (WIDE.test(sign) ? 2 : 1), 0);
}

/** @returns the text filled up with spaces to this many columns; longer text stays as it is */
export function padded(text: string, columns: number, side: 'left' | 'right' = 'left'): string {
  const space = ' '.repeat(Math.max(0, columns - columnsOf(text)));
  return side === 'left' ? text + space : space + text;
}

/** The spaces where a line may end: not inside "4 7/8 in." or "4,8 cm". */
const GAP = / (?!(?<=\d )\d+\/\d)(?!(?<=\d )(?:in\.|cm\b))/;

/**
 * Sets one paragraph, made harmless, within a number of columns; a word that is too long is broken.
 * @param first what the first line begins with; the other lines begin with as many spaces
 */
export function wrapped(text: string, columns: number, first = ''): readonly string[] {
  const indent = columnsOf(first);
  const room = columns - indent;
  const lines: string[] = [];
  let line = '';
  for (const word of harmless(text).split(GAP).flatMap((long) => broken(long, room))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (columnsOf(longer) <= room) {
      line = longer;
      continue;
    }
    lines.push(line);
    line = word;
  }
  return [...lines, line].map((each, i) => (i === 0 ? first : ' '.repeat(indent)) + each);
}

/** @returns a word in pieces of at most this many columns */
function broken(word: string, columns: number): readonly string[] {
  const pieces = [''];
  for (const sign of columnsOf(word) <= columns ? [word] : signsOf(word)) {
    const longer = pieces.at(-1) + sign;
    if (columnsOf(longer) <= columns || pieces.at(-1) === '') pieces[pieces.length - 1] = longer;
    else pieces.push(sign);
  }
  return pieces;
}
