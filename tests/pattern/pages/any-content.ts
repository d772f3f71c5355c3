import fc from 'fast-check';
import { plainTelling } from '../../../src/block/plain-telling.ts';
import { rational } from '../../../src/measure/rational.ts';
import type { Content, Flow, Said, Section } from '../../../src/pattern/document/content.ts';
import type { HouseStyle } from '../../../src/pattern/house-style.ts';
import { KEPT } from '../../../src/pattern/telling/kept.ts';

/** Contents of patterns at random: every kind of thing, in an order that a pattern could have, with short texts and very long words. */

export const telling = plainTelling((id) => ({ fog: 'Fog', rope: 'Rope', tide: 'Flood tide with a long name' })[id] ?? id);

const LETTERS = ['A', 'B', 'C', 'AA'];
const FABRICS = ['fog', 'rope', 'tide'];

const word = fc.oneof(
  {
    weight: 20,
    arbitrary: fc.constantFrom(
      'sew',
      'the',
      'squares',
      'together',
      'press',
      'a',
      'half-square',
      'seam',
      'Dreieckseinheit',
      '2½',
      'in.',
      '×',
      'cut:',
      '“on”',
    ),
  },
  { weight: 2, arbitrary: fc.constantFrom(...LETTERS).map((letter) => KEPT.unit(letter)) },
  {
    weight: 3,
    arbitrary: fc.tuple(fc.integer({ min: 1, max: 99 }), fc.constantFrom(1, 2, 4, 8)).map(([n, d]) => KEPT.length(rational(n, d), 'in')),
  },
  { weight: 2, arbitrary: fc.constantFrom(...FABRICS).map((id) => KEPT.cloth(id)) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 40 }).map((n) => KEPT.count(n)) },
);
const longWord = fc
  .tuple(fc.constantFrom('Bootsmann', 'W', 'ill', '⅞', 'ab-'), fc.integer({ min: 5, max: 60 }))
  .map(([part, n]) => part.repeat(n).slice(0, 200));
const text = (least: number, most: number): fc.Arbitrary<string> =>
  fc
    .array(fc.oneof({ weight: 60, arbitrary: word }, { weight: 1, arbitrary: longWord }), { minLength: least, maxLength: most })
    .map((words) => words.join(' '));

/** A text whose place is given later, when all of the content is there. */
const said = (least: number, most: number): fc.Arbitrary<Said> => text(least, most).map((told) => ({ at: '', told }));

const square = (x: number, y: number, w: number, h: number): readonly (readonly [number, number])[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const figure = fc
  .record({
    w: fc.integer({ min: 1, max: 30 }),
    h: fc.integer({ min: 1, max: 30 }),
    fabric: fc.constantFrom(...FABRICS, 'none'),
    side: fc.constantFrom('right' as const, 'wrong' as const),
    turn: fc.constantFrom(0, 1, 2, 3) as fc.Arbitrary<0 | 1 | 2 | 3>,
  })
  .map(({ w, h, fabric, side, turn }) => ({
    name: '',
    says: 'a piece',
    frame: { left: -1, top: 2, width: w + 1, height: h + 1 },
    marks: [
      { mark: 'cloth', fabric, side, outline: square(-1, 2, w, h) },
      { mark: 'line', line: 'stitched', from: [-1, 2], to: [w, h + 3] },
      { mark: 'pressed', from: [w / 2, h / 2 + 2], to: [w / 2, h / 2 + 2.5] },
      { mark: 'name', text: 'AB', at: [w / 2 - 1, h / 2 + 2], turn, room: Math.min(w, h) },
    ] as const,
  }));
const caption = fc.option(said(1, 8), { nil: undefined });

const paragraph: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('paragraph' as const),
  said: said(1, 90),
  look: fc.constantFrom('plain', 'strong', 'quiet', 'item'),
});
const figures: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('figures' as const),
  at: fc.constant(''),
  figures: fc.array(
    fc
      .record({ figure, caption, measure: caption })
      .map(({ figure: one, caption: a, measure: b }) => ({ figure: one, ...(a && { caption: a }), ...(b && { measure: b }) })),
    { minLength: 1, maxLength: 5 },
  ),
  most: fc.constantFrom(0.17, 0.24, 0.5, 1),
});
const table: fc.Arbitrary<Flow> = fc
  .record({
    columns: fc.integer({ min: 1, max: 5 }),
    rows: fc.array(
      fc.record({
        group: fc.option(said(1, 4), { freq: 4, nil: undefined }),
        fabric: fc.option(fc.constantFrom(...FABRICS), { nil: undefined }),
        cells: fc.tuple(said(1, 6), fc.array(said(0, 6), { minLength: 4, maxLength: 4 })).map(([one, more]) => [one, ...more]),
        below: fc.array(said(1, 20), { maxLength: 1 }),
      }),
      { minLength: 1, maxLength: 40 },
    ),
    heads: fc.array(said(1, 2), { minLength: 5, maxLength: 5 }),
    figures: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
    ticks: fc.boolean(),
  })
  .map(({ columns, rows, heads, figures: set, ticks }) => ({
    flow: 'table',
    at: '',
    heads: heads.slice(0, columns),
    // Where the first column is to the left, it tells in which column of the page the table stands.
    figures: [false, ...set.slice(1, columns)],
    ticks,
    // A group is followed by a row of its own.
    rows: rows.flatMap(({ group, fabric, cells, below }) => [
      ...(group ? [{ group, cells: [], ...(fabric !== undefined && { fabric }) }] : []),
      { cells: cells.slice(0, columns), ...(below.length > 0 && { below }), ...(fabric !== undefined && { fabric }) },
    ]),
  }));
const facts: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('facts' as const),
  at: fc.constant(''),
  facts: fc.array(fc.record({ label: said(1, 2), value: said(1, 4) }), { minLength: 1, maxLength: 6 }),
});
const boxed: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('boxed' as const),
  at: fc.constant(''),
  look: fc.constantFrom('warning', 'care', 'tip'),
  title: fc.option(said(1, 5), { nil: null }),
  said: fc.array(said(1, 120), { minLength: 1, maxLength: 5 }),
});
const blank: fc.Arbitrary<Flow> = fc.record({ flow: fc.constant('blank' as const), lines: fc.integer({ min: 1, max: 8 }) });
const measure: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('measure' as const),
  at: fc.constant(''),
  said: fc.array(said(1, 30), { minLength: 1, maxLength: 2 }),
});
const photo: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('photo' as const),
  at: fc.constant(''),
  picture: fc.record({
    id: fc.constant('p'),
    width: fc.integer({ min: 40, max: 4000 }),
    height: fc.integer({ min: 40, max: 4000 }),
    jpeg: fc.constant(''),
  }),
  caption: fc.option(said(1, 30), { nil: null }),
});
const heading = fc
  .record({
    flow: fc.constant('heading' as const),
    level: fc.constantFrom(2 as const, 3 as const),
    said: said(1, 8),
    number: fc.option(fc.integer({ min: 1, max: 120 }), { nil: undefined }),
  })
  .map(({ number, ...rest }) => ({ ...rest, ...(number !== undefined && { number }) }));
const body: fc.Arbitrary<Flow> = fc.oneof(paragraph, paragraph, figures, table, facts, boxed, blank, measure, photo);
const together: fc.Arbitrary<Flow> = fc.record({
  flow: fc.constant('together' as const),
  items: fc
    .tuple(heading, fc.array(fc.oneof(paragraph, paragraph, figures), { minLength: 1, maxLength: 5 }))
    .map(([head, rest]) => [head, ...rest]),
});
const flows: fc.Arbitrary<readonly Flow[]> = fc
  .array(
    fc.oneof(
      { weight: 3, arbitrary: body.map((one) => [one]) },
      { weight: 3, arbitrary: together.map((one) => [one]) },
      { weight: 1, arbitrary: fc.tuple(heading, body) },
    ),
    { minLength: 1, maxLength: 7 },
  )
  .map((all) => all.flat());
const section: fc.Arbitrary<Section> = fc.record({
  name: fc.constant('units' as const),
  title: said(1, 9),
  ownPage: fc.boolean(),
  items: flows,
});

/** A cover as patterns have one: its texts are short, so that everything is on it. */
const few = (least: number, most: number): fc.Arbitrary<Said> =>
  fc.array(word, { minLength: least, maxLength: most }).map((words) => ({ at: '', told: words.join(' ') }));
const cover: fc.Arbitrary<Section> = fc
  .record({
    title: said(1, 9),
    lead: fc.array(few(1, 8), { maxLength: 1 }),
    picture: figure,
    facts: fc.array(fc.record({ label: few(1, 2), value: few(1, 1) }), { minLength: 1, maxLength: 3 }),
    foot: fc.array(few(1, 6), { maxLength: 2 }),
  })
  .map(({ title, lead, picture, facts: all, foot }) => ({
    name: 'cover',
    title,
    ownPage: false,
    items: [
      ...lead.map((one) => ({ flow: 'paragraph', said: one, look: 'strong' }) as const),
      { flow: 'figures', at: '', figures: [{ figure: picture }], most: 0.55 },
      { flow: 'facts', at: '', facts: all },
      ...foot.map((one) => ({ flow: 'paragraph', said: one, look: 'quiet' }) as const),
    ],
  }));

/** Every text of a content with its place, in the order in which it is read. */
export const allSaid = (content: Content): readonly Said[] =>
  content.sections.flatMap(({ title, items }) => [title, ...items.flatMap(saidIn)]);

function saidIn(flow: Flow): readonly Said[] {
  switch (flow.flow) {
    case 'paragraph':
      return [flow.said];
    case 'heading':
      return [{ ...flow.said, told: `${flow.number ?? ''} ${flow.said.told}` }];
    case 'table':
      return [...flow.heads, ...flow.rows.flatMap(({ group, cells, below = [] }) => [...(group ? [group] : []), ...cells, ...below])];
    case 'figures':
      return flow.figures.flatMap(({ caption: a, measure: b }) => [a, b].filter((one) => one !== undefined));
    case 'facts':
      return flow.facts.flatMap(({ label, value }) => [label, value]);
    case 'boxed':
      return [...(flow.title ? [flow.title] : []), ...flow.said];
    case 'measure':
      return flow.said;
    case 'photo':
      return flow.caption ? [flow.caption] : [];
    case 'blank':
      return [];
    case 'together':
      return flow.items.flatMap(saidIn);
  }
}

/** Gives every text and thing a place of its own, and units the steps that links lead to. */
function placed(sections: readonly Section[]): readonly Section[] {
  let number = 0;
  const letters = [...LETTERS];
  const place = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(place);
    if (typeof value !== 'object' || value === null) return value;
    const own =
      'at' in value && value.at === ''
        ? { at: `at ${++number}` }
        : 'name' in value && value.name === ''
          ? { name: `figure ${++number}` }
          : {};
    const leads = 'flow' in value && value.flow === 'heading' && letters.length > 0 ? { leadsHere: [`unit ${letters.shift()}`] } : {};
    return { ...Object.fromEntries(Object.entries(value).map(([key, one]) => [key, place(one)])), ...own, ...leads };
  };
  return sections.map((one) => place(one) as Section);
}

export const anyContent = (words: { readonly alarm: string | null } = { alarm: null }): fc.Arbitrary<Content> =>
  fc.tuple(fc.array(cover, { maxLength: 1 }), fc.array(section, { minLength: 1, maxLength: 3 })).map(([front, sections]) => ({
    title: 'Holding Ground',
    language: 'en',
    sections: placed([...front, ...sections]),
    colors: new Map([
      ['fog', '#dfe3e6'],
      ['rope', '#b98e52'],
      ['tide', '#17324a'],
    ]),
    fabrics: FABRICS,
    words: { page: '{1} of {2}', continued: '{1}, continued' },
    alarm: words.alarm,
    aside: [],
  }));

export const anyStyle: fc.Arbitrary<HouseStyle> = fc.record({
  language: fc.constant('en' as const),
  kinds: fc.constant('in full' as const),
  fractions: fc.constant('set' as const),
  inches: fc.constant('in.' as const),
  paper: fc.constantFrom('letter', 'a4'),
  lie: fc.constantFrom('portrait', 'landscape'),
  columns: fc.constantFrom(1, 2),
  ink: fc.constantFrom('colours', 'hatches'),
  letters: fc.constantFrom('usual', 'large'),
  foot: fc.constantFrom('Kittiwake Point sampler', 'x'.repeat(200)),
});
