import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { applyChange, changeBetween, inverse } from '../../../src/block/change.ts';
import { inLooks, keepColourway, lookOf } from '../../../src/block/colour/colourways.ts';
import { placePhoto, setPhoto } from '../../../src/block/colour/photos.ts';
import { deleteFabric, duplicateFabric, setSame } from '../../../src/block/fabrics.ts';
import { scrapOf, takeOver } from '../../../src/block/scraps.ts';
import { all, lift } from '../../../src/block/selecting.ts';
import { resize } from '../../../src/block/sizing.ts';
import { turn } from '../../../src/block/turning.ts';
import { formatBlock, parseBlock } from '../../../src/files/block-file.ts';
import type { Result } from '../../../src/measure/problem.ts';
import { rational } from '../../../src/measure/rational.ts';
import { grainTurns } from '../../../src/pattern/grain-turns.ts';
import { makePattern } from '../../../src/pattern/make-pattern.ts';
import { shooFly } from '../../files/shoo-fly.ts';
import { photoWith } from '../photo.ts';

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

const drawn = (): Block => {
  const { fabrics: [oat, { scraps: _, directional: __, ...teal }], ...rest } = shooFly() as unknown as { fabrics: [object, Record<string, unknown>] };
  return got(parseBlock(JSON.stringify({ ...rest, fabrics: [oat, teal] })));
};

const cloth = (seed: number) => ({ picture: photoWith(`gulls ${seed}`), across: rational(6) });

describe('photos of cloth', () => {
  it('travel in the file, and are the fabric\'s again when it is opened', () => {
    const block = got(setPhoto(drawn(), 'teal', { ...cloth(1), across: rational(13, 2) }));
    expect(block.fabrics[1]!.photo).toEqual({ picture: 'photo-1', across: rational(13, 2) });
    expect(got(parseBlock(formatBlock(block)))).toEqual(block);
  });

  it('are undone without being kept twice, and forgotten when nothing shows them', () => {
    const before = drawn();
    const after = got(setPhoto(before, 'teal', cloth(1)));
    const change = changeBetween(before, after);
    expect(applyChange(before, change)).toEqual(after);
    expect(applyChange(after, inverse(change))).toEqual(before);
    const wider = got(setPhoto(after, 'teal', { ...cloth(1), across: rational(9) }));
    expect(JSON.stringify(changeBetween(after, wider))).not.toContain('jpeg');
    expect(got(setPhoto(after, 'teal', null)).photos).toBeUndefined();
    const kept = got(setPhoto(got(keepColourway(after, 'Gulls')), 'teal', null));
    expect(kept.photos).toHaveLength(1);
  });

  it('show as much cloth as before when the block is measured in the other unit, and the very same when it is measured back', () => {
    const block = got(keepColourway(got(setPhoto(drawn(), 'teal', cloth(1))), 'Gulls'));
    const metric = got(resize(block, { width: rational(30), height: rational(30), unit: 'cm' }));
    expect(metric.fabrics[1]!.photo!.across).toEqual(rational(6 * 254, 100));
    expect(metric.colourways![0]!.looks.teal!.photo!.across).toEqual(rational(6 * 254, 100));
    expect(got(resize(metric, block.finished)).fabrics).toEqual(block.fabrics);
  });

  it('get one sentence where the file is at fault', () => {
    const text = formatBlock(got(setPhoto(drawn(), 'teal', cloth(1))));
    const faulty = (from: string, to: string): string => {
      const read = parseBlock(text.replace(from, to));
      return read.ok ? 'read' : read.problem.sentence;
    };
    expect(faulty('"picture": "photo-1"', '"picture": "photo-9"')).toContain('Fabric 2 shows the photo "photo-9", which the block does not have');
    expect(faulty('"across": "6"', '"across": "0"')).toContain('more than 0 and at most 200');
    expect(faulty('"across": "6"', '"across": "wide"')).not.toBe('read');
    expect(faulty('"jpeg": "/9j/', '"jpeg": "<svg')).toContain('Photo 1');
  });

  it('lie as the cloth is cut: the middle of a square in a square aslant where it is cut as a square, level where corners are flipped on it', () => {
    const file = (method: string): string =>
      JSON.stringify({
        format: 'piecewright/block', version: 1, name: 'Lamp', finished: { width: '6', height: '6', unit: 'in' }, grid: { columns: 2, rows: 2 },
        fabrics: [{ id: 'a', name: 'A', color: '#ffffff' }, { id: 'b', name: 'B', color: '#000000' }], ground: 'a',
        patches: [{ fabric: 'b', points: [[1, 0], [2, 1], [1, 2], [0, 1]] }], choices: { methods: { 'square in a square': method } },
      });
    const middle = (method: string): number => {
      const pattern = got(makePattern(got(parseBlock(file(method)))));
      return grainTurns(pattern).get(pattern.pieces.find(({ fabric }) => fabric === 'b')!.id)! % 90;
    };
    expect([middle('triangles'), middle('stitch-and-flip')]).toEqual([45, 0]);
  });
});

describe('a photo goes with its fabric', () => {
  const shown = (): Block => got(setPhoto(drawn(), 'teal', cloth(1)));

  it('and is forgotten when the fabric leaves, or takes the cloth of another', () => {
    expect(got(deleteFabric(shown(), 'teal', 'oat')).photos).toBeUndefined();
    expect(got(setSame(shown(), 'teal', 'oat')).photos).toBeUndefined();
    const twice = got(duplicateFabric(shown(), 'teal', 'teal-2'));
    expect(got(deleteFabric(twice, 'teal', 'teal-2')).photos).toEqual(shown().photos);
  });

  it('into another block with patches that are pasted there, once', () => {
    const chosen = got(lift(shown(), all(shown(), 'teal')));
    const scrap = got(parseBlock(formatBlock(scrapOf(chosen, shown()))));
    const other: Block = { ...got(setPhoto(drawn(), 'oat', cloth(2))) };
    const bare: Block = { ...other, fabrics: other.fabrics.filter(({ id }) => id === 'oat'), patches: [] };
    const { block } = got(takeOver(bare, scrap));
    expect(block.photos!.map(({ id, jpeg }) => [id, jpeg])).toEqual([['photo-1', cloth(2).picture.jpeg], ['photo-2', cloth(1).picture.jpeg]]);
    expect(got(parseBlock(formatBlock(block))).fabrics.find(({ id }) => id === 'teal')!.photo!.picture).toBe('photo-2');
  });

  it('and looks that were tried come without one that is gone meanwhile', () => {
    const gone = got(setPhoto(shown(), 'teal', null));
    const back = got(inLooks(gone, { teal: lookOf(shown().fabrics[1]!) }));
    expect(back.fabrics[1]!.photo).toBeUndefined();
  });

  it('and where it lies in a patch is undone, and turns with the patch', () => {
    const before = shown();
    const after = placePhoto(before, [0], [100, 900]);
    expect(after.patches[0]!.photoAt).toEqual([100, 900]);
    expect(applyChange(after, inverse(changeBetween(before, after)))).toEqual(before);
    expect(placePhoto(after, [0], null)).toEqual(before);
    expect(turn(after, 'right').patches[0]!.photoAt).toEqual([100, 900]);
  });
});
