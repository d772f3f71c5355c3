import type { ReactNode } from 'react';
import type { OwnWords } from '../../block/publication.ts';
import { removeWords } from '../../block/publishing.ts';
import type { Acts } from '../table.ts';

/** Her words that have no place now: the drawing says something else there, or nothing. */
export function AsidePanel({ words, change }: { readonly words: readonly OwnWords[]; readonly change: Acts['change'] }): ReactNode {
  return (
    <>
      <p className="quiet">Where these stood the drawing says something else now. They come back by themselves when it says the same again.</p>
      <ul className="room-aside">
        {words.map((each) => (
          <li key={JSON.stringify([each.at, each.language, each.was])}>
            <p>{each.now}</p>
            <p className="quiet">in place of: {each.was}</p>
            <div className="room-acts">
              <button type="button" className="plain framed" onClick={() => void navigator.clipboard?.writeText(each.now).catch(() => undefined)}>
                Copy
              </button>
              <button type="button" className="plain" onClick={() => change('dropped words that were set aside', (now) => removeWords(now, each))}>
                Drop
              </button>
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}
