import type { CSSProperties, ReactNode } from 'react';
import type { Block } from '../block/block.ts';
import { toNumber } from '../measure/rational.ts';

/** A block in small, in true proportion. */
export function BlockPicture({ block }: { readonly block: Block }): ReactNode {
  const { grid, denominator, finished } = block;
  const [width, height] = [grid.columns * denominator, grid.rows * denominator];
  const colors = new Map(block.fabrics.map((fabric) => [fabric.id, fabric.color]));
  return (
    <svg
      className="block-picture"
      viewBox={`0 0 ${width} ${height}`}
      preserveAspectRatio="none"
      style={{ aspectRatio: toNumber(finished.width) / toNumber(finished.height) } as CSSProperties}
      aria-hidden="true"
      focusable="false"
    >
      <rect width={width} height={height} fill={colors.get(block.ground)} />
      {block.patches.map((patch, i) => (
        <polygon key={i} points={patch.points.join(' ')} fill={colors.get(patch.fabric)} stroke={colors.get(patch.fabric)} />
      ))}
    </svg>
  );
}
