import { listed } from '../../../measure/german-words.ts';
import type { Lying, Outward, PressingPhrases, Toward } from '../pressing.ts';
import type { Side } from '../said.ts';
import { numbers } from './numbers.ts';
import { DIRECTIONS } from './things.ts';

const OPEN = 'auseinander';

/** @returns "nach links bügeln"; an open seam is pressed in one word */
const pressed = (way: string): string => `${way}${way === OPEN ? '' : ' '}bügeln`;

const toward = (way: Toward): string => (way === 'open' ? OPEN : way === 'to one side' ? 'zu einer Seite' : `zu ${way.cloth} hin`);

interface Custom {
  /** Every seam, where all lie so. */
  readonly all: (seams: number) => string;
  readonly outward: string;
  readonly inward: string;
}

const OUTWARD: Readonly<Record<Outward, Custom>> = {
  round: { all: () => 'Jede Naht nach außen bügeln, von der Mitte weg.', outward: 'nach außen', inward: 'zur Mitte hin' },
  'small triangles': {
    all: () => 'Zu den kleinen Dreiecken hin bügeln.',
    outward: 'zum kleinen Dreieck hin',
    inward: 'zum großen Dreieck hin',
  },
  corners: {
    all: (seams) => `${seams > 1 ? 'Zu den Ecken' : 'Zur Ecke'} hin bügeln.`,
    outward: 'zur Ecke hin',
    inward: 'zur Mitte hin',
  },
  'side triangles': {
    all: () => 'Zu den seitlichen Dreiecken hin bügeln.',
    outward: 'zum seitlichen Dreieck hin',
    inward: 'zum mittleren Dreieck hin',
  },
  'sewn on': {
    all: () => 'Jede Naht zum zuletzt angenähten Teil hin bügeln.',
    outward: 'zum zuletzt Angenähten hin',
    inward: 'zum vorher Genähten hin',
  },
  crossing: {
    all: () => 'Jede Naht zu einer Seite bügeln, bevor eine andere sie kreuzt.',
    outward: 'zum zuletzt Angenähten hin',
    inward: 'zum vorher Genähten hin',
  },
};

const every = (seams: number): string => (seams > 1 ? 'Alle Nähte' : 'Die Naht');

/** @returns "1–3 nach links, 4 nach rechts und 5 auseinander" */
function byWay<Way>(lying: readonly Lying<Way>[], way: (way: Way) => string): string {
  const told = lying.map((each) => `${numbers(each.seams)} ${way(each.way)}`);
  return told.length > 2 ? listed(told) : told.join(', ');
}

const side = (way: 'open' | Side): string => (way === 'open' ? OPEN : DIRECTIONS[way]);

const LARGE = { open: OPEN, toward: 'zum großen Dreieck hin', away: 'vom großen Dreieck weg' } as const;

export const pressing: PressingPhrases = {
  flat: 'Flach bügeln.',
  seam: (way) => `Die Naht ${pressed(toward(way))}.`,
  hourglass(first, last) {
    const way = `${first.length > 1 ? 'Die ersten Nähte' : 'Die erste Naht'} ${pressed(listed(first.map(toward)))}`;
    return `${way}, die letzte ${toward(last)}.`;
  },
  split: (short, long) => `Die kurze Naht ${toward(short)}, die lange ${pressed(LARGE[long])}.`,
  outward: (what, seams) => OUTWARD[what].all(seams),
  otherwise: (what, way, seams) => `${every(seams)} ${pressed(way === 'open' ? OPEN : OUTWARD[what].inward)}.`,
  each: (what, lying) =>
    `Die Nähte bügeln, in der Reihenfolge, in der sie genäht werden: ${byWay(lying, (way) => (way === 'open' ? OPEN : OUTWARD[what][way]))}.`,
  toward: (name, seams) => `${every(seams)} zu ${name} hin bügeln.`,
  towardPlain: 'Zu den Teilen aus einem Stück hin bügeln.',
  oneWay: (way, seams) => `${every(seams)} ${pressed(side(way))}.`,
  middle: (way) => (way === 'away' ? 'Von der Mitte weg bügeln.' : 'Zur Mitte hin bügeln.'),
  counted: (from, lying) => `Die Nähte bügeln, von ${from === 'left' ? 'links' : 'oben'} gezählt: ${byWay(lying, side)}.`,
};
