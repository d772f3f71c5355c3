import { multiply, rational, subtract } from '../measure/rational.ts';
import { clothOf, cutOf, type Vocabulary } from './naming.ts';
import { different, grouped } from './sentences.ts';
import type { Step, StepPart } from './step.ts';

/** @returns how the strips of a unit are cut into triangles, strips of one size told once: a sentence or more for each */
export function stripWords({ parts }: Pick<Step, 'parts'>, words: Vocabulary): readonly string[] {
  const nested = parts.filter((part) => 'cut' in part.from && cutOf(part, words).nested);
  const key = (part: StepPart): string => {
    const { width, nested: lie } = cutOf(part, words);
    return [lie!.form, width.n, width.d, lie!.measure.n, lie!.measure.d].join(' ');
  };
  return grouped(nested, key).map((alike) => howToCut(alike, words));
}

function howToCut(alike: readonly [StepPart, ...StepPart[]], words: Vocabulary): string {
  const { telling, phrases, unit, seam } = words;
  const { width, nested } = cutOf(alike[0], words);
  const cloths = different(alike.map(clothOf)).map(telling.cloth);
  const [height, measure] = [telling.length(width, unit), telling.length(nested!.measure, unit)];
  if (nested!.form === 'half') return phrases.strips.halves(cloths, height, measure);
  // h = w/2 + 2s, and the long side with its tips cut across is w + 2s.
  const long = multiply(rational(2), subtract(width, seam));
  return phrases.strips.quarters(cloths, height, measure, telling.length(long, unit));
}
