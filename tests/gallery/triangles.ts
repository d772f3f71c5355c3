import type { Entry } from './entry.ts';
import { area } from './entry.ts';
import { cornered, even, free, grid, plain, together, turned } from './sheet.ts';
import type { Sheet } from './sheet.ts';

const raw = String.raw;

const paw = (claw: string, pad: string): Sheet => even(3, 3, 1, `
  o           o/${claw}  o/${claw}
  o/${claw}   ${pad}*2x2 .
  o/${claw}   .          .`);

const brood = even(3, 3, 1, `
  o/y  o/y    o/t
  o/y  o*2x2  .
  o/t  .      .`);

/** A large triangle against a small light and dark square flanked by two light triangles: five pieces. */
const duck = free(2, 2, [
  { fabric: 't', points: [[2, 0], [2, 2], [0, 2]] },
  { fabric: 'y', points: [[0, 0], [1, 0], [0, 1]] },
  { fabric: 't', points: [[1, 0], [1, 1], [0, 1]] },
  { fabric: 'o', points: [[1, 0], [2, 0], [1, 1]] },
  { fabric: 'o', points: [[0, 1], [1, 1], [0, 2]] },
]);

const bow = (knot: string, step: number): Sheet => {
  const back = cornered('o', step, step, { se: [knot, step / 2] });
  return together(2 * step, 2 * step, [
    [0, 0, back], [step, 0, plain(knot, step, step)],
    [0, step, plain(knot, step, step)], [step, step, turned(back, 2)],
  ]);
};

const spool = together(4, 4, [
  [0, 0, cornered('n', 4, 1, { se: ['o', 1], sw: ['o', 1] })],
  [0, 1, plain('o', 1, 2)], [1, 1, plain('r', 2, 2)], [3, 1, plain('o', 1, 2)],
  [0, 3, cornered('n', 4, 1, { nw: ['o', 1], ne: ['o', 1] })],
]);

const attic = (pane: string): Sheet => even(3, 3, 1, `
  t*1x2  ${pane}*2x2  .
  .      .            .
  t/g    g*2x1        .`);

export const triangles: readonly Entry[] = [
  {
    file: 'shoo-fly-9-on-9', name: 'Shoo Fly', finished: ['9', '9'], ground: 'o', finer: 3, paint: 'cells',
    sheet: even(3, 3, 1, raw`
      o/t  o  t\o
      o    t  o
      o\t  o  t/o`),
    patches: 13, units: { 'half-square triangle': 4 },
    note: 'five squares and four half-square triangles; the side squares run on into the corners',
  },
  {
    file: 'pinwheel-8-on-2', name: 'Pinwheel', finished: ['8', '8'], ground: 'o',
    sheet: even(2, 2, 1, 'P P1 P3 P2', { P: even(1, 1, 1, raw`t\o`) }),
    patches: 8, units: { 'half-square triangle': 4 },
    note: 'four half-square triangles, on the smallest grid there is',
  },
  {
    file: 'double-pinwheel-8', name: 'Double Pinwheel', finished: ['8', '8'], ground: 'o',
    sheet: even(2, 2, 1, 'P P1 P3 P2', { P: even(1, 1, 1, raw`t\oy`) }),
    patches: 12, units: { 'split quarter-square triangle': 4 },
    note: 'four split quarter-square triangles',
  },
  {
    file: 'four-hourglasses-8', name: 'Four Hourglasses', finished: ['8', '8'], ground: 'o',
    sheet: even(2, 2, 1, 'x:toto x:otot x:otot x:toto'),
    patches: 16, units: { 'quarter-square triangle': 4 },
    note: 'four quarter-square triangles, every other one turned',
  },
  {
    file: 'hourglass-nine-9', name: 'Hourglass Nine', finished: ['9', '9'], ground: 'o', paint: 'all',
    sheet: even(3, 3, 1, `
      x:toto  y       x:toto
      y       x:toto  y
      x:toto  y       x:toto`),
    patches: 24, units: { 'quarter-square triangle': 5 },
    note: 'five quarter-square triangles and four squares',
  },
  {
    file: 'broken-dishes-12', name: 'Broken Dishes', finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 2, 'D D D D', { D: even(2, 2, 1, raw`r\o  s/t  t/s  o\r`) }),
    patches: 32, units: { 'half-square triangle': 16 },
    note: 'sixteen half-square triangles from two pairs of fabrics; no two triangles of a fabric touch',
  },
  {
    file: 'dutchmans-puzzle-12', name: "Dutchman's Puzzle", finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 2, 'D D1 D3 D2', { D: even(2, 2, 1, '^:to*2x1 . ^:ro*2x1 .') }),
    patches: 24, units: { 'flying geese': 8 },
    note: 'eight flying geese in four pairs',
  },
  {
    file: 'flying-geese-column-6x12', name: 'Flying Geese', finished: ['6', '12'], ground: 'o',
    sheet: even(2, 4, 1, '^:to*2x1 . ^:ro*2x1 . ^:to*2x1 . ^:ro*2x1 .'),
    patches: 12, units: { 'flying geese': 4 },
    note: 'four flying geese in a column; not square',
  },
  {
    file: 'wild-geese-strip-8x12', name: 'Wild Geese Strip', finished: ['8', '12'], ground: 'o',
    sheet: grid([2, 2, 2, 2], [2, 2, 2, 2, 2, 2], `
      n*1x6  ^:to*2x1  .  n*1x6
      .      ^:to*2x1  .  .
      .      ^:to*2x1  .  .
      .      ^:to*2x1  .  .
      .      ^:to*2x1  .  .
      .      ^:to*2x1  .  .`),
    patches: 20, units: { 'flying geese': 6 },
    note: 'six flying geese between two strips; not square',
  },
  {
    file: 'louisiana-8', name: 'Louisiana', finished: ['8', '8'], ground: 'o',
    sheet: even(2, 2, 2, 'L L1 L3 L2', { L: even(2, 2, 1, 'o*2x1 . ^:tr*2x1 .') }),
    patches: 16, units: { 'flying geese': 4 },
    note: 'four quarters, each one flying geese and one rectangle',
  },
  {
    file: 'capital-t-12', name: 'Capital T', finished: ['12', '12'], ground: 'o',
    sheet: even(3, 3, 2, raw`
      o/t  T  r\o
      L    o  R
      o\r  B  t/o`, {
      T: even(2, 2, 1, '^:otr*2x1 . ^:otr*2x1 .'),
      B: even(2, 2, 1, 'v:ort*2x1 . v:ort*2x1 .'),
      L: even(2, 2, 1, '<:otr*1x2 <:otr*1x2 . .'),
      R: even(2, 2, 1, '>:ort*1x2 >:ort*1x2 . .'),
    }),
    patches: 33, units: { 'half-square triangle': 4, 'flying geese': 8 },
    note: 'four half-square triangles, eight flying geese in pairs, one square',
  },
  {
    file: 'bears-paw-10-1-2', name: "Bear's Paw", finished: ['21/2', '21/2'], ground: 'o', paint: 'cells',
    sheet: grid([3, 1, 3], [3, 1, 3], 'P s Q1 s n s Q3 s P2', { P: paw('t', 'r'), Q: paw('g', 'y') }),
    patches: 45, units: { 'half-square triangle': 16 },
    note: 'four paws, each a square, four half-square triangles and a corner square; four strips and a centre',
  },
  {
    file: 'bears-paw-14-two-fabrics', name: "Bear's Paw", finished: ['14', '14'], ground: 'o', finer: 2,
    sheet: grid([3, 1, 3], [3, 1, 3], 'P o P1 o t o P3 o P2', { P: paw('t', 't') }),
    patches: 45, units: { 'half-square triangle': 16 },
    note: 'the same in two fabrics, the strips of the ground fabric, on half the grid step',
  },
  {
    file: 'hens-and-chickens-14', name: 'Hens and Chickens', finished: ['14', '14'], ground: 'o',
    sheet: grid([3, 1, 3], [3, 1, 3], 'B t B1 t y t B3 t B2', { B: brood }),
    patches: 49, units: { 'half-square triangle': 20 },
    note: 'four corners, each a square and five half-square triangles; four strips and a centre',
  },
  {
    file: 'duck-and-ducklings-10', name: 'Duck and Ducklings', finished: ['10', '10'], ground: 'o',
    sheet: grid([2, 1, 2], [2, 1, 2], 'D o D1 o r o D3 o D2', { D: duck }),
    patches: 25, units: { 'free unit': 4 }, open: ['units'],
    note: 'each corner a large triangle against a pieced one (a small light and dark square, two light triangles); four bars and a centre',
  },
  {
    file: 'maple-leaf-9-on-18', name: 'Maple Leaf', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 6, `
      o    o/r  o/r
      o/r  r    r
      o/r  r    S`, { S: cornered('r', 6, 6, { ne: ['o', 5], sw: ['o', 5] }) }),
    patches: 15, units: { 'half-square triangle': 4, 'corner-triangle unit': 1 },
    note: 'four half-square triangles, four squares and a stem: a square with two opposite corners (3-inch squares on a 3 1/2-inch square)',
  },
  {
    file: 'bow-tie-6', name: 'Bow Tie', finished: ['6', '6'], ground: 'o',
    sheet: bow('t', 2),
    patches: 6, units: { 'corner-triangle unit': 2 },
    note: 'two plain squares and two squares with one corner each',
  },
  {
    file: 'four-bow-ties-12', name: 'Four Bow Ties', finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 4, 'T R1 R1 T', { T: bow('t', 2), R: bow('r', 2) }),
    patches: 24, units: { 'corner-triangle unit': 8 },
    note: 'four bow ties; the ground squares of neighbours run together',
  },
  {
    file: 'snowball-and-nine-patch-12', name: 'Snowball and Nine-Patch', finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 6, 'N S S N', {
      N: even(3, 3, 2, 't o t o t o t o t'),
      S: cornered('y', 6, 6, { nw: ['t', 2], ne: ['t', 2], se: ['t', 2], sw: ['t', 2] }),
    }),
    patches: 28, units: { 'corner-triangle unit': 2 },
    note: 'two nine-patches and two snowballs (squares with four corners)',
  },
  {
    file: 'spool-8', name: 'Spool', finished: ['8', '8'], ground: 'o',
    sheet: spool,
    patches: 9, units: { 'corner-triangle unit': 2 },
    note: 'two rectangles with two corners each, a square and two rectangles between them',
  },
  {
    file: 'attic-windows-12', name: 'Attic Windows', finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 3, 'A B C D', { A: attic('b'), B: attic('y'), C: attic('r'), D: attic('s') }),
    patches: 20, units: { 'half-square triangle': 4 },
    note: 'four windows, each a pane, two sills and a half-square triangle instead of a mitre',
  },
  {
    file: 'rolling-stone-9', name: 'Rolling Stone', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 2, `
      o:to  R  o:to
      R3    t  R1
      o:to  R2 o:to`, { R: even(2, 2, 1, 'o*2x1 . t*2x1 .') }),
    patches: 29, units: { 'square in a square': 4 },
    note: 'four squares in a square, four pairs of strips and a centre square',
  },
  {
    file: 'squares-on-point-8', name: 'Squares on Point', finished: ['8', '8'], ground: 'o',
    sheet: even(2, 2, 2, 'o:to o:ro o:ro o:to'),
    patches: 20, units: { 'square in a square': 4 },
    note: 'four squares in a square; the ground corners meet to one area in the middle',
  },
  {
    file: 'economy-patch-8', name: 'Economy Patch', finished: ['8', '8'], ground: 'o',
    sheet: free(4, 4, [
      area('r', 1, 1, 2, 2),
      ...[0, 1, 2, 3].flatMap((n) => turned(free(4, 4, [
        { fabric: 't', points: [[2, 0], [3, 1], [1, 1]] },
        { fabric: 'o', points: [[0, 0], [2, 0], [0, 2]] },
      ]), n).parts[0]!.cloth),
    ]),
    painted: [{ fabric: 't', points: [[2, 0], [4, 2], [2, 4], [0, 2]] }, area('r', 1, 1, 2, 2)],
    patches: 9, units: { 'free unit': 1 }, open: ['units', 'plain'],
    note: 'a centre square and two rounds of four triangles',
  },
  {
    file: 'half-rectangle-darts-12x9', name: 'Darts', finished: ['12', '9'], ground: 'o',
    sheet: grid([4, 4], [2, 2, 2], raw`
      o/t  r\o
      o/t  r\o
      o/t  r\o`),
    patches: 12, units: { 'half-rectangle triangle': 6 },
    note: 'six half-rectangle triangles, three of each hand; not square',
  },
];
