import * as v from 'valibot';
import { MAX_NAME, MAX_SAID } from '../block/limits.ts';
import { LANGUAGES } from '../pattern/house-style.ts';
import { PAPERS } from '../pattern/pages/paper.ts';
import { picture, sections } from './publication-shape.ts';
import type { ShapeFault } from './shape-problems.ts';

/*
 * What the file of a house style looks like. schema/house-style.schema.json is made from this (scripts/schema.ts).
 */

const fault = (code: ShapeFault): ShapeFault => code;

const oneOf = <const Options extends readonly (string | number)[]>(options: Options, description: string) =>
  v.pipe(v.picklist(options, fault('no-choice')), v.description(description));

const line = (most: number, description: string) =>
  v.optional(v.pipe(v.string(fault('no-text')), v.maxLength(most, fault('long-line')), v.description(description)));

export const STYLE_VERSION = 1;
export const STYLE_FORMAT = 'piecewright/house-style';

export const houseStyleShape = v.pipe(
  v.strictObject(
    {
      $schema: v.optional(v.pipe(v.string(fault('no-text')), v.description('Address of this schema, for editors; not kept.'))),
      format: v.literal(STYLE_FORMAT),
      version: v.literal(STYLE_VERSION),
      language: oneOf(LANGUAGES, 'What patterns are written in.'),
      kinds: oneOf(['in full', 'short'], 'Kinds of units by their full names, or as the trade shortens them where it does.'),
      fractions: oneOf(['set', 'typed'], 'As fractions, ½, or as they are typed, 1/2.'),
      inches: oneOf(['in.', '″'], 'Behind lengths in inches.'),
      paper: oneOf(PAPERS, 'What it is printed on.'),
      lie: oneOf(['portrait', 'landscape'], 'How the paper lies.'),
      columns: oneOf([1, 2], 'Columns of text.'),
      ink: oneOf(['colours', 'hatches'], 'Fabrics as colours, or as hatches for a printer that has none.'),
      letters: oneOf(['usual', 'large'], 'How large text is.'),
      sections: v.optional(sections),
      maker: line(MAX_NAME, 'Whose pattern it is, on the cover.'),
      licence: line(MAX_SAID, 'What others may do with it.'),
      foot: line(MAX_NAME, 'At the foot of every page.'),
      logo: v.optional(picture),
    },
    fault('no-object'),
  ),
  v.title('Piecewright house style'),
  v.description('How a designer has all her patterns look and speak.'),
);
