import type { Problem } from '../../measure/problem.ts';
import { listed, problem, quoted } from '../problems.ts';

export const noSuchColourway = (name: string, kept: readonly string[]): Problem =>
  problem('no-such-colourway', `The block has no colourway ${quoted(name)}; ${kept.length === 0 ? 'none is kept in it' : `it has ${listed(kept)}`}.`);

export const nameTaken = (name: string): Problem =>
  problem('name-taken', `Another colourway is called ${quoted(name)}; choose another name, or let go of that one first.`);
