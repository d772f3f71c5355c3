import type { ReactNode } from 'react';
import type { Assembly } from '../../geometry/piecing/assembly.ts';
import { allPieces, frameOf, svgPoints } from './picture.ts';

/** A true picture of a sewn unit: its pieces in their fabrics, the seams between them as lines. */
export function UnitPicture({ assembly, colors }: { readonly assembly: Assembly; readonly colors: ReadonlyMap<string, string> }): ReactNode {
  const frame = frameOf(assembly.outline);
  return (
    <svg className="picture" viewBox={`${frame.left} ${frame.top} ${frame.width} ${frame.height}`} aria-hidden="true" focusable="false">
      {allPieces(assembly).map((piece) => (
        <polygon key={piece.id} className="picture-piece" points={svgPoints(piece.outline)} fill={colors.get(piece.fabric)} />
      ))}
    </svg>
  );
}
