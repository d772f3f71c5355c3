import type { Rational } from '../measure/rational.ts';
import { divide, multiply } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { plus } from '../measure/surd.ts';
import type { Piece, UnitKind } from '../geometry/piecing/assembly.ts';
import type { Point } from '../geometry/point.ts';
import { samePoint } from '../geometry/point.ts';
import type { Method } from '../block/choices.ts';
import { centreOnPoint, eightSquare, halfRectangle, halfSquare, plainSide, quarterSquare } from './formulas.ts';
import { halvesFromStrip, quartersFromStrip } from './from-strips.ts';
import type { CuttingRules, Need } from './needs.ts';
import { halfCut, oneCut, pairCuts, plainNeed, quarterCut, rectangleOf, squareOf, stripCut, templateOf } from './needs.ts';
import type { CutShape } from './shapes.ts';
import { cutShape, distance } from './shapes.ts';

/** One place in the block where a unit of the catalogue is sewn. */
export interface UnitPlace {
  /** Unit id, or 'block' where the whole block is this unit. */
  readonly unit: string;
  readonly kind: UnitKind;
  readonly outline: readonly Point[];
  readonly pieces: readonly Piece[];
}

/** @returns what a piece by itself needs, by its own shape: a rectangle, a triangle from a square or rectangle, or a template */
export function pieceNeed(piece: Piece, unit: string, rules: CuttingRules): Need {
  const { seam, ruler, trim, blocks } = rules;
  const shape = cutShape(piece.outline, rules.step);
  const by = { piece, unit, blocks };
  if (shape.form === 'rectangle') {
    const [a, b] = shape.sides;
    return oneCut({ ...by, role: 'plain', size: rectangleOf(plainSide(a, seam), plainSide(b, seam), ruler) });
  }
  if (shape.form === 'isosceles' && shape.grain === 'legs') {
    return halfCut({ ...by, size: squareOf(plus(halfSquare(shape.leg, seam), trim), ruler) });
  }
  if (shape.form === 'isosceles' && shape.grain === 'long side') {
    return quarterCut({ ...by, size: squareOf(plus(quarterSquare(shape.longSide, seam), trim), ruler) });
  }
  if (shape.form === 'right') return halfOfRectangle(piece, shape, unit, rules);
  return oneCut({ ...by, role: 'template', size: templateOf(piece, rules) });
}

/**
 * @returns what one place of a unit needs when it is cut by the method; null when its pieces are not those the method is for,
 * so that each must be cut by its own shape
 */
export function unitNeeds(place: UnitPlace, method: Method, rules: CuttingRules): readonly Need[] | null {
  const each = (need: typeof pieceNeed): readonly Need[] => place.pieces.map((piece) => need(piece, place.unit, rules));
  if (method === 'template') return each(byTemplate);
  switch (place.kind) {
    case 'half-square triangle':
      return method === 'two-at-a-time' || method === 'eight-at-a-time' ? pairedNeeds(place, method, rules) : each(triangleBy(method));
    case 'flying geese':
      return goose(place, rules.step) && (method === 'stitch-and-flip' || method === 'four-at-a-time')
        ? geeseNeeds(place, method, rules)
        : each(triangleBy(method));
    case 'quarter-square triangle':
    case 'split quarter-square triangle':
    case 'half-rectangle triangle':
    case 'peak':
      return each(triangleBy(method));
    case 'corner-triangle unit':
    case 'square in a square':
      return corneredNeeds(place, method, rules);
    default:
      return null;
  }
}

/** How triangles are cut one by one. */
const triangleBy = (method: Method): typeof pieceNeed => (method === 'triangles-from-strips' ? fromStrip : pieceNeed);

/** What a triangle needs that is cut from a strip; what is no triangle of 45° on the grain is cut by its own shape. */
function fromStrip(piece: Piece, unit: string, rules: CuttingRules): Need {
  const { seam, ruler, trim, blocks } = rules;
  const shape = cutShape(piece.outline, rules.step);
  if (shape.form !== 'isosceles' || shape.grain === 'nothing') return pieceNeed(piece, unit, rules);
  const strip =
    shape.grain === 'legs' ? halvesFromStrip(shape.leg, seam, ruler, trim) : quartersFromStrip(shape.longSide, seam, ruler, trim);
  return stripCut({ piece, unit, blocks }, strip);
}

/** @returns whether four geese at a time can make this place: the two corners then come from one fabric */
export function allowsFourAtATime(place: UnitPlace, step: Rational): boolean {
  const parts = goose(place, step);
  return parts !== null && parts.corners[0]!.fabric === parts.corners[1]!.fabric;
}

function pairedNeeds({ pieces, unit }: UnitPlace, method: 'two-at-a-time' | 'eight-at-a-time', rules: CuttingRules): readonly Need[] | null {
  const { seam, ruler, trim, blocks } = rules;
  const [a, b] = pieces;
  const shape = a === undefined ? null : cutShape(a.outline, rules.step);
  if (b === undefined || pieces.length !== 2 || shape?.form !== 'isosceles') return null;
  const [role, side] =
    method === 'eight-at-a-time'
      ? (['eight', eightSquare(shape.leg, seam, trim)] as const)
      : (['pair', plus(halfSquare(shape.leg, seam), trim)] as const);
  return pairCuts([[a!], [b]], { unit, role, size: squareOf(side, ruler), wanted: blocks, alone: blocks, beyond: 0 });
}

interface Goose {
  readonly triangle: Piece;
  readonly corners: readonly Piece[];
  /** Finished; the width is twice the height. */
  readonly width: Surd;
  readonly height: Surd;
}

function goose({ pieces }: UnitPlace, step: Rational): Goose | null {
  const shaped = pieces.map((piece) => ({ piece, shape: cutShape(piece.outline, step) }));
  const big = shaped.find(({ shape }) => shape.form === 'isosceles' && shape.grain === 'long side');
  const corners = shaped.filter((other) => other !== big);
  if (big?.shape.form !== 'isosceles' || corners.length !== 2) return null;
  const [first] = corners;
  if (first?.shape.form !== 'isosceles') return null;
  return { triangle: big.piece, corners: corners.map(({ piece }) => piece), width: big.shape.longSide, height: first.shape.leg };
}

function geeseNeeds(place: UnitPlace, method: Method, rules: CuttingRules): readonly Need[] | null {
  const { seam, ruler, trim, blocks, step } = rules;
  const { unit } = place;
  const parts = goose(place, step);
  if (parts === null) return null;
  const { triangle, corners, width, height } = parts;
  if (method === 'four-at-a-time' && allowsFourAtATime(place, step)) {
    const small = corners[0]!.fabric;
    const pool = `four ${triangle.fabric} + ${small}`;
    const large = squareOf(plus(quarterSquare(width, seam), trim), ruler);
    const smalls = squareOf(plus(halfSquare(height, seam), trim), ruler);
    return [
      {
        ...plainNeed(triangle.fabric, { pool: `${pool} large`, unit, size: large, role: 'large', pieces: [triangle.id], wanted: blocks }),
        results: 4,
      },
      {
        ...plainNeed(small, {
          pool: `${pool} small`,
          unit,
          size: smalls,
          role: 'small',
          pieces: corners.map(({ id }) => id),
          wanted: blocks,
        }),
        squares: 4,
        results: 4,
      },
    ];
  }
  return flipped(triangle, corners, [width, height], place, rules);
}

/** Stitch-and-flip: the whole unit's outline as base, and on it a square for each corner. */
function flipped(
  base: Piece,
  corners: readonly Piece[],
  sides: readonly [Surd, Surd],
  { unit }: UnitPlace,
  rules: CuttingRules,
): readonly Need[] {
  const { seam, ruler, trim, blocks, step } = rules;
  const cut = (finished: Surd): Surd => plus(plainSide(finished, seam), trim);
  return [
    oneCut({ piece: base, unit, role: 'base', blocks, size: rectangleOf(cut(sides[0]), cut(sides[1]), ruler) }),
    ...corners.map((piece) => oneCut({ piece, unit, role: 'corner', blocks, size: squareOf(cut(legOf(piece, step)), ruler) })),
  ];
}

function corneredNeeds(place: UnitPlace, method: Method, rules: CuttingRules): readonly Need[] | null {
  const { outline, pieces, unit, kind } = place;
  const { seam, ruler, blocks, step } = rules;
  const corners = pieces.filter((piece) => isCorner(cutShape(piece.outline, step), outline));
  const rest = pieces.filter((piece) => !corners.includes(piece));
  const [base] = rest;
  if (base === undefined || rest.length > 1 || corners.length === 0) return null;
  const sides = [distance(outline[0]!, outline[1]!, step), distance(outline[1]!, outline[2]!, step)] as const;
  if (method === 'stitch-and-flip') return flipped(base, corners, sides, place, rules);
  const halves = corners.map((piece) => triangleBy(method)(piece, unit, rules));
  if (kind === 'square in a square') {
    // Its edges are seams by themselves: cut larger, it would finish larger, so trim does not apply.
    const centre = squareOf(centreOnPoint(sides[0].p, seam), ruler);
    return [oneCut({ piece: base, unit, role: 'plain', blocks, size: centre }), ...halves];
  }
  return [byTemplate(base, unit, rules), ...halves];
}

/** A triangle of two equal legs whose square corner is a corner of the unit. */
const isCorner = (shape: CutShape, outline: readonly Point[]): boolean =>
  shape.form === 'isosceles' && shape.grain === 'legs' && outline.some((q) => samePoint(shape.corner, q));

const legOf = (piece: Piece, step: Rational): Surd => {
  const shape = cutShape(piece.outline, step);
  if (shape.form !== 'isosceles') throw new RangeError('a corner that is no half-square triangle');
  return shape.leg;
};

function byTemplate(piece: Piece, unit: string, rules: CuttingRules): Need {
  return oneCut({ piece, unit, role: 'template', blocks: rules.blocks, size: templateOf(piece, rules) });
}

/**
 * A triangle from a rectangle cut once. The trim keeps the rectangle's proportion, the given amount on the short side, so that the
 * seam keeps its slope: a published oversize rule does the same with w + 1 by h + 2 for a 1 : 2 unit (mmmquilts.com, 2019-12).
 */
function halfOfRectangle(
  piece: Piece,
  { legs: [short, long], hand }: CutShape & { form: 'right' },
  unit: string,
  rules: CuttingRules,
): Need {
  const { seam, ruler, trim, blocks } = rules;
  const { width, height } = halfRectangle(short, long, seam);
  const size = rectangleOf(plus(width, trim), plus(height, multiply(trim, divide(long, short))), ruler);
  return halfCut({ piece, unit, size, blocks }, hand);
}
