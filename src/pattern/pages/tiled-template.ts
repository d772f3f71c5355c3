import type { Setting } from './face.ts';
import { headHeight, headItems, lineOf, measureItems, measureRoom, type Head } from './furniture.ts';
import { MATCH_LINE, QUIET } from './looks.ts';
import { linePath, movedItem, type Item, type Page, type TextItem } from './page.ts';
import { MARGIN, sheetOf, type Lie, type Paper } from './paper.ts';
import { movedBy, partWithin, type Polygon, type Spot } from '../polygons.ts';
import { saidAt, templateLines, templateWords, type Said, type TemplateInk } from './template-drawing.ts';
import { tilingOver, within, type Tile, type Tiling } from './tiles.ts';

/** How far two sheets of one template overlap, in points: room for glue. */
export const OVERLAP = 36;
/** A window's lines keep so far from the margin, which a line's own width would else cross. */
export const INSET = 1;
const LETTER = 11;

/**
 * Lays a template that is larger than a page out over several, in the turn and the lie that need fewest.
 * @param headOf makes the head from what is said of the parts
 * @returns its pages, each waiting to be told its place in the document
 */
export function tiledPages(
  ink: TemplateInk,
  paper: Paper,
  headOf: (said: string, place: string) => Head,
  setting: Setting,
): readonly ((place: string) => Page)[] {
  const lies = (['portrait', 'landscape'] as const).flatMap((lie) => [0, 90].map((degrees) => tiled(ink, degrees, paper, lie, headOf, setting)));
  const { tiles, tiling, drawn, window, size, degrees } = lies.reduce((a, b) => (b.tiles.length < a.tiles.length ? b : a));
  const letters = lettersOf(tiling, tiles);
  const { says } = saidAt(ink, degrees);
  const { words } = ink;
  const uses = says.map(({ count, fabric, print }) => [`${count}: ${fabric}`, ...print].join(', ')).join('; ');
  return tiles.map((tile, i) => (place: string): Page => {
    const part = words.part(i + 1, tiles.length);
    const said = words.join(ink.name, part, uses);
    const lines = drawn.items.flatMap((item) => within(item, tile, window.width, window.height));
    const inside = wordsOn(tile, window, { name: `${ink.name}, ${part}`, says }, drawn, setting);
    const matches = matchItems(tile, tiling, window, letters, setting);
    const moved = [...lines, ...inside, ...matches].map((item) => movedItem(item, MARGIN + INSET, window.top));
    return {
      ...size,
      margin: MARGIN,
      items: [
        ...headItems(headOf(said, place), MARGIN, MARGIN, size.width - 2 * MARGIN, setting),
        ...moved,
        ...measureItems(MARGIN + 0.5, size.height - MARGIN - measureRoom(setting).height - 0.5, setting, words),
      ],
    };
  });
}

interface Tiled {
  readonly degrees: number;
  readonly tiles: readonly Tile[];
  readonly tiling: Tiling;
  readonly drawn: ReturnType<typeof templateLines>;
  readonly window: { readonly width: number; readonly height: number; readonly top: number };
  readonly size: { readonly width: number; readonly height: number };
}

function tiled(ink: TemplateInk, degrees: number, paper: Paper, lie: Lie, headOf: (said: string, place: string) => Head, setting: Setting): Tiled {
  const size = sheetOf(paper, lie);
  const top = MARGIN + headHeight(headOf('', '').lines.length) + INSET;
  const window = {
    width: size.width - 2 * MARGIN - 2 * INSET,
    height: size.height - MARGIN - measureRoom(setting).height - 10 - INSET - top,
    top,
  };
  const drawn = templateLines(ink, degrees);
  const tiling = tilingOver(drawn.cut, window.width, window.height, OVERLAP);
  return { degrees, tiles: tiling.tiles.filter((tile) => shows(drawn.cut, tile, window)), tiling, drawn, window, size };
}

/** What is said of the whole template, on what only this part of it shows; nothing where there is no room. */
function wordsOn(tile: Tile, { width, height }: Tiled['window'], said: Said, drawn: Tiled['drawn'], setting: Setting): readonly Item[] {
  const moved = movedBy(drawn.sewn, [-tile.left, -tile.top]);
  const room = partWithin(moved, { left: OVERLAP, top: OVERLAP, right: width - OVERLAP, bottom: height - OVERLAP });
  return room.length < 3 ? [] : (templateWords(said, room, drawn.grain, setting) ?? []);
}

/** @returns whether anything of an outline lies in a window: neither has an edge with all of the other behind it. */
export function shows(cut: Polygon, { left, top }: Tile, { width, height }: Tiled['window']): boolean {
  const frame: Polygon = [[left, top], [left + width, top], [left + width, top + height], [left, top + height]];
  const parts = (a: Polygon, b: Polygon): boolean =>
    a.some((p, i) => {
      const q = a[(i + 1) % a.length]!;
      return b.every(([x, y]) => (q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0]) <= 0);
    });
  return !parts(cut, frame) && !parts(frame, cut);
}

/** @returns a letter for each place where two printed parts meet, by "row column side". */
export function lettersOf({ rows, columns }: Tiling, tiles: readonly Tile[]): ReadonlyMap<string, string> {
  const printed = (row: number, column: number): boolean => tiles.some((tile) => tile.row === row && tile.column === column);
  const letters = new Map<string, string>();
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (!printed(row, column)) continue;
      if (printed(row, column + 1)) letters.set(`${row} ${column} right`, letterName(letters.size));
      if (printed(row + 1, column)) letters.set(`${row} ${column} below`, letterName(letters.size));
    }
  }
  return letters;
}

/** A, B, … Z, AA, AB, … */
function letterName(i: number): string {
  const last = String.fromCharCode(65 + (i % 26));
  return i < 26 ? last : `${letterName(Math.floor(i / 26) - 1)}${last}`;
}

/** @returns the lines along which a part meets its neighbours, in the middle of what overlaps, each with its letter. */
export function matchItems(
  { row, column }: Tile,
  { across, down }: Tiling,
  { width, height }: Tiled['window'],
  letters: ReadonlyMap<string, string>,
  setting: Setting,
): readonly Item[] {
  const half = OVERLAP / 2;
  const sides: readonly (readonly [string, Spot, Spot])[] = [
    [`${row} ${column} right`, [across + half, 0], [across + half, height]],
    [`${row} ${column - 1} right`, [half, 0], [half, height]],
    [`${row} ${column} below`, [0, down + half], [width, down + half]],
    [`${row - 1} ${column} below`, [0, half], [width, half]],
  ];
  return sides.flatMap(([name, from, to]): Item[] => {
    const letter = letters.get(name);
    if (letter === undefined) return [];
    const upright = from[0] === to[0];
    const written = [0.3, 0.7].map((share): TextItem => {
      const [x, y]: Spot = [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
      return lineOf(letter, upright ? [x + 3, y] : [x, y - 3], { size: LETTER, weight: 'strong', color: QUIET }, setting);
    });
    return [{ kind: 'path', what: `match line ${letter}`, steps: linePath(from, to), stroke: MATCH_LINE }, ...written];
  });
}
