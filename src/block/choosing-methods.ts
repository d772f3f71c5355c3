import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block } from './block.ts';
import type { Choices, Method } from './choices.ts';
import { chooseUnitMethods, type UnitBox } from './unit-methods.ts';

/** Rectangles on the block in which units are sewn. */
export interface Places {
  readonly boxes: readonly UnitBox[];
  /** Steps to a grid unit in which their corners are given. */
  readonly denominator: number;
}

/** A method for one unit, for all units of a kind or for the whole pattern; null takes back what is chosen there. */
export type MethodWish = { readonly method: Method | null } & (
  | { readonly scope: 'unit'; /** Everywhere the unit is sewn. */ readonly places: Places }
  | { readonly scope: 'kind'; readonly kind: UnitKind; /** Everywhere a unit of the kind is sewn. */ readonly places: Places }
  | { readonly scope: 'pattern' }
);

/**
 * @returns the block with a method chosen, or taken back; a wider choice ends the narrower ones, so that what is chosen for every unit
 * of a kind, or for the whole pattern, is true of every one
 */
export function chooseMethod(block: Block, wish: MethodWish): Result<Block> {
  const { method } = wish;
  const { choices = {} } = block;
  if (wish.scope === 'pattern') {
    const { unitMethods: _, ...rest } = block;
    const { method: __, methods: ___, ...others } = choices;
    return good(withChoices(rest, { ...others, ...(method && { method }) }));
  }
  const { boxes, denominator } = wish.places;
  const cleared = chooseUnitMethods(block, boxes, null, denominator);
  if (!cleared.ok) return cleared;
  if (wish.scope === 'unit') return method ? chooseUnitMethods(cleared.value, boxes.slice(0, 1), method, denominator) : cleared;
  const { methods, ...others } = choices;
  const rest = Object.entries(methods ?? {}).filter(([kind]) => kind !== wish.kind);
  const now = Object.fromEntries(method ? [...rest, [wish.kind, method]] : rest);
  return good(withChoices(cleared.value, { ...others, ...(Object.keys(now).length > 0 && { methods: now }) }));
}

/** A block for which nothing is chosen says nothing of choices. */
function withChoices(block: Block, choices: Choices): Block {
  const { choices: _, ...rest } = block;
  return Object.keys(choices).length > 0 ? { ...rest, choices } : rest;
}
