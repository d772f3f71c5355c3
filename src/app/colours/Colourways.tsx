import { useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { keepColourway, worn } from '../../block/colour/colourways.ts';
import { MAX_NAME } from '../../block/limits.ts';
import type { Acts } from '../table.ts';
import { ColourwayLine } from './ColourwayLine.tsx';
import { useColourwayPattern } from './use-colourway-pattern.ts';

/** The looks that are kept by name: keep one more, take one, see what it takes, let one go. */
export function Colourways({ block, acts }: { readonly block: Block; readonly acts: Acts }): ReactNode {
  const [name, setName] = useState('');
  const [unfolded, setUnfolded] = useState<string | null>(null);
  const kept = block.colourways ?? [];
  const open = kept.some((each) => each.name === unfolded) ? unfolded : null;
  const made = useColourwayPattern(block, open);
  const on = worn(block);
  const typed = name.trim();
  const known = kept.some((each) => each.name === typed);
  return (
    <section aria-labelledby="colourways-title" className="colourways">
      <h3 id="colourways-title">Colourways</h3>
      {kept.length > 0 && (
        <ul>
          {kept.map((colourway, i) => (
            <ColourwayLine
              key={`${i + 1} of ${kept.length}`}
              colourway={colourway}
              block={block}
              on={colourway.name === on}
              open={colourway.name === open}
              made={made}
              unfold={() => setUnfolded(colourway.name === open ? null : colourway.name)}
              renamed={(to) => colourway.name === open && setUnfolded(to)}
              acts={acts}
            />
          ))}
        </ul>
      )}
      <form
        className="colourway-keep"
        onSubmit={(event) => {
          event.preventDefault();
          acts.change(`kept ${typed}`, (now) => keepColourway(now, typed));
          setName('');
        }}
      >
        <label className="field">
          <span>Keep the block as it is now under</span>
          <input type="text" value={name} required maxLength={MAX_NAME} onChange={(event) => setName(event.target.value)} />
        </label>
        <button type="submit" className="main-act" disabled={typed === ''}>
          {known ? 'Keep in its place' : 'Keep'}
        </button>
      </form>
    </section>
  );
}
