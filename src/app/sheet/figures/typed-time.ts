import { bad, good, type Result } from '../../../measure/problem.ts';

/** The longest that one thing may take, in seconds: an hour. */
const MOST = 3600;

/** @returns whether this can be how long one thing takes, in seconds */
export const isTime = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= MOST;

const NUMBER = '(\\d{1,6}(?:[.,]\\d{1,3})?|[.,]\\d{1,3})';
const TIME = new RegExp(`^(?:${NUMBER}\\s*(?:m|min|mins|minutes?)\\.?)?\\s*(?:${NUMBER}\\s*(?:s|sec|secs|seconds?)?\\.?)?$`, 'i');

/** @returns seconds from what somebody typed: "15", "7.5 s", "1,5 min", "1 min 30 s"; a problem in one sentence else */
export function typedTime(text: string): Result<number> {
  const said = text.trim();
  const [whole, minutes, seconds] = TIME.exec(said) ?? [];
  const number = (digits: string | undefined): number => Number((digits ?? '0').replace(',', '.'));
  const time = number(minutes) * 60 + number(seconds);
  if (!whole || !isTime(time)) {
    const shown = said.length > 30 ? `${said.slice(0, 30)}…` : said;
    return bad('time', `${said === '' ? 'Nothing' : `“${shown}”`} is no time for this: type seconds from 0 to ${MOST}, such as 15, 7.5 or 1 min 30 s.`);
  }
  return good(time);
}
