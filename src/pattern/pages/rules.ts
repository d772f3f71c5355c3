import { linePath, type PathItem, type Stroke } from './page.ts';

/** @returns a level line from a place on, whose ink stays within its width */
export const levelRule = (x: number, y: number, width: number, stroke: Stroke, what = 'rule'): PathItem => ({
  kind: 'path',
  what,
  steps: linePath([x + stroke.width / 2, y], [x + width - stroke.width / 2, y]),
  stroke,
});
