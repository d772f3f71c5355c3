import { onMark } from '../cutting/ruler.ts';
import { aboutLength } from '../measure/about.ts';
import { printLength } from '../measure/lengths.ts';
import { compareSurds } from '../measure/surd.ts';
import { capital, listed } from '../measure/words.ts';
import { cutLarge, type CutLarge } from '../sewing/cut-large.ts';
import { sentence } from '../sewing/sentences.ts';
import type { Pattern } from './pattern.ts';

/** Lines of the list that are rounded up alike, and where what is too much comes off. */
export interface LargeLine {
  /** Ids of the lines. */
  readonly cuts: readonly string[];
  readonly pieces: readonly number[];
  /** By how much, and where it is trimmed away to what size, in one sentence. */
  readonly says: string;
}

/** @returns what is cut larger than it need be because the ruler has no mark for it, equal amounts together; first what nothing trims */
export function largeLines({ block: { unit }, choices: { ruler }, cuts, steps }: Pick<Pattern, 'block' | 'choices' | 'cuts' | 'steps'>): readonly LargeLine[] {
  const much = ({ by: { width, height } }: CutLarge): string => aboutLength(compareSurds(width, height) >= 0 ? width : height, unit);
  const where = ({ trimmed, kept }: CutLarge): string => {
    const off = trimmed.map((number) => {
      const { width, height } = steps.find((step) => step.number === number)!.unfinished;
      const between = onMark(width, ruler) && onMark(height, ruler) ? '' : ' (between two marks)';
      return `step ${number} to ${printLength(width, unit, 'bare')} by ${printLength(height, unit)}${between}`;
    });
    if (off.length === 0) return 'and no step trims it';
    return `trimmed off in ${listed(off)}${kept ? ', but where they go into the block as they are nothing trims them' : ''}`;
  };
  const groups = new Map<string, CutLarge[]>();
  for (const line of cutLarge(cuts, steps)) {
    const key = `${much(line)}: ${where(line)}`;
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()]
    .sort(([a], [b]) => Number(b!.kept) - Number(a!.kept))
    .map((same): LargeLine => {
      const ids = same.map(({ cut }) => cut);
      const name = capital(`${ids.length === 1 ? 'cut' : 'cuts'} ${listed(ids)} ${ids.length === 1 ? 'is' : 'are'}`);
      return {
        cuts: ids,
        pieces: cuts.filter(({ id }) => ids.includes(id)).flatMap(({ pieces }) => pieces),
        says: sentence(`${name} ${much(same[0]!)} large, ${where(same[0]!)}`),
      };
    });
}
