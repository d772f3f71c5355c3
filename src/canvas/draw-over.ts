import type { Block } from '../block/block.ts';
import type { InkColors } from './ink.ts';
import type { SizeInk, UnitInk } from './over-ink.ts';
import type { PieceInk } from './piece-ink.ts';
import { middleOf, traceOutline, type Pen, type Pixel } from './pen.ts';
import { pixelOf, seenPart, type Box, type View } from './view.ts';

/** @returns the outlines that are seen at least in part, on the canvas */
function seen<T extends { readonly outline: readonly Pixel[] }>(view: View, all: readonly T[]): { readonly of: T; readonly corners: readonly Pixel[] }[] {
  const { left, top, right, bottom } = seenPart(view);
  return all
    .map((of) => ({ of, corners: of.outline.map(([x, y]) => pixelOf(view, x, y)) }))
    .filter(({ corners }) => {
      const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
      return Math.max(...xs) >= left && Math.min(...xs) <= right && Math.max(...ys) >= top && Math.min(...ys) <= bottom;
    });
}

function lines(pen: Pen, light: string, dark: string, width: number): void {
  pen.lineJoin = 'round';
  pen.strokeStyle = light;
  pen.lineWidth = width + 1.6;
  pen.stroke();
  pen.strokeStyle = dark;
  pen.lineWidth = width;
  pen.stroke();
}

/** Draws every patch's outline as it was painted. */
export function drawEdges(pen: Pen, view: View, { patches, denominator }: Block): void {
  const outlines = patches.map(({ points }) => ({ outline: points.map(([x, y]) => [x / denominator, y / denominator] as const) }));
  pen.beginPath();
  for (const { corners } of seen(view, outlines)) traceOutline(pen, corners);
  lines(pen, 'rgb(255 255 255 / 45%)', 'rgb(16 24 30 / 70%)', 1);
}

/** Draws every seam of the chosen piecing: the outline of each piece. */
export function drawPieceSeams(pen: Pen, view: View, pieces: readonly PieceInk[]): void {
  pen.beginPath();
  for (const { corners } of seen(view, pieces)) traceOutline(pen, corners);
  lines(pen, 'rgb(255 255 255 / 70%)', 'rgb(16 24 30 / 92%)', 1.6);
}

/** @returns the distance in pixels from a place to the nearest edge of an outline */
function roomAround(corners: readonly Pixel[], [x, y]: Pixel): number {
  let room = Infinity;
  corners.forEach(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    if (length > 0) room = Math.min(room, Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / length);
  });
  return room;
}

/** Height of a tag, and the size of the unit that has room for one, in pixels. */
const TAG = 16;
const ROOM_FOR_TAG = 26;

/** @returns whether two boxes overlap */
const overlap = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/**
 * Draws round every unit, with its letter on a tag in its top left corner; a unit made of others is dashed, and its tag lies in its
 * bottom left corner.
 * @returns where the tags are, so that nothing else is written there
 */
export function drawUnits(pen: Pen, view: View, ink: InkColors, units: readonly UnitInk[], family: string): readonly Box[] {
  const tags: { readonly id: string; readonly box: Box }[] = [];
  pen.font = `700 11.5px ${family}`;
  for (const { of, corners } of seen(view, units)) {
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    const [left, top, right, bottom] = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
    if (right - left < 6 || bottom - top < 6) continue;
    const inset = of.joined ? 0.5 : 3;
    pen.beginPath();
    if (corners.length === 4) pen.roundRect(left + inset, top + inset, right - left - 2 * inset, bottom - top - 2 * inset, 3);
    else traceOutline(pen, corners);
    pen.setLineDash([]);
    pen.strokeStyle = ink.paper;
    pen.lineWidth = of.joined ? 4.2 : 3;
    pen.stroke();
    if (of.joined) pen.setLineDash([7, 4]);
    pen.strokeStyle = ink.accent;
    pen.lineWidth = of.joined ? 2.2 : 1.5;
    pen.stroke();
    pen.setLineDash([]);
    if (right - left < ROOM_FOR_TAG || bottom - top < ROOM_FOR_TAG) continue;
    const wide = Math.max(TAG, pen.measureText(of.id).width + 6);
    const y = of.joined ? bottom - TAG - 4 : top + 4;
    const box = { left: left + 4, top: y, right: left + 4 + wide, bottom: y + TAG };
    while (tags.some((tag) => overlap(tag.box, box))) [box.left, box.right] = [box.right + 2, box.right + 2 + wide];
    if (box.right <= right - 2) tags.push({ id: of.id, box });
  }
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  for (const { id, box } of tags) {
    pen.beginPath();
    pen.roundRect(box.left, box.top, box.right - box.left, TAG, 3);
    pen.fillStyle = ink.paper;
    pen.fill();
    pen.strokeStyle = ink.accent;
    pen.lineWidth = 1.4;
    pen.stroke();
    pen.fillStyle = ink.ink;
    pen.fillText(id, (box.left + box.right) / 2, box.top + TAG / 2 + 0.5);
  }
  return tags.map(({ box }) => box);
}

/** Radius of the smallest disc that a letter can be read on, in pixels. */
const SMALLEST_DISC = 6;
const LABEL_PAPER = 'rgb(255 255 255 / 92%)';
const LABEL_INK = '#16202a';

/** Sizes of the writing that are tried, the largest first, in pixels. */
const WRITING = [14, 12, 10.5, 9.5];

/** What is written on one piece: its fabric's letter, its cut size, or both. */
interface Label {
  readonly lines: readonly string[];
  readonly subcut: SizeInk['subcut'];
}

/** Writes on every piece, where there is room and nothing is written: its fabric's letter, the size it is cut, or both. A size without room leaves the letter. */
export function drawLabels(
  pen: Pen,
  view: View,
  pieces: readonly PieceInk[],
  letters: ReadonlyMap<string, string> | null,
  sizes: ReadonlyMap<number, SizeInk> | null,
  family: string,
  taken: readonly Box[],
): void {
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  for (const { of, corners } of seen(view, pieces)) {
    const at = middleOf(corners);
    const room = roomAround(corners, at);
    if (room < SMALLEST_DISC / 0.8) continue;
    const letter = letters?.get(of.fabric);
    const size = sizes?.get(of.id);
    if (size && writeSize(pen, corners, at, labelsOf(letter, size), family, taken)) continue;
    if (letter === undefined) continue;
    const radius = Math.min(13, room * 0.8);
    pen.beginPath();
    pen.arc(at[0], at[1], radius, 0, 2 * Math.PI);
    pen.fillStyle = LABEL_PAPER;
    pen.fill();
    pen.font = `700 ${radius * 1.2}px ${family}`;
    pen.fillStyle = LABEL_INK;
    pen.fillText(letter, at[0], at[1] + radius * 0.08);
  }
}

/** @returns the ways to set a label, the widest first */
function labelsOf(letter: string | undefined, { lengths, subcut }: SizeInk): Label[] {
  const first = letter === undefined ? '' : `${letter} `;
  const [short, long] = lengths;
  const across = [first + lengths.join(' × ')];
  const down = long === undefined ? [first.trim(), short!].filter((line) => line !== '') : [first + short, `× ${long}`];
  return [across, down].map((lines) => ({ lines, subcut }));
}

/** Writes a label as large as it fits inside an outline. @returns whether it fits */
function writeSize(pen: Pen, corners: readonly Pixel[], [x, y]: Pixel, labels: readonly Label[], family: string, taken: readonly Box[]): boolean {
  for (const size of WRITING) {
    pen.font = `600 ${size}px ${family}`;
    for (const { lines: written, subcut } of labels) {
      const sign = subcut === 'none' ? 0 : size * 0.95;
      const wide = Math.max(...written.map((line) => pen.measureText(line).width)) + sign + 8;
      const high = written.length * size * 1.15 + 5;
      const box: readonly Pixel[] = [[x - wide / 2, y - high / 2], [x + wide / 2, y - high / 2], [x + wide / 2, y + high / 2], [x - wide / 2, y + high / 2]];
      if (!box.every((corner) => within(corners, corner))) continue;
      if (taken.some((tag) => overlap(tag, { left: x - wide / 2, top: y - high / 2, right: x + wide / 2, bottom: y + high / 2 }))) continue;
      pen.beginPath();
      pen.roundRect(x - wide / 2, y - high / 2, wide, high, 4);
      pen.fillStyle = LABEL_PAPER;
      pen.fill();
      pen.fillStyle = LABEL_INK;
      written.forEach((line, i) => {
        const last = i === written.length - 1 ? sign : 0;
        pen.fillText(line, x - last / 2, y + (i - (written.length - 1) / 2) * size * 1.15 + 0.5);
        if (last > 0) drawSubcut(pen, x + (pen.measureText(line).width - last) / 2 + 3, y + (i - (written.length - 1) / 2) * size * 1.15, size * 0.62, subcut);
      });
      return true;
    }
  }
  return false;
}

/** Draws a small square cut on one diagonal or on both. */
function drawSubcut(pen: Pen, left: number, middleY: number, side: number, subcut: SizeInk['subcut']): void {
  const top = middleY - side / 2;
  pen.beginPath();
  pen.rect(left, top, side, side);
  pen.moveTo(left, top + side);
  pen.lineTo(left + side, top);
  if (subcut === 'twice') {
    pen.moveTo(left, top);
    pen.lineTo(left + side, top + side);
  }
  pen.strokeStyle = LABEL_INK;
  pen.lineWidth = 1;
  pen.stroke();
}

/** @returns whether a pixel lies in a convex clockwise outline */
const within = (corners: readonly Pixel[], [x, y]: Pixel): boolean =>
  corners.every(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    return (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
  });
