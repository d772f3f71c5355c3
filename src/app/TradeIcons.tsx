import type { ReactNode } from 'react';
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
  outline: (
    <>
      <path className="wash" d="M6 24 11 6l15 5-5 14z" />
      <path className="cell" d="M6 24 11 6l15 5-5 14z" />
      <path className="cloth" d="M4 22h4v4H4zM9 4h4v4H9zM24 9h4v4h-4zM19 23h4v4h-4z" />
    </>
  ),
  fill: (
    <>
      <path className="wash" d="M5 5h22v22H5z" />
      <path className="cell" d="M5 5h22v22H5z" />
      <path className="cloth" d="M16 9c3 4 5 6.500 5 9a5 5 0 0 1-10 0c0-2.500 2-5 5-9z" />
    </>
  ),
  ground: (
    <>
      <path className="cell" strokeDasharray="3.200 3.090" d="M5 5h22v22H5z" />
      <path className="cell" d="m11 21 10-10M14 23.500l9.500-9.500M8.500 18 18 8.500" />
    </>
  ),
  pick: (
    <>
      <path className="wash" d="M4 16h12v12H4z" />
      <path className="cell" d="M4 16h12v12H4z" />
      <path className="cloth" d="M28.200 8.700 23.300 3.800l-4 4 1.300 1.300-6.600 6.600-.8 4 4-.8 6.600-6.600 1.300 1.300z" transform="translate(-.5 .5)" />
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
