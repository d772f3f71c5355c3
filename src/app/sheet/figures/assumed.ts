import { ACTS, USUAL_TIMES, type Act, type Assumptions } from '../../../pattern/work-time.ts';
import { createStore } from '../../store.ts';
import { remember, remembered } from '../../views/remembered.ts';
import { isTime } from './typed-time.ts';

const NAME = 'piecewright times';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value);

function begun(): Assumptions {
  const kept = remembered(NAME, isRecord, {});
  const own = ACTS.flatMap(({ act }) => (isTime(kept[act]) ? [[act, kept[act]] as const] : []));
  return { ...USUAL_TIMES, ...Object.fromEntries(own) };
}

/** How long each thing takes this maker, remembered in this browser. */
export const times = createStore<Assumptions>(begun());

// The usual ones are not remembered, so that they may become better.
times.subscribe(() => remember(NAME, Object.fromEntries(Object.entries(times.get()).filter(([act, time]) => time !== USUAL_TIMES[act as Act]))));
