import { parseLength } from '../measure/lengths.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import type { Rational } from '../measure/rational.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { usualRange, type SizeRange } from '../pattern/sizes.ts';
import { wrongUnit } from './choices.ts';
import type { WishedRange } from './order.ts';

/** @returns the sizes asked for, the usual ones where nothing is; or in one sentence which length is none */
export function readRange(typed: WishedRange, pattern: Pattern): Result<SizeRange> {
  const { unit } = pattern.block;
  const given: { -readonly [name in keyof SizeRange]?: Rational } = {};
  for (const name of ['from', 'to', 'step'] as const) {
    const text = typed[name];
    if (text === undefined) continue;
    const read = parseLength(text);
    if (!read.ok) return bad('usage', `--${name}: ${read.problem.sentence}`);
    if ((read.value.unit ?? unit) !== unit) return wrongUnit(`--${name}`, unit);
    given[name] = read.value.value;
  }
  return good(usualRange(pattern, given));
}
