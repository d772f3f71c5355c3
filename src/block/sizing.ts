import { good, type Result } from '../measure/problem.ts';
import { divide, multiply, rational } from '../measure/rational.ts';
import type { Block, Colourway, Look } from './block.ts';
import type { Choices } from './choices.ts';
import { checkSide } from './file-checks.ts';
import { toDrawing } from './drawing.ts';
import { MAX_CHOSEN } from './limits.ts';
import { refused } from './problems.ts';

/**
 * Gives the block another finished size; the drawing stretches with it.
 * In another unit the chosen lengths (seam, ruler, trim, width, what is said of cloth) fall back to that unit's usual values, and photos of
 * cloth show as much of it as before.
 */
export function resize(block: Block, finished: Block['finished']): Result<Block> {
  const { width, height, unit } = finished;
  const fault = checkSide('width', width, unit) ?? checkSide('height', height, unit);
  if (fault) return refused(fault);
  const { choices } = block;
  const other = choices !== undefined && unit !== block.finished.unit;
  const cloth = unit === block.finished.unit ? {} : inOtherUnit(block);
  return drawable({ ...block, ...cloth, finished, ...(other && { choices: withoutLengths(choices) }) });
}

/** One inch is 2.54 cm. */
const CENTIMETRES = rational(127, 50);

/** @returns the fabrics and colourways of a block whose unit changes, with photos that show as much cloth as before */
function inOtherUnit({ fabrics, colourways, finished: { unit } }: Block): Pick<Block, 'fabrics' | 'colourways'> {
  const told = <T extends Look>(look: T): T => {
    if (!look.photo) return look;
    const { across } = look.photo;
    return { ...look, photo: { ...look.photo, across: unit === 'in' ? multiply(across, CENTIMETRES) : divide(across, CENTIMETRES) } };
  };
  const looksOf = ({ name, looks }: Colourway): Colourway => ({ name, looks: Object.fromEntries(Object.entries(looks).map(([id, look]) => [id, told(look)])) });
  return { fabrics: fabrics.map(told), ...(colourways && { colourways: colourways.map(looksOf) }) };
}

/** @returns the choices without their lengths; of a cloth stays how it is sold, of a margin what is said in per cent */
function withoutLengths(choices: Choices): Choices {
  const { cloths, margin, ...rest } = Object.fromEntries(Object.entries(choices).filter(([name]) => !(name in MAX_CHOSEN))) as Choices;
  const sold = Object.entries(cloths ?? {}).flatMap(([id, cloth]) => (cloth.sold ? [[id, { sold: cloth.sold }] as const] : []));
  return { ...rest, ...(sold.length > 0 && { cloths: Object.fromEntries(sold) }), ...(margin && 'percent' in margin && { margin }) };
}

/** @returns the block if its lattice in true proportion can be held exactly */
function drawable(block: Block): Result<Block> {
  const drawn = toDrawing(block);
  return drawn.ok ? good(block) : drawn;
}
