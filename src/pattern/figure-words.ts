import type { LengthUnit } from '../block/block.ts';
import { counted } from '../block/counting.ts';
import { formatLength } from '../measure/lengths.ts';
import { rational } from '../measure/rational.ts';
import { ENGLISH, inEnglish } from './english.ts';
import type { Speech } from './language.ts';
import type { Pattern } from './pattern.ts';
import type { FigureName } from './phrases/pattern-phrases.ts';
import { aboutSaid } from './saying.ts';
import { SMALL } from './warnings.ts';
import type { WorkFigures } from './work-figures.ts';
import { CM, type Act, type Stage } from './work-time.ts';

/** One figure for people. */
export interface FigureLine {
  readonly name: string;
  readonly says: string;
  /** What it means, in one sentence. */
  readonly means: string;
}

/** @returns the figures of a pattern in words, one line each, the time left out */
export function figureLines(figures: WorkFigures, pattern: Pattern, speech: Speech = inEnglish(pattern)): readonly FigureLine[] {
  const { pieces, seams, pointsToMatch, pointsApart, layers, narrowest, bias, straightCuts } = figures;
  const { block: { unit }, choices: { blocks } } = pattern;
  const { language: { pattern: phrases }, telling } = speech;
  const orNone = (n: number): string => (n === 0 ? phrases.none : telling.count(n));
  const some = (n: number) => (n > 0 ? counted(n, telling) : null);
  const said = { least: telling.length(SMALL[unit], unit), blocks: counted(blocks, telling) };
  const lines: readonly (readonly [FigureName, string])[] = [
    ['pieces', telling.count(pieces)],
    ['seams', orNone(seams)],
    ['points to match', orNone(pointsToMatch)],
    ['points apart', phrases.apart(some(pointsApart.sameWay), some(pointsApart.open)) || phrases.none],
    ['layers', telling.count(layers)],
    ['narrowest', aboutSaid(narrowest, unit, speech)],
    ['bias', orNone(bias.outer)],
    ['bias seams', orNone(bias.seams)],
    ['straight cuts', telling.count(straightCuts)],
  ];
  return lines.map(([line, says]) => {
    const [name, means] = phrases.figure(line, said);
    return { name, says, means };
  });
}

/** @returns one thing that takes time: "seam begun", "inch (2,54 cm) of seam" */
export const actWords = (act: Act, unit: LengthUnit, { pattern } = ENGLISH): string => pattern.act(act, unit, 'one');

export const STAGE_WORDS: Readonly<Record<Stage, string>> = ENGLISH.pattern.stage;

/** What the times rest on, for people. */
export const ASSUMED = ENGLISH.pattern.assumed;

/** @returns "3 seams begun" of one thing that is done so often; shares in squares that become several units are quarters: "4 1/2 lines …" */
export function timesWords(act: Act, times: number, unit: LengthUnit, { pattern } = ENGLISH): string {
  if (act !== 'inch') return `${formatLength(rational(Math.round(times * 4), 4))} ${pattern.act(act, unit, times === 1 ? 'one' : 'many')}`;
  const length = Math.round(unit === 'in' ? times : times * CM);
  return `${length} ${pattern.act(act, unit, unit === 'in' && length === 1 ? 'one' : 'many')}`;
}
