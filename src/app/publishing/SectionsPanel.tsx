import { ArrowDown, ArrowUp } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { SectionChoice, SectionName } from '../../block/publication.ts';
import { allSections, chooseSections, sectionMoved, sectionShown } from '../../block/publishing.ts';
import type { HouseStyle } from '../../pattern/house-style.ts';
import type { Acts } from '../table.ts';
import type { LaidSection } from './pages-maker.ts';
import { SECTION_WORDS } from './room-words.ts';

/** Which sections the pattern has, in which order: to be shown, left out and moved. */
export function SectionsPanel({ block, style, laid, change, setStyle, goTo }: {
  readonly block: Block;
  readonly style: HouseStyle;
  readonly laid: readonly LaidSection[];
  readonly change: Acts['change'];
  readonly setStyle: (style: HouseStyle) => void;
  /** Brings a place on a page into view. */
  readonly goTo: (page: number, down: number) => void;
}): ReactNode {
  const own = block.publication?.sections;
  const all = allSections(own ?? style.sections);
  const choose = (label: string, sections: SectionChoice | null): void => change(label, (now) => chooseSections(now, sections));
  const show = (section: SectionName, shown: boolean): void =>
    choose(`${shown ? 'showed' : 'left out'} “${SECTION_WORDS[section]}”`, sectionShown(all, section, shown));
  const move = (section: SectionName, to: number): void => choose(`moved “${SECTION_WORDS[section]}”`, sectionMoved(all, section, to));
  return (
    <>
      <ol className="room-sections">
        {all.map(({ section, shown }, i) => {
          const words = SECTION_WORDS[section];
          const { page, down } = laid.find(({ name }) => name === section) ?? { page: null, down: 0 };
          return (
            <li key={section}>
              <label>
                <input
                  type="checkbox"
                  checked={shown}
                  onChange={({ target: { checked } }) => show(section, checked)}
                />
                {words}
              </label>
              {shown && laid.length > 0 && page === null && <span className="quiet">nothing to show</span>}
              {shown && page !== null && (
                <button
                  type="button"
                  className="plain room-go"
                  onClick={() => goTo(page, down)}
                  aria-label={`${words}: go to page ${page + 1}`}
                >
                  {page + 1}
                </button>
              )}
              <button
                type="button"
                className="plain room-move"
                disabled={i === 0}
                onClick={() => move(section, i - 1)}
                aria-label={`Move ${words} up`}
              >
                <ArrowUp size={18} aria-hidden="true" />
              </button>
              <button
                type="button"
                className="plain room-move"
                disabled={i === all.length - 1}
                onClick={() => move(section, i + 1)}
                aria-label={`Move ${words} down`}
              >
                <ArrowDown size={18} aria-hidden="true" />
              </button>
            </li>
          );
        })}
      </ol>
      {own && (
        <div className="room-acts">
          <button
            type="button"
            className="plain framed"
            onClick={() => {
              setStyle({ ...style, sections: all });
              choose('chose the sections of all patterns', null);
            }}
          >
            So in all my patterns
          </button>
          <button type="button" className="plain framed" onClick={() => choose('chose the sections of all patterns', null)}>
            As in my other patterns
          </button>
        </div>
      )}
    </>
  );
}
