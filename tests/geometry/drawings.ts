import fc from 'fast-check';
import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { isSimple } from './oracle.ts';

/** The same random drawings on every machine and every run. */
export const SEED = 20261107;

/** @returns how a law is tried: so many drawings, always the same */
export const tries = (numRuns: number): { readonly seed: number; readonly numRuns: number } => ({ seed: SEED, numRuns });

const CLOTHS = ['fog', 'rope', 'buoy', 'lamp', 'slate'] as const;

export type Patch = Drawing['patches'][number];

/** Cells of a grid in lattice steps: even sizes that can be halved and halved again, as the door from block to drawing makes them. */
export interface Grid {
  readonly across: number;
  readonly down: number;
  readonly cell: readonly [number, number];
}

/** @returns an unpainted drawing of the ground alone */
export const unpainted = ({ across, down, cell: [w, h] }: Grid): Drawing => ({
  width: across * w,
  height: down * h,
  columns: Array.from({ length: across + 1 }, (_, i) => i * w),
  rows: Array.from({ length: down + 1 }, (_, i) => i * h),
  ground: 'oat',
  patches: [],
  seams: [],
});

/** Grids of 1 … most cells each way; mostly square cells, now and then oblong ones. */
export const grid = (most: number): fc.Arbitrary<Grid> =>
  fc
    .record({
      across: fc.noBias(fc.integer({ min: 1, max: most })),
      down: fc.noBias(fc.integer({ min: 1, max: most })),
      cell: fc.constantFrom([4, 4], [4, 4], [4, 4], [12, 12], [4, 8], [12, 8] as const),
    })
    .map(({ across, down, cell: [w, h] }) => ({ across, down, cell: [w!, h!] }));

/** One to four cloths over the ground, so that a drawing has two to five. */
const cloths: fc.Arbitrary<readonly string[]> = fc.integer({ min: 1, max: 4 }).map((n) => ['oat', ...CLOTHS.slice(0, n)]);

/** A patch without its cloth. */
type Outline = readonly Lattice[];

const rectangleOf = (x0: number, y0: number, x1: number, y1: number): Outline => [[x0, y0], [x1, y0], [x1, y1], [x0, y1]];

/** Rectangles of whole cells. */
export const rectangles = ({ across, down, cell: [w, h] }: Grid): fc.Arbitrary<Outline> =>
  fc
    .tuple(fc.nat(across - 1), fc.nat(down - 1), fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
    .map(([i, j, m, n]) => rectangleOf(i * w, j * h, Math.min(across, i + m) * w, Math.min(down, j + n) * h));

/** Half cells: a cell without one of its corners. */
const halves = ({ across, down, cell: [w, h] }: Grid): fc.Arbitrary<Outline> =>
  fc
    .tuple(fc.nat(across - 1), fc.nat(down - 1), fc.nat(3))
    .map(([i, j, without]) => rectangleOf(i * w, j * h, (i + 1) * w, (j + 1) * h).filter((_, k) => k !== without));

/** Quarter cells: two corners of a cell and its middle. */
const quarters = ({ across, down, cell: [w, h] }: Grid): fc.Arbitrary<Outline> =>
  fc.tuple(fc.nat(across - 1), fc.nat(down - 1), fc.nat(3)).map(([i, j, side]) => {
    const corners = rectangleOf(i * w, j * h, (i + 1) * w, (j + 1) * h);
    return [corners[side]!, corners[(side + 1) % 4]!, [i * w + w / 2, j * h + h / 2]];
  });

/** Triangles over two or three cells: geese, peaks and their like. */
const wedges = ({ across, down, cell: [w, h] }: Grid): fc.Arbitrary<Outline> =>
  fc
    .tuple(fc.nat(across), fc.nat(down), fc.constantFrom(-2, -1, 1, 2), fc.constantFrom(-2, -1, 1, 2), fc.boolean())
    .filter(([i, j, m, n]) => i + m >= 0 && i + m <= across && j + n >= 0 && j + n <= down)
    .map(
      ([i, j, m, n, lying]): Outline =>
        lying
          ? [[i * w, j * h], [i * w, (j + n) * h], [(i + m) * w, j * h + (n * h) / 2]]
          : [[i * w, j * h], [(i + m) * w, j * h], [i * w + (m * w) / 2, (j + n) * h]],
    );

/** Squares on point over a cell, or over two by two where there is room. */
const onPoint = ({ across, down, cell: [w, h] }: Grid): fc.Arbitrary<Outline> =>
  fc.tuple(fc.nat(across - 1), fc.nat(down - 1), fc.constantFrom(1, 2)).map(([i, j, n]) => {
    const [x, y] = [Math.min(i, Math.max(0, across - n)) * w, Math.min(j, Math.max(0, down - n)) * h];
    const [m, k] = [Math.min(n, across) * w, Math.min(n, down) * h];
    return [[x + m / 2, y], [x + m, y + k / 2], [x + m / 2, y + k], [x, y + k / 2]];
  });

/** @returns whether no three neighbours lie on a line */
const turnsEverywhere = (points: Outline): boolean =>
  points.every(([x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    const [s, t] = points[(i + 2) % points.length]!;
    return (u - x) * (t - v) !== (v - y) * (s - u);
  });

/** Outlines of 3 to `most` corners anywhere on the even lattice points, with any slopes, not always convex. */
export const slopes = ({ across, down, cell: [w, h] }: Grid, most = 5): fc.Arbitrary<Outline> =>
  fc
    .array(fc.tuple(fc.nat((across * w) / 2), fc.nat((down * h) / 2)), { minLength: 3, maxLength: most })
    .map((points) => points.map(([x, y]): Lattice => [2 * x, 2 * y]))
    .filter((points) => turnsEverywhere(points) && isSimple(points));

/** Seams asked for: along the grid, across cells, or anywhere. */
const seams = ({ across, down, cell: [w, h] }: Grid): fc.Arbitrary<readonly [Lattice, Lattice]> => {
  const corner = fc.tuple(fc.nat(across), fc.nat(down));
  return fc
    .tuple(corner, corner)
    .filter(([[i, j], [k, l]]) => i !== k || j !== l)
    .map(([[i, j], [k, l]]): readonly [Lattice, Lattice] => [[i * w, j * h], [k * w, l * h]]);
};

/** What random drawings may hold. */
export interface Kinds {
  /** Most cells each way. */
  readonly cells: number;
  /** Most patches of parts of cells and of rectangles. */
  readonly strokes: number;
  /** Most patches of free slopes. */
  readonly free: number;
  readonly seams: number;
  readonly whole: boolean;
}

export const EVERYTHING: Kinds = { cells: 6, strokes: 12, free: 1, seams: 2, whole: false };

/** Random drawings, patches over patches. */
export const drawings = (kinds: Kinds): fc.Arbitrary<Drawing> =>
  fc.tuple(grid(kinds.cells), cloths).chain(([sheet, known]) => {
    const cloth = fc.constantFrom(...known);
    const whole = kinds.whole ? fc.integer({ min: 0, max: 3 }).map((n) => n === 0) : fc.constant(false);
    const patch = (outline: fc.Arbitrary<Outline>): fc.Arbitrary<Patch> =>
      fc.tuple(cloth, outline, whole).map(([fabric, points, one]) => ({ fabric, points, ...(one && { whole: true }) }));
    const strokes = fc.array(
      patch(fc.oneof(halves(sheet), halves(sheet), quarters(sheet), wedgesOf(sheet), onPoint(sheet), rectangles(sheet))),
      {
        maxLength: kinds.strokes,
        size: 'max',
      },
    );
    const free = fc.array(patch(slopes(sheet)), { maxLength: kinds.free });
    return fc.record({ strokes, free, under: fc.boolean(), lines: fc.array(seams(sheet), { maxLength: kinds.seams }) }).map(
      (parts): Drawing => ({
        ...unpainted(sheet),
        patches: parts.under ? [...parts.free, ...parts.strokes] : [...parts.strokes, ...parts.free],
        seams: parts.lines,
      }),
    );
  });

const wedgesOf = (sheet: Grid): fc.Arbitrary<Outline> => (sheet.across > 1 && sheet.down > 1 ? wedges(sheet) : halves(sheet));

/** The drawings most quilts are: one tile of two by two cells, set several times with turns. */
export const tiled: fc.Arbitrary<Drawing> = fc
  .record({ k: fc.integer({ min: 2, max: 3 }), known: cloths, turns: fc.array(fc.nat(3), { minLength: 9, maxLength: 9 }) })
  .chain(({ k, known, turns }) => {
    const tile: Grid = { across: 2, down: 2, cell: [4, 4] };
    const patch = fc.tuple(
      fc.constantFrom(...known),
      fc.oneof(halves(tile), quarters(tile), wedges(tile), onPoint(tile), rectangles(tile)),
    );
    return fc.array(patch, { minLength: 1, maxLength: 5 }).map(
      (strokes): Drawing => ({
        ...unpainted({ across: 2 * k, down: 2 * k, cell: [4, 4] }),
        patches: Array.from({ length: k * k }).flatMap((_, at) =>
          strokes.map(([fabric, points]) => ({
            fabric,
            points: points.map((p) => moved(quarterTurns(p, turns[at]!, 8), (at % k) * 8, Math.floor(at / k) * 8)),
          })),
        ),
      }),
    );
  });

const moved = ([x, y]: Lattice, dx: number, dy: number): Lattice => [x + dx, y + dy];

/** @returns a point of a square of this side after quarter turns clockwise on screen */
function quarterTurns([x, y]: Lattice, turns: number, side: number): Lattice {
  return turns === 0 ? [x, y] : quarterTurns([side - y, x], turns - 1, side);
}

/** Four arms that turn round a centre, either way, with half cells painted over them here and there. */
export const whirls: fc.Arbitrary<Drawing> = fc
  .record({
    left: fc.integer({ min: 1, max: 2 }),
    top: fc.integer({ min: 1, max: 2 }),
    wide: fc.integer({ min: 1, max: 2 }),
    high: fc.integer({ min: 1, max: 2 }),
    right: fc.integer({ min: 1, max: 2 }),
    bottom: fc.integer({ min: 1, max: 2 }),
    mirrored: fc.boolean(),
  })
  .chain(({ left, top, wide, high, right, bottom, mirrored }) => {
    const sheet: Grid = { across: left + wide + right, down: top + high + bottom, cell: [4, 4] };
    const blank = unpainted(sheet);
    const [x, y, u, v] = [left * 4, top * 4, (left + wide) * 4, (top + high) * 4];
    const parts = [[0, 0, u, y], [u, 0, blank.width, v], [x, v, blank.width, blank.height], [0, y, x, blank.height], [x, y, u, v]] as const;
    const arms = parts.map(
      ([x0, y0, x1, y1], i): Patch => ({
        fabric: CLOTHS[i]!,
        points: mirrored ? rectangleOf(blank.width - x1, y0, blank.width - x0, y1) : rectangleOf(x0, y0, x1, y1),
      }),
    );
    const corner = fc.tuple(fc.constantFrom(...CLOTHS), halves(sheet)).map(([fabric, points]): Patch => ({ fabric, points }));
    return fc.array(corner, { maxLength: 3 }).map((corners): Drawing => ({ ...blank, patches: [...arms, ...corners] }));
  });

/** Drawings in which no patch lies over another: each cell holds a half, a quarter, a whole cell or nothing. */
export const apart = (most: number): fc.Arbitrary<Drawing> =>
  fc.tuple(grid(most), cloths).chain(([sheet, known]) => {
    const {
      across,
      down,
      cell: [w, h],
    } = sheet;
    const one: Grid = { across: 1, down: 1, cell: sheet.cell };
    const motif = fc.oneof(halves(one), quarters(one), fc.constant(rectangleOf(0, 0, w, h)), fc.constant(null));
    const cell = fc.tuple(fc.constantFrom(...known), motif);
    return fc.array(cell, { minLength: across * down, maxLength: across * down }).map(
      (cells): Drawing => ({
        ...unpainted(sheet),
        patches: cells.flatMap(([fabric, points], at): Patch[] =>
          points ? [{ fabric, points: points.map((p) => moved(p, (at % across) * w, Math.floor(at / across) * h)) }] : [],
        ),
      }),
    );
  });
