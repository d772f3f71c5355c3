import type { Said } from '../document/content.ts';
import { runsOf } from '../telling/kept.ts';
import type { Composing } from './composing.ts';
import { ASCENT, DESCENT } from './face.ts';
import { breaksOf, GLUED, SLACK, type Atom } from './line-breaking.ts';
import type { Item, LinkItem, TextItem, Weight } from './page.ts';
import { measured } from './text-measure.ts';
import type { TextLook } from './typography.ts';

/** Part of a word, of one weight. */
interface Piece {
  readonly text: string;
  readonly wide: number;
  readonly weight: Weight;
  /** The place it leads to. */
  readonly to?: string;
}

interface Word extends Atom {
  readonly pieces: readonly Piece[];
}

/** A line of text without a place. */
export interface Line {
  readonly words: readonly Word[];
  readonly wide: number;
  readonly look: TextLook;
}

/** Where sentences have their words from: what they are set in, how their values stand, and where these lead. */
type Source = Pick<Composing, 'telling' | 'setting' | 'places'>;

/** What was set. */
interface Memory {
  readonly words: Map<string, readonly Word[]>;
  /** Words, line by line. */
  readonly lines: Map<string, readonly (readonly Word[])[]>;
}

/**
 * The same sentences are asked for when a column's width is sought, when they are set, and for the next document: hardly one of them
 * changes with a stroke. What was set is remembered by its telling, and forgotten where letters lead elsewhere.
 */
const known = new WeakMap<Source['telling'], { readonly setting: Source['setting']; readonly places: string; readonly memory: Memory }>();
const ofPlaces = new WeakMap<Source['places'], { readonly telling: Source['telling']; readonly setting: Source['setting']; readonly memory: Memory }>();

function memoryOf({ telling, setting, places }: Source): Memory {
  const here = ofPlaces.get(places);
  if (here?.telling === telling && here.setting === setting) return here.memory;
  const all = [...places].sort().join('\n');
  const before = known.get(telling);
  const memory =
    before?.places === all && before.setting === setting && before.memory.lines.size < MOST_LINES
      ? before.memory
      : { words: new Map<string, readonly Word[]>(), lines: new Map<string, readonly (readonly Word[])[]>() };
  known.set(telling, { setting, places: all, memory });
  ofPlaces.set(places, { telling, setting, memory });
  return memory;
}

/** So that pages which stand open for days do not remember everything that ever stood on them. */
const MOST_LINES = 10_000;

/** @returns a sentence's words, measured; its values stay whole, and units' letters lead to their steps */
function wordsOf(told: string, look: TextLook, composing: Source): readonly Word[] {
  const { words: sentences } = memoryOf(composing);
  const key = `${look.size} ${look.weight} ${told}`;
  const found = sentences.get(key);
  if (found) return found;
  const fresh = readWords(told, look, composing);
  sentences.set(key, fresh);
  return fresh;
}

function readWords(
  told: string,
  look: TextLook,
  { telling, setting, places }: Source,
): readonly Word[] {
  const words: Open[] = [];
  // Whether what comes next goes on where the last word ended.
  let goesOn = false;
  for (const { text, value } of runsOf(told, telling)) {
    const kind = value?.split(' ', 1)[0];
    const weight: Weight = kind === 'unit' ? 'strong' : look.weight;
    const whole = kind === 'length' || kind === 'bare' || kind === 'about';
    const parts = text.split(BREAKABLE);
    parts.forEach((part, i) => {
      if (i > 0) goesOn = false;
      if (part === '') return;
      const shown = measured(part, weight, setting);
      const piece: Piece = {
        ...shown,
        wide: shown.wide * look.size,
        weight,
        ...(value !== undefined && places.has(value) && { to: value }),
      };
      const last = words.at(-1);
      if (goesOn && last) last.pieces.push(piece);
      else words.push({ pieces: [piece], glued: whole && i > 0, kind });
      goesOn = true;
    });
  }
  const space = measured(' ', look.weight, setting).wide * look.size;
  return words.map(({ pieces, glued }, i): Word => {
    const before = words[i - 1];
    return {
      pieces,
      wide: pieces.reduce((sum, { wide }) => sum + wide, 0),
      space,
      cost: glued ? GLUED : before ? costBetween(before, pieces) : 0,
    };
  });
}

/** White space at which a line may end; spaces that hold together are not among it. */
const BREAKABLE = /[ \t\n\r]+/u;

/** A word that is being gathered. */
interface Open {
  readonly pieces: Piece[];
  readonly glued: boolean;
  /** What kind of value it is. */
  readonly kind: string | undefined;
}

const DIGITS = '0123456789½⅓⅔¼¾⅛⅜⅝⅞';
const MEASURE = /^(?:in\.?|cm|mm|yd|″|\d+[/⁄]\d+)(?:$|[^\p{L}\d])/u;

function costBetween(before: Open, after: readonly Piece[]): number {
  const [left, right] = [before.pieces.at(-1)!.text, after[0]!.text];
  if (left === '×' || right === '×' || (DIGITS.includes(left.at(-1)!) && MEASURE.test(right))) return GLUED;
  // "2 squares", "unit A": better not at a line's end.
  return before.kind === 'count' || after[0]!.to !== undefined ? 0.05 : 0;
}

/** A word with a hyphen may end a line there; so may one that no line can hold, anywhere. */
function parted(words: readonly Word[], width: number, setting: Composing['setting'], size: number): readonly Word[] {
  if (words.every(({ wide, pieces }) => wide <= width && !pieces.some(({ text }) => HYPHEN.test(text)))) return words;
  return words.flatMap((word): readonly Word[] => {
    const parts = word.pieces.flatMap((piece) => {
      const { text, weight } = piece;
      const bits = text
        .split(AFTER_HYPHEN)
        .flatMap((bit) => (widthOf(bit, weight, setting) * size <= width ? [bit] : cutUp(bit, weight, width / size, setting)));
      return bits.map((bit, i): Piece & { readonly begins: boolean } => ({
        ...piece,
        text: bit,
        wide: widthOf(bit, weight, setting) * size,
        begins: i > 0,
      }));
    });
    const rows: { pieces: Piece[]; wide: number }[] = [];
    for (const { begins, ...piece } of parts) {
      const last = rows.at(-1);
      if (last && !begins && last.wide + piece.wide <= width + SLACK) {
        last.pieces.push(piece);
        last.wide += piece.wide;
      } else rows.push({ pieces: [piece], wide: piece.wide });
    }
    return rows.map(({ pieces, wide }, i): Word => ({ pieces, wide, space: i === 0 ? word.space : 0, cost: i === 0 ? word.cost : 0.02 }));
  });
}

/** After a hyphen between two letters, of which at least two stand on either side. */
const HYPHEN = /\p{L}\p{L}[-–/]\p{L}\p{L}/u;
const AFTER_HYPHEN = /(?<=\p{L}\p{L}[-–/])(?=\p{L}\p{L})/u;

const widthOf = (text: string, weight: Weight, setting: Composing['setting']): number => measured(text, weight, setting).wide;

/** @returns a text in parts that are no wider, each of at least one sign */
function cutUp(text: string, weight: Weight, width: number, setting: Composing['setting']): readonly string[] {
  const parts: string[] = [];
  let [part, wide] = ['', 0];
  for (const sign of text) {
    const more = setting.widthOf(sign, 1, weight);
    if (part !== '' && wide + more > width) {
      parts.push(part);
      [part, wide] = ['', 0];
    }
    part += sign;
    wide += more;
  }
  return [...parts, part];
}

/** @returns a sentence in lines that are no wider; no line where nothing is said */
export function linesOf(told: string, look: TextLook, width: number, composing: Source): readonly Line[] {
  const { lines } = memoryOf(composing);
  const key = `${look.size} ${look.weight} ${width} ${told}`;
  let rows = lines.get(key);
  if (!rows) {
    const words = parted(wordsOf(told, look, composing), width, composing.setting, look.size);
    const starts = breaksOf(words, width);
    lines.set(key, (rows = starts.map((start, i) => words.slice(start, starts[i + 1] ?? words.length))));
  }
  return rows.map((row): Line => ({ words: row, wide: wideOf(row), look }));
}

const wideOf = (words: readonly Word[]): number => words.reduce((sum, { wide, space }, i) => sum + wide + (i > 0 ? space : 0), 0);

/** @returns how wide a sentence is on one line, and its widest word that is not parted */
export function widthsOf(
  told: string,
  look: TextLook,
  composing: Source,
): { readonly wide: number; readonly least: number } {
  const words = wordsOf(told, look, composing);
  let [least, run] = [0, 0];
  for (const { wide, space, cost } of words) {
    run = cost === GLUED ? run + space + wide : wide;
    least = Math.max(least, run);
  }
  return { wide: wideOf(words), least };
}

/** What texts of a line carry beside their letters. */
export type Carried = Pick<TextItem, 'role' | 'level' | 'of' | 'cell' | 'figure'>;

/** @returns a line as it stands with its baseline beginning here: as few texts as its weights allow, and links over what leads elsewhere */
export function lineItems(line: Line, x: number, y: number, carried: Carried, linkTo?: string): readonly Item[] {
  const { size, color } = line.look;
  const texts: { text: string; x: number; width: number; weight: Weight }[] = [];
  const links: LinkItem[] = [];
  let at = x;
  line.words.forEach(({ pieces, space }, i) => {
    if (i > 0 && space > 0) {
      const last = texts.at(-1)!;
      last.text += ' ';
      last.width += space;
      at += space;
    }
    for (const { text, wide, weight, to } of pieces) {
      const last = texts.at(-1);
      if (last?.weight === weight) {
        last.text += text;
        last.width += wide;
      } else texts.push({ text, x: at, width: wide, weight });
      if (to !== undefined) links.push(linkOver(at, y, wide, size, to));
      at += wide;
    }
  });
  const items = texts.map((text): TextItem => ({ kind: 'text', ...text, y, size, color, ...carried }));
  return [...items, ...(linkTo === undefined ? links : [linkOver(x, y, at - x, size, linkTo)])];
}

const linkOver = (left: number, y: number, width: number, size: number, to: string): LinkItem => ({
  kind: 'link',
  area: { left, top: y - ASCENT * size, width, height: (ASCENT + DESCENT) * size },
  to,
});

/** @returns how far below the top of a line its baseline lies: letters stand in the middle of the leading */
export const baselineIn = ({ size, leading }: TextLook): number => (leading - (ASCENT + DESCENT) * size) / 2 + ASCENT * size;

/** @returns lines under one another from this corner on */
export function blockItems(lines: readonly Line[], x: number, top: number, carried: Carried, linkTo?: string): readonly Item[] {
  return lines.flatMap((line, i) => lineItems(line, x, top + i * line.look.leading + baselineIn(line.look), carried, linkTo));
}

/** @returns how high lines are */
export const heightOf = (lines: readonly Line[]): number => lines.reduce((sum, { look }) => sum + look.leading, 0);

/** @returns a sentence in lines with where it stands */
export const saidLines = (said: Said, look: TextLook, width: number, composing: Composing): readonly Line[] =>
  linesOf(said.told, look, width, composing);
