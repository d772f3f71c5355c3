import type { ReactNode } from 'react';
import type { LengthUnit } from '../../../block/block.ts';
import type { Choices } from '../../../block/choices.ts';
import { printLength } from '../../../measure/lengths.ts';
import { equals, rational, type Rational } from '../../../measure/rational.ts';
import { chosen, marginWords, takingLength, typedMargin, type Choose } from './taking.ts';
import { TypedField } from './TypedField.tsx';
import '../../face/cloth.css';

/** By what lengths shops sell cloth; a file's own joins them. */
const SOLD_BY: Readonly<Record<LengthUnit, readonly (readonly [says: string, length: Rational])[]>> = {
  in: [['1/8 yd', rational(9, 2)], ['1/4 yd', rational(9)], ['1/3 yd', rational(12)], ['1/2 yd', rational(18)], ['1 yd', rational(36)]],
  cm: [['5 cm', rational(5)], ['10 cm', rational(10)], ['25 cm', rational(25)], ['50 cm', rational(50)], ['1 m', rational(100)]],
};

/** What is chosen about the cloth of all fabrics: how wide it is, what straight edges take, what is bought to spare, how shops sell. */
export default function ClothRules({ choices, unit, choose }: {
  readonly choices: Required<Choices>;
  readonly unit: LengthUnit;
  readonly choose: Choose;
}): ReactNode {
  const { width, squaringUp, margin, shopStep } = choices;
  const known = SOLD_BY[unit].some(([, length]) => equals(length, shopStep));
  const sold = known ? SOLD_BY[unit] : [...SOLD_BY[unit], [printLength(shopStep, unit), shopStep] as const];
  return (
    <div className="cloth-choices" role="group" aria-label="For the cloth of all fabrics">
      <TypedField
        label="Usable width"
        said={printLength(width, unit)}
        take={takingLength(unit, choose, (length) => ({ width: length }))}
      />
      <TypedField
        label="Squaring up takes"
        said={printLength(squaringUp, unit)}
        take={takingLength(unit, choose, (length) => ({ squaringUp: length }))}
      />
      <TypedField
        label="To spare"
        said={marginWords(margin, unit)}
        hint={unit === 'in' ? '10 % or 4 1/2 in.' : '10 % or 10 cm'}
        take={(text) => {
          const read = typedMargin(text, unit);
          return read.ok ? chosen({ margin: read.value }, unit, choose) : read.problem.sentence;
        }}
      />
      <label className="typed">
        <span>Shops sell by</span>
        <select
          value={sold.findIndex(([, length]) => equals(length, shopStep))}
          onChange={(event) => choose({ shopStep: sold[Number(event.target.value)]![1] })}
        >
          {sold.map(([says], i) => (
            <option key={says} value={i}>
              {says}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
