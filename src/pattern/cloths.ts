import type { Fabric, LengthUnit } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { buyingOf, stripsOf } from '../cutting/cloth/buying.ts';
import { quickCloth } from '../cutting/cloth/cloth.ts';
import { joinedFor, takenByJoined } from '../cutting/cloth/joined.ts';
import type { ClothOrder } from '../cutting/cloth/order.ts';
import { REACH, sourcesOf } from '../cutting/cloth/sources.ts';
import { wantsOf } from '../cutting/cloth/wants.ts';
import type { Cut } from '../cutting/cut.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import type { Piece } from '../geometry/piecing/assembly.ts';
import { printLength } from '../measure/lengths.ts';
import { add, multiply, rational, ZERO } from '../measure/rational.ts';
import { several } from '../measure/words.ts';
import type { Cloth } from './pattern.ts';

type Rules = Required<Choices>;

/** @returns how one fabric is cut and bought, laid out at once */
export function clothOf(fabric: Fabric, cuts: readonly Cut[], pieces: readonly Piece[], choices: Rules, unit: LengthUnit): Cloth {
  const order: ClothOrder = {
    wanted: wantsOf(cuts, pieces, fabric.directional === true),
    ...sourcesOf(choices.cloths[fabric.id] ?? {}, { ...choices, unit }),
    reach: REACH[unit],
  };
  return clothLaid(fabric, order, quickCloth(order), choices, unit);
}

/** @returns a fabric cut by another layout of the same order */
export const withLayout = (cloth: Cloth, layout: ClothLayout, choices: Rules, unit: LengthUnit): Cloth =>
  clothLaid(cloth.fabric, cloth.order, layout, choices, unit);

function clothLaid(fabric: Fabric, order: ClothOrder, layout: ClothLayout, choices: Rules, unit: LengthUnit): Cloth {
  const joined = joinedFor(order, layout);
  const strips = stripsOf(layout, joined);
  const more = joined.map(takenByJoined).reduce(add, ZERO);
  const bought = stripsOf({ ...layout, cloths: layout.cloths.filter(({ source }) => source.form !== 'own') }, joined);
  const length = bought.map(({ width, count }) => multiply(width, rational(count))).reduce(add, ZERO);
  return { fabric, order, layout, joined, strips, length, ...buyingOf(add(layout.takes, more), order.bought, { ...choices, unit }) };
}

/** @returns what a maker should know of a fabric before cutting: one sentence each */
export function clothNotes({ fabric, order: { bought }, layout, joined }: Cloth, cuts: readonly Cut[], unit: LengthUnit): readonly string[] {
  return cuts.flatMap((cut): readonly string[] => {
    const left = layout.unplaced.filter((one) => one.cut === cut.id).reduce((sum, { count }) => sum + count, 0);
    if (left === 0 || joined.some((one) => one.cut === cut.id)) return [];
    const size = `${printLength(cut.width, unit, 'bare')} × ${printLength(cut.height, unit)}`;
    const some = left === cut.quantity ? `Cut ${cut.id} (${size})` : `${several(left, 'piece')} of cut ${cut.id} (${size})`;
    return [`${some} cannot be cut from the ${bought.form} of ${fabric.name}: choose larger cloth for it.`];
  });
}
