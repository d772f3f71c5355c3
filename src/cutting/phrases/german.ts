import type { Method } from '../../block/choices.ts';
import { listed } from '../../measure/german-words.ts';
import { capital } from '../../measure/words.ts';
import type { CuttingPhrases, Precut } from './cutting-phrases.ts';

/** What the methods are called. */
export const METHODS_IN_GERMAN: Readonly<Record<Method, string>> = {
  'one-at-a-time': 'einzeln',
  'two-at-a-time': 'zwei auf einmal',
  'four-at-a-time': 'vier auf einmal',
  'eight-at-a-time': 'acht auf einmal',
  'stitch-and-flip': 'Nähen und Umklappen',
  triangles: 'aus Dreiecken',
  'triangles-from-strips': 'Dreiecke aus Streifen',
  template: 'nach Schablone',
  pieces: 'aus einzelnen Teilen',
  'strip-sets': 'Streifensätze',
};

const PRECUT: Readonly<Record<Precut, readonly [one: string, many: string]>> = {
  'fat quarter': ['Fat Quarter', 'Fat Quarters'],
  'fat eighth': ['Fat Eighth', 'Fat Eighths'],
  'precut strip': ['fertig geschnittener Streifen', 'fertig geschnittene Streifen'],
  'precut square': ['fertig geschnittenes Quadrat', 'fertig geschnittene Quadrate'],
};

const unitOrBlock = (unit: string | null): string => (unit === null ? 'der Block' : `Einheit ${unit}`);
const ofUnit = (unit: string | null): string => (unit === null ? 'vom Block' : `von Einheit ${unit}`);

/** Cutting in German, in the words of the trade. It is fetched when somebody first wants it: nothing of the first load may import it. */
export const CUTTING_IN_GERMAN: CuttingPhrases = {
  listed,
  nothing: 'nichts',
  yards: (yards) => `${yards} Yard`,
  precut: (form, { n, said }) => `${said} ${PRECUT[form][n === 1 ? 0 : 1]}`,
  toSquareUp: (length, off) => `${off === 'length' ? '' : 'je '}${length} zum Begradigen`,
  toSpare: (length) => `${length} Reserve`,
  percentToSpare: (percent) => `${percent} % Reserve`,
  otherMethod: (unit, kind, asked, taken, why) =>
    `${capital(unitOrBlock(unit))} (${kind}) ${
      why === 'two corners'
        ? 'hat Ecken aus zwei Stoffen, das geht nicht mit vier auf einmal'
        : why === 'no strips'
          ? 'geht nicht aus Streifensätzen: Sie ist keine einfache Reihe, die mindestens zweimal vorkommt, oder der Stoff ist zu kurz'
        : `lässt sich nach der Methode „${METHODS_IN_GERMAN[asked]}“ nicht zuschneiden`
    }; genommen wird „${METHODS_IN_GERMAN[taken]}“.`,
  mirrorImages: (unit, { n, said }) => `Bei „zwei auf einmal“ entstehen auch Spiegelbilder: ${said} ${ofUnit(unit)} ${n === 1 ? 'bleibt' : 'bleiben'} übrig.`,
  centreUntrimmed: (units) =>
    `Die Mitte ${listed(units.map(ofUnit))} wird ohne Zugabe zum Zurückschneiden zugeschnitten, denn ihre Kanten sind Nähte. Die Ecken werden größer zugeschnitten.`,
  outlinedUntrimmed: (units) =>
    `Bei ${listed(units.map((unit) => (unit === null ? 'diesem Block' : `Einheit ${unit}`)))} gibt es nichts zurückzuschneiden: Nach Schablone wird genau zugeschnitten.`,
};
