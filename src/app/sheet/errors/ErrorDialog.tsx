import { useDeferredValue, useMemo, useState, type ReactNode } from 'react';
import type { LengthUnit } from '../../../block/block.ts';
import { typedLength } from '../../../block/typed-size.ts';
import { aboutLength } from '../../../measure/about.ts';
import { printLength } from '../../../measure/lengths.ts';
import { compare, multiply, rational, subtract, toNumber, ZERO, type Rational } from '../../../measure/rational.ts';
import { surd } from '../../../measure/surd.ts';
import { several } from '../../../measure/words.ts';
import { byChance } from '../../../pattern/by-chance.ts';
import { astray, type Astray } from '../../../pattern/diagrams/astray.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import type { SeamError } from '../../../sewing/errors/comes-out.ts';
import { sentence } from '../../../sewing/sentences.ts';
import { allowanceOff, measured, type Strips } from '../../../sewing/errors/strips.ts';
import { Dialog } from '../../Dialog.tsx';
import { ClothPaths } from '../ClothPaths.tsx';
import { Prose } from '../Length.tsx';
import '../../face/watch.css';
import '../../face/errors.css';

/** What one step of a slider is, and how far it goes either way. */
const STEP: Readonly<Record<LengthUnit, Rational>> = { in: rational(1, 64), cm: rational(1, 40) };
const MOST = 8;
const MAGNIFIED = [1, 4, 10] as const;

/** The strips of the trade's test: three that are cut 1 1/2 in. wide (quiltcentric.com, 2012-09-16), 4 cm where cloth is cut by those. */
const STRIPS: Readonly<Record<LengthUnit, Rational>> = { in: rational(3, 2), cm: rational(4) };

const size = (length: Rational): Rational => (compare(length, ZERO) < 0 ? multiply(length, rational(-1)) : length);
const about = (length: Rational, unit: LengthUnit): string => aboutLength(surd(size(length)), unit);

/** What comes of seams and cuts that are a little off. */
export default function ErrorDialog({ pattern, colors, close }: {
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
  readonly close: () => void;
}): ReactNode {
  const { unit } = pattern.block;
  const [allowance, setAllowance] = useState(2);
  const [cutting, setCutting] = useState(0);
  const [magnified, setMagnified] = useState<number>(4);
  const error = useMemo(() => ({ allowance: multiply(STEP[unit], rational(allowance)), cutting: multiply(STEP[unit], rational(cutting)) }), [unit, allowance, cutting]);
  const shown = useDeferredValue(error);
  const found = useMemo(() => astray(pattern, shown, magnified), [pattern, shown, magnified]);
  return (
    <Dialog title="What a seam error costs" className="watch errors" close={close}>
      <div className="watch-body">
        <Slide label="Each seam" value={allowance} change={setAllowance} says={offWords(error.allowance, unit, ['takes', 'too little', 'too much'], ' on each side')} />
        <Slide label="Each piece" value={cutting} change={setCutting} says={offWords(error.cutting, unit, ['is cut', 'too small', 'too large'])} />
        <Picture found={found} pattern={pattern} colors={colors} />
        <label className="errors-magnified">
          <span>Shown astray</span>
          <select value={magnified} onChange={(event) => setMagnified(Number(event.target.value))}>
            {MAGNIFIED.map((each) => (
              <option key={each} value={each}>
                {each === 1 ? 'as far as it is' : `${each} times as far as it is`}
              </option>
            ))}
          </select>
        </label>
        <Outcome found={found} pattern={pattern} />
        <Chances pattern={pattern} error={shown} />
        <Test pattern={pattern} error={shown} />
      </div>
    </Dialog>
  );
}

/** @returns "takes 1/32 in. too much on each side", "is cut exactly" */
function offWords(off: Rational, unit: LengthUnit, [verb, less, more]: readonly [string, string, string], where = ''): string {
  if (off.n === 0) return verb === 'takes' ? 'takes what it should' : `${verb} exactly`;
  return `${verb} ${printLength(size(off), unit)} ${off.n < 0 ? less : more}${where}`;
}

function Slide({ label, value, change, says }: {
  readonly label: string;
  readonly value: number;
  readonly change: (value: number) => void;
  readonly says: string;
}): ReactNode {
  return (
    <label className="watch-slide errors-slide">
      <span>{label}</span>
      <input type="range" min={-MOST} max={MOST} step={1} value={value} aria-valuetext={says} onChange={(event) => change(Number(event.target.value))} />
      <span className="errors-says" aria-hidden="true">
        <Prose text={says} />
      </span>
    </label>
  );
}

function Picture({ found, pattern, colors }: { readonly found: Astray; readonly pattern: Pattern; readonly colors: ReadonlyMap<string, string> }): ReactNode {
  const { width, height } = pattern.block.finished;
  const [wide, high] = [width.n / width.d, height.n / height.d];
  const room = Math.max(wide, high) * 0.12;
  const radius = Math.max(wide, high) * 0.012;
  return (
    <svg className="watch-picture errors-picture" viewBox={`${-room} ${-room} ${wide + 2 * room} ${high + 2 * room}`} aria-hidden="true" focusable="false">
      <ClothPaths placed={found.pieces} colors={colors} />
      <rect className="errors-frame" width={wide} height={high} />
      {found.spots.map(([x, y], i) => (
        <circle key={i} className="errors-spot" cx={x} cy={y} r={radius} />
      ))}
    </svg>
  );
}

/** How many of the worst points are named. */
const NAMED = 5;

function Outcome({ found: { width, height, missed }, pattern }: { readonly found: Astray; readonly pattern: Pattern }): ReactNode {
  const { unit, unfinished } = pattern.block;
  return (
    <section className="errors-part" aria-label="How the block comes out" aria-live="polite">
      <p>
        It measures <strong><Prose text={rangeWords(width.top, width.bottom, unit)} /> by <Prose text={rangeWords(height.left, height.right, unit)} /></strong>
        <Prose text={sentence(`, instead of ${printLength(unfinished.width, unit, 'bare')} by ${printLength(unfinished.height, unit)}`)} />
      </p>
      {missed.length > 0 ? (
        <>
          <p>Seams miss each other, and points are lost, soonest here:</p>
          <ul className="errors-list">
            {missed.slice(0, NAMED).map(({ step, makes, apart }) => (
              <li key={step}>
                Step {step}, {makes === 'block' ? 'the block' : `unit ${makes}`}: up to <Prose text={about(apart, unit)} />
              </li>
            ))}
          </ul>
          {missed.length > NAMED && <p className="quiet">and in {several(missed.length - NAMED, 'more step')}.</p>}
        </>
      ) : (
        <p>All seams that should meet do.</p>
      )}
    </section>
  );
}

/** @returns "12 1/4 in.", "11.94 to 12.03 in." */
function rangeWords(one: Rational, other: Rational, unit: LengthUnit): string {
  const [low, high] = (compare(one, other) <= 0 ? [one, other] : [other, one]).map((length) => about(length, unit)) as [string, string];
  return low === high ? low : `${low} to ${high}`;
}

/** Blocks sewn by chance, fewer of those that have many pieces. */
const BLOCKS = 400;
const PIECES = 60_000;
const SEED = 1;

/** @returns the standard deviation of what is within a length 19 times of 20, in a normal distribution */
const usually = (within: Rational): number => toNumber(size(within)) / 1.96;

function Chances({ pattern, error }: { readonly pattern: Pattern; readonly error: SeamError }): ReactNode {
  const { unit, unfinished } = pattern.block;
  const blocks = Math.max(40, Math.min(BLOCKS, Math.floor(PIECES / pattern.figures.pieces)));
  const found = useMemo(
    () => byChance(pattern.steps, { allowance: usually(error.allowance), cutting: usually(error.cutting), blocks, seed: SEED }),
    [pattern, error, blocks],
  );
  if (error.allowance.n === 0 && error.cutting.n === 0) return null;
  const hundredths = (value: number): Rational => rational(Math.round(value * 100), 100);
  const sized = (side: Rational, by: number): string => about(subtract(side, hundredths(-by)), unit);
  const [worst] = found.misses;
  return (
    <section className="errors-part" aria-label="By chance">
      <p>
        Where it is not always the same, but now this way and now that, 19 times of 20 by no more than so much, 9 of 10 blocks measure{' '}
        <Prose text={`${sized(unfinished.width, found.wider.low)} to ${sized(unfinished.width, found.wider.high)}`} /> across and{' '}
        <Prose text={`${sized(unfinished.height, found.higher.low)} to ${sized(unfinished.height, found.higher.high)}`} /> down
        {worst && (
          <>
            ; where seams miss each other most, in step {pattern.steps[worst.step]!.number}, it is by <Prose text={about(hundredths(worst.apart.middle), unit)} /> in
            half of them, and by more than <Prose text={about(hundredths(worst.apart.high), unit)} /> in one of 20 blocks
          </>
        )}
        . <span className="quiet">Found by sewing {blocks} blocks by chance.</span>
      </p>
    </section>
  );
}

/** The three-strip test, both ways: what such strips measure, and what is wrong with strips that measure so much. */
function Test({ pattern, error }: { readonly pattern: Pattern; readonly error: SeamError }): ReactNode {
  const { unit } = pattern.block;
  const strips: Strips = { count: 3, cut: STRIPS[unit], seam: pattern.choices.seam };
  const [right, off] = [measured(strips, { allowance: ZERO, cutting: ZERO }), measured(strips, error)];
  const [typed, setTyped] = useState('');
  const read = typed.trim() === '' ? null : typedLength(typed, unit);
  const length = (value: Rational): string => about(value, unit);
  return (
    <section className="errors-part" aria-label="Three strips">
      <p>
        <Prose text={sentence(`To find out, sew three strips cut ${printLength(strips.cut, unit)} wide side by side and press them: they must measure ${length(right.whole)}, the middle one ${length(right.inner!)}`)} />
        {(error.allowance.n !== 0 || error.cutting.n !== 0) && (
          <Prose text={sentence(` With the error above they measure ${length(off.whole)}, the middle one ${length(off.inner!)}`)} />
        )}
      </p>
      <label className="errors-typed">
        <span>Yours measure</span>
        <input type="text" inputMode="decimal" value={typed} placeholder={printLength(right.whole, unit, 'bare')} onChange={(event) => setTyped(event.target.value)} />
      </label>
      {read && (
        <p role="status">
          {read.ok ? <Prose text={verdict(strips, read.value, unit)} /> : read.problem.sentence}
        </p>
      )}
    </section>
  );
}

function verdict(strips: Strips, whole: Rational, unit: LengthUnit): string {
  const off = allowanceOff(strips, whole);
  if (off.n === 0) return 'Your seams take what they should.';
  return `Each seam takes ${about(off, unit)} too ${off.n > 0 ? 'much' : 'little'} on each side, if the strips were cut exactly.`;
}
