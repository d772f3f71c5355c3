import { lazy, Suspense, useCallback, useEffect, useState, type ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import type { Choices } from '../../block/choices.ts';
import { MAX_BLOCKS } from '../../block/limits.ts';
import { printLength } from '../../measure/lengths.ts';
import { toNumber, type Rational } from '../../measure/rational.ts';

const of = (n: number, d = 1): Rational => ({ n, d });

/** The usual answers for each question, in the block's own unit; a file's own value joins them. */
const USUAL: Readonly<Record<LengthUnit, Readonly<Record<'seam' | 'ruler' | 'trim', readonly Rational[]>>>> = {
  in: {
    seam: [of(1, 8), of(3, 16), of(1, 4), of(3, 8), of(1, 2)],
    ruler: [of(1, 16), of(1, 8), of(1, 4)],
    trim: [of(0), of(1, 8), of(1, 4), of(1, 2)],
  },
  cm: {
    seam: [of(1, 2), of(3, 5), of(7, 10), of(3, 4), of(1)],
    ruler: [of(1, 20), of(1, 10), of(1, 4), of(1, 2)],
    trim: [of(0), of(3, 10), of(1, 2), of(1)],
  },
};

const OtherTrim = lazy(() => import('./OtherTrim.tsx'));

/** The answer that asks for an amount of one's own. */
const OTHER = 'other';

const key = (value: Rational): string => `${value.n}/${value.d}`;

function LengthChoice({ label, value, usual, unit, none, choose, other }: {
  readonly label: string;
  readonly value: Rational;
  readonly usual: readonly Rational[];
  readonly unit: LengthUnit;
  readonly none?: string;
  readonly choose: (value: Rational) => void;
  /** Where any amount may be typed: asks for it, or does so no more. */
  readonly other?: (asked: boolean) => void;
}): ReactNode {
  const offered = usual.some((each) => key(each) === key(value)) ? usual : [...usual, value].sort((a, b) => toNumber(a) - toNumber(b));
  return (
    <label className="choice">
      <span>{label}</span>
      <select
        value={key(value)}
        onChange={(event) => {
          other?.(event.target.value === OTHER);
          const chosen = offered.find((each) => key(each) === event.target.value);
          if (chosen) choose(chosen);
        }}
      >
        {offered.map((each) => (
          <option key={key(each)} value={key(each)}>
            {each.n === 0 && none !== undefined ? none : printLength(each, unit)}
          </option>
        ))}
        {other && <option value={OTHER}>another amount …</option>}
      </select>
    </label>
  );
}

/** So long after the last key a number is taken for whole, in milliseconds. */
const TYPED = 500;

/**
 * How many blocks: the field keeps what is being typed, and follows the drawing when that changes by itself (undo, another file). A
 * number is chosen when the hand rests, or leaves the field, or presses Enter: 1 and 12 are not chosen on the way to 120.
 */
function BlocksChoice({ value, choose }: { readonly value: number; readonly choose: (some: Choices) => void }): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const blocks = typed === null ? value : /^\d+$/.test(typed) ? Number(typed) : 0;
  const fits = blocks >= 1 && blocks <= MAX_BLOCKS;
  const take = useCallback(() => {
    setTyped(null);
    if (fits && blocks !== value) choose({ blocks });
  }, [fits, blocks, value, choose]);
  useEffect(() => {
    if (!fits || blocks === value) return;
    const rested = setTimeout(take, TYPED);
    return () => clearTimeout(rested);
  }, [fits, blocks, value, take]);
  return (
    <label className="choice">
      <span>Blocks</span>
      <input
        type="number"
        min={1}
        max={MAX_BLOCKS}
        step={1}
        value={typed ?? value}
        onFocus={(event) => event.currentTarget.select()}
        onBlur={take}
        onKeyDown={(event) => event.key === 'Enter' && take()}
        onChange={(event) => setTyped(event.target.value)}
      />
      {!fits && <span role="alert">1 to {MAX_BLOCKS} blocks</span>}
    </label>
  );
}

/** What the sewer chooses for her own table: how many blocks, which allowance, which ruler, how much to trim. */
export function ChoicesLine({ choices, unit, choose }: {
  readonly choices: Required<Choices>;
  readonly unit: LengthUnit;
  readonly choose: (some: Choices) => void;
}): ReactNode {
  const usual = USUAL[unit];
  const [asked, ask] = useState(false);
  return (
    <div className="choices" role="group" aria-label="Choices for the whole pattern">
      <BlocksChoice value={choices.blocks} choose={choose} />
      <LengthChoice label="Seams" value={choices.seam} usual={usual.seam} unit={unit} choose={(seam) => choose({ seam })} />
      <LengthChoice label="Ruler steps" value={choices.ruler} usual={usual.ruler} unit={unit} choose={(ruler) => choose({ ruler })} />
      <LengthChoice
        label="Trim off"
        value={choices.trim}
        usual={usual.trim}
        unit={unit}
        none="nothing"
        choose={(trim) => choose({ trim })}
        other={ask}
      />
      {asked && (
        <Suspense fallback={null}>
          <OtherTrim trim={choices.trim} unit={unit} choose={choose} />
        </Suspense>
      )}
    </div>
  );
}
