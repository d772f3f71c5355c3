import { useId, type CSSProperties, type ReactNode } from 'react';
import type { Block } from '../../block/block.ts';
import type { Problem, Remedy } from '../../measure/problem.ts';
import { toNumber } from '../../measure/rational.ts';
import { lights, litLine, passOver, type LineName } from '../lights.ts';
import { useStore } from '../store.ts';
import { Prose } from './Length.tsx';
import { Lamp, Line } from './Line.tsx';

type Corner = readonly [number, number];

/** Whole patches that cannot all stay whole: the sentence, the block with these patches hatched, and what frees them, at what price. */
export function Knot({ block, problem: { sentence, patches = [], remedies = [] }, mend }: {
  /** The drawing that the problem is about. */
  readonly block: Block;
  readonly problem: Problem;
  readonly mend: (remedy: Remedy) => void;
}): ReactNode {
  const lit = useStore(lights, litLine);
  const shown = remedies.find((_, i) => lit === `remedy ${i}`);
  return (
    <div className="knot">
      <KnotPicture block={block} patches={patches} places={shown?.places ?? []} />
      <p className="knot-words" role="alert">
        <Prose text={sentence} />
      </p>
      {remedies.length > 0 && (
        <section className="knot-remedies" aria-labelledby="remedies-title">
          <h3 id="remedies-title">What frees it</h3>
          <p className="quiet">Each was tried, partial seams with them; the cheapest comes first.</p>
          <ol>
            {remedies.map((remedy, i) => (
              <RemedyLine key={i} name={`remedy ${i}`} remedy={remedy} mend={() => mend(remedy)} />
            ))}
          </ol>
        </section>
      )}
    </div>
  );
}

function RemedyLine({ name, remedy: { sentence, price, free, divide }, mend }: {
  readonly name: LineName;
  readonly remedy: Remedy;
  readonly mend: () => void;
}): ReactNode {
  if (!price) {
    return (
      <Line name={name} className="remedy last-resort">
        <span>
          <Prose text={sentence} />
        </span>
        <Lamp name={name} says={`Show the corners: ${sentence}`}>
          Show
        </Lamp>
      </Line>
    );
  }
  const label = divide ? `Divide patch ${divide.patch + 1} in two` : free.length === 1 ? `Let patch ${free[0]! + 1} be divided` : 'Let them be divided';
  return (
    <Line name={name} className="remedy">
      <span>
        <Prose text={sentence} />
      </span>
      <button
        type="button"
        className="plain framed"
        aria-label={`${label}. ${sentence}`}
        onFocus={() => passOver(name)}
        onBlur={() => passOver(null)}
        onClick={mend}
      >
        {label}
      </button>
    </Line>
  );
}

/** The block, pale, with some patches hatched and numbered, and with a line or a ring at each place that a remedy is about. */
function KnotPicture({ block, patches, places }: {
  readonly block: Block;
  readonly patches: readonly number[];
  /** Ends of seams, and corners, in grid units. */
  readonly places: Remedy['places'];
}): ReactNode {
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
      {places.map((place, i) => {
        const [[x, y], [u, v] = [x, y]] = place.map(([a, b]) => at([a * denominator, b * denominator])) as [Corner, Corner?];
        return place.length > 1 ? <path key={i} className="knot-place" d={`M${x} ${y}L${u} ${v}`} /> : <circle key={i} className="knot-place" cx={x} cy={y} r="3.5" />;
      })}
    </svg>
  );
}
