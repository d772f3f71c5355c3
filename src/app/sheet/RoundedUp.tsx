import { useMemo, type ReactNode } from 'react';
import { largeLines } from '../../pattern/large-lines.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { Prose } from './Length.tsx';

/** By how much cuts are rounded up to the ruler, and where that is trimmed away. */
export default function RoundedUp({ pattern }: { readonly pattern: Pattern }): ReactNode {
  const lines = useMemo(() => largeLines(pattern), [pattern]);
  return (
    <ul className="rounded-up">
      {lines.map(({ says }) => (
        <li key={says}>
          <Prose text={says} />
        </li>
      ))}
    </ul>
  );
}
