import type { ReactNode } from 'react';
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
  template: 'template',
};

/** The units of the pattern: picture, letter, kind, count, sizes, and how each kind is cut and sewn. */
export function Units({ pattern, chosen, colors, chooseMethod }: {
  readonly pattern: Pattern;
  readonly chosen: Choices['methods'];
  readonly colors: ReadonlyMap<string, string>;
  readonly chooseMethod: (kind: UnitKind, method: Method) => void;
}): ReactNode {
  if (pattern.units.length === 0) return null;
  return (
    <section aria-labelledby="units-title" className="part">
      <h3 id="units-title">Units</h3>
      <ul className="units">
        {pattern.units.map((line) => (
          <UnitRow key={line.unit.id} line={line} pattern={pattern} chosen={chosen} colors={colors} chooseMethod={chooseMethod} />
        ))}
      </ul>
    </section>
  );
}

function UnitRow({ line, pattern, chosen, colors, chooseMethod }: {
  readonly line: UnitLine;
  readonly pattern: Pattern;
  readonly chosen: Choices['methods'];
  readonly colors: ReadonlyMap<string, string>;
  readonly chooseMethod: (kind: UnitKind, method: Method) => void;
}): ReactNode {
  const { unit, count, finished, unfinished, method, methods } = line;
  const place = unit.places[0];
  const wanted = chosen?.[unit.kind];
  const { unit: lengthUnit } = pattern.block;
  return (
    <Line name={`unit ${unit.id}`} className="unit">
      <Lamp name={`unit ${unit.id}`} says={`Unit ${unit.id}: show it in the drawing`} className="unit-picture">
        {place && <UnitPicture assembly={place.assembly} colors={colors} />}
      </Lamp>
      <div className="unit-words">
        <p className="unit-name">
          <span className="letter">{unit.id}</span> {unit.kind}
        </p>
        <p className="sizes">
          <span>
            <Area size={finished} unit={lengthUnit} /> finished
          </span>
          <span>
            <Area size={unfinished} unit={lengthUnit} /> unfinished
          </span>
        </p>
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
