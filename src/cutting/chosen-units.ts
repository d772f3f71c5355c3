import { box } from '../geometry/convex.ts';
import type { Assembly, Piecing } from '../geometry/piecing/assembly.ts';
import type { Point } from '../geometry/point.ts';
import type { UnitMethod } from '../block/block.ts';
import type { Method } from '../block/choices.ts';
import { methodsFor } from './methods.ts';

/** What is chosen for single units, once it is known how the block is sewn. */
export interface ChosenUnits {
  /** By unit id, 'block' where the block is one unit. Of two choices for one unit the later counts. */
  readonly methods: Readonly<Record<string, Method>>;
  /** Where no unit that has methods is sewn in that rectangle. */
  readonly lost: readonly UnitMethod[];
}

/**
 * @param chosen rectangles between two opposite corners, in lattice steps of the drawing
 * @returns which units are sewn in these rectangles
 */
export function chosenUnits({ root, units }: Piecing, chosen: readonly UnitMethod[]): ChosenUnits {
  if (chosen.length === 0) return { methods: {}, lost: [] };
  const sewn = new Map<string, { readonly id: string; readonly known: readonly Method[] }>();
  if (root.kind !== undefined) sewn.set(boxName(root), { id: 'block', known: methodsFor(root.kind) });
  for (const { id, kind, places } of units) {
    for (const { assembly } of places) sewn.set(boxName(assembly), { id, known: methodsFor(kind) });
  }
  const found = chosen.map((one) => {
    const unit = sewn.get(nameOfRectangle(one));
    // Where another kind is sewn now its usual method is told; a joined unit has none unless it can be sewn in strip sets.
    const takes = unit && unit.known.length > 0 && (unit.known[0] !== 'pieces' || unit.known.includes(one.method));
    return { one, id: takes ? unit.id : undefined };
  });
  return {
    methods: Object.fromEntries(found.flatMap(({ one, id }) => (id === undefined ? [] : [[id, one.method]]))),
    lost: found.filter(({ id }) => id === undefined).map(({ one }) => one),
  };
}

/** Corners between lattice points are those of no rectangle that anybody chose. */
function boxName({ outline }: Assembly): string {
  const { left, right, top, bottom } = box(outline);
  const at = (n: number, { w }: Point): string => (n % w === 0 ? `${n / w}` : `${n}/${w}`);
  return [at(left.x, left), at(top.y, top), at(right.x, right), at(bottom.y, bottom)].join();
}

const nameOfRectangle = ({ from, to }: UnitMethod): string =>
  [Math.min(from[0], to[0]), Math.min(from[1], to[1]), Math.max(from[0], to[0]), Math.max(from[1], to[1])].join();
