import type { Entry } from './entry.ts';
import { area } from './entry.ts';
import { even, grid, logs, plain, ring } from './sheet.ts';
import type { Sheet } from './sheet.ts';

const four = (a: string, b: string): Sheet => even(2, 2, 1, `${a} ${b} ${b} ${a}`);
const nine = (a: string, b: string): Sheet => even(3, 3, 1, `${a} ${b} ${a} ${b} ${a} ${b} ${a} ${b} ${a}`);
const cross = (unit: Sheet): Sheet => even(3, 3, unit.width, 'N o N o N o N o N', { N: unit });

const trip = (size: number, fabrics: string): string => {
  const middle = (size - 1) / 2;
  const at = (x: number, y: number): string => fabrics[(Math.abs(x - middle) + Math.abs(y - middle)) % fabrics.length]!;
  return Array.from({ length: size * size }, (_, i) => at(i % size, Math.floor(i / size))).join(' ');
};

const ROUNDS = ['t1y r1y b1t l1t', 't1s r1s b1n l1n', 't1y r1y b1t l1t', 't1s r1s b1n l1n', 't1y r1y b1t l1t'];
const cabin = (rounds: number): Sheet => logs(plain('r', 1, 1), ROUNDS.slice(0, rounds).join(' '));

export const squares: readonly Entry[] = [
  {
    file: 'nine-patch-9', name: 'Nine-Patch', finished: ['9', '9'], ground: 'o',
    sheet: nine('t', 'o'),
    patches: 9, units: {},
    note: 'nine squares',
  },
  {
    file: 'checkerboard-8', name: 'Checkerboard', finished: ['8', '8'], ground: 'o',
    sheet: even(8, 8, 1, Array.from({ length: 64 }, (_, i) => ((i % 8) + Math.floor(i / 8)) % 2 ? 'o' : 't').join(' ')),
    patches: 64, units: {},
    note: 'sixty-four squares',
  },
  {
    file: 'trip-around-the-world-9', name: 'Trip Around the World', finished: ['9', '9'], ground: 'o', paint: 'all',
    sheet: even(9, 9, 1, trip(9, 'rytno')),
    patches: 81, units: {},
    note: 'eighty-one squares in diamond rings',
  },
  {
    file: 'double-four-patch-8', name: 'Double Four-Patch', finished: ['8', '8'], ground: 'o',
    sheet: even(2, 2, 2, 'F o o F', { F: four('t', 'o') }),
    patches: 10, units: {},
    note: 'two four-patches and two squares; the ground runs on between them',
  },
  {
    file: 'single-irish-chain-12', name: 'Single Irish Chain', finished: ['12', '12'], ground: 'o', paint: 'cells',
    sheet: even(2, 2, 3, 'N o o N', { N: nine('t', 'o') }),
    patches: 20, units: {},
    note: 'two nine-patches and two squares',
  },
  {
    file: 'double-irish-chain-12-1-2', name: 'Double Irish Chain', finished: ['25/2', '25/2'], ground: 'o',
    sheet: even(5, 5, 1, `
      n t o t n
      t n t n t
      o t n t o
      t n t n t
      n t o t n`),
    patches: 25, units: {},
    note: 'twenty-five squares',
  },
  {
    file: 'double-nine-patch-9-three-fabrics', name: 'Double Nine-Patch', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 3, 'N o N o M o N o N', { N: nine('t', 'o'), M: nine('r', 'o') }),
    patches: 49, units: {},
    note: 'five nine-patches and four plain squares',
  },
  {
    file: 'treble-nine-patch-27', name: 'Treble Nine-Patch', finished: ['27', '27'], ground: 'o',
    sheet: cross(cross(nine('t', 'o'))),
    patches: 249, units: {},
    note: 'five double nine-patches of 49 pieces and four plain squares',
  },
  {
    file: 'puss-in-the-corner-12', name: 'Puss in the Corner', finished: ['12', '12'], ground: 'o',
    sheet: grid([1, 2, 1], [1, 2, 1], 't o t o r o t o t'),
    patches: 9, units: {},
    note: 'a large square, four rectangles and four corner squares',
  },
  {
    file: 'rail-fence-9', name: 'Rail Fence', finished: ['9', '9'], ground: 'o', paint: 'all',
    sheet: even(3, 3, 3, 'R R1 R R1 R R1 R R1 R', { R: even(3, 3, 1, 'y*3x1 . . t*3x1 . . r*3x1 . .') }),
    patches: 27, units: {},
    note: 'nine units of three strips, every other one turned',
  },
  {
    file: 'coin-columns-15x12', name: 'Coin Columns', finished: ['15', '12'], ground: 'o',
    sheet: even(5, 8, 1, `
      o*1x8  r  o*1x8  y  o*1x8
      .      t  .      n  .
      .      y  .      r  .
      .      n  .      t  .
      .      r  .      y  .
      .      t  .      n  .
      .      y  .      r  .
      .      n  .      t  .`),
    patches: 19, units: {},
    note: 'two columns of eight coins between three strips; the grid cells are 3 by 1 1/2 inches',
  },
  {
    file: 'log-cabin-7', name: 'Log Cabin', finished: ['7', '7'], ground: 'o', paint: 'cells',
    sheet: cabin(3),
    patches: 13, units: {},
    note: 'a centre and three rounds of logs; the two light and the two dark logs of a round share a fabric',
  },
  {
    file: 'log-cabin-12-wide-centre', name: 'Log Cabin', finished: ['12', '12'], ground: 'o',
    sheet: logs(plain('r', 2, 2), 't1y r1s b1t l1n  t1b r1y b1p l1t  t1s r1b b1n l1p'),
    patches: 13, units: {},
    note: 'a 3-inch centre and three rounds of 1 1/2-inch logs, no two neighbours alike',
  },
  {
    file: 'log-cabin-10-off-centre', name: 'Off-Centre Log Cabin', finished: ['10', '10'], ground: 'o',
    sheet: logs(plain('r', 1, 1), 't1y r1y b2t l2t  t1s r1s b2n l2n  t1y r1y b2t l2t'),
    patches: 13, units: {},
    note: 'a centre and three rounds, light logs half as wide as dark ones',
  },
  {
    file: 'log-cabin-11-on-44', name: 'Log Cabin', finished: ['11', '11'], ground: 'o', finer: 4,
    sheet: cabin(5),
    patches: 21, units: {},
    note: 'a centre and five rounds of logs, on a grid four times as fine as needed',
  },
  {
    file: 'quarter-log-cabin-12', name: 'Quarter Log Cabin', finished: ['12', '12'], ground: 'o',
    sheet: logs(plain('r', 2, 2), 'r1y b1t r1s b1n r1y b1t r1s b1n'),
    patches: 9, units: {},
    note: 'a corner square and four rounds of two logs',
  },
  {
    file: 'four-log-cabins-10', name: 'Four Log Cabins', finished: ['10', '10'], ground: 'o',
    sheet: even(2, 2, 5, 'C1 C2 C0 C3', { C: cabin(2) }),
    patches: 36, units: {},
    note: 'four log cabins of two rounds, light sides together; logs of neighbours run into each other',
  },
  {
    file: 'courthouse-steps-7', name: 'Courthouse Steps', finished: ['7', '7'], ground: 'o',
    sheet: logs(plain('r', 1, 1), 't1y b1y l1t r1t  t1s b1s l1n r1n  t1y b1y l1t r1t'),
    patches: 13, units: {},
    note: 'a centre and three rounds, opposite strips first',
  },
  {
    file: 'courthouse-steps-10-wide-centre', name: 'Courthouse Steps', finished: ['10', '10'], ground: 'o',
    sheet: logs(plain('y', 4, 4), 't1o b1o l1t r1t  t2b b2b l2r r2r'),
    patches: 9, units: {},
    note: 'a wide centre, narrow strips, then wide strips',
  },
  {
    file: 'white-house-steps-12', name: 'White House Steps', finished: ['12', '12'], ground: 'o',
    sheet: logs(plain('r', 2, 2), 't1o b1o l1o r1o  t1t b1t l1t r1t'),
    painted: [area('t', 0, 0, 6, 6), area('o', 1, 1, 4, 4), area('r', 2, 2, 2, 2)],
    patches: 9, units: {},
    note: 'a square in two frames, each two short and two long strips; painted as squares one over the other',
  },
  {
    file: 'bright-hopes-6', name: 'Bright Hopes', finished: ['6', '6'], ground: 'o',
    sheet: ring(plain('o', 1, 1), 1, 'tyrn'),
    patches: 5, units: {}, partialSeams: 1,
    note: 'four strips round a square, the first seam sewn in two goes',
  },
  {
    file: 'four-bright-hopes-12', name: 'Four Bright Hopes', finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 3, 'A A A A', { A: ring(plain('o', 1, 1), 1, 'tyrn') }),
    patches: 20, units: { 'partial-seam ring': 4 }, partialSeams: 4,
    note: 'four partial-seam rings',
  },
  {
    file: 'wide-whirl-11', name: 'Wide Whirl', finished: ['11', '11'], ground: 'o',
    sheet: ring(plain('y', 5, 5), 3, 'tntn'),
    patches: 5, units: {}, partialSeams: 1,
    note: 'four strips round a wide square, opposite strips alike',
  },
];
