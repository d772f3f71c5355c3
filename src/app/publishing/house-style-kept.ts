import type { LengthUnit } from '../../block/block.ts';
import { onOneLine } from '../../block/publishing.ts';
import { checkHouseStyle, formatHouseStyle, parseHouseStyle } from '../../files/house-style-file.ts';
import { good, type Result } from '../../measure/problem.ts';
import { usualStyle, type HouseStyle } from '../../pattern/house-style.ts';
import { createStore, type Store } from '../store.ts';

/*
 * The designer's house style, kept once in the browser for all her drawings, written as its own file is.
 */

const NAME = 'piecewright house style';

/** @returns the style in the browser; null where there is none yet, or none that can be read */
function kept(): HouseStyle | null {
  try {
    const text = localStorage.getItem(NAME);
    const read = text === null ? null : parseHouseStyle(text);
    return read?.ok ? read.value : null;
  } catch {
    return null;
  }
}

/** What she has chosen; null while she has chosen nothing. */
export const houseStyle: Store<HouseStyle | null> = createStore(kept());

window.addEventListener('storage', ({ key }) => key === NAME && houseStyle.set(kept()));

/** @returns the style of her patterns, for a block in a unit */
export const styleFor = (chosen: HouseStyle | null, unit: LengthUnit): HouseStyle => chosen ?? usualStyle(unit);

/** @returns a style with another text of hers, or why that cannot be printed; empty text is none */
export function styleWith(style: HouseStyle, name: 'maker' | 'licence' | 'foot', text: string): Result<HouseStyle> {
  const { [name]: _, ...rest } = style;
  const line = onOneLine(text);
  const next = { ...rest, ...(line !== '' && { [name]: line }) };
  const fault = checkHouseStyle(next);
  return fault ? { ok: false, problem: fault } : good(next);
}

/** Has all her patterns look and speak so. @returns why that is not kept, in a sentence; null where it is */
export function keepStyle(style: HouseStyle): string | null {
  houseStyle.set(style);
  try {
    localStorage.setItem(NAME, formatHouseStyle(style));
    return null;
  } catch {
    return 'This browser does not keep the house style: it is gone when the page is closed, so save it to a file.';
  }
}
