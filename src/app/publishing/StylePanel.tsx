import { useId, type ReactNode } from 'react';
import type { HouseStyle } from '../../pattern/house-style.ts';

/** One choice of the house style: what it is called, and what there is. */
interface Choice<Name extends keyof HouseStyle> {
  readonly name: Name;
  readonly words: string;
  readonly options: readonly (readonly [HouseStyle[Name] & (string | number), string])[];
}

const choice = <Name extends keyof HouseStyle>(name: Name, words: string, options: Choice<Name>['options']): Choice<Name> => ({
  name,
  words,
  options,
});

const PRINT = [
  choice('paper', 'Paper', [['letter', 'Letter'], ['a4', 'A4']]),
  choice('lie', 'It lies', [['portrait', 'upright'], ['landscape', 'on its side']]),
  choice('columns', 'Columns', [[1, 'one'], [2, 'two']]),
  choice('ink', 'Fabrics are printed as', [['colours', 'colours'], ['hatches', 'hatches, for black ink only']]),
  choice('letters', 'Letters', [['usual', 'usual'], ['large', 'large']]),
] as const;

const WORDS = [
  choice('language', 'Language', [['en', 'English'], ['de', 'Deutsch']]),
  choice('kinds', 'Units are called', [['in full', 'half-square triangle'], ['short', 'HST, QST']]),
  choice('fractions', 'Fractions', [['set', '1½'], ['typed', '1 1/2']]),
  choice('inches', 'Inches', [['in.', '2 in.'], ['″', '2″']]),
] as const;

/** How pages are printed. */
export const PrintPanel = (props: PanelProps): ReactNode => <Choices choices={PRINT} {...props} />;

/** In what words and signs they are written. */
export const WordsPanel = (props: PanelProps): ReactNode => <Choices choices={WORDS} {...props} />;

interface PanelProps {
  readonly style: HouseStyle;
  readonly setStyle: (style: HouseStyle) => void;
}

function Choices({ choices, style, setStyle }: PanelProps & {
  readonly choices: readonly (typeof PRINT | typeof WORDS)[number][];
}): ReactNode {
  const id = useId();
  return (
    <div className="fields">
      {choices.map(({ name, words, options }) => (
        <div key={name} className="field">
          <label htmlFor={`${id}-${name}`}>{words}</label>
          <select
            id={`${id}-${name}`}
            value={String(style[name])}
            onChange={(event) => setStyle({ ...style, [name]: options.find(([value]) => String(value) === event.target.value)![0] })}
          >
            {options.map(([value, said]) => (
              <option key={value} value={value}>
                {said}
              </option>
            ))}
          </select>
        </div>
      ))}
    </div>
  );
}
