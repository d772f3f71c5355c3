import { useId, useMemo, useState, type CSSProperties, type KeyboardEvent, type ReactNode } from 'react';
import { shadeOf } from '../../canvas/draw-prints.ts';
import { middleOf } from '../../canvas/pen.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { ScrapFamily } from '../../pattern/scraps.ts';
import { frameOf, inkOf } from './picture.ts';

/** Width of the picture, and least room round a number, in its own units. */
const WIDE = 200;
const ROOM = 5;

/**
 * The block with the prints of one family, each piece with the number of its print where there is room; the rest is pale. A piece that is
 * pressed keeps its print, or is let go again: the Tab key stops once, arrow keys go from piece to piece, Enter or Space press.
 */
export function SpreadPicture({ family: { fabric, prints, of }, pattern: { pieces, piecing, heldPrints }, hold }: {
  readonly family: ScrapFamily;
  readonly pattern: Pattern;
  /** Holds patches, by their indices, in a print; in none where it is null. */
  readonly hold: (patches: readonly number[], print: number | null) => void;
}): ReactNode {
  const id = useId();
  const { width, height } = frameOf(piecing.root.outline);
  const scale = WIDE / Math.max(width, height);
  const own = useMemo(
    () =>
      pieces
        .filter((piece) => of.has(piece.id))
        .map((piece) => {
          const corners = piece.outline.map(inkOf);
          return { ...piece, corners, middle: middleOf(corners) };
        })
        // Row by row, as one reads.
        .sort(({ middle: [ax, ay] }, { middle: [bx, by] }) => ay - by || ax - bx),
    [pieces, of],
  );
  const [at, setAt] = useState(0);
  const [shown, setShown] = useState(false);
  const [said, setSaid] = useState('');
  const active = Math.min(at, own.length - 1);
  const heldIn = ({ patches: [patch] }: (typeof own)[number]): number | null => heldPrints.find((one) => one.patch === patch)?.print ?? null;
  const press = (i: number): void => {
    const piece = own[i]!;
    const [patch] = piece.patches;
    setAt(i);
    if (patch === undefined || patch < 0) return setSaid('The ground has no patch that could keep its print; lay one there.');
    const now = heldIn(piece);
    setSaid(now === null ? `Print ${of.get(piece.id)!} held.` : 'Let go.');
    hold([patch], now === null ? of.get(piece.id)! : null);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1, Home: -own.length, End: own.length };
    if (event.key === 'Enter' || event.key === ' ') press(active);
    else if (steps[event.key] !== undefined) setAt(Math.min(Math.max(0, active + steps[event.key]!), own.length - 1));
    else return;
    event.preventDefault();
  };
  return (
    <div>
      <svg
        className="spread"
        viewBox={`-1 -1 ${width * scale + 2} ${height * scale + 2}`}
        role="listbox"
        aria-multiselectable="true"
        tabIndex={0}
        aria-label={`Which piece is of which print of ${fabric.name}`}
        aria-activedescendant={own.length > 0 ? `${id}-${active}` : undefined}
        onKeyDown={onKeyDown}
        onFocus={(event) => setShown(event.currentTarget.matches(':focus-visible'))}
        onBlur={() => setShown(false)}
      >
        <rect className="spread-ground" width={width * scale} height={height * scale} />
        {own.map((piece, i) => {
          const path = `M${piece.corners.map(([x, y]) => `${(x * scale).toFixed(2)} ${(y * scale).toFixed(2)}`).join('L')}Z`;
          const print = of.get(piece.id)!;
          const [x, y] = [piece.middle[0] * scale, piece.middle[1] * scale];
          const { width: wide, height: high } = frameOf(piece.outline);
          const held = heldIn(piece) !== null;
          return (
            <g key={piece.id} id={`${id}-${i}`} role="option" aria-selected={held} aria-label={`Print ${print}${held ? ', held' : ''}`} onClick={() => press(i)}>
              <path className="picture-piece" d={path} fill={fabric.color} />
              <path d={path} style={{ fill: shadeOf(print, prints) } as CSSProperties} />
              {held && <circle className="spread-held" cx={x} cy={y} r={Math.min(8, (Math.min(wide, high) * scale) / 2.5)} />}
              {Math.min(wide, high) * scale >= 2 * ROOM && (
                <text className="spread-number" x={x} y={y}>
                  {print}
                </text>
              )}
            </g>
          );
        })}
        {shown && own[active] && (
          <path className="spread-active" d={`M${own[active].corners.map(([x, y]) => `${(x * scale).toFixed(2)} ${(y * scale).toFixed(2)}`).join('L')}Z`} />
        )}
      </svg>
      <p className="unseen" role="status">
        {said}
      </p>
    </div>
  );
}
