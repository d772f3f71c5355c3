import type { Assembly } from '../../geometry/piecing/assembly.ts';
import { isWeb } from '../../geometry/piecing/web.ts';
import type { Step } from '../../sewing/step.ts';
import type { Pattern } from '../pattern.ts';
import { extentOf, middleOf, type Spot } from '../polygons.ts';
import { between, direction, ink, inkAt, plus, times, type Frame } from './diagram.ts';

/** One seam, sewn in all equal units at once. */
export interface Moment {
  readonly step: Step;
  /** Which seam of its step it is, from 1, and how many that has. */
  readonly seam: number;
  readonly seams: number;
  /** How many seams of one block are sewn once this one is. */
  readonly sewn: number;
}

export interface MovedPiece {
  readonly fabric: string;
  readonly outline: readonly Spot[];
}

/** A block sewn before one's eyes, from its cut pieces to the whole. */
export interface PlayThrough {
  readonly moments: readonly Moment[];
  /** Holds all pieces at every moment. */
  readonly frame: Frame;
  /**
   * @param done how many moments are over; in between, while a seam closes, a part of one
   * @returns every piece of the block where it lies then, finished, in the block's unit
   */
  readonly at: (done: number) => readonly MovedPiece[];
}

/** How far two things lie from each other before they are sewn, as a share of the block. */
const GAP = 0.03;

/** @returns the play-through of a pattern: in the order of its steps, what is not yet sewn a little apart */
export function playThrough({ piecing, steps, figures, lattice, block }: Pattern): PlayThrough {
  const scale = ink(lattice.step);
  const gap = GAP * Math.max(ink(block.finished.width), ink(block.finished.height));
  const places = new Map(piecing.units.map(({ id, places: each }) => [id, each.map(({ assembly }) => assembly)]));
  const [moments, momentOf] = timed(steps, (makes) => places.get(makes) ?? [piecing.root]);

  const laid = (node: Assembly, done: number): readonly MovedPiece[] => {
    if (node.piece) return [{ fabric: node.piece.fabric, outline: node.outline.map((point) => inkAt(point, scale)) }];
    const [first, ...others] = node.parts as [Assembly, ...Assembly[]];
    const isRing = node.kind === 'partial-seam ring';
    const centre = laid(first, done);
    let all = centre;
    let sewnTo = centreOf(first, scale);
    others.forEach((part, i) => {
      const { from, to } = node.seams[i]!;
      const open = Math.min(1, Math.max(0, momentOf.get(node)![i]! + 1 - done));
      const across = normal(inkAt(from, scale), inkAt(to, scale), sewnTo, centreOf(part, scale));
      const pieces = laid(part, done);
      const on = isRing ? centre : all;
      const apart = Math.max(...reaches(on, across)) - Math.min(...reaches(pieces, across)) + gap * eased(open);
      all = [...all, ...moved(pieces, times(across, apart))];
      if (!isRing) sewnTo = between(sewnTo, centreOf(part, scale));
    });
    return centred(all, node, scale);
  };

  const at = (done: number): readonly MovedPiece[] => laid(piecing.root, done);
  const sewn = moments.at(-1)?.sewn ?? 0;
  if (sewn !== figures.seams) throw new Error(`${sewn} seams are shown of ${figures.seams}`);
  return { moments, frame: boxOf(at(0)), at };
}

/** Every seam in the order of the steps; equal units are sewn alike, so the same seam of each is of one moment. */
function timed(steps: readonly Step[], placesOf: (makes: string) => readonly Assembly[]): readonly [readonly Moment[], ReadonlyMap<Assembly, readonly number[]>] {
  const made = new Set(steps.flatMap(({ makes }) => (makes === 'block' ? [] : placesOf(makes))));
  const moments: Moment[] = [];
  const momentOf = new Map<Assembly, readonly number[]>();
  let sewn = 0;
  for (const step of steps) {
    const places = placesOf(step.makes);
    const begun = moments.length;
    let seams = 0;
    for (const place of places) {
      let next = begun;
      const walk = (node: Assembly): void => {
        for (const part of node.parts) if (!made.has(part)) walk(part);
        if (node.parts.length > 0) momentOf.set(node, node.seams.map(() => next++));
      };
      walk(place);
      if (isWeb(place)) inColumns(place, begun, momentOf);
      seams = next - begun;
    }
    for (let seam = 1; seam <= seams; seam++) moments.push({ step, seam, seams, sewn: (sewn += places.length) });
  }
  return [moments, momentOf];
}

/** A web is sewn column onto column, row after row, and then along its long seams. */
function inColumns(web: Assembly, begun: number, momentOf: Map<Assembly, readonly number[]>): void {
  const { parts: rows, seams } = web;
  rows.forEach((row, r) => momentOf.set(row, row.seams.map((_, column) => begun + column * rows.length + r)));
  momentOf.set(web, seams.map((_, i) => begun + rows[0]!.seams.length * rows.length + i));
}

/** A motion that begins and ends slowly. */
const eased = (open: number): number => open * open * (3 - 2 * open);

const centreOf = ({ outline }: Assembly, scale: number): Spot => middleOf(outline.map((point) => inkAt(point, scale)));

/** @returns the direction across a seam from one side to the other */
function normal(from: Spot, to: Spot, one: Spot, other: Spot): Spot {
  const [dx, dy] = direction(from, to);
  const toOther = (other[0] - one[0]) * -dy + (other[1] - one[1]) * dx;
  return toOther >= 0 ? [-dy, dx] : [dy, -dx];
}

const reaches = (pieces: readonly MovedPiece[], [dx, dy]: Spot): readonly number[] =>
  pieces.flatMap(({ outline }) => outline.map(([x, y]) => x * dx + y * dy));

const moved = (pieces: readonly MovedPiece[], by: Spot): readonly MovedPiece[] =>
  pieces.map(({ fabric, outline }) => ({ fabric, outline: outline.map((spot) => plus(spot, by)) }));

/** @returns pieces whose box has its middle where that of the assembly is, sewn */
function centred(pieces: readonly MovedPiece[], { outline }: Assembly, scale: number): readonly MovedPiece[] {
  const [now, then] = [boxOf(pieces), boxOf([{ fabric: '', outline: outline.map((point) => inkAt(point, scale)) }])];
  const by: Spot = [then.left + then.width / 2 - now.left - now.width / 2, then.top + then.height / 2 - now.top - now.height / 2];
  return moved(pieces, by);
}

function boxOf(pieces: readonly MovedPiece[]): Frame {
  const { left, top, right, bottom } = extentOf(pieces.flatMap(({ outline }) => outline));
  return { left, top, width: right - left, height: bottom - top };
}
