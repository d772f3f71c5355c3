import type { Block } from '../../block/block.ts';
import { SECTIONS, type SectionName } from '../../block/publication.ts';
import type { HouseStyle } from '../house-style.ts';
import type { Pattern } from '../pattern.ts';
import type { Setting } from '../pages/face.ts';
import { careSection, colouringSection, notesSection, sizesSection, templatesSection } from './closing.ts';
import type { Content, Said, Section } from './content.ts';
import { coverSection } from './cover.ts';
import { cuttingSection } from './cutting-table.ts';
import { materialsSection } from './materials.ts';
import { documentPhrases } from './phrases/of.ts';
import { skillsSection } from './skills.ts';
import { assemblySection, unitsSection } from './steps.ts';
import { unitNames } from './unit-names.ts';
import { plain, titleOf, type Writing } from './writing.ts';

/** What a published pattern is written from. */
export interface ContentSource {
  readonly block: Block;
  /** That of the block, told in the style's language with values kept. */
  readonly pattern: Pattern;
  readonly style: HouseStyle;
  /** For what is laid out by itself: templates at full size. */
  readonly setting: Setting;
}

/** @returns everything that a published pattern of a block holds, in its order, before it is laid out on pages */
export function contentOf({ block, pattern, style, setting }: ContentSource): Content {
  const words = documentPhrases(style.language);
  const names = unitNames(pattern, block);
  const said = (at: string, told: string): Said => ({ at, told });
  const writing: Writing = { block, pattern, style, words, said, named: (unit) => names.get(unit) ?? unit };
  const write: Readonly<Record<SectionName, () => Section | null>> = {
    cover: () => coverSection(writing),
    skills: () => skillsSection(writing),
    materials: () => materialsSection(writing),
    cutting: () => cuttingSection(writing),
    cloth: () => null,
    units: () => unitsSection(writing),
    assembly: () => assemblySection(writing),
    pressing: () => null,
    'sizes to check': () => sizesSection(writing),
    templates: () => templatesSection(writing, setting),
    'colouring page': () => colouringSection(writing),
    'other sizes': () => null,
    care: () => careSection(writing),
    notes: () => notesSection(writing),
  };
  return {
    title: plain(titleOf(writing)),
    language: words.tag,
    sections: SECTIONS.flatMap((name) => write[name]() ?? []),
    colors: new Map(block.fabrics.map(({ id, color }) => [id, color])),
    fabrics: [...pattern.fabrics.map(({ fabric }) => fabric.id), ...pattern.scraps.map(({ id }) => id)],
    words: words.layout,
    alarm: pattern.proof.holds ? null : words.cover.notTheDrawing,
    aside: [],
  };
}
