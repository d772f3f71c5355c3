import { backPicture } from '../diagrams/back-picture.ts';
import type { Flow, Section } from './content.ts';
import type { Writing } from './writing.ts';

/** @returns the back of the block with the way every seam is pressed; null where nothing is sewn */
export function pressingSection({ pattern, words: { pressing, titles }, said }: Writing): Section | null {
  if (pattern.figures.seams === 0) return null;
  const { points, sameWay, open, proved } = pattern.pressing;
  const loose = sameWay + open;
  const nest = points === 0 ? pressing.noPoints : loose === 0 ? pressing.allNest(points) : pressing.someLoose(points, loose, proved);
  const line = (place: string, told: string): Flow => ({ flow: 'paragraph', said: said(`pressing/${place}`, told), look: 'plain' });
  const isOpen = pattern.steps.some(({ pressed }) => pressed.includes('open'));
  return {
    name: 'pressing',
    title: said('pressing/title', titles.pressing),
    ownPage: false,
    items: [
      {
        flow: 'together',
        items: [
          line('intro', pressing.intro),
          ...(isOpen ? [line('open', pressing.open)] : []),
          line('nest', nest),
          {
            flow: 'figures',
            at: 'pressing/picture',
            figures: [{ figure: { name: 'back', says: pressing.picture, ...backPicture(pattern) } }],
            most: 0.4,
          },
        ],
      },
    ],
  };
}
