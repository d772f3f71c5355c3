import { listed } from '../../measure/words.ts';
import { compareAlong } from '../../geometry/point.ts';
import { different } from '../sentences.ts';
import type { Join, SeamPoint } from '../step.ts';
import { ranges } from './words.ts';

/** @returns what to do where seams meet across the seams of a step, and at which of the places they do not nest */
export function matching(points: readonly SeamPoint[], joins: readonly Join[]): string {
  if (points.length === 0) return '';
  const places = placesOf(points, joins);
  const where = (lie: SeamPoint['lie']): string | null => {
    const here = places.filter(({ point }) => point.lie === lie);
    if (here.length === 0) return null;
    if (here.length === points.length) return 'there';
    return `at ${here.length} of the ${points.length} places (${named(here, joins, places)})`;
  };
  const told = [
    [where('the same way'), 'lie the same way'],
    [where('open'), 'do not nest, for one lies open'],
  ].flatMap(([at, what]) => (at ? [at === 'there' ? `there they ${what!}` : `${at} two ${what!}`] : []));
  if (told.length === 0) return ' Nest the seams where they meet.';
  const nests = points.some(({ lie }) => lie === 'opposite ways');
  return ` ${nests ? 'Nest' : 'Match'} the seams where they meet; ${listed(told)}, so pin ${nests ? 'there' : 'them'}.`;
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

/** @returns "2 and 5, counted from the left", "seam 1: 2; seam 3: 1 and 2; counted from the top" */
function named(here: readonly Place[], joins: readonly Join[], all: readonly Place[]): string {
  const seams = different(here.map(({ point }) => point.join));
  const ends = different(seams.map((join) => (isUpright(joins[join]!) ? 'the top' : 'the left')));
  const counted = `counted from ${ends.join(' or ')}`;
  const numbers = (join: number): string => ranges(here.flatMap(({ point, number }) => (point.join === join ? [number] : [])));
  if (different(all.map(({ point }) => point.join)).length === 1) return `${numbers(seams[0]!)}, ${counted}`;
  return `${seams.map((join) => `seam ${join + 1}: ${numbers(join)}`).join('; ')}; ${counted}`;
}

const isUpright = ({ from, to }: Join): boolean => from.x * to.w === to.x * from.w;
