import { sentence } from '../../sentences.ts';
import type { StepPhrases } from '../steps.ts';
import { sizeName, thingName } from './things.ts';

export const steps: StepPhrases = {
  onePiece: (piece) => `The block is one piece, ${thingName(piece)}: there is nothing to sew.`,
  measures: (what, size, trimmed) =>
    sentence(`${trimmed ? 'Trim to' : what === 'block' ? 'The block measures' : 'It measures'} ${sizeName(size)}`),
  make: ({ said }) => `Make ${said}.`,
  mirrored: (letter) => `${letter} is its mirror image: keep the two apart.`,
};
