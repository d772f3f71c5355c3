import type { Cut } from '../../../cutting/cut.ts';
import { capital, listed } from '../../../measure/words.ts';
import { sentence } from '../../../sewing/sentences.ts';
import type { FigureName, PatternPhrases, UnitsOf } from '../pattern-phrases.ts';
import type { WrittenPhrases } from '../written-phrases.ts';
import { also } from './also.ts';
import { foundations } from './foundations.ts';
import { VALUES_IN_ENGLISH } from './values.ts';

const cuts = (ids: readonly string[]): string => `${ids.length === 1 ? 'cut' : 'cuts'} ${listed(ids)}`;
const goesInto = (units: readonly (string | null)[]): string => `for ${listed(units.map((unit) => unit ?? 'the block'))}`;
const all = ({ letter, one }: UnitsOf): string => `${one ? 'unit' : 'the units'} ${letter}`;
const runOf = ([from, to]: readonly [number, number]): readonly string[] => (to - from > 1 ? [`${from} to ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`]);

const SUBCUTS: Readonly<Record<Cut['subcut'], string>> = {
  none: '',
  once: ', cut once on the diagonal',
  twice: ', cut twice on the diagonals',
  'head to tail': ', cut into triangles head to tail',
};

const ACTS = {
  cut: ['straight cut', 'straight cuts'],
  line: ['line drawn on a square', 'lines drawn on squares'],
  start: ['seam begun', 'seams begun'],
  match: ['point matched', 'points matched'],
  press: ['seam pressed', 'seams pressed'],
  apart: ['cut after sewing', 'cuts after sewing'],
  trim: ['unit trimmed to size', 'units trimmed to size'],
} as const;

const FIGURES: Readonly<Record<Exclude<FigureName, 'narrowest' | 'straight cuts'>, readonly [string, string]>> = {
  pieces: ['Pieces', 'Pieces of cloth in one block.'],
  seams: ['Seams', 'Straight seams in one block.'],
  'points to match': ['Points to match', 'Places where seams from both sides of a seam must meet.'],
  'points apart': ['Points that do not nest', 'Seams that run into each other there do not lie opposite ways as pressed, so they want a pin.'],
  layers: ['Layers at the thickest join', 'Of cloth, folded as it is pressed: the more, the harder to sew and quilt through.'],
  bias: ['Pieces with bias on the outer edge', 'Such an edge stretches until the block is sewn to its neighbours.'],
  'bias seams': ['Seams along bias', 'An edge that was cut on the bias is sewn there: lay it down, do not pull it.'],
};

/** What is told of a pattern when somebody asks for it, in English. */
export const SHOWN_IN_ENGLISH: Omit<PatternPhrases, keyof WrittenPhrases> = {
  values: VALUES_IN_ENGLISH,
  method: {
    'one-at-a-time': 'one at a time',
    'two-at-a-time': 'two at a time',
    'four-at-a-time': 'four at a time',
    'eight-at-a-time': 'eight at a time',
    'stitch-and-flip': 'stitch and flip',
    triangles: 'triangles',
    'triangles-from-strips': 'triangles from strips',
    template: 'template',
    pieces: 'from pieces',
    'strip-sets': 'strip sets',
  },

  refusedPin: (number, says) => `Pin ${number} is not honoured: ${says}`,

  large: (ids, much, off, kept) => {
    const where =
      off.length === 0
        ? 'and no step trims it'
        : `trimmed off in ${listed(off.map(({ step, size, between }) => `step ${step} to ${size}${between ? ' (between two marks)' : ''}`))}` +
          (kept ? ', but where they go into the block as they are nothing trims them' : '');
    return sentence(`${capital(cuts(ids))} ${ids.length === 1 ? 'is' : 'are'} ${much} large, ${where}`);
  },

  goesInto,
  cutOnce: 'cut once on the diagonal',
  cutTwice: 'cut twice on the diagonals',
  headToTail: (strips, { n, said }) => `${strips === 1 ? '' : 'each strip '}cut into ${said} ${n === 1 ? 'triangle' : 'triangles'}, head to tail`,
  segments: ({ said }) => `in strip sets, ${said} segments each`,
  spare: ({ said }) => `${said} to spare`,
  diagonals: (falling, rising) => {
    const hands = [
      ...(falling ? [`${falling.said} from the top left to the bottom right`] : []),
      ...(rising ? [`${rising.said} from the bottom left to the top right`] : []),
    ];
    return `Right side up, standing on the short side, cut ${listed(hands)}.`;
  },
  corners: (corners) =>
    `Finished corners, across by down: ${corners.map(([across, down]) => `${across} by ${down}`).join('; ')}. Add the seam allowance all round.`,

  offMarks: (lengths, more) => listed(more === null ? lengths : [...lengths, `${more.said} more`]),
  shortCut: ({ n, said }, shape, size, subcut, units) => `${said} ${shape}${n === 1 ? '' : 's'} ${size}${SUBCUTS[subcut]} ${goesInto(units)}`,
  fromScraps: 'from scraps',
  tooNarrow: (narrowest, seam) => `Its narrowest piece would finish at ${narrowest}, less than the ${seam} allowances behind it.`,

  hasUpAndDown: (cloth) => `${cloth} has an up and a down.`,
  laidTogether: (method, units) => {
    const how = method === 'two' ? `it is upside down in every second of ${all(units)}` : `it runs in all directions in ${all(units)}`;
    return `${capital(method)} at a time, and laid alike, ${how}; cut its triangles one by one if it should stay upright.`;
  },
  turned: (sideways, down, units) => {
    const ways = [...(sideways ? [`sideways in ${sideways.said}`] : []), ...(down ? [`upside down in ${down.said}`] : [])];
    return (
      `Made alike, it runs ${listed(ways)} of ${all(units)} in the block; ` +
      'lay its pieces upright for each place before you cut diagonals and sew, if it should not.'
    );
  },
  turnedSets: (sideways, down, units) => {
    const ways = [...(sideways ? [`sideways in ${sideways.said}`] : []), ...(down ? [`upside down in ${down.said}`] : [])];
    return `Cut from strip sets, all alike, it runs ${listed(ways)} of ${all(units)} in the block; sew these from pieces if it should not.`;
  },
  flipped: (units) =>
    `Corners of ${all(units)} are flipped over: lay their squares with the print sideways, try one with a pin, and it comes to stand upright.`,

  family: ({ said }) => `scraps of ${said} prints`,
  equalPairs: (cloth, { n, said }, why, enough) => {
    const pairs = `${said} ${n === 1 ? 'pair' : 'pairs'} of pieces of one print ${n === 1 ? 'touches' : 'touch'} along a seam`;
    const would = `${enough.said} prints would do`;
    if (why === 'one square') {
      return `${cloth}: ${pairs}, because what comes from one square is of one print: cut each piece by itself, or take more prints; ${would}.`;
    }
    if ('touching' in why) return `${cloth}: ${pairs}, because ${why.touching.said} of its pieces all touch each other; ${would}.`;
    const cannot = why.proved
      ? `${why.prints.said} prints cannot be kept apart in this block`
      : `no spread of ${why.prints.said} prints was found that keeps them apart`;
    return `${cloth}: ${pairs}; ${cannot}, ${would}.`;
  },
  heldPairs: (cloth, { n, said }) =>
    `${cloth}: ${said} ${n === 1 ? 'pair' : 'pairs'} of pieces of one print ${n === 1 ? 'touches' : 'touch'} along a seam, because of prints that are held.`,
  lostHeld: (cloth, { n, said }) =>
    `${cloth}: ${said} ${n === 1 ? 'piece does' : 'pieces do'} not keep the print held for ${n === 1 ? 'it' : 'them'}, for what comes from one square is of one print.`,
  equalCorners: (cloth, { n, said }) =>
    `${cloth}: no pieces of one print touch along a seam, but at ${n === 1 ? 'one corner' : `${said} corners`} they do.`,
  idlePrints: (cloth, { n, said }) =>
    `${cloth}: ${said} ${n === 1 ? 'print is' : 'prints are'} not used, for there are fewer pieces than prints.`,
  spreadAlike: (cloth, { said }) => `${cloth}: all ${said} blocks are spread alike.`,
  ofEachPrint: (count, prints) => `${count.said} of each of ${prints.said} prints`,
  ofPrints: ({ said }, prints) => {
    const numbers = prints.flatMap(runOf);
    return `${said} of ${prints.length === 1 && prints[0]![0] === prints[0]![1] ? 'print' : 'each of prints'} ${listed(numbers)}`;
  },

  none: 'none',
  figure: (name, { least, blocks }) => {
    if (name === 'narrowest') return ['Narrowest piece', `Finished; under ${least} a piece is hard to sew true.`];
    if (name === 'straight cuts') {
      return [
        blocks.n === 1 ? 'Straight cuts' : `Straight cuts for ${blocks.said} blocks`,
        'Before anything is sewn, off the cloth as it is laid out; round an outline one along each edge.',
      ];
    }
    return FIGURES[name];
  },
  apart: (sameWay, open) => [...(sameWay ? [`${sameWay.said} the same way`] : []), ...(open ? [`${open.said} open`] : [])].join(', '),
  act: (act, unit, number) => {
    if (act === 'inch') return number === 'one' ? `inch ${unit === 'in' ? '' : '(2,54 cm) '}of seam` : `${unit === 'in' ? 'inches' : 'cm'} of seam`;
    return ACTS[act][number === 'one' ? 0 : 1];
  },
  stage: { cutting: 'Cutting and marking', sewing: 'Sewing', pressing: 'Pressing', trimming: 'Cutting apart and trimming' },
  assumed: 'No source gives these times: they are assumptions, from memory, and every maker has others.',

  also,
  foundations,
  panel: {
    'one piece': 'One piece',
    'lay out and sew': 'Lay out and sew',
    'put together': 'Put together in the order of the numbers',
    web: 'Chain-pieced column by column, the threads uncut; then the long seams',
    foundations: 'Foundations, printed side up: the mirror image',
    sections: 'The sections from the front: sew them together',
    'right sides together': 'Right sides together',
    'seams nested': 'Seams nested',
    'seams matched': 'Seams matched',
    'both sides': 'Sew both sides, cut between',
    'on each half': 'On each half: sew both sides, cut between',
    'in four': 'Sew, then cut in four and on the diagonals',
    'flip a corner': 'Sew on the line, cut outside it, fold back',
    'head to tail': 'Cut head to tail',
    'strips side by side': 'Sew strips side by side',
    'cut across': 'Press, cut across',
    'a segment': 'One segment',
    press: 'Press',
    'press and trim': 'Press and trim',
  },
};
