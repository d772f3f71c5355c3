import type { Telling } from '../../block/telling.ts';
import { ink, inkAt, rectangle } from '../diagrams/diagram.ts';
import type { SheetMark } from '../diagrams/sheet-marks.ts';
import { foundationPages, hasFoundations } from '../pages/foundation-pages.ts';
import { templatePages } from '../pages/template-pages.ts';
import type { Setting } from '../pages/face.ts';
import { KEPT } from '../telling/kept.ts';
import type { Figure, Section } from './content.ts';
import { size, type Writing } from './writing.ts';

/**
 * @param squares whether the squares to measure stand here; on pages of templates they are already
 * @returns every size that is to be measured, with a box to tick; null where nothing is sewn
 */
export function sizesSection(writing: Writing, squares: boolean): Section | null {
  const {
    pattern,
    words: { sizes, titles },
    said,
    named,
  } = writing;
  const steps = pattern.steps.filter(({ joins }) => joins.length > 0);
  if (steps.length === 0) return null;
  return {
    name: 'sizes to check',
    title: said('sizes/title', titles['sizes to check']),
    ownPage: false,
    items: [
      ...(squares ? [{ flow: 'measure', at: 'sizes/measure', said: [said('sizes/measure/how', sizes.measure)] } as const] : []),
      { flow: 'paragraph', said: said('sizes/intro', sizes.intro), look: 'plain' },
      {
        flow: 'table',
        at: 'sizes/table',
        heads: sizes.heads.map((head, i) => said(`sizes/head/${i + 1}`, head)),
        figures: [false, false, true, false],
        ticks: true,
        rows: steps.map(({ makes, kind, count, unfinished }) => {
          const at = `sizes/${makes === 'block' ? 'block' : named(makes)}`;
          return {
            cells: [
              said(`${at}/unit`, makes === 'block' ? sizes.block : KEPT.unit(makes)),
              said(`${at}/kind`, kind === 'block' ? '' : KEPT.kind(kind, 'one')),
              said(`${at}/count`, KEPT.count(count)),
              said(`${at}/size`, size(writing, unfinished)),
            ],
          };
        }),
      },
    ],
  };
}

/** @returns whether there is something to print at full size */
export const hasTemplates = ({ pattern }: Pick<Writing, 'pattern'>): boolean =>
  pattern.cuts.some(({ template }) => template !== null) || hasFoundations(pattern);

/** @returns the templates and foundations at full size, on pages that say all that is to be said of them; null where there are none */
export function templatesSection(writing: Writing, setting: Setting, telling: Telling): Section | null {
  if (!hasTemplates(writing)) return null;
  const {
    pattern,
    words: { tag, templates, titles },
    said,
    style,
    speech: { language },
  } = writing;
  return {
    name: 'templates',
    title: said('templates/title', titles.templates),
    ownPage: true,
    items: [],
    pages: [
      ...templatePages(pattern, style.paper, setting, { language: tag, phrases: templates.pages, telling }).pages,
      ...foundationPages(pattern, style.paper, setting, { language, telling }).pages,
    ],
  };
}

/** How many small outlines there are to try colours in. */
const SMALL = 3;

/** @returns a page to colour: the block in outline, once large and a few times small */
export function colouringSection({ pattern, words: { colouring, titles }, said, print }: Writing): Section {
  const scale = ink(pattern.lattice.step);
  const [width, height] = [ink(pattern.block.finished.width), ink(pattern.block.finished.height)];
  const marks: readonly SheetMark[] = [
    ...pattern.pieces.map(({ outline }): SheetMark => ({ mark: 'outline', outline: outline.map((point) => inkAt(point, scale)) })),
    { mark: 'edge', outline: rectangle(0, 0, width, height) },
  ];
  const frame = { left: 0, top: 0, width, height };
  const figure = (name: string, says: string): Figure => ({ name, says: print(says), frame, marks });
  return {
    name: 'colouring page',
    title: said('colouring/title', titles['colouring page']),
    ownPage: true,
    items: [
      { flow: 'paragraph', said: said('colouring/intro', colouring.intro), look: 'plain' },
      { flow: 'figures', at: 'colouring/large', figures: [{ figure: figure('colouring-large', colouring.large) }], most: 0.6 },
      {
        flow: 'figures',
        at: 'colouring/small',
        figures: Array.from({ length: SMALL }, (_, i) => ({ figure: figure(`colouring-${i + 1}`, colouring.small(i + 1)) })),
        most: 0.17,
      },
    ],
  };
}

/** @returns the cautions, in a frame */
export function careSection({ pattern, words: { care, titles }, said }: Writing): Section {
  return {
    name: 'care',
    title: said('care/title', titles.care),
    ownPage: false,
    items: [
      {
        flow: 'boxed',
        at: 'care/box',
        look: 'care',
        title: said('care/heading', care.title),
        said: pattern.cautions.map((told, i) => said(`care/${i + 1}`, told)),
      },
    ],
  };
}

/** So many lines to write on nearly fill a page; where one is begun there are fewer. */
const LINES = 24;

/** @returns blank lines to write on */
export const notesSection = ({ words: { titles }, said }: Writing): Section => ({
  name: 'notes',
  title: said('notes/title', titles.notes),
  ownPage: false,
  items: [{ flow: 'blank', lines: LINES }],
});
