import { Plus, X } from 'lucide-react';
import { useId, useState, type ReactNode } from 'react';
import type { Fabric, LengthUnit } from '../../../block/block.ts';
import type { ClothChoice } from '../../../block/choices.ts';
import { typedLength } from '../../../block/typed-size.ts';
import { printLength } from '../../../measure/lengths.ts';
import { bad, type Result } from '../../../measure/problem.ts';
import { TypedField } from './TypedField.tsx';

type Pieces = NonNullable<ClothChoice['have']>;

/** A new line of what the maker has, as it is typed. */
interface Typed {
  readonly count: string;
  readonly width: string;
  readonly length: string;
}

const NOTHING: Typed = { count: '1', width: '', length: '' };

/** @returns how many, from text; bad where it is no number. Whether so many may be said is checked with the choices. */
function typedCount(text: string): Result<number> {
  const plain = text.trim();
  return /^\d{1,9}$/.test(plain)
    ? { ok: true, value: Number(plain) }
    : bad('no-count', `“${plain}” is not a number of pieces: write a whole number such as 3.`);
}

/** The cloth that the maker has of one fabric, which is used first. */
export function Have({ fabric, have, unit, take }: {
  readonly fabric: Fabric;
  readonly have: Pieces;
  readonly unit: LengthUnit;
  /** Takes a changed list; answers with what is wrong with it in one sentence, or with null. */
  readonly take: (have: Pieces) => string | null;
}): ReactNode {
  const [typed, setTyped] = useState(NOTHING);
  const [problem, setProblem] = useState<string | null>(null);
  const problemId = useId();
  const changed = (at: number, some: Partial<Pieces[number]>): string | null =>
    take(have.map((piece, i) => (i === at ? { ...piece, ...some } : piece)));
  const side = (at: number, name: 'width' | 'length') => (text: string): string | null => {
    const read = typedLength(text, unit);
    return read.ok ? changed(at, { [name]: read.value }) : read.problem.sentence;
  };
  const add = (): void => {
    const [count, width, length] = [typedCount(typed.count), typedLength(typed.width, unit), typedLength(typed.length, unit)];
    const wrong = !count.ok
      ? count.problem.sentence
      : !width.ok
        ? width.problem.sentence
        : !length.ok
          ? length.problem.sentence
          : take([...have, { count: count.value, width: width.value, length: length.value }]);
    setProblem(wrong);
    if (wrong === null) setTyped(NOTHING);
  };
  const field = (name: keyof Typed, label: string): ReactNode => (
    <label className="typed">
      <span>{label}</span>
      <input
        type="text"
        autoComplete="off"
        value={typed[name]}
        aria-describedby={problem === null ? undefined : problemId}
        onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
        onKeyDown={(event) => event.key === 'Enter' && add()}
      />
    </label>
  );
  return (
    <fieldset className="have">
      <legend>What I have of {fabric.name}, used first</legend>
      {have.length > 0 && (
        <ul>
          {have.map(({ count, width, length }, i) => {
            const name = `${count} of ${printLength(width, unit, 'bare')} × ${printLength(length, unit)}`;
            return (
              <li key={i} className="have-row">
                <TypedField
                  label={`How many of piece ${i + 1}`}
                  said={String(count)}
                  take={(text) => {
                    const read = typedCount(text);
                    return read.ok ? changed(i, { count: read.value }) : read.problem.sentence;
                  }}
                />
                <span aria-hidden="true">of</span>
                <TypedField label={`Piece ${i + 1} across`} said={printLength(width, unit, 'bare')} take={side(i, 'width')} />
                <span aria-hidden="true">×</span>
                <TypedField label={`Piece ${i + 1} along`} said={printLength(length, unit, 'bare')} take={side(i, 'length')} />
                <button type="button" className="plain" aria-label={`Take ${name} away`} onClick={() => take(have.filter((_, at) => at !== i))}>
                  <X size={18} aria-hidden="true" />
                </button>
              </li>
            );
          })}
        </ul>
      )}
      <div className="have-row new">
        {field('count', 'Pieces')}
        <span aria-hidden="true">of</span>
        {field('width', 'Across')}
        <span aria-hidden="true">×</span>
        {field('length', 'Along')}
        <button type="button" className="plain framed" onClick={add}>
          <Plus size={18} aria-hidden="true" /> Add
        </button>
      </div>
      {problem !== null && (
        <p className="typed-problem" id={problemId} role="alert">
          {problem}
        </p>
      )}
    </fieldset>
  );
}
