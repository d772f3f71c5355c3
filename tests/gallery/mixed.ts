import type { Entry } from './entry.ts';
import { even, grid } from './sheet.ts';
import type { Sheet } from './sheet.ts';

const raw = String.raw;

const four = (a: string, b: string): Sheet => even(2, 2, 1, `${a} ${b} ${b} ${a}`);
const nine = (a: string, b: string): Sheet => even(3, 3, 1, `${a} ${b} ${a} ${b} ${a} ${b} ${a} ${b} ${a}`);
const half = (a: string, b: string, step: number): Sheet => even(1, 1, step, `${a}/${b}`);

export const mixed: readonly Entry[] = [
  {
    file: 'jacobs-ladder-12', name: "Jacob's Ladder", finished: ['12', '12'], ground: 'o', paint: 'cells',
    sheet: even(3, 3, 2, raw`
      F    o\t  F
      t\o  F    o\t
      F    t\o  F`, { F: four('t', 'o') }),
    patches: 28, units: { 'half-square triangle': 4 },
    note: 'five four-patches and four half-square triangles, in two fabrics',
  },
  {
    file: 'road-to-california-9', name: 'Road to California', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 2, raw`
      F1   y/o  F1
      o/y  F1   y/o
      F1   o/y  F1`, { F: four('r', 'o') }),
    patches: 28, units: { 'half-square triangle': 4 },
    note: 'five four-patches and four half-square triangles, in three fabrics',
  },
  {
    file: 'prairie-queen-12', name: 'Prairie Queen', finished: ['12', '12'], ground: 'o',
    sheet: even(3, 3, 2, raw`
      o/t  F  t\o
      F    o  F
      o\t  F  t/o`, { F: four('r', 'o') }),
    patches: 25, units: { 'half-square triangle': 4 },
    note: 'four half-square triangles, four four-patches and a square',
  },
  {
    file: 'churn-dash-12', name: 'Churn Dash', finished: ['12', '12'], ground: 'o', paint: 'cells',
    sheet: even(3, 3, 2, `
      H   R   H1
      R3  o   R1
      H3  R2  H2`, { H: half('o', 't', 2), R: even(2, 2, 1, 't*2x1 . o*2x1 .') }),
    patches: 17, units: { 'half-square triangle': 4 },
    note: 'four half-square triangles, four pairs of strips and a square; inner strips and centre are one fabric',
  },
  {
    file: 'monkey-wrench-10', name: 'Monkey Wrench', finished: ['10', '10'], ground: 'o',
    sheet: grid([2, 1, 2], [2, 1, 2], `
      H   R   H1
      R3  y   R1
      H3  R2  H2`, { H: half('o', 't', 2), R: even(1, 2, 1, 't o') }),
    patches: 17, units: { 'half-square triangle': 4 },
    note: 'four large half-square triangles, four pairs of squares and a centre, on a five-by-five grid',
  },
  {
    file: 'contrary-wife-9', name: 'Contrary Wife', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 1, raw`
      r    o\n  p
      n\o  r    o\n
      p    n\o  r`),
    patches: 13, units: { 'half-square triangle': 4 },
    note: 'five squares and four half-square triangles',
  },
  {
    file: 'double-x-6', name: 'Double X', finished: ['6', '6'], ground: 'o',
    sheet: even(3, 3, 1, `
      y    t/o  t/o
      t/o  y    t/o
      t/o  t/o  y`),
    patches: 15, units: { 'half-square triangle': 6 },
    note: 'six half-square triangles and three squares, in three fabrics',
  },
  {
    file: 'split-nine-patch-9', name: 'Split Nine-Patch', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 1, `
      t    n    t/o
      n    t/o  s
      t/o  s    o`),
    patches: 12, units: { 'half-square triangle': 3 },
    note: 'three half-square triangles between three dark and three light squares',
  },
  {
    file: 'hovering-hawks-8', name: 'Hovering Hawks', finished: ['8', '8'], ground: 'o',
    sheet: even(4, 4, 1, `
      o    o/y  o/n  o
      o/y  o/n  o    o/n
      o/n  o    o/n  o/y
      o    o/n  o/y  o`),
    patches: 26, units: { 'half-square triangle': 10 },
    note: 'ten half-square triangles and six squares, four by four',
  },
  {
    file: 'old-maids-puzzle-12', name: "Old Maid's Puzzle", finished: ['12', '12'], ground: 'o',
    sheet: even(4, 4, 1, `
      o/r*2x2  .    o    o/t
      .        .    o/t  o
      o        t/o  r/o*2x2  .
      t/o      o    .        .`),
    patches: 16, units: { 'half-square triangle': 6 },
    note: 'two large half-square triangles, and two four-patches of two squares and two small half-square triangles',
  },
  {
    file: 'flock-of-geese-8', name: 'Flock of Geese', finished: ['8', '8'], ground: 'o',
    sheet: even(4, 4, 1, `
      o/t*2x2  .    o/t  o/t
      .        .    o/t  o/t
      o/t  o/t  o/t*2x2  .
      o/t  o/t  .        .`),
    patches: 20, units: { 'half-square triangle': 10 },
    note: 'two large and eight small half-square triangles, in two fabrics',
  },
  {
    file: 'lady-of-the-lake-10', name: 'Lady of the Lake', finished: ['10', '10'], ground: 'o',
    sheet: even(5, 5, 1, `
      o/t  o/t      o/t  o/t  o/t
      o/t  o/t*3x3  .    .    o/t
      o/t  .        .    .    o/t
      o/t  .        .    .    o/t
      o/t  o/t      o/t  o/t  o/t`),
    patches: 34, units: { 'half-square triangle': 17 },
    note: 'one large half-square triangle in a border of sixteen small ones',
  },
  {
    file: 'sawtooth-frame-12', name: 'Sawtooth Frame', finished: ['12', '12'], ground: 'o',
    sheet: grid([1, 4, 1], [1, 4, 1], `
      o   R   o
      R3  b   R1
      o   R2  o`, { R: even(4, 1, 1, 'o/t o/t o/t o/t') }),
    patches: 37, units: { 'half-square triangle': 16 },
    note: 'a large square in a border of sixteen half-square triangles and four corner squares',
  },
  {
    file: 'cake-stand-8', name: 'Cake Stand', finished: ['8', '8'], ground: 'o',
    sheet: even(4, 4, 1, raw`
      s    o/r      o/r  o*1x2
      o/r  t/y*2x2  .    .
      o/r  .        .    t/o
      o*2x1  .      t/o  s`),
    patches: 18, units: { 'half-square triangle': 7 },
    note: 'one large and six small half-square triangles, two rectangles and two corner squares of a fabric of their own',
  },
  {
    file: 'goose-in-the-pond-15', name: 'Goose in the Pond', finished: ['15', '15'], ground: 'o',
    sheet: even(5, 5, 3, `
      o   H   H   H   o
      H3  N   R   N   H1
      H3  R1  o   R1  H1
      H3  N   R   N   H1
      o   H2  H2  H2  o`, { H: half('o', 't', 3), N: nine('o', 'n'), R: even(3, 3, 1, 'n*3x1 . . o*3x1 . . n*3x1 . .') }),
    patches: 77, units: { 'half-square triangle': 12 },
    note: 'four nine-patches, four strip units, twelve half-square triangles and five squares',
  },
];
