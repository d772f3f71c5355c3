import type { Block } from '../../block/block.ts';
import type { Telling } from '../../block/telling.ts';
import { SECTIONS, type Picture, type SectionName } from '../../block/publication.ts';
import type { HouseStyle } from '../house-style.ts';
import type { Language } from '../language.ts';
import type { Pattern } from '../pattern.ts';
import type { Setting } from '../pages/face.ts';
import { KEPT, printed } from '../telling/kept.ts';
import { careSection, colouringSection, hasTemplates, notesSection, sizesSection, templatesSection } from './closing.ts';
import type { Content, Section } from './content.ts';
import { clothSection } from './cloth-sheets.ts';
import { coverSection, warningBoxes } from './cover.ts';
import { cuttingSection } from './cutting-table.ts';
import { materialsSection } from './materials.ts';
import { wordsOf } from './own-words.ts';
import { placeOfPart, withOwnParts } from './own-parts.ts';
import { documentPhrases } from './phrases/of.ts';
import { pressingSection } from './pressing.ts';
import { otherSizesSection } from './size-table.ts';
import { sectionsShown } from './sections.ts';
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
  /** The style's. */
  readonly language: Language;
  /** How values are printed where no sentence can keep them. */
  readonly telling: Telling;
  /** For what is laid out by itself: templates at full size. */
  readonly setting: Setting;
}

/** What must be seen before anything is cut stands first where its own section is left out. */
function withWarnings(sections: readonly Section[], writing: Writing): readonly Section[] {
  const [first, ...others] = sections;
  if (first === undefined) return sections;
  const homeless = (['cover', 'materials'] as const).filter((home) => sections.every(({ name }) => name !== home));
  return [{ ...first, items: [...homeless.flatMap((home) => warningBoxes(writing, home)), ...first.items] }, ...others];
}

/** @returns everything that a published pattern of a block holds, in its order, before it is laid out on pages */
export function contentOf({ block, pattern, style, language, telling, setting }: ContentSource): Content {
  const words = documentPhrases(language.tag);
  const names = unitNames(pattern, block);
  const { publication } = block;
  const own = wordsOf(publication?.words ?? [], words.tag);
  const { said } = own;
  const writing: Writing = {
    block,
    pattern,
    style,
    speech: { language, telling: KEPT },
    words,
    said,
    named: (unit) => names.get(unit) ?? unit,
    print: (text) => printed(text, telling),
  };
  const chosen = sectionsShown(publication?.sections ?? style.sections);
  const write: Readonly<Record<SectionName, () => Section | null>> = {
    cover: () => coverSection(writing),
    skills: () => skillsSection(writing),
    materials: () => materialsSection(writing),
    cutting: () => cuttingSection(writing),
    cloth: () => clothSection(writing),
    units: () => unitsSection(writing),
    assembly: () => assemblySection(writing),
    pressing: () => pressingSection(writing),
    'sizes to check': () => sizesSection(writing, !(chosen.includes('templates') && hasTemplates(writing))),
    templates: () => templatesSection(writing, setting, telling),
    'colouring page': () => colouringSection(writing),
    'other sizes': () => otherSizesSection(writing),
    care: () => careSection(writing),
    notes: () => notesSection(writing),
  };
  const shown = chosen.flatMap((name) => write[name]() ?? []);
  const parts = withOwnParts(withWarnings(shown, writing), publication?.parts ?? [], publication?.pictures ?? []);
  return {
    title: plain(titleOf(writing)),
    language: words.tag,
    sections: parts.sections,
    colors: new Map(block.fabrics.map(({ id, color }) => [id, color])),
    ...(block.photos && { photos: photosOf(block.fabrics, block.photos) }),
    fabrics: [...pattern.fabrics.map(({ fabric }) => fabric.id), ...pattern.scraps.map(({ id }) => id)],
    words: words.layout,
    alarm: pattern.proof.holds ? null : words.templates.pages.alarm,
    aside: [
      ...own.aside(() => SECTIONS.filter((name) => !chosen.includes(name)).forEach((name) => write[name]())),
      ...parts.aside.map((part) => ({ at: placeOfPart(part), now: part.text, was: '' })),
    ],
  };
}

/** @returns the photos of those fabrics that show one */
const photosOf = (fabrics: Block['fabrics'], photos: readonly Picture[]): ReadonlyMap<string, Picture> =>
  new Map(
    fabrics.flatMap(({ id, photo }) => {
      const picture = photos.find((each) => each.id === photo?.picture);
      return picture ? [[id, picture] as const] : [];
    }),
  );
