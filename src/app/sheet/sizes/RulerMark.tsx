import { Ban, Check, MoveUp } from 'lucide-react';
import type { ReactNode } from 'react';
import type { LengthUnit } from '../../../block/block.ts';
import { offText } from '../../../pattern/size-words.ts';
import type { OtherSize } from '../../../pattern/sizes.ts';
import { Prose } from '../Length.tsx';

/** Whether a size is on the ruler: by a sign, and in words. */
export function RulerMark({ size: { cannot, off }, unit }: { readonly size: OtherSize; readonly unit: LengthUnit }): ReactNode {
  if (cannot !== null) {
    return (
      <p className="ruler-mark" data-mark="no">
        <Ban aria-hidden="true" size={18} /> <span>no such block</span>
      </p>
    );
  }
  if (off.length === 0) {
    return (
      <p className="ruler-mark" data-mark="on">
        <Check aria-hidden="true" size={18} /> <span>on the ruler</span>
      </p>
    );
  }
  return (
    <p className="ruler-mark" data-mark="up">
      <MoveUp aria-hidden="true" size={18} />{' '}
      <span>
        rounded up <span className="quiet"><Prose text={offText(off, unit)} /></span>
      </span>
    </p>
  );
}
