import type { StepPart } from '../../sewing/step.ts';
import { type Spot } from '../polygons.ts';
import { between, captionOf, chord, clipped, direction, ink, panel, plus, rectangle, times, type Drawn, type Mark, type Panel } from './diagram.ts';
import { madeBy, type Made } from './laid-out.ts';
import { cutOf } from './paired.ts';

/*
 * Squares flipped onto the corners of a base: each lies face down on its corner, is sewn on its diagonal, cut a seam's width outside it,
 * and folded back.
 */

/** A square on its corner of the base. */
interface Corner {
  readonly fabric: string;
  /** The square's cloth. */
  readonly square: readonly Spot[];
  /** Where the base has its corner. */
  readonly at: Spot;
  /** From the corner inward, across the seam. */
  readonly inward: Spot;
  /** How far along `inward` the seam lies. */
  readonly depth: number;
}

/** @returns corner after corner: those that do not lie on one another together */
export function flippedPanels(drawn: Drawn): readonly Panel[] {
  const { step, pattern } = drawn;
  const seam = ink(pattern.choices.seam);
  const base = step.parts.findIndex((part) => roleOf(part) === 'base');
  const { fabric } = step.parts[base]!.from as { readonly fabric: string };
  const extra = step.trimmed ? ink(pattern.choices.trim) : 0;
  const made = madeBy(drawn);
  const { width, height } = made;
  const outline = rectangle(-seam - extra / 2, -seam - extra / 2, width + 2 * seam + extra, height + 2 * seam + extra);
  const corners = step.parts.flatMap((part, i): readonly Corner[] => (roleOf(part) === 'corner' ? [cornerOf(drawn, made, i, outline)] : []));
  const folded: Mark[] = [{ mark: 'cloth', fabric, side: 'right', outline }];
  return together(corners).map((group) => {
    const squares = group.map((corner): Mark => ({ mark: 'cloth', fabric: corner.fabric, side: 'wrong', outline: corner.square }));
    const lines = group.flatMap((corner) => sewn(corner, seam));
    const shown = panel([...folded, ...squares, ...lines], captionOf(drawn, 'flip a corner'));
    folded.push(...group.map((corner): Mark => ({ mark: 'cloth', fabric: corner.fabric, side: 'right', outline: beyond(corner, outline) })));
    return shown;
  });
}

const roleOf = ({ from }: StepPart): string | null => ('cut' in from ? from.role : null);

function cornerOf(drawn: Drawn, { parts, width, height }: Made, part: number, base: readonly Spot[]): Corner {
  const side = ink(cutOf(drawn, part).width);
  const outline = parts[part]!;
  // The square corner of the triangle is a corner of the unit, and of the base beyond it.
  const isRight = outline.map(([x, y]) => (near(x, 0) || near(x, width)) && (near(y, 0) || near(y, height)));
  const corner = outline.findIndex((p, i) => isRight[i] && square(p, outline[(i + 1) % 3]!, outline[(i + 2) % 3]!));
  const [x, y] = outline[corner]!;
  const at = base[near(y, 0) ? (near(x, 0) ? 0 : 1) : near(x, 0) ? 3 : 2]!;
  const [sx, sy] = [near(x, 0) ? 1 : -1, near(y, 0) ? 1 : -1];
  return {
    fabric: (drawn.step.parts[part]!.from as { readonly fabric: string }).fabric,
    square: rectangle(Math.min(at[0], at[0] + sx * side), Math.min(at[1], at[1] + sy * side), side, side),
    at,
    inward: times([sx, sy], Math.SQRT1_2),
    depth: side * Math.SQRT1_2,
  };
}

const NEAR = 1e-9;
const near = (a: number, b: number): boolean => Math.abs(a - b) < NEAR;
const square = (p: Spot, q: Spot, r: Spot): boolean => {
  const [[ax, ay], [bx, by]] = [direction(p, q), direction(p, r)];
  return near(ax * bx + ay * by, 0);
};

/** @returns corners in groups, as they follow one another: no seam of a group runs over another square of it */
function together(corners: readonly Corner[]): readonly (readonly Corner[])[] {
  const groups: Corner[][] = [];
  for (const corner of corners) {
    const last = groups.at(-1);
    if (last?.every((other) => !runsOver(other, corner) && !runsOver(corner, other))) last.push(corner);
    else groups.push([corner]);
  }
  return groups;
}

/** @returns whether the seam on one square runs over another */
function runsOver({ square: own, at, inward, depth }: Corner, { square: other }: Corner): boolean {
  const on = plus(at, times(inward, depth));
  const along: Spot = [-inward[1], inward[0]];
  const [seam, across] = [chord(own, on, along), chord(other, on, along)];
  if (!seam || !across) return false;
  const place = ([x, y]: Spot): number => x * along[0] + y * along[1];
  return place(seam[0]) < place(across[1]) - NEAR && place(across[0]) < place(seam[1]) - NEAR;
}

/** The seam on the square's diagonal, and the cut a seam's width outside it. */
function sewn({ square: cloth, at, inward, depth }: Corner, seam: number): readonly Mark[] {
  const along: Spot = [-inward[1], inward[0]];
  return (['stitched', 'cut'] as const).flatMap((line): readonly Mark[] => {
    const ends = chord(cloth, plus(at, times(inward, line === 'cut' ? depth - seam : depth)), along);
    return ends ? [{ mark: 'line', line, from: ends[0], to: ends[1] }] : [];
  });
}

/** @returns what the folded corner covers of the base */
const beyond = ({ at, inward, depth }: Corner, base: readonly Spot[]): readonly Spot[] =>
  clipped(base, inward, at[0] * inward[0] + at[1] * inward[1] + depth);

/*
 * Four geese at a time: two small squares on opposite corners of a large one, sewn on both sides of the diagonal that runs through
 * both and cut on it; on each half, its small triangles folded out, a third square on the corner that is left.
 */

/** @returns the large square, and one of its halves */
export function geesePanels(drawn: Drawn): readonly Panel[] {
  const { step, pattern } = drawn;
  const seam = ink(pattern.choices.seam);
  const find = (role: string): number => step.parts.findIndex((part) => roleOf(part) === role);
  const [large, small] = [find('large'), find('small')];
  const [L, S] = [ink(cutOf(drawn, large).width), ink(cutOf(drawn, small).width)];
  const [big, wings] = [large, small].map((part) => (step.parts[part]!.from as { readonly fabric: string }).fabric) as [string, string];
  const falling: Spot = [Math.SQRT1_2, Math.SQRT1_2];
  const out: Spot = [Math.SQRT1_2, -Math.SQRT1_2];
  const square = rectangle(0, 0, L, L);
  const ends = [rectangle(0, 0, S, S), rectangle(L - S, L - S, S, S)];
  const wrong = (outline: readonly Spot[]): Mark => ({ mark: 'cloth', fabric: wings, side: 'wrong', outline });
  const lines = (outline: readonly Spot[], through: Spot, along: Spot): readonly Mark[] =>
    [-seam, seam, 0].flatMap((by): readonly Mark[] => {
      const found = chord(outline, plus(through, times([-along[1], along[0]], by)), along);
      return found ? [{ mark: 'line', line: by === 0 ? 'cut' : 'stitched', from: found[0], to: found[1] }] : [];
    });
  const first = panel(
    [{ mark: 'cloth', fabric: big, side: 'right', outline: square }, ...ends.map(wrong), ...lines(square, [0, 0], falling)],
    captionOf(drawn, 'both sides'),
  );
  // The lower half; its triangles are folded out over the seams that hold them.
  const half = clipped(square, out, 0);
  const fold = (spot: Spot): Spot => plus(spot, times(out, -2 * (spot[0] * out[0] + spot[1] * out[1] + seam)));
  const folded = ends.map((end): Mark => ({ mark: 'cloth', fabric: wings, side: 'right', outline: clipped(end, out, -seam).map(fold) }));
  const under = clipped(half, out, -seam);
  const third = rectangle(0, L - S, S, S);
  const second = panel(
    [{ mark: 'cloth', fabric: big, side: 'right', outline: under }, ...folded, wrong(third), ...lines(third, between([0, L], [S, L - S]), out)],
    captionOf(drawn, 'on each half'),
  );
  return [first, second];
}
