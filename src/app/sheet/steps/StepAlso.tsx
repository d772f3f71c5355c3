import type { ReactNode } from 'react';
import { alsoOf } from '../../../pattern/also.ts';
import type { Pattern } from '../../../pattern/pattern.ts';
import type { Step } from '../../../sewing/step.ts';
import { Prose } from '../Length.tsx';

/** What is told of each pattern's steps: all of them at once, since the first explains what the others only name. */
const told = new WeakMap<Pattern, readonly (string | null)[]>();

/** What else is worth saying of a step, where there is something. */
export default function StepAlso({ step, pattern }: { readonly step: Step; readonly pattern: Pattern }): ReactNode {
  const all = told.get(pattern) ?? alsoOf(pattern);
  told.set(pattern, all);
  const also = all[step.number - 1];
  return also ? (
    <p className="step-text">
      <Prose text={also} />
    </p>
  ) : null;
}
