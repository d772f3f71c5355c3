import type { LengthUnit } from '../block/block.ts';
import { checkChoices } from '../block/checks.ts';
import type { Choices, Method } from '../block/choices.ts';
import { quoted } from '../block/problems.ts';
import { methodsFor } from '../cutting/methods.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { WAYS, type Way } from '../geometry/piecing/way.ts';
import { parseLength, type TypedLength } from '../measure/lengths.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import type { Wishes } from './order.ts';

const KINDS: Readonly<Record<UnitKind, true>> = {
  'half-square triangle': true,
  'quarter-square triangle': true,
  'split quarter-square triangle': true,
  'flying geese': true,
  'corner-triangle unit': true,
  'square in a square': true,
  'half-rectangle triangle': true,
  peak: true,
  'partial-seam ring': true,
  'free unit': true,
  square: true,
  rectangle: true,
  'joined unit': true,
};

const UNITS: Readonly<Record<LengthUnit, string>> = { in: 'inches', cm: 'centimetres' };

const isKind = (text: string): text is UnitKind => Object.hasOwn(KINDS, text);
const isWay = (text: string): text is Way => WAYS.some((way) => way === text);

/** Kinds of unit that are cut by a method, each with its methods, the usual one first. */
export const methodsOfKinds: readonly (readonly [UnitKind, readonly Method[]])[] = Object.keys(KINDS)
  .filter(isKind)
  .map((kind) => [kind, methodsFor(kind)] as const)
  .filter(([, methods]) => methods.length > 0);

const wrong = (sentence: string): Result<never> => bad('usage', sentence);

/** @returns that a length was typed in another unit than the block's */
export const wrongUnit = (option: string, unit: LengthUnit): Result<never> =>
  wrong(`${option}: the block is measured in ${UNITS[unit]}, so write this length in ${UNITS[unit]} too.`);

const LENGTHS = ['seam', 'ruler', 'trim', 'width'] as const;

/** Choices that make sense whatever the block; a length may still lack its unit. */
export interface TypedChoices {
  readonly lengths: Readonly<Partial<Record<(typeof LENGTHS)[number], TypedLength>>>;
  readonly others: Pick<Choices, 'methods' | 'way' | 'blocks'>;
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
  const { way, blocks } = wishes;
  if (way !== undefined && !isWay(way)) return wrong(`--way: there is no way ${quoted(way)}; choose ${WAYS.map(quoted).join(', ')}.`);
  if (blocks !== undefined && !/^\d{1,9}$/.test(blocks)) {
    return wrong(`--blocks: ${quoted(blocks)} is not a number of blocks; write a whole number from 1 on.`);
  }
  const others = {
    ...(wishes.method && { methods: methods.value }),
    ...(way !== undefined && { way }),
    ...(blocks !== undefined && { blocks: Number(blocks) }),
  };
  return good({ lengths, others });
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

/** Reads "half-square triangle=eight-at-a-time"; the last word on a kind counts. */
function readMethods(texts: readonly string[]): Result<NonNullable<Choices['methods']>> {
  const methods: Partial<Record<UnitKind, Method>> = {};
  for (const text of texts) {
    const [kind = '', name = '', ...rest] = text.split('=').map((part) => part.trim());
    if (name === '' || rest.length > 0) {
      return wrong(`--method: ${quoted(text)} is not "KIND=METHOD", like "half-square triangle=eight-at-a-time".`);
    }
    const known = isKind(kind) ? methodsFor(kind) : [];
    if (known.length === 0) {
      const kinds = methodsOfKinds.map(([each]) => each).join(', ');
      return wrong(`--method: ${quoted(kind)} is not a kind of unit that has methods; these are: ${kinds}.`);
    }
    const method = known.find((each) => each === name);
    if (method === undefined) return wrong(`--method: for ${kind} there is no ${quoted(name)}; choose ${known.join(' or ')}.`);
    methods[kind as UnitKind] = method;
  }
  return good(methods);
}
