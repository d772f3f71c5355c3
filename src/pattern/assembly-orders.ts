import type { Block } from '../block/block.ts';
import { toDrawing } from '../block/drawing.ts';
import { chosenUnits } from '../cutting/chosen-units.ts';
import { cutList } from '../cutting/cutting.ts';
import type { AssemblyOrder } from '../geometry/piecing/order.ts';
import { ordersOf } from '../geometry/piecing/reassembly.ts';
import { sewnInRows } from '../geometry/piecing/strip-rows.ts';
import { sewingPlan } from '../sewing/steps.ts';
import { cuttingChoices } from './cutting-choices.ts';
import { darknessIn } from './darkness.ts';
import { assemblyPicture } from './diagrams/assembly.ts';
import type { Panel } from './diagrams/diagram.ts';
import { inEnglish } from './english.ts';
import type { Speech } from './language.ts';
import type { Pattern } from './pattern.ts';

/** One order in which a block may be put together, and what comes of it. */
export interface OrderOption {
  readonly order: AssemblyOrder;
  /** The order it was found in, where it is one of the others; only of 'as found'. */
  readonly same?: AssemblyOrder;
  readonly picture: Panel;
  /** Of one block: seams; points where seams meet, and at how many they do not nest; different units, joined ones among them. */
  readonly seams: number;
  readonly points: number;
  readonly loose: number;
  readonly units: number;
}

/**
 * Puts the units of a pattern together in every order they allow; nothing is searched for again.
 * @param block the one the pattern is of
 * @returns each order with its picture and figures, 'as found' first; that one alone where the block has no other
 */
export function assemblyOrders(block: Block, pattern: Pattern, speech: Speech = inEnglish(pattern)): readonly OrderOption[] {
  const placed = toDrawing(block);
  if (!placed.ok) return [];
  const { drawing, step, unitMethods, pressedSeams } = placed.value;
  const { choices, scraps } = pattern;
  const { unit } = block.finished;
  return ordersOf(pattern.plan, drawing.pins).map(({ order, same, piecing: plan }) => {
    const units = chosenUnits(plan, unitMethods).methods;
    const fabrics = block.fabrics.map(({ id }) => id);
    const list = cutList(plan, cuttingChoices(choices, { step, unit, fabrics, scraps: scraps.map(({ id }) => id), units }));
    const piecing = sewnInRows(plan, new Set(Object.keys(list.methods).filter((id) => list.methods[id] === 'strip-sets')));
    const words = { telling: speech.telling, phrases: speech.language.sewing, unit, seam: choices.seam };
    const rules = { step, seam: choices.seam, trim: choices.trim, blocks: choices.blocks, words, darkness: darknessIn(block.fabrics), pressed: pressedSeams };
    const { steps, pressing } = sewingPlan(piecing, list, rules);
    return {
      order,
      ...(same && { same }),
      picture: assemblyPicture({ ...pattern, piecing, steps }, speech),
      seams: piecing.figures.seams,
      points: pressing.points,
      loose: pressing.sameWay + pressing.open,
      units: piecing.figures.differentUnits,
    };
  });
}
