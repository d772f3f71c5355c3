import type { ReactNode } from 'react';
import { ALONG, type Axis } from '../../block/axis.ts';
import type { Block } from '../../block/block.ts';
import { cellsOf } from '../../block/cells.ts';
import { toNumber } from '../../measure/rational.ts';

/** Longest side of the picture, in the picture's own units. */
const LONG = 100;

/** The block's lines in true proportion, with one column or row marked. */
export function LinesPicture({ block, chosen: [axis, cell] }: {
  readonly block: Block;
  readonly chosen: readonly [Axis, number];
}): ReactNode {
  const { width, height } = block.finished;
  const long = Math.max(toNumber(width), toNumber(height));
  const [wide, high] = [(toNumber(width) / long) * LONG, (toNumber(height) / long) * LONG];
  const cells = cellsOf(block.grid);
  const [across, down] = [cells.across, cells.down].map((lines, i) => lines.map((at) => (at / lines.at(-1)!) * [wide, high][i]!)) as [number[], number[]];
  const lines = axis === 'columns' ? across : down;
  const from = lines[Math.min(cell, lines.length - 2)]!;
  const extent = lines[Math.min(cell + 1, lines.length - 1)]! - from;
  return (
    <svg className="grid-picture" viewBox={`-1 -1 ${wide + 2} ${high + 2}`} aria-hidden="true">
      <rect className="grid-picture-cloth" width={wide} height={high} />
      {ALONG[axis].at === 0 ? (
        <rect className="grid-picture-chosen" x={from} width={extent} height={high} />
      ) : (
        <rect className="grid-picture-chosen" y={from} width={wide} height={extent} />
      )}
      <path d={[...across.map((x) => `M${x} 0V${high}`), ...down.map((y) => `M0 ${y}H${wide}`)].join('')} />
    </svg>
  );
}
