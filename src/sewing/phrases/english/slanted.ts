import { listed } from '../../../measure/words.ts';
import type { Diagonal } from '../said.ts';
import type { SlantedPart, SlantedPhrases } from '../slanted.ts';
import { piecesName, thingName } from './things.ts';

/** How a rectangle is cut, as the cutting list says it: right side up, standing on its short side. */
const DIAGONALS: Readonly<Record<Diagonal, string>> = {
  falling: 'from the top left to the bottom right',
  rising: 'from the bottom left to the top right',
};

const ON_SHORT_SIDE = 'right side up, standing on a short side';

const slope = ({ place }: SlantedPart): string => `the ${place} slope`;

const pointEnds = (seam: string): string => `The point ends ${seam} inside the edge.`;

export const slanted: SlantedPhrases = {
  halfRectangles: (triangles, seam, cut) =>
    `Lay ${piecesName(triangles)} right sides together in pairs, long sides even and a tip standing out ` +
    `equally at either end; sew the long sides. The seam ends ${seam} inside two corners, not in them.` +
    (cut ? ` Cut both rectangles ${ON_SHORT_SIDE}, ${DIAGONALS[cut]}; the other diagonal gives the mirror image.` : ''),
  peak: (middle, one, other, seam) =>
    `Sew ${thingName(one.thing)} to ${slope(one)} of ${thingName(middle)} and press it out; ` +
    `sew ${thingName(other.thing)} to ${slope(other)}. ${pointEnds(seam)}` +
    (one.cut && other.cut
      ? ` The rectangles are cut ${ON_SHORT_SIDE}: for ${slope(one)} ${DIAGONALS[one.cut]}, for ${slope(other)} ${DIAGONALS[other.cut]}.`
      : ''),
  pointEnds,
  rounds(centre, rounds) {
    const said = rounds.map((round, i) => {
      const all =
        'shape' in round
          ? `${piecesName([round])} on all 4 sides`
          : listed(round.map(({ thing, place }) => `${thingName(thing)} to the ${place}`));
      return `${rounds.length > 1 ? `Round ${i + 1}` : 'Round it'}: ${all}.`;
    });
    return (
      `Begin with ${thingName(centre)} as the centre and sew triangles to its sides, middles matched, opposite ones first; ` +
      `press each outward before the next. ${said.join(' ')}`
    );
  },
  layOut(parts) {
    const names = parts.map(({ thing, place, cut }, i) => `${i + 1} ${thingName(thing)}, ${place}${cut ? `, cut ${DIAGONALS[cut]}` : ''}`);
    const rectangles = parts.some(({ cut }) => cut) ? ` Rectangles are cut ${ON_SHORT_SIDE}.` : '';
    return `Lay out the pieces as in the picture: ${names.join('; ')}.${rectangles}`;
  },
  sewInOrder: (order) =>
    `Sew ${order
      .map(({ first, second, then }) => `${second} to ${first}${then.length > 0 ? `, then ${listed(then)}` : ''}`)
      .join('; ')}.`,
  templatesLie: 'Templates are cut right side up.',
};
