import { onMark } from '../cutting/ruler.ts';
import { compareSurds } from '../measure/surd.ts';
import { cutLarge, type CutLarge } from '../sewing/cut-large.ts';
import { inEnglish } from './english.ts';
import type { Speech } from './language.ts';
import type { Pattern } from './pattern.ts';
import { aboutSaid, sizeSaid } from './saying.ts';

/** Lines of the list that are rounded up alike, and where what is too much comes off. */
export interface LargeLine {
  /** Ids of the lines. */
  readonly cuts: readonly string[];
  readonly pieces: readonly number[];
  /** By how much, and where it is trimmed away to what size, in one sentence. */
  readonly says: string;
}

/** What tells by how much things are cut too large. */
type LargeIn = Pick<Pattern, 'block' | 'choices' | 'cuts' | 'steps' | 'fabrics' | 'scraps'>;

/** @returns what is cut larger than it need be because the ruler has no mark for it, equal amounts together; first what nothing trims */
export function largeLines(pattern: LargeIn, speech: Speech = inEnglish(pattern)): readonly LargeLine[] {
  const { block: { unit }, choices: { ruler }, cuts, steps } = pattern;
  const { language, telling } = speech;
  const much = ({ by: { width, height } }: CutLarge): string => aboutSaid(compareSurds(width, height) >= 0 ? width : height, unit, speech);
  const groups = new Map<string, CutLarge[]>();
  for (const line of cutLarge(cuts, steps)) {
    const key = `${much(line)}: ${line.trimmed.join()} ${line.trimmed.length > 0 && line.kept}`;
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()]
    .sort(([a], [b]) => Number(b!.kept) - Number(a!.kept))
    .map((same): LargeLine => {
      const ids = same.map(({ cut }) => cut);
      const [{ trimmed, kept }] = same as [CutLarge, ...CutLarge[]];
      const off = trimmed.map((number) => {
        const { unfinished } = steps.find((step) => step.number === number)!;
        const between = !onMark(unfinished.width, ruler) || !onMark(unfinished.height, ruler);
        return { step: telling.count(number), size: sizeSaid(unfinished, unit, speech), between };
      });
      return {
        cuts: ids,
        pieces: cuts.filter(({ id }) => ids.includes(id)).flatMap(({ pieces }) => pieces),
        says: language.pattern.large(ids.map(telling.cut), much(same[0]!), off, kept),
      };
    });
}
