import { ArrowDown, ArrowUp, Trash2 } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { MAX_SAID } from '../../block/limits.ts';
import type { OwnPart, SectionName } from '../../block/publication.ts';
import { addPart, allSections, changePart, movePart, removePart, type PartPlace } from '../../block/publishing.ts';
import { placeOfPart } from '../../pattern/document/own-parts.ts';
import type { Acts } from '../table.ts';
import type { LaidSection } from './pages-maker.ts';
import { PART_WORDS, SECTION_WORDS } from './room-words.ts';
import { PartEditor } from './PartEditor.tsx';
import { TypedLine } from './TypedLine.tsx';

/** A part that is about to be written, and where. */
export interface Begun extends PartPlace {
  readonly part: 'paragraph' | 'tip';
}

/** @returns the place behind all else in a section */
function atTheEnd(section: SectionName, laid: readonly LaidSection[]): PartPlace {
  const after = laid.find(({ name }) => name === section)?.places.at(-1);
  return { section, ...(after !== undefined && { after }) };
}

/** What she adds of her own, and where it stands. */
export function PartsPanel({ block, laid, change, begun, begin, askForPhoto }: {
  readonly block: Block;
  readonly laid: readonly LaidSection[];
  readonly change: Acts['change'];
  /** A part that is about to be written; null for none. */
  readonly begun: Begun | null;
  readonly begin: (next: Begun | null) => void;
  readonly askForPhoto: (place: PartPlace) => void;
}): ReactNode {
  const { parts = [], pictures = [] } = block.publication ?? {};
  const write = ({ part, section, after }: Begun) => (text: string): string | null => {
    const next = { part, section, ...(after !== undefined && { after }), text };
    const made = addPart(block, next);
    if (!made.ok) return made.problem.sentence;
    change(part === 'tip' ? 'added a tip' : 'added a paragraph', (now) => addPart(now, next));
    begin(null);
    return null;
  };
  return (
    <>
      <p className="quiet">
        Paragraphs, tips in a box and photos. To put one at a certain place, press a sentence on its page and add below it.
      </p>
      {begun ? (
        <PartEditor
          key={`${begun.part} ${begun.section} ${begun.after ?? ''}`}
          words={`${PART_WORDS[begun.part]} in “${SECTION_WORDS[begun.section]}”`}
          keep={write(begun)}
          close={() => begin(null)}
        />
      ) : (
        <div className="room-acts">
          <button type="button" className="plain framed" onClick={() => begin({ part: 'paragraph', ...atTheEnd('cover', laid) })}>
            Add a paragraph
          </button>
          <button type="button" className="plain framed" onClick={() => begin({ part: 'tip', ...atTheEnd('cover', laid) })}>
            Add a tip
          </button>
          <button type="button" className="plain framed" onClick={() => askForPhoto(atTheEnd('cover', laid))}>
            Add a photo
          </button>
        </div>
      )}
      <ul className="room-parts">
        {parts.map((part, i) => (
          <PartLine
            key={part.id}
            part={part}
            number={i + 1}
            jpeg={pictures.find(({ id }) => id === part.picture)?.jpeg}
            laid={laid}
            change={change}
            block={block}
          />
        ))}
      </ul>
    </>
  );
}

function PartLine({ block, part, number, jpeg, laid, change }: {
  readonly block: Block;
  readonly part: OwnPart;
  readonly number: number;
  readonly jpeg: string | undefined;
  readonly laid: readonly LaidSection[];
  readonly change: Acts['change'];
}): ReactNode {
  const what = PART_WORDS[part.part];
  const name = `${what.toLowerCase()} ${number}`;
  const takeOut = (): void => change(`took a ${what.toLowerCase()} out`, (now) => removePart(now, part.id));
  const text = (typed: string): string | null => {
    const made = changePart(block, part.id, { text: typed });
    if (!made.ok) return made.problem.sentence;
    change(`worded a ${what.toLowerCase()}`, (now) => changePart(now, part.id, { text: typed }));
    return null;
  };
  const move = (place: PartPlace): void => change(`moved a ${what.toLowerCase()}`, (now) => movePart(now, part.id, place));
  const here = laid.find(({ name }) => name === part.section);
  const places = here?.places.filter((place) => place !== placeOfPart(part)) ?? [];
  const at = part.after === undefined ? -1 : places.indexOf(part.after);
  const step = (to: number): void => move({ section: part.section, ...(to >= 0 && { after: places[to]! }) });
  return (
    <li className="room-part">
      {jpeg !== undefined && <img className="room-photo" src={`data:image/jpeg;base64,${jpeg}`} alt={part.text || `Photo ${number}`} />}
      <TypedLine
        words={part.part === 'photo' ? `Under photo ${number}` : `${what} ${number}`}
        value={part.text}
        most={MAX_SAID}
        rows={part.part === 'photo' ? 1 : 3}
        take={text}
      />
      <div className="room-part-acts">
        <label className="field">
          <span>Stands in</span>
          <select value={part.section} onChange={(event) => move(atTheEnd(event.target.value as SectionName, laid))}>
            {allSections(block.publication?.sections).map(({ section }) => (
              <option key={section} value={section}>
                {SECTION_WORDS[section]}
              </option>
            ))}
          </select>
          {!here && <span className="quiet">not in the pattern now</span>}
        </label>
        <button type="button" className="plain room-move" disabled={at < 0} onClick={() => step(at - 1)} aria-label={`Move ${name} up`}>
          <ArrowUp size={18} aria-hidden="true" />
        </button>
        <button
          type="button"
          className="plain room-move"
          disabled={at >= places.length - 1}
          onClick={() => step(at + 1)}
          aria-label={`Move ${name} down`}
        >
          <ArrowDown size={18} aria-hidden="true" />
        </button>
        <button type="button" className="plain room-move" onClick={takeOut} aria-label={`Take ${name} out`}>
          <Trash2 size={18} aria-hidden="true" />
        </button>
      </div>
    </li>
  );
}
