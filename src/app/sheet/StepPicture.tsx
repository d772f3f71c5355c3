import type { ReactNode } from 'react';
import type { Piece } from '../../geometry/piecing/assembly.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Step } from '../../sewing/step.ts';
import { ClothPaths } from './ClothPaths.tsx';
import { allPieces, frameOf, inkInside, inkOf, middleOf, type Frame } from './picture.ts';

/** How far the parts of a step lie from each other before they are sewn, as a share of the whole. */
const APART = 0.07;

/** @returns the pieces of what a step makes and where its top-left corner lies in the block; null if the sheet does not know it */
function madeBy(step: Step, pattern: Pattern): { readonly pieces: readonly Piece[]; readonly frame: Frame } | null {
  if (step.makes === 'block') {
    return { pieces: pattern.pieces, frame: { left: 0, top: 0, width: pattern.lattice.width, height: pattern.lattice.height } };
  }
  const line = pattern.units.find(({ unit }) => unit.id === step.makes);
  const place = line?.unit.places[0];
  return place ? { pieces: allPieces(place.assembly), frame: frameOf(place.assembly.outline) } : null;
}

/** What a step lays down, a little apart, as it lies before sewing; the seams to sew as a running stitch. */
export function StepPicture({ step, pattern, colors }: {
  readonly step: Step;
  readonly pattern: Pattern;
  readonly colors: ReadonlyMap<string, string>;
}): ReactNode {
  const made = madeBy(step, pattern);
  if (!made) return null;
  const { pieces, frame } = made;
  const gap = Math.max(frame.width, frame.height) * APART;
  const shiftAt = (x: number, y: number): readonly [number, number] => [
    ((x / frame.width) * 2 - 1) * gap,
    ((y / frame.height) * 2 - 1) * gap,
  ];
  const shifts = step.parts.map((part) => shiftAt(...middleOf(part.outline)));
  const partOf = (piece: Piece): number => {
    const [x, y] = middleOf(piece.outline);
    return step.parts.findIndex((part) => inkInside(part.outline, x - frame.left, y - frame.top));
  };
  const placed = pieces.map((piece) => {
    const [dx, dy] = shifts[partOf(piece)] ?? [0, 0];
    return { piece, dx: dx - frame.left, dy: dy - frame.top };
  });
  const room = gap * 1.2;
  return (
    <svg
      className="picture picture-open"
      viewBox={`${-room} ${-room} ${frame.width + 2 * room} ${frame.height + 2 * room}`}
      aria-hidden="true"
      focusable="false"
    >
      <ClothPaths placed={placed} colors={colors} />
      {step.joins.map((join, i) => {
        const [x1, y1] = inkOf(join.from);
        const [x2, y2] = inkOf(join.to);
        const [dx, dy] = shiftAt((x1 + x2) / 2, (y1 + y2) / 2);
        return <line key={i} className="picture-seam" x1={x1 + dx} y1={y1 + dy} x2={x2 + dx} y2={y2 + dy} />;
      })}
    </svg>
  );
}
