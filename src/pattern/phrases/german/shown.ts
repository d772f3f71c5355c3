import type { Cut } from '../../../cutting/cut.ts';
import { METHODS_IN_GERMAN } from '../../../cutting/phrases/german.ts';
import { listed } from '../../../measure/german-words.ts';
import { capital } from '../../../measure/words.ts';
import { sentence } from '../../../sewing/sentences.ts';
import type { FigureName, PatternPhrases, UnitsOf } from '../pattern-phrases.ts';
import type { WrittenPhrases } from '../written-phrases.ts';
import { also } from './also.ts';
import { foundations } from './foundations.ts';
import { VALUES_IN_GERMAN } from './values.ts';

const goesInto = (units: readonly (string | null)[]): string => `für ${listed(units.map((unit) => unit ?? 'den Block'))}`;
const inAll = ({ letter, one }: UnitsOf): string => (one ? `in Einheit ${letter}` : `in den Einheiten ${letter}`);
const runOf = ([from, to]: readonly [number, number]): readonly string[] => (to - from > 1 ? [`${from} bis ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`]);

const SHAPES: Readonly<Record<Cut['shape'], readonly [one: string, many: string]>> = {
  square: ['Quadrat', 'Quadrate'],
  rectangle: ['Rechteck', 'Rechtecke'],
  template: ['Schablonenteil', 'Schablonenteile'],
};

const SUBCUTS: Readonly<Record<Cut['subcut'], string>> = {
  none: '',
  once: ', einmal diagonal durchgeschnitten',
  twice: ', zweimal diagonal durchgeschnitten',
  'head to tail': ', Kopf an Fuß in Dreiecke geschnitten',
};

const ACTS = {
  cut: ['gerader Schnitt', 'gerade Schnitte'],
  line: ['angezeichnete Linie auf einem Quadrat', 'angezeichnete Linien auf Quadraten'],
  start: ['begonnene Naht', 'begonnene Nähte'],
  match: ['Treffpunkt', 'Treffpunkte'],
  press: ['gebügelte Naht', 'gebügelte Nähte'],
  apart: ['Schnitt nach dem Nähen', 'Schnitte nach dem Nähen'],
  trim: ['zurückgeschnittene Einheit', 'zurückgeschnittene Einheiten'],
} as const;

const FIGURES: Readonly<Record<Exclude<FigureName, 'narrowest' | 'straight cuts'>, readonly [string, string]>> = {
  pieces: ['Teile', 'Stoffteile in einem Block.'],
  seams: ['Nähte', 'Gerade Nähte in einem Block.'],
  'points to match': ['Treffpunkte', 'Stellen, an denen Nähte von beiden Seiten einer Naht aufeinandertreffen müssen.'],
  'points apart': ['Treffpunkte, die nicht ineinandergreifen', 'Die Nähte, die dort ineinander übergehen, sind nicht gegeneinander gebügelt; sie brauchen eine Stecknadel.'],
  layers: ['Lagen an der dicksten Stelle', 'Stofflagen, gefaltet wie gebügelt: je mehr, desto schwerer lässt sich darüber nähen und quilten.'],
  bias: ['Teile mit schrägem Fadenlauf am Außenrand', 'Ein solcher Rand dehnt sich, bis der Block an seine Nachbarn genäht ist.'],
  'bias seams': ['Nähte im schrägen Fadenlauf', 'Dort wird eine schräg geschnittene Kante genäht: flach hinlegen, nicht ziehen.'],
};

/** What is told of a pattern when somebody asks for it, in German. */
export const SHOWN_IN_GERMAN: Omit<PatternPhrases, keyof WrittenPhrases> = {
  values: VALUES_IN_GERMAN,
  method: METHODS_IN_GERMAN,

  refusedPin: (number, says) => `Vorgabe ${number} wird nicht befolgt: ${says}`,

  large: (ids, much, off, kept) => {
    const where =
      off.length === 0
        ? 'und in keinem Schritt wird das zurückgeschnitten'
        : `zurückgeschnitten wird ${listed(off.map(({ step, size, between }) => `in Schritt ${step} auf ${size}${between ? ' (zwischen zwei Strichen)' : ''}`))}` +
          (kept ? ', aber nicht dort, wo Teile davon unverändert in den Block kommen' : '');
    return sentence(`${ids.length === 1 ? 'Zuschnitt' : 'Zuschnitte'} ${listed(ids)} ${ids.length === 1 ? 'ist' : 'sind'} ${much} größer als nötig, ${where}`);
  },

  goesInto,
  cutOnce: 'einmal diagonal durchschneiden',
  cutTwice: 'zweimal diagonal durchschneiden',
  headToTail: (strips, { n, said }) => `${strips === 1 ? '' : 'jeden Streifen '}Kopf an Fuß in ${said} ${n === 1 ? 'Dreieck' : 'Dreiecke'} schneiden`,
  segments: ({ said }) => `in Streifensätzen zu je ${said} Segmenten`,
  spare: ({ said }) => `${said} übrig`,
  diagonals: (falling, rising) => {
    const hands = [
      ...(falling ? [`${falling.said} von oben links nach unten rechts`] : []),
      ...(rising ? [`${rising.said} von unten links nach oben rechts`] : []),
    ];
    return `Rechte Stoffseite oben, kurze Seite unten: ${listed(hands)} durchschneiden.`;
  },
  corners: (corners) =>
    `Ecken ohne Nahtzugabe, jeweils von links und von oben: ${corners.map(([across, down]) => `${across} und ${down}`).join('; ')}. Ringsum die Nahtzugabe zugeben.`,

  offMarks: (lengths, more) => listed(more === null ? lengths : [...lengths, `${more.said} weitere`]),
  shortCut: ({ n, said }, shape, size, subcut, units) => `${said} ${SHAPES[shape][n === 1 ? 0 : 1]} ${size}${SUBCUTS[subcut]}, ${goesInto(units)}`,
  fromScraps: 'aus Resten',
  tooNarrow: (narrowest, seam) => `Das schmalste Teil wäre fertig nur ${narrowest} breit, weniger als die Nahtzugaben von ${seam} dahinter.`,

  hasUpAndDown: (cloth) => `${cloth} hat ein Oben und ein Unten.`,
  laidTogether: (method, units) => {
    const start = `${capital({ two: 'zwei', four: 'vier', eight: 'acht' }[method])} auf einmal genäht und gleich hingelegt,`;
    const how =
      method === 'two'
        ? `steht das Muster ${units.one ? `in jeder zweiten Einheit ${units.letter}` : `in jeder zweiten der Einheiten ${units.letter}`} auf dem Kopf`
        : `läuft das Muster ${inAll(units)} in alle Richtungen`;
    return `${start} ${how}; soll es aufrecht stehen, die Dreiecke einzeln zuschneiden.`;
  },
  turned: (sideways, down, units) => {
    const ways: readonly (readonly [string, string])[] = [
      ...(sideways ? [[sideways.said, 'quer'] as const] : []),
      ...(down ? [[down.said, 'auf dem Kopf'] as const] : []),
    ];
    const where = units.one ? `Einheit ${units.letter}` : `der Einheiten ${units.letter}`;
    return (
      `Gleich genäht, steht das Muster im Block ${listed(ways.map(([many, way], i) => `bei ${many} ${i === 0 ? `${where} ` : ''}${way}`))}; ` +
      'soll es aufrecht stehen, die Teile für jeden Platz passend hinlegen, bevor sie diagonal geschnitten und genäht werden.'
    );
  },
  turnedSets: (sideways, down, units) => {
    const ways = [...(sideways ? [`bei ${sideways.said} quer`] : []), ...(down ? [`bei ${down.said} auf dem Kopf`] : [])];
    return (
      `Aus Streifensätzen geschnitten und darum alle gleich, steht das Muster ${units.one ? `in Einheit ${units.letter}` : `in den Einheiten ${units.letter}`} ` +
      `${listed(ways)}; soll es aufrecht stehen, sie aus einzelnen Teilen nähen.`
    );
  },
  flipped: (units) =>
    `Die Ecken ${units.one ? `von Einheit ${units.letter}` : `der Einheiten ${units.letter}`} werden umgeklappt: die Quadrate mit dem Muster quer auflegen und eines ` +
    'mit einer Stecknadel ausprobieren, dann steht es zum Schluss aufrecht.',

  family: ({ said }) => `Reste von ${said} Stoffen`,
  equalPairs: (cloth, { n, said }, why, enough) => {
    const pairs =
      n === 1 ? `${said} Paar Teile aus demselben Stoff berührt sich an einer Naht` : `${said} Paare von Teilen aus demselben Stoff berühren sich an einer Naht`;
    const would = `${enough.said} Stoffe würden genügen`;
    if (why === 'one square') {
      return `${cloth}: ${pairs}, weil alles aus einem Quadrat vom selben Stoff ist: jedes Teil für sich zuschneiden oder mehr Stoffe nehmen; ${would}.`;
    }
    if ('touching' in why) return `${cloth}: ${pairs}, weil ${why.touching.said} der Teile einander alle berühren; ${would}.`;
    const cannot = why.proved
      ? `${why.prints.said} Stoffe lassen sich in diesem Block nicht auseinanderhalten`
      : `mit ${why.prints.said} Stoffen wurde keine Verteilung gefunden, die sie auseinanderhält`;
    return `${cloth}: ${pairs}; ${cannot}, ${would}.`;
  },
  heldPairs: (cloth, { n, said }) =>
    n === 1
      ? `${cloth}: ${said} Paar Teile aus demselben Stoff berührt sich an einer Naht, weil Stoffe festgehalten sind.`
      : `${cloth}: ${said} Paare von Teilen aus demselben Stoff berühren sich an einer Naht, weil Stoffe festgehalten sind.`,
  lostHeld: (cloth, { n, said }) =>
    `${cloth}: ${said} ${n === 1 ? 'Teil behält seinen festgehaltenen Stoff' : 'Teile behalten ihren festgehaltenen Stoff'} nicht, denn alles aus einem Quadrat ist vom selben Stoff.`,
  equalCorners: (cloth, { n, said }) =>
    `${cloth}: Teile aus demselben Stoff berühren sich an keiner Naht, aber an ${n === 1 ? 'einer Ecke' : `${said} Ecken`}.`,
  idlePrints: (cloth, { n, said }) =>
    `${cloth}: ${said} ${n === 1 ? 'Stoff wird' : 'Stoffe werden'} nicht gebraucht, denn es gibt weniger Teile als Stoffe.`,
  spreadAlike: (cloth, { said }) => `${cloth}: In allen ${said} Blöcken sind die Stoffe gleich verteilt.`,
  ofEachPrint: (count, prints) => `je ${count.said} aus ${prints.said} Stoffen`,
  ofPrints: ({ said }, prints) => {
    const numbers = prints.flatMap(runOf);
    return prints.length === 1 && prints[0]![0] === prints[0]![1] ? `${said} aus Stoff ${numbers[0]!}` : `je ${said} aus den Stoffen ${listed(numbers)}`;
  },

  none: 'keine',
  figure: (name, { least, blocks }) => {
    if (name === 'narrowest') return ['Schmalstes Teil', `Fertig gemessen; unter ${least} lässt sich ein Teil nur schwer genau nähen.`];
    if (name === 'straight cuts') {
      return [
        blocks.n === 1 ? 'Gerade Schnitte' : `Gerade Schnitte für ${blocks.said} Blöcke`,
        'Vor dem Nähen, vom Stoff, wie er ausgelegt ist; um eine Schablone einer an jeder Kante.',
      ];
    }
    return FIGURES[name];
  },
  apart: (sameWay, open) => [...(sameWay ? [`${sameWay.said} gleich gerichtet`] : []), ...(open ? [`${open.said} auseinandergebügelt`] : [])].join(', '),
  act: (act, unit, number) => {
    if (act === 'inch') return number === 'one' ? `${unit === 'in' ? 'Zoll' : 'Zoll (2,54 cm)'} Naht` : `${unit === 'in' ? 'Zoll' : 'cm'} Naht`;
    return ACTS[act][number === 'one' ? 0 : 1];
  },
  stage: { cutting: 'Zuschneiden und Anzeichnen', sewing: 'Nähen', pressing: 'Bügeln', trimming: 'Auseinander- und Zurückschneiden' },
  assumed: 'Für diese Zeiten gibt es keine Quelle: Sie sind aus der Erfahrung angenommen, und bei jeder sind es andere.',

  also,
  foundations,
  panel: {
    'one piece': 'Ein Stück',
    'lay out and sew': 'Auslegen und nähen',
    'put together': 'In der Reihenfolge der Zahlen zusammennähen',
    web: 'Spalte für Spalte in einer Kette genäht, die Fäden nicht durchgeschnitten; dann die langen Nähte',
    foundations: 'Die Vorlagen mit der bedruckten Seite oben: spiegelverkehrt',
    sections: 'Die Abschnitte von vorn: zusammennähen',
    'right sides together': 'Rechts auf rechts',
    'seams nested': 'Nähte ineinandergreifend',
    'seams matched': 'Naht auf Naht',
    'both sides': 'Beiderseits nähen, dazwischen schneiden',
    'on each half': 'An jeder Hälfte: beiderseits nähen, dazwischen schneiden',
    'in four': 'Nähen, dann vierteln und diagonal schneiden',
    'flip a corner': 'Auf der Linie nähen, außerhalb abschneiden, umklappen',
    'head to tail': 'Kopf an Fuß schneiden',
    'strips side by side': 'Streifen nebeneinander nähen',
    'cut across': 'Bügeln, quer schneiden',
    'a segment': 'Ein Segment',
    press: 'Bügeln',
    'press and trim': 'Bügeln und zurückschneiden',
  },
};
