import type { Block } from '../block/block.ts';
import type { Choices, Method } from '../block/choices.ts';
import { chooseMethod } from '../block/choosing-methods.ts';
import { quoted } from '../block/problems.ts';
import { methodsFor } from '../cutting/methods.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { unitPlaces } from '../pattern/unit-places.ts';

/** Methods as typed: for the whole pattern, for kinds of unit, and for single units by their letters, which only the pattern knows. */
export interface TypedMethods {
  readonly chosen: Pick<Choices, 'method' | 'methods'>;
  readonly units: ReadonlyMap<string, Method>;
}

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

const isKind = (text: string): text is UnitKind => Object.hasOwn(KINDS, text);

/** Kinds of unit that are cut by a method, each with its methods, the usual one first. */
export const methodsOfKinds: readonly (readonly [UnitKind, readonly Method[]])[] = Object.keys(KINDS)
  .filter(isKind)
  .map((kind) => [kind, methodsFor(kind)] as const)
  .filter(([, methods]) => methods.length > 0);

/** Every method there is. */
const METHODS: readonly Method[] = [...new Set(methodsOfKinds.flatMap(([, methods]) => methods))];

const wrong = (sentence: string): Result<never> => bad('usage', `--method: ${sentence}`);

/** Letters of a unit: A to Z, then AA and so on; or the block, where it is one unit. */
const LETTERS = /^([A-Z]{1,3}|block)$/;

/**
 * Reads "half-square triangle=eight-at-a-time", "A=eight-at-a-time" and "triangles"; the last word on a thing counts.
 * @returns what is chosen, or in one sentence what is wrong and what is possible
 */
export function readMethods(texts: readonly string[]): Result<TypedMethods> {
  const methods: Partial<Record<UnitKind, Method>> = {};
  const units = new Map<string, Method>();
  let method: Choices['method'];
  for (const text of texts) {
    const [whom = '', name, ...rest] = text.split('=').map((part) => part.trim());
    if (name === undefined) {
      const known = (['usual', ...METHODS] as const).find((each) => each === whom);
      if (known === undefined) return wrong(`${quoted(text)} is ${notOne}; the methods are usual, ${METHODS.join(', ')}.`);
      method = known;
      continue;
    }
    if (name === '' || rest.length > 0) return wrong(`${quoted(text)} is ${notOne}.`);
    if (LETTERS.test(whom)) {
      const known = METHODS.find((each) => each === name);
      if (known === undefined) return wrong(`for ${named(whom)} there is no ${quoted(name)}; the methods are ${METHODS.join(', ')}.`);
      units.set(whom, known);
      continue;
    }
    const known = isKind(whom) ? methodsFor(whom) : [];
    if (known.length === 0) {
      const kinds = methodsOfKinds.map(([each]) => each).join(', ');
      return wrong(`${quoted(whom)} is neither the letter of a unit, like A, nor a kind of unit that has methods; these are: ${kinds}.`);
    }
    const found = known.find((each) => each === name);
    if (found === undefined) return wrong(`for ${whom} there is no ${quoted(name)}; choose ${known.join(' or ')}.`);
    methods[whom as UnitKind] = found;
  }
  return good({ chosen: { ...(method && { method }), ...(Object.keys(methods).length > 0 && { methods }) }, units });
}

const named = (letter: string): string => (letter === 'block' ? 'the block' : `unit ${letter}`);

const notOne = 'neither "KIND=METHOD", like "half-square triangle=eight-at-a-time", nor "LETTER=METHOD", like "A=triangles", nor a method';

/**
 * @param pattern of that block, by which the units have their letters
 * @returns the block with methods for single units, or in one sentence which unit there is not, or what it cannot be cut by
 */
export function withUnitMethods(block: Block, pattern: Pattern, units: TypedMethods['units']): Result<Block> {
  let next = block;
  for (const [letter, method] of units) {
    const line = letter === 'block' ? pattern.whole : pattern.units.find(({ unit }) => unit.id === letter);
    const able = pattern.units.filter(({ methods }) => methods.length > 0).map(({ unit }) => unit.id);
    if (!line || line.methods.length === 0) {
      const these = able.length === 0 ? 'none of its units has methods' : `the units that have methods are ${able.join(', ')}`;
      if (line) return wrong(`unit ${letter} is joined of others, or comes but once, and has no method; ${these}.`);
      return wrong(letter === 'block' ? `the block is not one unit by itself; ${these}.` : `this block has no unit ${letter}; ${these}.`);
    }
    if (!line.methods.includes(method)) {
      return wrong(`${named(letter)} (${line.unit.kind}) cannot be cut ${method}; choose ${line.methods.join(' or ')}.`);
    }
    const chosen = chooseMethod(next, { scope: 'unit', method, places: unitPlaces(pattern, [line], block.grid) });
    if (!chosen.ok) return chosen;
    next = chosen.value;
  }
  return good(next);
}
