import { printLength } from '../measure/lengths.ts';
import { rational } from '../measure/rational.ts';
import { ceilToStep, surd } from '../measure/surd.ts';
import type { Cut } from '../cutting/cut.ts';
import { cutShape } from '../cutting/shapes.ts';
import { listed } from '../measure/words.ts';
import {
  clothName,
  clothOf,
  cornerOf,
  cutSize,
  diagonalOf,
  namesTogether,
  partName,
  placeOf,
  roleOf,
  sideAlong,
  SIDES,
  type Vocabulary,
} from './naming.ts';
import { cornerRounds } from './corner-rounds.ts';
import { different, inRuns } from './sentences.ts';
import type { Step, StepPart } from './step.ts';

/** What the instructions for a unit go by. */
export type Told = Pick<Step, 'makes' | 'kind' | 'count' | 'parts' | 'joins'>;

/*
 * How the units of the catalogue are sewn. The way follows from what the cutting list gives (pairs of squares, a base with corner
 * squares, triangles), so that the words cannot speak of another way than the one that is cut.
 */

/** @returns the cut a part comes from */
const cutOf = (part: StepPart, words: Vocabulary): Cut => words.cut('cut' in part.from ? part.from.cut : '');
const cloth = (part: StepPart, words: Vocabulary): string => clothName(clothOf(part), words);
const allowance = ({ seam, unit }: Vocabulary): string => printLength(seam, unit);

/** @returns the parts that do one thing in the unit */
const inRole = ({ parts }: Told, ...roles: readonly string[]): readonly StepPart[] =>
  parts.filter((part) => roles.includes(roleOf(part) ?? ''));

/** @returns how many rounds of squares a unit takes by itself; null when its squares also serve other units, so that fewer are cut */
function roundsFor({ makes, count }: Told, part: StepPart, perRound: number, words: Vocabulary): number | null {
  const { uses, quantity } = cutOf(part, words);
  const alone = uses.filter(({ role }) => role === roleOf(part)).reduce((sum, use) => sum + use.quantity, 0);
  const serves = uses.filter((use) => use.role === roleOf(part) && use.unit !== makes).length > 0;
  return serves && alone > quantity ? null : Math.ceil(count / perRound);
}

/** @returns "4 Fog 2 3/8 in. squares", "1 Fog 2 3/8 in. square", "Fog 2 3/8 in. squares" */
const squares = (part: StepPart, quantity: number | null, words: Vocabulary): string =>
  `${quantity === null ? '' : `${quantity} `}${partName(part, words, quantity !== 1)}`;

/** @returns "2 Fog 5 in. squares with 2 Sea 5 in. squares" */
function pairs(one: StepPart, other: StepPart, rounds: number | null, words: Vocabulary): string {
  if (clothOf(one) === clothOf(other)) return squares(one, rounds === null ? null : 2 * rounds, words);
  return `${squares(one, rounds, words)} with ${squares(other, rounds, words)}`;
}

/** What a round makes, and what of it is beyond the count. */
function yields(perRound: number, from: string, rounds: number | null, { count }: Told): string {
  const beyond = rounds === null ? 0 : rounds * perRound - count;
  return `${perRound} units from ${from}${beyond > 0 ? `, ${beyond} more than needed` : ''}`;
}

const eachOf = (rounds: number | null, thing: string): string => `${rounds === 1 ? 'the' : 'each'} ${thing}`;

const onBothSides = (words: Vocabulary): string => `sew ${allowance(words)} from it on both sides and cut on it`;

/** Half-square triangles from two squares at a time, from two large ones eight at a time, or from triangles. */
export function halfSquareWords(step: Told, words: Vocabulary): string {
  const [one, other] = step.parts as [StepPart, StepPart];
  switch (roleOf(one)) {
    case 'pair': {
      const rounds = roundsFor(step, one, 2, words);
      return (
        `Pair ${pairs(one, other, rounds, words)}, right sides together. On ${eachOf(rounds, 'pair')} draw a diagonal, ` +
        `${onBothSides(words)}: ${yields(2, eachOf(rounds, 'pair'), rounds, step)}.`
      );
    }
    case 'eight': {
      const rounds = roundsFor(step, one, 8, words);
      return (
        `Pair ${pairs(one, other, rounds, words)}, right sides together. On ${eachOf(rounds, 'pair')} draw both diagonals ` +
        `and sew ${allowance(words)} from each of them on both sides; cut through the middle both ways, along the sides, ` +
        'and then on both diagonals: ' +
        `${yields(8, eachOf(rounds, 'pair'), rounds, step)}.`
      );
    }
    default:
      return `Lay ${namesTogether([one, other], words)} right sides together in pairs and sew the long sides.${templatesLie(step, words)}`;
  }
}

/** The four pieces of a quarter-square triangle, clockwise, two and two as they are joined first. */
function quartersOf({ parts, joins }: Told): readonly [StepPart, StepPart, StepPart, StepPart] | null {
  const halves = joins.flatMap(({ first, second }) =>
    first < parts.length && second < parts.length ? [[parts[first]!, parts[second]!] as const] : [],
  );
  if (halves.length !== 2) return null;
  const [[a, b], [c, d]] = halves.map((half) => clockwise(half, parts)) as [readonly [StepPart, StepPart], readonly [StepPart, StepPart]];
  return [a, b, c, d];
}

/** @returns two triangles that share a short side in the order in which they follow one another clockwise round the unit */
function clockwise([p, q]: readonly [StepPart, StepPart], parts: readonly StepPart[]): readonly [StepPart, StepPart] {
  const [i, j] = [SIDES.indexOf(sideAlong(p, parts)), SIDES.indexOf(sideAlong(q, parts))];
  return j === (i + 1) % 4 ? [p, q] : [q, p];
}

/** The ruler's steps to which what is only checked is told. */
const STEP = { in: rational(1, 8), cm: rational(1, 10) };

/**
 * Half-square triangles on the way to something else, with what they measure: from squares of side c they come out c − √2·s square,
 * which is never on the ruler; told down to its next step (published: 4 3/8 from 4 3/4, All People Quilt, Ohio Star, 2017-06-14).
 */
function halvesOf(rounds: number | null, part: StepPart, words: Vocabulary): string {
  const { width } = cutOf(part, words);
  const { n, d } = ceilToStep(surd(rational(-width.n, width.d), words.seam, 2), STEP[words.unit]);
  const size = n < 0 ? `, a little over ${printLength(rational(-n, d), words.unit)} square,` : '';
  return `On ${eachOf(rounds, 'pair')} draw a diagonal, ${onBothSides(words)}: 2 half-square triangles${size} from ${eachOf(rounds, 'pair')}.`;
}
const crossing = (words: Vocabulary): string => `draw the diagonal that crosses the seam, ${onBothSides(words)}`;

/** Quarter-square triangles: two half-square triangles crossed, or four triangles. */
export function quarterSquareWords(step: Told, words: Vocabulary): string {
  const [a, b, c, d] = quartersOf(step)!;
  const [nameA, nameB, nameC, nameD] = [a, b, c, d].map((part) => cloth(part, words)) as [string, string, string, string];
  const round = [a, b, c, d].map(clothOf);
  const hourglass = round[0] === round[2] && round[1] === round[3];
  if (roleOf(a) !== 'pair') {
    const hand = (left: string, right: string): string => `${left} on the left and ${right} on the right`;
    const halves =
      round[0] === round[1] && round[2] === round[3]
        ? `one half is ${nameA}, the other ${nameC}`
        : hourglass
          ? `with its long side below, each half has ${hand(nameA, nameB)}`
          : `with its long side below, the first half has ${hand(nameA, nameB)}, the second ${hand(nameC, nameD)}`;
    return (
      `Sew ${namesTogether([a, b, c, d], words)} into halves along their short sides: ${halves}. ` +
      `Sew two halves together along their long sides, seams matched in the middle.${templatesLie(step, words)}`
    );
  }
  const begin = (which: string, rounds: number | null): string => `Pair ${which}, right sides together. ${halvesOf(rounds, a, words)}`;
  if (hourglass) {
    const rounds = roundsFor(step, a, 2, words);
    return (
      `${begin(pairs(a, b, rounds, words), rounds)} Lay these on one another in twos, right sides together, seams nested and ` +
      `each fabric on the other; ${crossing(words)}: 2 units from each two.`
    );
  }
  const alike = turnsInto(round, round.toReversed());
  const mirrored = alike
    ? ''
    : `, mirror images of each other: use those in which ${listed([nameA, nameB, nameC, nameD])} follow clockwise`;
  return (
    `${begin(`${pairs(a, b, null, words)}, and ${pairs(c, d, null, words)}`, null)} ` +
    'Lay these on one another in twos, one of each, right sides together and seams nested, ' +
    `with ${nameD} on ${nameA} and ${nameC} on ${nameB}; ${crossing(words)}: 2 units from each two${mirrored}.`
  );
}

/** @returns whether two rounds of four are the same, begun at some place */
const turnsInto = (one: readonly string[], other: readonly string[]): boolean =>
  other.some((_, i) => one.join('\n') === [...other.slice(i), ...other.slice(0, i)].join('\n'));

/** Split quarter-square triangles: one large triangle, two small ones. */
export function splitQuarterWords(step: Told, words: Vocabulary): string {
  const { parts, joins } = step;
  const first = joins[0]!;
  const smalls = clockwise([parts[first.first]!, parts[first.second]!], parts);
  const [left, right] = smalls;
  const large = parts.find((part) => !smalls.includes(part))!;
  const [nameLeft, nameRight, nameLarge] = [left, right, large].map((part) => cloth(part, words)) as [string, string, string];
  const handed = clothOf(left) !== clothOf(right);
  if (roleOf(left) !== 'pair') {
    const hand = handed ? `, ${nameLeft} on the left when the long side of the two is below` : '';
    return (
      `Sew ${namesTogether(smalls, words)} together in twos along a short side${hand}. ` +
      `Sew ${namesTogether([large], words)} to the long sides of these.${templatesLie(step, words)}`
    );
  }
  const rounds = roundsFor(step, large, handed ? 1 : 2, words);
  const mirrored = handed
    ? `, mirror images of each other: in this one ${nameLeft} is left of ${nameRight} when ${nameLarge} is below`
    : '';
  const halves = rounds === null ? null : Math.ceil(rounds / 2);
  return (
    `Pair ${pairs(left, right, halves, words)}, right sides together. ${halvesOf(halves, left, words)} ` +
    `Lay one on each ${partName(large, words)}, right sides together; ${crossing(words)}: 2 units from each${mirrored}.`
  );
}

/** Flying geese four at a time; every other way of a unit with corners, geese and squares in a square among them. */
export function cornerWords(step: Told, words: Vocabulary): string {
  const [large] = inRole(step, 'large');
  const [small] = inRole(step, 'small');
  if (large && small) return fourGeese(step, large, small, words);
  const flipped = inRole(step, 'corner');
  const corners = flipped.length > 0 ? flipped : step.parts.filter(isCornerTriangle);
  const base = step.parts.find((part) => !corners.includes(part));
  if (!base || corners.length !== step.parts.length - 1) return numbered(step, words);
  return flipped.length > 0 ? stitchedAndFlipped(step, base, corners, words) : fromTriangles(step, base, corners, words);
}

/** Two equal legs along the sides of the unit. */
function isCornerTriangle({ outline }: StepPart): boolean {
  const shape = cutShape(outline, rational(1));
  return shape.form === 'isosceles' && shape.grain === 'legs';
}

function fourGeese(step: Told, large: StepPart, small: StepPart, words: Vocabulary): string {
  const rounds = roundsFor(step, large, 4, words);
  const [largeName, smallName] = [cloth(large, words), cloth(small, words)];
  return (
    `Take 4 ${partName(small, words, true)} to each ${partName(large, words)}. ` +
    `Lay 2 ${smallName} squares on opposite corners of the ${largeName} square, right sides together; ` +
    `draw the diagonal that runs through both, ${onBothSides(words)}, and press the ${smallName} triangles out. ` +
    `On each half lay 1 ${smallName} square in the corner that is left, ` +
    `draw its diagonal from that corner to where the first two triangles meet, ${onBothSides(words)}: ` +
    `${yields(4, eachOf(rounds, `${largeName} square`), rounds, step)}.`
  );
}

/** Stitch-and-flip: squares sewn across the corners of a base. */
function stitchedAndFlipped(step: Told, base: StepPart, corners: readonly StepPart[], words: Vocabulary): string {
  return (
    `Draw a diagonal on the back of the ${namesTogether(corners, words)}. Sew them on one at a time: ` +
    `lay a square on a corner of the ${partName(base, words)}, right sides together, the line across the corner; ` +
    `sew on the line, cut ${allowance(words)} outside it and press the corner out. ${whereTo(step, corners, words)}`
  );
}

/** Triangles sewn to a middle that is cut to its shape. */
function fromTriangles(step: Told, base: StepPart, corners: readonly StepPart[], words: Vocabulary): string {
  const how = { along: 'by their long sides', end: '' };
  // Equal angles at both ends of a seam stand out equally; a goose has them at its base alone.
  if (step.kind === 'square in a square') how.along += ', middles matched';
  if (step.kind === 'flying geese') {
    how.along += ', tips even at the ends of its long side';
    how.end = ` The point ends ${allowance(words)} inside the edge.`;
  }
  return (
    `Sew ${namesTogether(corners, words)} to the ${partName(base, words)} ${how.along}, and press each out before the next. ` +
    `${whereTo(step, corners, words)}${how.end}${templatesLie(step, words)}`
  );
}

/** @returns which square or triangle goes to which corner of the picture */
function whereTo(step: Told, corners: readonly StepPart[], words: Vocabulary): string {
  const byName = new Map<string, string[]>();
  const sizes = different(corners.map((part) => cutSize(cutOf(part, words), words)));
  for (const part of corners) {
    const name = sizes.length > 1 ? `${cloth(part, words)} ${cutSize(cutOf(part, words), words)}` : cloth(part, words);
    byName.set(name, [...(byName.get(name) ?? []), cornerOf(part, step.parts)]);
  }
  if (byName.size === 1 && corners.length === 4) return `${cloth(corners[0]!, words)} goes to all 4 corners, opposite ones first.`;
  const said = [...byName].map(([name, places]) => ({
    name,
    to: `to the ${listed(inCornerOrder(places))} corner${places.length > 1 ? 's' : ''}`,
  }));
  return `${said.map(({ name, to }, i) => `${name} ${i === 0 ? 'goes ' : ''}${to}`).join(', ')}.`;
}

const CORNERS = ['top left', 'top right', 'bottom right', 'bottom left'];
const inCornerOrder = (places: readonly string[]): readonly string[] => places.toSorted((a, b) => CORNERS.indexOf(a) - CORNERS.indexOf(b));

/** Half-rectangle triangles: both triangles are of one hand. */
export function halfRectangleWords(step: Told, words: Vocabulary): string {
  const [one, other] = step.parts as [StepPart, StepPart];
  const diagonal = diagonalOf(one);
  const cut =
    diagonal === null
      ? ''
      : ` Cut both rectangles right side up, standing on a short side, ${diagonal}; the other diagonal gives the mirror image.`;
  return (
    `Lay ${namesTogether([one, other], words)} right sides together in pairs, long sides even and a tip standing out ` +
    `equally at either end; sew the long sides. The seam ends ${allowance(words)} inside two corners, not in them.${cut}${templatesLie(step, words)}`
  );
}

/** A peak: a middle triangle as wide as the unit, a mirrored pair at its slopes. */
export function peakWords(step: Told, words: Vocabulary): string {
  const middle = step.parts.find((part) => placeOf(part, step.parts) === 'middle');
  const [one, other] = step.parts.filter((part) => part !== middle);
  if (!middle || !one || !other) return numbered(step, words);
  const slope = (part: StepPart): string => `the ${placeOf(part, step.parts)} slope`;
  const [diagonal, mirrored] = [diagonalOf(one), diagonalOf(other)];
  const cut =
    diagonal === null || mirrored === null
      ? ''
      : ` The rectangles are cut right side up, standing on a short side: for ${slope(one)} ${diagonal}, for ${slope(other)} ${mirrored}.`;
  return (
    `Sew ${partName(one, words)} to ${slope(one)} of ${partName(middle, words)} and press it out; ` +
    `sew ${partName(other, words)} to ${slope(other)}. ` +
    `The point ends ${allowance(words)} inside the edge.${cut}${templatesLie(step, words)}`
  );
}

/** A printed outline is for one hand only. */
const templatesLie = ({ parts }: Told, words: Vocabulary): string =>
  parts.some((part) => 'cut' in part.from && cutOf(part, words).shape === 'template') ? ' Templates are cut right side up.' : '';

/** Free units: rounds of triangles about a middle, or whatever else straight seams can build. */
export function freeWords(step: Told, words: Vocabulary): string {
  const rounds = cornerRounds(step);
  if (!rounds) return numbered(step, words);
  const said = rounds.map((round, i) => {
    const names = inRuns(round.map((part) => partName(step.parts[part]!, words)));
    const all =
      names.length === 1 ? `${namesTogether([step.parts[round[0]!]!], words)} on all 4 sides` : listed(namesBySide(step, round, words));
    return `${rounds.length > 1 ? `Round ${i + 1}` : 'Round it'}: ${all}.`;
  });
  return (
    `Begin with ${partName(step.parts[0]!, words)} as the centre and sew triangles to its sides, middles matched, opposite ones first; ` +
    `press each outward before the next. ${said.join(' ')}${templatesLie(step, words)}`
  );
}

const namesBySide = (step: Told, round: readonly number[], words: Vocabulary): readonly string[] =>
  round.map((part) => `${partName(step.parts[part]!, words)} to the ${placeOf(step.parts[part]!, step.parts)}`);

/** Pieces that no ruler rule names: numbered in the order in which they are sewn. */
export function numbered(step: Told, words: Vocabulary): string {
  const diagonals = step.parts.map(diagonalOf);
  const names = step.parts.map((part, i) => {
    const cut = diagonals[i] === null ? '' : `, cut ${diagonals[i]!}`;
    return `${i + 1} ${partName(part, words)}, ${placeOf(part, step.parts)}${cut}`;
  });
  const rectangles = diagonals.some((diagonal) => diagonal !== null) ? ' Rectangles are cut right side up, standing on a short side.' : '';
  return `Lay out the pieces as in the picture: ${names.join('; ')}.${rectangles}${templatesLie(step, words)} Sew ${inOrder(step)}.`;
}

/** @returns in which order numbered things are sewn; the numbers of what is already one follow one another and are told as "1–3" */
function inOrder({ parts, joins }: Told): string {
  const members = (thing: number): readonly [number, number] => {
    if (thing < parts.length) return [thing + 1, thing + 1];
    const { first, second } = joins[thing - parts.length]!;
    const [[a, b], [c, d]] = [members(first), members(second)];
    return [Math.min(a, c), Math.max(b, d)];
  };
  const said = (thing: number): string => different(members(thing)).join('–');
  const runs: { readonly begin: string; readonly then: string[] }[] = [];
  joins.forEach(({ first, second }, i) => {
    const goesOn = i > 0 && first === parts.length + i - 1 && second < parts.length;
    if (goesOn) runs.at(-1)!.then.push(said(second));
    else runs.push({ begin: `${said(second)} to ${said(first)}`, then: [] });
  });
  return runs.map(({ begin, then }) => (then.length > 0 ? `${begin}, then ${listed(then)}` : begin)).join('; ');
}
