import type { Cut } from './cut.ts';

/** Squares and strips that are sewn before they are cut make whole units: what each line of such squares has to spare is the same units. */
const WHOLE_UNITS: ReadonlySet<string> = new Set(['pair', 'eight', 'large', 'small', 'strip']);

/** @returns whether everything of a line is sewn before it is cut apart, so that its spare is told in units */
export const makesWholeUnits = ({ uses }: Cut): boolean => uses.every(({ role }) => WHOLE_UNITS.has(role));
