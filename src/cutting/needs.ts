import type { Rational } from '../measure/rational.ts';
import { compare } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { ceilToStep, compareSurds } from '../measure/surd.ts';
import type { Piece } from '../geometry/piecing/assembly.ts';
import type { Cut, Role, StripSet } from './cut.ts';
import { stripsFor, type StripTriangle } from './from-strips.ts';
import type { Hand } from './shapes.ts';
import { atOrigin, templateBox, templateKey } from './template.ts';

/** The lengths that cutting goes by, in the block's unit, and how many blocks it serves. */
export interface CuttingRules {
  /** Length of one lattice step. */
  readonly step: Rational;
  readonly seam: Rational;
  /** The ruler's step, to which every size is rounded up. */
  readonly ruler: Rational;
  /** Added before rounding to what meets a diagonal seam. */
  readonly trim: Rational;
  readonly blocks: number;
  /** The longest strip that the cloth of a fabric gives; where absent, as long as need be. */
  readonly room?: (fabric: string) => Rational;
}

/** What to cut, once. */
export interface CutSize extends Pick<Cut, 'shape' | 'width' | 'height' | 'exact' | 'template'> {
  /** The same for cuts that are interchangeable, whatever their subcut. */
  readonly key: string;
}

/**
 * What one unit, or one piece by itself, asks of one fabric. Needs of one pool share their squares: the pool adds up what is wanted
 * and takes ⌈wanted / results⌉ · squares.
 */
export interface Need {
  readonly pool: string;
  readonly fabric: string;
  readonly size: CutSize;
  readonly subcut: Cut['subcut'];
  readonly hand?: Hand;
  /** Only where triangles are cut head to tail: how long the strips are, and how many triangles each gives, is known of the pool. */
  readonly strip?: StripTriangle;
  /** Only where strips are sewn into sets; `down`: whether they run down the block where their unit is described. */
  readonly set?: Omit<StripSet, 'down'> & { readonly down: boolean };
  readonly role: Role;
  /** Unit id, or 'block'. */
  readonly unit: string;
  readonly pieces: readonly number[];
  /** Results (pieces, triangles or units) that this need adds to its pool, over all blocks. */
  readonly wanted: number;
  /** Results the unit would take by itself; differs from `wanted` only where mirror images come in pairs. */
  readonly alone: number;
  /** What so many squares yield. */
  readonly squares: number;
  readonly results: number;
  /** Units that come out beyond what is wanted because mirror images come in pairs. */
  readonly beyond: number;
}

/** @returns a square of this exact side, rounded up to the ruler */
export const squareOf = (side: Surd, ruler: Rational): CutSize => rectangleOf(side, side, ruler);

/** @returns a rectangle of these exact sides, rounded up to the ruler, the shorter one as its width */
export function rectangleOf(a: Surd, b: Surd, ruler: Rational): CutSize {
  const [short, long] = compareSurds(a, b) <= 0 ? [a, b] : [b, a];
  const [width, height] = [ceilToStep(short, ruler), ceilToStep(long, ruler)];
  const shape = compare(width, height) === 0 ? 'square' : 'rectangle';
  return { shape, width, height, exact: { width: short, height: long }, template: null, key: `${sizeText(width)} ${sizeText(height)}` };
}

/** @returns a template round a piece */
export function templateOf(piece: Piece, { step, seam, ruler }: CuttingRules): CutSize {
  const { width, height } = templateBox(piece.outline, step, seam, ruler);
  const key = `template ${sizeText(width)} ${sizeText(height)} ${templateKey(piece.outline)}`;
  return { shape: 'template', width, height, exact: null, template: atOrigin(piece.outline), key };
}

const sizeText = (x: Rational): string => `${x.n}/${x.d}`;

interface Asked {
  readonly piece: Piece;
  readonly unit: string;
  readonly size: CutSize;
  readonly role: Role;
  readonly blocks: number;
}

/** @returns the need of a piece cut by itself */
export function oneCut({ piece, unit, size, role, blocks }: Asked): Need {
  return plainNeed(piece.fabric, { pool: `each`, unit, size, role, pieces: [piece.id], wanted: blocks });
}

/** @returns the need of a triangle from a square or rectangle cut once; in rectangles only triangles of one hand share */
export function halfCut({ piece, unit, size, blocks }: Omit<Asked, 'role'>, hand?: Hand): Need {
  const need = plainNeed(piece.fabric, { pool: `once ${hand ?? ''}`, unit, size, role: 'half', pieces: [piece.id], wanted: blocks });
  return { ...need, subcut: 'once', results: 2, ...(hand === undefined ? {} : { hand }) };
}

/** @returns the need of a triangle from a square cut twice */
export function quarterCut({ piece, unit, size, blocks }: Omit<Asked, 'role'>): Need {
  const need = plainNeed(piece.fabric, { pool: 'twice', unit, size, role: 'quarter', pieces: [piece.id], wanted: blocks });
  return { ...need, subcut: 'twice', results: 4 };
}

/** @returns the need of a triangle that comes from a strip */
export function stripCut({ piece, unit, blocks }: Omit<Asked, 'role' | 'size'>, strip: StripTriangle): Need {
  const { size } = stripsFor(strip, 1, null);
  const role = strip.form === 'half' ? 'strip-half' : 'strip-quarter';
  const need = plainNeed(piece.fabric, { pool: 'strip', unit, size, role, pieces: [piece.id], wanted: blocks });
  return { ...need, subcut: 'head to tail', strip };
}

export interface PairAsked {
  readonly unit: string;
  readonly size: CutSize;
  /** pair: two units from two squares; eight: eight units from two squares. */
  readonly role: 'pair' | 'eight';
  readonly wanted: number;
  readonly alone: number;
  readonly beyond: number;
}

/**
 * @returns the needs of half-square units sewn from two squares, one need for each square: pairs of the same two fabrics share,
 * whichever unit they are for
 */
export function pairCuts(sides: readonly [readonly Piece[], readonly Piece[]], asked: PairAsked): readonly Need[] {
  const fabrics = sides.map((pieces) => pieces[0]!.fabric);
  const together = [...fabrics].sort().join(' + ');
  return sides.map((pieces, i) => {
    // Two squares of one fabric are still two squares.
    const which = fabrics[0] === fabrics[1] ? `${i}` : '';
    const { unit, size, role, wanted, alone, beyond } = asked;
    const need = plainNeed(fabrics[i]!, {
      pool: `${role} ${together} ${which}`,
      unit,
      size,
      role,
      pieces: pieces.map((p) => p.id),
      wanted,
    });
    return { ...need, alone, beyond, results: role === 'pair' ? 2 : 8 };
  });
}

/** @returns a need of one square for one result; the pool's name is made complete with fabric and size */
export function plainNeed(fabric: string, part: Pick<Need, 'pool' | 'unit' | 'size' | 'role' | 'pieces' | 'wanted'>): Need {
  const pool = `${part.pool}|${fabric}|${part.size.key}`;
  return { ...part, pool, fabric, subcut: 'none', alone: part.wanted, squares: 1, results: 1, beyond: 0 };
}
