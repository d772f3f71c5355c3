import { listed } from '../../../measure/german-words.ts';
import type { Some } from '../joins.ts';
import type { Piece, Pieces, Place, Shape, Side, Size, Thing } from '../said.ts';

/** How things are called in a German sentence. All nouns for pieces of cloth are neuter. */

/** one: nominative, accusative or dative; of: genitive of one; many: nominative or accusative; toMany: dative, as after "mit". */
type Form = 'one' | 'of' | 'many' | 'toMany';
type Noun = Readonly<Record<Form, string>>;

const SQUARE: Noun = { one: 'Quadrat', of: 'Quadrats', many: 'Quadrate', toMany: 'Quadraten' };
const RECTANGLE: Noun = { one: 'Rechteck', of: 'Rechtecks', many: 'Rechtecke', toMany: 'Rechtecken' };
const TRIANGLE: Noun = { one: 'Dreieck', of: 'Dreiecks', many: 'Dreiecke', toMany: 'Dreiecken' };
const PART: Noun = { one: 'Teil', of: 'Teils', many: 'Teile', toMany: 'Teilen' };

const RECTANGULAR = { square: SQUARE, rectangle: RECTANGLE } as const;

/** @returns "12,4 cm" or "6,5 × 11,5 cm" */
export const sizeName = (size: Size): string => size.join(' × ');

const TURNS = ['', ' (um 90° im Uhrzeigersinn gedreht)', ' (um 180° gedreht)', ' (um 90° gegen den Uhrzeigersinn gedreht)'] as const;

/** @returns what comes before the cloth: "Dreiecke", and what comes after it: " (Quadrate von 13,3 cm, diagonal geviertelt)" */
function shapeName(shape: Shape, form: Form): readonly [string, string] {
  switch (shape.form) {
    case 'template':
      return [PART[form], ` (Schablone, Nr. ${shape.cut})`];
    case 'triangle': {
      const cut = RECTANGULAR[shape.from][form === 'one' || form === 'of' ? 'one' : 'many'];
      return [TRIANGLE[form], ` (${cut} von ${sizeName(shape.size)}, diagonal ${shape.cut === 'once' ? 'halbiert' : 'geviertelt'})`];
    }
    case 'strip triangle':
      return [TRIANGLE[form], ` (aus Streifen von ${shape.strip} Höhe)`];
    default:
      return [`${RECTANGULAR[shape.form][form]} von ${sizeName(shape.size)}`, ''];
  }
}

function piecesOfShape({ cloths, shape }: Pieces, form: Form): string {
  const [name, from] = shapeName(shape, form);
  return `${name} aus ${listed(cloths)}${from}`;
}

/** @returns "Quadrat von 12,4 cm aus Fog", without an article */
export const pieceName = ({ cloth, shape }: Piece, form: Form = 'one'): string => piecesOfShape({ cloths: [cloth], shape }, form);

/** @returns "A (um 180° gedreht)", "Quadrat von 12,4 cm aus Fog" */
export const thingName = (thing: Thing): string => ('unit' in thing ? `${thing.unit}${TURNS[thing.turn]}` : pieceName(thing));

/** @returns "7 × A und B", in their order */
export const thingsName = (all: readonly Some[]): string =>
  listed(all.map(({ thing, count }) => `${count.n > 1 ? `${count.said} × ` : ''}${thingName(thing)}`));

const ARTICLES = { the: 'das', The: 'Das', toThe: 'dem' } as const;

/** @returns "das Quadrat von 12,4 cm aus Fog", in the dative "dem Quadrat …"; "A" */
export const withArticle = (thing: Thing, article: keyof typeof ARTICLES = 'the'): string =>
  'unit' in thing ? thingName(thing) : `${ARTICLES[article]} ${pieceName(thing)}`;

/** @returns "des Quadrats von 12,4 cm aus Fog", "von A" */
export const ofThing = (thing: Thing): string => ('unit' in thing ? `von ${thingName(thing)}` : `des ${pieceName(thing, 'of')}`);

/** @returns "Dreiecke aus Fog und Sea (Quadrate von 13,3 cm, diagonal geviertelt) und Quadrate von 5 cm aus Oat" */
export const piecesName = (all: readonly Pieces[]): string => listed(all.map((pieces) => piecesOfShape(pieces, 'many')));

/** Where something lies. */
export const PLACES: Readonly<Record<Place, string>> = {
  top: 'oben',
  right: 'rechts',
  bottom: 'unten',
  left: 'links',
  'top left': 'oben links',
  'top right': 'oben rechts',
  'bottom right': 'unten rechts',
  'bottom left': 'unten links',
  middle: 'in der Mitte',
};

/** Which way something lies. */
export const DIRECTIONS: Readonly<Record<Side, string>> = { top: 'nach oben', right: 'nach rechts', bottom: 'nach unten', left: 'nach links' };
