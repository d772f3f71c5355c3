import type { LengthUnit } from '../block/block.ts';
import { aboutLength } from '../measure/about.ts';
import { formatLength } from '../measure/lengths.ts';
import { rational } from '../measure/rational.ts';
import { several } from '../measure/words.ts';
import type { Pattern } from './pattern.ts';
import type { WorkFigures } from './work-figures.ts';
import { CM, type Act, type Stage } from './work-time.ts';

/** One figure for people. */
export interface FigureLine {
  readonly name: string;
  readonly says: string;
  /** What it means, in one sentence. */
  readonly means: string;
}

const orNone = (n: number): string => (n === 0 ? 'none' : `${n}`);

/** @returns the figures of a pattern in words, one line each, the time left out */
export function figureLines({ pieces, seams, pointsToMatch, pointsApart, layers, narrowest, bias, straightCuts }: WorkFigures, { block, choices }: Pattern): readonly FigureLine[] {
  const { sameWay, open } = pointsApart;
  const apart = [...(sameWay > 0 ? [`${sameWay} the same way`] : []), ...(open > 0 ? [`${open} open`] : [])].join(', ');
  return [
    { name: 'Pieces', says: `${pieces}`, means: 'Pieces of cloth in one block.' },
    { name: 'Seams', says: orNone(seams), means: 'Straight seams in one block.' },
    { name: 'Points to match', says: orNone(pointsToMatch), means: 'Places where seams from both sides of a seam must meet.' },
    { name: 'Points that do not nest', says: apart === '' ? 'none' : apart, means: 'Seams that run into each other there do not lie opposite ways as pressed, so they want a pin.' },
    { name: 'Layers at the thickest join', says: `${layers}`, means: 'Of cloth, folded as it is pressed: the more, the harder to sew and quilt through.' },
    { name: 'Narrowest piece', says: aboutLength(narrowest, block.unit), means: `Finished; under ${block.unit === 'in' ? '1/2 in.' : '1,2 cm'} a piece is hard to sew true.` },
    { name: 'Pieces with bias on the outer edge', says: orNone(bias.outer), means: 'Such an edge stretches until the block is sewn to its neighbours.' },
    { name: 'Seams along bias', says: orNone(bias.seams), means: 'An edge that was cut on the bias is sewn there: lay it down, do not pull it.' },
    {
      name: choices.blocks === 1 ? 'Straight cuts' : `Straight cuts for ${choices.blocks} blocks`,
      says: `${straightCuts}`,
      means: 'Before anything is sewn, off the cloth as it is laid out; round an outline one along each edge.',
    },
  ];
}

/** Each thing that takes time, but the length of seams. */
const ACT_WORDS: Readonly<Record<Exclude<Act, 'inch'>, readonly [one: string, many: string]>> = {
  cut: ['straight cut', 'straight cuts'],
  line: ['line drawn on a square', 'lines drawn on squares'],
  start: ['seam begun', 'seams begun'],
  match: ['point matched', 'points matched'],
  press: ['seam pressed', 'seams pressed'],
  apart: ['cut after sewing', 'cuts after sewing'],
  trim: ['unit trimmed to size', 'units trimmed to size'],
};

/** @returns one thing that takes time: "seam begun", "inch (2,54 cm) of seam" */
export const actWords = (act: Act, unit: LengthUnit): string => (act === 'inch' ? `inch ${unit === 'in' ? '' : '(2,54 cm) '}of seam` : ACT_WORDS[act][0]);

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  cutting: 'Cutting and marking',
  sewing: 'Sewing',
  pressing: 'Pressing',
  trimming: 'Cutting apart and trimming',
};

/** What the times rest on, for people. */
export const ASSUMED = 'No source gives these times: they are assumptions, from memory, and every maker has others.';

/** @returns "3 seams begun" of one thing that is done so often; shares in squares that become several units are quarters: "4 1/2 lines …" */
export function timesWords(act: Act, times: number, unit: LengthUnit): string {
  if (act === 'inch') return `${unit === 'in' ? several(Math.round(times), 'inch', 'inches') : `${Math.round(times * CM)} cm`} of seam`;
  const [one, many] = ACT_WORDS[act];
  return `${formatLength(rational(Math.round(times * 4), 4))} ${times === 1 ? one : many}`;
}
