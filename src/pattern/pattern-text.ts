import { equals, ZERO, type Rational } from '../measure/rational.ts';
import { printLength } from '../measure/lengths.ts';
import { listed, several } from '../measure/words.ts';
import type { Fabric } from '../block/block.ts';
import type { Cut } from '../cutting/cut.ts';
import type { Figures } from '../geometry/piecing/assembly.ts';
import { GOOD_FOR } from '../geometry/piecing/way.ts';
import type { Step } from '../sewing/step.ts';
import { alsoOf } from './also.ts';
import { detailsOf, purposeOf } from './cut-words.ts';
import { ENGLISH, inEnglish } from './english.ts';
import type { Cloth, Pattern, Size } from './pattern.ts';
import { piecesMore } from './divisions.ts';
import { refusedPinText } from './refused-pins.ts';
import { largeLines } from './large-lines.ts';
import { actWords, ASSUMED, figureLines, STAGE_WORDS } from './figure-words.ts';
import { columnsOf, padded, wrapped } from './plain-lines.ts';
import { allDirectionNotes } from './directions.ts';
import { eachWords, familyWords, scrapsOf, type ScrapFamily } from './scraps.ts';
import { aboutTime, secondsTime } from './time-words.ts';
import { workFigures } from './work-figures.ts';
import { ACTS, STAGES, USUAL_TIMES } from './work-time.ts';

/** Columns of the narrowest terminal that is still common. */
const COLUMNS = 80;
const INDENT = '  ';

type Lines = readonly string[];

/** @returns the pattern as plain text for a terminal or a printer, no line wider than 80 columns, ending in a line break */
export function patternText(pattern: Pattern): string {
  const families = scrapsOf(pattern);
  const also = alsoOf(pattern);
  const parts: readonly Lines[] = [
    headOf(pattern),
    warningOf(pattern),
    section('Materials', materials(pattern)),
    section('Before you cut', bullets([...pattern.refusedPins.map((pin) => refusedPinText(pin, inEnglish(pattern))), ...pattern.warnings.map(({ says }) => says), ...pattern.notes, ...allDirectionNotes(pattern), ...families.flatMap(({ says }) => says)])),
    section('Cutting', apart([...pattern.fabrics.map((cloth) => clothCuts(cloth, pattern)), ...families.map((family) => scrapCuts(family, pattern))])),
    section('Rounded up to the ruler', bullets(largeLines(pattern).map(({ says }) => says))),
    section('Units', units(pattern)),
    section('Sewing', pattern.steps.flatMap((step, i) => [...(i > 0 ? [''] : []), ...stepLines(step, also[i]!, pattern)])),
    section('Proof', proofLines(pattern)),
    section('Figures', figures(pattern)),
    section('Seams through one fabric', divided(pattern)),
    section('Other ways to sew it', otherWays(pattern)),
    boxed('Take care', pattern.cautions),
  ];
  const text = parts.filter((part) => part.length > 0).map((part) => part.join('\n'));
  return `${text.join('\n\n')}\n`;
}

const paragraph = (text: string, first = INDENT): Lines => wrapped(text, COLUMNS, first);
const bullets = (sentences: readonly string[]): Lines => sentences.flatMap((sentence) => paragraph(sentence, `${INDENT}- `));
const section = (title: string, lines: Lines): Lines => (lines.length === 0 ? [] : [title, '-'.repeat(title.length), ...lines]);

const sizeOf = ({ width, height }: Size, { block }: Pattern): string =>
  `${printLength(width, block.unit, 'bare')} by ${printLength(height, block.unit)}`;

function headOf(pattern: Pattern): Lines {
  const { block, choices, figures, way } = pattern;
  const length = (value: Rational): string => printLength(value, block.unit);
  const title = wrapped(block.name.trim() || 'Block', COLUMNS);
  const trim = equals(choices.trim, ZERO) ? '' : `, with ${length(choices.trim)} to trim off where a seam is diagonal`;
  return [
    ...title,
    '='.repeat(Math.max(...title.map(columnsOf))),
    ...paragraph(`${sizeOf(block.finished, pattern)} finished, ${sizeOf(block.unfinished, pattern)} unfinished`, ''),
    ...(choices.blocks > 1 ? [`All that follows is for ${choices.blocks} blocks.`] : []),
    ...paragraph(`Way to sew it: ${way}; ${figuresText(figures)}.`, ''),
    ...paragraph(`Seam allowance ${length(choices.seam)}, cut sizes up to the next ${length(choices.ruler)} of the ruler${trim}.`, ''),
  ];
}

function figuresText({ pieces, seams, partialSeams, setInSeams, differentUnits, templates, matchedPoints, bound }: Figures): string {
  const least = bound === undefined ? '' : bound === pieces ? ' (proved least)' : ` (at least ${bound})`;
  const said = [`${several(pieces, 'piece')}${least}`, several(seams, 'seam')];
  if (differentUnits > 0) said.push(several(differentUnits, 'different unit'));
  if (partialSeams > 0) said.push(several(partialSeams, 'partial seam'));
  if (setInSeams > 0) said.push(several(setInSeams, 'set-in seam'));
  if (templates > 0) said.push(several(templates, 'template piece'));
  if (matchedPoints > 0) said.push(several(matchedPoints, 'point') + ' to match');
  return said.join(', ');
}

/** What must be seen before anything else. */
function warningOf({ proof }: Pattern): Lines {
  const warning = 'Sewn back in exact arithmetic, this pattern is not the drawing: see the proof below.';
  return proof.holds ? [] : boxed('Do not cut yet', [warning]);
}

const nameOf = ({ name, id }: Fabric): string => name.trim() || id;

function materials(pattern: Pattern): Lines {
  const { fabrics, scraps, choices, block } = pattern;
  const lines = [
    ...fabrics.map(({ fabric, buy }) => [buy, nameOf(fabric)] as const),
    ...scraps.map((fabric) => [familyWords(fabric.scraps!.prints), nameOf(fabric)] as const),
  ];
  const wide = Math.max(...lines.map(([what]) => columnsOf(what)));
  return [
    ...lines.flatMap(([what, name]) => paragraph(name, `${INDENT}${padded(what, wide)}  `)),
    ...(fabrics.length === 0 ? [] : paragraph(`Cloth of ${printLength(choices.width, block.unit)} usable width.`)),
  ];
}

const shapeOf = ({ shape, set, quantity }: Cut): string => `${set ? 'strip' : shape}${quantity === 1 ? '' : 's'}`;

const cutSizeOf = (cut: Cut, pattern: Pattern): string =>
  cut.shape === 'square' ? printLength(cut.width, pattern.block.unit) : sizeOf(cut, pattern);

/** @returns parts with an empty line between them */
const apart = (parts: readonly Lines[]): Lines => parts.flatMap((part, i) => [...(i > 0 ? [''] : []), ...part]);

/** What the strips come to, and whether less would do; nothing of a single strip that is least. */
function takenText({ order, layout, strips }: Cloth, { block: { unit } }: Pattern): string {
  const { bought } = order;
  const measure = (amount: Rational): string =>
    bought.length === null ? printLength(amount, unit) : several(amount.n, bought.form);
  if (equals(layout.takes, ZERO)) return ', all from what you have';
  const proved = equals(layout.takes, layout.least);
  if (proved && bought.length === null && strips.length === 1 && strips[0]!.count === 1) return '';
  return `: ${measure(layout.takes)} together, ${proved ? 'proved least' : `at least ${measure(layout.least)}`} for cuts right across`;
}

function clothCuts(cloth: Cloth, pattern: Pattern): Lines {
  const { fabric, buy, added, strips } = cloth;
  const bands = strips.map(({ width, count }) => `${several(count, 'strip')} ${printLength(width, pattern.block.unit)} wide`);
  return [
    ...paragraph(`${nameOf(fabric)} (${buy}${added === null ? '' : `, with ${added}`})`),
    ...cutLines(pattern.cuts.filter((cut) => cut.fabric === fabric.id), pattern, (cut) => purposeOf(cut, inEnglish(pattern)).join(', ')),
    ...(bands.length === 0 ? [] : paragraph(`from ${listed(bands)}${takenText(cloth, pattern)}`, '    ')),
  ];
}

function scrapCuts({ fabric, prints, cuts }: ScrapFamily, pattern: Pattern): Lines {
  const each = new Map(cuts.map((line) => [line.cut, eachWords(line.each)]));
  return [
    ...paragraph(`${nameOf(fabric)} (${familyWords(prints)})`),
    ...cutLines(cuts.map(({ cut }) => cut), pattern, (cut) => `${purposeOf(cut, inEnglish(pattern)).join(', ')}: ${each.get(cut)}`),
  ];
}

/** One fabric's part of the cutting list; its columns line up with those of the other fabrics. */
function cutLines(cuts: readonly Cut[], pattern: Pattern, purpose: (cut: Cut) => string): Lines {
  const widest = (text: (cut: Cut) => string): number => Math.max(...pattern.cuts.map((cut) => columnsOf(text(cut))));
  const columns: readonly (readonly [(cut: Cut) => string, 'left' | 'right'])[] = [
    [({ id }) => `cut ${id}`, 'left'],
    [({ quantity }) => `${quantity}`, 'right'],
    [shapeOf, 'left'],
    [(cut) => cutSizeOf(cut, pattern), 'left'],
  ];
  const widths = columns.map(([text]) => widest(text));
  const row = (cut: Cut): Lines => {
    const cells = columns.map(([text, side], i) => padded(text(cut), widths[i]!, side));
    const details = detailsOf(cut, pattern, inEnglish(pattern)).flatMap((detail) => paragraph(detail, ' '.repeat(widths[0]! + widths[1]! + 8)));
    return [...paragraph(purpose(cut), `    ${cells.join('  ')}  `), ...details];
  };
  return cuts.flatMap(row);
}

function units(pattern: Pattern): Lines {
  const ids = Math.max(...pattern.units.map(({ unit }) => unit.id.length));
  const counts = Math.max(...pattern.units.map(({ count }) => `${count}`.length));
  return pattern.units.flatMap(({ unit, count, method, finished, unfinished, pieces }) => {
    const start = `${INDENT}${padded(unit.id, ids)}  make ${padded(`${count}`, counts, 'right')}  `;
    const how = method === null || method === 'pieces' ? several(pieces, 'piece') : ENGLISH.pattern.method[method];
    return [
      ...paragraph(`${unit.kind}, ${how}`, start),
      ...paragraph(`${sizeOf(finished, pattern)} finished, ${sizeOf(unfinished, pattern)} unfinished`, ' '.repeat(start.length)),
    ];
  });
}

/** What straight seams cost where one fabric runs on beyond them. */
function divided({ divisions }: Pattern): Lines {
  if (divisions.length === 0) return [];
  const more = piecesMore(divisions);
  const cost = `${several(more, 'piece')} and ${several(more, 'seam')} more than there are areas drawn, for the sake of straight seams and equal units:`;
  return [...paragraph(cost), ...bullets(divisions.map(({ says }) => says))];
}

function stepLines(step: Step, also: string | null, pattern: Pattern): Lines {
  const start = `${INDENT}${padded(`${step.number}`, `${pattern.steps.length}`.length, 'right')}. `;
  const below = ' '.repeat(start.length);
  const block = step.count === 1 ? 'The block' : `The ${step.count} blocks`;
  return [
    ...paragraph(step.makes === 'block' ? block : `Unit ${step.makes}, ${step.kind}`, start),
    ...paragraph(also === null ? step.text : `${step.text} ${also}`, below),
    ...(step.press === '' ? [] : paragraph(step.press, below)),
  ];
}

function proofLines({ proof }: Pattern): Lines {
  if (!proof.holds) return bullets(proof.faults);
  const seams = `${several(proof.seams, 'seam')}, ${proof.seams === 1 ? '' : 'all '}straight`;
  return paragraph(`Sewn back in exact arithmetic: ${seams}, and the result is the drawing.`);
}

/** What the work asks of its maker, and about how long it takes by the usual assumptions. */
function figures(pattern: Pattern): Lines {
  const known = workFigures(pattern);
  const { time } = known;
  const { blocks } = pattern.choices;
  const each = blocks === 1 ? '' : `, ${aboutTime(time.perBlock)} a block`;
  const assumed = ACTS.map(({ act }) => `${USUAL_TIMES[act]} s for each ${actWords(act, pattern.block.unit)}`);
  return [
    ...figureLines(known, pattern).flatMap(({ name, says }) => paragraph(`${name}: ${says}`)),
    ...paragraph(`Time, an estimate: about ${aboutTime(time.total)}${each}`),
    ...STAGES.flatMap((stage) => paragraph(`${STAGE_WORDS[stage]}: ${secondsTime(time.stages[stage])}`, `${INDENT}- `)),
    ...paragraph(`Reckoned with ${listed(assumed)}. ${ASSUMED}`),
  ];
}

function otherWays({ alternatives, way: chosen }: Pattern): Lines {
  return alternatives
    .filter(({ way }) => way !== chosen)
    .flatMap(({ way, figures }) => paragraph(`${way}: ${figuresText(figures)}. ${GOOD_FOR[way]}`, `${INDENT}- `));
}

/** @returns sentences in a frame, for what must not be overlooked */
function boxed(title: string, sentences: readonly string[]): Lines {
  if (sentences.length === 0) return [];
  const inside = COLUMNS - 4;
  const lines = sentences.flatMap((sentence) => wrapped(sentence, inside, '- '));
  const edge = '-'.repeat(inside + 2);
  return [`+- ${title} ${edge.slice(title.length + 3)}+`, ...lines.map((line) => `| ${padded(line, inside)} |`), `+${edge}+`];
}
