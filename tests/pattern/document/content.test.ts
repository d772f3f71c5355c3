import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import type { Choices } from '../../../src/block/choices.ts';
import { SECTIONS } from '../../../src/block/publication.ts';
import { printLength } from '../../../src/measure/lengths.ts';
import type { Rational } from '../../../src/measure/rational.ts';
import { LANGUAGES, type LanguageTag } from '../../../src/pattern/house-style.ts';
import type { Pattern } from '../../../src/pattern/pattern.ts';
import { patternOf, blockNamed, namesIn } from '../made.ts';
import { allSaid, demoBlock, demoNames, flowsIn, saidIn, saidInSection, written, writtenOf, type WrittenPattern } from './written.ts';

const blocks: readonly (readonly [string, Block])[] = [
  ...demoNames.map((name) => [name, demoBlock(name)] as const),
  ...namesIn('cases').map((name) => [name, blockNamed('cases', name)] as const),
  ...namesIn('gallery')
    .filter((_, i) => i % 7 === 0)
    .map((name) => [name, blockNamed('gallery', name)] as const),
];

/** How a size is printed, with an inch mark. */
const sizeIn = (width: Rational, height: Rational, unit: 'in' | 'cm', by: string): string =>
  `${printLength(width, unit, 'bare')} ${by} ${printLength(height, unit)}`.replace(' in.', '″');

describe('the content of a published pattern', () => {
  test.each(blocks)(
    '%s: everything that is cut and measured is told in both languages, each sentence at a place of its own',
    (_, block) => {
      const pattern = patternOf(block);
      for (const language of LANGUAGES) {
        const one = expectTold(block, pattern, language);
        const says = flowsIn(one.content, 'figures').flatMap(({ figures }) => figures.map(({ figure }) => figure));
        expect(says.filter((figure) => /[{}]/.test(figure.says) || figure.says.trim() === '')).toEqual([]);
        expect(new Set(says.map(({ name }) => name)).size).toBe(says.length);
      }
    },
  );

  test('no German sentence of the document is left in English', () => {
    for (const name of ['01-point-light', '07-guild-sloop', '12-mooring-ring']) {
      const pattern = patternOf(demoBlock(name));
      const [english, german] = LANGUAGES.map((language) => allSaid(writtenOf(demoBlock(name), pattern, { language }).content));
      const there = new Map(german!.map(({ at, told }) => [at, told]));
      // A sentence: four words or more beside its values.
      const sentences = english!.filter(
        ({ told }) =>
          told
            .replaceAll(/\{[^}]*\}/g, '')
            .trim()
            .split(/\s+/).length >= 4,
      );
      expect(sentences.length).toBeGreaterThan(30);
      expect(sentences.filter(({ at, told }) => there.get(at) === told)).toEqual([]);
    }
  });

  test('a step is found by what it makes: at another size and in other colours every sentence has the same place', () => {
    const block = demoBlock('01-point-light');
    const places = (one: Block): readonly string[] =>
      allSaid(written(one).content)
        .map(({ at }) => at)
        .filter((at) => at.startsWith('step/'));
    const larger: Block = { ...block, finished: { ...block.finished, width: { n: 16, d: 1 }, height: { n: 16, d: 1 } } };
    const other: Block = { ...block, fabrics: block.fabrics.map((fabric, i) => ({ ...fabric, color: `#${`${i + 1}`.repeat(6)}` })) };
    expect(places(block)).toContain('step/half-square-triangle-1x1-1/how');
    expect(places(larger)).toEqual(places(block));
    // How seams are pressed may follow the darker cloth, so that another seam is told; what is made is the same.
    expect(places(other)).toEqual(places(block));
  });

  test('sections come as they usually do, in the house’s order, or in the block’s', () => {
    const block = demoBlock('07-guild-sloop');
    const names = (one: WrittenPattern): readonly string[] => one.content.sections.map(({ name }) => name);
    const usual = names(written(block));
    expect(usual).toEqual(SECTIONS.filter((name) => name !== 'templates'));
    const style = {
      sections: [
        { section: 'cover', shown: true },
        { section: 'care', shown: true },
        { section: 'notes', shown: false },
      ],
    } as const;
    expect(names(written(block, style))).toEqual(['cover', 'care', ...usual.filter((name) => !['cover', 'care', 'notes'].includes(name))]);
    const own = { ...block, publication: { sections: SECTIONS.map((section) => ({ section, shown: section === 'units' })) } };
    expect(names(written(own, style))).toEqual(['units']);
    const none = { ...block, publication: { sections: SECTIONS.map((section) => ({ section, shown: false })) } };
    expect(names(written(none))).toEqual(['cover']);
  });

  test('open warnings are in every pattern, also where she leaves out the section they belong to, and not in her words', () => {
    const block = demoBlock('01-point-light');
    const { warnings } = patternOf(block);
    expect(warnings.map(({ code }) => code)).toContain('no margin');
    const words = [{ at: 'warnings/materials/no margin', language: 'en', was: 'anything', now: 'Nothing to see here.' }];
    for (const shown of [['cover', 'materials'], ['notes'], []]) {
      const sections = SECTIONS.map((section) => ({ section, shown: shown.includes(section) }));
      const one = written({ ...block, publication: { sections, words } }, { fractions: 'typed' });
      const boxed = flowsIn(one.content, 'boxed')
        .filter(({ look }) => look === 'warning')
        .flatMap(saidIn)
        .map(one.print);
      for (const { says } of warnings) expect(boxed).toContain(says);
    }
  });

  test('a pattern whose proof fails says so first, and on every page', () => {
    const block = demoBlock('05-eddy');
    const pattern = patternOf(block);
    const failing = { ...pattern, proof: { holds: false, seams: 3, faults: ['The block has a hole.'] } };
    for (const sections of [undefined, SECTIONS.map((section) => ({ section, shown: section === 'care' }))]) {
      const { content, print } = writtenOf({ ...block, publication: sections ? { sections } : {} }, failing);
      expect(content.alarm).not.toBeNull();
      const [first] = flowsIn({ sections: content.sections.slice(0, 1) }, 'boxed');
      expect(saidIn(first!).map(print)).toContain('The block has a hole.');
    }
    expect(writtenOf(block, pattern).content.alarm).toBeNull();
  });

  test('a list at another size is the list of the block drawn at that size', () => {
    const block = demoBlock('01-point-light');
    const one = written(block, { fractions: 'typed' });
    const section = one.content.sections.find(({ name }) => name === 'other sizes')!;
    const [table] = flowsIn({ sections: [section] }, 'table');
    const heads = table!.heads.map(one.print);
    const column = heads.findIndex((head) => head === '10 in.' || head === '16 in.');
    const width = { n: Number.parseInt(heads[column]!, 10), d: 1 };
    const drawn = patternOf({ ...block, finished: { ...block.finished, width, height: width } });
    const said = table!.rows.filter(({ cells }) => cells.length > 0).map(({ cells }) => one.print(cells[column]!));
    expect(said.toSorted()).toEqual(
      drawn.cuts
        .map((cut) =>
          cut.shape === 'square'
            ? printLength(cut.width, 'in', 'bare')
            : `${printLength(cut.width, 'in', 'bare')} × ${printLength(cut.height, 'in', 'bare')}`,
        )
        .toSorted(),
    );
  });

  test('every way, order and method can be published', () => {
    const squares = blockNamed('cases', 'double-nine-patch-9');
    const star = demoBlock('01-point-light');
    const blank: Block = { ...squares, patches: [], seams: [] };
    const all: readonly (readonly [Block, Choices])[] = [
      [squares, { methods: { 'joined unit': 'strip-sets' }, blocks: 4 }],
      [squares, { assembly: 'web', blocks: 3 }],
      [star, { way: 'foundation' }],
      [star, { way: 'fewest pieces', method: 'template' }],
      [star, { method: 'triangles-from-strips', trim: { n: 1, d: 8 }, margin: { percent: { n: 10, d: 1 } } }],
      [
        star,
        {
          cloths: { deep: { sold: 'fat quarter', have: [{ count: 1, width: { n: 10, d: 1 }, length: { n: 10, d: 1 } }] } },
          squaringUp: { n: 1, d: 2 },
        },
      ],
      [{ ...star, fabrics: star.fabrics.map((fabric) => ({ ...fabric, directional: true })) }, { way: 'rows' }],
      [
        { ...star, fabrics: star.fabrics.map((fabric) => (fabric.id === 'deep' ? { ...fabric, scraps: { prints: 4, seed: 1 } } : fabric)) },
        {},
      ],
      [blank, {}],
    ];
    for (const [block, choices] of all) {
      const pattern = patternOf(block, choices);
      for (const language of LANGUAGES) {
        expectTold(block, pattern, language);
      }
    }
  });

  test('squares to measure are in every pattern once: on pages of templates, else beside the sizes to check', () => {
    const squares = (one: WrittenPattern): number =>
      flowsIn(one.content, 'measure').length + (one.content.sections.some(({ pages = [] }) => pages.length > 0) ? 1 : 0);
    const withTemplate = demoBlock('11-lamp-room');
    expect([withTemplate, demoBlock('01-point-light')].map((block) => squares(written(block)))).toEqual([1, 1]);
    expect(squares(written({ ...withTemplate, publication: { sections: [{ section: 'templates', shown: false }] } }))).toBe(1);
  });

  test('of scraps the list tells how many are cut of each print', () => {
    const block = demoBlock('01-point-light');
    const fabrics = block.fabrics.map((fabric) => (fabric.id === 'deep' ? { ...fabric, scraps: { prints: 4, seed: 1 } } : fabric));
    const one = written({ ...block, fabrics });
    const texts = one.content.sections.flatMap((section) => (section.name === 'cutting' ? saidInSection(section).map(one.print) : []));
    const deep = one.pattern.cuts.filter(({ fabric }) => fabric === 'deep');
    expect(texts.filter((text) => /\d+ of (each of )?(\d+ )?prints?/.test(text))).toHaveLength(deep.length);
  });

  test('fabrics, names and a maker’s own lines cannot be taken for values', () => {
    const block = demoBlock('05-eddy');
    const odd = {
      ...block,
      name: '{length 1/0 in} & <b>',
      publication: {
        subtitle: '{count x} {unit A}',
        parts: [{ id: 'p', section: 'notes', part: 'paragraph', text: '{bare 1/0 in}' } as const],
      },
    };
    const one = written(odd, { maker: '{about 0/0 in}', licence: '{kind a b}' });
    const texts = allSaid(one.content).map(one.print);
    for (const text of ['{ length 1/0 in} & <b>', '{ count x} { unit A}', '{ bare 1/0 in}', '{ kind a b}']) expect(texts).toContain(text);
  });
});

/** Expects every value printed, every sentence at a place of its own, and all cuts and steps told. @returns what is written */
function expectTold(block: Block, pattern: Pattern, language: LanguageTag): WrittenPattern {
  const one = writtenOf(block, pattern, { language, fractions: 'typed', inches: '″' });
  expect(
    allSaid(one.content)
      .map(one.print)
      .filter((text) => /[{}]|undefined|NaN/.test(text)),
  ).toEqual([]);
  expectOwnPlaces(one);
  expectCuts(one);
  expectSteps(one);
  return one;
}

function expectOwnPlaces({ content }: WrittenPattern): void {
  const places = allSaid(content).map(({ at }) => at);
  expect(places.filter((at, i) => places.indexOf(at) !== i)).toEqual([]);
}

/** Every line of the list is in the cutting table, with its number, how many and how large. */
function expectCuts({ content, pattern, print, style }: WrittenPattern): void {
  const by = style.language === 'de' ? '×' : 'by';
  const [table] = flowsIn({ sections: content.sections.filter(({ name }) => name === 'cutting') }, 'table');
  const rows = new Map(table!.rows.filter(({ leadsHere }) => leadsHere).map(({ cells }) => [print(cells[0]!), print(cells[1]!)]));
  expect([...rows.keys()].toSorted()).toEqual(pattern.cuts.map(({ id }) => id).toSorted());
  for (const { id, quantity, width, height, shape } of pattern.cuts) {
    const said = rows.get(id)!;
    expect(said).toContain(`${quantity} `);
    const size = sizeIn(width, height, pattern.block.unit, by);
    if (shape !== 'template') expect(said).toContain(shape === 'square' ? size.slice(size.indexOf(by) + by.length + 1) : size);
  }
}

/** Every step is told once, in order, with what it must measure; and again in the table of sizes. */
function expectSteps({ content, pattern, print, style }: WrittenPattern): void {
  const by = style.language === 'de' ? '×' : 'by';
  const { unit } = pattern.block;
  const steps = flowsIn({ sections: content.sections.filter(({ name }) => name === 'units' || name === 'assembly') }, 'together').filter(
    ({ items }) => items[0]!.flow === 'heading',
  );
  expect(steps.map(({ items }) => (items[0]!.flow === 'heading' ? items[0]!.number : null))).toEqual(
    pattern.steps.map(({ number }) => number),
  );
  const checks = content.sections.flatMap((section) => (section.name === 'sizes to check' ? saidInSection(section).map(print) : []));
  pattern.steps.forEach(({ unfinished: { width, height }, count, makes, joins }, i) => {
    const texts = saidIn(steps[i]!).map(print);
    const size = sizeIn(width, height, unit, by);
    expect(texts.at(-1)).toContain(size);
    if (makes !== 'block') expect(texts.join(' ')).toContain(`${count} `);
    if (joins.length > 0) expect(checks).toContain(size);
  });
}
