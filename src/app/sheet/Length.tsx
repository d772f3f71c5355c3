import type { ReactNode } from 'react';
import type { LengthUnit } from '../../block/block.ts';
import { printLength } from '../../measure/lengths.ts';
import type { Rational } from '../../measure/rational.ts';
import type { Size } from '../../pattern/pattern.ts';

/** A length without its unit. */
function Figure({ value, unit }: { readonly value: Rational; readonly unit: LengthUnit }): ReactNode {
  return (
    <span className="number">
      <Prose text={printLength(value, unit, 'bare')} />
    </span>
  );
}

/** A sentence whose fractions are set as fractions, each on one line with its whole number; copied and read aloud it stays what it is. */
export function Prose({ text }: { readonly text: string }): ReactNode {
  return text.split(/((?:\d+ )?\d+\/\d+)/).map((part, i) => {
    if (i % 2 === 0) return part;
    const [, whole, over, under] = /^(\d+ )?(\d+)\/(\d+)$/.exec(part)!;
    return (
      <span key={i} className="number">
        {whole}
        <span className="fraction">
          <span className="over">{over}</span>/<span className="under">{under}</span>
        </span>
      </span>
    );
  });
}

const ABBREVIATION: Readonly<Record<LengthUnit, string>> = { in: 'in.', cm: 'cm' };

/** One length with its unit. */
export function Length({ value, unit }: { readonly value: Rational; readonly unit: LengthUnit }): ReactNode {
  return (
    <span className="length">
      <Figure value={value} unit={unit} /> {ABBREVIATION[unit]}
    </span>
  );
}

/** Width × height with their unit. */
export function Area({ size, unit }: { readonly size: Size; readonly unit: LengthUnit }): ReactNode {
  return (
    <span className="length">
      <Figure value={size.width} unit={unit} /> × <Figure value={size.height} unit={unit} /> {ABBREVIATION[unit]}
    </span>
  );
}
