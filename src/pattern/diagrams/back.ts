import { placed } from '../../geometry/piecing/congruence.ts';
import type { Assembly } from '../../geometry/piecing/assembly.ts';
import type { Point } from '../../geometry/point.ts';
import { placementIn } from '../../sewing/placement.ts';
import type { Step } from '../../sewing/step.ts';
import type { Pattern } from '../pattern.ts';
import { type Spot } from '../polygons.ts';
import { between, direction, ink, inkAt, plus, times } from './diagram.ts';
import { pressedWays } from './laid-out.ts';

/** One place of the block where a seam is sewn. */
export interface SeamPlace {
  /** Its ends, exactly, in lattice steps. */
  readonly ends: readonly [Point, Point];
  /** The same as ink, in the block's unit. */
  readonly from: Spot;
  readonly to: Spot;
  /** Of length 1, across it, as seen on the front: to where its allowances lie; null where it is open. */
  readonly toward: Spot | null;
}

/** A seam of one step, wherever it comes in the block: all its places are pressed alike. */
export interface PressedSeamClass {
  readonly step: Step;
  /** Which seam of its step it is, from 1. */
  readonly number: number;
  readonly places: readonly SeamPlace[];
}

/** A place where seams meet that do not nest. */
export interface LoosePoint {
  readonly at: Spot;
  readonly lie: 'the same way' | 'open';
}

/** A block's seams as they lie when all is sewn, as seen on its front; its back is the mirror image. */
export interface Back {
  readonly seams: readonly PressedSeamClass[];
  readonly loose: readonly LoosePoint[];
}

/** @returns every seam of a pattern's block with the way it is pressed, and the points that do not nest */
export function backOf(pattern: Pattern): Back {
  const scale = ink(pattern.lattice.step);
  const loose: LoosePoint[] = [];
  const seams = pattern.steps.flatMap((step): readonly PressedSeamClass[] => {
    const ways = pressedWays({ step, pattern });
    const inBlock = placesOf(step, pattern);
    for (const { take } of inBlock) {
      for (const { at, lie } of step.points) if (lie !== 'opposite ways') loose.push({ at: inkAt(take(at), scale), lie });
    }
    return step.joins.flatMap((join, i): readonly PressedSeamClass[] => {
      const way = ways[i];
      if (!way) return [];
      const places = inBlock.map(({ take, turn }): SeamPlace => {
        const ends = [take(join.from), take(join.to)] as const;
        return { ends, from: inkAt(ends[0], scale), to: inkAt(ends[1], scale), toward: way.toward ? turned(way.across, turn) : null };
      });
      return [{ step, number: i + 1, places }];
    });
  });
  return { seams, loose };
}

/** Where a step's result lies in the block, and how its points are taken there. */
function placesOf(step: Step, { piecing, units }: Pattern): readonly { readonly take: (point: Point) => Point; readonly turn: 0 | 1 | 2 | 3 }[] {
  const places: readonly { readonly assembly: Assembly; readonly turn: 0 | 1 | 2 | 3 }[] =
    step.makes === 'block' ? [{ assembly: piecing.root, turn: 0 }] : units.find(({ unit }) => unit.id === step.makes)!.unit.places;
  return places.map(({ assembly, turn }) => {
    const placement = placementIn(step.parts, turn, assembly.outline);
    return { turn, take: (p) => placed(p, placement) };
  });
}

const turned = ([x, y]: Spot, turn: number): Spot => (turn === 0 ? [x, y] : turned([-y, x], turn - 1));

/** @returns on which side of the way from one end to the other something lies, as seen on the front */
export function sideOfWay(from: Spot, to: Spot, toward: Spot): 'left' | 'right' {
  const [dx, dy] = direction(from, to);
  return toward[0] * -dy + toward[1] * dx > 0 ? 'right' : 'left';
}

/** @returns whether a line is meant for a seam: the seam runs along it through its middle */
export function isMeant(from: Spot, to: Spot, seam: SeamPlace): boolean {
  const [dx, dy] = direction(seam.from, seam.to);
  const off = ([x, y]: Spot): number => Math.abs((x - seam.from[0]) * dy - (y - seam.from[1]) * dx);
  const along = ([x, y]: Spot): number => (x - seam.from[0]) * dx + (y - seam.from[1]) * dy;
  const at = along(between(from, to));
  return off(from) < NEAR && off(to) < NEAR && at > 0 && at < along(seam.to);
}

const NEAR = 1e-9;

/** How far an arrow reaches beyond its seam, as a share of the block's longer side. */
const REACH = 0.016;

/** @returns the ends of the arrow across a seam, or across it to both sides */
export function arrowAcross({ from, to, toward }: SeamPlace, size: number): { readonly from: Spot; readonly to: Spot } {
  const at = between(from, to);
  const [dx, dy] = direction(from, to);
  const across = times(toward ?? [-dy, dx], size * REACH);
  return { from: plus(at, times(across, toward ? -0.5 : -1)), to: plus(at, across) };
}
