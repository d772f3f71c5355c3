import { listed } from '../../../measure/words.ts';
import { sentence } from '../../sentences.ts';
import type { Lying, Outward, PressingPhrases, Toward } from '../pressing.ts';
import type { Side } from '../said.ts';
import { numbers } from './numbers.ts';

const toward = (way: Toward): string => (typeof way === 'string' ? way : `toward ${way.cloth}`);

interface Custom {
  /** Every seam, where all lie so. */
  readonly all: (seams: number) => string;
  readonly outward: string;
  readonly inward: string;
}

const OUTWARD: Readonly<Record<Outward, Custom>> = {
  round: { all: () => 'every seam outward, away from the centre', outward: 'outward', inward: 'toward the centre' },
  'small triangles': {
    all: () => 'toward the small triangles',
    outward: 'toward the small triangle',
    inward: 'toward the large triangle',
  },
  corners: {
    all: (seams) => `toward the corner${seams > 1 ? 's' : ''}`,
    outward: 'toward the corner',
    inward: 'toward the middle',
  },
  'side triangles': {
    all: () => 'toward the side triangles',
    outward: 'toward the side triangle',
    inward: 'toward the middle triangle',
  },
  'sewn on': {
    all: () => 'each seam toward the piece just sewn on',
    outward: 'toward what was just sewn on',
    inward: 'toward what was there before',
  },
  crossing: {
    all: () => 'each seam to one side before another crosses it',
    outward: 'toward what was just sewn on',
    inward: 'toward what was there before',
  },
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
  outward: (what, seams) => `Press ${OUTWARD[what].all(seams)}.`,
  otherwise: (what, way, seams) => `Press ${every(seams)} ${way === 'open' ? way : OUTWARD[what].inward}.`,
  each: (what, lying) =>
    `Press the seams, in the order in which they are sewn: ${byWay(lying, (way) => (way === 'open' ? way : OUTWARD[what][way]))}.`,
  toward: (name) => sentence(`Press toward ${name}`),
  towardPlain: 'Press toward the plain pieces.',
  oneWay: (way, seams) => `Press the seam${seams > 1 ? 's' : ''} ${side(way)}.`,
  middle: (way) => `Press ${way === 'away' ? 'away from' : way} the middle.`,
  counted: (from, lying) => `Press the seams, counted from the ${from}: ${byWay(lying, side)}.`,
};
