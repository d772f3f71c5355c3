import { listed } from '../../../measure/german-words.ts';
import type { Piece, Pieces, Shape, Size, Thing } from '../said.ts';

/** How things are called in a German sentence: one of them (nominative, accusative or dative), or many. */

/** Nouns by number and case; those used here have one form for nominative and accusative. */
export interface Noun {
  readonly one: string;
  readonly many: string;
  /** With many, after "aus", "mit", "an" and the like. */
  readonly toMany: string;
}

export type Form = keyof Noun;

const NOUNS = {
  square: { one: 'Quadrat', many: 'Quadrate', toMany: 'Quadraten' },
  rectangle: { one: 'Rechteck', many: 'Rechtecke', toMany: 'Rechtecken' },
  triangle: { one: 'Dreieck', many: 'Dreiecke', toMany: 'Dreiecken' },
  piece: { one: 'Teil', many: 'Teile', toMany: 'Teilen' },
} as const satisfies Readonly<Record<string, Noun>>;

/** @returns "12,4 cm" or "6,5 × 11,5 cm" */
export const sizeName = (size: Size): string => size.join(' × ');

const TURNS = ['', ', eine Vierteldrehung im Uhrzeigersinn gedreht', ', um eine halbe Drehung gedreht', ', eine Vierteldrehung gegen den Uhrzeigersinn gedreht'] as const;

/** @returns what comes before the cloth: "Quadrate von 12,4 cm", and what comes after it: " (aus Quadraten von 13,3 cm, zweimal durchgeschnitten)" */
function shapeName(shape: Shape, form: Form): readonly [string, string] {
  switch (shape.form) {
    case 'template':
      return [NOUNS.piece[form], ` (Schablone ${shape.cut})`];
    case 'triangle':
      return [
        NOUNS.triangle[form],
        ` (${NOUNS[shape.from][form === 'one' ? 'one' : 'many']} von ${sizeName(shape.size)}, ${shape.cut === 'once' ? 'einmal' : 'zweimal'} diagonal zerschnitten)`,
      ];
    case 'strip triangle':
      return [NOUNS.triangle[form], ` (aus Streifen von ${shape.strip} Höhe)`];
    default:
      return [`${NOUNS[shape.form][form]} von ${sizeName(shape.size)}`, ''];
  }
}

/** @returns "Quadrat von 12,4 cm aus Fog", without an article: all these nouns are neuter */
export const pieceName = ({ cloth, shape }: Piece, form: Form = 'one'): string => piecesOfShape(shape, [cloth], form);

function piecesOfShape(shape: Shape, cloths: readonly string[], form: Form): string {
  const [name, from] = shapeName(shape, form);
  return `${name} aus ${listed(cloths)}${from}`;
}

/** @returns "A, um eine halbe Drehung gedreht", "Quadrat von 12,4 cm aus Fog" */
export const thingName = (thing: Thing): string => ('unit' in thing ? `${thing.unit}${TURNS[thing.turn]}` : pieceName(thing));

/** @returns "Dreiecke aus Fog und Sea (Quadrate von 13,3 cm, zweimal diagonal zerschnitten) und Quadrate von 5 cm aus Oat" */
export const piecesName = (all: readonly Pieces[], form: Form = 'many'): string =>
  listed(all.map(({ cloths, shape }) => piecesOfShape(shape, cloths, form)));
