import { sentence } from '../../sentences.ts';
import type { StepPhrases } from '../steps.ts';
import { sizeName, thingName } from './things.ts';

export const steps: StepPhrases = {
  onePiece: (piece) => `Der Block ist ein einziges Stück, ${thingName(piece)}: Zu nähen gibt es nichts.`,
  measures: (what, size, trimmed) =>
    sentence(
      trimmed ? `Auf ${sizeName(size)} zurückschneiden` : `${what === 'block' ? 'Der Block' : 'Die Einheit'} misst mit Nahtzugabe ${sizeName(size)}`,
    ),
  make: ({ said }) => `${said} Stück nähen.`,
  mirrored: (letter) => `Einheit ${letter} ist das Spiegelbild davon: die beiden nicht verwechseln.`,
};
