import type { Assembly } from '../../geometry/piecing/assembly.ts';
import { piecesOf } from '../../geometry/piecing/congruence.ts';
import { isWeb } from '../../geometry/piecing/web.ts';
import { box } from '../../geometry/convex.ts';
import { moved as movedPoint, type Point } from '../../geometry/point.ts';
import type { Step } from '../../sewing/step.ts';
import { inEnglish } from '../english.ts';
import type { Speech } from '../language.ts';
import type { Pattern } from '../pattern.ts';
import { depthIn, extentOf, middleOf, type Extent, type Spot } from '../polygons.ts';
import { between, direction, ink, inkAt, panel, plus, times, type Mark, type Panel } from './diagram.ts';

/** What of a pattern its assembly is drawn from. */
export type Assembled = Pick<Pattern, 'piecing' | 'steps' | 'lattice' | 'block' | 'fabrics' | 'scraps'>;

/** How far things lie apart that are sewn first, and how much further with every join round them, as a share of the block. */
const GAP = 0.03;
const WIDEST = 3;
/** With more things in a line than this they lie nearer to each other. */
const MANY = 5;
/** How many seams are numbered one by one; of more only the first and the last of each line. */
const MOST_NUMBERS = 24;
/** How large a number may be: a share of the shortest side of what lies apart, but no less than can be read, as a share of the block. */
const NUMBER = 0.42;
const LEAST_NUMBER = 0.038;

/** A seam of the picture: where it lies between two things, and which one it is in the order of sewing. */
interface DrawnSeam {
  readonly from: Spot;
  readonly to: Spot;
  readonly number: number;
  /** Its place in its line, from 0, and how many seams that has. */
  readonly at: number;
  readonly of: number;
  readonly partial: boolean;
}

/** Things as they lie, not yet sewn. */
interface Exploded {
  readonly marks: readonly Mark[];
  readonly seams: readonly DrawnSeam[];
}

/**
 * @returns the block as it is put together, drawn apart: what its last joins join, and what those parts are joined from where these are
 * rows, columns or halves; units under their letters, turned as they lie; every seam numbered in sewing order, equal ones alike. Of a web
 * the threads that hold it together are drawn too.
 */
export function assemblyPicture(pattern: Assembled, speech: Speech = inEnglish(pattern)): Panel {
  const { piecing, lattice, block } = pattern;
  const scale = ink(lattice.step);
  const letters = lettersIn(pattern);
  const opened = new Map<Assembly, number>();
  const heights = heightsIn(piecing.root, opened);
  const longest = Math.max(2, ...[...opened.keys()].map(({ parts }) => parts.length));
  const size = Math.max(ink(block.finished.width), ink(block.finished.height));
  const gap = GAP * size * Math.min(1, MANY / longest);
  const numbers = numbersIn(pattern, opened);
  const web = isWeb(piecing.root);

  const laid = (node: Assembly): Exploded => {
    if (!opened.has(node)) return { marks: closed(node, letters, scale), seams: [] };
    const parts = node.parts.map(laid);
    const isRing = node.kind === 'partial-seam ring';
    const apart = gap * Math.min(WIDEST, heights.get(node)! + (web ? 1 : 0));
    let all = parts[0]!;
    const centre = all;
    let sewnTo = middleIn(node.parts[0]!, scale);
    node.parts.slice(1).forEach((part, i) => {
      const { from, to, partial = false } = node.seams[i]!;
      const ends = [inkAt(from, scale), inkAt(to, scale)] as const;
      const middle = middleIn(part, scale);
      const across = normal(...ends, sewnTo, middle);
      const on = isRing ? centre : all;
      const [near, far] = [Math.max(...reaches(on.marks, across)), Math.min(...reaches(parts[i + 1]!.marks, across))];
      const moved = movedBy(parts[i + 1]!, times(across, near - far + apart));
      const shift = near + apart / 2 - (ends[0][0] * across[0] + ends[0][1] * across[1]);
      const seam: DrawnSeam = {
        from: plus(ends[0], times(across, shift)),
        to: plus(ends[1], times(across, shift)),
        number: numbers.get(node)![i]!,
        at: i,
        of: node.seams.length,
        partial,
      };
      all = { marks: [...all.marks, ...moved.marks], seams: [...all.seams, ...moved.seams, seam] };
      if (!isRing) sewnTo = between(sewnTo, middle);
    });
    return centred(all, node, scale);
  };

  const { marks, seams } = laid(piecing.root);
  const threads = web ? threadsBetween(seams) : [];
  const lines = seams.map(({ from, to, partial }): Mark => ({ mark: 'line', line: partial ? 'stitched later' : 'stitched', from, to }));
  const few = seams.length <= MOST_NUMBERS;
  const room = Math.max(LEAST_NUMBER * size, NUMBER * smallestIn(opened, scale));
  // A number on a long seam of a web stays clear of the threads.
  const level = web ? 0.5 / piecing.root.parts[0]!.parts.length : 0.5;
  const shown = seams.filter(({ at, of }) => few || at === 0 || at === of - 1);
  const order = shown.map(({ number, from, to }): Mark => ({ mark: 'order', number, at: between(from, to, from[1] === to[1] ? level : 0.5), room }));
  const cloth = marks.filter(({ mark }) => mark === 'cloth');
  const names = marks.filter(({ mark }) => mark === 'name');
  return panel([...cloth, ...threads, ...lines, ...names, ...(seams.length > 1 ? order : [])], speech.language.pattern.panel[web ? 'web' : 'put together']);
}

/** @returns under which letter, and how turned, each unit of the block lies */
function lettersIn({ piecing }: Assembled): ReadonlyMap<Assembly, { readonly text: string; readonly turn: 0 | 1 | 2 | 3 }> {
  return new Map(piecing.units.flatMap(({ id, places }) => places.map(({ assembly, turn }) => [assembly, { text: id, turn }] as const)));
}

/**
 * Takes the block apart as far as it is drawn apart: its own joins, and those of the rows or columns that these join.
 * @param opened takes up what is drawn apart, and how deep in the block it lies
 * @returns for each of these how many joins it holds one in another
 */
function heightsIn(root: Assembly, opened: Map<Assembly, number>): Map<Assembly, number> {
  const heights = new Map<Assembly, number>();
  const walk = (each: Assembly, deep: number): number => {
    const isBare = each.kind === undefined;
    const isRow = each.kind === 'joined unit' && deep === 1 && isLine(each);
    if (each.piece || !(deep === 0 || isBare || isRow)) return 0;
    opened.set(each, deep);
    const high = 1 + Math.max(0, ...each.parts.map((part) => walk(part, deep + 1)));
    heights.set(each, high);
    return high;
  };
  walk(root, 0);
  return heights;
}

const isLine = ({ seams }: Assembly): boolean =>
  seams.every(({ from, to }) => from.x * to.w === to.x * from.w) || seams.every(({ from, to }) => from.y * to.w === to.y * from.w);

/** @returns the numbers of every opened thing's seams: in the order of the steps, and of their joins; equal units have equal numbers */
function numbersIn({ piecing, steps }: Assembled, opened: ReadonlyMap<Assembly, number>): ReadonlyMap<Assembly, readonly number[]> {
  const placesOf = (makes: string): readonly Assembly[] =>
    makes === 'block' ? [piecing.root] : (piecing.units.find(({ id }) => id === makes)?.places ?? []).map(({ assembly }) => assembly);
  const numbers = new Map<Assembly, readonly number[]>();
  let before = 0;
  for (const step of steps) {
    const places = placesOf(step.makes).filter((place) => opened.has(place));
    if (places.length === 0) continue;
    const order = joinOrder(placesOf(step.makes)[0]!, step);
    for (const place of places) {
      let next = 0;
      const walk = (node: Assembly): void => {
        if (node.parts.length === 0 || (node !== place && node.kind !== undefined)) return;
        numbers.set(node, node.seams.map(() => before + order[next++]!));
        node.parts.forEach(walk);
      };
      walk(place);
    }
    before += order.length;
  }
  return numbers;
}

/** @returns for every seam of a unit, its own and those of the bare parts in it, which join of its step sews it, from 1 */
function joinOrder(place: Assembly, { joins }: Step): readonly number[] {
  const { left, top } = box(place.outline);
  const name = (p: Point, q: Point): string => [p, q].map(({ x, y, w }) => `${x} ${y} ${w}`).sort().join();
  const byEnds = new Map(joins.map(({ from, to }, i) => [name(from, to), i + 1]));
  const order: number[] = [];
  const walk = (node: Assembly): void => {
    if (node.parts.length === 0 || (node !== place && node.kind !== undefined)) return;
    node.seams.forEach(({ from, to }) => {
      const local = (p: Point): Point => movedPoint(p, -left.x, -top.y);
      order.push(byEnds.get(name(local(from), local(to))) ?? order.length + 1);
    });
    node.parts.forEach(walk);
  };
  walk(place);
  return order;
}

/** @returns a thing that is finished, or a piece, as it lies in the block, with its letter */
function closed(node: Assembly, letters: ReturnType<typeof lettersIn>, scale: number): readonly Mark[] {
  const cloth = piecesOf(node).map(({ fabric, outline }): Mark => ({ mark: 'cloth', fabric, side: 'right', outline: outline.map((point) => inkAt(point, scale)) }));
  const letter = letters.get(node);
  if (!letter) return cloth;
  const outline = node.outline.map((point) => inkAt(point, scale));
  const at = middleOf(outline);
  return [...cloth, { mark: 'name', ...letter, at, room: 2 * depthIn(outline, at) }];
}

/** @returns the thread from each seam of a web down to the next one in its column */
function threadsBetween(seams: readonly DrawnSeam[]): readonly Mark[] {
  const upright = seams.filter(({ from: [x], to: [u] }) => Math.abs(x - u) < 1e-9).sort((a, b) => a.from[0] - b.from[0] || a.from[1] - b.from[1]);
  return upright.slice(1).flatMap((next, i): readonly Mark[] => {
    const last = upright[i]!;
    return Math.abs(last.to[0] - next.from[0]) < 1e-9 ? [{ mark: 'line', line: 'thread', from: last.to, to: next.from }] : [];
  });
}

/** @returns the shortest side of anything that is drawn as a whole */
function smallestIn(opened: ReadonlyMap<Assembly, number>, scale: number): number {
  const wholes = [...opened.keys()].flatMap(({ parts }) => parts).filter((part) => !opened.has(part));
  return Math.min(
    ...wholes.map(({ outline }) => {
      const { left, top, right, bottom } = extentOf(outline.map((point) => inkAt(point, scale)));
      return Math.min(right - left, bottom - top);
    }),
  );
}

const middleIn = ({ outline }: Assembly, scale: number): Spot => middleOf(outline.map((point) => inkAt(point, scale)));

/** @returns the direction across a seam from one thing to the other, of length 1 */
function normal(from: Spot, to: Spot, one: Spot, other: Spot): Spot {
  const [dx, dy] = direction(from, to);
  const toOther = (other[0] - one[0]) * -dy + (other[1] - one[1]) * dx;
  return toOther >= 0 ? [-dy, dx] : [dy, -dx];
}

const clothIn = (marks: readonly Mark[]): readonly Spot[] => marks.flatMap((mark) => (mark.mark === 'cloth' ? mark.outline : []));

const reaches = (marks: readonly Mark[], [dx, dy]: Spot): readonly number[] => clothIn(marks).map(([x, y]) => x * dx + y * dy);

/** @returns things whose middle lies where that of the assembly is when it is sewn */
function centred(all: Exploded, { outline }: Assembly, scale: number): Exploded {
  const middle = ({ left, right, top, bottom }: Extent): Spot => [(left + right) / 2, (top + bottom) / 2];
  const [now, then] = [middle(extentOf(clothIn(all.marks))), middle(extentOf(outline.map((point) => inkAt(point, scale))))];
  return movedBy(all, [then[0] - now[0], then[1] - now[1]]);
}

function movedBy({ marks, seams }: Exploded, by: Spot): Exploded {
  return {
    marks: marks.map((mark): Mark => {
      if (mark.mark === 'cloth') return { ...mark, outline: mark.outline.map((spot) => plus(spot, by)) };
      return mark.mark === 'name' ? { ...mark, at: plus(mark.at, by) } : mark;
    }),
    seams: seams.map((seam) => ({ ...seam, from: plus(seam.from, by), to: plus(seam.to, by) })),
  };
}
