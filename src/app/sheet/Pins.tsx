import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { PIN_NAMES, pinInWords } from '../pin-words.ts';

/** How the pattern's notes begin about a pin that is not honoured; the rest of the sentence says why. */
const REFUSED = /^Pin (\d+) is not honoured: /;

/** @returns whether a note is about a pin, and so stands beside that pin */
export const isAboutPin = (note: string): boolean => REFUSED.test(note);

/** @returns why pins are not honoured, by their numbers, counted from 1 */
function refusals(notes: readonly string[]): ReadonlyMap<number, string> {
  const found = new Map<number, string>();
  for (const note of notes) {
    const number = REFUSED.exec(note)?.[1];
    if (number !== undefined) found.set(Number(number), note.replace(REFUSED, ''));
  }
  return found;
}

/** What the designer asks of the sewing order: each pin with its place, and why where it cannot be honoured. */
export function Pins({ block, notes, unpin }: {
  readonly block: Block;
  /** The notes of the pattern with these very pins; none while there is none. */
  readonly notes: readonly string[];
  readonly unpin: (index: number) => void;
}): ReactNode {
  const { pins = [] } = block;
  if (pins.length === 0) return null;
  const why = refusals(notes);
  return (
    <section aria-labelledby="pins-title" className="pins">
      <h3 id="pins-title">Pins</h3>
      <ol>
        {pins.map((pin, i) => (
          <li key={i} className="pin" data-refused={why.has(i + 1) || undefined}>
            <span className="pin-head" aria-hidden="true">
              {i + 1}
            </span>
            <p className="pin-words">
              <span className="pin-name">{PIN_NAMES[pin.pin]}</span> {pinInWords(block, pin)}
              {why.has(i + 1) && <span className="pin-refused">Not honoured: {why.get(i + 1)}</span>}
            </p>
            <button type="button" className="plain" onClick={() => unpin(i)}>
              <X size={18} aria-hidden="true" /> Remove<span className="unseen"> pin {i + 1}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
