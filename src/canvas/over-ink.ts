import type { Cut } from '../cutting/cut.ts';
import { printLength } from '../measure/lengths.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { GridOutline } from './gesture.ts';

/** A unit of the chosen piecing where it lies in the drawing: grid units, for ink only. */
export interface UnitInk {
  readonly id: string;
  /** Whether it is made of other units. */
  readonly joined: boolean;
  readonly outline: GridOutline;
}

/** How large a piece is cut, as it is written on it. */
export interface SizeInk {
  /** "4 7/8", or "2 1/2" and "4 1/2". */
  readonly lengths: readonly string[];
  /** Whether the cut square or rectangle is cut on one diagonal or on both, or is a strip. */
  readonly subcut: Cut['subcut'];
}

/** @returns the places of a pattern's units in the grid units of the block it was made from, joined ones first, so that they lie undermost */
export function unitInks({ units, lattice }: Pattern, grid: { readonly columns: number; readonly rows: number }): UnitInk[] {
  const [perColumn, perRow] = [grid.columns / lattice.width, grid.rows / lattice.height];
  const inks = units.flatMap(({ unit }) =>
    unit.places.map(({ assembly }) => ({
      id: unit.id,
      joined: unit.kind === 'joined unit',
      outline: assembly.outline.map((point) => [(point.x / point.w) * perColumn, (point.y / point.w) * perRow] as const),
    })),
  );
  return [...inks.filter(({ joined }) => joined).reverse(), ...inks.filter(({ joined }) => !joined)];
}

/** @returns what is written on every piece of a pattern, by its id: the sizes of the cut it comes from; templates have none */
export function sizeInks({ cuts, block }: Pattern): ReadonlyMap<number, SizeInk> {
  const sizes = new Map<number, SizeInk>();
  for (const { shape, width, height, subcut, set, pieces } of cuts) {
    if (shape === 'template') continue;
    // Of a strip only its height is on the triangle; of a strip set its width, and how wide it is cut across.
    const lengths = (set ? [set.across, set.segment] : shape === 'square' || subcut === 'head to tail' ? [width] : [width, height]).map((length) => printLength(length, block.unit, 'bare'));
    for (const piece of pieces) sizes.set(piece, { lengths, subcut });
  }
  return sizes;
}

const SUBCUTS: Readonly<Record<Exclude<Cut['subcut'], 'head to tail'>, string>> = { none: '', once: ', halved', twice: ', quartered' };

/** @returns "cut 4 7/8 in. square, halved": how large the pieces of a pattern with these ids are cut, in words; empty where none is */
export function sizesInWords({ cuts, block }: Pattern, pieces: readonly number[]): string {
  const said = cuts.filter((cut) => cut.pieces.some((id) => pieces.includes(id))).map(({ shape, width, height, subcut, set }) => {
    if (shape === 'template') return 'cut from a template';
    if (set) return `cut from a strip ${printLength(set.across, block.unit)} wide, across it ${printLength(set.segment, block.unit)}`;
    if (subcut === 'head to tail') return `cut from a strip ${printLength(width, block.unit)} high`;
    const long = printLength(height, block.unit);
    const size = shape === 'square' ? `${long} square` : `${printLength(width, block.unit, 'bare')} × ${long}`;
    return `cut ${size}${SUBCUTS[subcut]}`;
  });
  return [...new Set(said)].join('; ');
}
