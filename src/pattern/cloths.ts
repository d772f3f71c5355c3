import type { Fabric, LengthUnit } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { counted } from '../block/counting.ts';
import { buyingOf, stripsOf } from '../cutting/cloth/buying.ts';
import { quickCloth } from '../cutting/cloth/cloth.ts';
import { joinedFor, takenByJoined } from '../cutting/cloth/joined.ts';
import type { ClothOrder } from '../cutting/cloth/order.ts';
import { REACH, sourcesOf } from '../cutting/cloth/sources.ts';
import { wantsOf } from '../cutting/cloth/wants.ts';
import type { Cut } from '../cutting/cut.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import type { Piece } from '../geometry/piecing/assembly.ts';
import { add, multiply, rational, ZERO } from '../measure/rational.ts';
import type { Speech, Wording } from './language.ts';
import type { Cloth } from './pattern.ts';

type Rules = Required<Choices>;

/** @returns how one fabric is cut and bought, laid out at once */
export function clothOf(fabric: Fabric, cuts: readonly Cut[], pieces: readonly Piece[], choices: Rules, unit: LengthUnit, speech: Speech<Wording>): Cloth {
  const order: ClothOrder = {
    wanted: wantsOf(cuts, pieces, fabric.directional === true),
    ...sourcesOf(choices.cloths[fabric.id] ?? {}, { ...choices, unit }),
    reach: REACH[unit],
  };
  return clothLaid(fabric, order, quickCloth(order), choices, unit, speech);
}

/** @returns a fabric cut by another layout of the same order */
export const withLayout = (cloth: Cloth, layout: ClothLayout, choices: Rules, unit: LengthUnit, speech: Speech<Wording>): Cloth =>
  clothLaid(cloth.fabric, cloth.order, layout, choices, unit, speech);

function clothLaid(fabric: Fabric, order: ClothOrder, layout: ClothLayout, choices: Rules, unit: LengthUnit, { language, telling }: Speech<Wording>): Cloth {
  const joined = joinedFor(order, layout);
  const strips = stripsOf(layout, joined);
  const more = joined.map(takenByJoined).reduce(add, ZERO);
  const bought = stripsOf({ ...layout, cloths: layout.cloths.filter(({ source }) => source.form !== 'own') }, joined);
  const length = bought.map(({ width, count }) => multiply(width, rational(count))).reduce(add, ZERO);
  const words = { telling, phrases: language.cutting };
  return { fabric, order, layout, joined, strips, length, ...buyingOf(add(layout.takes, more), order.bought, { ...choices, unit }, words) };
}

/** @returns what a maker should know of a fabric before cutting: one sentence each */
export function clothNotes({ fabric, order: { bought }, layout, joined }: Cloth, cuts: readonly Cut[], { language, telling }: Speech<Wording>, unit: LengthUnit): readonly string[] {
  return cuts.flatMap((cut): readonly string[] => {
    const left = layout.unplaced.filter((one) => one.cut === cut.id).reduce((sum, { count }) => sum + count, 0);
    if (left === 0 || joined.some((one) => one.cut === cut.id)) return [];
    const size = language.pattern.clothSize(telling.length(cut.width, unit, 'bare'), telling.length(cut.height, unit));
    const some = left === cut.quantity ? 'all' : counted(left, telling);
    return [language.pattern.tooLarge(some, telling.cut(cut.id), size, bought.form, telling.cloth(fabric.id))];
  });
}
