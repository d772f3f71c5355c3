import type { LengthUnit } from '../block/block.ts';
import { checkChoices } from '../block/choice-checks.ts';
import type { Choices } from '../block/choices.ts';
import { quoted } from '../block/problems.ts';
import { ORDERS, type AssemblyOrder } from '../geometry/piecing/order.ts';
import { WAYS, type Way } from '../geometry/piecing/way.ts';
import { parseLength, type TypedLength } from '../measure/lengths.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { readMethods, type TypedMethods } from './methods.ts';
import type { Wishes } from './order.ts';

const UNITS: Readonly<Record<LengthUnit, string>> = { in: 'inches', cm: 'centimetres' };

const isWay = (text: string): text is Way => WAYS.some((way) => way === text);

const isOrder = (text: string): text is AssemblyOrder => ORDERS.some((order) => order === text);

const wrong = (sentence: string): Result<never> => bad('usage', sentence);

/** @returns that a length was typed in another unit than the block's */
export const wrongUnit = (option: string, unit: LengthUnit): Result<never> =>
  wrong(`${option}: the block is measured in ${UNITS[unit]}, so write this length in ${UNITS[unit]} too.`);

const LENGTHS = ['seam', 'ruler', 'trim', 'width'] as const;

/** Choices that make sense whatever the block; a length may still lack its unit. */
export interface TypedChoices {
  readonly lengths: Readonly<Partial<Record<(typeof LENGTHS)[number], TypedLength>>>;
  readonly others: Pick<Choices, 'method' | 'methods' | 'way' | 'assembly' | 'blocks'>;
  /** Methods for single units, by their letters. */
  readonly units: TypedMethods['units'];
}

/** @returns the choices as far as they can be read without the block, or in one sentence what is wrong with one and what is possible */
export function readChoices(wishes: Wishes): Result<TypedChoices> {
  const methods = readMethods(wishes.method ?? []);
  if (!methods.ok) return methods;
  const lengths: { -readonly [name in keyof TypedChoices['lengths']]: TypedLength } = {};
  for (const name of LENGTHS) {
    const text = wishes[name];
    if (text === undefined) continue;
    const read = parseLength(text);
    if (!read.ok) return wrong(`--${name}: ${read.problem.sentence}`);
    lengths[name] = read.value;
  }
  const { way, assembly, blocks } = wishes;
  if (way !== undefined && !isWay(way)) return wrong(`--way: there is no way ${quoted(way)}; choose ${WAYS.map(quoted).join(', ')}.`);
  if (assembly !== undefined && !isOrder(assembly)) {
    return wrong(`--assembly: there is no order ${quoted(assembly)}; choose ${ORDERS.map(quoted).join(', ')}.`);
  }
  if (blocks !== undefined && !/^\d{1,9}$/.test(blocks)) {
    return wrong(`--blocks: ${quoted(blocks)} is not a number of blocks; write a whole number from 1 on.`);
  }
  const others = {
    ...methods.value.chosen,
    ...(way !== undefined && { way }),
    ...(assembly !== undefined && { assembly }),
    ...(blocks !== undefined && { blocks: Number(blocks) }),
  };
  return good({ lengths, others, units: methods.value.units });
}

/** @returns the choices for a block measured in this unit, or in one sentence which does not suit it */
export function choicesIn(unit: LengthUnit, { lengths, others }: TypedChoices): Result<Choices> {
  for (const name of LENGTHS) {
    const typed = lengths[name]?.unit ?? unit;
    if (typed !== unit) return wrongUnit(`--${name}`, unit);
  }
  const values = Object.entries(lengths).map(([name, { value }]) => [name, value] as const);
  const choices: Choices = { ...Object.fromEntries(values), ...others };
  const fault = checkChoices(choices, unit);
  return fault ? wrong(fault.sentence) : good(choices);
}
