import { lazy, Suspense, useId, useState, type ReactNode } from 'react';
import type { Grid, LengthUnit } from '../../block/block.ts';
import type { Pattern, UnitLine } from '../../pattern/pattern.ts';
import { METHOD_WORDS } from '../past/words.ts';
import type { Acts } from '../table.ts';
import { Area } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';
import { UnitPicture } from './UnitPicture.tsx';

const MethodChooser = lazy(() => import('./MethodChooser.tsx'));

/** The units of the pattern: picture, letter, kind, count, sizes, and how each kind is cut and sewn. */
export function Units({ pattern, grid, colors, change }: {
  readonly pattern: Pattern;
  /** Of the block that the pattern is for. */
  readonly grid: Grid;
  readonly colors: ReadonlyMap<string, string>;
  readonly change: Acts['change'];
}): ReactNode {
  const sewn = pattern.units.filter(({ unit }) => unit.kind !== 'joined unit');
  const joined = pattern.units.filter(({ unit }) => unit.kind === 'joined unit');
  // Rows that may come of strip sets are chosen about like other units.
  const rows = joined.filter(({ methods }) => methods.length > 1);
  const whole = pattern.whole && pattern.whole.methods.length > 1 ? pattern.whole : null;
  if (pattern.units.length === 0 && !whole) return null;
  return (
    <section aria-labelledby="units-title" className="part">
      <h3 id="units-title">Units</h3>
      {(sewn.length > 0 || whole) && (
        <ul className="units">
          {whole && <WholeRow line={whole} pattern={pattern} grid={grid} colors={colors} change={change} />}
          {sewn.map((line) => (
            <UnitRow key={line.unit.id} line={line} pattern={pattern} grid={grid} colors={colors} change={change} />
          ))}
        </ul>
      )}
      {joined.length > 0 && (
        <>
          <h4 className="joined-title">{sewn.length > 0 ? 'Joined of these on the way to the block' : 'Joined on the way to the block'}</h4>
          {rows.length > 0 && (
            <ul className="units">
              {rows.map((line) => (
                <UnitRow key={line.unit.id} line={line} pattern={pattern} grid={grid} colors={colors} change={change} />
              ))}
            </ul>
          )}
          {joined.length > rows.length && (
            <ul className="joined-units">
              {joined.filter((line) => !rows.includes(line)).map((line) => (
                <JoinedUnit key={line.unit.id} line={line} pattern={pattern} colors={colors} />
              ))}
            </ul>
          )}
        </>
      )}
    </section>
  );
}

function JoinedUnit({ line, pattern, colors }: {
  readonly line: UnitLine;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const name = `unit ${line.unit.id}` as const;
  const place = line.unit.places[0];
  return (
    <Line name={name} className="joined-unit">
      <Lamp name={name} says={`Unit ${line.unit.id}: show it in the drawing`} className="unit-picture">
        {place && <UnitPicture assembly={place.assembly} colors={colors} />}
      </Lamp>
      <div className="joined-words">
        <span className="letter">{line.unit.id}</span> <span>make {line.count}</span>
        <Sizes line={line} unit={pattern.block.unit} />
      </div>
    </Line>
  );
}

function Sizes({ line, unit }: { readonly line: UnitLine; readonly unit: LengthUnit }): ReactNode {
  return (
    <p className="sizes">
      <span>
        <Area size={line.finished} unit={unit} /> finished
      </span>
      <span>
        <Area size={line.unfinished} unit={unit} /> unfinished
      </span>
    </p>
  );
}

interface RowProps {
  readonly line: UnitLine;
  readonly pattern: Pattern;
  readonly grid: Grid;
  readonly colors: ReadonlyMap<string, string>;
  readonly change: Acts['change'];
}

function UnitRow(props: RowProps): ReactNode {
  const { line, pattern, colors } = props;
  const { unit, count } = line;
  const place = unit.places[0];
  return (
    <Line name={`unit ${unit.id}`} className="unit">
      <Lamp name={`unit ${unit.id}`} says={`Unit ${unit.id}: show it in the drawing`} className="unit-picture">
        {place && <UnitPicture assembly={place.assembly} colors={colors} />}
      </Lamp>
      <Methods {...props} of={`Unit ${unit.id}`}>
        <p className="unit-name">
          <span className="letter">{unit.id}</span> {unit.kind}
        </p>
        <Sizes line={line} unit={pattern.block.unit} />
      </Methods>
      <p className="count">
        <span className="quiet">make</span> {count}
      </p>
    </Line>
  );
}

/** A block that is one unit by itself. */
function WholeRow(props: RowProps): ReactNode {
  const { unit, count } = props.line;
  return (
    <li className="line unit">
      <div className="unit-picture">
        <UnitPicture assembly={unit.places[0]!.assembly} colors={props.colors} />
      </div>
      <Methods {...props} of="The block">
        <p className="unit-name">The block is one unit: {unit.kind}</p>
      </Methods>
      <p className="count">
        <span className="quiet">make</span> {count}
      </p>
    </li>
  );
}

/** What a unit is, how it is made, and what opens the choice. */
function Methods({ line, pattern, grid, change, of, children }: Omit<RowProps, 'colors'> & {
  /** "Unit A", for those who do not see where the button stands. */
  readonly of: string;
  readonly children: ReactNode;
}): ReactNode {
  const { method, methods } = line;
  const [open, setOpen] = useState(false);
  const chooser = useId();
  return (
    <>
      <div className="unit-words">
        {children}
        {method !== null && methods.length > 1 && (
          <p className="method">
            <button type="button" aria-expanded={open} aria-controls={chooser} onClick={() => setOpen(!open)}>
              <span className="unseen">{of}: </span>
              {METHOD_WORDS[method]}
            </button>
            <span className="quiet">{settledWords(line)}</span>
          </p>
        )}
        {method !== null && methods.length === 1 && <p className="quiet">{ALONE[method] ?? METHOD_WORDS[method]}</p>}
      </div>
      <div id={chooser} className="method-place">
        {open && (
          <Suspense fallback={<p className="quiet">Working out what each method takes …</p>}>
            <MethodChooser line={line} pattern={pattern} grid={grid} change={change} />
          </Suspense>
        )}
      </div>
    </>
  );
}

/** What is cut by the shape of each piece, and round an outline only where no ruler cuts it. */
const ALONE: Readonly<Partial<Record<string, string>>> = { template: 'piece by piece' };

/** Whose choice it is; nothing where it is nobody's. */
const settledWords = ({ settledBy }: UnitLine): string =>
  settledBy === 'unit' ? 'chosen for this unit' : settledBy === 'kind' ? 'chosen for its kind' : settledBy === 'pattern' ? 'chosen for the whole pattern' : '';
