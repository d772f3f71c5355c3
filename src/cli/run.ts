import packageJson from '../../package.json' with { type: 'json' };
import type { Block } from '../block/block.ts';
import { takeColourway } from '../block/colour/colourways.ts';
import { parseBlock } from '../files/block-file.ts';
import { withLeastCloths } from '../pattern/least-cloths.ts';
import { makePattern } from '../pattern/make-pattern.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { patternJson } from '../pattern/pattern-json.ts';
import { patternText } from '../pattern/pattern-text.ts';
import { harmless } from '../pattern/plain-lines.ts';
import { sizesJson } from '../pattern/sizes-json.ts';
import { sizesText } from '../pattern/sizes-text.ts';
import { otherSizes } from '../pattern/sizes.ts';
import { readBlockText } from './block-text.ts';
import { choicesIn, readChoices } from './choices.ts';
import { HELP } from './help.ts';
import { withUnitMethods } from './methods.ts';
import { readOrder, type Order, type WishedRange } from './order.ts';
import type { PublishingOrder } from './publishing-order.ts';
import { readRange } from './range.ts';
import { writeTemplates, type TemplateOrder } from './templates.ts';

/** What the program says and how it ends: 0, 1 where the file or the drawing is at fault, 2 for wrong usage. */
export interface Answer {
  /** For standard output; empty where there is nothing to print. */
  readonly print: string;
  /** One sentence for standard error, null where all is well. */
  readonly complaint: string | null;
  readonly exit: 0 | 1 | 2;
}

const printed = (print: string): Answer => ({ print, complaint: null, exit: 0 });
const refused = (exit: 1 | 2, sentence: string): Answer => ({ print: '', complaint: harmless(sentence), exit });

/** @returns the answer to a command line */
export async function run(args: readonly string[], standardInput: NodeJS.ReadableStream): Promise<Answer> {
  const order = readOrder(args);
  if (!order.ok) return refused(2, order.problem.sentence);
  switch (order.value.command) {
    case 'help':
      return printed(HELP);
    case 'version':
      return printed(`${packageJson.version}\n`);
    default:
      return answer(order.value, standardInput);
  }
}

/** The solver is large: it is loaded only where a fabric asks for it. */
const solver = async () => await (await import('../cutting/cloth/solver.ts')).openSolver();

type BlockOrder = Extract<Order, { readonly file: string }>;

async function answer(order: BlockOrder, standardInput: NodeJS.ReadableStream): Promise<Answer> {
  const { command, file, json, wishes, colourway, range, templates, publishing } = order;
  const typed = readChoices(wishes);
  if (!typed.ok) return refused(2, typed.problem.sentence);
  const text = await readBlockText(file, standardInput);
  if (!text.ok) return refused(1, text.problem.sentence);
  const read = parseBlock(text.value);
  if (!read.ok) return refused(1, read.problem.sentence);
  const block = colourway === null ? read : takeColourway(read.value, colourway);
  if (!block.ok) return refused(2, `--colourway: ${block.problem.sentence}`);
  const choices = choicesIn(block.value.finished.unit, typed.value);
  if (!choices.ok) return refused(2, choices.problem.sentence);
  const { units } = typed.value;
  const lettered = units.size > 0 ? makePattern(block.value, choices.value, 'chosen way') : null;
  if (lettered && !lettered.ok) return refused(1, lettered.problem.sentence);
  const asked = lettered ? withUnitMethods(block.value, lettered.value, units) : block;
  if (!asked.ok) return refused(2, asked.problem.sentence);
  const pattern = makePattern(asked.value, choices.value);
  if (!pattern.ok) return refused(1, pattern.problem.sentence);
  const { way } = choices.value;
  if (way !== undefined && way !== pattern.value.way) {
    const offered = [pattern.value, ...pattern.value.alternatives].map((other) => `"${other.way}"`);
    return refused(2, `--way: this block has no way "${way}"; choose ${offered.join(' or ')}.`);
  }
  if (templates !== null) return answerTemplates(pattern.value, templates);
  if (publishing !== null) return answerPublishing(asked.value, await withLeastCloths(pattern.value, solver), publishing);
  if (command === 'sizes') return answerSizes(pattern.value, range, json);
  return command === 'plan' ? report('plan', await withLeastCloths(pattern.value, solver), json) : report('check', pattern.value, json);
}

/** @returns what was written; templates of a pattern whose proof does not hold say so on every page, and here */
async function answerTemplates(pattern: Pattern, order: TemplateOrder): Promise<Answer> {
  const written = await writeTemplates(pattern, order);
  if (!written.ok) return refused(1, written.problem.sentence);
  const { complaint, exit } = report('check', pattern, false);
  return { print: `${harmless(written.value)}\n`, complaint, exit };
}

/** @returns what was written; a pattern whose proof does not hold says so on every page, and here */
async function answerPublishing(block: Block, pattern: Pattern, order: PublishingOrder): Promise<Answer> {
  // Only here are the words of documents needed.
  const written = await (await import('./publishing.ts')).writePublishing(block, pattern, order);
  if (!written.ok) return refused(written.problem.code === 'usage' ? 2 : 1, written.problem.sentence);
  const { complaint, exit } = report('check', pattern, false);
  return { print: `${harmless(written.value)}\n`, complaint, exit };
}

/** @returns a block at other sizes; the way to sew it is that of its pattern, whose proof holds at any size or at none */
function answerSizes(pattern: Pattern, typed: WishedRange, json: boolean): Answer {
  if (!pattern.proof.holds) return report('check', pattern, false);
  const range = readRange(typed, pattern);
  if (!range.ok) return refused(2, range.problem.sentence);
  const sizes = otherSizes(pattern, range.value);
  if (!sizes.ok) return refused(2, sizes.problem.sentence);
  return printed(json ? dataText(sizesJson(pattern, sizes.value)) : sizesText(pattern, sizes.value));
}

/** @returns what to say about a pattern; one whose proof does not hold is printed with a complaint, never as if it were sound */
export function report(command: 'plan' | 'check', pattern: Pattern, json: boolean): Answer {
  const { proof, figures, block } = pattern;
  const [fault = ''] = proof.faults;
  const warning = `Do not cut yet: sewn back in exact arithmetic, ${block.name} is not the drawing: ${fault}`;
  const complaint = proof.holds ? null : harmless(warning);
  const exit = proof.holds ? 0 : 1;
  if (command === 'plan') return { print: json ? dataText(patternJson(pattern)) : patternText(pattern), complaint, exit };
  const seams = `${figures.seams} ${figures.seams === 1 ? 'seam' : 'seams'}`;
  const pieces = `${figures.pieces} ${figures.pieces === 1 ? 'piece' : 'pieces'}`;
  const verdict = `${block.name} is sound: ${pieces}, ${seams}; sewn back in exact arithmetic it is the drawing.`;
  return { print: proof.holds ? `${harmless(verdict)}\n` : '', complaint, exit };
}

/** JSON whose strings hold no character that could steer a terminal. */
function dataText(data: unknown): string {
  const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return `${JSON.stringify(data, null, 2).replace(/[\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/g, escaped)}\n`;
}
