import type { Figures, Flow, Paragraph } from '../document/content.ts';
import type { Composing } from './composing.ts';
import { figureRows, scaleIn } from './figure-rows.ts';
import { paragraphRows } from './paragraph-rows.ts';
import { heightOfRows, stackedItems, type Row } from './rows.ts';

/** A column from this width on, in half lines, holds pictures beside their words. */
const ROOMY = 50;
/** What the words take of it, at most so much in half lines. */
const WORDS = 0.38;
const MOST_WORDS = 42;
/** Between words and pictures, in half lines. */
const BETWEEN = 2.2;
/** Pictures may be so much smaller for it than under one another with the words. */
const SMALLER = 0.62;
/** One picture alone has a right to its size. */
const SINGLE = 0.95;
/** How much larger pictures may be beside many words. */
const LARGER = [1.7, 1.45, 1.2];
/** Words are no higher than this share of a page. */
const HIGHEST = 0.6;

/** What stands side by side: a step's words, and its pictures. */
interface Pair {
  readonly words: readonly Paragraph[];
  readonly figures: Figures;
  /** Whether the pictures come before some of the words, to be read in that order. */
  readonly before: number;
}

/** @returns the words and the pictures of what belongs together; null where it is more than that */
export function pairOf(items: readonly Flow[]): Pair | null {
  const figures = items.filter((item) => item.flow === 'figures');
  const words = items.filter((item) => item.flow === 'paragraph');
  if (figures.length !== 1 || figures[0]!.figures.length === 0 || words.length === 0 || figures.length + words.length < items.length)
    return null;
  return { words, figures: figures[0]!, before: items.indexOf(figures[0]!) };
}

/** @returns words at the left and their pictures at the right as one row; null where that makes either too narrow */
export function besideRow({ words, figures, before }: Pair, width: number, composing: Composing): Row | null {
  const { type, height } = composing;
  if (width < type.half * ROOMY) return null;
  const left = Math.min(width * WORDS, type.half * MOST_WORDS);
  const gap = type.half * BETWEEN;
  const right = width - left - gap;
  if (scaleIn(figures, right, composing) < scaleIn(figures, width, composing) * (figures.figures.length > 1 ? SMALLER : SINGLE))
    return null;
  const paragraphs = words.map((paragraph) => paragraphRows(paragraph, left, composing));
  const text = paragraphs.flat();
  const usual = figureRows(figures, right, composing);
  const high = Math.max(heightOfRows(text), heightOfRows(usual));
  if (high > height * HIGHEST) return null;
  // Beside many words pictures may be larger at no cost.
  const larger = LARGER.map((by) => figureRows({ ...figures, most: figures.most * by }, right, composing)).find(
    (rows) => heightOfRows(rows) <= high,
  );
  const pictures = larger ?? usual;
  // The pictures' upper edge is level with small letters, not with the line above them.
  const drop = type.half * 0.45;
  return {
    height: Math.max(heightOfRows(text), heightOfRows(pictures) + drop),
    above: text[0]?.above ?? 0,
    held: false,
    at: (x, y) => {
      const items = stackedItems(pictures, x + left + gap, y + drop);
      const [first, second] = [paragraphs.slice(0, before).flat(), paragraphs.slice(before).flat()];
      const under = first.length === 0 ? 0 : heightOfRows(first) + (second[0]?.above ?? 0);
      return [...stackedItems(first, x, y), ...items, ...stackedItems(second, x, y + under)];
    },
  };
}
