import { listed } from '../../../measure/german-words.ts';
import { sentence } from '../../sentences.ts';
import type { StripSetPhrases } from '../strip-sets.ts';
import { sizeName } from './things.ts';

const ORDERS = { row: 'von links nach rechts', column: 'von oben nach unten' } as const;

export const stripSets: StripSetPhrases = {
  sew: (strips, lie, oneSize) => {
    const names = strips.map(({ count, cloth, size }) => `${count.n > 1 ? `${count.said} × ` : ''}${cloth}${oneSize ? '' : ` (${sizeName(size)})`}`);
    return sentence(`Lange Streifen nebeneinander nähen, ${ORDERS[lie]}: ${listed(names)}${oneSize ? `, je ${sizeName(oneSize)}` : ''}`);
  },
  sets: ({ said }) => `${said} solche Streifensätze nähen.`,
  cut: (sets, segments, width, beyond) =>
    sentence(
      `Bügeln, die Enden begradigen und ${sets.n > 1 ? 'jeden Satz' : 'den Satz'} quer in ${segments.said} Segmente von ${width} Breite schneiden` +
        (beyond ? `, ${sets.n > 1 ? 'insgesamt ' : ''}${beyond.said} mehr als nötig` : ''),
    ),
};
