import type { Picture } from '../../block/publication.ts';
import type { Said, Table, TableRow } from '../document/content.ts';
import { filled } from '../telling/kept.ts';
import { cornersOf } from '../polygons.ts';
import { clothItems } from './cloth-look.ts';
import type { Composing } from './composing.ts';
import { INK } from './looks.ts';
import { boxPath, type Item, type PathItem, type PhotoFill, type PlaceItem } from './page.ts';
import type { Held, Row } from './rows.ts';
import { levelRule } from './rules.ts';
import { columnsOf, type Columns } from './table-columns.ts';
import { baselineIn, blockItems, heightOf, linesOf, type Carried, type Line } from './text-lines.ts';
import { HAIR } from './typography.ts';

/** Above and below what stands in a row, in half lines. */
const PAD = 0.45;
/** A row of more lines than this may be parted between them. */
const MOST_LINES = 8;

/** @returns a table's rows, each with the heads to be said again; a group's name never stands alone */
export function tableRows(table: Table, width: number, composing: Composing): readonly Row[] {
  const columns = columnsOf(table, width, composing);
  const heads = table.heads.some(({ told }) => told !== '') ? [headRow(table, columns, width, composing, false)] : [];
  const againHeads = heads.length > 0 ? [headRow(table, columns, width, composing, true)] : [];
  let group: TableRow | null = null;
  let first = true;
  const rows = table.rows.flatMap((row, i): readonly Row[] => {
    const number = i + 1;
    const before = table.rows[i - 1];
    // A group's name has two rows with it, if it has two; and the last row is not left alone.
    const isSecond = table.rows[i - 2]?.group !== undefined;
    const isLast = i > 0 && i === table.rows.length - 1;
    const begins = before?.group !== undefined || (i === 0 && heads.length > 0);
    const held: Held = begins ? 'always' : (isSecond || isLast) && 'if it fits';
    if (row.group !== undefined) {
      group = row;
      first = true;
      return [
        { ...groupRow(row.group, row, number, table, width, composing), held: i === 0 && heads.length > 0 && 'always', again: againHeads },
      ];
    }
    const again = [...againHeads, ...(group && !first ? [againGroup(group, number, table, width, composing)] : [])];
    first = false;
    return cellRows(row, number, table, columns, width, composing).map((each, k): Row => ({
      ...each,
      held: k === 0 ? held : each.held,
      again,
    }));
  });
  return [...heads, ...rows].map((row, i) => (i === 0 ? { ...row, above: composing.type.half * 1.4 } : row));
}

function againGroup({ group, fabric }: TableRow, number: number, table: Table, width: number, composing: Composing): Row {
  const said: Said = { at: group!.at, told: filled(composing.words.continued, [group!.told]) ?? group!.told };
  return groupRow(said, { cells: [], ...(fabric !== undefined && { fabric }) }, number, table, width, composing, true);
}

function headRow({ at, heads, figures }: Table, columns: Columns, width: number, composing: Composing, again: boolean): Row {
  const { type } = composing;
  const lines = heads.map((head, c) => linesOf(head.told, type.head, columns.widths[c]!, composing));
  const high = Math.max(...lines.map(heightOf));
  const height = high + type.half * 0.5;
  return {
    height,
    above: 0,
    held: false,
    at: (x, y) => [
      ...lines.flatMap((cell, c) => {
        const carried: Carried = {
          of: heads[c]!.at,
          ...(again ? { role: 'of the page' } : { cell: { name: at, row: 0, column: c, head: true } }),
        };
        return cellItems(cell, x + columns.lefts[c]!, y + high - heightOf(cell), columns.widths[c]!, figures[c] ?? false, carried);
      }),
      levelRule(x, y + height, width, { color: INK, width: 0.9 }),
    ],
  };
}

/** Lines in a cell, set to its right edge where they are figures. */
function cellItems(lines: readonly Line[], x: number, top: number, width: number, figures: boolean, carried: Carried): readonly Item[] {
  if (!figures) return blockItems(lines, x, top, carried);
  return lines.flatMap((line, i) => blockItems([line], x + width - line.wide, top + i * line.look.leading, carried));
}

const placesOf = ({ leadsHere = [] }: TableRow, y: number): readonly PlaceItem[] => leadsHere.map((name) => ({ kind: 'place', name, y }));

function groupRow(said: Said, row: TableRow, number: number, { at }: Table, width: number, composing: Composing, again = false): Row {
  const { type } = composing;
  const side = type.group.leading * 0.95;
  const inset = row.fabric === undefined ? 0 : side + type.half * 0.9;
  const lines = linesOf(said.told, type.group, width - inset, composing);
  const [above, below] = [type.half * (again ? 0.8 : 1.5), type.half * 0.6];
  const height = above + Math.max(heightOf(lines), side) + below;
  return {
    height,
    above: 0,
    held: false,
    at: (x, y) => [
      ...placesOf(row, y),
      ...(row.fabric === undefined ? [] : swatchItems(row.fabric, x, y + above + (type.group.leading - side) / 2, side, composing)),
      ...blockItems(lines, x + inset, y + above, {
        of: said.at,
        ...(again ? { role: 'of the page' } : { cell: { name: at, row: number, column: 0, head: true } }),
      }),
      levelRule(x, y + height, width, { color: INK, width: 0.5 }),
    ],
  };
}

/** @returns a square of a fabric */
export const swatchItems = (
  fabric: string,
  left: number,
  top: number,
  side: number,
  { cloth }: Pick<Composing, 'cloth'>,
): readonly PathItem[] => {
  const picture = cloth.photos.get(fabric);
  return clothItems(
    [cornersOf({ left: left + 0.3, top: top + 0.3, right: left + side - 0.3, bottom: top + side - 0.3 })],
    { fabric, side: 'right', origin: [left, top], ...(picture && { photo: wholePhoto(picture, left, top, side) }) },
    cloth,
  );
};

/** @returns a photo whose shorter side is that of a square, its middle in the middle: at no scale, so that its print is seen */
function wholePhoto(picture: Picture, left: number, top: number, side: number): PhotoFill {
  const width = side * Math.max(1, picture.width / picture.height);
  const height = (width * picture.height) / picture.width;
  return { picture, at: [left - (width - side) / 2, top - (height - side) / 2], width, turn: 0 };
}

/** A row of cells with the sentences under it; more than one only where its lines are too many to stay together. */
function cellRows(row: TableRow, number: number, table: Table, columns: Columns, width: number, composing: Composing): readonly Row[] {
  const { type } = composing;
  const pad = type.half * PAD;
  const cells = row.cells.map(({ told }, c) => linesOf(told, type.cell, columns.widths[c]!, composing));
  const indent = columns.lefts[1] ?? columns.lefts[0]!;
  const below = (row.below ?? []).map((said) => ({
    said,
    lines: linesOf(said.told, type.quiet, Math.min(width - indent, type.longest), composing),
  }));
  const most = Math.max(1, ...cells.map((lines) => lines.length));
  const parts = Array.from({ length: Math.ceil(most / MOST_LINES) }, (_, k) =>
    cells.map((lines) => lines.slice(k * MOST_LINES, (k + 1) * MOST_LINES)),
  );
  const leading = type.cell.leading;
  const rows = parts.map((part, k): Row => {
    const high = Math.max(leading, ...part.map(heightOf));
    const [first, last] = [k === 0, k === parts.length - 1];
    const top = first ? pad : 0;
    const height = top + high + (last && below.length === 0 ? pad : 0);
    return {
      height,
      above: 0,
      held: false,
      at: (x, y) => [
        ...(first ? [...placesOf(row, y), ...leadItems(row, table, columns, x, y + top, composing)] : []),
        ...part.flatMap((lines, c) =>
          cellItems(lines, x + columns.lefts[c]!, y + top, columns.widths[c]!, table.figures[c] ?? false, {
            of: row.cells[c]!.at,
            cell: { name: table.at, row: number, column: c },
          }),
        ),
        ...(last && below.length === 0 ? [hairline(x, y + height, width)] : []),
      ],
    };
  });
  const under = below.flatMap(({ said, lines }, k) =>
    lines.map((line, i): Row => {
      const last = k === below.length - 1 && i === lines.length - 1;
      const height = line.look.leading + (last ? pad : 0);
      return {
        height,
        above: 0,
        held: 'if it fits',
        at: (x, y) => [
          ...blockItems([line], x + indent, y, {
            of: said.at,
            cell: { name: table.at, row: number, column: Math.min(1, table.heads.length - 1) },
          }),
          ...(last ? [hairline(x, y + height, width)] : []),
        ],
      };
    }),
  );
  return [...rows, ...under];
}

const hairline = (x: number, y: number, width: number): PathItem => levelRule(x, y, width, HAIR);

/** What stands before a row's first cell: a box to tick, a swatch. */
function leadItems(
  { fabric }: TableRow,
  { ticks }: Table,
  columns: Columns,
  x: number,
  top: number,
  composing: Composing,
): readonly Item[] {
  const { type } = composing;
  const side = columns.lead;
  const middle = top + baselineIn(type.cell) - 0.328 * type.cell.size;
  const box: readonly Item[] = ticks
    ? [
        {
          kind: 'path',
          what: 'box to tick',
          steps: boxPath({ left: x + 0.5, top: middle - side / 2 + 1, width: side - 2, height: side - 2 }),
          stroke: { color: INK, width: 0.6 },
        },
      ]
    : [];
  return [...box, ...(fabric === undefined ? [] : swatchItems(fabric, x + columns.swatch, middle - side / 2, side, composing))];
}
