import { Shuffle } from 'lucide-react';
import { useEffect, useState, type CSSProperties, type ReactNode } from 'react';
import type { Fabric, LengthUnit } from '../../block/block.ts';
import { spreadBy } from '../../block/fabrics.ts';
import { shadeOf } from '../../canvas/draw-prints.ts';
import { middleOf } from '../../canvas/pen.ts';
import type { Cut } from '../../cutting/cut.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { eachWords, type ScrapFamily } from '../../pattern/scraps.ts';
import { printLength } from '../../measure/lengths.ts';
import { several } from '../../measure/words.ts';
import { familiesOf, otherSeed } from '../scraps/spreading.ts';
import type { Acts } from '../table.ts';
import { Prose } from './Length.tsx';
import '../face/scraps.css';
import { frameOf, inkOf } from './picture.ts';

/** A family of scraps below its lines of the cutting list: how many of each print, which piece is of which, and another spread. */
export default function Scraps({ fabric, pattern, change }: {
  readonly fabric: Fabric;
  readonly pattern: Pattern;
  readonly change: Acts['change'];
}): ReactNode {
  const family = useFamily(pattern, fabric.id);
  const [only, setOnly] = useState(false);
  const again = (): void => {
    void otherSeed(pattern, fabric.id).then(
      (seed) => {
        setOnly(seed === null);
        if (seed !== null) change(`spread ${fabric.name} otherwise`, (now) => spreadBy(now, fabric.id, seed));
      },
      () => undefined,
    );
  };
  return (
    <div className="scraps" aria-busy={family === null}>
      {family && (
        <>
          <SpreadPicture family={family} pattern={pattern} />
          <div className="scraps-words">
            <ul className="prints">
              {family.cuts.map(({ cut, each }) => (
                <li key={cut.id}>
                  <Prose text={`${cutWords(cut, pattern.block.unit)}: ${eachWords(each)}`} />
                </li>
              ))}
            </ul>
            {family.says.map((sentence) => (
              <p key={sentence} className="quiet">
                <Prose text={sentence} />
              </p>
            ))}
          </div>
        </>
      )}
      <p className="cloth-acts">
        <button type="button" className="plain" onClick={again}>
          <Shuffle size={18} aria-hidden="true" /> Another spread<span className="unseen"> of {fabric.name}</span>
        </button>
        <span className="quiet" role="status">
          {only ? 'There is no other spread.' : ''}
        </span>
      </p>
    </div>
  );
}

/** @returns the family's spread in a pattern; while it is worked out the last one there was, null before there was one */
function useFamily(pattern: Pattern, fabric: string): ScrapFamily | null {
  const [family, setFamily] = useState<ScrapFamily | null>(null);
  useEffect(() => {
    let asked = true;
    void familiesOf(pattern).then((families) => asked && setFamily(families.find((each) => each.fabric.id === fabric) ?? null), () => undefined);
    return () => void (asked = false);
  }, [pattern, fabric]);
  return family;
}

/** @returns "16 squares 2 1/2 in.", "1 rectangle 3 1/2 × 6 1/2 in." */
function cutWords({ quantity, shape, width, height }: Cut, unit: LengthUnit): string {
  const size = shape === 'square' ? printLength(width, unit) : `${printLength(width, unit, 'bare')} × ${printLength(height, unit)}`;
  return `${several(quantity, shape === 'template' ? 'piece' : shape)} ${size}`;
}

/** Width of the picture, and least room round a number, in its own units. */
const WIDE = 200;
const ROOM = 5;

/** The block with the prints of one family, each piece with the number of its print where there is room; the rest is pale. */
function SpreadPicture({ family: { fabric, prints, of }, pattern: { pieces, piecing } }: { readonly family: ScrapFamily; readonly pattern: Pattern }): ReactNode {
  const { width, height } = frameOf(piecing.root.outline);
  const scale = WIDE / Math.max(width, height);
  const own = pieces.filter(({ id }) => of.has(id));
  return (
    <svg className="spread" viewBox={`-1 -1 ${width * scale + 2} ${height * scale + 2}`} role="img" aria-label={`Which piece is of which print of ${fabric.name}`}>
      <rect className="spread-ground" width={width * scale} height={height * scale} />
      {own.map(({ id, outline }) => {
        const corners = outline.map(inkOf).map(([x, y]) => [x * scale, y * scale] as const);
        const path = `M${corners.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`;
        const print = of.get(id)!;
        const [x, y] = middleOf(corners);
        const { width: wide, height: high } = frameOf(outline);
        return (
          <g key={id}>
            <path className="picture-piece" d={path} fill={fabric.color} />
            <path d={path} style={{ fill: shadeOf(print, prints) } as CSSProperties} />
            {Math.min(wide, high) * scale >= 2 * ROOM && (
              <text className="spread-number" x={x} y={y}>
                {print}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
