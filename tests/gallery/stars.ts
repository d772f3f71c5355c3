import type { Entry } from './entry.ts';
import { enlarged, even, grid, plain, together } from './sheet.ts';
import type { Sheet } from './sheet.ts';

const raw = String.raw;

/** A sawtooth star frame round a centre of twice its step. */
const star = (ground: string, point: string, centre: Sheet): Sheet => {
  const goose = `${ground}${point}`;
  const step = centre.width / 2;
  return even(4, 4, step, `
    ${ground}       v:${goose}*2x1  .  ${ground}
    >:${goose}*1x2  C               .  <:${goose}*1x2
    .               .               .  .
    ${ground}       ^:${goose}*2x1  .  ${ground}`, { C: centre });
};

const pinwheel = (a: string, b: string): Sheet => {
  const quarter = even(1, 1, 1, `${a}\\${b}`);
  return even(2, 2, 1, 'P P1 P3 P2', { P: quarter });
};

const nine = (a: string, b: string, step: number): Sheet => even(3, 3, step, `${a} ${b} ${a} ${b} ${a} ${b} ${a} ${b} ${a}`);

const four = (a: string, b: string): Sheet => even(2, 2, 1, `${a} ${b} ${b} ${a}`);

const smallStar = (point: string, centre: string): Sheet => star('o', point, plain(centre, 2, 2));

export const stars: readonly Entry[] = [
  {
    file: 'sawtooth-star-12-on-16', name: 'Sawtooth Star', finished: ['12', '12'], ground: 'o', finer: 4,
    sheet: star('o', 't', plain('y', 2, 2)),
    patches: 17, units: { 'flying geese': 4 },
    note: 'four flying geese and four corner squares round a centre square, drawn on a finer grid than it needs',
  },
  {
    file: 'sawtooth-star-8-on-48', name: 'Sawtooth Star', finished: ['8', '8'], ground: 'o', finer: 12,
    sheet: star('o', 'r', plain('r', 2, 2)),
    patches: 17, units: { 'flying geese': 4 },
    note: 'points and centre are one fabric, yet the centre square and the geese are sewn',
  },
  {
    file: 'pinwheel-star-8', name: 'Pinwheel Star', finished: ['8', '8'], ground: 'o',
    sheet: star('o', 'n', pinwheel('y', 'o')),
    patches: 24, units: { 'half-square triangle': 4, 'flying geese': 4 },
    note: 'a sawtooth star whose centre is a pinwheel of four half-square triangles',
  },
  {
    file: 'martha-washington-star-12', name: 'Martha Washington Star', finished: ['12', '12'], ground: 'o',
    sheet: star('o', 'n', even(2, 2, 1, 'S S1 S3 S2', { S: even(1, 1, 1, raw`n\oy`) })),
    patches: 28, units: { 'split quarter-square triangle': 4, 'flying geese': 4 },
    note: 'a sawtooth star round a pinwheel of four split quarter-square triangles',
  },
  {
    file: 'rising-star-12', name: 'Rising Star', finished: ['12', '12'], ground: 'o',
    sheet: star('o', 't', star('o', 'y', plain('r', 2, 2))),
    patches: 33, units: { 'flying geese': 8 },
    note: 'a sawtooth star as the centre of a star of twice its size',
  },
  {
    file: 'star-and-diamond-8', name: 'Star and Diamond', finished: ['8', '8'], ground: 'o',
    sheet: star('o', 'p', even(1, 1, 2, 'o:yo')),
    patches: 21, units: { 'flying geese': 4, 'square in a square': 1 },
    note: 'a sawtooth star whose centre is a square in a square',
  },
  {
    file: 'nine-patch-star-12', name: 'Nine-Patch Star', finished: ['12', '12'], ground: 'o', finer: 1, paint: 'cells',
    sheet: star('o', 't', nine('t', 'y', 2)),
    patches: 25, units: { 'flying geese': 4 },
    note: 'a sawtooth star whose centre is a nine-patch',
  },
  {
    file: 'four-patch-star-12', name: 'Four-Patch Star', finished: ['12', '12'], ground: 'o',
    sheet: star('o', 'n', four('n', 'b')),
    patches: 20, units: { 'flying geese': 4 },
    note: 'a sawtooth star whose centre is a four-patch of the point fabric and another',
  },
  {
    file: 'four-small-stars-12', name: 'Four Small Stars', finished: ['12', '12'], ground: 'o',
    sheet: even(2, 2, 4, 'A B C D', { A: smallStar('t', 'y'), B: smallStar('r', 'b'), C: smallStar('n', 's'), D: smallStar('p', 'g') }),
    patches: 68, units: { 'flying geese': 16 },
    note: 'four sawtooth stars of 6 inches side by side; the ground runs on between them',
  },
  {
    file: 'kings-crown-8', name: "King's Crown", finished: ['8', '8'], ground: 'o', paint: 'all',
    sheet: even(4, 4, 1, `
      t         ^:to*2x1  .  t
      <:to*1x2  y*2x2     .  >:to*1x2
      .         .         .  .
      t         v:to*2x1  .  t`),
    patches: 17, units: { 'flying geese': 4 },
    note: 'four flying geese with their long sides to the centre square, four corner squares',
  },
  {
    file: 'ohio-star-9-three-fabrics', name: 'Ohio Star', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 1, `
      o       x:otyt  o
      x:tyto  r       x:toty
      o       x:ytot  o`),
    patches: 21, units: { 'quarter-square triangle': 4 },
    note: 'five squares and four quarter-square triangles in three fabrics',
  },
  {
    file: 'ohio-star-12-on-48', name: 'Ohio Star', finished: ['12', '12'], ground: 'o', finer: 16,
    sheet: even(3, 3, 1, `
      o       x:otot  o
      x:toto  t       x:toto
      o       x:otot  o`),
    patches: 21, units: { 'quarter-square triangle': 4 },
    note: 'five squares and four quarter-square triangles; points and centre are one fabric',
  },
  {
    file: 'aunt-elizas-star-9', name: "Aunt Eliza's Star", finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 2, `
      o       x:otot  o
      x:toto  o:ro    x:toto
      o       x:otot  o`),
    patches: 25, units: { 'quarter-square triangle': 4, 'square in a square': 1 },
    note: 'an Ohio star whose centre is a square in a square',
  },
  {
    file: 'friendship-star-9-on-24', name: 'Friendship Star', finished: ['9', '9'], ground: 'o', finer: 8,
    sheet: even(3, 3, 1, raw`
      o    t\o  o
      o/t  t    t/o
      o    o\t  o`),
    patches: 13, units: { 'half-square triangle': 4 },
    note: 'five squares and four half-square triangles; points and centre are one fabric',
  },
  {
    file: 'fifty-four-forty-9', name: 'Fifty-Four Forty', finished: ['9', '9'], ground: 'o', paint: 'cells',
    sheet: even(3, 3, 2, `
      F     v:ot  F1
      >:ot  F     <:ot
      F1    ^:ot  F`, { F: four('r', 'o') }),
    patches: 32, units: { peak: 4 },
    note: 'five four-patches and four peaks',
  },
  {
    file: 'peaked-star-12', name: 'Peaked Star', finished: ['12', '12'], ground: 'o',
    sheet: even(3, 3, 2, `
      o     v:on  o
      >:on  y     <:on
      o     ^:on  o`),
    patches: 17, units: { peak: 4 },
    note: 'five squares and four peaks',
  },
  {
    file: 'card-trick-9', name: 'Card Trick', finished: ['9', '9'], ground: 'o',
    sheet: even(3, 3, 1, raw`
      o/r   r\ot    t\o
      ro/n  x:rtyn  t/oy
      o\n   no\y    y/o`),
    patches: 24, units: { 'half-square triangle': 4, 'split quarter-square triangle': 4, 'quarter-square triangle': 1 },
    note: 'four half-square triangles in the corners, four split quarter-square triangles, one quarter-square triangle in the centre',
  },
  {
    file: 'crown-of-thorns-10', name: 'Crown of Thorns', finished: ['10', '10'], ground: 'o',
    sheet: grid([2, 1, 2], [2, 1, 2], `
      Q   S   Q1
      S3  o   S1
      Q3  S2  Q2`, { Q: even(2, 2, 1, 'o/t o/t o/t o/t'), S: even(1, 2, 1, 'o t') }),
    patches: 41, units: { 'half-square triangle': 16 },
    note: 'sixteen half-square triangles and nine squares, five by five',
  },
  {
    file: 'sisters-choice-10', name: "Sister's Choice", finished: ['10', '10'], ground: 'o',
    sheet: even(5, 5, 1, raw`
      o    t\o  y  o/t  o
      o\t  t    o  t    t/o
      y    o    y  o    y
      o/t  t    o  t    t\o
      o    t/o  y  o\t  o`),
    patches: 33, units: { 'half-square triangle': 8 },
    note: 'a nine-patch in a frame of eight half-square triangles and eight squares',
  },
  {
    file: 'star-quartet-24', name: 'Star Quartet', finished: ['24', '24'], ground: 'o',
    sheet: together(12, 12, [
      [0, 0, enlarged(smallStar('t', 't'), 1.5)], [6, 0, enlarged(smallStar('r', 'r'), 1.5)],
      [0, 6, enlarged(smallStar('r', 'r'), 1.5)], [6, 6, enlarged(smallStar('t', 't'), 1.5)],
    ]),
    patches: 68, units: { 'flying geese': 16 },
    note: 'four sawtooth stars of 12 inches, each with points and centre of one fabric, on grid lines that half the seams miss',
  },
];
