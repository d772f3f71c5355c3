import { rational } from '../measure/rational.ts';
import { cutShape } from '../cutting/shapes.ts';
import { clothName, clothOf, cornerOf, cutOf, cutSizeOf, pieceOf, roleOf, thing, together, type Vocabulary } from './naming.ts';
import { layOutWords } from './free-words.ts';
import type { Corner, Place } from './phrases/said.ts';
import { allowance, roundsFor, spareOf, templatesLie, type Told } from './recipes.ts';
import { different, grouped } from './sentences.ts';
import type { StepPart } from './step.ts';

/** @returns the parts that do one thing in the unit */
const inRole = ({ parts }: Told, role: string): readonly StepPart[] => parts.filter((part) => roleOf(part) === role);

/** Flying geese four at a time; every other way of a unit with corners, geese and squares in a square among them. */
export function cornerWords(step: Told, words: Vocabulary): readonly string[] {
  const [large] = inRole(step, 'large');
  const [small] = inRole(step, 'small');
  if (large && small) return [fourGeese(step, large, small, words)];
  const flipped = inRole(step, 'corner');
  const corners = flipped.length > 0 ? flipped : step.parts.filter(isCornerTriangle);
  const base = step.parts.find((part) => !corners.includes(part));
  if (!base || corners.length !== step.parts.length - 1) return layOutWords(step, words);
  return flipped.length > 0 ? stitchedAndFlipped(step, base, corners, words) : fromTriangles(step, base, corners, words);
}

/** Two equal legs along the sides of the unit. */
function isCornerTriangle({ outline }: StepPart): boolean {
  const shape = cutShape(outline, rational(1));
  return shape.form === 'isosceles' && shape.grain === 'legs';
}

function fourGeese(step: Told, large: StepPart, small: StepPart, words: Vocabulary): string {
  const rounds = roundsFor(step, large, 4, words);
  const [one, other] = [pieceOf(small, words), pieceOf(large, words)];
  return words.phrases.corners.fourGeese(one, other, allowance(words), rounds === 1, spareOf(4, rounds, step, words));
}

/** Stitch-and-flip: squares sewn across the corners of a base. */
const stitchedAndFlipped = (step: Told, base: StepPart, corners: readonly StepPart[], words: Vocabulary): readonly string[] => [
  words.phrases.corners.stitchAndFlip(together(corners, words), thing(base, words), allowance(words)),
  whereTo(step, corners, words),
];

/** Triangles sewn to a middle that is cut to its shape. */
function fromTriangles(step: Told, base: StepPart, corners: readonly StepPart[], words: Vocabulary): readonly string[] {
  const whose = step.kind === 'square in a square' || step.kind === 'flying geese' ? step.kind : 'corner-triangle unit';
  return [
    words.phrases.corners.fromTriangles(together(corners, words), thing(base, words), whose),
    whereTo(step, corners, words),
    ...(whose === 'flying geese' ? [words.phrases.slanted.pointEnds(allowance(words))] : []),
    ...templatesLie(step, words),
  ];
}

/** @returns which square or triangle goes to which corner of the picture */
function whereTo(step: Told, corners: readonly StepPart[], words: Vocabulary): string {
  const sizeKey = (part: StepPart): string => {
    const { shape, width, height } = cutOf(part, words);
    return [shape === 'square', width.n, width.d, height.n, height.d].join(' ');
  };
  const oneSize = different(corners.map(sizeKey)).length === 1;
  const groups = grouped(corners, (part) => `${clothOf(part)} ${oneSize ? '' : sizeKey(part)}`);
  const { toAllCorners, toCorners } = words.phrases.corners;
  if (groups.length === 1 && corners.length === 4) return toAllCorners(clothName(clothOf(corners[0]!), words));
  return toCorners(
    groups.map((alike) => ({
      cloth: clothName(clothOf(alike[0]), words),
      size: oneSize ? null : cutSizeOf(cutOf(alike[0], words), words),
      corners: inCornerOrder(alike.map((part) => cornerOf(part, step.parts) as Corner)),
    })),
  );
}

const CORNERS: readonly Place[] = ['top left', 'top right', 'bottom right', 'bottom left'];
const inCornerOrder = (places: readonly Corner[]): readonly Corner[] => places.toSorted((a, b) => CORNERS.indexOf(a) - CORNERS.indexOf(b));
