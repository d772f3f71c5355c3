import type { Fabric } from '../../block/block.ts';
import type { Template } from '../../cutting/template-list.ts';
import { toNumber, type Rational } from '../../measure/rational.ts';
import { TEMPLATES_IN_ENGLISH } from '../phrases/english/templates.ts';
import type { TemplatePhrases } from '../phrases/template-phrases.ts';
import { ASCENT, DESCENT, type Setting } from './face.ts';
import { inkOf } from './ink.ts';
import { CUT_LINE, INK, QUIET, SEAM_LINE } from './looks.ts';
import { circlePath, closedPath, linePath, type Item, type TextItem, type Weight } from './page.ts';
import { chordIn, depthIn, extentOf, middleOf, turnedBy, type Polygon, type Spot } from '../polygons.ts';

/** A template as ink, full size in points, as it lies in the block. */
export interface TemplateInk {
  readonly name: string;
  readonly words: Pick<TemplatePhrases, 'top' | 'part' | 'join' | 'measure' | 'inch'>;
  /** To cut along. */
  readonly cut: Polygon;
  /** To sew along; its corners are the dots where seams cross. */
  readonly sewn: Polygon;
  /** Direction of the straight grain, of length 1. */
  readonly grain: Spot;
  /** What is cut of it: how many, of which fabric, and where on it the top of the print lies, for prints that have one. */
  readonly says: readonly { readonly count: string; readonly fabric: string; readonly tops: readonly number[] | null }[];
}

/** Longer names of fabrics are cut short, and so many fabrics are named on a template. */
const LONGEST_NAME = 26;
const MOST_FABRICS = 16;

/** @returns a template as ink; `points`: how many points go to one of the block's unit */
export function inkOfTemplate(
  template: Template,
  step: Rational,
  points: number,
  fabricOf: (id: string) => Pick<Fabric, 'name' | 'directional'>,
  words: TemplatePhrases = TEMPLATES_IN_ENGLISH,
): TemplateInk {
  const scaled = ([x, y]: Spot): Spot => [x * points, y * points];
  const size = toNumber(step);
  const [gx, gy] = template.grain.map(Number) as [number, number];
  const long = Math.hypot(gx, gy);
  const more = template.uses.length - MOST_FABRICS;
  return {
    name: template.name,
    words,
    cut: template.outline.flat().map((place) => scaled(inkOf(place))),
    sewn: template.finished.map(({ x, y, w }) => scaled([(x / w) * size, (y / w) * size])),
    grain: [gx / long, gy / long],
    says: [
      ...template.uses.slice(0, MOST_FABRICS).map(({ fabric: id, cuts, quantity, reversed, tops }) => {
        const { name: said, directional } = fabricOf(id);
        const name = [...said];
        const short = name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1).join('')}…` : name.join('');
        return { count: words.cut(quantity, reversed), fabric: words.fabric(short, cuts), tops: directional ? tops : null };
      }),
      ...(more > 0 ? [{ count: words.more(more), fabric: words.seeList, tops: null }] : []),
    ],
  };
}

/** A template in one of its turns: what is drawn, about an origin of its own, and the room it takes. */
export interface TurnedTemplate {
  readonly items: readonly Item[];
  /** What must not overlap anything: the outline and what is said beside it. */
  readonly footprint: readonly Spot[];
  readonly cut: Polygon;
  readonly sewn: Polygon;
}

/** Half the width of a dot where seams cross. */
const DOT = 1.6;
/** From lines to words. */
const AIR = 4;
const ARROW = { longest: 110, shortest: 15, head: 5, room: 4 };
/** Sizes of a template's name and of what is cut of it, the largest first. */
const SIZES: readonly (readonly [number, number])[] = [
  [15, 9.5],
  [13, 8.5],
  [11, 7.5],
];
const BESIDE: readonly [number, number] = [10, 8];

interface Words {
  readonly lines: readonly { readonly text: string; readonly size: number; readonly weight: Weight; readonly width: number }[];
  readonly width: number;
  readonly height: number;
}

const LEAD = 1.22;

/** @returns the lines of a template that is turned clockwise by so many degrees: to cut, to sew, and where seams cross */
export function templateLines(ink: TemplateInk, degrees: number): TurnedTemplate & { readonly grain: Spot } {
  const turn = turnedBy(degrees);
  const [cut, sewn] = [ink.cut.map(turn), ink.sewn.map(turn)];
  const items: readonly Item[] = [
    { kind: 'path', what: `cut line ${ink.name}`, steps: closedPath(cut), stroke: CUT_LINE },
    { kind: 'path', what: `seam line ${ink.name}`, steps: closedPath(sewn), stroke: SEAM_LINE },
    ...sewn.map((corner): Item => ({ kind: 'path', what: `dot ${ink.name}`, steps: circlePath(corner, DOT), fill: INK })),
  ];
  return { items, footprint: cut, cut, sewn, grain: turn(ink.grain) };
}

/** What is said of a template that lies in some turn. */
export interface Said {
  readonly name: string;
  readonly says: readonly { readonly count: string; readonly fabric: string; readonly print: readonly string[] }[];
}

const TOPS = ['↑', '→', '↓', '←'];

/** @returns what is said of a template turned clockwise by so many degrees, whole quarter turns where a print has a top */
export function saidAt({ name, says, words }: TemplateInk, degrees: number): Said {
  const print = (tops: readonly number[]): string => {
    const counts = TOPS.map((sign, i) => [sign, tops[(i + 4 - degrees / 90) % 4]!] as const).filter(([, count]) => count > 0);
    return words.top(counts.map((each) => each.join(' ')));
  };
  return { name, says: says.map(({ count, fabric, tops }) => ({ count, fabric, print: tops === null ? [] : [print(tops)] })) };
}

/** @returns what is said of a template, level, and its arrow, inside this part of it, as large as they find room; null where they do not */
export function templateWords(ink: Said, room: Polygon, grain: Spot, setting: Setting): readonly Item[] | null {
  for (const sizes of SIZES) {
    for (const broken of [false, true]) {
      const words = wordsOf(ink, sizes, setting, broken);
      const inside = insideOf(room, words, grain);
      if (inside !== null) return [...arrow(ink.name, inside.arrow), ...set(words, inside.at)];
    }
  }
  return null;
}

/** @returns a template turned clockwise by so many degrees, its words level: inside where they find room there, else below it */
export function drawTemplate(ink: TemplateInk, degrees: number, setting: Setting): TurnedTemplate {
  const { items: lines, cut, sewn, grain } = templateLines(ink, degrees);
  const said = saidAt(ink, degrees);
  const inside = templateWords(said, sewn, grain, setting);
  if (inside !== null) return { items: [...lines, ...inside], footprint: cut, cut, sewn };
  const words = wordsOf(said, BESIDE, setting, false);
  const { left, right, bottom } = extentOf(cut);
  const at: Spot = [(left + right - words.width) / 2, bottom + AIR];
  const along = chordIn(sewn, middleOf(sewn), grain, 2);
  const corners: readonly Spot[] = [at, [at[0] + words.width, at[1]], [at[0] + words.width, at[1] + words.height], [at[0], at[1] + words.height]];
  return {
    items: [...lines, ...(along === null ? [] : arrow(ink.name, shortened(along))), ...set(words, at)],
    footprint: [...cut, ...corners],
    cut,
    sewn,
  };
}

/** What is said of a template; `broken`: fabrics have lines of their own. */
function wordsOf({ name, says }: Said, [nameSize, size]: readonly [number, number], { shown, widthOf }: Setting, broken: boolean): Words {
  const line = (text: string, at: number, weight: Weight): Words['lines'][number] => {
    const set = shown(text);
    return { text: set, size: at, weight, width: widthOf(set, at, weight) };
  };
  const texts = says.flatMap(({ count, fabric, print }) => [...(broken ? [count, fabric] : [`${count}: ${fabric}`]), ...print]);
  const lines = [line(name, nameSize, 'strong'), ...texts.map((text) => line(text, size, 'regular'))];
  return {
    lines,
    width: Math.max(...lines.map(({ width }) => width)),
    height: lines.reduce((high, { size: at }) => high + at * LEAD, 0) - (LEAD - ASCENT - DESCENT) * lines[lines.length - 1]!.size,
  };
}

/** Words as items, each line in the middle of the room that they take from this upper left corner. */
function set({ lines, width }: Words, [left, top]: Spot): readonly TextItem[] {
  let y = top;
  return lines.map(({ text, size, weight, width: own }): TextItem => {
    const item: TextItem = { kind: 'text', text, x: left + (width - own) / 2, y: y + ASCENT * size, size, weight, color: INK, width: own };
    y += size * LEAD;
    return item;
  });
}

/** Where words and the arrow of the grain go inside a template, clear of its seam lines; null where there is no room for both. */
function insideOf(sewn: Polygon, words: Words, grain: Spot): { readonly at: Spot; readonly arrow: readonly [Spot, Spot] } | null {
  const [w, h] = [words.width / 2 + AIR, words.height / 2 + AIR];
  // From the middle of the words to the arrow beside them.
  const beside = Math.abs(grain[1]) * (words.width / 2) + Math.abs(grain[0]) * (words.height / 2) + ARROW.room + ARROW.head / 2;
  const { left, top, right, bottom } = extentOf(sewn);
  if (2 * w > right - left || 2 * h > bottom - top) return null;
  let best: { readonly worth: number; readonly at: Spot; readonly arrow: readonly [Spot, Spot] } | null = null;
  const centre = middleOf(sewn);
  const FINE = 16;
  for (let i = 1; i < FINE; i++) {
    for (let j = 1; j < FINE; j++) {
      const middle: Spot = [left + ((right - left) * i) / FINE, top + ((bottom - top) * j) / FINE];
      const corners: readonly Spot[] = [-1, 1].flatMap((s) => [-1, 1].map((t): Spot => [middle[0] + s * w, middle[1] + t * h]));
      const slack = Math.min(...corners.map((corner) => depthIn(sewn, corner)));
      if (slack < 0) continue;
      for (const side of [1, -1]) {
        const from: Spot = [middle[0] - side * grain[1] * beside, middle[1] + side * grain[0] * beside];
        const chord = chordIn(sewn, from, grain, AIR);
        if (chord === null) continue;
        const line = shortened(chord, from);
        const long = Math.hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]);
        if (long < ARROW.shortest) continue;
        // Clear of the edges, a long arrow, near the middle; the first found wins where all are alike.
        const off = Math.hypot(middle[0] - centre[0], middle[1] - centre[1]);
        const worth = Math.min(slack, 12) + Math.min(long, 60) / 6 - off / 6;
        if (best !== null && worth <= best.worth + 1e-9) continue;
        best = { worth, at: [middle[0] - words.width / 2, middle[1] - words.height / 2], arrow: line };
      }
    }
  }
  return best;
}

/** A chord no longer than an arrow need be, its middle as near as can be to a spot on it. */
function shortened([from, to]: readonly [Spot, Spot], near?: Spot): readonly [Spot, Spot] {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const half = Math.min(long, ARROW.longest) / 2;
  const wished = near === undefined ? long / 2 : (near[0] - from[0]) * dx + (near[1] - from[1]) * dy;
  const middle = Math.min(Math.max(wished, half), long - half);
  const at = (d: number): Spot => [from[0] + d * dx, from[1] + d * dy];
  return [at(middle - half), at(middle + half)];
}

/** The straight grain: an arrow with a head at either end, since cloth has no up and down. */
function arrow(name: string, [from, to]: readonly [Spot, Spot]): readonly Item[] {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const head = Math.min(ARROW.head, long / 3);
  const [dx, dy] = [((to[0] - from[0]) / long) * head, ((to[1] - from[1]) / long) * head];
  const tip = ([x, y]: Spot, way: number): Item => ({
    kind: 'path',
    what: `grain ${name}`,
    steps: closedPath([
      [x, y],
      [x - way * dx - 0.35 * dy, y - way * dy + 0.35 * dx],
      [x - way * dx + 0.35 * dy, y - way * dy - 0.35 * dx],
    ]),
    fill: QUIET,
  });
  const inner: readonly [Spot, Spot] = [
    [from[0] + 0.8 * dx, from[1] + 0.8 * dy],
    [to[0] - 0.8 * dx, to[1] - 0.8 * dy],
  ];
  return [{ kind: 'path', what: `grain ${name}`, steps: linePath(...inner), stroke: { color: QUIET, width: 0.8 } }, tip(from, -1), tip(to, 1)];
}
