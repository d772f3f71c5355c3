import { SECTIONS, type SectionChoice, type SectionName } from '../../block/publication.ts';

/**
 * @param chosen the block's own choice, else the house style's; the usual one where absent
 * @returns the sections that are shown, in their order: those that are named as they are named, then the others as they usually follow;
 * the cover where nothing would be left
 */
export function sectionsShown(chosen: SectionChoice | undefined): readonly SectionName[] {
  if (chosen === undefined) return SECTIONS;
  const named = chosen.map(({ section }) => section);
  const shown = chosen.filter(({ section, shown: isShown }, i) => isShown && named.indexOf(section) === i).map(({ section }) => section);
  const all = [...shown, ...SECTIONS.filter((section) => !named.includes(section))];
  return all.length > 0 ? all : ['cover'];
}
