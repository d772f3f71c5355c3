import { box } from '../geometry/convex.ts';
import { placed, type Placement, type Turn } from '../geometry/piecing/congruence.ts';
import type { Point } from '../geometry/point.ts';
import type { StepPart } from './step.ts';

/**
 * @param parts of the step that makes it
 * @param outline where it comes to lie
 * @returns how what a step makes is taken to a place: turned, and moved until its box is that of the outline
 */
export function placementIn(parts: readonly Pick<StepPart, 'outline'>[], turn: Turn, outline: readonly Point[]): Placement {
  const turned = box(parts.flatMap((part) => part.outline.map((p) => placed(p, { turn, dx: 0, dy: 0 }))));
  const there = box(outline);
  return { turn, dx: there.left.x / there.left.w - turned.left.x / turned.left.w, dy: there.top.y / there.top.w - turned.top.y / turned.top.w };
}
