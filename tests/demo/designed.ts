import type { UnitKind } from '../../src/geometry/piecing/assembly.ts';

/** How a block of the sampler was designed to be sewn. */
export interface Designed {
  /** Units of the trade and how often each is sewn; plain pieces and joins of them are not listed. */
  readonly units: Readonly<Partial<Record<UnitKind, number>>>;
  /** Pieces of cloth in the block, counted by hand. */
  readonly pieces: number;
  /** Joined units that the block is built from: pieces in one, finished side in the block's unit, how many. */
  readonly joined?: readonly { readonly pieces: number; readonly side: number; readonly count: number }[];
}

/**
 * The construction each block was drawn for, counted by hand from the drawing (common practice, no engine asked).
 */
export const designed: Readonly<Record<string, Designed>> = {
  // The lamp, 1 × 5; three rings of geese, 12 × 3; corners between them, 12 × 2; corners of the block, 4 × 4; 8 squares.
  '01-point-light': {
    units: { 'square in a square': 1, 'flying geese': 12, 'half-square triangle': 12, 'quarter-square triangle': 4 },
    pieces: 5 + 36 + 24 + 16 + 8,
  },
  // Six courses: the sky, then stones, sky and water.
  '02-harbour-steps': { units: {}, pieces: 1 + 4 + 3 + 4 + 5 + 5 },
  // Four four-patches, four nine-patches, eight squares.
  '03-flood-tide': {
    units: {},
    pieces: 4 * 4 + 4 * 9 + 8,
    joined: [
      { pieces: 4, side: 3, count: 4 },
      { pieces: 9, side: 3, count: 4 },
    ],
  },
  // Flukes 4 and arms 6; the two sides of the ring, three pieces each; then row by row 7 + 3 + 3 + 3 + 3 plain pieces.
  '04-holding-ground': { units: { 'half-square triangle': 10, 'corner-triangle unit': 2 }, pieces: 20 + 6 + 19 },
  '05-eddy': { units: { 'split quarter-square triangle': 16 }, pieces: 48 },
  // Head 2, wrists 2, wingtips 2, neck and tail; the body's lower half with two corners; the bill, a kite; 9 plain pieces.
  '06-kittiwake': { units: { 'half-square triangle': 8, 'corner-triangle unit': 1, 'free unit': 1 }, pieces: 16 + 3 + 3 + 9 },
  // Two sails, a hull with two corners, three waves; the mast, the flag and the sky on its six sides.
  '07-guild-sloop': {
    units: { 'half-rectangle triangle': 2, 'corner-triangle unit': 1, 'flying geese': 3 },
    pieces: 4 + 3 + 9 + 8,
  },
  // Nine flags, three of them strips and checks of plain pieces; six short sashes, four long ones, two sides.
  '08-code-flags': {
    units: {
      'half-square triangle': 1,
      'quarter-square triangle': 1,
      'split quarter-square triangle': 1,
      peak: 1,
      'square in a square': 1,
      'corner-triangle unit': 1,
    },
    pieces: 2 + 4 + 3 + 3 + 5 + 5 + 3 + 3 + 4 + 12,
    joined: [{ pieces: 4, side: 3, count: 1 }],
  },
  // Three gables; three walls of two boards, a door, a window and what is over and under it; one strip of sky
  // above and four between; the pier's deck and nine pieces below it.
  '09-net-lofts': { units: { peak: 3 }, pieces: 9 + 18 + 1 + 4 + 1 + 9 },
  // Each row alternates the two hands.
  '10-ground-swell': { units: { 'half-rectangle triangle': 24 }, pieces: 48 },
  // A frame of equal units, four a side, round a lamp of one piece: corners, and dark wedges between red and white.
  '11-lamp-room': { units: { 'square in a square': 1, 'half-square triangle': 4, peak: 8 }, pieces: 5 + 8 + 24 },
  // Round the bollard turn four ropes: each a twist of seven between two strips.
  '12-mooring-ring': {
    units: { 'partial-seam ring': 1, 'half-square triangle': 28, 'square in a square': 1 },
    pieces: 4 * (1 + 7 * 2 + 1) + 5,
  },
  // Beams 2, roof and waves 7, rocks 2; the tower of four stripes between two wedges; lamp 5, sky 2, gallery 1.
  '13-kittiwake-point': {
    units: { peak: 2, 'flying geese': 7, 'corner-triangle unit': 2, 'free unit': 1 },
    pieces: 6 + 21 + 4 + 6 + 5 + 2 + 1,
  },
};

/** Blocks whose standard way is another than the designer's, each with what differs. A block that comes to agree leaves the table. */
export const KNOWN_MISSES: Readonly<Record<string, string>> = {
  '03-flood-tide': 'four-patches are sewn as single strips of a long row or column, not as units of their own',
  '08-code-flags': 'the four-patch flag is sewn as two strips of a long row or column, not as a unit of its own',
};
