/**
 * A compact notation for traditional blocks. A sheet says how a block is sewn: which plain pieces and which
 * sewn units lie where. The painted areas and the expectation are both read off it, so they cannot disagree.
 *
 * A grid is text, one token a cell, fabrics as single letters:
 *   a       plain            a*2x3   the same over two columns and three rows; . for each cell so covered
 *   a/b     split from bottom left to top right: a lies top left, b bottom right (half-square or half-rectangle triangle)
 *   a\b     split from top left to bottom right: a lies bottom left, b top right
 *   a/bc    the bottom right half is split again: b right, c bottom      ab/c   top left split: a top, b left
 *   a\bc    the top right half is split again: b top, c right            ab\c   bottom left split: a left, b bottom
 *   x:abcd  quarters: top, right, bottom, left
 *   ^:abc   one triangle a pointing up and its two sides b, c (c omitted: both b); also v: >: <:
 *           twice as long as high it is flying geese, square it is a peak
 *   o:abcde square in a square: centre, then corners top left, top right, bottom right, bottom left (all alike: o:ab)
 *   P, P1   a sheet of the legend, turned 0 to 3 quarter turns clockwise
 */
export type Corner = readonly [number, number];

/** A piece of cloth: its fabric letter and its outline in grid steps, y down. */
export interface Cloth {
  readonly fabric: string;
  readonly points: readonly Corner[];
}

export type SewnKind =
  | 'half-square triangle'
  | 'quarter-square triangle'
  | 'split quarter-square triangle'
  | 'flying geese'
  | 'corner-triangle unit'
  | 'square in a square'
  | 'half-rectangle triangle'
  | 'peak'
  | 'free unit';

/** One plain piece or one sewn unit in its place. */
export interface Part {
  readonly kind: 'plain' | SewnKind;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly cloth: readonly Cloth[];
}

export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly parts: readonly Part[];
  /** How many partial-seam rings the plain pieces form. */
  readonly rings: number;
}

const one = (kind: Part['kind'], width: number, height: number, cloth: readonly Cloth[]): Sheet => ({
  width,
  height,
  parts: [{ kind, x: 0, y: 0, width, height, cloth }],
  rings: 0,
});

const box = (fabric: string, w: number, h: number): Cloth => ({ fabric, points: [[0, 0], [w, 0], [w, h], [0, h]] });

/** @returns one plain piece of w by h grid steps */
export const plain = (fabric: string, w: number, h: number): Sheet => one('plain', w, h, [box(fabric, w, h)]);

type Place = 'nw' | 'ne' | 'se' | 'sw';

/** @returns a corner-triangle unit: a base of w by h with triangles of the given fabric and leg on some corners */
export function cornered(base: string, w: number, h: number, corners: Partial<Record<Place, readonly [string, number]>>): Sheet {
  const at: Record<Place, { corner: Corner; legs: (n: number) => [Corner, Corner] }> = {
    nw: { corner: [0, 0], legs: (n) => [[0, n], [n, 0]] },
    ne: { corner: [w, 0], legs: (n) => [[w - n, 0], [w, n]] },
    se: { corner: [w, h], legs: (n) => [[w, h - n], [w - n, h]] },
    sw: { corner: [0, h], legs: (n) => [[n, h], [0, h - n]] },
  };
  const outline: Corner[] = [];
  const triangles: Cloth[] = [];
  for (const place of ['nw', 'ne', 'se', 'sw'] as const) {
    const { corner, legs } = at[place];
    const cut = corners[place];
    if (!cut) outline.push(corner);
    else {
      const [from, to] = legs(cut[1]);
      outline.push(from, to);
      triangles.push({ fabric: cut[0], points: [corner, to, from] });
    }
  }
  const isRepeat = (p: Corner, i: number): boolean => {
    const q = outline[(i + 1) % outline.length]!;
    return p[0] === q[0] && p[1] === q[1];
  };
  return one('corner-triangle unit', w, h, [{ fabric: base, points: outline.filter((p, i) => !isRepeat(p, i)) }, ...triangles]);
}

/** @returns any other unit, piece by piece */
export const free = (w: number, h: number, cloth: readonly Cloth[]): Sheet => one('free unit', w, h, cloth);

const mapped = (sheet: Sheet, width: number, height: number, move: (p: Corner) => Corner): Sheet => ({
  width,
  height,
  rings: sheet.rings,
  parts: sheet.parts.map((part) => {
    const a = move([part.x, part.y]);
    const b = move([part.x + part.width, part.y + part.height]);
    const x = Math.min(a[0], b[0]);
    const y = Math.min(a[1], b[1]);
    const cloth = part.cloth.map((c) => ({ fabric: c.fabric, points: c.points.map(move) }));
    return { kind: part.kind, x, y, width: Math.abs(a[0] - b[0]), height: Math.abs(a[1] - b[1]), cloth };
  }),
});

/** @returns the sheet a quarter turn clockwise, n times */
export function turned(sheet: Sheet, n: number): Sheet {
  return n === 0 ? sheet : turned(mapped(sheet, sheet.height, sheet.width, ([x, y]) => [sheet.height - y, x]), n - 1);
}

/** @returns the sheet k times as large in grid steps */
export const enlarged = (sheet: Sheet, k: number): Sheet => mapped(sheet, sheet.width * k, sheet.height * k, ([x, y]) => [x * k, y * k]);

/** @returns the sheets side by side in their places, as one sheet */
export function together(width: number, height: number, places: readonly (readonly [number, number, Sheet])[]): Sheet {
  const moved = places.map(([dx, dy, sheet]) => mapped(sheet, sheet.width, sheet.height, ([x, y]) => [x + dx, y + dy]));
  return { width, height, parts: moved.flatMap((sheet) => sheet.parts), rings: moved.reduce((n, sheet) => n + sheet.rings, 0) };
}

function split(code: string, w: number, h: number): Sheet {
  const [first, second] = code.split(/[/\\]/) as [string, string];
  const rising = code.includes('/');
  const m: Corner = [w / 2, h / 2];
  const nw: Corner = [0, 0];
  const ne: Corner = [w, 0];
  const se: Corner = [w, h];
  const sw: Corner = [0, h];
  const halves = rising ? ([[nw, ne, sw], [ne, se, sw]] as const) : ([[nw, se, sw], [nw, ne, se]] as const);
  const quarters = rising
    ? ([[[nw, ne, m], [nw, m, sw]], [[ne, se, m], [m, se, sw]]] as const)
    : ([[[nw, m, sw], [m, se, sw]], [[nw, ne, m], [ne, se, m]]] as const);
  const side = (letters: string, i: 0 | 1): Cloth[] =>
    letters.length === 1
      ? [{ fabric: letters, points: halves[i] }]
      : [...letters].map((fabric, k) => ({ fabric, points: quarters[i][k]! }));
  const cloth = [...side(first, 0), ...side(second, 1)];
  if (cloth.length === 3) return one('split quarter-square triangle', w, h, cloth);
  return one(w === h ? 'half-square triangle' : 'half-rectangle triangle', w, h, cloth);
}

function pointing(way: string, letters: string, w: number, h: number): Sheet {
  const turns = '^>v<'.indexOf(way);
  const [base, high] = turns % 2 === 0 ? [w, h] : [h, w];
  const [a, b, c = b] = letters as unknown as string[];
  // The sides are given left and right, or top and bottom, as seen; a turn of two or three quarters swaps them.
  const [left, right] = turns >= 2 ? [c!, b!] : [b!, c!];
  const kind = base === 2 * high ? 'flying geese' : base === high ? 'peak' : undefined;
  if (!kind) throw new Error(`a triangle ${base} wide and ${high} high is neither flying geese nor a peak`);
  const apex: Corner = [base / 2, 0];
  const up = one(kind, base, high, [
    { fabric: a!, points: [apex, [base, high], [0, high]] },
    { fabric: left, points: [[0, 0], apex, [0, high]] },
    { fabric: right, points: [apex, [base, 0], [base, high]] },
  ]);
  return turned(up, turns);
}

function cell(code: string, w: number, h: number): Sheet {
  const letters = code.slice(2);
  if (code.startsWith('x:')) {
    const m: Corner = [w / 2, h / 2];
    const [nw, ne, se, sw]: Corner[] = [[0, 0], [w, 0], [w, h], [0, h]];
    const quarters = [[nw!, ne!, m], [ne!, se!, m], [m, se!, sw!], [nw!, m, sw!]];
    return one('quarter-square triangle', w, h, quarters.map((points, i) => ({ fabric: letters[i]!, points })));
  }
  if (code.startsWith('o:')) {
    const [n, e, s, west]: Corner[] = [[w / 2, 0], [w, h / 2], [w / 2, h], [0, h / 2]];
    const at = (i: number): string => letters[i] ?? letters[1]!;
    return one('square in a square', w, h, [
      { fabric: letters[0]!, points: [n!, e!, s!, west!] },
      { fabric: at(1), points: [[0, 0], n!, west!] },
      { fabric: at(2), points: [n!, [w, 0], e!] },
      { fabric: at(3), points: [e!, [w, h], s!] },
      { fabric: at(4), points: [west!, s!, [0, h]] },
    ]);
  }
  if (/^[\^>v<]:/.test(code)) return pointing(code[0]!, letters, w, h);
  if (/[/\\]/.test(code)) return split(code, w, h);
  if (/^[a-z]$/.test(code)) return plain(code, w, h);
  throw new Error(`no such cell: ${code}`);
}

const sum = (widths: readonly number[]): number => widths.reduce((a, b) => a + b, 0);

/**
 * @param cols widths of the columns in grid steps
 * @param rows heights of the rows in grid steps
 * @param text the tokens, read row by row
 * @param legend sheets named by a capital letter
 */
export function grid(cols: readonly number[], rows: readonly number[], text: string, legend: Record<string, Sheet> = {}): Sheet {
  const tokens = text.trim().split(/\s+/);
  if (tokens.length !== cols.length * rows.length) throw new Error(`${tokens.length} tokens for ${cols.length} x ${rows.length} cells`);
  const places = tokens.flatMap((token, index): [number, number, Sheet][] => {
    if (token === '.') return [];
    const column = index % cols.length;
    const row = Math.floor(index / cols.length);
    const [code, span = '1x1'] = token.split('*') as [string, string?];
    const [across, down] = span.split('x').map(Number) as [number, number];
    const w = sum(cols.slice(column, column + across));
    const h = sum(rows.slice(row, row + down));
    const named = /^([A-Z])([0-3]?)$/.exec(code);
    const sheet = named ? turned(legend[named[1]!]!, Number(named[2] || 0)) : cell(code, w, h);
    return [[sum(cols.slice(0, column)), sum(rows.slice(0, row)), sheet]];
  });
  return together(sum(cols), sum(rows), places);
}

/** @returns a grid of equal cells */
export const even = (columns: number, rows: number, step: number, text: string, legend: Record<string, Sheet> = {}): Sheet =>
  grid(Array(columns).fill(step), Array(rows).fill(step), text, legend);

/**
 * @param centre what the logs are sewn round
 * @param order one log a word: side (t, r, b, l), width, fabric letter; each runs the full length of what is there
 */
export function logs(centre: Sheet, order: string): Sheet {
  return order.trim().split(/\s+/).reduce((inner, word) => {
    const [side, fabric] = [word[0]!, word.at(-1)!];
    const wide = Number(word.slice(1, -1));
    const { width: w, height: h } = inner;
    if (side === 't') return together(w, h + wide, [[0, wide, inner], [0, 0, plain(fabric, w, wide)]]);
    if (side === 'b') return together(w, h + wide, [[0, 0, inner], [0, h, plain(fabric, w, wide)]]);
    if (side === 'l') return together(w + wide, h, [[wide, 0, inner], [0, 0, plain(fabric, wide, h)]]);
    return together(w + wide, h, [[0, 0, inner], [w, 0, plain(fabric, wide, h)]]);
  }, centre);
}

/** @returns a centre square with four equal strips turning clockwise round it, fabrics from the top strip on */
export function ring(centre: Sheet, wide: number, fabrics: string): Sheet {
  const c = centre.width;
  const all = c + 2 * wide;
  const strip = (i: number): Sheet => turned(plain(fabrics[i]!, c + wide, wide), i);
  const round = together(all, all, [
    [wide, wide, centre], [0, 0, strip(0)], [c + wide, 0, strip(1)], [wide, c + wide, strip(2)], [0, wide, strip(3)],
  ]);
  return { ...round, rings: 1 };
}
