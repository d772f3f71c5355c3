import type { Block } from '../../block/block.ts';
import { toDrawing } from '../../block/drawing.ts';
import { patchworkOf } from '../../geometry/patchwork/patchwork.ts';

/** What shows of each fabric of a block, ready to be filled in any colour, in a square of side 1 or the shape of the block inside it. */
export interface RoleShapes {
  readonly paths: ReadonlyMap<string, Path2D>;
  /** The block's sides, the longer one 1. */
  readonly width: number;
  readonly height: number;
}

/** @returns the shapes; null where the drawing cannot be held exactly */
export function roleShapes(block: Block): RoleShapes | null {
  const placed = toDrawing(block);
  if (!placed.ok) return null;
  const { width, height, panes } = patchworkOf(placed.value.drawing);
  const side = Math.max(width, height);
  const paths = new Map<string, Path2D>();
  for (const { shape, label } of panes.flat()) {
    const role = block.patches[label.patch]?.fabric ?? block.ground;
    const path = paths.get(role) ?? new Path2D();
    paths.set(role, path);
    shape.points.forEach(({ x, y, w }, i) => (i === 0 ? path.moveTo(x / w / side, y / w / side) : path.lineTo(x / w / side, y / w / side)));
    path.closePath();
  }
  return { paths, width: width / side, height: height / side };
}

/** Half a hair of its own colour round every shape, so that nothing shines through between neighbours; in pixels. */
const HAIR = 0.7;

/** Draws the block as large as the canvas is, each fabric in its colour. */
export function drawRoles(canvas: HTMLCanvasElement, { paths, width, height }: RoleShapes, colorOf: (role: string) => string): void {
  const pen = canvas.getContext('2d');
  if (!pen) return;
  const scale = Math.min(canvas.width / width, canvas.height / height);
  pen.setTransform(scale, 0, 0, scale, 0, 0);
  pen.lineWidth = HAIR / scale;
  for (const [role, path] of paths) {
    pen.fillStyle = pen.strokeStyle = colorOf(role);
    pen.fill(path);
    pen.stroke(path);
  }
}
