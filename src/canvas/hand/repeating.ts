import type { Block } from '../../block/block.ts';
import type { Stroke } from '../../block/painting.ts';
import { axesOf, pointImages, shapeOf, strokeImages, type SymmetryName } from '../../block/symmetry.ts';
import type { Marks } from '../draw-marks.ts';
import { outlineOf, type GridOutline } from '../gesture.ts';
import type { Deeds } from './bench.ts';

/** The drawing, and where else in it is done what is done in one place. */
interface Repeated {
  readonly block: Block;
  readonly symmetry: SymmetryName;
}

/** @returns deeds that do in every place of the symmetry what is done in one, each place once and all of them at once */
export function repeating(bench: () => Repeated, deeds: Deeds): Deeds {
  // What was foreseen and what is laid then must be the same strokes.
  const known = new WeakMap<Stroke, readonly Stroke[]>();
  const imagesOf = (stroke: Stroke): readonly Stroke[] => {
    let images = known.get(stroke);
    if (!images) {
      const { block, symmetry } = bench();
      images = symmetry === 'none' ? [stroke] : strokeImages(block.grid, symmetry, stroke);
      known.set(stroke, images);
    }
    return images;
  };
  const once = (strokes: readonly Stroke[], laid: Set<string>): readonly Stroke[] => {
    if (bench().symmetry === 'none' && laid.size === 0) return strokes.flatMap(imagesOf);
    return strokes.flatMap(imagesOf).filter((stroke) => {
      const shape = shapeOf(stroke);
      if (laid.has(shape)) return false;
      laid.add(shape);
      return true;
    });
  };
  const all = (strokes: readonly Stroke[]): readonly Stroke[] => once(strokes, new Set());
  const places: Deeds['keepWhole'] extends (at: infer P) => void ? (at: P) => P : never = (at) => {
    const { block, symmetry } = bench();
    return at.flatMap((each) => pointImages(block.grid, symmetry, each));
  };

  let foreseen = new Set<string>();
  let swept = new Set<string>();
  return {
    ...deeds,
    lay: (strokes, fabric) => {
      foreseen = new Set();
      deeds.lay(all(strokes), fabric);
    },
    foresee: (strokes, fabric) => {
      if (!strokes) foreseen = new Set();
      deeds.foresee(strokes && once(strokes, foreseen), fabric);
    },
    sweep: (added, fabric) => {
      if (!added) swept = new Set();
      deeds.sweep(added && once(added, swept), fabric);
    },
    fill: (at, reach, fabric) => deeds.fill(places(at), reach, fabric),
    divide: (lines) => deeds.divide(all(lines)),
    keepWhole: (at) => deeds.keepWhole(places(at)),
    pin: (pin, where) => deeds.pin(pin, all(where)),
  };
}

/** Steps to a grid unit in which ink is told to lie in the same place. */
const INK = 2 ** 16;

/** @returns an outline wherever the symmetry brings it, itself first; for ink */
function inkImages({ block, symmetry }: Repeated, outline: GridOutline): readonly GridOutline[] {
  const points = outline.map(([x, y]) => [Math.round(x * INK), Math.round(y * INK)] as const);
  const [, ...others] = strokeImages(block.grid, symmetry, { points, denominator: INK });
  return [outline, ...others.map(outlineOf)];
}

/** @returns marks that show in every place of the symmetry what they show in one, and the symmetry itself */
export function repeatedMarks(now: Repeated, marks: Marks): Marks {
  if (now.symmetry === 'none') return marks;
  const everywhere = (outlines: readonly GridOutline[]): readonly GridOutline[] => outlines.flatMap((outline) => inkImages(now, outline));
  const begun = marks.next ? [...marks.corners, marks.next] : marks.corners;
  return {
    ...marks,
    ghost: marks.ghost && { ...marks.ghost, outlines: everywhere(marks.ghost.outlines) },
    basting: marks.basting && everywhere(marks.basting),
    echoes: begun.length > 0 ? inkImages(now, begun).slice(1) : [],
    axes: axesOf(now.block.grid, now.symmetry),
  };
}
