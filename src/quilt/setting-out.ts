import { add, multiply, rational, type Rational } from '../measure/rational.ts';

/** How copies of a block lie beside each other. */
export type Lie = 'straight' | 'turned' | 'mirrored';

/** What every second place holds, as on a chessboard. */
export type Alternate = 'the same' | 'another block' | 'plain cloth';

/** How copies of a block are set side by side. */
export interface Setting {
  /** Copies from left to right and from top to bottom. */
  readonly across: number;
  readonly down: number;
  readonly lie: Lie;
  readonly alternate: Alternate;
  /** Finished width of the strips between them, in the block's unit; 0 for none. */
  readonly sashing: Rational;
}

/** Something in its place: a copy of the block, another block, plain cloth, a strip between two, a square where strips meet. Lengths in the block's unit. */
export interface SetPlace {
  readonly what: 'block' | 'other block' | 'plain' | 'sashing' | 'post';
  readonly left: Rational;
  readonly top: Rational;
  readonly width: Rational;
  readonly height: Rational;
  /** Quarter turns clockwise, after it is mirrored left to right where it is. */
  readonly turn: 0 | 1 | 2 | 3;
  readonly mirrored: boolean;
}

/** What is set, finished, in the block's unit. */
export interface Finished {
  readonly width: Rational;
  readonly height: Rational;
}

/**
 * @returns everything in its place, row by row from the top left, no two over each other and nothing left open; strips lie between copies
 * only, not round them. Turned copies go round by quarter turns in every four, and half turns where the block is no square; mirrored ones
 * have the mirror at every line between them.
 */
export function setOut({ across, down, lie, alternate, sashing }: Setting, { width, height }: Finished): readonly SetPlace[] {
  const square = width.n === height.n && width.d === height.d;
  const open = sashing.n > 0;
  const along = (i: number, side: Rational): Rational => multiply(rational(i), add(side, sashing));
  const places: SetPlace[] = [];
  const put = (what: SetPlace['what'], left: Rational, top: Rational, wide: Rational, high: Rational, lies: Pick<SetPlace, 'turn' | 'mirrored'> = { turn: 0, mirrored: false }): void =>
    void places.push({ what, left, top, width: wide, height: high, ...lies });
  for (let row = 0; row < down; row++) {
    const top = along(row, height);
    for (let column = 0; column < across; column++) {
      const left = along(column, width);
      const other = alternate !== 'the same' && (row + column) % 2 === 1;
      if (other && alternate === 'plain cloth') put('plain', left, top, width, height);
      else put(other ? 'other block' : 'block', left, top, width, height, lying(lie, column, row, square));
      if (open && column + 1 < across) put('sashing', add(left, width), top, sashing, height);
    }
    if (!open || row + 1 === down) continue;
    for (let column = 0; column < across; column++) {
      const left = along(column, width);
      put('sashing', left, add(top, height), width, sashing);
      if (column + 1 < across) put('post', add(left, width), add(top, height), sashing, sashing);
    }
  }
  return places;
}

/** Round every four places: 0, 1 above, 3, 2 below. */
const ROUND = [[0, 1], [3, 2]] as const;

function lying(lie: Lie, column: number, row: number, square: boolean): Pick<SetPlace, 'turn' | 'mirrored'> {
  const [x, y] = [column % 2, row % 2] as [0 | 1, 0 | 1];
  if (lie === 'straight') return { turn: 0, mirrored: false };
  if (lie === 'turned') return { turn: square ? ROUND[y][x] : x === y ? 0 : 2, mirrored: false };
  // Upside down is mirrored left to right and turned half round.
  return { turn: y === 1 ? 2 : 0, mirrored: x !== y };
}

/** @returns the finished size of what is set out */
export const sizeSet = ({ across, down, sashing }: Setting, { width, height }: Finished): Finished => ({
  width: add(multiply(rational(across), width), multiply(rational(across - 1), sashing)),
  height: add(multiply(rational(down), height), multiply(rational(down - 1), sashing)),
});
