import { capital, listed } from '../../measure/words.ts';
import type { CuttingPhrases } from './cutting-phrases.ts';

const unitOrBlock = (unit: string | null): string => (unit === null ? 'the block' : `unit ${unit}`);
const allOf = (units: readonly (string | null)[]): string => listed(units.map(unitOrBlock));

/** Cutting in English, in the words of the trade. */
export const CUTTING_IN_ENGLISH: CuttingPhrases = {
  listed,
  nothing: 'nothing',
  yards: (yards) => `${yards} yd`,
  precut: (form, { n, said }) => `${said} ${form}${n === 1 ? '' : 's'}`,
  toSquareUp: (length, off) => `${length} to square ${off === 'length' ? 'it' : 'each'} up`,
  toSpare: (length) => `${length} to spare`,
  percentToSpare: (percent) => `${percent} % to spare`,
  otherMethod: (unit, kind, asked, taken, why) =>
    why === 'no strips'
      ? `${capital(unitOrBlock(unit))} cannot be cut from strip sets: it is no plain row that comes twice or more, or its cloth is too short; it is sewn from pieces.`
      : `${capital(unitOrBlock(unit))} (${kind}) ${why === 'two corners' ? 'has corners of two fabrics, which four at a time cannot make' : `cannot be cut ${asked}`}; it is cut ${taken}.`,
  mirrorImages: (unit, { n, said }) => `Two at a time makes mirror images: ${said} of ${unitOrBlock(unit)} ${n === 1 ? 'is' : 'are'} left over.`,
  centreUntrimmed: (units) => `The centre of ${allOf(units)} is cut without anything to trim: its edges are seams. Its corners are cut large.`,
  outlinedUntrimmed: (units) => `${capital(allOf(units))} ${units.length > 1 ? 'have' : 'has'} nothing to trim: pieces cut round an outline are cut exactly.`,
};
