import type { ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import type { Choices } from '../../block/choices.ts';
import { printLength } from '../../measure/lengths.ts';
import type { Rational } from '../../measure/rational.ts';
import { takingLength } from './cloth/taking.ts';
import { TypedField } from './cloth/TypedField.tsx';
import '../face/cloth.css';

/** Any amount to cut large by and trim off, as it is typed. */
export default function OtherTrim({ trim, unit, choose }: {
  readonly trim: Rational;
  readonly unit: LengthUnit;
  readonly choose: (some: Choices) => void;
}): ReactNode {
  return (
    <TypedField
      label="Trim amount"
      said={printLength(trim, unit)}
      take={takingLength(unit, choose, (length) => ({ trim: length }))}
    />
  );
}
