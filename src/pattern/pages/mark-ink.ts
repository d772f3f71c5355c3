import type { Telling } from '../../block/telling.ts';
import type { Frame, Mark } from '../diagrams/diagram.ts';
import type { SheetMark } from '../diagrams/sheet-marks.ts';
import type { Polygon, Spot } from '../polygons.ts';
import { printed } from '../telling/kept.ts';
import { clothItems, type ClothLook } from './cloth-look.ts';
import type { Setting } from './face.ts';
import { INK, QUIET } from './looks.ts';
import {
  boxPath,
  circlePath,
  closedPath,
  linePath,
  type Area,
  type InFigure,
  type Item,
  type PathItem,
  type PathStep,
  type Stroke,
  type TextItem,
} from './page.ts';

/** What figures are drawn with. */
export interface FigureLook {
  readonly cloth: ClothLook;
  readonly telling: Telling;
  readonly setting: Setting;
  /** How much larger than usual letters are. */
  readonly letters: number;
  /** Which picture all of it is part of. */
  readonly figure?: InFigure;
}

const PAPER = '#ffffff';
const RED = '#b3261e';
/** Room that lines and arrows take beyond what they stand for, in points. */
export const FIGURE_EDGE = 1.5;
/** Half the height of capitals, in em: their middle lies so far above the baseline. */
const HALF_CAP = 0.328;
/** Letters that are smaller, in points, say nothing. */
const LEAST_LETTERS = 4;

/**
 * Draws a figure as large as an area holds it, in its middle, with lines of the same weight at every scale.
 * @param frame what of the figure's plane is shown
 * @returns the items of its marks, which stay inside the area
 */
export function inkOfMarks(marks: readonly (Mark | SheetMark)[], frame: Frame, area: Area, look: FigureLook): readonly Item[] {
  const { scale, left, top } = fit(frame, area);
  const at = ([x, y]: Spot): Spot => [left + (x - frame.left) * scale, top + (y - frame.top) * scale];
  const easel: Easel = { ...look, scale, at, origin: [left, top], area, radius: orderRadius(marks, scale, at, look) };
  return layersOf(marks).flatMap((layer) => inkOfLayer(layer, easel));
}

/** How a frame lies in an area: points to one of its units, and where its corner is. */
function fit(frame: Frame, { left, top, width, height }: Area): { readonly scale: number; readonly left: number; readonly top: number } {
  const room = 2 * FIGURE_EDGE;
  const scale = Math.min((width - room) / frame.width, (height - room) / frame.height);
  return { scale, left: left + (width - frame.width * scale) / 2, top: top + (height - frame.height * scale) / 2 };
}

interface Easel extends FigureLook {
  readonly scale: number;
  readonly at: (spot: Spot) => Spot;
  readonly origin: Spot;
  readonly area: Area;
  /** Of the discs with the order of seams. */
  readonly radius: number;
}

/** @returns marks that follow one another and look alike, together, so that they are one path; cloth only beside other cloth */
function layersOf(marks: readonly (Mark | SheetMark)[]): readonly (readonly (Mark | SheetMark)[])[] {
  const layers: { readonly look: string; readonly marks: (Mark | SheetMark)[]; readonly boxes: Box[] }[] = [];
  for (const mark of marks) {
    const look = lookOf(mark);
    const last = layers.at(-1);
    const box = mark.mark === 'cloth' ? boxOf(mark.outline) : null;
    if (last?.look === look && !(box && last.boxes.some((other) => overlap(other, box)))) {
      last.marks.push(mark);
      if (box) {
        last.boxes.push(box);
        // Cloth that lies on cloth comes soon after it.
        if (last.boxes.length > SOON) last.boxes.shift();
      }
    } else layers.push({ look, marks: [mark], boxes: box ? [box] : [] });
  }
  return layers.map((layer) => layer.marks);
}

const SOON = 12;

const lookOf = (mark: Mark | SheetMark): string => {
  // Of photos each piece shows another place.
  if (mark.mark === 'cloth') return `cloth ${mark.side} ${mark.fabric}${mark.photo ? ` ${mark.photo.at.join(' ')}` : ''}`;
  if (mark.mark === 'line') return `line ${mark.line}`;
  return mark.mark === 'cut' ? `cut ${mark.cut}` : mark.mark;
};

type Box = readonly [left: number, top: number, right: number, bottom: number];

function boxOf(outline: Polygon): Box {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of outline) {
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  }
  return [left, top, right, bottom];
}

const overlap = (a: Box, b: Box): boolean => {
  const touch = 1e-6;
  return a[0] < b[2] - touch && b[0] < a[2] - touch && a[1] < b[3] - touch && b[1] < a[3] - touch;
};

function inkOfLayer(layer: readonly (Mark | SheetMark)[], easel: Easel): readonly Item[] {
  const { at, figure } = easel;
  const outlines = (): readonly Polygon[] => layer.flatMap((mark) => ('outline' in mark ? [mark.outline.map(at)] : []));
  const lines = (): readonly PathStep[] => layer.flatMap((mark) => ('from' in mark ? linePath(at(mark.from), at(mark.to)) : []));
  const path = (what: string, steps: readonly PathStep[], looks: Pick<PathItem, 'stroke' | 'fill'>): PathItem => ({
    kind: 'path',
    what,
    steps,
    ...looks,
    ...(figure && { figure }),
  });
  const closed = (): readonly PathStep[] => outlines().flatMap((outline) => closedPath(outline));
  const haloed = (what: string, stroke: Stroke, halo: number): readonly Item[] => {
    const steps = lines();
    return [path(`under ${what}`, steps, { stroke: { color: PAPER, width: stroke.width + halo } }), path(what, steps, { stroke })];
  };
  const [first] = layer as readonly [Mark | SheetMark, ...(Mark | SheetMark)[]];
  switch (first.mark) {
    case 'cloth':
      return clothItems(
        outlines(),
        {
          fabric: first.fabric,
          side: first.side,
          origin: easel.origin,
          ...(first.photo && { photo: { ...first.photo, at: at(first.photo.at), width: first.photo.width * easel.scale } }),
          ...(figure && { figure }),
        },
        easel.cloth,
      );
    case 'line':
      return haloed(first.line, lineStroke(first.line, easel), 1.4);
    case 'pressed':
    case 'pressed open': {
      const arrows = layer.flatMap((mark) =>
        'from' in mark ? [arrowOf(at(mark.from), at(mark.to), mark.mark === 'pressed open', easel.area)] : [],
      );
      const shafts = arrows.flatMap(({ shaft }) => shaft);
      const heads = arrows.flatMap((arrow) => arrow.heads);
      return [
        path('under arrows', [...shafts, ...heads], { stroke: { color: PAPER, width: 2.6 } }),
        path('pressed', shafts, { stroke: { color: INK, width: 0.9 } }),
        path('heads of arrows', heads, { fill: INK, stroke: { color: INK, width: 0.4 } }),
      ];
    }
    case 'name':
      return layer.flatMap((mark) => (mark.mark === 'name' ? nameItems(mark, easel) : []));
    case 'order':
      return layer.flatMap((mark) => (mark.mark === 'order' ? orderItems(mark, easel) : []));
    case 'outline':
      return [path('outline', closed(), { stroke: { color: QUIET, width: 0.5 } })];
    case 'leftover':
      return [path('left over', closed(), { fill: '#f0f0f0', stroke: { color: '#9a9a9a', width: 0.4, dash: [1.5, 1.5] } })];
    case 'edge':
      return [path('edge', closed(), { stroke: { color: INK, width: 1 } })];
    case 'cut':
      return haloed(`cut ${first.cut}`, CUTS[first.cut], 1);
    case 'label':
      return layer.flatMap((mark) => (mark.mark === 'label' ? labelItems(mark, easel) : []));
    case 'loose':
      return [
        path(
          'points that do not nest',
          layer.flatMap((mark) => (mark.mark === 'loose' ? circlePath(at(mark.at), 2.6) : [])),
          {
            fill: PAPER,
            stroke: { color: colored(RED, easel), width: 1.1 },
          },
        ),
      ];
  }
}

const CUTS: Readonly<Record<Extract<SheetMark, { mark: 'cut' }>['cut'], Stroke>> = {
  strip: { color: INK, width: 1 },
  across: { color: INK, width: 0.6 },
  diagonal: { color: INK, width: 0.6, dash: [4, 1.5] },
};

const colored = (color: string, { cloth }: Easel): string => (cloth.ink === 'colours' ? color : INK);

function lineStroke(line: Extract<Mark, { mark: 'line' }>['line'], easel: Easel): Stroke {
  if (line === 'cut') return { color: INK, width: 0.9 };
  if (line === 'drawn') return { color: INK, width: 0.7, dash: [6, 1.6, 1.4, 1.6] };
  if (line === 'thread') return { color: INK, width: 0.8 };
  return { color: colored(RED, easel), width: 1.3, dash: line === 'stitched' ? [3.2, 2.2] : [1.3, 2.4] };
}

/** How long an arrow is at least, in points. */
const ARROW = 8;
/** How far its shaft stays from the edge. */
const ARROW_EDGE = 2;

function arrowOf(
  from: Spot,
  to: Spot,
  bothWays: boolean,
  area: Area,
): { readonly shaft: readonly PathStep[]; readonly heads: readonly PathStep[] } {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  // Longer only backward, and as far as the picture goes.
  const room = (at: number, step: number, low: number, wide: number): number =>
    Math.abs(step) < 1e-9 ? Infinity : step > 0 ? (at - low - ARROW_EDGE) / step : (at - low - wide + ARROW_EDGE) / step;
  const behind = Math.min(room(from[0], dx, area.left, area.width), room(from[1], dy, area.top, area.height));
  const missing = Math.max(0, Math.min(ARROW - long, behind));
  const tail: Spot = bothWays ? from : [from[0] - dx * missing, from[1] - dy * missing];
  const head = Math.min(4.2, Math.max(3.2, (long + missing) * 0.3), (long + missing) * 0.6);
  const headAt = ([x, y]: Spot, way: 1 | -1): readonly PathStep[] => {
    const back: Spot = [x - way * dx * head, y - way * dy * head];
    const wide = head * 0.42;
    return closedPath([
      [x, y],
      [back[0] - dy * wide, back[1] + dx * wide],
      [back[0] + dy * wide, back[1] - dx * wide],
    ]);
  };
  return { shaft: linePath(tail, to), heads: [...headAt(to, 1), ...(bothWays ? headAt(tail, -1) : [])] };
}

/** @returns one line of text in the middle of a place, turned */
function centred(text: string, [x, y]: Spot, size: number, turn: 0 | 1 | 2 | 3, weight: TextItem['weight'], easel: Easel): TextItem {
  const { setting, figure } = easel;
  const shown = setting.shown(text);
  const width = setting.widthOf(shown, size, weight);
  const [across, down] = [-width / 2, HALF_CAP * size];
  const [dx, dy] = (
    [
      [across, down],
      [-down, across],
      [-across, -down],
      [down, -across],
    ] as const
  )[turn];
  const item: TextItem = { kind: 'text', text: shown, x: x + dx, y: y + dy, size, weight, color: INK, width };
  return { ...item, ...(turn !== 0 && { turn }), ...(figure && { figure }) };
}

/** How large a name is set in the room it has. */
const nameSize = ({ room, text }: Extract<Mark, { mark: 'name' }>, scale: number, letters: number): number =>
  Math.min((room * scale * 0.66) / Math.max(1, text.length * 0.62), 9.5 * letters);

function nameItems(mark: Extract<Mark, { mark: 'name' }>, easel: Easel): readonly Item[] {
  const size = nameSize(mark, easel.scale, easel.letters);
  if (size < LEAST_LETTERS) return [];
  const at = easel.at(mark.at);
  const text = centred(mark.text, at, size, mark.turn, 'strong', easel);
  const radius = Math.max(size * 0.62, text.width / 2 + size * 0.16);
  return [
    { kind: 'path', what: `under ${mark.text}`, steps: circlePath(at, radius), fill: PAPER, ...(easel.figure && { figure: easel.figure }) },
    text,
  ];
}

/** @returns how large discs with numbers are so that none lies on another, nor on a name */
function orderRadius(marks: readonly (Mark | SheetMark)[], scale: number, at: (spot: Spot) => Spot, { letters }: FigureLook): number {
  const orders = marks.flatMap((mark) => (mark.mark === 'order' ? [at(mark.at)] : []));
  const names = marks.flatMap((mark) => (mark.mark === 'name' ? [{ at: at(mark.at), reach: 0.75 * nameSize(mark, scale, letters) }] : []));
  const apart = ([x, y]: Spot, [p, q]: Spot): number => Math.hypot(x - p, y - q);
  return orders.reduce(
    (least, order, i) =>
      Math.min(
        least,
        ...orders.slice(i + 1).map((other) => apart(order, other) * 0.48),
        ...names.map((name) => apart(order, name.at) - name.reach),
      ),
    6.2 * Math.sqrt(letters),
  );
}

function orderItems({ number, at }: Extract<Mark, { mark: 'order' }>, easel: Easel): readonly Item[] {
  const { radius, figure } = easel;
  const text = String(number);
  const size = radius * (text.length > 1 ? 1.15 : 1.4);
  if (size < LEAST_LETTERS) return [];
  const middle = easel.at(at);
  return [
    {
      kind: 'path',
      what: `disc of ${number}`,
      steps: circlePath(middle, radius),
      fill: PAPER,
      stroke: { color: colored(RED, easel), width: 0.8 },
      ...(figure && { figure }),
    },
    centred(text, middle, size, 0, 'strong', easel),
  ];
}

function labelItems({ told, at, width, height, upright }: Extract<SheetMark, { mark: 'label' }>, easel: Easel): readonly Item[] {
  const { scale, telling, setting, letters, figure } = easel;
  const text = setting.shown(printed(told, telling));
  const [along, across] = upright ? [height * scale, width * scale] : [width * scale, height * scale];
  const size = Math.min(7.5 * letters, across / 1.3, (along / (setting.widthOf(text, 1, 'regular') + 0.5)) * 1);
  if (size < LEAST_LETTERS + 0.5) return [];
  const middle = easel.at(at);
  const line = centred(text, middle, size, upright ? 3 : 0, 'regular', easel);
  const [long, high] = [line.width + size * 0.5, size * 1.15];
  const [boxWidth, boxHeight] = upright ? [high, long] : [long, high];
  const box = { left: middle[0] - boxWidth / 2, top: middle[1] - boxHeight / 2, width: boxWidth, height: boxHeight };
  return [{ kind: 'path', what: 'under words', steps: boxPath(box), fill: PAPER, ...(figure && { figure }) }, line];
}
