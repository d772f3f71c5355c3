import type { Pin } from '../geometry/patchwork/drawing.ts';
import { good, type Result } from '../measure/problem.ts';
import type { Block, LatticePoint } from './block.ts';
import { checkPin } from './checks.ts';
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
  if (at >= 0) return good(withPins(fine.value, pins.toSpliced(at, 1)));
  return pins.length < MAX_PINS ? good(withPins(fine.value, [...pins, set])) : refused(tooManyPins(pins.length + 1));
}

/** @returns the block without one of its pins */
export function removePin(block: Block, index: number): Result<Block> {
  const { pins = [] } = block;
  return index in pins ? good(withPins(block, pins.toSpliced(index, 1))) : refused(noSuchPin(index + 1));
}

/** @returns the block with these pins; none where the list is empty */
export function withPins(block: Block, pins: readonly Pin[]): Block {
  const { pins: _, ...rest } = block;
  return pins.length === 0 ? rest : { ...rest, pins };
}

/** @returns whether two pins ask for the same */
function samePin(a: Pin, b: Pin): boolean {
  const box = ({ from, to }: Pin): string =>
    [Math.min(from[0], to[0]), Math.min(from[1], to[1]), Math.max(from[0], to[0]), Math.max(from[1], to[1])].join();
  return a.pin === b.pin && box(a) === box(b);
}
