import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { SECTIONS, type OwnPart, type OwnWords, type Publication } from '../../../src/block/publication.ts';
import { skeletonOf } from '../../../src/pattern/telling/kept.ts';
import { allSaid, demoBlock, flowsIn, saidInSection, written, type WrittenPattern } from './written.ts';

const block = demoBlock('01-point-light');
const HOW = 'step/half-square-triangle-1x1-1/how';

const published = (publication: Publication, of: Block = block): Block => ({ ...of, publication });
const at = ({ content, print }: WrittenPattern, place: string): string | undefined => {
  const said = allSaid(content).find((each) => each.at === place);
  return said && print(said);
};
const skeleton = (place: string, look = {}): string =>
  skeletonOf(allSaid(written(block, look).content).find((each) => each.at === place)!.told);

/** "Pair {1} {2} {3} squares with …": the third value is how large the squares are. */
const own: OwnWords = { at: HOW, language: 'en', was: skeleton(HOW), now: 'Take {1} pairs of squares, {3} each.' };

describe('her words', () => {
  test('stand where the program’s stood, with the values of the drawing', () => {
    const one = written(published({ words: [own] }), { fractions: 'typed' });
    expect(at(one, HOW)).toBe('Take 4 pairs of squares, 2 3/8 in. each.');
    const said = allSaid(one.content).find((each) => each.at === HOW)!;
    expect(one.print(said.was!)).toMatch(/^Pair 4 Fog 2 3\/8 in\. squares/);
    expect(one.content.aside).toEqual([]);
  });

  test('survive another size and another colour, with the values of these', () => {
    const of: Block = {
      ...block,
      finished: { ...block.finished, width: { n: 16, d: 1 }, height: { n: 16, d: 1 } },
      fabrics: block.fabrics.map((fabric) => ({ ...fabric, color: '#808080' })),
    };
    const one = written(published({ words: [own] }, of), { fractions: 'typed' });
    expect(at(one, HOW)).toBe('Take 4 pairs of squares, 2 7/8 in. each.');
    expect(one.content.aside).toEqual([]);
  });

  test('survive other units beside theirs, which change every letter', () => {
    // A patch in a corner makes one more small unit.
    const of: Block = {
      ...block,
      patches: [
        ...block.patches,
        {
          fabric: 'lamp',
          points: [
            [3, 3],
            [4, 3],
            [3, 4],
          ],
        },
      ],
    };
    const [before, after] = [written(block), written(published({ words: [own] }, of))];
    expect(after.pattern.units.length).not.toBe(before.pattern.units.length);
    expect(at(after, HOW)).toMatch(/^Take \d+ pairs of squares/);
  });

  test('are kept aside when the method changes, and come back with it', () => {
    const words = published({ words: [own] });
    const other = written(words, {}, { methods: { 'half-square triangle': 'one-at-a-time' } });
    expect(at(other, HOW)).not.toContain('pairs of squares');
    expect(other.content.aside).toEqual([{ at: HOW, now: own.now, was: own.was }]);
    expect(at(written(words, {}, { methods: { 'half-square triangle': 'two-at-a-time' } }), HOW)).toContain('pairs of squares');
  });

  test('in one language leave the other alone, and are not aside there', () => {
    const one = written(published({ words: [own] }), { language: 'de' });
    expect(at(one, HOW)).not.toContain('pairs');
    expect(one.content.aside).toEqual([]);
    const german = { ...own, language: 'de', was: skeleton(HOW, { language: 'de' }), now: 'Von Hand nähen.' };
    expect(at(written(published({ words: [own, german] }), { language: 'de' }), HOW)).toBe('Von Hand nähen.');
  });

  test('for a section that is left out are not aside: they come with it', () => {
    const sections = [{ section: 'units', shown: false }] as const;
    expect(written(published({ words: [own], sections })).content.aside).toEqual([]);
    const gone = { ...own, at: 'step/peak-9x9-1/how' };
    expect(written(published({ words: [own, gone], sections })).content.aside).toEqual([{ at: gone.at, now: gone.now, was: gone.was }]);
  });
});

describe('her own parts', () => {
  const part = (id: string, more: Partial<OwnPart>): OwnPart => ({ id, section: 'units', part: 'paragraph', text: `Mine ${id}.`, ...more });
  const texts = (one: WrittenPattern, name: OwnPart['section']): readonly string[] =>
    one.content.sections.flatMap((section) => (section.name === name ? saidInSection(section).map(one.print) : []));

  test('stand at the beginning of their section, after the place they name, and at the end where that is gone', () => {
    const parts = [
      part('gone', { after: 'step/peak-9x9-1/how' }),
      part('later', { after: HOW, part: 'tip' }),
      part('first', {}),
      part('latest', { after: 'own/later' }),
    ];
    const one = written(published({ parts }));
    const all = texts(one, 'units');
    expect(all[1]).toBe('Mine first.');
    const how = all.indexOf(at(one, HOW)!);
    expect(all.slice(how + 1, how + 3)).toEqual(['Mine later.', 'Mine latest.']);
    expect(all.at(-1)).toBe('Mine gone.');
    expect(flowsIn(one.content, 'boxed').filter(({ look, at: place }) => look === 'tip' && place === 'own/later')).toHaveLength(1);
    expect(one.content.aside).toEqual([]);
  });

  test('are never lost: whichever places they name, also each other’s, all of them are there once or aside', () => {
    const parts = [
      part('a', { after: 'own/b' }),
      part('b', { after: 'own/a' }),
      part('c', { after: 'own/c' }),
      part('d', { section: 'templates' }),
      part('e', { part: 'photo', picture: 'none' }),
      part('f', { after: 'units/title' }),
      ...SECTIONS.map((section) => part(`in ${section}`, { section })),
    ];
    const one = written(published({ parts }));
    const there = allSaid(one.content)
      .map(one.print)
      .filter((text) => text.startsWith('Mine'));
    expect(new Set(there).size).toBe(there.length);
    expect(one.content.aside.map(({ now }) => now).toSorted()).toEqual(['Mine d.', 'Mine e.', 'Mine in templates.']);
    expect([...there, ...one.content.aside.map(({ now }) => now)].toSorted()).toEqual(parts.map(({ text }) => text).toSorted());
  });

  test('bring photos with what is said of them', () => {
    const pictures = [{ id: 'boat', width: 400, height: 300, jpeg: '/9j/' }];
    const one = written(published({ pictures, parts: [part('p', { section: 'notes', part: 'photo', picture: 'boat', text: '' })] }));
    expect(flowsIn(one.content, 'photo')).toEqual([{ flow: 'photo', at: 'own/p', picture: pictures[0], caption: null }]);
  });
});
