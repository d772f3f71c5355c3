import { describe, expect, it } from 'vitest';
import { addFabric, deleteFabric, exchangeFabrics, recolourFabric, renameFabric, replaceFabric, setGround } from '../../src/block/fabrics.ts';
import { paint } from '../../src/block/painting.ts';
import { cell, cellsBetween } from '../../src/block/patch-shapes.ts';
import { patchAt, recolourPatch, removePatch, toggleWhole, toggleWholes } from '../../src/block/patches.ts';
import { drawSeam, removeSeam } from '../../src/block/seams.ts';
import { must, seen, unpainted } from './drawn.ts';

const painted = must(paint(must(paint(unpainted(3, 3), 'teal', cellsBetween(0, 0, 2, 2))), 'rust', cell(1, 1)));

describe('the fabrics of a block', () => {
  it('take one more, unless its id is there already', () => {
    const gull = { id: 'gull', name: 'Gull', color: '#d1d5d8' };
    expect(must(addFabric(painted, gull)).fabrics).toEqual([...painted.fabrics, gull]);
    expect(addFabric(painted, { ...gull, id: 'teal' })).toMatchObject({ problem: { code: 'duplicate-fabric' } });
    expect(addFabric(painted, { ...gull, color: 'grey' })).toMatchObject({ problem: { code: 'not-a-color' } });
  });

  it('are called and coloured anew', () => {
    expect(must(renameFabric(painted, 'teal', 'Deep water')).fabrics[1]).toEqual({ id: 'teal', name: 'Deep water', color: '#2f5d62' });
    expect(must(recolourFabric(painted, 'teal', '#0A0B0C')).fabrics[1]!.color).toBe('#0a0b0c');
    expect(renameFabric(painted, 'plum', 'Plum')).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });

  it('lose one, and another takes its place everywhere', () => {
    const without = must(deleteFabric(painted, 'oat', 'rust'));
    expect(without.fabrics.map((fabric) => fabric.id)).toEqual(['teal', 'rust']);
    expect(without.ground).toBe('rust');
    expect(must(deleteFabric(painted, 'teal', 'oat')).patches.map((patch) => patch.fabric)).toEqual(['oat', 'rust']);
    expect(deleteFabric(painted, 'teal', 'teal')).toMatchObject({ problem: { code: 'own-place' } });
    expect(deleteFabric(painted, 'teal', 'plum')).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });

  it('take along what was chosen about their cloth when they go', () => {
    const fatQuarters = { sold: 'fat quarter' as const };
    const chosen = { ...painted, choices: { blocks: 2, cloths: { teal: fatQuarters, rust: fatQuarters } } };
    const one = must(deleteFabric(chosen, 'teal', 'oat'));
    expect(one.choices).toEqual({ blocks: 2, cloths: { rust: fatQuarters } });
    expect(must(deleteFabric(one, 'rust', 'oat')).choices).toEqual({ blocks: 2 });
    // Exchanged or replaced, a fabric is still on the tray, and its cloth is bought as before.
    expect(must(replaceFabric(chosen, 'teal', 'oat')).choices).toEqual(chosen.choices);
  });

  it('change places with the ground', () => {
    expect(seen(must(setGround(unpainted(3, 3), 'rust')), 0.4, 0.4)).toBe('rust');
  });
});

describe('two fabrics', () => {
  it('take each other’s place throughout, and exchanged again are as before', () => {
    const exchanged = must(exchangeFabrics(painted, 'rust', 'teal'));
    expect([seen(exchanged, 0.4, 0.4), seen(exchanged, 1.4, 1.4), exchanged.ground]).toEqual(['rust', 'teal', 'oat']);
    expect(must(exchangeFabrics(exchanged, 'teal', 'rust'))).toEqual(painted);
    expect(must(exchangeFabrics(painted, 'oat', 'teal'))).toMatchObject({ ground: 'teal', patches: [{ fabric: 'oat' }, { fabric: 'rust' }] });
  });

  it('become one where one replaces the other, which stays in the tray', () => {
    const replaced = must(replaceFabric(painted, 'rust', 'teal'));
    expect([seen(replaced, 0.4, 0.4), seen(replaced, 1.4, 1.4)]).toEqual(['teal', 'teal']);
    expect(replaced.fabrics).toBe(painted.fabrics);
    expect(must(replaceFabric(painted, 'oat', 'teal')).ground).toBe('teal');
  });

  it('must be two, and on the tray', () => {
    expect(exchangeFabrics(painted, 'oat', 'oat')).toMatchObject({ problem: { code: 'own-place' } });
    expect(replaceFabric(painted, 'oat', 'plum')).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });
});

describe('a patch', () => {
  it('is the one on top where the pointer is; −1 is the ground', () => {
    expect(patchAt(painted, { x: 3, y: 3, w: 2 })).toBe(1);
    expect(patchAt(painted, { x: 1, y: 1, w: 2 })).toBe(0);
    expect(patchAt(painted, { x: 1, y: 1, w: 1 })).toBe(1);
    expect(patchAt(unpainted(3, 3), { x: 1, y: 1, w: 2 })).toBe(-1);
  });

  it('is taken away, and what lies under it shows', () => {
    expect(seen(must(removePatch(painted, 1)), 1.4, 1.4)).toBe('teal');
    expect(removePatch(painted, 2)).toMatchObject({ problem: { sentence: 'The block has no patch 3; choose one that is there.' } });
    expect(removePatch(painted, -1)).toMatchObject({ problem: { code: 'no-such-patch' } });
  });

  it('takes another fabric', () => {
    expect(seen(must(recolourPatch(painted, 0, 'oat')), 0.4, 0.4)).toBe('oat');
    expect(recolourPatch(painted, 0, 'plum')).toMatchObject({ problem: { code: 'unknown-fabric' } });
  });

  it('must stay one piece, or not', () => {
    const whole = must(toggleWhole(painted, 0));
    expect(whole.patches[0]).toEqual({ ...painted.patches[0], whole: true });
    expect(must(toggleWhole(whole, 0))).toEqual(painted);
    // Several at once are as the first of them becomes.
    expect(must(toggleWholes(whole, [1, 0, 1])).patches.map((patch) => patch.whole)).toEqual([true, true]);
    expect(must(toggleWholes(whole, [0, 1])).patches.map((patch) => patch.whole)).toEqual([undefined, undefined]);
  });
});

describe('a drawn seam', () => {
  it('is asked for once, from whichever end', () => {
    const one = must(drawSeam(painted, [[0, 1], [3, 1]], 2));
    expect(one.seams).toEqual([[[0, 1], [3, 1]]]);
    expect(one.denominator).toBe(2);
    expect(must(drawSeam(one, [[3, 1], [0, 1]], 2))).toBe(one);
    expect(removeSeam(one, 0).seams).toEqual([]);
  });

  it('lies on the block and has length', () => {
    expect(drawSeam(painted, [[0, 1], [4, 1]], 1)).toMatchObject({ problem: { code: 'off-the-grid' } });
    expect(drawSeam(painted, [[0, 1], [0, 1]], 1)).toMatchObject({ problem: { code: 'seam-without-length' } });
  });
});
