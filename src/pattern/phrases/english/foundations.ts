import type { FoundationPhrases } from '../foundation-phrases.ts';
import { TEMPLATES_IN_ENGLISH } from './templates.ts';

export const foundations: FoundationPhrases = {
  measure: TEMPLATES_IN_ENGLISH.measure,
  inch: TEMPLATES_IN_ENGLISH.inch,
  title: (block) => `${block}: foundations`,
  place: (page, pages) => `Foundations, page ${page} of ${pages}`,
  lines: (seam, blocks) => [
    'Each foundation is the mirror image of its part of the block: the cloth lies on its blank side, and you sew from the printed one.',
    'Sew on the solid lines, in the order of the numbers; trim each seam to an allowance and press it before the next.',
    `Then trim along the outer line, ${seam} outside the dashed one, which is sewn when the parts are joined.` +
      (blocks > 1 ? ` Print ${blocks} copies: one for each block.` : ''),
  ],
  alarm: 'Do not sew yet: sewn back in exact arithmetic, this pattern is not the drawing.',
  part: (section, part, parts) => `${section}, part ${part} of ${parts}: lay the parts on each other so that lines with the same letter meet, and glue them.`,
  section: (letter) => (letter === '' ? 'The foundation' : `Section ${letter}`),
};
