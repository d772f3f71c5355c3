import type { ReactNode } from 'react';
import type { OwnWords } from '../../block/publication.ts';
import { putWords, removeWords } from '../../block/publishing.ts';
import type { Telling } from '../../block/telling.ts';
import { filled, printed, skeletonOf, valuesOf } from '../../pattern/telling/kept.ts';
import type { Acts } from '../table.ts';
import type { Sentence } from './pages-maker.ts';

/** Her words that have no place now: the drawing says something else there, or nothing. */
export function AsidePanel({ words, sentences, telling, change }: {
  readonly words: readonly OwnWords[];
  readonly sentences: ReadonlyMap<string, Sentence>;
  readonly telling: Telling | null;
  readonly change: Acts['change'];
}): ReactNode {
  return (
    <>
      <p className="quiet">
        Where these stood, the pattern says something else now, or nothing. They come back by themselves when it says the same again.
      </p>
      <ul className="room-aside">
        {words.map((own) => (
          <AsideLine
            key={JSON.stringify([own.at, own.language, own.was])}
            own={own}
            sentence={sentences.get(own.at)}
            telling={telling}
            change={change}
          />
        ))}
      </ul>
    </>
  );
}

function AsideLine({ own, sentence, telling, change }: {
  readonly own: OwnWords;
  /** What stands at that place now; undefined where there is no such place. */
  readonly sentence: Sentence | undefined;
  readonly telling: Telling | null;
  readonly change: Acts['change'];
}): ReactNode {
  const written = sentence?.was ?? sentence?.told;
  const again = written === undefined ? null : filled(own.now, valuesOf(written));
  const putBack = (): void =>
    change('put back words that were set aside', (now) => {
      const without = removeWords(now, own);
      return without.ok ? putWords(without.value, { ...own, was: skeletonOf(written!) }) : without;
    });
  return (
    <li>
      <p>{own.now}</p>
      {written !== undefined && telling && <p className="quiet">There stands now: {printed(sentence!.told, telling)}</p>}
      {again !== null && telling && <p className="quiet">Put back it would say: {printed(again, telling)}</p>}
      <div className="room-acts">
        {again !== null && (
          <button type="button" className="plain framed" onClick={putBack}>
            Put it back
          </button>
        )}
        <button type="button" className="plain framed" onClick={() => void navigator.clipboard?.writeText(own.now).catch(() => undefined)}>
          Copy
        </button>
        <button type="button" className="plain" onClick={() => change('dropped words that were set aside', (now) => removeWords(now, own))}>
          Drop
        </button>
      </div>
    </li>
  );
}
