import type { Assembly, Piece } from '../../geometry/piecing/assembly.ts';
import { piecesOf } from '../../geometry/piecing/congruence.ts';
import { cornerRounds } from '../../sewing/corner-rounds.ts';
import { isInRounds } from '../../sewing/join-words.ts';
import type { Join, Step, StepPart } from '../../sewing/step.ts';
import { depthIn, middleOf, type Polygon, type Spot } from '../polygons.ts';
import { between, captionOf, direction, ink, inkAt, panel, plus, times, type Drawn, type Mark, type Panel } from './diagram.ts';

/** How far the parts of a step lie from each other before they are sewn, as a share of the whole. */
const APART = 0.07;
/** How far an arrow reaches at least beyond its seam, in the same measure. */
const ARROW = 0.045;

/** A piece of what a step makes, its outline as it lies there. */
export interface PlacedPiece {
  readonly fabric: string;
  readonly outline: readonly Spot[];
  /** Number of the part that it lies in. */
  readonly part: number;
}

/** What a step makes, as ink: everything from its top-left corner. */
export interface Made {
  readonly pieces: readonly PlacedPiece[];
  readonly parts: readonly Polygon[];
  readonly width: number;
  readonly height: number;
}

/** @returns the outlines of a step's parts as ink */
const partsOf = ({ step, pattern }: Drawn): readonly Polygon[] =>
  step.parts.map(({ outline }) => outline.map((point) => inkAt(point, ink(pattern.lattice.step))));

/** @returns what a step makes, piece by piece */
export function madeBy({ step, pattern }: Drawn): Made {
  const scale = ink(pattern.lattice.step);
  const parts = partsOf({ step, pattern });
  const made = step.makes === 'block' ? pattern.piecing.root : placeOf(step, pattern);
  const spots = made.outline.map((point) => inkAt(point, scale));
  const corner: Spot = [-Math.min(...spots.map(([x]) => x)), -Math.min(...spots.map(([, y]) => y))];
  const pieces = piecesOf(made).map(({ fabric, outline }: Piece): PlacedPiece => {
    const moved = outline.map((point) => plus(inkAt(point, scale), corner));
    return { fabric, outline: moved, part: parts.findIndex((part) => depthIn(part, middleOf(moved)) >= 0) };
  });
  return { pieces, parts, width: ink(step.finished.width), height: ink(step.finished.height) };
}

function placeOf({ makes }: Step, pattern: Drawn['pattern']): Assembly {
  const line = pattern.units.find(({ unit }) => unit.id === makes);
  if (!line) throw new Error(`no unit ${makes}`);
  return line.unit.places[0]!.assembly;
}

/** @returns the parts as they lie, a little apart, with their names and the seams to sew */
export function laidOut(drawn: Drawn): Panel {
  const { step, pattern } = drawn;
  const made = madeBy(drawn);
  const gap = Math.max(made.width, made.height) * APART;
  const shift = ([x, y]: Spot): Spot => [((x / made.width) * 2 - 1) * gap, ((y / made.height) * 2 - 1) * gap];
  const shifts = made.parts.map((part) => shift(middleOf(part)));
  const cloth = made.pieces.map(({ fabric, outline, part }): Mark => {
    const by = shifts[part]!;
    return { mark: 'cloth', fabric, side: 'right', outline: outline.map((spot) => plus(spot, by)) };
  });
  const scale = ink(pattern.lattice.step);
  const ends = step.joins.map((join) => [inkAt(join.from, scale), inkAt(join.to, scale)] as const);
  const seams = step.joins.map((join, i): Mark => {
    const [from, to] = ends[i]!;
    const by = shift(between(from, to));
    return { mark: 'line', line: join.sew === 'finish' ? 'stitched later' : 'stitched', from: plus(from, by), to: plus(to, by) };
  });
  const numbers = isTold(step)
    ? ends.map(([from, to], i): Mark => ({ mark: 'order', number: i + 1, at: plus(between(from, to), shift(between(from, to))) }))
    : [];
  const names = step.parts.flatMap((part, i) => nameMark(step, part, i, made.parts[i]!, shifts[i]!));
  return panel([...cloth, ...seams, ...names, ...numbers], captionOf(drawn, step.joins.length === 0 ? 'one piece' : 'lay out and sew'));
}

/** Seams of a row or column follow one another as they lie, and where pieces are told by numbers so are their seams. */
const isTold = (step: Step): boolean =>
  step.joins.length > 1 && (isInRounds(step) || step.kind === 'partial-seam ring' || (step.kind === 'free unit' && !isNumbered(step)));

/** @returns whether the words tell the pieces by numbers: those of a free unit that no recipe fits */
const isNumbered = (step: Step): boolean => step.kind === 'free unit' && cornerRounds(step) === null;

/** A unit's letter, as it lies; the number of a piece where the words go by numbers. */
function nameMark(step: Step, part: StepPart, index: number, outline: readonly Spot[], by: Spot): readonly Mark[] {
  const text = 'unit' in part.from ? part.from.unit : isNumbered(step) ? String(index + 1) : null;
  if (text === null) return [];
  const middle = middleOf(outline);
  // The widest circle round the middle that fits in.
  return [{ mark: 'name', text, at: plus(middle, by), turn: part.turn, room: 2 * depthIn(outline, middle) }];
}

/**
 * @returns the finished work with its allowances, and which way its seams are pressed; cut large, with the line on which it is trimmed
 * @param says what the maker does now
 */
export function finished(drawn: Drawn, says: string): Panel {
  const { step, pattern } = drawn;
  const made = madeBy(drawn);
  const seam = ink(pattern.choices.seam);
  const over = step.trimmed ? ink(pattern.choices.trim) : 0;
  const cloth = made.pieces.map(({ fabric, outline }): Mark => ({
    mark: 'cloth',
    fabric,
    side: 'right',
    outline: withAllowance(outline, made, seam + over / 2),
  }));
  const trims = step.trimmed ? trimLines(made, seam) : [];
  return panel([...cloth, ...trims, ...pressed(drawn, made, seam)], says);
}

const NEAR = 1e-9;
const isEnd = (at: number, most: number): boolean => at < NEAR || at > most - NEAR;

/**
 * @returns an outline with its cloth beyond the edge of the work: straight out from where it has a side on the edge; where two pieces
 * meet in a corner of the work their seam runs on to the edge of the allowances, where more do it is shown to run to their corner
 */
function withAllowance(outline: readonly Spot[], { pieces, width, height }: Made, by: number): readonly Spot[] {
  const onEdge = (p: Spot, q: Spot): 'level' | 'upright' | null => {
    if (isEnd(p[1], height) && Math.abs(p[1] - q[1]) < NEAR) return 'level';
    return isEnd(p[0], width) && Math.abs(p[0] - q[0]) < NEAR ? 'upright' : null;
  };
  const outX = ([x]: Spot): number => (x < NEAR ? -by : isEnd(x, width) ? width + by : x);
  const outY = ([, y]: Spot): number => (y < NEAR ? -by : isEnd(y, height) ? height + by : y);
  /** What lies beyond the end p of a side on the edge, from the side on; `inner` is where the piece goes on. */
  const beyond = (p: Spot, side: 'level' | 'upright', inner: Spot): readonly Spot[] => {
    const corner: Spot = [outX(p), outY(p)];
    if (!isEnd(p[0], width) || !isEnd(p[1], height) || meeting(pieces, p) > 2) return [corner];
    const [dx, dy] = direction(inner, p);
    const [toSide, toEnd] = side === 'upright' ? [by / Math.abs(dx), by / Math.abs(dy)] : [by / Math.abs(dy), by / Math.abs(dx)];
    const end = plus(p, times([dx, dy], Math.min(toSide, toEnd)));
    return toSide <= toEnd ? [end] : [corner, end];
  };
  return outline.flatMap((p, i): readonly Spot[] => {
    const [before, after] = [outline.at(i - 1)!, outline[(i + 1) % outline.length]!];
    const [from, to] = [onEdge(before, p), onEdge(p, after)];
    if (from && to) return [[outX(p), outY(p)]];
    return [...(from ? beyond(p, from, after) : []), p, ...(to ? beyond(p, to, before).toReversed() : [])];
  });
}

/** @returns how many pieces have a corner at a place */
const meeting = (pieces: readonly PlacedPiece[], [x, y]: Spot): number =>
  pieces.filter(({ outline }) => outline.some((q) => Math.abs(q[0] - x) < NEAR && Math.abs(q[1] - y) < NEAR)).length;

function trimLines({ width, height }: Made, seam: number): readonly Mark[] {
  const corners: readonly Spot[] = [
    [-seam, -seam],
    [width + seam, -seam],
    [width + seam, height + seam],
    [-seam, height + seam],
  ];
  return corners.map((from, i): Mark => ({ mark: 'line', line: 'cut', from, to: corners[(i + 1) % 4]! }));
}

/** @returns an arrow across the middle of every seam, toward where its allowances lie */
function pressed(drawn: Drawn, made: Made, seam: number): readonly Mark[] {
  const reach = Math.max(ARROW * Math.max(made.width, made.height), Math.min(seam * 1.6, Math.min(made.width, made.height) / 5));
  return pressedWays(drawn).flatMap((way): readonly Mark[] => {
    if (!way) return [];
    const { at, toward, across } = way;
    const far = times(across, reach);
    if (!toward) return [{ mark: 'pressed open', from: plus(at, times(far, -1)), to: plus(at, far) }];
    return [{ mark: 'pressed', from: plus(at, times(far, -0.5)), to: plus(at, far) }];
  });
}

/** How one seam lies. */
export interface PressedWay {
  /** Its middle. */
  readonly at: Spot;
  /** Of length 1, across the seam: to where its allowances lie, or either way where it is open. */
  readonly across: Spot;
  /** Whether they lie to one side. */
  readonly toward: boolean;
}

/** @returns for each seam of a step how it lies; null for one that only ends another */
export function pressedWays({ step, pattern }: Drawn): readonly (PressedWay | null)[] {
  const scale = ink(pattern.lattice.step);
  const parts = partsOf({ step, pattern });
  return step.joins.map((join, i) => {
    const way = step.pressed[i];
    if (way === undefined || join.sew === 'finish') return null;
    const [a, b] = [inkAt(join.from, scale), inkAt(join.to, scale)];
    const [dx, dy] = direction(a, b);
    const at = between(a, b);
    if (way === 'open') return { at, across: [-dy, dx], toward: false };
    const side = sideOf(step, parts, join, way, at, [-dy, dx]);
    return { at, across: [-dy * side, dx * side], toward: true };
  });
}

/** @returns 1 where the thing lies on that side of the seam to which `across` points, else −1 */
function sideOf(step: Step, parts: readonly Polygon[], join: Join, way: 'first' | 'second', at: Spot, across: Spot): 1 | -1 {
  const far = partsIn(step, join[way]).reduce((sum, part) => {
    const [x, y] = middleOf(parts[part]!);
    return sum + (x - at[0]) * across[0] + (y - at[1]) * across[1];
  }, 0);
  return far >= 0 ? 1 : -1;
}

/** @returns the numbers of the parts that a thing is made of */
function partsIn({ parts, joins }: Pick<Step, 'parts' | 'joins'>, thing: number): readonly number[] {
  const join = joins[thing - parts.length];
  return join ? [join.first, join.second].flatMap((each) => partsIn({ parts, joins }, each)) : [thing];
}
