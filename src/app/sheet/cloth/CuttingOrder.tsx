import { useRef, useState, type KeyboardEvent, type ReactNode } from 'react';
import type { LengthUnit } from '../../../block/block.ts';
import type { Cut } from '../../../cutting/cut.ts';
import type { ClothTiles, LaidTiles, Sections } from '../../../cutting/laid.ts';
import { rational } from '../../../measure/rational.ts';
import { several } from '../../../measure/words.ts';
import { Length, Prose } from '../Length.tsx';
import { Lamp, Line } from '../Line.tsx';
import { nameOf, sizeWords } from './cloth-words.ts';

/** How a key moves along the pieces: by so many, or to an end. */
const MOVES: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1, Home: -Infinity, End: Infinity };

/** The cuts of one cloth in words, strip after strip. It is one stop for the Tab key; arrow keys go from piece to piece. */
export function CuttingOrder({ tiles: { strips, step }, cuts, unit }: {
  readonly tiles: ClothTiles;
  readonly cuts: ReadonlyMap<string, Cut>;
  readonly unit: LengthUnit;
}): ReactNode {
  const list = useRef<HTMLOListElement>(null);
  const [at, setAt] = useState(0);
  const length = (steps: number): ReactNode => <Length value={rational(steps * step.n, step.d)} unit={unit} />;
  const move = (event: KeyboardEvent): void => {
    const by = MOVES[event.key];
    const lamps = [...(list.current?.querySelectorAll<HTMLElement>('.lamp') ?? [])];
    const from = lamps.indexOf(event.target as HTMLElement);
    if (by === undefined || from < 0) return;
    event.preventDefault();
    const next = Math.min(lamps.length - 1, Math.max(0, from + by));
    setAt(next);
    lamps[next]?.focus();
  };
  let index = 0;
  /** The pieces that lie together, each line of the list once. */
  const lamps = (pieces: readonly LaidTiles[], parts: number): ReactNode => (
    <ul>
      {linesIn(pieces).map(({ id, count, falling }) => {
        const cut = cuts.get(id);
        if (!cut) return null;
        const here = index++;
        const each = count / parts;
        const hands = cut.diagonals && parts === 1 ? diagonalWords(count, falling) : '';
        const words = `${each} ${nameOf(cut, each)} ${sizeWords(cut, unit)}${hands}`;
        return (
          <Line key={id} name={`cut ${id}`} className="in-strip">
            <Lamp name={`cut ${id}`} says={`${words}, line ${id}: show in the drawing`} stop={here === at}>
              <Prose text={words} /> <span className="line-badge">{id}</span>
            </Lamp>
          </Line>
        );
      })}
    </ul>
  );
  return (
    <ol ref={list} className="cutting-order" onKeyDown={move}>
      {strips.map(({ number, times, height, pieces, sections }) => (
        <li key={number}>
          <span className="strip-badge">{number}</span>
          <div className="strip-cuts">
            <span>
              {several(times, 'strip')} {length(height)} wide
              {times === 1 ? ': ' : ', from each: '}
            </span>
            {sections.every(isPlain)
              ? lamps(pieces, 1)
              : sections.map((section, i) => (
                  <div key={i} className="section">
                    {!isPlain(section) && (
                      <span>
                        {several(section.times, 'section')} {length(section.width)} wide
                        {section.times === 1 ? ': ' : ', from each: '}
                      </span>
                    )}
                    {lamps(section.pieces, isPlain(section) ? 1 : section.times)}
                  </div>
                ))}
          </div>
        </li>
      ))}
    </ol>
  );
}

/** Whether each section is one piece: cutting it across is all there is to do. */
const isPlain = ({ pieces, times }: Sections): boolean => pieces.reduce((sum, { across, down }) => sum + across * down, 0) === times;

interface InStrip {
  /** Of the line of the cutting list. */
  readonly id: string;
  readonly count: number;
  /** How many of them are cut from the top left, as they lie; null where equal cloths differ. */
  readonly falling: number | null;
}

/** @returns how many of these pieces are of each line, in the order in which they lie */
function linesIn(pieces: readonly LaidTiles[]): readonly InStrip[] {
  const lines = new Map<string, InStrip>();
  for (const { cut, across, down, falling } of pieces) {
    const before = lines.get(cut) ?? { id: cut, count: 0, falling: 0 };
    const sum = falling === null || before.falling === null ? null : before.falling + falling;
    lines.set(cut, { ...before, count: before.count + across * down, falling: sum });
  }
  return [...lines.values()];
}

/** @returns how rectangles are cut on the diagonal whose halves are mirror images: ", cut from the top left" */
function diagonalWords(count: number, falling: number | null): string {
  if (falling === null) return '';
  if (falling === count) return ', cut from the top left';
  return falling === 0 ? ', cut from the bottom left' : `, ${falling} cut from the top left, ${count - falling} from the bottom left`;
}
