import { listed, several } from '../../../measure/words.ts';
import type { TemplatePhrases } from '../template-phrases.ts';

export const TEMPLATES_IN_ENGLISH: TemplatePhrases = {
  title: (name) => `${name}: templates`,
  place: (page, pages) => `Templates, page ${page} of ${pages}`,
  alarm: 'Do not cut yet: sewn back in exact arithmetic, this pattern is not the drawing.',
  size: (width, height) => `${width} by ${height}`,
  about: (size, blocks, seam) =>
    `${size} finished; to cut for ${several(blocks, 'block')}. The seam allowance of ${seam} is included. In brackets: lines of ` +
    'the cutting list.',
  lines: 'Cut along the solid line, sew along the dashed one. Seams cross at the dots; the arrow lies on the straight grain.',
  reversed: 'Reversed: with the template turned over.',

  cut: (printed, reversed) =>
    `Cut ${printed === 0 ? `${reversed} reversed` : reversed === 0 ? `${printed}` : `${printed} and ${reversed} reversed`}`,
  fabric: (name, lines) => `${name} (${lines.length === 1 ? 'line' : 'lines'} ${listed(lines)})`,
  more: (fabrics) => `and ${fabrics} more fabrics`,
  seeList: 'see the cutting list',
  top: (counts) => `top of the print: ${counts.join(', ')}`,

  part: (part, parts) => `part ${part} of ${parts}`,
  join: (template, part, uses) =>
    `${template}, ${part}: lay the parts on each other so that lines with the same letter meet, and glue them. ${uses}.`,

  measure: [
    'Print at actual size (100 %), not',
    '“fit to page”. Then measure: the',
    'larger square is 1 in. each way,',
    'the smaller one 2 cm. Cut only',
    'if both are.',
  ],
  inch: '1 in.',
};
