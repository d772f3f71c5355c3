import { listed } from '../../../measure/words.ts';
import { sentence } from '../../sentences.ts';
import type { StripSetPhrases } from '../strip-sets.ts';
import { sizeName } from './things.ts';

const ORDERS = { row: 'left to right', column: 'top to bottom' } as const;

export const stripSets: StripSetPhrases = {
  sew: (strips, lie, oneSize) => {
    const names = strips.map(({ count, cloth, size }) => `${count.n > 1 ? `${count.said} × ` : ''}${cloth}${oneSize ? '' : ` ${sizeName(size)}`}`);
    return sentence(`Sew long strips side by side, ${ORDERS[lie]}: ${listed(names)}${oneSize ? `, each ${sizeName(oneSize)}` : ''}`);
  },
  sets: ({ said }) => `Make ${said} such strip sets.`,
  cut: (sets, segments, width, beyond) =>
    sentence(
      `Press, straighten the ends and cut ${sets.n > 1 ? 'each set' : 'the set'} across into ${segments.said} segments ${width} wide` +
        (beyond ? `, ${beyond.said} more than needed${sets.n > 1 ? ' in all' : ''}` : ''),
    ),
};
