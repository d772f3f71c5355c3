import { printLength } from '../measure/lengths.ts';
import type { Rational } from '../measure/rational.ts';
import type { Cut } from '../cutting/cut.ts';
import { box } from '../geometry/convex.ts';
import { compareX, compareY } from '../geometry/point.ts';
import type { Join, Step, StepPart } from './step.ts';

/** What the sentences of a step are made from. */
export interface Vocabulary {
  readonly unit: 'in' | 'cm';
  readonly seam: Rational;
  fabricName(id: string): string;
  cut(id: string): Cut;
}

/** A step before it is put into words. */
export type Unworded = Omit<Step, 'number' | 'text' | 'press'>;

const TURNS = ['', ' turned a quarter clockwise', ' turned half round', ' turned a quarter counter-clockwise'] as const;

/** @returns the step's instruction: what meets what, and what it must measure (unfinished) */
export function instruction(step: Unworded, words: Vocabulary): string {
  const size = measured(step, words);
  const make = step.makes === 'block' ? '' : ` Make ${step.count}.`;
  const trim = step.trimmed ? `Trim to ${size}.` : `It measures ${size}.`;
  return `${howTo(step, words)} ${trim}${make}`;
}

function measured({ unfinished: { width, height } }: Unworded, { unit }: Vocabulary): string {
  return `${printLength(width, unit, 'bare')} by ${printLength(height, unit)}`;
}

function howTo(step: Unworded, words: Vocabulary): string {
  if (step.joins.length === 0) return `The block is one piece, ${partName(step.parts[0]!, words)}: there is nothing to sew.`;
  const allowance = printLength(words.seam, words.unit);
  switch (step.kind) {
    case 'half-square triangle':
      return halfSquare(step, words, allowance);
    case 'quarter-square triangle':
      return quarterSquare(step, words, allowance);
    case 'split quarter-square triangle':
      return splitQuarter(step, words, allowance);
    case 'flying geese':
      return geese(step, words, allowance);
    case 'corner-triangle unit':
      return corners(step, words, step.parts.filter((p) => role(p) === 'corner' || role(p) === 'half').length);
    case 'square in a square':
      return corners(step, words, 4);
    case 'half-rectangle triangle':
      return `Lay two triangles (${namesOf(step, words)}) right sides together so that their tips stand out equally; sew the long side.`;
    case 'peak':
      return `Sew a side triangle to one slope of the middle triangle, press, then sew the other (${namesOf(step, words)}).`;
    case 'partial-seam ring':
      return ring(step, words);
    case 'free unit':
      return inOrder(step, words);
    default:
      return joined(step, words);
  }
}

const role = (part: StepPart): string => ('cut' in part.from ? part.from.role : 'unit');

function fabrics(step: Unworded, words: Vocabulary, wanted?: string): string {
  const names = step.parts.filter((p) => wanted === undefined || role(p) === wanted).map((p) => ('cut' in p.from ? words.fabricName(p.from.fabric) : p.from.unit));
  return [...new Set(names)].join(' and ');
}

/** Pieces by fabric and how many of each, in the order they are laid down. */
function namesOf(step: Unworded, words: Vocabulary): string {
  const counts = new Map<string, number>();
  for (const part of step.parts) {
    const name = 'cut' in part.from ? words.fabricName(part.from.fabric) : part.from.unit;
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, n]) => (n > 1 ? `${n} ${name}` : name)).join(', ');
}

function halfSquare(step: Unworded, words: Vocabulary, allowance: string): string {
  const cloths = fabrics(step, words);
  if (step.method === 'two-at-a-time') {
    return `Lay ${cloths} squares right sides together, draw one diagonal, sew ${allowance} to each side of it and cut on it: two from each pair.`;
  }
  if (step.method === 'eight-at-a-time') {
    return (
      `Lay ${cloths} squares right sides together, draw both diagonals and sew ${allowance} to each side of both. ` +
      'Cut through the middle both ways, then on the diagonals: eight from each pair.'
    );
  }
  return `Sew ${cloths} triangles together along their long sides.`;
}

function quarterSquare(step: Unworded, words: Vocabulary, allowance: string): string {
  if (step.method === 'two-at-a-time') {
    return (
      `From ${fabrics(step, words)} squares first sew half-square triangles, two from each pair (${allowance} to each side of a diagonal, cut on it). ` +
      `Lay two of them right sides together with the seams nested, draw the diagonal that crosses the seam, sew ${allowance} to each side of it and cut on it.`
    );
  }
  return `Sew the triangles (${namesOf(step, words)}) into two halves along their short sides, then join the halves along the long seam, middles nested.`;
}

function splitQuarter(step: Unworded, words: Vocabulary, allowance: string): string {
  if (step.method === 'two-at-a-time') {
    return (
      `Sew the two small triangles' squares as half-square triangles (${allowance} to each side of a diagonal, cut on it). Lay one on a square of the large ` +
      `triangle's fabric, draw the diagonal that crosses the seam, sew ${allowance} to each side of it and cut on it: one of each hand.`
    );
  }
  return `Sew the two small triangles together along a short side, then sew the large triangle to their long side (${namesOf(step, words)}).`;
}

function geese(step: Unworded, words: Vocabulary, allowance: string): string {
  switch (step.method) {
    case 'four-at-a-time':
      return (
        `Lay two ${fabrics(step, words, 'small')} squares in opposite corners of a ${fabrics(step, words, 'large')} square, right sides together; draw the ` +
        `diagonal through both, sew ${allowance} to each side of it and cut on it. Press, lay a third and fourth square in the free corners, ` +
        'draw, sew and cut the same way: four from each large square.'
      );
    case 'stitch-and-flip':
      return corners(step, words, 2);
    default:
      return `Sew a small triangle to each short side of the large one, left then right (${namesOf(step, words)}); leave a seam allowance above the point.`;
  }
}

function corners(step: Unworded, words: Vocabulary, count: number): string {
  const base = fabrics(step, words, 'base');
  if (step.method !== 'stitch-and-flip') {
    return `Sew the corner triangles to the middle piece, opposite ones first (${namesOf(step, words)}).`;
  }
  const each = count === 1 ? 'the corner' : count === 2 ? 'each of the two corners' : `each of the ${count} corners`;
  return (
    `Draw a diagonal on the back of each ${fabrics(step, words, 'corner')} square. For ${each}: lay a square on the ${base} piece, right sides together, ` +
    'sew on the line, cut a seam allowance beyond it and press the corner out.'
  );
}

function ring(step: Unworded, words: Vocabulary): string {
  const [centre, first, ...others] = step.parts.map((part) => partName(part, words)) as [string, string, ...string[]];
  return (
    `Sew ${first} to ${centre}, beginning where their corners meet and stopping half way along the centre. ` +
    `Going round, sew on ${others.join(', then ')}, each along its whole side. Then sew the first seam to its end.`
  );
}

function inOrder(step: Unworded, words: Vocabulary): string {
  const names = step.parts.map((part, i) => `${i + 1} ${partName(part, words)}`).join('; ');
  const sewn = step.joins.map((join) => sewnPair(join, step)).join(', then ');
  return `Number the pieces as in the picture: ${names}. Sew ${sewn}.`;
}

/** "1 to 2", "3 to 1–2": everything a thing is made of, as ranges of numbers. */
function sewnPair(join: Join, step: Unworded): string {
  const members = (thing: number): number[] => {
    if (thing < step.parts.length) return [thing];
    const made = step.joins[thing - step.parts.length]!;
    return [...members(made.first), ...members(made.second)].sort((a, b) => a - b);
  };
  const text = (thing: number): string => members(thing).map((n) => n + 1).join('+');
  return `${text(join.second)} to ${text(join.first)}`;
}

function joined(step: Unworded, words: Vocabulary): string {
  const [first, last] = [step.parts[0]!, step.parts.at(-1)!];
  const [a, b] = [box(first.outline), box(last.outline)];
  const across = compareX(a.right, b.left) <= 0 || compareX(b.right, a.left) <= 0;
  const upright = compareY(a.bottom, b.top) <= 0 || compareY(b.bottom, a.top) <= 0;
  const names = inRuns(step.parts.map((part) => partName(part, words)));
  const direction = across && !upright ? 'Left to right' : 'Top to bottom';
  return `${direction}, sew together ${names}.`;
}

/** "A, A, A, B" as "3 A, B". */
function inRuns(names: readonly string[]): string {
  const runs: { name: string; count: number }[] = [];
  for (const name of names) {
    const last = runs.at(-1);
    if (last?.name === name) last.count++;
    else runs.push({ name, count: 1 });
  }
  return runs.map(({ name, count }) => (count > 1 ? `${count} times ${name}` : name)).join(', ');
}

/** @returns what to call a part: a unit by its letter and turn, a piece by its fabric and cut size */
export function partName(part: StepPart, { unit, fabricName, cut }: Vocabulary): string {
  if ('unit' in part.from) return `${part.from.unit}${TURNS[part.turn]}`;
  const { shape, width, height } = cut(part.from.cut);
  const fabric = fabricName(part.from.fabric);
  if (part.from.role === 'half' || part.from.role === 'quarter') return `${fabric} triangle`;
  if (shape === 'template') return `${fabric} template ${part.from.cut}`;
  if (shape === 'square') return `${fabric} ${printLength(width, unit, 'bare')} square`;
  return `${fabric} ${printLength(width, unit, 'bare')} by ${printLength(height, unit, 'bare')}`;
}
