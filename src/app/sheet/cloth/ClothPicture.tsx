import { memo, useId, type ReactNode } from 'react';
import type { LengthUnit } from '../../../block/block.ts';
import type { ClothTiles } from '../../../cutting/laid.ts';
import { printLength } from '../../../measure/lengths.ts';
import { several } from '../../../measure/words.ts';
import { keepLit, lights, litLine, passOver, type LineName } from '../../lights.ts';
import { useStore } from '../../store.ts';
import { clothInk, type Box, type ClothInk, type Label, type PictureRoom, type RowInk } from './cloth-ink.ts';
import { Figures } from './Figures.tsx';

/** A cloth with everything that is cut from it, to scale. Pointing at a piece lights what it becomes; pressing keeps it lit. */
export const ClothPicture = memo(function ClothPicture({ tiles, unit, color, room, says }: {
  readonly tiles: ClothTiles;
  readonly unit: LengthUnit;
  /** Of the fabric. */
  readonly color: string;
  readonly room: PictureRoom;
  /** What the picture shows, for those who cannot see it. */
  readonly says: string;
}): ReactNode {
  const hatch = useId();
  const ink = clothInk(tiles, unit, room);
  const { cloth } = ink;
  return (
    <svg
      className="cloth-picture"
      role="img"
      aria-label={says}
      width={ink.width}
      height={ink.height}
      viewBox={`0 0 ${ink.width} ${ink.height}`}
      fontSize={room.text}
      onPointerOver={(event) => event.pointerType !== 'touch' && passOver(lineUnder(event.target))}
      onPointerLeave={() => passOver(null)}
      onClick={(event) => {
        const line = lineUnder(event.target);
        if (line) keepLit(line);
      }}
    >
      <defs>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path className="left-hatch" d="M0 0v7" />
        </pattern>
      </defs>
      <rect className="cloth-ground" {...cloth} />
      <path className="left-over" d={ink.leftovers} fill={`url(#${hatch})`} />
      {[...ink.pieces].map(([cut, path]) => (
        <Pieces key={cut} cut={cut} path={path} color={color} />
      ))}
      <Line className="diagonal" path={ink.diagonals} />
      <Line className="crosscut" path={ink.crosscuts} />
      <Line className="strip-cut" path={ink.stripCuts} />
      {[...ink.pieces].map(([cut, path]) => (
        <Light key={cut} cut={cut} path={path} />
      ))}
      <Edges tiles={tiles} ink={ink} unit={unit} text={room.text} />
      {ink.rows.map((row) => (
        <Row key={row.number} row={row} cloth={cloth} text={room.text} />
      ))}
      <g className="in-cloth">
        <Labels className="line-number" labels={ink.numbers} />
        <Labels className="piece-size" labels={ink.sizes} />
        <Labels className="left-size" labels={ink.lefts} />
      </g>
    </svg>
  );
});

/** @returns the line of the cutting list whose piece is meant */
function lineUnder(target: EventTarget): LineName | null {
  const cut = target instanceof SVGElement ? target.dataset.cut : undefined;
  return cut === undefined ? null : `cut ${cut}`;
}

/** @returns whether a line of the cutting list is lit, and whether the drawing points at it */
function useLight(cut: string): { readonly lit: boolean; readonly marked: boolean } {
  const name: LineName = `cut ${cut}`;
  return { lit: useStore(lights, (now) => litLine(now) === name), marked: useStore(lights, (now) => now.marked.has(name)) };
}

/** All pieces of one line. */
function Pieces({ cut, path, color }: { readonly cut: string; readonly path: string; readonly color: string }): ReactNode {
  const { lit, marked } = useLight(cut);
  return (
    <>
      <path className="cloth-pieces" data-cut={cut} data-lit={lit || undefined} data-marked={marked || undefined} d={path} fill={color} />
      <path className="piece-casing" d={path} />
      <path className="piece-cut" d={path} />
    </>
  );
}

/** What marks the pieces of a line that is lit; it lies over the cuts. */
function Light({ cut, path }: { readonly cut: string; readonly path: string }): ReactNode {
  const { lit, marked } = useLight(cut);
  return (lit || marked) && <path className="cloth-lit" data-lit={lit || undefined} d={path} />;
}

/** A line that is seen on dark cloth and on light. */
const Line = ({ className, path }: { readonly className: string; readonly path: string }): ReactNode =>
  path !== '' && (
    <g className={className}>
      <path className="casing" d={path} />
      <path d={path} />
    </g>
  );

const Labels = ({ className, labels }: { readonly className: string; readonly labels: readonly Label[] }): ReactNode =>
  labels.map(({ x, y, text, upright, high }, i) => (
    <text key={i} className={className} x={x} y={y} dy="0.35em" fontSize={high} transform={upright ? `rotate(-90 ${x} ${y})` : undefined}>
      <Figures text={text} />
    </text>
  ));

/** The cloth's own edges: how wide it is, how long where that is given, and its selvages. */
function Edges({ tiles: { source }, ink: { cloth }, unit, text }: {
  readonly tiles: ClothTiles;
  readonly ink: ClothInk;
  readonly unit: LengthUnit;
  readonly text: number;
}): ReactNode {
  const width = `${printLength(source.width, unit)}${source.form === 'by length' ? ' usable' : ''}`;
  const over = cloth.y - 0.75 * text;
  const half = (width.length * 0.27 + 0.4) * text;
  const middle = cloth.x + cloth.width / 2;
  return (
    <g className="cloth-edges">
      <path className="dimension" d={`M${cloth.x} ${over - 5}v10m0-5H${middle - half}M${middle + half} ${over}H${cloth.x + cloth.width}m0-5v10`} />
      <text className="width" x={middle} y={over} dy="0.35em">
        <Figures text={width} />
      </text>
      {source.form === 'by length' && (
        <>
          <Selvage at={{ ...cloth, x: cloth.x - 0.9 * text, width: 0.7 * text }} text={text} />
          <Selvage at={{ ...cloth, x: cloth.x + cloth.width + 0.2 * text, width: 0.7 * text }} text={text} />
        </>
      )}
      <rect className="cloth-edge" {...cloth} />
    </g>
  );
}

/** The woven edge with its row of needle holes; it says what it is where it is long enough. */
function Selvage({ at, text }: { readonly at: Box; readonly text: number }): ReactNode {
  const x = at.x + at.width / 2;
  const y = at.y + at.height / 2;
  const room = at.height > 4.2 * text;
  return (
    <>
      <rect className="selvage" {...at} />
      {room ? (
        <text className="selvage-word" x={x} y={y} dy="0.33em" transform={`rotate(-90 ${x} ${y})`}>
          selvage
        </text>
      ) : (
        <path className="selvage-holes" d={`M${x} ${at.y + 2}v${Math.max(0, at.height - 4)}`} />
      )}
    </>
  );
}

/** What stands beside equal strips: their number in cutting order, how many, how wide. */
function Row({ row: { number, top, bottom, at, length, more }, cloth, text }: {
  readonly row: RowInk;
  readonly cloth: Box;
  readonly text: number;
}): ReactNode {
  const bracket = cloth.x - 1.35 * text;
  return (
    <g className="strip-row">
      <path className="dimension" d={`M${bracket + 4} ${top + 1}h-4V${bottom - 1}h4M${bracket} ${(top + bottom) / 2}L${bracket - 0.5 * text} ${at}`} />
      <circle cx={0.75 * text} cy={at} r={0.68 * text} />
      <text className="strip-number" x={0.75 * text} y={at} dy="0.35em">
        {number}
      </text>
      {length !== null && (
        <text className="strip-length" x={bracket - 0.7 * text} y={at} dy="0.35em">
          <Figures text={length} />
        </text>
      )}
      {more && (
        <>
          <rect className="torn" {...more.band} />
          <path className="torn-edge" d={torn(more.band, more.band.y) + torn(more.band, more.band.y + more.band.height)} />
          <text className="more" x={more.band.x + more.band.width / 2} y={more.band.y + more.band.height / 2} dy="0.35em">
            {several(more.count, 'more strip')} like it
          </text>
        </>
      )}
    </g>
  );
}

/** A zigzag from one side of a band to the other. */
function torn({ x, width }: Box, y: number): string {
  const teeth = Math.max(2, 2 * Math.round(width / 14));
  const step = width / teeth;
  return `M${x} ${y}${Array.from({ length: teeth }, (_, i) => `l${step} ${i % 2 === 0 ? -3 : 3}`).join('')}`;
}
