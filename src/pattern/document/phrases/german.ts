import { listed } from '../../../measure/german-words.ts';
import { capital } from '../../../measure/words.ts';
import { TEMPLATES_IN_GERMAN } from '../../phrases/german/templates.ts';
import { KEPT } from '../../telling/kept.ts';
import type { CutWords, DocumentPhrases } from './phrases.ts';

const several = (n: number, one: string, many: string): string => `${KEPT.count(n)} ${n === 1 ? one : many}`;

/** What a cloth is called: the nominative. */
const FORMS = {
  'by length': 'Stoff vom Ballen',
  'fat quarter': 'Fat Quarter',
  'fat eighth': 'Fat Eighth',
  'precut strip': 'fertig geschnittener Streifen',
  'precut square': 'fertig geschnittenes Quadrat',
  own: 'vorhandener Stoff',
} as const;

const SHAPES: Readonly<Record<Exclude<CutWords['shape'], 'template'>, readonly [one: string, many: string]>> = {
  square: ['Quadrat', 'Quadrate'],
  rectangle: ['Rechteck', 'Rechtecke'],
  strip: ['Streifen', 'Streifen'],
};

/** What a published pattern says, in German. */
export const GERMAN_DOCUMENT: DocumentPhrases = {
  tag: 'de',
  titles: {
    skills: 'Was man können sollte',
    materials: 'Material',
    cutting: 'Zuschneiden',
    cloth: 'Schnittpläne',
    units: 'Die Einheiten nähen',
    assembly: 'Den Block zusammensetzen',
    pressing: 'Bügeln',
    'sizes to check': 'Maße prüfen',
    templates: 'Schablonen',
    'colouring page': 'Farben ausprobieren',
    'other sizes': 'Andere Größen',
    care: 'Vorsicht',
    notes: 'Notizen',
  },
  noName: 'Block',
  layout: { page: '{1} von {2}', continued: '{1}, Fortsetzung' },

  cover: {
    facts: { finished: 'Fertig', unfinished: 'Mit Nahtzugabe', pieces: 'Teile', units: 'Verschiedene Einheiten', blocks: 'Blöcke' },
    maker: (name) => `Von ${name}.`,
    picture: (name) => `${name}, der fertige Block in seinen Stoffen.`,
    beforeCutting: 'Vor dem Zuschneiden',
    beforeBuying: 'Vor dem Einkaufen',
    doNotCut: 'Noch nicht zuschneiden',
    notTheDrawing: 'Exakt nachgerechnet ergibt diese Anleitung nicht den abgebildeten Block.',
  },

  skills: {
    intro: 'Für diesen Block sollte man vertraut sein mit:',
    rotary: 'Streifen, Quadrate und Rechtecke mit Lineal und Rollschneider zuschneiden.',
    method: (method, kinds) => {
      switch (method) {
        case 'one-at-a-time':
          return `${kinds} aus einzelnen Dreiecken, an einer Kante genäht, die sich dehnt.`;
        case 'two-at-a-time':
          return `${kinds}, zwei auf einmal: zwei Quadrate beiderseits einer angezeichneten Linie zusammennähen und auseinanderschneiden.`;
        case 'four-at-a-time':
          return `${kinds}, vier auf einmal aus einem großen und vier kleinen Quadraten.`;
        case 'eight-at-a-time':
          return `${kinds}, acht auf einmal aus zwei großen Quadraten.`;
        case 'stitch-and-flip':
          return `${kinds} durch Annähen und Umklappen: ein Quadrat auf seiner Diagonale aufnähen, abschneiden und umklappen.`;
        case 'triangles':
          return `${kinds} aus Quadraten und Rechtecken, die in Dreiecke geschnitten werden; deren lange Kanten können sich dehnen.`;
        case 'triangles-from-strips':
          return `${kinds} aus Dreiecken, die versetzt aus Streifen geschnitten werden.`;
        case 'strip-sets':
          return `${kinds} aus Streifensätzen: Streifen nebeneinander nähen und quer zerschneiden.`;
        case 'pieces':
          return `${kinds}, Teil für Teil genäht.`;
        case 'template':
          return `${kinds} aus Teilen, die nach einer gedruckten Schablone geschnitten werden.`;
      }
    },
    straightSeams: 'Gerade Nähte mit gleichmäßiger Nahtzugabe; mehr braucht es nicht.',
    partial: (seams) =>
      seams === 1
        ? 'Eine Teilnaht, die in zwei Abschnitten genäht wird.'
        : `${KEPT.count(seams)} Teilnähte, die in zwei Abschnitten genäht werden.`,
    templates: (outlines) => `Nach ${several(outlines, 'gedruckter Schablone', 'gedruckten Schablonen')} zuschneiden.`,
    bias: (seams) =>
      seams === 1
        ? 'Eine Naht an einer Kante im schrägen Fadenlauf, die sich dehnt, wenn man an ihr zieht.'
        : `${KEPT.count(seams)} Nähte an Kanten im schrägen Fadenlauf, die sich dehnen, wenn man an ihnen zieht.`,
    points: (points) => `${several(points, 'Treffpunkt', 'Treffpunkte')} von Nähten genau treffen.`,
    loose: (points) =>
      points === 1
        ? 'An einem davon greifen die Nähte nicht ineinander; er braucht eine Stecknadel.'
        : `An ${KEPT.count(points)} davon greifen die Nähte nicht ineinander; sie brauchen eine Stecknadel.`,
    trimming: (amount) => `Einheiten mit schrägen Nähten um ${amount} zu groß nähen und auf Maß zurückschneiden.`,
    smallest: (width) => `Das schmalste Teil ist fertig ${width} breit.`,
  },

  materials: {
    heads: ['Stoff', 'Bedarf', 'Für'],
    added: (what) => `Darin enthalten: ${what}.`,
    own: (n, size) => `Zuerst verbraucht: ${several(n, 'vorhandenes Stück', 'vorhandene Stücke')} von ${size}.`,
    directional: 'Das Muster hat ein Oben und ein Unten.',
    width: (width) => `Berechnet für eine nutzbare Stoffbreite von ${width}.`,
    widthOf: (cloth, width) => `${cloth} ist für eine nutzbare Breite von ${width} berechnet.`,
    block: 'den Block',
    alsoNeeded: 'Außerdem',
    tools: (unit, mark) =>
      `Rollschneider, Schneidematte und ein Lineal mit ${unit === 'in' ? 'Zolleinteilung' : 'Zentimetereinteilung'} in Schritten ` +
      `von ${mark}.`,
    sewing: (seam) => `Nähmaschine mit Füßchen oder Führung für eine Nahtzugabe von ${seam}, Garn, Stecknadeln und Bügeleisen.`,
    pencil: 'Bleistift oder Markierstift für Linien auf der linken Stoffseite.',
    forTemplates: 'Papier oder dünner Karton für die Schablonen, Schere und Bleistift.',
    backing: 'Dies ist die Anleitung für einen Block: Stoff für Ränder, Rückseite und Einfassung ist nicht mitgerechnet.',
  },

  cutting: {
    heads: ['Nr.', 'Zuschnitt', 'Danach', 'Für'],
    intro: 'Bei jedem Stoff stehen die größten Teile zuerst: in der Reihenfolge der Liste zuschneiden.',
    cuts: ({ quantity, shape, size, named }) =>
      shape === 'template'
        ? `${several(quantity, 'Teil', 'Teile')} nach Schablone ${named} (${size})`
        : `${several(quantity, ...SHAPES[shape])}, ${size}`,
    once: (triangles) => `einmal diagonal durchschneiden: ${several(triangles, 'Dreieck', 'Dreiecke')}`,
    twice: (triangles) => `zweimal diagonal durchschneiden: ${several(triangles, 'Dreieck', 'Dreiecke')}`,
    segments: (sets, each, wide) =>
      `zu Streifensätzen genäht, ${sets === 1 ? '' : 'jeder '}quer in ${several(each, 'Segment', 'Segmente')} von ${wide} Breite ` +
      'geschnitten',
    spare: (n, what) => `${what === 'units' ? several(n, 'Einheit', 'Einheiten') : several(n, 'Dreieck', 'Dreiecke')} übrig`,
    nested: (strips, each, measure) =>
      `${strips === 1 ? '' : 'jeden '}versetzt in ${several(each, 'Dreieck', 'Dreiecke')} schneiden, an den Kanten abwechselnd ${measure}`,
    block: 'den Block',
    strips: (bands) =>
      `Über die ganze Breite: ${listed(bands.map(({ count, width }) => `${several(count, 'Streifen', 'Streifen')}, ${width}`))}`,
    joined: (line, n, widths, length) =>
      `Zuschnitt ${line}: ${several(n, 'Teil', 'Teile')}, je aus ${KEPT.count(widths)} Stoffbreiten von ${length} Länge, die ` +
      'zuerst aneinandergenäht werden',
    unplaced: (line, n) => `${several(n, 'Teil', 'Teile')} von Zuschnitt ${line}: auf diesem Stoff ist kein Platz, größeren nehmen`,
  },

  rules: {
    title: 'Gut zu wissen',
    seam: (seam) => `Alle Zuschnittmaße enthalten ringsum eine Nahtzugabe von ${seam}.`,
    rounded: (mark) => `Maße zwischen zwei Strichen sind auf die nächsten ${mark} aufgerundet.`,
    measure: 'Die Maße der Einheiten gelten mit Nahtzugabe: von jeder Sorte eine nachmessen, bevor es weitergeht.',
    rightSides: 'Genäht wird rechts auf rechts, wenn nichts anderes dasteht.',
    pressing: 'Jede Naht bügeln, bevor die nächste sie kreuzt: so, wie es im Schritt steht und die Pfeile zeigen.',
    strips: 'Streifen quer zum Stoff schneiden, von Webkante zu Webkante, und aus den Streifen die Teile.',
    abbreviations: (pairs) => `Abkürzungen: ${listed(pairs)}.`,
  },

  cloth: {
    intro:
      'Zuerst den kräftigen Linien nach über die ganze Breite schneiden, dann die Streifen zerteilen. Die Nummern sind die der ' +
      'Zuschnittliste; was blass ist, bleibt übrig.',
    shows: (cloth, form) => `Wie die Teile auf ${cloth} liegen. ${form}`,
    form: (form, buy, size) => `${form === 'by length' ? buy : capital(FORMS[form])}, ${size}.`,
    alike: (n) => `${KEPT.count(n)} davon gleich zuschneiden.`,
    more: (n) => `und noch ${several(n, 'solcher Streifen', 'solche Streifen')}`,
    strip: (n, width) => (n === 1 ? width : `${KEPT.count(n)} × ${width}`),
    left: (pieces) =>
      `Übrig: ${listed(pieces.map(({ count, size }) => (count === 1 ? size : `${KEPT.count(count)} Stücke von ${size}`)))}.`,
    directional: 'Kein Teil wird gedreht: das Muster läuft am Stoff entlang, im Bild von oben nach unten.',
  },

  units: {
    intro: 'Die kleinsten zuerst. Alle Maße gelten mit Nahtzugabe; die erste von jeder Sorte nachmessen, bevor die übrigen genäht werden.',
    unit: (letter) => `Einheit ${letter}`,
    block: (blocks) => (blocks === 1 ? 'Der Block' : `Die ${KEPT.count(blocks)} Blöcke`),
    what: (n, kind, method) => `${KEPT.count(n)} ${kind}${method === null ? '' : `, ${method}`}.`,
    method: {
      'one-at-a-time': 'einzeln',
      'two-at-a-time': 'zwei auf einmal',
      'four-at-a-time': 'vier auf einmal',
      'eight-at-a-time': 'acht auf einmal',
      'stitch-and-flip': 'durch Annähen und Umklappen',
      triangles: 'aus Dreiecken',
      'triangles-from-strips': 'aus Dreiecken, die aus Streifen geschnitten sind',
      'strip-sets': 'aus Streifensätzen',
      pieces: 'Teil für Teil',
      template: 'mit Schablonen',
    },
    measures: (size) => `Sie misst ${size}.`,
    trims: (size) => `Auf ${size} zurückschneiden.`,
    blockMeasures: (size) => `Der Block misst ${size}.`,
    says: (step, of, does) => `Schritt ${KEPT.count(step)}, ${of}: ${does}.`,
  },

  assembly: {
    intro: 'Vor dem Nähen alles wie im Bild auslegen und noch einmal aus einem Schritt Entfernung ansehen.',
    picture: 'Der Block in seinen Teilen, so wie sie zusammengenäht werden.',
    caption: 'In der Reihenfolge der Nummern nähen',
    web: 'Spaltenweise als Kette genäht, die Fäden nicht durchgeschnitten; danach die langen Nähte',
  },

  pressing: {
    intro: 'Die Rückseite des Blocks, wenn alles gebügelt ist: jeder Pfeil zeigt, wohin die Nahtzugaben liegen.',
    picture: 'Die Rückseite des Blocks, mit einem Pfeil an jeder Naht zu der Seite, nach der sie gebügelt ist.',
    noPoints: 'Nirgends treffen Nähte in einem Punkt zusammen.',
    allNest: (points) =>
      points === 1
        ? 'Am einzigen Treffpunkt liegen die Nähte gegeneinander und greifen ineinander.'
        : `Nähte treffen sich an ${KEPT.count(points)} Punkten; an allen liegen sie gegeneinander und greifen ineinander.`,
    someLoose: (points, loose, proved) =>
      `Nähte treffen sich an ${several(points, 'Punkt', 'Punkten')}. ` +
      `${loose === 1 ? 'An dem mit einem Ring' : `An den ${KEPT.count(loose)} mit einem Ring`} greifen sie nicht ineinander: dort stecken` +
      `${proved ? '; besser lässt es sich nicht bügeln' : ''}.`,
    open: 'Ein Strich mit zwei Spitzen quer zur Naht: auseinanderbügeln.',
  },

  sizes: {
    intro: 'Von jeder Einheit die erste nachmessen und abhaken. Alle Maße gelten mit Nahtzugabe.',
    heads: ['Einheit', 'Was es ist', 'Anzahl', 'Sollmaß'],
    block: 'Block',
    measure: 'Ist diese Seite in wahrer Größe gedruckt? Dann misst das größere Quadrat in jeder Richtung 1 Zoll, das kleinere 2 cm.',
  },

  templates: {
    leads: 'Die Schablonen sind auf eigenen Seiten in voller Größe gedruckt.',
    pages: TEMPLATES_IN_GERMAN,
  },

  colouring: {
    intro: 'Der Block in Umrissen, zum Ausmalen vor der Stoffwahl.',
    large: 'Der Block in Umrissen.',
    small: (n) => `Umriss ${KEPT.count(n)} zum Ausprobieren von Farben.`,
  },

  otherSizes: {
    intro: (mark) =>
      'Derselbe Block lässt sich auch in anderen Größen nähen. Bei diesen liegt jeder gerade Zuschnitt und jede Einheit auf ' +
      `einem Strich eines Lineals mit Schritten von ${mark}.`,
    friendly: (sizes) => `Fertige Größe: ${sizes}.`,
    none: (mark) => `Bei keiner anderen Größe in der Nähe liegt alles auf einem Strich eines Lineals mit Schritten von ${mark}.`,
    table: 'Was bei einigen davon zugeschnitten wird; oben die fertige Breite des Blocks.',
    templates: 'Die Schablonen dieser Anleitung gelten nur für ihre eigene Größe.',
    heads: ['Nr.', 'Zuschnitt'],
    shape: ({ quantity, shape }) => (shape === 'template' ? several(quantity, 'Teil', 'Teile') : several(quantity, ...SHAPES[shape])),
  },

  care: { title: 'Mit Klinge, Nadel und Bügeleisen' },
};
