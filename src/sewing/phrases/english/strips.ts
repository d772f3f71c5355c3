import { listed } from '../../../measure/words.ts';
import { sentence } from '../../sentences.ts';
import type { StripPhrases } from '../strips.ts';

const cut = (cloths: readonly string[], height: string): string =>
  `Cut the ${listed(cloths)} strips ${height} high into triangles, head to tail: `;

export const strips: StripPhrases = {
  halves: (cloths, height, measure) =>
    sentence(
      `${cut(cloths, height)}from the straight end measure ${measure} along one edge and cut slanting back at 45° ` +
        `to the other edge; from there measure ${measure} on along that edge and cut straight across; go on so. ` +
        `Cut off the tip that is left straight across, so that both short sides measure ${height}`,
    ),
  quarters: (cloths, height, measure, long) =>
    sentence(
      `${cut(cloths, height)}cut one end slanting at 45°, from its tip measure ${measure} along the edge and cut ` +
        `slanting back at 45°; from where that ends measure ${measure} on along the other edge, and go on so. ` +
        `Cut off the two sharp tips straight across the long side, so that it measures ${long}`,
    ),
};
