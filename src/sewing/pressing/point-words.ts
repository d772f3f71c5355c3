import { compareAlong } from '../../geometry/point.ts';
import { counted, type Vocabulary } from '../naming.ts';
import type { Places } from '../phrases/points.ts';
import { different } from '../sentences.ts';
import type { Join, SeamPoint } from '../step.ts';
import { ranges } from './ranges.ts';

/** @returns what to do where seams meet across the seams of a step, and at which of the places they do not nest; nothing where none meet */
export function matching(points: readonly SeamPoint[], joins: readonly Join[], words: Vocabulary): readonly string[] {
  if (points.length === 0) return [];
  const all = placesOf(points, joins);
  const where = (lie: SeamPoint['lie']): Places | 'everywhere' | null => {
    const here = all.filter(({ point }) => point.lie === lie);
    if (here.length === 0) return null;
    return here.length === all.length ? 'everywhere' : { count: counted(here.length, words), of: counted(all.length, words), ...named(here, joins, all) };
  };
  const { nest, match } = words.phrases.points;
  const [sameWay, open] = [where('the same way'), where('open')];
  return [sameWay || open ? match(points.some(({ lie }) => lie === 'opposite ways'), sameWay, open) : nest];
}

/** A point with its number along its join, from the left, or from the top of an upright seam. */
interface Place {
  readonly point: SeamPoint;
  readonly number: number;
}

function placesOf(points: readonly SeamPoint[], joins: readonly Join[]): readonly Place[] {
  return joins.flatMap((_, join) =>
    points
      .filter((point) => point.join === join)
      .sort((a, b) => compareAlong(a.at, b.at))
      .map((point, i) => ({ point, number: i + 1 })),
  );
}

/** @returns places by their numbers, seam by seam, and from where they are counted */
function named(here: readonly Place[], joins: readonly Join[], all: readonly Place[]): Pick<Places, 'at' | 'from'> {
  const seams = different(here.map(({ point }) => point.join));
  const single = different(all.map(({ point }) => point.join)).length === 1;
  return {
    at: seams.map((join) => ({
      seam: single ? null : join + 1,
      places: ranges(here.flatMap(({ point, number }) => (point.join === join ? [number] : []))),
    })),
    from: different(seams.map((join) => (isUpright(joins[join]!) ? 'top' : 'left'))),
  };
}

const isUpright = ({ from, to }: Join): boolean => from.x * to.w === to.x * from.w;
