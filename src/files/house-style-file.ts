import * as v from 'valibot';
import type { Checked } from '../block/checks.ts';
import { MAX_NAME, MAX_SAID } from '../block/limits.ts';
import { checkPicture, checkSaid, checkSections } from '../block/publication-checks.ts';
import { refused } from '../block/problems.ts';
import { good, type Result } from '../measure/problem.ts';
import type { HouseStyle } from '../pattern/house-style.ts';
import { houseStyleShape, STYLE_FORMAT, STYLE_VERSION } from './house-style-shape.ts';
import { readJson } from './read-json.ts';
import { placeInPublication, shapeProblem, styleTooLarge, wrongStyleFormat, wrongVersion, type Path } from './shape-problems.ts';

/** Longest file of a house style, in characters; its logo takes most of it. */
export const MAX_STYLE_FILE = 2_000_000;

/**
 * Reads the file of a house style. `formatHouseStyle` is its counterpart.
 * @returns the style, or the first problem found
 */
export function parseHouseStyle(text: string): Result<HouseStyle> {
  if (text.length > MAX_STYLE_FILE) return refused(styleTooLarge(text.length, MAX_STYLE_FILE));
  const read = readJson(text);
  if (!read.ok) return read;
  const { content, format, version } = read.value;
  if (format !== STYLE_FORMAT) return refused(wrongStyleFormat(format, STYLE_FORMAT));
  if (version !== STYLE_VERSION) return refused(wrongVersion(version, STYLE_VERSION));
  const shaped = v.safeParse(houseStyleShape, content, { abortEarly: true });
  if (!shaped.success) return refused(shapeProblem(shaped.issues[0], place));
  const { $schema: _, format: __, version: ___, sections, maker, licence, foot, logo, ...looks } = shaped.output;
  const style: HouseStyle = {
    ...looks,
    ...(sections?.length && { sections }),
    ...(maker && { maker }),
    ...(licence && { licence }),
    ...(foot && { foot }),
    ...(logo && { logo }),
  };
  const fault = checkHouseStyle(style);
  return fault ? refused(fault) : good(style);
}

/** @returns whether what a designer has put into her style can be printed */
export const checkHouseStyle = ({ sections, maker = '', licence = '', foot = '', logo }: HouseStyle): Checked =>
  (sections ? checkSections(sections) : null) ??
  checkSaid("The maker's name", maker, MAX_NAME) ??
  checkSaid('The licence', licence, MAX_SAID) ??
  checkSaid("The page's foot", foot, MAX_NAME) ??
  (logo ? checkPicture('The logo', logo) : null);

/** @returns text that parseHouseStyle reads back as the same style */
export const formatHouseStyle = (style: HouseStyle): string =>
  `${JSON.stringify({ format: STYLE_FORMAT, version: STYLE_VERSION, ...style }, null, 2)}\n`;

/** @returns the words for a place in the file, as a sentence begins with them */
function place([name, ...rest]: Path): string {
  if (name === undefined) return 'The house style';
  if (name === 'sections' && rest.length > 0) return placeInPublication([name, ...rest]);
  return name === 'logo' && rest.length > 0 ? `The logo's ${rest.join(', ')}` : `The ${name} of the house style`;
}
