import type { Cut } from '../../cutting/cut.ts';
import { type Spot } from '../polygons.ts';
import { captionOf, ink, panel, type Drawn, type Mark, type Panel } from './diagram.ts';

/** How many triangles of a strip are shown. */
const SHOWN = 5;

/** @returns for each strip of a step that is cut into triangles the beginning of it; equal ones of one fabric once */
export function stripPanels(drawn: Drawn): readonly Panel[] {
  const { step, pattern } = drawn;
  const ids = new Set(step.parts.flatMap(({ from }) => ('cut' in from ? [from.cut] : [])));
  return pattern.cuts.filter((cut) => ids.has(cut.id) && cut.nested).map((cut) => stripPanel(cut, captionOf(drawn, 'head to tail')));
}

function stripPanel({ fabric, width, nested }: Cut, says: string): Panel {
  const [high, measure] = [ink(width), ink(nested!.measure)];
  const count = Math.min(SHOWN, nested!.triangles);
  const cuts = slants(nested!.form, measure, high, count);
  const [first, last] = [cuts[0]!, cuts.at(-1)!];
  const marks: readonly Mark[] = [
    { mark: 'cloth', fabric, side: 'right', outline: [first[0], last[0], last[1], first[1]] },
    ...cuts.slice(1, -1).map(([from, to]): Mark => ({ mark: 'line', line: 'cut', from, to })),
  ];
  return panel(marks, says);
}

/**
 * @returns the cuts across a strip, each from its upper to its lower edge, the strip's straight or slanting end as the first. From one
 * to the next the measure lies along the upper and the lower edge by turns, and along the other what slanting by 45° leaves of it.
 */
function slants(form: 'half' | 'quarter', measure: number, high: number, triangles: number): readonly (readonly [Spot, Spot])[] {
  let [upper, lower] = form === 'half' ? [0, 0] : [0, high];
  const cuts: (readonly [Spot, Spot])[] = [[[upper, 0], [lower, high]]];
  const short = form === 'half' ? measure - high : measure - 2 * high;
  for (let i = 0; i < triangles; i++) {
    const [a, b] = i % 2 === 0 ? [measure, short] : [short, measure];
    [upper, lower] = [upper + a, lower + b];
    cuts.push([[upper, 0], [lower, high]]);
  }
  return cuts;
}
