import { listed } from '../../../measure/words.ts';
import { sentence } from '../../sentences.ts';
import type { Lying, Outward, PressingPhrases, Toward } from '../pressing.ts';
import type { Side } from '../said.ts';
import { numbers } from './numbers.ts';

const toward = (way: Toward): string => (typeof way === 'string' ? way : `toward ${way.cloth}`);

/** Every seam as custom has it; one as custom has it; one the other way. */
type Custom = readonly [all: string, outward: string, inward: string];

const ONTO = ['toward what was just sewn on', 'toward what was there before'] as const;

const OUTWARD: Readonly<Record<Outward, Custom>> = {
  round: ['every seam outward, away from the centre', 'outward', 'toward the centre'],
  'small triangles': ['toward the small triangles', 'toward the small triangle', 'toward the large triangle'],
  corners: ['toward the corners', 'toward the corner', 'toward the middle'],
  'side triangles': ['toward the side triangles', 'toward the side triangle', 'toward the middle triangle'],
  'sewn on': ['each seam toward the piece just sewn on', ...ONTO],
  crossing: ['each seam to one side before another crosses it', ...ONTO],
};

const every = (seams: number): string => (seams > 1 ? 'every seam' : 'the seam');

/** @returns "1–3 to the left, 4 to the right and 5 open" */
function byWay<Way>(lying: readonly Lying<Way>[], way: (way: Way) => string): string {
  const told = lying.map((each) => `${numbers(each.seams)} ${way(each.way)}`);
  return told.length > 2 ? listed(told) : told.join(', ');
}

const side = (way: 'open' | Side): string => (way === 'open' ? way : `to the ${way}`);

export const pressing: PressingPhrases = {
  flat: 'Press flat.',
  seam: (way) => sentence(`Press ${toward(way)}`),
  hourglass: (first, last) => `Press the first seam${first.length > 1 ? 's' : ''} ${listed(first.map(toward))}, the last one ${last}.`,
  split: (short, long) =>
    sentence(
      `Press the short seam ${toward(short)}, the long one ${long === 'open' ? long : `${long === 'away' ? 'away from' : long} the large triangle`}`,
    ),
  outward: (what, seams) => `Press ${OUTWARD[what][what === 'corners' && seams === 1 ? 1 : 0]}.`,
  otherwise: (what, way, seams) => `Press ${every(seams)} ${way === 'open' ? way : OUTWARD[what][2]}.`,
  each: (what, lying) =>
    `Press the seams, in the order in which they are sewn: ${byWay(lying, (way) => (way === 'open' ? way : OUTWARD[what][way === 'outward' ? 1 : 2]))}.`,
  toward: (name) => sentence(`Press toward ${name}`),
  towardPlain: 'Press toward the plain pieces.',
  oneWay: (way, seams) => `Press the seam${seams > 1 ? 's' : ''} ${side(way)}.`,
  middle: (way) => `Press ${way === 'away' ? 'away from' : way} the middle.`,
  counted: (from, lying) => `Press the seams, counted from the ${from}: ${byWay(lying, side)}.`,
};
