import { X } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { RefusedPin } from '../../pattern/pattern.ts';
import { PIN_NAMES, pinInWords } from '../pin-words.ts';

/** What the designer asks of the sewing order: each pin with its place, and why where it cannot be honoured. */
export default function Pins({ block, refused, unpin }: {
  readonly block: Block;
  /** Those of these very pins that the pattern does not honour; none while there is none. */
  readonly refused: readonly RefusedPin[];
  readonly unpin: (index: number) => void;
}): ReactNode {
  const { pins = [] } = block;
  const why = new Map(refused.map(({ pin, says }) => [pin, says]));
  return (
    <section aria-labelledby="pins-title" className="pins">
      <h3 id="pins-title">Pins</h3>
      <ol>
        {pins.map((pin, i) => (
          <li key={i} className="pin" data-refused={why.has(i) || undefined}>
            <span className="pin-head" aria-hidden="true">
              {i + 1}
            </span>
            <p className="pin-words">
              <span className="pin-name">{PIN_NAMES[pin.pin]}</span> {pinInWords(block, pin)}
              {why.has(i) && <span className="pin-refused">Not honoured: {why.get(i)}</span>}
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
