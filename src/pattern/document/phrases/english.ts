import { capital, listed } from '../../../measure/words.ts';
import { TEMPLATES_IN_ENGLISH } from '../../phrases/english/templates.ts';
import { KEPT } from '../../telling/kept.ts';
import type { DocumentPhrases } from './phrases.ts';

const several = (n: number, one: string, many = `${one}s`): string => `${KEPT.count(n)} ${n === 1 ? one : many}`;

const FORMS = {
  'by length': ['length of cloth', 'lengths of cloth'],
  'fat quarter': ['fat quarter', 'fat quarters'],
  'fat eighth': ['fat eighth', 'fat eighths'],
  'precut strip': ['precut strip', 'precut strips'],
  'precut square': ['precut square', 'precut squares'],
  own: ['piece you have', 'pieces you have'],
} as const;

const SHAPES = { square: 'square', rectangle: 'rectangle', strip: 'strip' } as const;

/** What a published pattern says, in English. */
export const ENGLISH_DOCUMENT: DocumentPhrases = {
  tag: 'en',
  titles: {
    skills: 'What it asks of you',
    materials: 'Materials',
    cutting: 'Cutting',
    cloth: 'How to lay it on the cloth',
    units: 'Sewing the units',
    assembly: 'Putting the block together',
    pressing: 'Pressing',
    'sizes to check': 'Check your sizes',
    templates: 'Templates',
    'colouring page': 'Try your own colours',
    'other sizes': 'Other sizes',
    care: 'Take care',
    notes: 'Notes',
  },
  noName: 'Block',
  layout: { page: '{1} of {2}', continued: '{1}, continued' },

  cover: {
    facts: { finished: 'Finished', unfinished: 'Unfinished', pieces: 'Pieces', units: 'Different units', blocks: 'Blocks' },
    maker: (name) => `By ${name}.`,
    picture: (name) => `${name}, the finished block in its fabrics.`,
    beforeCutting: 'Before you cut',
    beforeBuying: 'Before you buy',
    doNotCut: 'Do not cut yet',
    notTheDrawing: 'Sewn back in exact arithmetic, this pattern does not give the block in the picture.',
  },

  skills: {
    intro: 'To sew this block you need to be at home with:',
    rotary: 'Cutting strips, squares and rectangles with ruler and rotary cutter.',
    method: (method, kinds) => {
      switch (method) {
        case 'one-at-a-time':
          return `Sewing ${kinds} from single triangles, sewn along an edge that stretches.`;
        case 'two-at-a-time':
          return `Sewing ${kinds} two at a time: two squares, sewn on both sides of a drawn line and cut apart.`;
        case 'four-at-a-time':
          return `Sewing ${kinds} four at a time, from one large square and four small ones.`;
        case 'eight-at-a-time':
          return `Sewing ${kinds} eight at a time, from two large squares.`;
        case 'stitch-and-flip':
          return `Sewing ${kinds} by stitch and flip: a square is sewn on along its diagonal, cut off and folded back.`;
        case 'triangles':
          return `Sewing ${kinds} from squares and rectangles cut into triangles, whose long edges may stretch.`;
        case 'triangles-from-strips':
          return `Sewing ${kinds} from triangles cut head to tail out of strips.`;
        case 'strip-sets':
          return `Sewing strips side by side and cutting them across, for ${kinds}.`;
        case 'pieces':
          return `Sewing ${kinds} piece by piece.`;
        case 'template':
          return `Sewing ${kinds} from pieces cut round a printed template.`;
      }
    },
    straightSeams: 'Straight seams with an even allowance; there is nothing else to it.',
    partial: (seams) =>
      seams === 1 ? 'One partial seam, which is sewn in two goes.' : `${several(seams, 'partial seam')}, each sewn in two goes.`,
    templates: (outlines) => `Cutting round ${several(outlines, 'printed template')}.`,
    bias: (seams) =>
      seams === 1
        ? 'One seam along a bias edge, which stretches if it is pulled.'
        : `${several(seams, 'seam')} along bias edges, which stretch if they are pulled.`,
    points: (points) => `Matching ${several(points, 'point')} where seams come together.`,
    loose: (points) =>
      points === 1
        ? 'At one of them the seams do not lock into each other; it wants a pin.'
        : `At ${KEPT.count(points)} of them the seams do not lock into each other; these want a pin.`,
    trimming: (amount) => `Units with a diagonal seam are sewn ${amount} too large and trimmed to size.`,
    smallest: (width) => `The narrowest piece finishes at ${width}.`,
  },

  materials: {
    heads: ['Fabric', 'You need', 'Used in'],
    added: (what) => `This holds ${what}.`,
    own: (n, size) => `Used first: ${several(n, 'piece')} of ${size}.`,
    directional: 'The print has an up and a down.',
    width: (width) => `Reckoned for cloth with a usable width of ${width}.`,
    widthOf: (cloth, width) => `${cloth} is reckoned for a usable width of ${width}.`,
    block: 'the block',
    alsoNeeded: 'You also need',
    tools: (unit, mark) =>
      `Rotary cutter, cutting mat and a ruler marked in ${unit === 'in' ? 'inches' : 'centimetres'}, with steps of ${mark}.`,
    sewing: (seam) => `Sewing machine with a foot or guide for a seam of ${seam}, thread, pins and an iron.`,
    pencil: 'A pencil or fabric marker for lines on the wrong side.',
    forTemplates: 'Paper or thin card for the templates, scissors and a pencil.',
    backing: 'This is a pattern for a block: cloth for borders, backing and binding is not in the amounts.',
  },

  cutting: {
    heads: ['Line', 'Cut', 'Then', 'For'],
    intro: 'In each fabric the largest pieces come first: cut from the top of the list down.',
    cuts: ({ quantity, shape, size, named }) =>
      shape === 'template'
        ? `${several(quantity, 'piece')} round template ${named} (${size})`
        : `${several(quantity, SHAPES[shape])}, ${size}`,
    once: (triangles) => `cut once on the diagonal: ${several(triangles, 'triangle')}`,
    twice: (triangles) => `cut twice on the diagonals: ${several(triangles, 'triangle')}`,
    segments: (sets, each, wide) =>
      `sewn into strip sets, ${sets === 1 ? 'cut' : 'each cut'} across into ${several(each, 'segment')} ${wide} wide`,
    spare: (n, what) => `${several(n, what === 'units' ? 'unit' : 'triangle')} to spare`,
    nested: (strips, each, measure) =>
      `cut ${strips === 1 ? 'it' : 'each'} into ${several(each, 'triangle')}, head to tail, ${measure} along the edges by turns`,
    block: 'the block',
    strips: (bands) => `Across the width: ${listed(bands.map(({ count, width }) => `${several(count, 'strip')}, ${width}`))}`,
    joined: (line, n, widths, length) =>
      `Line ${line}: ${several(n, 'piece')}, each from ${KEPT.count(widths)} widths of cloth, ${length} long, sewn together first`,
    unplaced: (line, n) => `${several(n, 'piece')} of line ${line} cannot be cut from this cloth: take a larger one`,
  },

  rules: {
    title: 'Good to know',
    seam: (seam) => `All cut sizes have a seam allowance of ${seam} on every side.`,
    rounded: (mark) => `Sizes that fall between two marks are rounded up to the next ${mark}.`,
    measure: 'Sizes of units are told unfinished, with their allowances: measure each kind before you go on.',
    rightSides: 'Cloth is sewn right sides together, unless a step says otherwise.',
    pressing: 'Press every seam before the next one crosses it, in the way the step and its arrows show.',
    strips: 'Cut strips across the cloth, from selvage to selvage, and pieces from the strips.',
    abbreviations: (pairs) => `In short: ${listed(pairs)}.`,
  },

  cloth: {
    intro:
      'Cut right across along the strong lines first, then cut the strips apart. Numbers are lines of the cutting list; what is ' +
      'pale is left over.',
    shows: (cloth, form) => `How the pieces lie on ${cloth}. ${form}`,
    form: (form, buy, size) => `${form === 'by length' ? buy : capital(FORMS[form][0])}, ${size}.`,
    alike: (n) => `${KEPT.count(n)} of these are cut alike.`,
    more: (n) => `and ${KEPT.count(n)} more strips like this`,
    strip: (n, width) => (n === 1 ? width : `${KEPT.count(n)} × ${width}`),
    left: (pieces) => `Left over: ${listed(pieces.map(({ count, size }) => (count === 1 ? size : `${KEPT.count(count)} of ${size}`)))}.`,
    directional: 'No piece is turned: the print runs along the cloth, from the top of the picture down.',
  },

  units: {
    intro: 'Smallest first. Sizes have their seam allowances; measure the first of each before you sew the rest.',
    unit: (letter) => `Unit ${letter}`,
    block: (blocks) => (blocks === 1 ? 'The block' : `The ${KEPT.count(blocks)} blocks`),
    what: (n, kind, method) => `Make ${KEPT.count(n)} ${kind}${method === null ? '' : `, ${method}`}.`,
    method: {
      'one-at-a-time': 'one at a time',
      'two-at-a-time': 'two at a time',
      'four-at-a-time': 'four at a time',
      'eight-at-a-time': 'eight at a time',
      'stitch-and-flip': 'stitch and flip',
      triangles: 'from triangles',
      'triangles-from-strips': 'from triangles cut out of strips',
      'strip-sets': 'from strip sets',
      pieces: 'piece by piece',
      template: 'with templates',
    },
    measures: (size) => `It measures ${size}.`,
    trims: (size) => `Trim to ${size}.`,
    blockMeasures: (size) => `The block measures ${size}.`,
    says: (step, of, does) => `Step ${KEPT.count(step)}, ${of}: ${does}.`,
  },

  assembly: {
    intro: 'Lay everything out as in the picture before you sew, and look at it once more from a step away.',
    picture: 'The block in its parts, as they are sewn together.',
    caption: 'Sewn in the order of the numbers',
    web: 'Chain-pieced by columns, the threads left uncut; then the long seams',
  },

  pressing: {
    intro: 'The back of the block, as it looks when all is pressed: each arrow points to where the seam allowances lie.',
    picture: 'The back of the block, with an arrow across every seam to the side it is pressed to.',
    noPoints: 'No seams come together at a point.',
    allNest: (points) =>
      points === 1
        ? 'At the one point where seams come together they lie opposite ways and lock into each other.'
        : `Seams come together at ${several(points, 'point')}, and at every one they lie opposite ways and lock into each other.`,
    someLoose: (points, loose, proved) =>
      `Seams come together at ${several(points, 'point')}. ` +
      `At ${loose === 1 ? 'the one with a ring' : `the ${KEPT.count(loose)} with a ring`} they do not lock into each other: ` +
      `pin ${loose === 1 ? 'it' : 'these'}${proved ? '; no other pressing does better' : ''}.`,
    open: 'A bar with two points across a seam: press it open.',
  },

  sizes: {
    intro: 'Measure the first of each unit, and tick it off. Sizes are unfinished, with their seam allowances.',
    heads: ['Unit', 'What it is', 'Make', 'Must measure'],
    block: 'Block',
    measure: 'Is this page printed at its true size? Then the larger square measures 1 in. each way, the smaller one 2 cm.',
  },

  templates: {
    leads: 'The templates are printed at full size on pages of their own.',
    pages: TEMPLATES_IN_ENGLISH,
  },

  colouring: {
    intro: 'The block in outline, to colour in before you choose your fabrics.',
    large: 'The block in outline.',
    small: (n) => `Outline ${KEPT.count(n)} to try colours in.`,
  },

  otherSizes: {
    intro: (mark) =>
      'The same block can be sewn at other sizes. At these every plain cut and every unit falls on a mark of a ruler with steps ' +
      `of ${mark}.`,
    friendly: (sizes) => `Finished: ${sizes}.`,
    none: (mark) => `At no other size near this one does everything fall on a mark of a ruler with steps of ${mark}.`,
    table: 'What is cut at some of them; at the top how wide the block finishes.',
    templates: 'The templates of this pattern are for its own size only.',
    heads: ['Line', 'Cut'],
    shape: ({ quantity, shape }) => (shape === 'template' ? several(quantity, 'piece') : several(quantity, SHAPES[shape])),
  },

  care: { title: 'With blade, needle and iron' },
};
