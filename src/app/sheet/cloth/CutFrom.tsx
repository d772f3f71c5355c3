import type { ReactNode } from 'react';
import type { Fabric, LengthUnit } from '../../../block/block.ts';
import type { Choices, ClothChoice, Sold } from '../../../block/choices.ts';
import { usualSize } from '../../../cutting/cloth/sources.ts';
import { printLength } from '../../../measure/lengths.ts';
import type { Rational } from '../../../measure/rational.ts';
import { Have } from './Have.tsx';
import { chosen, takingLength, withCloth, type Choose, type ClothChange } from './taking.ts';
import { TypedField } from './TypedField.tsx';

const SOLD: readonly (readonly [Sold, string])[] = [
  ['by length', 'cloth by the length'],
  ['fat quarter', 'fat quarters'],
  ['fat eighth', 'fat eighths'],
  ['precut strip', 'precut strips'],
  ['precut square', 'precut squares'],
];

/** Where the pieces of one fabric are cut from: what is there already, and what is bought. */
export function CutFrom({ fabric, choices, unit, choose }: {
  readonly fabric: Fabric;
  readonly choices: Required<Choices>;
  readonly unit: LengthUnit;
  readonly choose: Choose;
}): ReactNode {
  const cloth: ClothChoice = choices.cloths[fabric.id] ?? {};
  const { sold = 'by length', width = choices.width } = cloth;
  const changed = (some: ClothChange): Choices => withCloth(choices.cloths, fabric.id, { ...cloth, ...some });
  const size = sold === 'by length' ? null : cloth.size ?? usualSize(sold, width, unit);
  const lengthField = (label: string, value: Rational, into: (length: Rational) => ClothChoice): ReactNode => (
    <TypedField label={label} said={printLength(value, unit)} take={takingLength(unit, choose, (length) => changed(into(length)))} />
  );
  return (
    <div className="cloth-choices" role="group" aria-label={`Where ${fabric.name} is cut from`}>
      <label className="typed">
        <span>Cut from</span>
        <select value={sold} onChange={(event) => choose(changed({ sold: event.target.value as Sold, size: undefined }))}>
          {SOLD.map(([each, says]) => (
            <option key={each} value={each}>
              {says}
            </option>
          ))}
        </select>
      </label>
      {size === null && lengthField('Usable width', width, (length) => ({ width: length }))}
      {size && lengthField('Each across', size.width, (length) => ({ size: { ...size, width: length } }))}
      {size && lengthField('Each along', size.length, (length) => ({ size: { ...size, length } }))}
      <Have fabric={fabric} have={cloth.have ?? []} unit={unit} take={(have) => chosen(changed({ have: have.length === 0 ? undefined : have }), unit, choose)} />
    </div>
  );
}
