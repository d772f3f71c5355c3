import { leastCloth } from '../cutting/cloth/least.ts';
import type { Solver } from '../cutting/cloth/solver.ts';
import { equals } from '../measure/rational.ts';
import { noMargin } from './cloth-warnings.ts';
import { withLayout } from './cloths.ts';
import type { Cloth, Pattern } from './pattern.ts';

/** @returns whether a layout may still be improved: it takes more than the bound */
export const mayTakeLess = ({ layout }: Cloth): boolean => !equals(layout.takes, layout.least);

/**
 * @param open loads the solver: called once, and only where a fabric's first layout is not known to be the least
 * @returns the pattern with every fabric cut from the least cloth that is found
 */
export async function withLeastCloths(pattern: Pattern, open: () => Promise<Solver>): Promise<Pattern> {
  if (!pattern.fabrics.some(mayTakeLess)) return pattern;
  const solver = await open();
  const { choices, block } = pattern;
  const fabrics = pattern.fabrics.map((cloth) =>
    mayTakeLess(cloth) ? withLayout(cloth, leastCloth(cloth.order, solver), choices, block.unit) : cloth,
  );
  const margin = noMargin({ list: pattern, fabrics, block, choices });
  const warnings = [...pattern.warnings.filter(({ code }) => code !== 'no margin'), ...(margin === null ? [] : [margin])];
  return { ...pattern, fabrics, warnings };
}
