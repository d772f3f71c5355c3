import type { Block, Patch } from '../block/block.ts';
import { boundsOf } from '../block/outline.ts';
import { type Hatching, patternOf } from './hatching.ts';
import { partOf, type Part } from './part.ts';
import type { Box, View } from './view.ts';

const boxes = new WeakMap<Patch, Box>();

/** @returns the rectangle round a patch, in lattice steps */
function boxOf(patch: Patch): Box {
  const known = boxes.get(patch);
  if (known) return known;
  const box = boundsOf(patch.points);
  boxes.set(patch, box);
  return box;
}

const union = (a: Box, b: Box): Box => ({
  left: Math.min(a.left, b.left),
  top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
});

const meet = (a: Box, b: Box): boolean => a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** @returns the box in which two drawings on the same lattice differ, 'nothing', or 'everything' */
export function changedBox(before: Block, after: Block): Box | 'nothing' | 'everything' {
  if (before.denominator !== after.denominator || before.ground !== after.ground || before.fabrics !== after.fabrics) return 'everything';
  if (before.patches === after.patches) return 'nothing';
  const old = new Set(before.patches);
  const now = new Set(after.patches);
  const kept = before.patches.filter((patch) => now.has(patch));
  const keptNow = after.patches.filter((patch) => old.has(patch));
  if (kept.length !== keptNow.length || kept.some((patch, i) => patch !== keptNow[i])) return 'everything';
  const changed = [...before.patches.filter((patch) => !now.has(patch)), ...after.patches.filter((patch) => !old.has(patch))];
  return changed.length === 0 ? 'nothing' : changed.map(boxOf).reduce(union);
}

/** Half a hair of its own colour round every patch, so that no ground shines through between neighbours. */
const HAIR = 0.8;

/** How the cloth is shown. */
export interface ClothStyle {
  /** The hatching of every fabric; null to leave it off. */
  readonly hatching: Hatching | null;
  /** Whether the ground is left open, for what lies under the cloth. */
  readonly open: boolean;
}

/** What is seen of the drawing as a picture in device pixels, of which only the part that changed is painted again. */
export interface ClothBitmap {
  readonly canvas: HTMLCanvasElement;
  /** Brings the picture up to date with a drawing and a view; ratio = device pixels to a CSS pixel. */
  readonly paint: (block: Block, view: View, ratio: number, style: ClothStyle) => void;
}

/** @returns an empty picture */
export function createClothBitmap(): ClothBitmap {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d')!;
  let painted: { readonly block: Block; readonly part: Part; readonly style: ClothStyle } | null = null;

  /** Paints what lies in a box, in lattice steps. */
  const paintIn = (block: Block, part: Part, { hatching, open }: ClothStyle, seen: Box): void => {
    const { denominator } = block;
    const across = (steps: number): number => (steps / denominator) * part.unitAcross - part.left;
    const down = (steps: number): number => (steps / denominator) * part.unitDown - part.top;
    const colors = new Map(block.fabrics.map((fabric) => [fabric.id, fabric.color]));
    const [left, top] = [Math.max(0, Math.floor(across(seen.left)) - 2), Math.max(0, Math.floor(down(seen.top)) - 2)];
    const wide = Math.min(canvas.width, Math.ceil(across(seen.right)) + 2) - left;
    const high = Math.min(canvas.height, Math.ceil(down(seen.bottom)) + 2) - top;
    if (wide <= 0 || high <= 0) return;

    const hatch = (fabric: string): void => {
      const pattern = hatching && patternOf(context, hatching, fabric, part);
      if (!pattern) return;
      context.fillStyle = pattern;
      context.fill();
    };

    context.save();
    context.beginPath();
    context.rect(left, top, wide, high);
    context.clip();
    if (open) {
      context.clearRect(left, top, wide, high);
    } else {
      context.fillStyle = colors.get(block.ground) ?? '#ffffff';
      context.fill();
      hatch(block.ground);
    }
    context.lineWidth = HAIR;
    context.lineJoin = 'round';
    for (const patch of block.patches) {
      if (!meet(boxOf(patch), seen)) continue;
      const color = colors.get(patch.fabric) ?? '#ffffff';
      context.fillStyle = color;
      context.strokeStyle = color;
      context.beginPath();
      for (const [x, y] of patch.points) context.lineTo(across(x), down(y));
      context.closePath();
      context.fill();
      context.stroke();
      hatch(patch.fabric);
    }
    context.restore();
  };

  const paint: ClothBitmap['paint'] = (block, view, ratio, style) => {
    const part = partOf(view, ratio);
    const before = painted;
    painted = { block, part, style };
    const steps = (units: number): number => units * block.denominator;
    const inSteps = (units: Box): Box => ({ left: steps(units.left), top: steps(units.top), right: steps(units.right), bottom: steps(units.bottom) });
    if (canvas.width !== part.width || canvas.height !== part.height) [canvas.width, canvas.height] = [part.width, part.height];
    else if (before && before.style === style && samePart(before.part, part)) {
      const changed = changedBox(before.block, block);
      if (changed === 'nothing') return;
      if (changed !== 'everything') return paintIn(block, part, style, changed);
    }
    paintIn(block, part, style, inSteps(part.units));
  };
  return { canvas, paint };
}

const samePart = (a: Part, b: Part): boolean =>
  a.left === b.left && a.top === b.top && a.unitAcross === b.unitAcross && a.unitDown === b.unitDown;
