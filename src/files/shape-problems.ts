import type { BaseIssue } from 'valibot';
import * as sayChosen from '../block/choice-problems.ts';
import { clothPlace } from '../block/cloth-checks.ts';
import { MAX_CHOSEN, MAX_NAME, MAX_PLACE, MAX_SAID, PRINTS, type ChosenLength } from '../block/limits.ts';
import { noColor, tooManyColourways, tooManyFabrics, tooManyPhotos } from '../block/colour/problems.ts';
import * as say from '../block/problems.ts';
import { SECTIONS } from '../block/publication.ts';
import * as sayPublished from '../block/publication-problems.ts';
import { ORDERS } from '../geometry/piecing/order.ts';
import { WAYS } from '../geometry/piecing/way.ts';
import type { Problem } from '../measure/problem.ts';
import type { JsonFault } from './json-text.ts';

/*
 * Every sentence about a block file that is not yet a drawing; the sentences about drawings are in block/problems.ts.
 */

const problem = (code: string, sentence: string): Problem => ({ code, sentence });

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1_000_000).toLocaleString('en-US')} MB`;

export const fileTooLarge = (bytes: number, most: number): Problem =>
  problem('file-too-large', `The file is ${megabytes(bytes)} long, and a block file has at most ${megabytes(most)}; choose another file.`);

export function notJson({ line, found }: JsonFault): Problem {
  if (found === '') {
    return problem('not-json', `The file is not JSON: it ends on line ${line} before it is complete; save it again or repair its end.`);
  }
  if (/^[-+]?(NaN|Infinity)$/.test(found)) {
    return problem('not-a-number', `Line ${line} has ${found}, which is no number; write one like 3, 1.5 or "5/3".`);
  }
  const place = `line ${line} has ${say.quoted(found)} where it does not belong`;
  return problem('not-json', `The file is not JSON: ${place}; open a block file or repair that line.`);
}

export const wrongFormat = (found: unknown, wanted: string): Problem =>
  problem(
    'wrong-format',
    found === undefined
      ? `The file does not say that it is a block; open a file with "format": "${wanted}".`
      : `The file's format is ${named(found)}; open one whose format is "${wanted}".`,
  );

export const styleTooLarge = (length: number, most: number): Problem =>
  problem('file-too-large', `The file is ${megabytes(length)} long, and a house style has at most ${megabytes(most)}; choose another file.`);

export const wrongStyleFormat = (found: unknown, wanted: string): Problem =>
  problem(
    'wrong-format',
    found === undefined
      ? `The file does not say that it is a house style; open a file with "format": "${wanted}".`
      : `The file's format is ${named(found)}; open one whose format is "${wanted}".`,
  );

export const wrongVersion = (found: unknown, known: number): Problem =>
  typeof found === 'number' && found > known
    ? problem('newer-version', `The file is of version ${found} and this program reads version ${known}; open it with a newer Piecewright.`)
    : problem('wrong-version', `The file's version is ${found === undefined ? 'missing' : named(found)}; it must be the number ${known}.`);

export const zeroDenominator = (where: string, found: string): Problem =>
  problem('zero-denominator', `${where} has the fraction ${say.quoted(found)}, whose denominator is 0; make it 1 or more.`);

/** @returns what stands in the file, briefly */
function named(found: unknown): string {
  if (typeof found === 'string') return say.quoted(found);
  if (found === null || typeof found === 'number' || typeof found === 'boolean') return String(found);
  return Array.isArray(found) ? 'a list' : 'an object';
}

const must = (code: string, want: string) => (where: string, found: unknown): Problem =>
  problem(code, `${where} must be ${want}; the file has ${named(found)}.`);

const lengthOf = (found: unknown): number => (found as { length: number }).length;

/** What to say for each code that block-shape.ts gives. */
const FAULTS = {
  'no-text': must('not-text', 'text in quotes'),
  'long-text': (where: string, found: unknown) => say.nameTooLong(where, lengthOf(found)),
  'unprintable': (where: string) => say.nameUnprintable(where),
  'no-list': must('not-a-list', 'a list in square brackets'),
  'no-object': must('not-an-object', 'an object in curly brackets'),
  'no-number': (where: string, found: unknown) =>
    typeof found === 'string' && /\/0+$/.test(found)
      ? zeroDenominator(where, found)
      : must('not-a-number', 'a whole number, a decimal like 1.5 or a fraction like "5/3"')(where, found),
  'no-point': must('not-a-point', 'two numbers, across and down, like [1, 0.5]'),
  'no-seam': must('not-a-seam', 'two points, like [[0, 1], [3, 1]]'),
  'no-cells': (where: string, found: unknown) => say.gridOutOfRange(where.endsWith('columns') ? 'columns' : 'rows', named(found)),
  'many-lines': (where: string, found: unknown) => say.gridOutOfRange(where.endsWith('across') ? 'columns' : 'rows', String(lengthOf(found) + 1)),
  'no-color': (where: string, found: unknown) => noColor(where, named(found)),
  'no-unit': must('not-a-unit', '"in" or "cm"'),
  'no-yes-or-no': must('not-yes-or-no', 'true or false'),
  'no-method': must('unknown-method', 'the name of a method, like "two-at-a-time"'),
  'no-way': must('unknown-way', `one of ${WAYS.map((way) => `"${way}"`).join(', ')}`),
  'no-order': must('unknown-order', `one of ${ORDERS.map((order) => `"${order}"`).join(', ')}`),
  'no-pin-kind': must('unknown-pin', '"sewn last" or "one unit"'),
  'many-pins': (_: string, found: unknown) => say.tooManyPins(lengthOf(found)),
  'no-sold': must('not-sold-so', '"by length", "fat quarter", "fat eighth", "precut strip" or "precut square"'),
  'no-margin': must('not-a-margin', '{ "percent": "10" } or { "length": "4 1/2" }'),
  'no-count': (where: string, found: unknown) => sayChosen.noHaveCount(where, named(found)),
  'many-pieces': (where: string, found: unknown) => sayChosen.tooMuchToHave(where, lengthOf(found)),
  'no-prints': (where: string, found: unknown) => sayChosen.noPrints(where, named(found)),
  'no-seed': (where: string, found: unknown) => sayChosen.noSeed(where, named(found)),
  'no-lies': must('not-pressed-so', '"right", "left" or "open"'),
  'no-value': must('no-value', '"light", "medium" or "dark"'),
  'no-print': must('no-print', `a whole number from 1 to ${PRINTS.most}`),
  'no-photo-place': must('no-photo-place', 'a pair of whole numbers from 0 to 1000'),
  'many-photos': (_: string, found: unknown) => tooManyPhotos(lengthOf(found)),
  'many-colourways': (_: string, found: unknown) => tooManyColourways(lengthOf(found)),
  'many-pressed': (_: string, found: unknown) => say.tooManyPressedSeams(lengthOf(found)),
  'many-units': (_: string, found: unknown) => say.tooManyUnitMethods(lengthOf(found)),
  'no-blocks': (_: string, found: unknown) => sayChosen.blocksOutOfRange(named(found)),
  'no-fabrics': () => problem('no-fabrics', 'The block has no fabrics; add at least one, for the ground.'),
  'many-fabrics': (_: string, found: unknown) => tooManyFabrics(lengthOf(found)),
  'many-patches': (_: string, found: unknown) => say.tooManyPatches(lengthOf(found)),
  'many-seams': (_: string, found: unknown) => say.tooManySeams(lengthOf(found)),
  'few-points': (where: string, found: unknown) => say.noOutline(where, lengthOf(found), { kind: 'few', points: [] }),
  'many-points': (where: string, found: unknown) => say.tooManyPoints(where, lengthOf(found)),
  'long-line': (where: string, found: unknown) => sayPublished.textTooLong(where, lengthOf(found), mostOf(where)),
  'no-section': must('unknown-section', `the name of a section, like "${SECTIONS[2]}"`),
  'many-sections': must('too-many-sections', 'a list that names each section at most once'),
  'no-language': (where: string, found: unknown) => sayPublished.noLanguage(where, String(found)),
  'no-part': must('unknown-part', '"paragraph", "tip" or "photo"'),
  'no-pixels': (where: string, found: unknown) => sayPublished.pictureOutOfRange(where, named(found)),
  'long-picture': (where: string, found: unknown) => sayPublished.pictureTooLong(where, lengthOf(found)),
  'many-words': (_: string, found: unknown) => sayPublished.tooManyWords(lengthOf(found)),
  'many-parts': (_: string, found: unknown) => sayPublished.tooManyParts(lengthOf(found)),
  'many-pictures': (_: string, found: unknown) => sayPublished.tooManyPictures(lengthOf(found)),
  'no-choice': must('unknown-choice', 'one of those that the schema of a house style lists'),
} as const satisfies Record<string, (where: string, found: unknown) => Problem>;

/** @returns the most characters of a text at a place */
const mostOf = (where: string): number => (/id$|subtitle$|picture$/.test(where) ? MAX_NAME : /place$/.test(where) ? MAX_PLACE : MAX_SAID);

export type ShapeFault = keyof typeof FAULTS;

/** What a missing key could look like. */
const EXAMPLES: Readonly<Record<string, string>> = {
  name: '"Shoo Fly"',
  finished: '{ "width": "12", "height": "12", "unit": "in" }',
  width: '"12"',
  height: '"12"',
  unit: '"in"',
  grid: '{ "columns": 3, "rows": 3 }',
  columns: '3',
  rows: '3',
  fabrics: '[{ "id": "oat", "name": "Oat", "color": "#f3ede0" }]',
  id: '"oat"',
  color: '"#f3ede0"',
  ground: '"oat"',
  patches: '[]',
  fabric: '"oat"',
  points: '[[0, 0], [1, 0], [1, 1]]',
  pin: '"sewn last"',
  from: '[2, 0]',
  to: '[2, 4]',
  method: '"triangles"',
  prints: '4',
  seed: '1',
  length: '"18"',
  count: '1',
  section: '"materials"',
  shown: 'true',
  at: '"title"',
  language: '"en"',
  was: '"Make {1}."',
  now: '"Make {1} of them."',
  part: '"tip"',
  text: '"Press well."',
  jpeg: '"/9j/4AAQ…"',
  kinds: '"in full"',
  fractions: '"set"',
  inches: '"in."',
  paper: '"letter"',
  lie: '"portrait"',
  ink: '"colours"',
  letters: '"usual"',
};

/** A path to a place in a file. */
export type Path = readonly (string | number)[];

/**
 * @param place the words for a place, as a sentence begins with them
 * @returns the problem with the first fault that the shape check found
 */
export function shapeProblem(issue: BaseIssue<unknown>, place: (path: Path) => string = placeInBlock): Problem {
  const path = (issue.path ?? []).map((item) => item.key as string | number);
  const key = String(path.at(-1));
  const owner = place(path.slice(0, -1));
  const ofKey = issue.type === 'strict_object' && issue.path?.at(-1)?.origin === 'key';
  if (ofKey && issue.expected === 'never') {
    return problem('unknown-key', `${owner} has ${say.quoted(key)}, which this version does not know; check its spelling or remove it.`);
  }
  if (ofKey) return problem('missing-key', `${owner} has no "${key}"; add it, like "${key}": ${EXAMPLES[key]}.`);
  if (issue.input === undefined) {
    // JSON has no undefined: a point or a seam ends too early.
    const code = path[0] === 'seams' && path.length === 3 ? 'no-seam' : 'no-point';
    return FAULTS[code](owner, issue.path!.at(-1)!.input);
  }
  const sentenceOf = FAULTS[issue.message as ShapeFault];
  return sentenceOf(place(path), issue.input);
}

/** What one item of each list is called. */
const ITEMS: Readonly<Record<string, string>> = {
  patches: 'Patch', seams: 'Seam', fabrics: 'Fabric', pins: 'Pin', unitMethods: 'Unit method', pressedSeams: 'Pressing',
};

/** What one item of each list of a publication is called. */
const PUBLISHED: Readonly<Record<string, string>> = { words: 'Own words', parts: 'Own part', pictures: 'Picture', sections: 'Section' };

/** @returns the words for a place among what a designer adds: "Own part 2's text", "Picture 1's width" */
export function placeInPublication([list, index, key]: Path): string {
  if (list === undefined) return 'What is published';
  if (typeof index !== 'number') return list === 'subtitle' ? 'The subtitle' : `The published ${list}`;
  const one = `${PUBLISHED[list] ?? 'Item'} ${index + 1}`;
  return key === undefined ? one : `${one}'s ${key === 'at' || key === 'after' ? 'place' : key}`;
}

/** @returns the words for a place in the file, as a sentence begins with them: "Patch 3, point 2", "Fabric 1's name" */
function placeInBlock(path: Path): string {
  const [list, index, key, inner] = path;
  if (list === undefined) return 'The block';
  if (list === 'publication') return placeInPublication(path.slice(1));
  if (index === undefined) return list === 'finished' ? 'The finished size' : list === 'grid' ? 'The grid' : `The block's ${list}`;
  if (list === 'choices') return choicePlace(path.slice(1));
  if (list === 'grid' && typeof key === 'number') return `The grid's ${index === 'across' ? 'upright' : 'level'} line ${key + 1}`;
  if (typeof index === 'string') return `The ${list} ${index}`;
  const one = `${ITEMS[list] ?? 'Item'} ${index + 1}`;
  if (key === undefined) return one;
  if (key === 'from' || key === 'to') return `${one}, ${key}`;
  if (typeof key === 'number') return `${one}, end ${key + 1}`;
  if (typeof inner === 'number') return `${one}, point ${inner + 1}`;
  return key === 'points' ? one : `${one}'s ${key}${inner === undefined ? '' : `, ${inner}`}`;
}

/** @returns the words for a place among the choices: "The chosen margin, percent", 'The cloth of "oat", have 2, length' */
function choicePlace([name, of, ...rest]: readonly (string | number)[]): string {
  if (name === 'methods') return of === undefined ? 'The choice of methods' : `The chosen method for ${of}`;
  const inside = (keys: readonly (string | number)[]): string =>
    keys.map((key) => (typeof key === 'number' ? ` ${key + 1}` : `, ${key}`)).join('');
  if (name !== 'cloths') return `${isLength(name) ? sayChosen.chosen(name) : `The chosen ${name}`}${of === undefined ? '' : `, ${of}`}`;
  return of === undefined ? 'The choice of cloths' : `${clothPlace(String(of))}${inside(rest)}`;
}

const isLength = (name: string | number | undefined): name is ChosenLength => name !== undefined && name in MAX_CHOSEN;
