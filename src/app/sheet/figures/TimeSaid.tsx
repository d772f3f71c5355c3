import { useMemo, type ReactNode } from 'react';
import type { Pattern } from '../../../pattern/pattern.ts';
import { aboutTime } from '../../../pattern/time-words.ts';
import { workTime } from '../../../pattern/work-time.ts';
import { useStore } from '../../store.ts';
import { times } from './assumed.ts';

/** About how long a pattern takes, in a few words. */
export default function TimeSaid({ pattern }: { readonly pattern: Pattern }): ReactNode {
  const assumed = useStore(times, (now) => now);
  const { total, perBlock } = useMemo(() => workTime(pattern, assumed), [pattern, assumed]);
  const { blocks } = pattern.choices;
  return (
    <>
      About {aboutTime(total)} of work{blocks > 1 && `, ${aboutTime(perBlock)} a block`}
    </>
  );
}
