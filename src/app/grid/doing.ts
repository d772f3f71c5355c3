import { useState } from 'react';
import type { Block } from '../../block/block.ts';
import { cornersOffGrid, type Regridded } from '../../block/regridding.ts';
import { good, type Result } from '../../measure/problem.ts';
import { listed, several } from '../../measure/words.ts';
import type { Acts } from '../table.ts';

/** What the panel says about what was just asked for, beside where it was asked. */
export interface Said {
  readonly place: string;
  /** A problem cannot be done; a warning is done when it is asked for once more. */
  readonly kind: 'problem' | 'warning';
  readonly sentence: string;
  /** The label of what a warning is about. */
  readonly label: string;
}

/** How the panel's parts change the drawing. */
export interface Doing {
  /** What is said at each place. */
  readonly said: readonly Said[];
  /** What was done last from here; null before anything was. */
  readonly done: string | null;
  /**
   * Changes the drawing, or says beside `place` why not; what would leave something out is said first and done when asked again.
   * @returns whether it is done
   */
  readonly change: (place: string, label: string, verb: (block: Block) => Result<Block | Regridded>) => boolean;
}

/** @returns how to change the drawing from the panel */
export function useDoing(block: Block, acts: Pick<Acts, 'change'>): Doing {
  const [said, setSaid] = useState<readonly Said[]>([]);
  const [done, setDone] = useState<string | null>(null);
  const [known, setKnown] = useState(block);
  if (known !== block) {
    // A warning was about another drawing. What is wrong with something typed stays beside it, so that nothing moves under the hand.
    setKnown(block);
    setSaid(said.filter(({ kind }) => kind === 'problem'));
  }
  const say = (place: string, now: Said | null): void => setSaid([...said.filter((each) => each.place !== place), ...(now ? [now] : [])]);
  return {
    said,
    done,
    change: (place, label, verb) => {
      const made = verb(block);
      if (!made.ok) {
        say(place, { place, kind: 'problem', sentence: made.problem.sentence, label });
        return false;
      }
      const warning = lossInWords(block, made.value);
      const asked = said.some((each) => each.kind === 'warning' && each.place === place && each.label === label && each.sentence === warning);
      if (warning !== null && !asked) {
        say(place, { place, kind: 'warning', sentence: warning, label });
        return false;
      }
      say(place, null);
      setDone(label);
      acts.change(label, (now) => {
        const last = now === block ? made : verb(now);
        return last.ok ? good(blockOf(last.value)) : last;
      });
      return true;
    },
  };
}

const blockOf = (made: Block | Regridded): Block => ('lost' in made ? made.block : made);

/** @returns what would not fit, in words that end with how to go on; null where everything fits */
export function lossInWords(before: Block, made: Block | Regridded): string | null {
  const counts = (some: Partial<Regridded['lost']>): string =>
    listed([
      ...(some.patches?.length ? [several(some.patches.length, 'patch', 'patches')] : []),
      ...(some.seams?.length ? [several(some.seams.length, 'seam')] : []),
      ...(some.pins?.length ? [several(some.pins.length, 'pin')] : []),
      ...(some.unitMethods?.length ? [several(some.unitMethods.length, 'method of a unit', 'methods of units')] : []),
      ...(some.pressedSeams?.length ? [several(some.pressedSeams.length, 'pressing of a seam', 'pressings of seams')] : []),
    ]);
  const [out, cut] = 'lost' in made ? [counts(made.lost), counts(made.cut)] : ['', ''];
  const off = cornersOffGrid(blockOf(made));
  const parts = [
    ...(out ? [`${out} would be left out`] : []),
    ...(cut ? [`${cut} would be cut off at the new edge`] : []),
    ...(off > cornersOffGrid(before) ? [`${several(off, 'corner')} would lie off the lines and off the middles between them`] : []),
  ];
  return parts.length > 0 ? `${listed(parts)}; press again to do it all the same, and Undo brings everything back.` : null;
}
