import type { Cut } from '../cutting/cut.ts';
import { multiply, rational, subtract } from '../measure/rational.ts';
import { type Vocabulary } from './naming.ts';
import { different } from './sentences.ts';
import type { Step } from './step.ts';

/** @returns how the strips of a unit are cut into triangles, strips of one size told once: a sentence or more for each */
export function stripWords({ parts }: Pick<Step, 'parts'>, words: Vocabulary): readonly string[] {
  const sizes = new Map<string, { readonly cut: Cut; readonly cloths: string[] }>();
  for (const { from } of parts) {
    if (!('cut' in from)) continue;
    const cut = words.cut(from.cut);
    if (!cut.nested) continue;
    const { form, measure } = cut.nested;
    const key = [form, cut.width.n, cut.width.d, measure.n, measure.d].join(' ');
    const known = sizes.get(key) ?? { cut, cloths: [] };
    known.cloths.push(from.fabric);
    sizes.set(key, known);
  }
  return [...sizes.values()].map(({ cut, cloths }) => howToCut(cut, different(cloths), words));
}

function howToCut({ width, nested }: Cut, fabrics: readonly string[], { telling, phrases, unit, seam }: Vocabulary): string {
  const cloths = fabrics.map((id) => telling.cloth(id));
  const [height, measure] = [telling.length(width, unit), telling.length(nested!.measure, unit)];
  if (nested!.form === 'half') return phrases.strips.halves(cloths, height, measure);
  // h = w/2 + 2s, and the long side with its tips cut across is w + 2s.
  const long = multiply(rational(2), subtract(width, seam));
  return phrases.strips.quarters(cloths, height, measure, telling.length(long, unit));
}
