import { listed } from '../../../measure/german-words.ts';
import type { Places, PointPhrases } from '../points.ts';
import { numbers } from './numbers.ts';

/** @returns "2 und 5, von links gezählt", "Naht 1: 2; Naht 3: 1 und 2; von oben gezählt" */
function placesName({ at, from }: Places): string {
  const single = at.length === 1 && at[0]!.seam === null;
  const said = at.map(({ seam, places }) => `${seam === null ? '' : `Naht ${seam}: `}${numbers(places)}`);
  return `${said.join('; ')}${single ? ',' : ';'} ${from.map((end) => (end === 'left' ? 'von links' : 'von oben')).join(' oder ')} gezählt`;
}

const where = (places: Places | 'everywhere' | null, they: string, two: string): readonly string[] =>
  places === null
    ? []
    : [places === 'everywhere' ? `dort ${they}` : `an ${places.count.said} der ${places.of.said} Stellen (${placesName(places)}) ${two}`];

export const points: PointPhrases = {
  nest: 'Wo Nähte aufeinandertreffen, sie ineinandergreifen lassen.',
  match: (nests, sameWay, open) =>
    `Wo Nähte aufeinandertreffen, sie ${nests ? 'ineinandergreifen lassen' : 'genau aufeinanderlegen'}; ` +
    `${listed([
      ...where(sameWay, 'liegen sie in dieselbe Richtung', 'liegen zwei in dieselbe Richtung'),
      ...where(open, 'greifen sie nicht ineinander, weil eine auseinandergebügelt ist', 'greifen zwei nicht ineinander, weil eine auseinandergebügelt ist'),
    ])}: ${nests ? 'dort' : 'alle'} feststecken.`,
};
