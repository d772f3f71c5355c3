import type { Picture } from '../../block/publication.ts';
import { toNumber, type Rational } from '../../measure/rational.ts';
import type { Point } from '../../geometry/point.ts';
import type { Step } from '../../sewing/step.ts';
import { inEnglish } from '../english.ts';
import type { Speech } from '../language.ts';
import type { Pattern } from '../pattern.ts';
import type { PanelCaption } from '../phrases/pattern-phrases.ts';
import { chordIn, extentOf, partBeside, type Polygon, type Spot } from '../polygons.ts';

/*
 * Pictures of what is done with cloth at one step, as plain figures in the block's unit, x right and y down. They are ink: nearest
 * doubles of exact places. Outputs give them their looks and compute no place of their own.
 */

/** A photo of cloth, again and again side by side: where the upper left corner of one lies, how wide it is, and turned about there clockwise in degrees. */
export interface PhotoOnCloth {
  readonly picture: Picture;
  readonly at: Spot;
  readonly width: number;
  readonly turn: number;
}

/** One thing in a picture; later ones lie on top. */
export type Mark =
  /** Cloth with its right or its wrong side up. */
  | { readonly mark: 'cloth'; readonly outline: readonly Spot[]; readonly fabric: string; readonly side: 'right' | 'wrong'; readonly photo?: PhotoOnCloth }
  /** drawn with a pencil; stitched; stitched later; cut through; the thread that runs on from one seam to the next. */
  | { readonly mark: 'line'; readonly line: 'drawn' | 'stitched' | 'stitched later' | 'cut' | 'thread'; readonly from: Spot; readonly to: Spot }
  /** Which way the two allowances of a seam lie: from the seam to where they point. */
  | { readonly mark: 'pressed'; readonly from: Spot; readonly to: Spot }
  /** A seam pressed open: across it, to both sides. */
  | { readonly mark: 'pressed open'; readonly from: Spot; readonly to: Spot }
  /** A unit's letter, turned as the unit lies; or the number by which the words know a piece. */
  | { readonly mark: 'name'; readonly text: string; readonly at: Spot; readonly turn: 0 | 1 | 2 | 3; readonly room: number }
  /** In which order seams are sewn; with `room` its disc is no wider than that. */
  | { readonly mark: 'order'; readonly number: number; readonly at: Spot; readonly room?: number };

export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** One picture of a step; those of one step are all to the same scale. */
export interface Panel {
  readonly marks: readonly Mark[];
  /** What the marks lie in. */
  readonly frame: Frame;
  /** What is done here, in few words. */
  readonly says: string;
  /** Size of what is made, with its allowances; only of the finished work. */
  readonly measures?: string;
}

/** What the pictures of a step are drawn from. */
export interface Drawn {
  readonly step: Step;
  readonly pattern: Pattern;
  /** How what is said under them is said; plain English where absent. */
  readonly speech?: Speech;
}

/** @returns how what is said under the pictures of a step is said */
export const speechOf = ({ pattern, speech = inEnglish(pattern) }: Drawn): Speech => speech;

/** @returns what is said under a picture of a step */
export const captionOf = (drawn: Drawn, caption: PanelCaption): string => speechOf(drawn).language.pattern.panel[caption];

/** @returns the nearest doubles to a point's place in the block's unit */
export const inkAt = (point: Point, scale: number): Spot => [(point.x / point.w) * scale, (point.y / point.w) * scale];

/** @returns an exact length as ink */
export const ink = (length: Rational): number => toNumber(length);

export const plus = ([x, y]: Spot, [dx, dy]: Spot): Spot => [x + dx, y + dy];
export const times = ([x, y]: Spot, k: number): Spot => [x * k, y * k];
export const between = (a: Spot, b: Spot, t = 0.5): Spot => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** @returns the direction from one place to another, of length 1 */
export function direction(from: Spot, to: Spot): Spot {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  return [dx / length, dy / length];
}

/** @returns a rectangle's corners, clockwise from the top left */
export const rectangle = (left: number, top: number, width: number, height: number): readonly Spot[] => [
  [left, top],
  [left + width, top],
  [left + width, top + height],
  [left, top + height],
];

/** @returns the smallest upright rectangle that holds all cloth and lines */
export function frameOf(marks: readonly Mark[]): Frame {
  const spots = marks.flatMap((mark): readonly Spot[] => ('outline' in mark ? mark.outline : 'from' in mark ? [mark.from, mark.to] : [mark.at]));
  const { left, top, right, bottom } = extentOf(spots);
  return { left, top, width: right - left, height: bottom - top };
}

/** @returns a picture of these marks */
export const panel = (marks: readonly Mark[], says: string): Panel => ({ marks, frame: frameOf(marks), says });

/** @returns what of a convex outline lies on one side of a line: where (x, y) · normal ≤ offset; empty where nothing does */
export const clipped = (outline: Polygon, normal: Spot, offset: number): Polygon =>
  partBeside(outline, ([x, y]) => offset - x * normal[0] - y * normal[1]);

/** @returns where a line through a place crosses a convex outline, clockwise, from end to end; null where it misses it */
export const chord = (outline: Polygon, through: Spot, way: Spot): readonly [Spot, Spot] | null => chordIn(outline, through, way, 0);
