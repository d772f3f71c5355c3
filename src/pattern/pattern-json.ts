import type { Cut } from '../cutting/cut.ts';
import type { ClothLayout } from '../cutting/layout.ts';
import type { Figures } from '../geometry/piecing/assembly.ts';
import { GOOD_FOR } from '../geometry/piecing/way.ts';
import type { Point } from '../geometry/point.ts';
import { formatLength } from '../measure/lengths.ts';
import { equals, type Rational } from '../measure/rational.ts';
import { cutLarge, type CutLarge } from '../sewing/cut-large.ts';
import { layersOf } from '../sewing/pressing/layers.ts';
import type { Step } from '../sewing/step.ts';
import { alsoOf } from './also.ts';
import { optionsFor } from './effects.ts';
import { inEnglish } from './english.ts';
import { cornersOf, exactText, placeText } from './exact-text.ts';
import { ASSUMED } from './figure-words.ts';
import { refusedPinText } from './refused-pins.ts';
import type { Alternative, Cloth, DivisionLine, Pattern, RefusedPin, Size, UnitLine } from './pattern.ts';
import { allDirectionNotes } from './directions.ts';
import { scrapsOf, type ScrapFamily } from './scraps.ts';
import { aboutTime } from './time-words.ts';
import { workFigures } from './work-figures.ts';
import { STAGES, USUAL_TIMES } from './work-time.ts';

/** Width and height in the block's unit, as `parseLength` reads them: "12 1/2". */
type SizeText = readonly [string, string];

export const sizeText = ({ width, height }: Size): SizeText => [formatLength(width), formatLength(height)];

/**
 * @returns the pattern as a plain object for other programs. Every length is text in the block's unit, whole part and fraction
 * ("4 7/8"), also in centimetres. `patches` are the pieces of the sewn block; `cuts` count squares before any diagonal cut.
 */
export function patternJson(pattern: Pattern) {
  const { block, choices, figures, lattice } = pattern;
  const families = scrapsOf(pattern);
  const also = alsoOf(pattern);
  const layers = layersOf(pattern.steps);
  const large = new Map(cutLarge(pattern.cuts, pattern.steps).map((line) => [line.cut, line]));
  return {
    block: { name: block.name, finished: sizeText(block.finished), unfinished: sizeText(block.unfinished), unit: block.unit },
    choices: {
      seam: formatLength(choices.seam),
      ruler: formatLength(choices.ruler),
      trim: formatLength(choices.trim),
      width: formatLength(choices.width),
      blocks: choices.blocks,
      method: choices.method,
      methods: choices.methods,
      /** By the letters of units for which something else is chosen. */
      units: pattern.chosenUnits,
    },
    way: pattern.way,
    assembly: pattern.choices.assembly,
    patches: figures.pieces,
    seams: figures.seams,
    partialSeams: figures.partialSeams,
    setInSeams: figures.setInSeams,
    differentUnits: figures.differentUnits,
    templates: figures.templates,
    matchedPoints: figures.matchedPoints,
    divisions: pattern.divisions.reduce((sum, { places }) => sum + places.length, 0),
    dividedAt: pattern.divisions.map((division) => divisionJson(division, lattice.step)),
    ...boundJson(figures),
    units: pattern.units.map((line) => unitJson(pattern, line)),
    cuts: pattern.cuts.map((cut) => ({ ...cutJson(cut, lattice.step), ...largeJson(large.get(cut.id), pattern) })),
    steps: pattern.steps.map((step, i) => stepJson(step, layers[i]!, also[i]!, lattice.step)),
    pressing: pressingJson(pattern, layers),
    figures: figuresJson(pattern),
    fabrics: pattern.fabrics.map(clothJson),
    ...(families.length > 0 && { scraps: families.map((family) => scrapsJson(family, pattern)) }),
    alternatives: pattern.alternatives.filter(({ way }) => way !== pattern.way).map(alternativeJson),
    proof: { holds: pattern.proof.holds, seams: pattern.proof.seams, faults: pattern.proof.faults },
    refusedPins: pattern.refusedPins.map(refusedPinJson),
    warnings: pattern.warnings.map(({ code, says, pieces, cuts }) => ({ code, text: says, pieces, cuts })),
    notes: [...pattern.refusedPins.map((pin) => refusedPinText(pin, inEnglish(pattern))), ...pattern.notes, ...allDirectionNotes(pattern), ...families.flatMap(({ says }) => says)],
    cautions: pattern.cautions,
  };
}

const unitJson = (pattern: Pattern, line: UnitLine) => {
  const { unit, count, finished, unfinished, method, settledBy, methods, pieces } = line;
  return {
    id: unit.id,
    kind: unit.kind,
    count,
    finished: sizeText(finished),
    unfinished: sizeText(unfinished),
    method,
    settledBy,
    methods,
    ...(isCheap(pattern) && method !== null && { effects: effectsJson(pattern, line) }),
    pieces,
  };
};

/** Of so many pieces and ways to cut them what each would take is worked out in a moment; beyond, it is left out. */
const MOST_EFFECTS = 20_000;

const isCheap = ({ pieces, units }: Pattern): boolean =>
  pieces.length * units.reduce((sum, { methods }) => sum + methods.length, 0) <= MOST_EFFECTS;

/** What the whole pattern would take with each method of one unit. */
const effectsJson = (pattern: Pattern, line: UnitLine) =>
  Object.fromEntries(
    optionsFor(pattern, line, 'unit').flatMap(({ method, trimmed, effect: { cloth, ...counts } }) =>
      method === null ? [] : [[method, { ...counts, cloth: formatLength(cloth), trimmed }]],
    ),
  );

/** One line of the cutting list; step: length of a lattice step. */
export const cutJson = (cut: Cut, step: Rational) => ({
  id: cut.id,
  fabric: cut.fabric,
  quantity: cut.quantity,
  shape: cut.shape,
  width: formatLength(cut.width),
  height: formatLength(cut.height),
  exact: cut.exact && { width: exactText(cut.exact.width), height: exactText(cut.exact.height) },
  subcut: cut.subcut,
  /** Of a strip: how many triangles it gives, and what is measured along its edges for each. */
  ...(cut.nested && { triangles: cut.nested.triangles, measure: formatLength(cut.nested.measure) }),
  /** Of a strip for strip sets: its own width and length, into how many segments its set is cut across, and how wide each is. */
  ...(cut.set && { strip: { width: formatLength(cut.set.across), length: formatLength(cut.set.length), segments: cut.set.segments, segment: formatLength(cut.set.segment) } }),
  ...(cut.diagonals && { diagonals: cut.diagonals }),
  for: [...new Set(cut.uses.map((use) => use.unit))],
  uses: cut.uses,
  spare: cut.spare,
  /** Finished corners, from the left and the top of the rectangle that holds them. */
  ...(cut.template && { corners: cornersOf(cut.template, step).map(([x, y]): SizeText => [formatLength(x), formatLength(y)]) }),
});

/** By how much a line is rounded up, and the steps in which that is trimmed away; nothing where it is as it must be. */
const largeJson = (line: CutLarge | undefined, { steps }: Pattern) =>
  line && {
    large: { width: exactText(line.by.width), height: exactText(line.by.height) },
    trimmedIn: line.trimmed.map((number) => ({ step: number, to: sizeText(steps.find((step) => step.number === number)!.unfinished) })),
    untrimmed: line.kept,
  };

const stepJson = ({ number, text, makes, kind, count, method, finished, unfinished, trimmed, press, points }: Step, layers: number, also: string | null, step: Rational) => ({
  number,
  text,
  makes,
  kind,
  count,
  method,
  finished: sizeText(finished),
  unfinished: sizeText(unfinished),
  trimmed,
  press,
  ...(also !== null && { also }),
  /** Where seams meet along its seams, across and down from the top-left corner of what it makes; those that lie opposite ways nest. */
  meet: points.map(({ at, lie }) => ({ at: pointJson(at, step), lie })),
  /** Of cloth, where the most lie on one another along its seams. */
  layers,
});

/** Of one block: points where seams meet, and where they do not nest; whether fewer, or better ones, were possible. */
const pressingJson = ({ pressing: { points, sameWay, open, proved } }: Pattern, layers: readonly number[]) => ({ points, sameWay, open, provedBest: proved, layers: Math.max(...layers) });

/** By what a maker may weigh the pattern, of one block; straight cuts and times are for all blocks, the times no more than an estimate. */
const figuresJson = (pattern: Pattern) => {
  const { time, narrowest, pointsToMatch, pointsApart, layers, bias, straightCuts } = workFigures(pattern);
  const { cutting, sewing, pressing, trimming } = time.stages;
  const whole = Math.round;
  const seconds = { cutting: whole(cutting), sewing: whole(sewing), pressing: whole(pressing), trimming: whole(trimming) };
  return {
    pointsToMatch,
    pointsNotNested: pointsApart.sameWay + pointsApart.open,
    layers,
    narrowest: exactText(narrowest),
    biasOnOuterEdge: bias.outer,
    biasSeams: bias.seams,
    straightCuts,
    time: {
      estimate: true,
      about: aboutTime(time.total),
      seconds: { ...seconds, all: STAGES.reduce((sum, stage) => sum + seconds[stage], 0), perBlock: whole(time.perBlock) },
      /** Seconds for each thing that is done. */
      assumed: USUAL_TIMES,
      note: ASSUMED,
    },
  };
};

/** Where the seams of one line run through one fabric, each place by its ends, across and down from the top-left corner; and what that costs. */
const divisionJson = ({ fabric, places, more, says }: DivisionLine, step: Rational) => ({
  fabric,
  places: places.map(({ from, to }) => ({ from: pointJson(from, step), to: pointJson(to, step) })),
  patches: more,
  seams: more,
  text: says,
});

const pointJson = ({ x, y, w }: Point, step: Rational): SizeText => [placeText(x, w, step), placeText(y, w, step)];

/** Pins are counted from 1, as in the file. */
const refusedPinJson = ({ pin, why, says }: RefusedPin) => ({ pin: pin + 1, why, text: says });

const clothJson = ({ fabric, order, strips, length, buy, added, joined, layout }: Cloth) => ({
  id: fabric.id,
  name: fabric.name,
  ...(fabric.directional && { directional: true }),
  strips: strips.map(({ width, count }) => ({ width: formatLength(width), count })),
  length: formatLength(length),
  buy,
  added,
  soldAs: order.bought.form,
  layout: layoutJson(layout),
  /** Pieces that are cut from widths of cloth sewn together: not in the layout. */
  joined: joined.map((one) => ({ ...one, length: formatLength(one.length) })),
});

/** By the length `takes` and `atLeast` are lengths, else numbers of precut pieces; sizes across the cloth, then along it. */
const layoutJson = ({ cloths, takes, least, unplaced }: ClothLayout) => ({
  takes: formatLength(takes),
  atLeast: formatLength(least),
  provedLeast: equals(takes, least),
  cloths: cloths.map(({ source, strips, times }) => ({
    from: source.form,
    width: formatLength(source.width),
    length: source.length && formatLength(source.length),
    times,
    strips: strips.map(({ length, columns, times: below }) => ({
      length: formatLength(length),
      times: below,
      columns: columns.map(({ width, pieces, times: beside }) => ({
        width: formatLength(width),
        times: beside,
        pieces: pieces.map((laid) => ({ cut: laid.cut, count: laid.count, size: [formatLength(laid.width), formatLength(laid.length)] })),
      })),
    })),
  })),
  unplaced,
});

/** A family of scraps: how many of each print are cut, and of which print each piece is, told by its finished corners in the block. */
const scrapsJson = ({ fabric, prints, cuts, of, seams, corners }: ScrapFamily, { pieces, lattice }: Pattern) => ({
  id: fabric.id,
  name: fabric.name,
  prints,
  cuts: cuts.map(({ cut, each }) => ({ cut: cut.id, each })),
  spread: pieces.filter(({ id }) => of.has(id)).map(({ id, outline }) => ({ print: of.get(id)!, corners: outline.map((corner) => pointJson(corner, lattice.step)) })),
  equalAlongSeams: seams,
  equalAtCorners: corners,
});

const alternativeJson = ({ way, figures }: Alternative) => ({
  way,
  goodFor: GOOD_FOR[way],
  patches: figures.pieces,
  seams: figures.seams,
  partialSeams: figures.partialSeams,
  setInSeams: figures.setInSeams,
  differentUnits: figures.differentUnits,
  templates: figures.templates,
  matchedPoints: figures.matchedPoints,
  ...boundJson(figures),
});

/** Of the way with the fewest pieces: how few there can be, and whether that is reached. */
const boundJson = ({ bound, pieces }: Figures) => (bound === undefined ? {} : { atLeast: bound, provedLeast: bound === pieces });
