import { useId, type CSSProperties, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import { toNumber } from '../../measure/rational.ts';

/** Whole patches that cannot all stay whole: the sentence, the block with these patches hatched, and what frees them. */
export function Knot({ block, sentence, patches, free }: {
  /** The drawing that the sentence is about. */
  readonly block: Block;
  readonly sentence: string;
  /** Indices of the patches concerned. */
  readonly patches: readonly number[];
  /** Lets one of them be divided. */
  readonly free: (patch: number) => void;
}): ReactNode {
  return (
    <div className="knot">
      <KnotPicture block={block} patches={patches} />
      <div className="knot-words">
        <p role="alert">{sentence}</p>
        <p className="knot-acts">
          {patches.map((patch) => (
            <button key={patch} type="button" className="plain framed" onClick={() => free(patch)}>
              Let patch {patch + 1} be divided
            </button>
          ))}
        </p>
      </div>
    </div>
  );
}

/** The block, pale, with some patches hatched and numbered. */
function KnotPicture({ block, patches }: { readonly block: Block; readonly patches: readonly number[] }): ReactNode {
  const hatch = useId();
  const { grid, denominator, finished } = block;
  const [width, height] = [grid.columns * denominator, grid.rows * denominator];
  const colors = new Map(block.fabrics.map((fabric) => [fabric.id, fabric.color]));
  const proportion = toNumber(finished.width) / toNumber(finished.height);
  // Drawn in hundredths of the longer side, in true proportion, so that hatching and numbers are so too.
  const [wide, high] = proportion >= 1 ? [100, 100 / proportion] : [100 * proportion, 100];
  const at = ([x, y]: readonly [number, number]): readonly [number, number] => [(x / width) * wide, (y / height) * high];
  const concerned = patches.flatMap((index) => (block.patches[index] ? [{ index, corners: block.patches[index].points.map(at) }] : []));
  return (
    <svg className="knot-picture" viewBox={`-2 -2 ${wide + 4} ${high + 4}`} style={{ '--shape': proportion } as CSSProperties} aria-hidden="true" focusable="false">
      <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path className="knot-light" d="M0 1.5h5" />
        <path className="knot-thread" d="M0 1.5h5" />
      </pattern>
      <g className="knot-pale">
        <rect width={wide} height={high} fill={colors.get(block.ground)} />
        {block.patches.map(({ fabric, points }, i) => (
          <polygon key={i} points={points.map(at).join(' ')} fill={colors.get(fabric)} />
        ))}
      </g>
      {concerned.map(({ index, corners }) => (
        <g key={index}>
          <polygon points={corners.join(' ')} fill={colors.get(block.patches[index]!.fabric)} />
          <polygon className="knot-patch" points={corners.join(' ')} fill={`url(#${hatch})`} />
        </g>
      ))}
      {concerned.map(({ index, corners }) => {
        const x = corners.reduce((sum, corner) => sum + corner[0], 0) / corners.length;
        const y = corners.reduce((sum, corner) => sum + corner[1], 0) / corners.length;
        return (
          <g key={index}>
            <circle className="knot-disc" cx={x} cy={y} r="6" />
            <text className="knot-number" x={x} y={y + 2.6}>
              {index + 1}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
