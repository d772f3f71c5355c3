import { useEffect, useMemo, useState } from 'react';
import { effectNow, offeredFor, optionOf, type Effect, type MethodOption, type MethodScope } from '../../pattern/effects.ts';
import type { Pattern, UnitLine } from '../../pattern/pattern.ts';

/** What can be chosen, with what each takes as far as that is known yet. */
export interface Offered {
  readonly method: MethodOption['method'];
  readonly option: MethodOption | null;
}

/** How long the figures are worked out before the hand has its turn, in ms. */
const TURN = 20;

/**
 * Works out what each method takes, one after another in the pauses, for large blocks take their time.
 * @returns everything that is offered, and what the pattern takes as it is; what was known of the pattern before stands until then
 */
export function useEffects(pattern: Pattern, line: UnitLine, scope: MethodScope): { readonly offered: readonly Offered[]; readonly now: Effect | null } {
  const methods = useMemo(() => offeredFor(pattern, line, scope), [pattern, line, scope]);
  const whose = `${line.unit.id} ${scope}`;
  const [known, setKnown] = useState<{ readonly whose: string; readonly now: Effect; readonly options: readonly MethodOption[] } | null>(null);
  useEffect(() => {
    let now: Effect | null = null;
    let options: readonly MethodOption[] = [];
    const work = (): void => {
      const end = performance.now() + TURN;
      now ??= effectNow(pattern);
      while (options.length < methods.length && performance.now() < end) {
        options = [...options, optionOf(pattern, line, scope, methods[options.length]!)];
      }
      // Figures of two patterns are never shown side by side.
      if (options.length === methods.length) setKnown({ whose, now, options });
      else timer = setTimeout(work);
    };
    let timer = setTimeout(work);
    return () => clearTimeout(timer);
  }, [pattern, line, scope, methods, whose]);
  const options = known?.whose === whose ? known.options : [];
  return {
    offered: methods.map((method) => ({ method, option: options.find((each) => each.method === method) ?? null })),
    now: known?.whose === whose ? known.now : null,
  };
}
