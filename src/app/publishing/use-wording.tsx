import { useCallback, useMemo, useState, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { OwnPart } from '../../block/publication.ts';
import { changePart, putWords, removePart, removeWords, setSubtitle, type PartPlace } from '../../block/publishing.ts';
import { rename } from '../../block/renaming.ts';
import type { Result } from '../../measure/problem.ts';
import type { Telling } from '../../block/telling.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import { placeOfPart } from '../../pattern/document/own-parts.ts';
import { skeletonOf, valuesOf } from '../../pattern/telling/kept.ts';
import { editText, ownWords } from '../../pattern/telling/own-words.ts';
import { renamedTo } from '../past/words.ts';
import type { Acts } from '../table.ts';
import { styleWith } from './house-style-kept.ts';
import type { Laid, Sentence } from './pages-maker.ts';
import { SentenceEditor } from './SentenceEditor.tsx';

/** How a sentence on the pages is worded. */
export interface Wording {
  readonly open: (at: string, page: number) => void;
  /** The sentence that is open, and on which page, counted from 1; null for none. */
  readonly chosen: string | null;
  readonly page: number | null;
  readonly editor: ReactNode;
}

/** Lets one sentence at a time be worded where it stands. */
export function useWording({ block, style, telling, laid, change, setStyle, begin }: {
  readonly block: Block;
  readonly style: HouseStyle;
  /** How values stand on the pages; null until that is known. */
  readonly telling: Telling | null;
  readonly laid: Laid | null;
  readonly change: Acts['change'];
  readonly setStyle: (style: HouseStyle) => void;
  /** Begins a part of her own at a place. */
  readonly begin: (part: OwnPart['part'], place: PartPlace) => void;
}): Wording {
  const [opened, setOpened] = useState<{ readonly at: string; readonly page: number } | null>(null);
  const open = useCallback((at: string, page: number) => setOpened({ at, page }), []);
  const sentence = opened && laid?.sentences.get(opened.at);
  const editor = useMemo(() => {
    if (!sentence || !opened || !telling) return null;
    const close = (): void => {
      setOpened(null);
      // Back to the sentences of the page.
      const list = `[data-page="${opened.page - 1}"] [role="listbox"]`;
      requestAnimationFrame(() => document.querySelector<HTMLElement>(list)?.focus({ preventScroll: true }));
    };
    const { typed, keep, back, mine, values } = wordingOf(sentence, { block, style, telling, change, setStyle });
    const { section, after } = sentence;
    return (
      <SentenceEditor
        key={sentence.at}
        typed={typed}
        values={values}
        mine={mine}
        keep={keep}
        {...(back && {
          back: () => {
            back();
            close();
          },
        })}
        add={(part) => {
          close();
          begin(part, { section, ...(after !== undefined && { after }) });
        }}
        close={close}
      />
    );
  }, [sentence, opened, block, style, telling, change, setStyle, begin]);
  return { open, chosen: opened?.at ?? null, page: opened?.page ?? null, editor };
}

/** One sentence to be worded. */
interface Worded {
  readonly typed: string;
  readonly values: boolean;
  readonly mine: boolean;
  /** @returns why it cannot be taken; null where it is */
  readonly keep: (text: string) => string | null;
  readonly back?: () => void;
}

/** What sentences are worded with. */
interface Words {
  readonly block: Block;
  readonly style: HouseStyle;
  readonly telling: Telling;
  readonly change: Acts['change'];
  readonly setStyle: (style: HouseStyle) => void;
}

/** @returns how a sentence is worded: the block's name, her own text, or the program's sentence in her words */
function wordingOf({ at, told, was }: Sentence, { block, style, telling, change, setStyle }: Words): Worded {
  const { language } = style;
  const take = (label: string, verb: (now: Block) => Result<Block>): string | null => {
    const made = verb(block);
    if (!made.ok) return made.problem.sentence;
    change(label, verb);
    return null;
  };
  const plain = (label: (text: string) => string, typed: string, verb: (now: Block, text: string) => Result<Block>): Worded => ({
    typed,
    values: false,
    mine: true,
    keep: (text) => take(label(text), (now) => verb(now, text)),
  });
  if (at === 'cover/title') return { ...plain(renamedTo, block.name, (now, text) => rename(now, text.trim())), mine: false };
  if (at === 'cover/subtitle') return plain(() => 'wrote the subtitle', block.publication?.subtitle ?? '', setSubtitle);
  if (at === 'cover/maker' || at === 'cover/licence') {
    const name = at === 'cover/maker' ? 'maker' : 'licence';
    const keep = (text: string): string | null => {
      const next = styleWith(style, name, text);
      if (next.ok) setStyle(next.value);
      return next.ok ? null : next.problem.sentence;
    };
    return { typed: style[name] ?? '', values: false, mine: false, keep };
  }
  const part = block.publication?.parts?.find((each) => at === placeOfPart(each) || at.startsWith(`${placeOfPart(each)}/`));
  if (part) {
    const what = part.part === 'photo' ? 'photo' : part.part;
    const text = plain(() => `worded a ${what}`, part.text, (now, typed) => changePart(now, part.id, { text: typed }));
    return { ...text, back: () => change(`took a ${what} out`, (now) => removePart(now, part.id)) };
  }
  const written = was ?? told;
  const words = { at, language, was: skeletonOf(written) };
  return {
    typed: editText(told, telling),
    values: valuesOf(written).length > 0,
    mine: was !== undefined,
    keep: (text) => {
      const read = ownWords({ at, language, told: written }, text, telling);
      if (!read.ok) return read.problem.sentence;
      const own = read.value;
      return take('worded a sentence', (now) => (own ? putWords(now, own) : removeWords(now, words)));
    },
    back: () => change('took the program’s words again', (now) => removeWords(now, words)),
  };
}
