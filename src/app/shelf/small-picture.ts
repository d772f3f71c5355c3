import type { Block } from '../../block/block.ts';
import { toNumber } from '../../measure/rational.ts';

/** Longer side of a small picture, in pixels: twice what the shelf shows, for fine screens. */
const SIDE = 192;

/** @returns a block in small, in true proportion, as a PNG; null where the browser cannot draw one */
export function smallPicture(block: Block): Promise<Blob | null> {
  const [wide, high] = [toNumber(block.finished.width), toNumber(block.finished.height)];
  const scale = SIDE / Math.max(wide, high);
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(wide * scale));
  canvas.height = Math.max(1, Math.round(high * scale));
  const ink = canvas.getContext('2d');
  if (!ink) return Promise.resolve(null);
  const colors = new Map(block.fabrics.map(({ id, color }) => [id, color]));
  ink.fillStyle = colors.get(block.ground) ?? '#ffffff';
  ink.fillRect(0, 0, canvas.width, canvas.height);
  const across = canvas.width / (block.grid.columns * block.denominator);
  const down = canvas.height / (block.grid.rows * block.denominator);
  for (const { fabric, points } of block.patches) {
    ink.beginPath();
    for (const [x, y] of points) ink.lineTo(x * across, y * down);
    ink.closePath();
    // A hair of its own colour, so that no ground shines through between neighbours.
    ink.fillStyle = ink.strokeStyle = colors.get(fabric) ?? '#ffffff';
    ink.lineWidth = 0.6;
    ink.fill();
    ink.stroke();
  }
  return new Promise((done) => canvas.toBlob(done, 'image/png'));
}
