import type { ReactNode } from 'react';
import type { Assembly } from '../../geometry/piecing/assembly.ts';
import { ClothPaths } from './ClothPaths.tsx';
import { allPieces, frameOf, inkOf } from './picture.ts';

/** A true picture of a sewn unit: its pieces in their fabrics, the seams between them as lines. */
export function UnitPicture({ assembly, colors }: {
  readonly assembly: Assembly;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const { left, top, width, height } = frameOf(assembly.outline);
  const placed = allPieces(assembly).map(({ fabric, outline }) => ({
    fabric,
    outline: outline.map(inkOf).map(([x, y]) => [x - left, y - top] as const),
  }));
  return (
    <svg className="picture" viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
      <ClothPaths placed={placed} colors={colors} />
    </svg>
  );
}
