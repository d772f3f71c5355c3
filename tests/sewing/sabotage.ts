import type { Plan } from '../../src/sewing/proof-table.ts';
import { CLOTH } from './sabotage-cloth.ts';
import { DRAWN } from './sabotage-drawn.ts';
import { LAYOUT } from './sabotage-layout.ts';
import { SEAMS } from './sabotage-seams.ts';
import { SETS } from './sabotage-sets.ts';

/** Takes one of several, by chance; undefined where there is none. */
export type Choose = <T>(from: readonly T[]) => T | undefined;

/**
 * One way to spoil a plan that somebody could be given. Whoever spoils it covers the tracks as far as that can be done in passing:
 * what the fault makes untrue elsewhere is changed as well, so that only the fault itself can give it away.
 */
export interface Sabotage {
  /** What is wrong with the plan, as a sentence of the trade. */
  readonly says: string;
  /** One of the faults told must be this one: being found by luck does not count. */
  readonly found: RegExp;
  /** Whether the spoilt plan may come out the same, as when a unit that is its own mirror image is mirrored: then its picture decides. */
  readonly mayShowTheSame?: true;
  /** The spoilt plan; null where there is nothing to spoil in this way. */
  readonly spoil: (plan: Plan, choose: Choose) => Plan | null;
}

export const SABOTAGE: readonly Sabotage[] = [...CLOTH, ...SETS, ...LAYOUT, ...SEAMS, ...DRAWN];
