import type { CSSProperties, ReactNode } from 'react';
import type { Fabric, LengthUnit } from '../../block/block.ts';
import type { Cut } from '../../cutting/cut.ts';
import { cutText } from '../../pattern/size-words.ts';
import { Prose } from './Length.tsx';

/** What to get of one fabric and what to cut of it, in small: its heading, and a line for each cut. */
export function FabricCuts({ fabric, get, cuts, unit, chip, heading: Heading }: {
  readonly fabric: Fabric;
  readonly get: string;
  readonly cuts: readonly Cut[];
  readonly unit: LengthUnit;
  /** Class of the fabric's colour. */
  readonly chip: string;
  readonly heading: 'h3' | 'h4';
}): ReactNode {
  return (
    <>
      <Heading>
        <span className={chip} style={{ '--cloth': fabric.color } as CSSProperties} aria-hidden="true" /> {fabric.name}{' '}
        <span className="quiet">
          <Prose text={get} />
        </span>
      </Heading>
      <ul>
        {cuts.map((cut) => (
          <li key={cut.id}>
            <Prose text={cutText(cut, unit)} />
          </li>
        ))}
      </ul>
    </>
  );
}
