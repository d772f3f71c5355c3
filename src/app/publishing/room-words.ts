import type { OwnPart, SectionName } from '../../block/publication.ts';

/** What the sections are called on the screen. */
export const SECTION_WORDS: Readonly<Record<SectionName, string>> = {
  cover: 'Cover',
  skills: 'What it asks of the maker',
  materials: 'Materials',
  cutting: 'Cutting table',
  cloth: 'Cutting layouts',
  units: 'Units, step by step',
  assembly: 'Assembly',
  pressing: 'Pressing',
  'sizes to check': 'Sizes to check',
  templates: 'Templates',
  'colouring page': 'Colouring page',
  'other sizes': 'Other sizes',
  care: 'Cautions',
  notes: 'Lines for notes',
};

export const PART_WORDS: Readonly<Record<OwnPart['part'], string>> = { paragraph: 'Paragraph', tip: 'Tip', photo: 'Photo' };
