import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { Method } from '../block/choices.ts';

/**
 * Trade practice for each kind of unit, the usual way first. Kinds without a method of their own are cut piece by piece; in rings and
 * free units 'template' means that of their pieces those are cut round an outline which no ruler cuts. Of joined units only those have a
 * method that strip sets can make: rows of plain rectangles that come again (`strip-sets.ts`).
 */
const METHODS: Readonly<Record<UnitKind, readonly Method[]>> = {
  square: [],
  rectangle: [],
  'half-square triangle': ['two-at-a-time', 'one-at-a-time', 'eight-at-a-time', 'triangles-from-strips', 'template'],
  'quarter-square triangle': ['two-at-a-time', 'triangles', 'triangles-from-strips', 'template'],
  'split quarter-square triangle': ['triangles', 'two-at-a-time', 'triangles-from-strips', 'template'],
  'flying geese': ['stitch-and-flip', 'four-at-a-time', 'triangles', 'triangles-from-strips', 'template'],
  'corner-triangle unit': ['stitch-and-flip', 'triangles', 'triangles-from-strips', 'template'],
  'square in a square': ['stitch-and-flip', 'triangles', 'triangles-from-strips', 'template'],
  'half-rectangle triangle': ['triangles', 'template'],
  peak: ['triangles', 'template'],
  'joined unit': ['pieces', 'strip-sets'],
  'partial-seam ring': ['template'],
  'free unit': ['template'],
};

/** What comes next to a method in kinds that do not know it: first the nearest. */
const NEXT: Readonly<Record<Method, readonly Method[]>> = {
  // Each piece is cut by itself.
  'one-at-a-time': ['triangles'],
  triangles: ['one-at-a-time'],
  'triangles-from-strips': ['triangles'],
  template: [],
  // As many at once as the kind knows, up to that number.
  'eight-at-a-time': ['four-at-a-time', 'two-at-a-time'],
  'four-at-a-time': ['two-at-a-time'],
  'two-at-a-time': [],
  'stitch-and-flip': [],
  pieces: [],
  'strip-sets': [],
};

/** @returns the methods that can cut this kind of unit, the usual one first; none for squares and rectangles */
export const methodsFor = (kind: UnitKind): readonly Method[] => METHODS[kind];

/** @returns the method the trade usually takes for this kind of unit; null for squares and rectangles */
export const usualMethod = (kind: UnitKind): Method | null => METHODS[kind][0] ?? null;

/**
 * @returns what a default for the whole pattern means for units of this kind, what suits them best first: the method itself, then those
 * of its nature; none where the kind goes its usual way
 */
export const methodsLike = (method: Method | 'usual', kind: UnitKind): readonly Method[] =>
  method === 'usual' ? [] : [method, ...NEXT[method]].filter((each) => METHODS[kind].includes(each));
