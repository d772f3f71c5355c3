import type { Pin } from '../geometry/patchwork/drawing.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block, LatticePoint } from './block.ts';
import { boxName, checkPin } from './checks.ts';
import { onLattice } from './lattice.ts';
import { MAX_PINS } from './limits.ts';
import { noSuchPin, refused, tooManyPins } from './problems.ts';

/**
 * Sets a pin, or takes the same one away, whichever of its two points comes first.
 * @param denominator steps to a grid unit in which the pin's points are given
 * @returns the block with the pin as its last, or without it
 */
export function togglePin(block: Block, { pin, from, to }: Pin, denominator: number): Result<Block> {
  const fine = onLattice(block, denominator);
  if (!fine.ok) return fine;
  const times = fine.value.denominator / denominator;
  const placed = ([x, y]: LatticePoint): LatticePoint => [x * times, y * times];
  const set: Pin = { pin, from: placed(from), to: placed(to) };
  const fault = checkPin('The pin', set, fine.value);
  if (fault) return refused(fault);
  const { pins = [] } = fine.value;
  const at = pins.findIndex((each) => samePin(each, set));
  if (at >= 0) return removePin(fine.value, at);
  return pins.length < MAX_PINS ? good({ ...fine.value, pins: [...pins, set] }) : refused(tooManyPins(pins.length + 1));
}

/**
 * Sets pins, or takes them all away where the first of them is set already.
 * @param denominator steps to a grid unit in which the pins' points are given
 */
export function togglePins(block: Block, pins: readonly Pin[], denominator: number): Result<Block> {
  const isSet = (on: Block, { pin, from, to }: Pin): boolean => {
    const times = on.denominator / denominator;
    const placed = ([x, y]: LatticePoint): LatticePoint => [x * times, y * times];
    return on.pins?.some((each) => samePin(each, { pin, from: placed(from), to: placed(to) })) ?? false;
  };
  const away = pins[0] !== undefined && isSet(block, pins[0]);
  let next: Result<Block> = good(block);
  for (const pin of pins) if (next.ok && isSet(next.value, pin) === away) next = togglePin(next.value, pin, denominator);
  return next;
}

/** @returns the block without one of its pins */
export function removePin(block: Block, index: number): Result<Block> {
  return index in (block.pins ?? []) ? good(withoutPins(block, [index])) : refused(noSuchPin(index + 1));
}

/** @returns the block without the pins of these indices; where none is left, without the list of them */
export function withoutPins(block: Block, indices: readonly number[]): Block {
  const { pins = [], ...pinless } = block;
  const left = pins.filter((_, i) => !indices.includes(i));
  return left.length > 0 ? { ...block, pins: left } : pinless;
}

/** @returns whether two pins ask for the same */
const samePin = (a: Pin, b: Pin): boolean => a.pin === b.pin && boxName(a) === boxName(b);
