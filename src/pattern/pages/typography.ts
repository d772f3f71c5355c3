import { contrast } from '../../block/colour/lightness.ts';
import type { HouseStyle } from '../house-style.ts';
import { INK, QUIET } from './looks.ts';
import type { Weight } from './page.ts';

/** How a line of text is set; sizes in points. */
export interface TextLook {
  readonly size: number;
  /** From one baseline to the next. */
  readonly leading: number;
  readonly weight: Weight;
  readonly color: string;
}

/** All sizes of a document, each about a quarter above the one before, in lines that are whole or half lines of the body. */
export interface Typography {
  readonly body: TextLook;
  readonly strong: TextLook;
  readonly quiet: TextLook;
  readonly caption: TextLook;
  readonly cell: TextLook;
  readonly head: TextLook;
  readonly group: TextLook;
  readonly heading: Readonly<Record<2 | 3, TextLook>>;
  readonly number: TextLook;
  readonly section: TextLook;
  readonly value: TextLook;
  readonly title: TextLook;
  readonly foot: TextLook;
  readonly alarm: TextLook;
  /** Half a line of the body: what space between things is counted in. */
  readonly half: number;
  /** How much larger than usual the letters of figures are. */
  readonly letters: number;
  /** Lines of text are no longer, so that the eye finds the next. */
  readonly longest: number;
}

const look = (size: number, leading: number, weight: Weight = 'regular', color: string = INK): TextLook => ({
  size,
  leading,
  weight,
  color,
});

const USUAL: Typography = {
  body: look(10.5, 15),
  strong: look(10.5, 15, 'strong'),
  quiet: look(9, 12.5, 'regular', QUIET),
  caption: look(8.5, 11.25, 'regular', QUIET),
  cell: look(9.5, 12.5),
  head: look(8, 11, 'strong', QUIET),
  group: look(10.5, 14, 'strong'),
  heading: { 2: look(14, 18, 'strong'), 3: look(11.5, 15, 'strong') },
  number: look(13, 15, 'strong', '#ffffff'),
  section: look(23, 27, 'strong'),
  value: look(13, 16.5, 'strong'),
  title: look(46, 48, 'strong'),
  foot: look(8, 11, 'regular', QUIET),
  alarm: look(11.5, 15, 'strong', '#ffffff'),
  half: 7.5,
  letters: 1,
  longest: 430,
};

/** Sixteen points: what large print begins with (American Printing House for the Blind asks for 18, Clear Print for 12; from memory). */
const LARGE: Typography = {
  body: look(16, 22),
  strong: look(16, 22, 'strong'),
  quiet: look(14, 19, 'regular', QUIET),
  caption: look(13, 17, 'regular', INK),
  cell: look(14.5, 19),
  head: look(12.5, 17, 'strong', INK),
  group: look(16, 21, 'strong'),
  heading: { 2: look(20, 25, 'strong'), 3: look(17, 22, 'strong') },
  number: look(18, 22, 'strong', '#ffffff'),
  section: look(30, 36, 'strong'),
  value: look(18, 23, 'strong'),
  title: look(52, 54, 'strong'),
  foot: look(12, 16, 'regular', INK),
  alarm: look(17, 22, 'strong', '#ffffff'),
  half: 11,
  letters: 1.5,
  longest: 600,
};

/** @returns the sizes of a document in a house style */
export const typographyOf = ({ letters }: Pick<HouseStyle, 'letters'>): Typography => (letters === 'large' ? LARGE : USUAL);

/** Hairlines between rows, and the ground of boxes: light enough not to be read, dark enough to be printed. */
export const HAIR = { color: '#a8a8a8', width: 0.4 } as const;
export const PALE = '#f3f2ef';

/**
 * @returns the colour of rules and numbers: the most colourful of the pattern's own fabrics among those that white letters stand out from
 * (4.5 to 1: W3C, Web Content Accessibility Guidelines 2.2, contrast minimum); black ink where there is none, or no colour is printed
 */
export function accentOf(colors: Iterable<string>, ink: HouseStyle['ink']): string {
  if (ink === 'hatches') return INK;
  const colourful = (color: string): number => {
    const parts = [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));
    return Math.max(...parts) - Math.min(...parts);
  };
  const fit = [...colors].filter((color) => contrast(color, '#ffffff') >= 4.5).sort((a, b) => colourful(b) - colourful(a));
  return fit[0] ?? INK;
}
