import type { StripSet } from '../cutting/cut.ts';
import { isRow } from './join-words.ts';
import { counted, type Vocabulary } from './naming.ts';
import type { SetStrip } from './phrases/strip-sets.ts';
import type { Size } from './phrases/said.ts';
import type { Step } from './step.ts';

type Told = Pick<Step, 'count' | 'parts'>;

/** How many sets a step takes, and how many segments more than it asks for they give. */
export interface SetCount {
  readonly sets: number;
  readonly beyond: number;
}

/** @returns the strips of a step that is sewn in sets, in its order; none for another step */
export const stripsOf = ({ parts }: Pick<Step, 'parts'>, cutOf: (id: string) => { readonly set?: StripSet }): readonly StripSet[] =>
  parts.flatMap(({ from }) => ('cut' in from ? (cutOf(from.cut).set ?? []) : []));

/** @returns the sets of a step that makes so many units, each set giving so many segments */
export function setCount(count: number, { segments }: Pick<StripSet, 'segments'>): SetCount {
  const sets = Math.ceil(count / segments);
  return { sets, beyond: sets * segments - count };
}

/** @returns how strips are sewn side by side and cut across */
export function stripSetWords(step: Told, words: Vocabulary): string {
  const { telling, phrases, unit } = words;
  const { sew, sets: making, cut } = phrases.stripSets;
  const strips = step.parts.flatMap(({ from }) => ('cut' in from ? [{ fabric: from.fabric, set: words.cut(from.cut).set! }] : []));
  const sizeOf = ({ across, length }: StripSet): Size => [telling.length(across, unit, 'bare'), telling.length(length, unit)];
  const runs: { readonly fabric: string; readonly size: Size; count: number }[] = [];
  for (const { fabric, set } of strips) {
    const [last, size] = [runs.at(-1), sizeOf(set)];
    if (last?.fabric === fabric && last.size[0] === size[0]) last.count += 1;
    else runs.push({ fabric, size, count: 1 });
  }
  const said = runs.map(({ fabric, size, count }): SetStrip => ({ count: counted(count, words), cloth: telling.cloth(fabric), size }));
  const alike = said.every(({ size }) => size[0] === said[0]!.size[0]) ? said[0]!.size : null;
  const { set } = strips[0]!;
  const { sets, beyond } = setCount(step.count, set);
  const all = counted(sets, words);
  return [
    sew(said, isRow(step) ? 'row' : 'column', alike),
    ...(sets > 1 ? [making(all)] : []),
    cut(all, counted(set.segments, words), telling.length(set.segment, unit), beyond > 0 ? counted(beyond, words) : null),
  ].join(' ');
}
