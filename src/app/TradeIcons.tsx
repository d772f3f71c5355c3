import type { ReactNode } from 'react';
import type { Stroke } from '../block/painting.ts';
import { axesOf, strokeImages, type SymmetryName } from '../block/symmetry.ts';
import type { Tool } from '../canvas/tool.ts';

/** The small drawings on the tools: cloth filled in, the grid's cell round it. */
const DRAWINGS: Readonly<Record<Tool, ReactNode>> = {
  square: <path className="cloth" d="M5 5h22v22H5z" />,
  half: (
    <>
      <path className="cloth" d="M5 5h22L5 27z" />
      <path className="cell" d="M5 5h22v22H5z" />
    </>
  ),
  quarter: (
    <>
      <path className="cloth" d="M5 5h22L16 16z" />
      <path className="cell" d="M5 5h22v22H5z" />
    </>
  ),
  rectangle: (
    <>
      <path className="cloth" d="M3 10h26v12H3z" />
      <path className="cell" d="M11.7 10v12M20.3 10v12" stroke="var(--paper)" />
    </>
  ),
  'half rectangle': (
    <>
      <path className="cloth" d="M3 9h26L3 23z" />
      <path className="cell" d="M3 9h26v14H3z" />
    </>
  ),
  peak: (
    <>
      <path className="cloth" d="M3 26 16 6l13 20z" />
      <path className="cell" d="M3 6h26v20H3z" />
    </>
  ),
  outline: (
    <>
      <path className="wash" d="M6 24 11 6l15 5-5 14z" />
      <path className="cell" d="M6 24 11 6l15 5-5 14z" />
      <path className="cloth" d="M4 22h4v4H4zM9 4h4v4H9zM24 9h4v4h-4zM19 23h4v4h-4z" />
    </>
  ),
  choose: (
    <>
      <path className="cell" strokeDasharray="3.2 3.09" d="M4 12h14v14H4z" />
      <path className="cloth" d="M13 5h14v14H13z" />
      <path className="cell thin" d="M11 8.5h4M11 13h4M25 8.5h4M25 13h4M17 3v4M22 3v4M17 17v4M22 17v4" />
    </>
  ),
  fill: (
    <>
      <path className="wash" d="M5 5h22v22H5z" />
      <path className="cell" d="M5 5h22v22H5z" />
      <path className="cloth" d="M16 9c3 4 5 6.5 5 9a5 5 0 0 1-10 0c0-2.5 2-5 5-9z" />
    </>
  ),
  ground: (
    <>
      <path className="cell" strokeDasharray="3.2 3.09" d="M5 5h22v22H5z" />
      <path className="cell" d="m11 21 10-10M14 23.5l9.5-9.5M8.5 18 18 8.5" />
    </>
  ),
  pick: (
    <>
      <path className="wash" d="M4 16h12v12H4z" />
      <path className="cell" d="M4 16h12v12H4z" />
      <path className="cloth" d="M27.7 9.2 22.8 4.3l-4 4 1.3 1.3-6.6 6.6-.8 4 4-.8 6.6-6.6 1.3 1.3z" />
    </>
  ),
  seam: (
    <>
      <path className="wash" d="M5 5h22v22H5z" />
      <path className="stitch" d="M4 22 28 10" />
      <path className="cloth" d="M2.5 20h4v4h-4zM25.5 8h4v4h-4z" />
    </>
  ),
  whole: (
    <>
      <path className="wash" d="M4 4h24v24H4z" />
      <path className="stitch" d="M8.5 8.5h15v15h-15z" />
    </>
  ),
  unit: (
    <>
      <path className="wash" d="M5 5h22v22H5z" />
      <path className="cell thin" d="M16 5v22M5 16h22" />
      <path className="stitch" d="M3 3h15.5v15.5H3z" />
    </>
  ),
  last: (
    <>
      <path className="wash" d="M5 5h22v22H5z" />
      <path className="stitch" d="M2 16h26" />
      <circle className="cloth" cx="4.5" cy="16" r="3.5" />
    </>
  ),
};

/** The drawing on a tool. */
export function ToolIcon({ tool }: { readonly tool: Tool }): ReactNode {
  return (
    <svg className="tool-icon" viewBox="0 0 32 32" aria-hidden="true" focusable="false">
      {DRAWINGS[tool]}
    </svg>
  );
}

/** A flag in one place of a block, and wherever a symmetry brings it; each mirror a line of stitches. */
const FLAG: Stroke = { points: [[11, 4], [29, 4], [29, 23]], denominator: 64 };

/** The drawing on a symmetry. */
export function SymmetryIcon({ symmetry }: { readonly symmetry: SymmetryName }): ReactNode {
  const block = { columns: 1, rows: 1 };
  return (
    <svg className="tool-icon" viewBox="-3 -3 70 70" aria-hidden="true" focusable="false">
      <path className="cell edge" d="M2 2h60v60H2z" />
      {axesOf(block, symmetry).lines.map(([[ax, ay], [bx, by]]) => (
        <path key={`${ax} ${ay} ${bx} ${by}`} className="axis" d={`M${64 * ax} ${64 * ay} ${64 * bx} ${64 * by}`} />
      ))}
      {strokeImages(block, symmetry, FLAG).map(({ points }, i) => (
        <path key={i} className={i === 0 ? 'cloth' : 'cloth echo'} d={`M${points.map((point) => point.join(' ')).join('L')}z`} />
      ))}
    </svg>
  );
}

/** Our mark: a gull over the water, pieced of four triangles. */
export function Mark(): ReactNode {
  return (
    <svg className="mark" viewBox="0 0 48 48" aria-hidden="true" focusable="false">
      <path className="mark-sky" d="M0 0h48v48H0z" />
      <path className="mark-sea" d="M0 32h48v16H0z" />
      <path className="mark-wing" d="M4 8 24 28V16zM44 8 24 28V16z" />
    </svg>
  );
}
