import type { Role } from '../../cutting/cut.ts';
import { isOnFoundations } from '../../sewing/sections.ts';
import { isWebStep } from '../../sewing/web.ts';
import { assemblyPicture } from './assembly.ts';
import { captionOf, speechOf, type Drawn, type Panel } from './diagram.ts';
import { flippedPanels, geesePanels } from './flipped.ts';
import { foundationPanels } from './foundation.ts';
import { finished, laidOut } from './laid-out.ts';
import { crossedPanels, halfSquarePanels } from './paired.ts';
import { stripPanels } from './strip-panel.ts';
import { stripSetPanels } from './strip-set-panels.ts';

/**
 * @returns the pictures of one step in the order in which things are done: what is laid on what, what is sewn and cut, and the work
 * when it is pressed, with its allowances; all to one scale
 */
export function stepPanels(drawn: Drawn): readonly Panel[] {
  const { step } = drawn;
  if (step.joins.length === 0) return [laidOut(drawn)];
  const { width, height } = step.unfinished;
  const { unit } = drawn.pattern.block;
  const { language, telling } = speechOf(drawn);
  const measures = language.pattern.clothSize(telling.length(width, unit, 'bare'), telling.length(height, unit));
  const done = step.method === 'strip-sets' ? 'a segment' : step.trimmed ? 'press and trim' : 'press';
  return [...making(drawn), { ...finished(drawn, captionOf(drawn, done)), measures }];
}

function making(drawn: Drawn): readonly Panel[] {
  const { step, pattern } = drawn;
  if (isWebStep(step)) return [assemblyPicture(pattern, speechOf(drawn))];
  if (isOnFoundations(step, pattern.way)) return foundationPanels(drawn);
  const roles = new Set(step.parts.map(({ from }): Role | null => ('cut' in from ? from.role : null)));
  if (roles.has('eight')) return halfSquarePanels(drawn, true);
  if (roles.has('pair')) return step.parts.length === 2 ? halfSquarePanels(drawn, false) : crossedPanels(drawn);
  if (roles.has('large')) return geesePanels(drawn);
  if (roles.has('corner')) return flippedPanels(drawn);
  if (roles.has('strip')) return stripSetPanels(drawn);
  return [...stripPanels(drawn), laidOut(drawn)];
}
