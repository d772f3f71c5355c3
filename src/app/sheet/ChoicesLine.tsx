import { useState, type ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import type { Choices } from '../../block/choices.ts';
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

const key = (value: Rational): string => `${value.n}/${value.d}`;

function LengthChoice({ label, value, usual, unit, none, choose }: {
  readonly label: string;
  readonly value: Rational;
  readonly usual: readonly Rational[];
  readonly unit: LengthUnit;
  readonly none?: string;
  readonly choose: (value: Rational) => void;
}): ReactNode {
  const offered = usual.some((each) => key(each) === key(value)) ? usual : [...usual, value].sort((a, b) => toNumber(a) - toNumber(b));
  return (
    <label className="choice">
      <span>{label}</span>
      <select
        value={key(value)}
        onChange={(event) => {
          const chosen = offered.find((each) => key(each) === event.target.value);
          if (chosen) choose(chosen);
        }}
      >
        {offered.map((each) => (
          <option key={key(each)} value={key(each)}>
            {each.n === 0 && none !== undefined ? none : printLength(each, unit)}
          </option>
        ))}
      </select>
    </label>
  );
}

const MOST_BLOCKS = 999;

/** How many blocks: the field keeps what is being typed, and follows the drawing when that changes by itself (undo, another file). */
function BlocksChoice({ value, choose }: { readonly value: number; readonly choose: (blocks: number) => void }): ReactNode {
  const [typed, setTyped] = useState(String(value));
  const [known, setKnown] = useState(value);
  if (known !== value) {
    setKnown(value);
    setTyped(String(value));
  }
  return (
    <label className="choice">
      <span>Blocks</span>
      <input
        type="number"
        min={1}
        max={MOST_BLOCKS}
        step={1}
        value={typed}
        onBlur={() => setTyped(String(value))}
        onChange={(event) => {
          setTyped(event.target.value);
          const blocks = event.target.valueAsNumber;
          if (!Number.isSafeInteger(blocks) || blocks < 1 || blocks > MOST_BLOCKS) return;
          setKnown(blocks);
          choose(blocks);
        }}
      />
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
  return (
    <div className="choices" role="group" aria-label="Choices for the whole pattern">
      <BlocksChoice value={choices.blocks} choose={(blocks) => choose({ blocks })} />
      <LengthChoice label="Seams" value={choices.seam} usual={usual.seam} unit={unit} choose={(seam) => choose({ seam })} />
      <LengthChoice label="Ruler steps" value={choices.ruler} usual={usual.ruler} unit={unit} choose={(ruler) => choose({ ruler })} />
      <LengthChoice
        label="Trim off"
        value={choices.trim}
        usual={usual.trim}
        unit={unit}
        none="nothing"
        choose={(trim) => choose({ trim })}
      />
    </div>
  );
}
