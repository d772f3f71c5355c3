/** An exact point (x/w, y/w): whole numbers, w > 0, no common divisor. Lattice points have w = 1. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly w: number;
}
