import type { StripSet } from '../../cutting/cut.ts';
import { isRow } from '../../sewing/join-words.ts';
import { type Spot } from '../polygons.ts';
import { captionOf, ink, panel, plus, rectangle, times, type Drawn, type Mark, type Panel } from './diagram.ts';
import { pressedWays } from './laid-out.ts';

/*
 * A strip set as it lies when its unit is to come out as it is described: strips upright for a row, level for a column. Of long sets
 * only the beginning is shown, with so many segments, and a part of what follows.
 */
const LEAST_SHOWN = 2;
const MOST_SHOWN = 4;
const FOLLOWS = 0.4;

/** How far strips lie from each other before they are sewn, as a share of the set's width. */
const APART = 0.07;

interface Strip {
  readonly fabric: string;
  readonly set: StripSet;
}

/** @returns the strips of a step as they lie beside each other before they are sewn, and the set, pressed, with the cuts across it */
export function stripSetPanels(drawn: Drawn): readonly [Panel, Panel] {
  const { step, pattern } = drawn;
  const strips = step.parts.flatMap(({ from }): readonly Strip[] => {
    const set = 'cut' in from ? pattern.cuts.find(({ id }) => id === from.cut)?.set : undefined;
    return set && 'cut' in from ? [{ fabric: from.fabric, set }] : [];
  });
  const seam = ink(pattern.choices.seam);
  const { segments, segment, length } = strips[0]!.set;
  const [each, spare] = [ink(segment), ink(length) - segments * ink(segment)];
  const wide = strips.map(({ set }) => ink(set.across) - 2 * seam);
  const whole = wide.reduce((a, b) => a + b, 2 * seam);
  const shown = Math.min(segments, Math.max(LEAST_SHOWN, Math.min(MOST_SHOWN, Math.floor((2 * whole) / each))));
  const long = shown < segments ? spare / 2 + (shown + FOLLOWS) * each : ink(length);
  const row = isRow(step);
  /** Across the strips and along them, as the set lies. */
  const at = (across: number, along: number): Spot => (row ? [across, along] : [along, across]);
  const cloth = (fabric: string, from: number, width: number): Mark => {
    const [left, top] = at(from, 0);
    const [w, h] = at(width, long);
    return { mark: 'cloth', fabric, side: 'right', outline: rectangle(left, top, w, h) };
  };
  const gap = whole * APART;
  let next = 0;
  const apart = strips.flatMap(({ fabric, set }, i): readonly Mark[] => {
    const from = next;
    next += ink(set.across) + gap;
    const seamed: Mark = { mark: 'line', line: 'stitched', from: at(from - gap / 2, 0), to: at(from - gap / 2, long) };
    return [cloth(fabric, from, ink(set.across)), ...(i > 0 ? [seamed] : [])];
  });
  const seams: number[] = [];
  let reached = 0;
  const sewn = strips.map(({ fabric }, i): Mark => {
    const [from, last] = [reached, i === strips.length - 1];
    reached += wide[i]! + (i === 0 ? seam : 0) + (last ? seam : 0);
    if (!last) seams.push(reached);
    return cloth(fabric, from, reached - from);
  });
  const cuts = Array.from({ length: shown + 1 }, (_, i): Mark => {
    const along = spare / 2 + i * each;
    return { mark: 'line', line: 'cut', from: at(0, along), to: at(whole, along) };
  });
  const middle = spare / 2 + (Math.floor((shown - 1) / 2) + 0.5) * each;
  const reach = Math.min(seam * 1.6, Math.min(...wide) / 2);
  const arrows = pressedWays(drawn).flatMap((way, i): readonly Mark[] => {
    const on = at(seams[i]!, middle);
    if (!way) return [];
    const far = times(way.across, reach);
    return [way.toward ? { mark: 'pressed', from: plus(on, times(far, -0.5)), to: plus(on, far) } : { mark: 'pressed open', from: plus(on, times(far, -1)), to: plus(on, far) }];
  });
  return [panel(apart, captionOf(drawn, 'strips side by side')), panel([...sewn, ...cuts, ...arrows], captionOf(drawn, 'cut across'))];
}
