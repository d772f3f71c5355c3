import { listed } from '../../../measure/words.ts';
import type { Places, PointPhrases } from '../points.ts';
import { numbers } from './numbers.ts';

/** @returns "2 and 5, counted from the left", "seam 1: 2; seam 3: 1 and 2; counted from the top" */
function placesName({ at, from }: Places): string {
  const single = at.length === 1 && at[0]!.seam === null;
  const said = at.map(({ seam, places }) => `${seam === null ? '' : `seam ${seam}: `}${numbers(places)}`);
  return `${said.join('; ')}${single ? ',' : ';'} counted from ${from.map((end) => `the ${end}`).join(' or ')}`;
}

const where = (places: Places | 'everywhere' | null, what: string): readonly string[] =>
  places === null
    ? []
    : [places === 'everywhere' ? `there they ${what}` : `at ${places.count.said} of the ${places.of.said} places (${placesName(places)}) two ${what}`];

export const points: PointPhrases = {
  nest: 'Nest the seams where they meet.',
  match: (nests, sameWay, open) =>
    `${nests ? 'Nest' : 'Match'} the seams where they meet; ` +
    `${listed([...where(sameWay, 'lie the same way'), ...where(open, 'do not nest, for one lies open')])}, so pin ${nests ? 'there' : 'them'}.`,
};
