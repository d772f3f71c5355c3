import * as v from 'valibot';
import type { PressedSeam } from '../block/block.ts';
import type { Method, Sold } from '../block/choices.ts';
import type { Value } from '../block/colour/lightness.ts';
import {
  COLOR, isWellFormed, MAX_BLOCKS, MAX_CELLS, MAX_COLOURWAYS, MAX_FABRICS, MAX_HAVE, MAX_HAVE_COUNT, MAX_NAME, MAX_PATCHES, MAX_PHOTOS, MAX_PINS, MAX_POINTS,
  MAX_SEAMS, MAX_SEED, MAX_PRESSED_SEAMS, MAX_UNIT_METHODS, PLAIN_TEXT, PRINTS,
} from '../block/limits.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { ORDERS } from '../geometry/piecing/order.ts';
import { WAYS } from '../geometry/piecing/way.ts';
import { NUMBER_TEXT } from './exact-number.ts';
import { picture, publication } from './publication-shape.ts';
import type { ShapeFault } from './shape-problems.ts';

/*
 * What a block file looks like, before anything is checked that takes more than one value to see.
 * schema/block.schema.json is made from this (scripts/schema.mjs), descriptions included.
 * A schema's message is the code of the fault that shape-problems.ts has the sentence for.
 */

const fault = (code: ShapeFault): ShapeFault => code;

const UNIT_KINDS = [
  'square', 'rectangle', 'half-square triangle', 'quarter-square triangle', 'split quarter-square triangle', 'flying geese',
  'corner-triangle unit', 'square in a square', 'half-rectangle triangle', 'peak', 'joined unit', 'partial-seam ring', 'free unit',
] as const satisfies readonly UnitKind[];
const METHODS = [
  'one-at-a-time', 'two-at-a-time', 'four-at-a-time', 'eight-at-a-time', 'stitch-and-flip', 'triangles', 'triangles-from-strips',
  'template', 'pieces', 'strip-sets',
] as const satisfies readonly Method[];
const SOLD = ['by length', 'fat quarter', 'fat eighth', 'precut strip', 'precut square'] as const satisfies readonly Sold[];
const LIES = ['right', 'left', 'open'] as const satisfies readonly PressedSeam['lies'][];
const PINS = ['sewn last', 'one unit'] as const satisfies readonly Pin['pin'][];

const text = (description: string) =>
  v.pipe(
    v.string(fault('no-text')),
    v.maxLength(MAX_NAME, fault('long-text')),
    v.regex(PLAIN_TEXT, fault('unprintable')),
    v.check(isWellFormed, fault('unprintable')),
    v.description(description),
  );

const list = <Item extends v.GenericSchema>(item: Item, most: number, tooMany: ShapeFault, description: string) =>
  v.pipe(v.array(item, fault('no-list')), v.maxLength(most, tooMany), v.description(description));

/** A number as it may be written anywhere in the file. */
export const number = v.pipe(
  v.union(
    [v.pipe(v.number(fault('no-number')), v.finite(fault('no-number'))), v.pipe(v.string(), v.regex(NUMBER_TEXT, fault('no-number')))],
    fault('no-number'),
  ),
  v.description('An exact number: 3, 1.5, "3", "1.5", "5/3" or "1 2/3". Decimals are taken digit by digit.'),
);

/** A place on the grid. */
export const point = v.pipe(
  v.strictTuple([number, number], fault('no-point')),
  v.description('Across and down from the top-left corner of the block, in grid units.'),
);

const whole = (least: number, most: number, code: ShapeFault, description: string) =>
  v.pipe(v.number(code), v.integer(code), v.minValue(least, code), v.maxValue(most, code), v.description(description));

const cells = (direction: string) => whole(1, MAX_CELLS, 'no-cells', `Grid units ${direction}; without lines of their own, the cells.`);

const lines = (direction: string, edge: string) =>
  list(
    number,
    MAX_CELLS - 1,
    'many-lines',
    `Where the ${direction} lines between the cells lie, in grid units from the ${edge} edge: in order, both edges of the block left out. ` +
      'One after every unit where absent.',
  );

const scraps = v.pipe(
  v.strictObject(
    {
      prints: whole(PRINTS.least, PRINTS.most, 'no-prints', 'How many prints there are.'),
      seed: whole(0, MAX_SEED, 'no-seed', 'Which of the ways to spread them over the pieces is taken.'),
    },
    fault('no-object'),
  ),
  v.description('Where the fabric stands for a family of scraps, cut from what there is and not from one cloth.'),
);

const VALUES = ['light', 'medium', 'dark'] as const satisfies readonly Value[];

/** What a fabric is, but for what the block calls it. */
const look = {
  name: text('What people call it.'),
  color: v.pipe(v.string(fault('no-color')), v.regex(COLOR, fault('no-color')), v.description('Colour on screen, sRGB, as #rrggbb.')),
  directional: v.optional(
    v.pipe(
      v.boolean(fault('no-yes-or-no')),
      v.description('True where its print has an up and a down, so that no piece of it may be turned when it is cut.'),
    ),
  ),
  scraps: v.optional(scraps),
  same: v.optional(text('Id of another fabric from whose cloth it is cut; that one is cut from its own.')),
  photo: v.optional(
    v.pipe(
      v.strictObject(
        {
          picture: text('Id of one of the photos.'),
          across: v.pipe(number, v.description('How much cloth it shows from left to right, in the unit of the finished size.')),
        },
        fault('no-object'),
      ),
      v.description('A photo of the real cloth, its own up and down those of the print.'),
    ),
  ),
  value: v.optional(v.pipe(v.picklist(VALUES, fault('no-value')), v.description('How light it is taken to be; by its colour where absent.'))),
};

const fabric = v.pipe(
  v.strictObject({ id: text('What ground and patches call this fabric; different for each fabric.'), ...look }, fault('no-object')),
  v.description('One cloth.'),
);

const colourway = v.strictObject(
  {
    name: text('Different for each colourway.'),
    looks: v.pipe(
      v.record(v.string(), v.strictObject(look, fault('no-object')), fault('no-object')),
      v.description('By fabric id: what that fabric is in this colourway; as in the block where absent.'),
    ),
  },
  fault('no-object'),
);

const thousandths = whole(0, 1000, 'no-photo-place', 'From the left, or the top, of the photo.');

const patch = v.pipe(
  v.strictObject(
    {
      fabric: text('Id of its fabric.'),
      points: v.pipe(
        v.array(point, fault('no-list')),
        v.minLength(3, fault('few-points')),
        v.maxLength(MAX_POINTS, fault('many-points')),
        v.description(
          'The corners of a simple outline in order, either way round, closed by itself; ' +
            'no corner twice, none on the straight between its neighbours.',
        ),
      ),
      whole: v.optional(v.pipe(v.boolean(fault('no-yes-or-no')), v.description('True where the patch must stay one piece of cloth.'))),
      photoAt: v.optional(
        v.pipe(
          v.strictTuple([thousandths, thousandths], fault('no-photo-place')),
          v.description('The place of its fabric\'s photo that lies in its middle, in thousandths of the photo\'s width and height; as chance has it where absent.'),
        ),
      ),
      print: v.optional(whole(1, PRINTS.most, 'no-print', 'Which print of its scraps it is held in; as they are spread where absent.')),
    },
    fault('no-object'),
  ),
  v.description('One painted shape of one fabric.'),
);

const seam = v.pipe(v.strictTuple([point, point], fault('no-seam')), v.description('The two ends of a seam, which must differ.'));

const pin = v.pipe(
  v.strictObject(
    {
      pin: v.pipe(
        v.picklist(PINS, fault('no-pin-kind')),
        v.description('"sewn last": the seam right across the block through both points is the last. "one unit": the rectangle is made by itself.'),
      ),
      from: point,
      to: point,
    },
    fault('no-object'),
  ),
  v.description('What the designer asks of the sewing order: one end of a seam and the other, or two opposite corners of a rectangle.'),
);

const length = (description: string) => v.optional(v.pipe(number, v.description(`${description} In the unit of the finished size.`)));

const method = v.picklist(METHODS, fault('no-method'));
const optionalMethod = v.optional(method);
const methodOfKind = Object.fromEntries(UNIT_KINDS.map((kind) => [kind, optionalMethod])) as Record<UnitKind, typeof optionalMethod>;

const unitMethod = v.pipe(
  v.strictObject({ from: point, to: point, method }, fault('no-object')),
  v.description('The method of the unit that is sewn in the rectangle between two opposite corners; one for each rectangle.'),
);

const pressedSeam = v.pipe(
  v.strictObject(
    {
      from: point,
      to: point,
      lies: v.pipe(v.picklist(LIES, fault('no-lies')), v.description('Right or left of the way from one end to the other, seen on the front; or open.')),
    },
    fault('no-object'),
  ),
  v.description('How the seam that runs along this line through its middle is pressed, and the same seam of all equal units.'),
);

const clothSize = {
  width: v.pipe(number, v.description('Across the cloth, from selvage to selvage.')),
  length: v.pipe(number, v.description('Along the cloth.')),
};

const cloth = v.strictObject(
  {
    sold: v.optional(v.pipe(v.picklist(SOLD, fault('no-sold')), v.description('How it is bought; by the length where absent.'))),
    size: v.optional(
      v.pipe(v.strictObject(clothSize, fault('no-object')), v.description('Of one precut piece; the usual size of its form where absent.')),
    ),
    width: length('Usable width of this fabric by the length; that of all fabrics where absent.'),
    have: v.optional(
      list(
        v.strictObject({ ...clothSize, count: whole(1, MAX_HAVE_COUNT, 'no-count', 'How many of this size.') }, fault('no-object')),
        MAX_HAVE,
        'many-pieces',
        'What the maker has already, which is used first.',
      ),
    ),
  },
  fault('no-object'),
);

const margin = v.union(
  [v.strictObject({ percent: number }), v.strictObject({ length: number })],
  fault('no-margin'),
);

const choices = v.pipe(
  v.strictObject(
    {
      seam: length('Seam allowance; 1/4 in. or 0.75 cm where absent.'),
      ruler: length('Smallest step of the ruler; 1/8 in. or 1 mm where absent.'),
      trim: length('Added to every cut that meets a diagonal seam, to be trimmed off after sewing; 0 where absent.'),
      methods: v.optional(
        v.pipe(
          v.strictObject(methodOfKind, fault('no-object')),
          v.description('The method by which units of a kind are cut and sewn.'),
        ),
      ),
      method: v.optional(
        v.pipe(
          v.picklist([...METHODS, 'usual'], fault('no-method')),
          v.description('The method of every kind that knows it and for which nothing else is chosen; the usual one of each kind where absent.'),
        ),
      ),
      way: v.optional(v.pipe(v.picklist(WAYS, fault('no-way')), v.description('Which of the ways to sew the block is wanted.'))),
      assembly: v.optional(
        v.pipe(
          v.picklist(ORDERS, fault('no-order')),
          v.description('In which order the finished units are put together, where they lie so; as the way was found where absent.'),
        ),
      ),
      blocks: v.optional(whole(1, MAX_BLOCKS, 'no-blocks', 'How many blocks to cut for; 1 where absent.')),
      width: length('Usable width of cloth; 42 in. or 107 cm where absent.'),
      cloths: v.optional(
        v.pipe(
          v.record(v.string(), cloth, fault('no-object')),
          v.description('By fabric id: where its pieces are cut from, in lengths in the unit of the finished size.'),
        ),
      ),
      squaringUp: length('Cut off each length or precut piece to make its edge straight; 0 where absent.'),
      margin: v.optional(
        v.pipe(margin, v.description('What is bought to spare, in per cent or in length in the unit of the finished size; nothing where absent.')),
      ),
      shopStep: length('Cloth is sold in whole multiples of this; 4 1/2 in. (1/8 yd) or 10 cm where absent.'),
    },
    fault('no-object'),
  ),
  v.description('How the designer wants the block cut and sewn.'),
);

/** The version of the format that this program reads and writes. */
export const VERSION = 1;
export const FORMAT = 'piecewright/block';

export const blockShape = v.pipe(
  v.strictObject(
    {
      $schema: v.optional(v.pipe(v.string(fault('no-text')), v.description('Address of this schema, for editors; not kept.'))),
      format: v.literal(FORMAT),
      version: v.literal(VERSION),
      name: text('What the block is called; plain text on one line.'),
      finished: v.pipe(
        v.strictObject(
          {
            width: number,
            height: number,
            unit: v.pipe(v.picklist(['in', 'cm'], fault('no-unit')), v.description('Inches or centimetres.')),
          },
          fault('no-object'),
        ),
        v.description('Size inside the seams once set in the quilt: more than 0, at most 200 in. or 508 cm.'),
      ),
      grid: v.pipe(
        v.strictObject(
          {
            columns: cells('across'),
            rows: cells('down'),
            across: v.optional(lines('upright', 'left')),
            down: v.optional(lines('level', 'top')),
          },
          fault('no-object'),
        ),
        v.description('The grid the block is drawn on, in equal units; its cells need not be square, nor all of one size.'),
      ),
      fabrics: v.pipe(
        v.array(fabric, fault('no-list')),
        v.minLength(1, fault('no-fabrics')),
        v.maxLength(MAX_FABRICS, fault('many-fabrics')),
        v.description('Every cloth the block uses.'),
      ),
      ground: text('Id of the fabric that shows where nothing is painted.'),
      patches: list(patch, MAX_PATCHES, 'many-patches', 'What is painted; a later patch covers what lies under it.'),
      seams: v.optional(list(seam, MAX_SEAMS, 'many-seams', 'Seams the designer asks for, also inside one fabric.')),
      pins: v.optional(list(pin, MAX_PINS, 'many-pins', 'What the designer asks of the sewing order; one that cannot be honoured is passed over, with a note.')),
      unitMethods: v.optional(
        list(unitMethod, MAX_UNIT_METHODS, 'many-units', 'Methods of single units, against what is chosen for their kind.'),
      ),
      pressedSeams: v.optional(list(pressedSeam, MAX_PRESSED_SEAMS, 'many-pressed', 'How single seams are pressed, against the plan.')),
      choices: v.optional(choices),
      fuses: v.optional(
        v.pipe(
          v.boolean(fault('no-yes-or-no')),
          v.description('True where areas of different fabrics that are cut from one cloth become one; else the seams between them stay.'),
        ),
      ),
      photos: v.optional(list(picture, MAX_PHOTOS, 'many-photos', 'Photos of cloth.')),
      colourways: v.optional(list(colourway, MAX_COLOURWAYS, 'many-colourways', 'The block in other cloth.')),
      publication: v.optional(publication),
    },
    fault('no-object'),
  ),
  v.title('Piecewright block'),
  v.description(
    'A patchwork block as it is drawn. Besides what this schema can say: fabric ids are different and known, ' +
      'outlines are simple and on the grid, seams, pins and units are on the grid and have extent.',
  ),
);

/** A file's content whose shape is right. */
export type BlockShape = v.InferOutput<typeof blockShape>;
