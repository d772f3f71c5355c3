import type { Block, Patch } from '../block/block.ts';
import type { View } from './view.ts';

/** A rectangle in lattice steps. */
interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const boxes = new WeakMap<Patch, Box>();

function boxOf(patch: Patch): Box {
  const known = boxes.get(patch);
  if (known) return known;
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of patch.points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  const box = { left, top, right, bottom };
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

/** The whole drawing as a picture in device pixels, of which only the part that changed is painted again. */
export interface ClothBitmap {
  readonly canvas: HTMLCanvasElement;
  /** Brings the picture up to date with a drawing and a view; ratio = device pixels to a CSS pixel. */
  readonly paint: (block: Block, view: View, ratio: number) => void;
}

/** @returns an empty picture */
export function createClothBitmap(): ClothBitmap {
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d', { alpha: false })!;
  let painted: { readonly block: Block; readonly view: View; readonly ratio: number } | null = null;

  const paint = (block: Block, view: View, ratio: number): void => {
    const sameView = painted !== null && painted.view.width === view.width && painted.view.height === view.height &&
      painted.view.columns === view.columns && painted.view.rows === view.rows && painted.ratio === ratio;
    const changed = sameView ? changedBox(painted!.block, block) : 'everything';
    painted = { block, view, ratio };
    if (changed === 'nothing') return;

    const wide = Math.max(1, Math.round(view.width * ratio));
    const high = Math.max(1, Math.round(view.height * ratio));
    if (canvas.width !== wide || canvas.height !== high) {
      canvas.width = wide;
      canvas.height = high;
    }
    const stepX = wide / (block.grid.columns * block.denominator);
    const stepY = high / (block.grid.rows * block.denominator);
    const colors = new Map(block.fabrics.map((fabric) => [fabric.id, fabric.color]));

    context.save();
    if (changed !== 'everything') {
      const left = Math.floor(changed.left * stepX) - 2;
      const top = Math.floor(changed.top * stepY) - 2;
      context.beginPath();
      context.rect(left, top, Math.ceil(changed.right * stepX) + 2 - left, Math.ceil(changed.bottom * stepY) + 2 - top);
      context.clip();
    }
    context.fillStyle = colors.get(block.ground) ?? '#ffffff';
    context.fillRect(0, 0, wide, high);
    context.lineWidth = HAIR;
    context.lineJoin = 'round';
    for (const patch of block.patches) {
      if (changed !== 'everything' && !meet(boxOf(patch), changed)) continue;
      const color = colors.get(patch.fabric) ?? '#ffffff';
      context.fillStyle = color;
      context.strokeStyle = color;
      context.beginPath();
      for (const [x, y] of patch.points) context.lineTo(x * stepX, y * stepY);
      context.closePath();
      context.fill();
      context.stroke();
    }
    context.restore();
  };
  return { canvas, paint };
}
