import { unitLetter } from '../geometry/piecing/units.ts';
import type { Step } from './step.ts';

/** Pieces that are sewn one after another onto what is there: all of them onto one foundation. */
export interface Section {
  readonly letter: string;
  /** Numbers of the step's parts, in sewing order. */
  readonly parts: readonly number[];
  /** Number of the join that adds each part but the first. */
  readonly joins: readonly number[];
}

/** What is sewn onto foundations, and what is sewn after. */
export interface Sections {
  readonly sections: readonly Section[];
  /** Numbers of the joins by which sections are sewn together, in order. */
  readonly last: readonly number[];
}

interface Thing {
  readonly parts: readonly number[];
  readonly joins: readonly number[];
  /** Whether sections were sewn together in it: nothing more goes onto one foundation then. */
  readonly closed: boolean;
}

/**
 * Where each piece's seam runs right across all that lies on its foundation before it, which is how a way 'foundation' was found, a
 * section goes on as long as pieces are added one by one; a piece that is sewn to several sections is one by itself.
 * @returns the sections of a step, by the first of their parts
 */
export function sectionsOf({ parts, joins }: Pick<Step, 'parts' | 'joins'>): Sections {
  const things: Thing[] = parts.map((_, part) => ({ parts: [part], joins: [], closed: false }));
  const finished: Thing[] = [];
  const last: number[] = [];
  joins.forEach(({ first, second }, join) => {
    const [one, other] = [things[first]!, things[second]!];
    const [base, added] = other.parts.length > 1 && one.parts.length === 1 ? [other, one] : [one, other];
    if (!base.closed && !added.closed && added.parts.length === 1) {
      things.push({ parts: [...base.parts, ...added.parts], joins: [...base.joins, join], closed: false });
      return;
    }
    finished.push(...[one, other].filter(({ closed }) => !closed));
    last.push(join);
    things.push({ parts: [...one.parts, ...other.parts], joins: [], closed: true });
  });
  const whole = things.at(-1)!;
  const all = whole.closed ? finished : [whole];
  const ordered = [...all].sort((a, b) => Math.min(...a.parts) - Math.min(...b.parts));
  return { sections: ordered.map((section, i) => ({ letter: unitLetter(i), parts: section.parts, joins: section.joins })), last };
}

/** @returns whether a step is sewn onto foundations: the whole block, in a way that was looked for as such */
export const isOnFoundations = ({ makes, kind, joins }: Pick<Step, 'makes' | 'kind' | 'joins'>, way: string): boolean =>
  way === 'foundation' && makes === 'block' && kind === 'free unit' && joins.length > 0;

/** @returns what a part is called on its foundation: its section's letter where there are several, and its number in the words */
export const nameIn = ({ sections }: Sections, part: number): string => {
  const section = sections.find(({ parts }) => parts.includes(part))!;
  return `${sections.length > 1 ? section.letter : ''}${part + 1}`;
};
