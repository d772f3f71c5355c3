import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import { applyChange, changeBetween, inverse } from '../../src/block/change.ts';
import { deleteFabric, exchangeFabrics } from '../../src/block/fabrics.ts';
import { begin, begun, commit, undo } from '../../src/block/history.ts';
import { jpegFault } from '../../src/block/jpeg.ts';
import { paint } from '../../src/block/painting.ts';
import { cell } from '../../src/block/patch-shapes.ts';
import { SECTIONS, type OwnWords, type Publication } from '../../src/block/publication.ts';
import {
  addPart, allSections, changePart, chooseSections, movePart, putWords, removePart, removeWords, sectionMoved, sectionShown, setSubtitle,
} from '../../src/block/publishing.ts';
import { addCells, regrid, subdivide } from '../../src/block/regridding.ts';
import { rename } from '../../src/block/renaming.ts';
import { scrapOf } from '../../src/block/scraps.ts';
import { all, lift } from '../../src/block/selecting.ts';
import { resize } from '../../src/block/sizing.ts';
import { mirror, turn } from '../../src/block/turning.ts';
import { must, SEED, unpainted } from './drawn.ts';
import { JPEG, photo, photoWith } from './photo.ts';

const words: OwnWords = { at: 'step/1/how', language: 'en', was: 'Make {1} of unit {2}.', now: 'You need {1} of {2}, and one to spare.' };

/** A block to whose pattern something of everything was added. */
const dressed = (): Block => {
  const painted = must(paint(unpainted(4, 4), 'teal', cell(1, 1)));
  const titled = must(setSubtitle(painted, ' A block  for the harbour wall '));
  const told = must(putWords(must(chooseSections(titled, [{ section: 'notes', shown: false }])), words));
  const tipped = must(addPart(told, { section: 'units', after: 'step/1/how', part: 'tip', text: 'Mind the\nsteam.' }));
  return must(addPart(tipped, { section: 'cover', part: 'photo', text: '', picture: photo }));
};

describe('what a designer adds to her pattern', () => {
  it('is plain text on one line, and a picture with each photo', () => {
    expect(dressed().publication).toEqual({
      subtitle: 'A block for the harbour wall',
      sections: [{ section: 'notes', shown: false }],
      words: [words],
      parts: [
        { section: 'units', after: 'step/1/how', part: 'tip', text: 'Mind the steam.', id: 'part-1' },
        { section: 'cover', part: 'photo', text: '', id: 'part-2', picture: 'picture-1' },
      ],
      pictures: [{ id: 'picture-1', width: 3, height: 2, jpeg: JPEG }],
    } satisfies Publication);
  });

  it.each<readonly [string, (block: Block) => Block]>([
    ['turning', turn],
    ['mirroring', (now) => mirror(now, 'left and right')],
    ['painting', (now) => must(paint(now, 'rust', cell(0, 0)))],
    ['another size', (now) => must(resize(now, { width: { n: 9, d: 1 }, height: { n: 9, d: 1 }, unit: 'cm' }))],
    ['other cells', (now) => must(regrid(now, { columns: 3, rows: 5 })).block],
    ['a column more', (now) => must(addCells(now, 'left')).block],
    ['smaller cells', (now) => must(subdivide(now, 2))],
    ['another name', (now) => must(rename(now, 'Mole'))],
    ['a fabric less', (now) => must(deleteFabric(now, 'teal', 'rust'))],
    ['exchanged fabrics', (now) => must(exchangeFabrics(now, 'teal', 'oat'))],
  ])('stays through %s', (_, change) => {
    const before = dressed();
    expect(change(before).publication).toEqual(before.publication);
  });

  it('does not come along with patches that are copied', () => {
    const block = dressed();
    expect(scrapOf(must(lift(block, all(block))), block)).not.toHaveProperty('publication');
  });

  it('leaves nothing behind when it is taken out again', () => {
    const steps: readonly ((block: Block) => Block)[] = [
      (now) => must(setSubtitle(now, ' ')),
      (now) => must(chooseSections(now, null)),
      (now) => must(removeWords(now, words)),
      (now) => must(removePart(now, 'part-1')),
      (now) => must(removePart(now, 'part-2')),
    ];
    expect(steps.reduce((now, step) => step(now), dressed())).not.toHaveProperty('publication');
  });

  it('is refused in a sentence where it cannot be printed, and then nothing changes', () => {
    const block = dressed();
    const sentence = (made: ReturnType<typeof putWords>): string => (made.ok ? 'taken' : made.problem.sentence);
    expect(sentence(putWords(block, { ...words, now: 'Make {length 1/0 in}.' }))).toContain('a curly bracket');
    expect(sentence(addPart(block, { section: 'units', part: 'tip', text: ' ' }))).toContain('says nothing');
    expect(sentence(addPart(block, { section: 'units', part: 'tip', text: 'x'.repeat(2_001) }))).toContain('2,001 characters long');
    expect(sentence(addPart(block, { section: 'units', part: 'photo', text: '', picture: { ...photoWith('wide'), width: 4 } }))).toContain('another size');
    expect(sentence(setSubtitle(block, 'ab\u202e'))).toContain('cannot be printed');
  });
});

describe('her words for a sentence', () => {
  it('stand in place of what she put there before, each kind of sentence by itself', () => {
    const block = must(putWords(dressed(), { ...words, now: 'Sew {1}.' }));
    expect(block.publication?.words).toEqual([{ ...words, now: 'Sew {1}.' }]);
    const german = must(putWords(block, { ...words, language: 'de', now: '{1} nähen.' }));
    expect(must(putWords(german, { ...words, was: 'Make {1}.', now: 'Only {1}.' })).publication?.words).toHaveLength(3);
  });

  it('change nothing where they are the same', () => {
    const block = dressed();
    expect(must(putWords(block, words))).toBe(block);
  });
});

describe('sections', () => {
  it('are all there whatever is chosen, each once', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...SECTIONS), fc.option(fc.nat(13)), fc.boolean()), { maxLength: 8 }), (acts) => {
        const chosen = acts.reduce((now, [section, to, shown]) => (to === null ? sectionShown(now, section, shown) : sectionMoved(now, section, to)), allSections());
        expect(chosen.map(({ section }) => section).toSorted()).toEqual([...SECTIONS].toSorted());
        const [section, to] = acts.at(-1) ?? [];
        if (section !== undefined && typeof to === 'number') expect(chosen.findIndex((each) => each.section === section)).toBe(to);
        expect(must(chooseSections(unpainted(2, 2), chosen)).publication?.sections).toEqual(chosen);
      }),
      SEED,
    );
  });
});

describe('parts of her own', () => {
  it('move to another place, before another part where that is asked for', () => {
    const three = ['one', 'two', 'three'].reduce((now, text) => must(addPart(now, { section: 'care', part: 'paragraph', text })), unpainted(2, 2));
    const texts = (block: Block): readonly string[] => block.publication!.parts!.map(({ text }) => text);
    expect(texts(must(movePart(three, 'part-3', { section: 'care' }, 'part-1')))).toEqual(['three', 'one', 'two']);
    const away = must(movePart(three, 'part-1', { section: 'units', after: 'here' }));
    expect(away.publication!.parts!.at(-1)).toEqual({ id: 'part-1', section: 'units', after: 'here', part: 'paragraph', text: 'one' });
    expect(must(movePart(away, 'part-1', { section: 'cover' })).publication!.parts!.at(-1)).not.toHaveProperty('after');
    expect(texts(must(changePart(three, 'part-2', { text: 'deux' })))).toEqual(['one', 'deux', 'three']);
  });

  it('share a picture that is chosen twice, and let it go with the last of them', () => {
    const twice = must(addPart(dressed(), { section: 'notes', part: 'photo', text: 'again', picture: photo }));
    expect(twice.publication!.pictures).toHaveLength(1);
    const once = must(removePart(twice, 'part-2'));
    expect(once.publication!.pictures).toHaveLength(1);
    expect(must(removePart(once, 'part-3')).publication).not.toHaveProperty('pictures');
  });
});

describe('the history of a pattern with pictures', () => {
  const act = fc.oneof(
    fc.string({ maxLength: 6 }).map((text) => (now: Block) => setSubtitle(now, text)),
    fc.tuple(fc.constantFrom(...SECTIONS), fc.nat(13)).map(([section, to]) => (now: Block) => chooseSections(now, sectionMoved(now.publication?.sections ?? [], section, to))),
    fc.tuple(fc.nat(4), fc.string({ minLength: 1, maxLength: 5 })).map(([at, text]) => (now: Block) => putWords(now, { ...words, at: `place ${at}`, now: text })),
    fc.nat(4).map((at) => (now: Block) => removeWords(now, { ...words, at: `place ${at}` })),
    fc.nat(3).map((one) => (now: Block) => addPart(now, { section: 'care', part: 'photo', text: '', picture: photoWith(`photo ${one}`) })),
    fc.nat(5).map((one) => (now: Block) => removePart(now, `part-${one}`)),
    fc.tuple(fc.nat(5), fc.nat(5)).map(([one, other]) => (now: Block) => movePart(now, `part-${one}`, { section: 'units' }, `part-${other}`)),
    fc.constant((now: Block) => ({ ok: true, value: turn(now) }) as const),
  );

  it('goes back and forth, also after it was saved as JSON', () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 14 }), (acts) => {
        const start = must(paint(unpainted(2, 2), 'teal', cell(0, 0)));
        let now = start;
        for (const each of acts) {
          const made = each(now);
          const after = made.ok ? made.value : now;
          const change = JSON.parse(JSON.stringify(changeBetween(now, after))) as ReturnType<typeof changeBetween>;
          expect(applyChange(now, change)).toEqual(after);
          expect(applyChange(after, inverse(change))).toEqual(now);
          expect(inverse(inverse(change))).toEqual(change);
          now = after;
        }
      }),
      SEED,
    );
  });

  it('holds a picture once, however often something else is changed', () => {
    const large = photoWith('x'.repeat(60_000));
    const work = commit(begun(unpainted(2, 2)), begin(unpainted(2, 2), 'added a photo'), must(addPart(unpainted(2, 2), { section: 'cover', part: 'photo', text: '', picture: large })));
    const told = Array.from({ length: 50 }, (_, i) => i).reduce(
      (now, i) => commit(now, begin(now.block, 'wrote a sentence'), must(putWords(now.block, { ...words, now: `Again, ${i} times.` }))),
      work,
    );
    expect(JSON.stringify(told.history).length).toBeLessThan(large.jpeg.length + 30_000);
    expect(Array.from({ length: 51 }).reduce<typeof told>((now) => undo(now), told).block).toEqual(unpainted(2, 2));
  });
});

describe('a picture', () => {
  const file = atob(JPEG);
  const cut = (text: string): string => btoa(text);
  /** The place of the frame's header: ISO/IEC 10918-1, B.2.2. */
  const frame = file.indexOf('\xff\xc0');
  it.each([
    ['itself', JPEG, null],
    ['with a comment', photoWith('hello').jpeg, null],
    ['of nothing', '', 'not base 64'],
    ['in words', 'a picture of a gull', 'not base 64'],
    ['with a space in it', `${JPEG.slice(0, 8)} ${JPEG.slice(9)}`, 'not base 64'],
    ['of a PNG', btoa('\x89PNG\r\n\x1a\n0123'), 'not a JPEG'],
    ['without its end', cut(file.slice(0, -2)), 'cut short'],
    ['without its picture', cut(file.slice(0, frame)), 'cut short'],
    ['in the colours of a press', cut(`${file.slice(0, frame + 9)}\x04${file.slice(frame + 10)}`), 'colours for presses'],
    ['of another height', cut(`${file.slice(0, frame + 6)}\x07${file.slice(frame + 7)}`), 'not this size'],
    ['with what a camera notes', cut(`${file.slice(0, 2)}\xff\xe1\x00\x08Exif\0\0${file.slice(2)}`), 'carries notes'],
  ])('%s', (_, jpeg, fault) => {
    expect(jpegFault(jpeg, 3, 2)).toBe(fault);
  });

  it('is looked at whatever stands in it, without a word about the program', () => {
    fc.assert(
      fc.property(fc.nat(file.length - 1), fc.nat(255), (at, byte) => {
        const spoilt = btoa(file.slice(0, at) + String.fromCharCode(byte) + file.slice(at + 1));
        expect(() => jpegFault(spoilt, 3, 2)).not.toThrow();
      }),
      SEED,
    );
  });
});
