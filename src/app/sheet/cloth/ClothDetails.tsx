import type { ReactNode } from 'react';
import type { Choices } from '../../../block/choices.ts';
import type { Cloth, Pattern } from '../../../pattern/pattern.ts';
import { CutFrom } from './CutFrom.tsx';
import { Layouts } from './Layouts.tsx';
import type { Choose } from './taking.ts';
import '../../face/cloth.css';

/** What unfolds below the cutting list of one fabric. */
export default function ClothDetails({ cloth, pattern, choices, choose, source, layout }: {
  readonly cloth: Cloth;
  readonly pattern: Pattern;
  /** What is chosen now. */
  readonly choices: Required<Choices>;
  readonly choose: Choose;
  /** Which of the two is unfolded: where it is cut from, and how it is laid out. */
  readonly source: boolean;
  readonly layout: boolean;
}): ReactNode {
  return (
    <>
      {source && <CutFrom fabric={cloth.fabric} choices={choices} unit={pattern.block.unit} choose={choose} />}
      {layout && <Layouts cloth={cloth} pattern={pattern} />}
    </>
  );
}
