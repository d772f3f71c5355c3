import type { Cut } from '../cutting/cut.ts';
import { printLength } from '../measure/lengths.ts';
import { multiply, rational, subtract } from '../measure/rational.ts';
import { listed } from '../measure/words.ts';
import { clothName, type Vocabulary } from './naming.ts';
import { different, sentence } from './sentences.ts';
import type { Step } from './step.ts';

/**
 * @returns how the strips of a unit are cut into triangles, strips of one size told once; empty where it has none. Each sentence of it
 * ends with a blank, for what is sewn comes after.
 */
export function stripWords({ parts }: Pick<Step, 'parts'>, words: Vocabulary): string {
  const sizes = new Map<string, { readonly cut: Cut; readonly cloths: string[] }>();
  for (const { from } of parts) {
    if (!('cut' in from)) continue;
    const cut = words.cut(from.cut);
    if (!cut.nested) continue;
    const key = `${cut.nested.form} ${printLength(cut.width, words.unit)} ${printLength(cut.nested.measure, words.unit)}`;
    const known = sizes.get(key) ?? { cut, cloths: [] };
    known.cloths.push(clothName(from.fabric, words));
    sizes.set(key, known);
  }
  return [...sizes.values()].map(({ cut, cloths }) => `${howToCut(cut, listed(different(cloths)), words)} `).join('');
}

function howToCut({ width, nested }: Cut, whose: string, { unit, seam }: Vocabulary): string {
  const measure = printLength(nested!.measure, unit);
  const strips = `the ${whose} strips ${printLength(width, unit)} high`;
  if (nested!.form === 'half') {
    return sentence(
      `Cut ${strips} into triangles, head to tail: from the straight end measure ${measure} along one edge and cut slanting back at 45° ` +
      `to the other edge; from there measure ${measure} on along that edge and cut straight across; go on so. ` +
      `Cut off the tip that is left straight across, so that both short sides measure ${printLength(width, unit)}`,
    );
  }
  // h = w/2 + 2s, and the long side with its tips cut across is w + 2s.
  const long = multiply(rational(2), subtract(width, seam));
  return sentence(
    `Cut ${strips} into triangles, head to tail: cut one end slanting at 45°, from its tip measure ${measure} along the edge and cut ` +
    `slanting back at 45°; from where that ends measure ${measure} on along the other edge, and go on so. ` +
    `Cut off the two sharp tips straight across the long side, so that it measures ${printLength(long, unit)}`,
  );
}
