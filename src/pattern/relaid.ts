import type { ClothLayout } from '../cutting/layout.ts';
import { equals } from '../measure/rational.ts';
import { noMargin } from './cloth-warnings.ts';
import { withLayout } from './cloths.ts';
import { namesIn, plainSpeech } from './plain-speech.ts';
import type { Cloth, Pattern } from './pattern.ts';

/** @returns whether a layout may still be improved: it takes more than its bound */
export const mayTakeLess = ({ layout }: Pick<Cloth, 'layout'>): boolean => !equals(layout.takes, layout.least);

/** @returns a pattern whose fabrics are cut by other layouts of the same orders, by fabric id, and all that follows from that */
export function relaid(pattern: Pattern, layouts: ReadonlyMap<string, ClothLayout>): Pattern {
  const { choices, block } = pattern;
  const speech = plainSpeech(namesIn(pattern));
  const fabrics = pattern.fabrics.map((cloth) => {
    const layout = layouts.get(cloth.fabric.id);
    return layout === undefined ? cloth : withLayout(cloth, layout, choices, block.unit, speech);
  });
  const margin = noMargin({ list: pattern, fabrics, block, choices, speech });
  const graver = pattern.warnings.filter(({ code }) => GRAVER.some((one) => one === code));
  const others = pattern.warnings.filter((warning) => !graver.includes(warning) && warning.code !== 'no margin');
  return { ...pattern, fabrics, warnings: [...graver, ...(margin === null ? [] : [margin]), ...others] };
}

/** What comes before a missing margin. */
const GRAVER = ['outgrows its size', 'longer than the cloth'] as const;
