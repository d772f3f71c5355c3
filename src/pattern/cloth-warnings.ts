import { counted } from '../block/counting.ts';
import type { Cut } from '../cutting/cut.ts';
import { lengthToBuy } from '../cutting/cloth/buying.ts';
import { takenByJoined } from '../cutting/cloth/joined.ts';
import { add, compare, divide, multiply, rational, subtract, upToStep, type Rational } from '../measure/rational.ts';
import type { Cloth } from './pattern.ts';
import type { Warned, Warning } from './warnings.ts';

/** So much of what is bought should be left when the pieces are cut, to straighten the edge and for one slip (common practice). */
const LEFT = { in: rational(1, 2), cm: rational(1) } as const;

/** @returns a warning for the pieces longer than their cloth is wide, and one for those that exceed it both ways, for each width of cloth */
export function longCuts({ list, fabrics, block: { unit }, choices: { seam }, speech: { language, telling } }: Warned): readonly Warning[] {
  const groups = new Map<string, { readonly room: Rational; readonly joined: boolean; readonly cuts: Cut[] }>();
  for (const { fabric, order, joined } of fabrics) {
    const room = order.bought.width;
    for (const cut of list.cuts) {
      const both = joined.some((one) => one.cut === cut.id);
      if (cut.fabric !== fabric.id || order.bought.length !== null || !(both || compare(cut.height, room) > 0)) continue;
      const key = `${both} ${room.n}/${room.d}`;
      groups.set(key, { room, joined: both, cuts: [...(groups.get(key)?.cuts ?? []), cut] });
    }
  }
  return [...groups.values()].map(({ room, joined, cuts }): Warning => {
    const phrases = language.pattern;
    const ids = cuts.map(({ id }) => telling.cut(id));
    const sizes = [...new Set(cuts.map(({ width, height }) => phrases.clothSize(telling.length(width, unit, 'bare'), telling.length(height, unit))))];
    const wide = telling.length(room, unit);
    return {
      code: 'longer than the cloth',
      says: joined
        ? phrases.widerThanCloth(ids, sizes, wide)
        : phrases.longerThanCloth(ids, sizes, wide, counted(stripsFor(cuts, room, seam), telling), telling.length(seam, unit)),
      pieces: cuts.flatMap(({ pieces }) => pieces).sort((a, b) => a - b),
      cuts: cuts.map(({ id }) => id),
    };
  });
}

/** How many strips of the cloth's width make the longest of the pieces, each seam taking two allowances. */
function stripsFor(cuts: readonly Cut[], room: Rational, seam: Rational): number {
  const allowances = multiply(seam, rational(2));
  const longest = cuts.map(({ height }) => height).reduce((a, b) => (compare(a, b) >= 0 ? a : b));
  return upToStep(divide(subtract(longest, allowances), subtract(room, allowances)), rational(1)).n;
}

/** What is bought, and for which lines of the list. */
interface Bought {
  readonly list: Pick<Warned['list'], 'cuts'>;
  readonly fabrics: readonly Cloth[];
  readonly block: Pick<Warned['block'], 'unit'>;
  readonly choices: Pick<Warned['choices'], 'shopStep'>;
  readonly speech: Warned['speech'];
}

/** @returns a warning for the fabrics of which hardly more is bought than the pieces take; null where enough is left of all */
export function noMargin({ list, fabrics, block: { unit }, choices: { shopStep }, speech: { language, telling } }: Bought): Warning | null {
  const short = fabrics.filter(({ bought, layout, joined }) => bought !== null && compare(subtract(bought, joined.map(takenByJoined).reduce(add, layout.takes)), LEFT[unit]) < 0);
  if (short.length === 0) return null;
  const cuts = list.cuts.filter(({ fabric }) => short.some((cloth) => cloth.fabric.id === fabric));
  return {
    code: 'no margin',
    says: language.pattern.noMargin(
      short.map(({ fabric, buy }) => [telling.cloth(fabric.id), buy] as const),
      telling.length(LEFT[unit], unit),
      lengthToBuy(shopStep, shopStep, unit, { telling, phrases: language.cutting }),
    ),
    pieces: cuts.flatMap(({ pieces }) => pieces).sort((a, b) => a - b),
    cuts: cuts.map(({ id }) => id),
  };
}
