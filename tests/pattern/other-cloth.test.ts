import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, Look } from '../../src/block/block.ts';
import { inLooks, keepColourway, looksOf, takeColourway } from '../../src/block/colour/colourways.ts';
import { setFuses, setSame } from '../../src/block/fabrics.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { block as anyBlock, must, SEED } from '../block/drawn.ts';
import { blockNamed, namesIn } from './made.ts';

/** What is sewn, and in which order; how it is pressed may follow the colours. */
const sewn = ({ figures, piecing, units, cuts, steps, divisions }: Pattern) => ({
  figures, piecing, units, cuts,
  steps: steps.map(({ makes, kind, count, method, parts, joins, finished, unfinished, trimmed, pieces }) => ({
    makes, kind, count, method, parts, joins, finished, unfinished, trimmed, pieces,
  })),
  divisions: divisions.map(({ fabric, places, more }) => ({ fabric, places, more })),
});

const patternOf = (block: Block) => makePattern(block, {}, 'chosen way');

/** Other looks for all of a block's fabrics, no two alike: those it has in another order, or new ones. */
const otherLooks = (block: Block, seed: number): Readonly<Record<string, Look>> => {
  const ids = block.fabrics.map(({ id }) => id);
  const own = block.fabrics.map(({ id: _, ...look }): Look => look);
  const fresh = ids.map((_, i): Look => ({ name: `Tide ${i}`, color: `#${((seed * 7919 + i * 104729) % 0xffffff).toString(16).padStart(6, '0')}`, ...(i % 2 === seed % 2 && { directional: true, value: 'dark' }) }));
  const turned = ids.map((_, i) => (i + 1 + (seed % Math.max(1, ids.length - 1))) % ids.length);
  return looksOf(ids, turned, seed % 2 === 0 ? own : fresh);
};

describe('the block in other cloth', () => {
  it('is sewn as before to the last seam, where no two fabrics become one', () => {
    const gallery = namesIn('gallery').filter((_, i) => i % 4 === 0).map((name) => blockNamed('gallery', name));
    [...fc.sample(anyBlock, { ...SEED, numRuns: 20 }), ...gallery].forEach((block, seed) => {
      const [before, after] = [patternOf(block), patternOf(must(inLooks(block, otherLooks(block, seed))))];
      if (!before.ok || !after.ok) expect(after.ok).toBe(before.ok);
      else expect(sewn(after.value), block.name).toEqual(sewn(before.value));
    });
  });

  it('is the very same pattern again once its first colourway is taken back', () => {
    const block = must(keepColourway(blockNamed('gallery', 'ohio-star-9-three-fabrics'), 'First'));
    const other = must(inLooks(block, otherLooks(block, 2)));
    expect(must(patternOf(must(takeColourway(other, 'First'))))).toEqual(must(patternOf(block)));
  });
});

describe('areas that come to be of one cloth', () => {
  const star = blockNamed('gallery', 'ohio-star-9-three-fabrics');
  const [one, other] = star.fabrics.map(({ id }) => id);
  const shared = must(setSame(star, other!, one!));

  it('keep the seams between them, and the pattern says where', () => {
    const [before, after] = [must(patternOf(star)), must(patternOf(shared))];
    expect(after.figures.seams).toBe(before.figures.seams);
    expect(after.withinCloths.map(({ fabric }) => fabric)).toEqual([one]);
    expect(after.notes.filter((note) => /^Between areas of .*, all cut from one cloth, the seams? stay/.test(note)).length).toBe(1);
    expect(before.notes.join('\n')).not.toContain('Between areas');
  });

  it('or become one, and nothing is said of seams that are not there', () => {
    const fused = must(patternOf(setFuses(shared, true)));
    expect(fused.withinCloths).toEqual([]);
    expect(fused.figures.seams).toBeLessThan(must(patternOf(shared)).figures.seams);
  });
});
