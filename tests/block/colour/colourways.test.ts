import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, Look } from '../../../src/block/block.ts';
import { inLooks, keepColourway, looksOf, rotated, shuffled, takeColourway, worn } from '../../../src/block/colour/colourways.ts';
import { rolesOf } from '../../../src/block/colour/roles.ts';
import { setFuses, setSame } from '../../../src/block/fabrics.ts';
import { parseBlock } from '../../../src/files/block-file.ts';
import type { Result } from '../../../src/measure/problem.ts';
import { makePattern } from '../../../src/pattern/make-pattern.ts';
import { patternJson } from '../../../src/pattern/pattern-json.ts';

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

const CLOTHS: readonly Look[] = ['#20304a', '#e8e2d4', '#b4553a', '#6d8f86', '#d9b44a'].map((color, i) => ({ name: `Cloth ${i}`, color }));

/** Four geese and pinwheels in three fabrics, written as a file; `legend` says which fabric stands where. */
const file = (legend: Readonly<Record<'a' | 'b' | 'c', string>>, seams: readonly unknown[] = []): Block => {
  const patches: { fabric: string; points: number[][] }[] = [];
  for (const [x, y] of [[0, 0], [2, 0], [0, 2], [2, 2]] as const) {
    patches.push({ fabric: legend.b, points: [[x, y], [x + 2, y], [x + 2, y + 2]] });
    patches.push({ fabric: legend.c, points: [[x, y], [x + 1, y], [x, y + 1]] });
  }
  const fabrics = [...new Set(Object.values(legend))].map((id) => ({ id, name: CLOTHS[Number(id)]!.name, color: CLOTHS[Number(id)]!.color }));
  return got(parseBlock(JSON.stringify({
    format: 'piecewright/block', version: 1, name: 'Skerry', finished: { width: '8', height: '8', unit: 'in' }, grid: { columns: 4, rows: 4 },
    fabrics, ground: legend.a, patches, ...(seams.length > 0 && { seams }),
  })));
};

/** Where b and c meet in the file above: c's long side within its corner, and where it lies beside the next corner's b. */
const BETWEEN = [
  ...[[0, 0], [2, 0], [0, 2], [2, 2]].map(([x, y]) => [[x! + 1, y!], [x! + 0.5, y! + 0.5]]),
  [[2, 0], [2, 1]], [[2, 2], [2, 3]],
];

const cutAndBought = (block: Block) => {
  const { cuts, fabrics, patches, seams, proof } = patternJson(got(makePattern(block))) as unknown as {
    cuts: { fabric: string }[]; fabrics: { id: string }[]; patches: number; seams: number; proof: { holds: boolean };
  };
  const names = new Map(block.fabrics.map(({ id, name }) => [id, name]));
  return {
    patches, seams, holds: proof.holds,
    // Letters follow from the picture's own order, which a seam within one cloth may change.
    cuts: cuts.map((cut) => ({ ...cut, id: undefined, for: undefined, uses: undefined, trimmedIn: undefined, fabric: names.get(cut.fabric) })).map((cut) => JSON.stringify(cut)).sort(),
    fabrics: fabrics.map((each) => JSON.stringify({ ...each, id: undefined, name: names.get(each.id) })).sort(),
  };
};

const drawn = file({ a: '0', b: '1', c: '2' });

describe('a colourway', () => {
  it('with as many cloths as fabrics is cut and bought as the same block painted so from the start', () => {
    const looks = looksOf(['0', '1', '2'], [3, 4, 0], CLOTHS);
    expect(cutAndBought(got(inLooks(drawn, looks)))).toEqual(cutAndBought(file({ a: '3', b: '4', c: '0' })));
  });

  it('that gives neighbours one cloth is cut as if they had been painted with it, and becomes one area where it should', () => {
    const looks = looksOf(['0', '1', '2'], [3, 4, 4], CLOTHS);
    const fused = setFuses(got(inLooks(drawn, looks)), true);
    expect(cutAndBought(fused)).toEqual(cutAndBought(file({ a: '3', b: '4', c: '4' })));
  });

  it('keeps the seams between such neighbours where nothing is said, as if they had been drawn', () => {
    const looks = looksOf(['0', '1', '2'], [3, 4, 4], CLOTHS);
    expect(cutAndBought(got(inLooks(drawn, looks)))).toEqual(cutAndBought(file({ a: '3', b: '4', c: '4' }, BETWEEN)));
  });

  it('is kept under a name and taken again', () => {
    const named = got(keepColourway(drawn, 'Dawn'));
    const dusk = got(keepColourway(got(inLooks(named, looksOf(['0', '1', '2'], [2, 2, 1], CLOTHS))), 'Dusk'));
    expect([worn(named), worn(dusk)]).toEqual(['Dawn', 'Dusk']);
    const again = got(takeColourway(dusk, 'Dawn'));
    expect(again.fabrics).toEqual(drawn.fabrics);
    expect(worn(again)).toBe('Dawn');
  });

  it('of looks handed round comes back after as many goes as there are fabrics, whatever is cut from what', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(4), { minLength: 3, maxLength: 3 }), fc.integer({ min: 1, max: 2 ** 32 - 1 }), (colouring, seed) => {
        const ids = ['0', '1', '2'];
        const block = got(inLooks(drawn, looksOf(ids, colouring, CLOTHS)));
        let now = block;
        for (let i = 0; i < 3; i++) now = got(inLooks(now, rotated(now, ids, 1)));
        expect(now.fabrics).toEqual(block.fabrics);
        const mixed = got(inLooks(block, shuffled(block, ids, seed)));
        expect(mixed.fabrics.map(({ color }) => color).sort()).toEqual(block.fabrics.map(({ color }) => color).sort());
        expect(got(rolesOf(mixed)).ids.length).toBe(new Set(colouring).size);
      }),
      { seed: 3, numRuns: 60 },
    );
  });

  it('a fabric cut from another one\'s cloth looks like it until it is cut from its own', () => {
    const same = got(setSame(drawn, '2', '1'));
    expect(same.fabrics[2]).toEqual({ ...same.fabrics[1], id: '2', same: '1' });
    expect(got(setSame(same, '2', null)).fabrics[2]).toEqual({ ...same.fabrics[1], id: '2' });
    const self = setSame(drawn, '2', '2');
    expect(self.ok).toBe(false);
  });
});
