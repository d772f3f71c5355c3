import type { Count } from '../../../block/counting.ts';
import type { ClothForm } from '../../../cutting/layout.ts';
import { METHODS_IN_GERMAN } from '../../../cutting/phrases/german.ts';
import type { AssemblyOrder } from '../../../geometry/piecing/order.ts';
import type { Way } from '../../../geometry/piecing/way.ts';
import { capital } from '../../../measure/words.ts';
import { listed } from '../../../measure/german-words.ts';
import type { WrittenPhrases } from '../written-phrases.ts';

const WAYS: Readonly<Record<Way, string>> = {
  'standard units': 'Standardeinheiten',
  'fewest pieces': 'möglichst wenige Teile',
  'largest repeated unit': 'größte wiederkehrende Einheit',
  rows: 'Reihen',
  columns: 'Spalten',
  quarters: 'Viertel',
  foundation: 'Stück für Stück auf eine Unterlage',
};

const ORDERS: Readonly<Record<AssemblyOrder, string>> = {
  'as found': 'wie gefunden',
  rows: 'in Reihen',
  columns: 'in Spalten',
  web: 'als Netz',
  quarters: 'in Vierteln',
};

/** What a piece fits on, in the accusative. */
const ON: Readonly<Record<ClothForm, string>> = {
  'by length': 'die Stoffbahn',
  'fat quarter': 'das Fat Quarter',
  'fat eighth': 'das Fat Eighth',
  'precut strip': 'den fertig geschnittenen Streifen',
  'precut square': 'das fertig geschnittene Quadrat',
  own: 'den vorhandenen Stoff',
};

const pieces = ({ n, said }: Count): string => `${said} ${n === 1 ? 'Teil' : 'Teile'}`;
const cuts = (ids: readonly string[]): string => `${ids.length === 1 ? 'Zuschnitt' : 'Zuschnitte'} ${listed(ids)}`;
const theirs = (ids: readonly string[], sizes: readonly string[]): string => `${cuts(ids)} (${listed(sizes)}) ${ids.length === 1 ? 'ist' : 'sind'}`;
const fromTo = ([from, to]: readonly [string, string]): string => `von ${from} bis ${to}`;
const FROM = { across: 'von links', down: 'von oben' } as const;

/** What `makePattern` writes, in German. */
export const WRITTEN_IN_GERMAN: WrittenPhrases = {
  listed,
  size: (width, height) => `${width} × ${height}`,
  clothSize: (width, height) => `${width} × ${height}`,
  lessThan: (hundredth) => `weniger als ${hundredth}`,

  near: (length) => `etwa ${length}`,
  point: (across, down) => `${across} von links, ${down} von oben`,
  at: (length, along) => `${length} ${FROM[along]}`,
  runs: (ends, along) => `${listed(ends.map(fromTo))} ${FROM[along]}`,
  slanted: (ends) => listed(ends.map(([from, to]) => `vom Punkt (${from}) zum Punkt (${to})`)),

  division: (at, cloth, runs, { n, said }) => {
    const price =
      n > 1
        ? `${said} Teile und ${said} Nähte mehr`
        : n > 0
          ? 'ein Teil und eine Naht mehr'
          : 'Sie öffnet, was rings um einen anderen Stoff liegt, und kostet für sich nichts';
    return `Die Naht${at && ` ${at}`} verläuft ${runs} durch ${cloth}: ${price}.`;
  },
  withinCloth: (cloth, places, { n, said }) => {
    const where = places ? `: ${places.map(({ at, runs }) => `${at && `${at} `}${runs}`).join('; ')}` : ` auf ${said} Linien`;
    return `Zwischen Flächen aus ${cloth}, die alle aus einem Stoff sind, ${n === 1 ? 'bleibt die Naht' : 'bleiben die Nähte'}${where}.`;
  },
  refused: {
    'no place': 'Sie liegt auf keiner Naht quer durch den Block und auf keinem Rechteck darin; entfernen und neu setzen.',
    crosses: 'Sie schneidet in die Einheit einer früheren Vorgabe; eine der beiden entfernen.',
    locks: 'Ein ganzes Stück würde geteilt, oder für den Rest bleiben keine geraden Nähte; entfernen oder das Stück teilen lassen.',
  },

  noSuchWay: (asked, taken) => `Auf die gewählte Weise („${WAYS[asked]}“) lässt sich diese Zeichnung nicht nähen; sie wird so genäht: „${WAYS[taken]}“.`,
  notAssembled: (order) =>
    `Die Einheiten dieser Zeichnung lassen sich mit geraden Nähten nicht ${ORDERS[order]} zusammensetzen; sie werden ${ORDERS['as found']} zusammengesetzt.`,
  lostMethod: (method, from, to) =>
    `Für eine Einheit vom Punkt (${from}) zum Punkt (${to}) ist die Methode „${METHODS_IN_GERMAN[method]}“ gewählt, dort wird aber keine genäht; die Wahl bleibt ohne Wirkung.`,
  lostPressing: (from, to) =>
    `Für eine Naht vom Punkt (${from}) zum Punkt (${to}) ist gewählt, wie sie gebügelt wird, dort wird aber keine genäht; die Wahl bleibt ohne Wirkung.`,

  upsideDown: (cloths) =>
    `Dreiecke aus Streifen liegen Kopf an Fuß, deshalb steht bei ${listed(cloths)} jedes zweite auf dem Kopf; ` +
    'wo das Muster aufrecht stehen muss, eine andere Methode wählen.',
  tooLarge: (some, id, size, form, cloth) =>
    `${some === 'all' ? 'Zuschnitt' : `${pieces(some)} von Zuschnitt`} ${id} (${size}) ${some === 'all' || some.n === 1 ? 'passt' : 'passen'} nicht auf ` +
    `${ON[form]} aus ${cloth}: dafür größeren Stoff wählen.`,

  cuts,
  manyCuts: ({ n, said }) => `${said} ${n === 1 ? 'Zuschnitt' : 'Zuschnitte'}`,
  smallPieces: (count, where, least, narrowest, from) => {
    const rest = from === null ? '' : `; ab ${from} ist keines mehr so schmal`;
    return count.n === 1
      ? `${pieces(count)} (${where}) ist fertig schmaler als ${least}, nämlich ${narrowest}, und lässt sich nur schwer genau nähen${rest}.`
      : `${pieces(count)} (${where}) sind fertig schmaler als ${least}, das schmalste ${narrowest}, und lassen sich nur schwer genau nähen${rest}.`;
  },
  biasOnEdge: (count, where, remedy) => {
    const one = count.n === 1;
    return (
      `Bei ${count.said} ${one ? 'Teil' : 'Teilen'} (${where}) liegt der Außenrand des Blocks im schrägen Fadenlauf und dehnt sich: ` +
      `${one ? 'es' : 'sie'} aus Quadraten schneiden, die ${remedy === 'twice' ? 'zweimal' : 'einmal'} diagonal geteilt werden, dann liegt dort der gerade Fadenlauf.`
    );
  },
  outgrown: ({ mark, cuts: where, one, wider, higher, even, instead }) => {
    const much = listed([...(wider === null ? [] : [`${wider} zu breit`]), ...(higher === null ? [] : [`${higher} zu hoch`])]);
    const better = instead.length > 0 ? `; bei ${instead.join(' oder ')} liegt jeder einfache Zuschnitt auf einem Strich` : '';
    return (
      `${capital(where)} ${one ? 'ist' : 'sind'} zu groß, weil das Lineal nur alle ${mark} einen Strich hat: Wird nichts zurückgeschnitten, ` +
      `gerät der Block ${even ? '' : 'bis zu '}${much}${even ? '' : ', und seine Reihen treffen sich nicht'}${better}.`
    );
  },
  widerThanCloth: (ids, sizes, room) => `${theirs(ids, sizes)} breiter als der Stoff (${room}): vor dem Zuschneiden Stoffbreiten zusammennähen.`,
  longerThanCloth: (ids, sizes, room, { said }, seam) =>
    `${theirs(ids, sizes)} länger, als der Stoff breit ist (${room}): längs zur Webkante zuschneiden ` +
    `oder zuerst ${said} Streifen an den kurzen Enden mit ${seam} Nahtzugabe zusammennähen.`,
  noMargin: (cloths, left, more) =>
    `Von ${listed(cloths.map(([name, buy]) => `${name} (${buy})`))} ${cloths.length > 1 ? 'bleiben jeweils' : 'bleiben'} weniger als ${left} übrig, um die Kante zu begradigen: ` +
    `${cloths.length > 1 ? 'je ' : ''}${more} mehr kaufen oder eine Reserve wählen.`,

  cautions: [
    'Den Rollschneider nach jedem Schnitt schließen; vom Körper weg schneiden, die Finger hinter der Linealkante, auf einer Schneidematte.',
    'Im Stehen schneiden, in geschlossenen Schuhen, mit scharfer Klinge und nicht müde; Klingen und Nadeln von Kindern fernhalten.',
    'Stecknadeln herausziehen, bevor sie unter die Maschinennadel kommen; zum Einfädeln die Maschine ausschalten.',
    'Das Bügeleisen hochkant abstellen, Gesicht und Hände aus dem Dampf halten und beim Weggehen den Stecker ziehen.',
  ],
};
