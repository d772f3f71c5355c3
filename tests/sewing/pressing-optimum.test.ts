import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Pressed, Pressing, Step } from '../../src/sewing/step.ts';
import { drawings, EVERYTHING, tiled } from '../geometry/drawings.ts';
import { costOf, leastOf, modelOf } from './pressing-optimum.ts';
import { untrueOf } from './pressing-told.ts';
import { darkness, FILES, sewnBy, sewnFrom } from './told.ts';

/*
 * `DRAWINGS=500 npx vitest run --project engine tests/sewing/pressing-optimum.test.ts` tries that many random drawings; a usual run a few.
 */
const MANY = Number(process.env['DRAWINGS'] ?? 15);

async function off({ steps, pressing }: { readonly steps: readonly Step[]; readonly pressing: Pressing }): Promise<readonly string[]> {
  const model = modelOf(steps, darkness);
  const pressed = new Map(steps.flatMap(({ number, pressed: ways }) => ways.map((way, j): [string, Pressed] => [`${number} ${j}`, way])));
  const [found, least] = [costOf(model, (name) => pressed.get(name)!), await leastOf(model)];
  return [
    ...(found.apart === pressing.apart ? [] : [`${pressing.apart} pairs are said to lie the same way, and ${found.apart} do`]),
    ...(found.apart === least.apart ? [] : [`${found.apart} pairs lie the same way, where ${least.apart} could`]),
    ...(found.trouble === least.trouble ? [] : [`${found.trouble} is against it, where ${least.trouble} could be`]),
    // One step makes all copies of a unit, so all are pressed alike.
    ...(new Set(steps.map(({ makes }) => makes)).size === steps.length ? [] : ['a unit is made in two steps']),
    ...(pressing.proved && pressing.apart === pressing.apartAtLeast ? [] : ['it is not proved']),
  ];
}

describe('no pressing is better', () => {
  it.each(FILES)('for %s, and its seams nest where the steps say so, and only there', async (file) => {
    const { drawing, step, piecing } = sewnFrom(file);
    const sewn = sewnBy(drawing, step, piecing);
    expect([...(await off(sewn)), ...untrueOf(sewn.steps)]).toEqual([]);
  });

  it(
    `for random drawings (${MANY})`,
    async () => {
      const drawn = fc.oneof(drawings({ ...EVERYTHING, cells: 8, strokes: 16, free: 0 }), drawings({ ...EVERYTHING, cells: 5 }), tiled);
      const wrong: string[] = [];
      for (const drawing of fc.sample(drawn, { seed: 20261125, numRuns: MANY })) {
        for (const piecing of waysToSew(drawing)) wrong.push(...(await off(sewnBy(drawing, rational(1), piecing))));
      }
      expect(wrong).toEqual([]);
    },
    Math.max(60_000, MANY * 2000),
  );
});
