import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { Method } from '../block/choices.ts';

/** Trade practice for each kind of unit, the usual way first. Kinds without a method of their own are cut piece by piece. */
const METHODS: Readonly<Record<UnitKind, readonly Method[]>> = {
  square: [],
  rectangle: [],
  'half-square triangle': ['two-at-a-time', 'one-at-a-time', 'eight-at-a-time'],
  'quarter-square triangle': ['two-at-a-time', 'triangles'],
  'split quarter-square triangle': ['triangles', 'two-at-a-time'],
  'flying geese': ['stitch-and-flip', 'four-at-a-time', 'triangles'],
  'corner-triangle unit': ['stitch-and-flip', 'triangles'],
  'square in a square': ['stitch-and-flip', 'triangles'],
  'half-rectangle triangle': ['triangles'],
  peak: ['triangles', 'template'],
  'joined unit': [],
  'partial-seam ring': ['template'],
  'free unit': ['template'],
};

/** @returns the methods that can cut this kind of unit, the usual one first; none for squares, rectangles and joined units */
export const methodsFor = (kind: UnitKind): readonly Method[] => METHODS[kind];

/** @returns the method the trade usually takes for this kind of unit; null for squares, rectangles and joined units */
export const usualMethod = (kind: UnitKind): Method | null => METHODS[kind][0] ?? null;
