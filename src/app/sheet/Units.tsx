import type { ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import type { Choices, Method } from '../../block/choices.ts';
import type { UnitKind } from '../../geometry/piecing/assembly.ts';
import type { Pattern, UnitLine } from '../../pattern/pattern.ts';
import { Area } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';
import { UnitPicture } from './UnitPicture.tsx';

const METHOD_WORDS: Readonly<Record<Method, string>> = {
  'one-at-a-time': 'one at a time',
  'two-at-a-time': 'two at a time',
  'four-at-a-time': 'four at a time',
  'eight-at-a-time': 'eight at a time',
  'stitch-and-flip': 'stitch and flip',
  triangles: 'cut triangles',
  'triangles-from-strips': 'triangles from strips',
  template: 'template',
};

/** The units of the pattern: picture, letter, kind, count, sizes, and how each kind is cut and sewn. */
export function Units({ pattern, chosen, colors, chooseMethod }: {
  readonly pattern: Pattern;
  readonly chosen: Choices['methods'];
  readonly colors: ReadonlyMap<string, string>;
  readonly chooseMethod: (kind: UnitKind, method: Method) => void;
}): ReactNode {
  const sewn = pattern.units.filter(({ unit }) => unit.kind !== 'joined unit');
  const joined = pattern.units.filter(({ unit }) => unit.kind === 'joined unit');
  if (pattern.units.length === 0) return null;
  return (
    <section aria-labelledby="units-title" className="part">
      <h3 id="units-title">Units</h3>
      {sewn.length > 0 && (
        <ul className="units">
          {sewn.map((line) => (
            <UnitRow key={line.unit.id} line={line} pattern={pattern} chosen={chosen} colors={colors} chooseMethod={chooseMethod} />
          ))}
        </ul>
      )}
      {joined.length > 0 && (
        <>
          <h4 className="joined-title">{sewn.length > 0 ? 'Joined of these on the way to the block' : 'Joined on the way to the block'}</h4>
          <ul className="joined-units">
            {joined.map((line) => (
              <JoinedUnit key={line.unit.id} line={line} pattern={pattern} colors={colors} />
            ))}
          </ul>
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

function UnitRow({ line, pattern, chosen, colors, chooseMethod }: {
  readonly line: UnitLine;
  readonly pattern: Pattern;
  readonly chosen: Choices['methods'];
  readonly colors: ReadonlyMap<string, string>;
  readonly chooseMethod: (kind: UnitKind, method: Method) => void;
}): ReactNode {
  const { unit, count, method, methods } = line;
  const place = unit.places[0];
  const wanted = chosen?.[unit.kind];
  return (
    <Line name={`unit ${unit.id}`} className="unit">
      <Lamp name={`unit ${unit.id}`} says={`Unit ${unit.id}: show it in the drawing`} className="unit-picture">
        {place && <UnitPicture assembly={place.assembly} colors={colors} />}
      </Lamp>
      <div className="unit-words">
        <p className="unit-name">
          <span className="letter">{unit.id}</span> {unit.kind}
        </p>
        <Sizes line={line} unit={pattern.block.unit} />
        {method !== null && methods.length > 1 && (
          <label className="method">
            <span className="quiet">Sewn</span>
            <select
              value={wanted ?? method}
              aria-label={`How every ${unit.kind} is sewn`}
              onChange={(event) => chooseMethod(unit.kind, event.target.value as Method)}
            >
              {methods.map((each) => (
                <option key={each} value={each}>
                  {METHOD_WORDS[each]}
                </option>
              ))}
            </select>
          </label>
        )}
        {method !== null && methods.length === 1 && <p className="quiet">Sewn {METHOD_WORDS[method]}</p>}
      </div>
      <p className="count">
        <span className="quiet">make</span> {count}
      </p>
    </Line>
  );
}
