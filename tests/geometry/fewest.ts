import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import { exactly, isOn, nameOf, rightOf, turning, type P } from './exact.ts';
import { patchesIn } from './sewn.ts';

/*
 * The least number of pieces of cloth that a drawing can be sewn from by straight through-seams, worked out exactly and
 * sharing nothing with src/geometry. A convex region is one piece where nothing is drawn in it; otherwise a line divides
 * it right across in two. What is drawn: the stretches where two cloths meet, and the seams that are asked for.
 *
 * Which lines. Every region is cut along one of the lines of the whole drawing: those that carry something drawn, and all
 * grid lines, drawn on or not. The engine cuts along these and no others, so that, seams in two goes aside, it can never do
 * better. (Among upright and level cuts of upright and level drawings nothing is lost: an upright cut with nothing drawn on
 * it can be slid sideways until it meets a drawn upright edge, another upright cut or the end of its region; the level cuts
 * that end on it grow or shrink, and no piece is added. Elsewhere a line that joins two corners and carries nothing might
 * be better: ALL_LINES has those too, and the upright and level lines through every corner, for small drawings.)
 *
 * How. The lines cut the block into faces once; from then on a region is a list of faces, and nothing is measured any more.
 * 1. Where a line is drawn right across a region, it is cut there: no piece of any way lies on both sides, so every way
 *    to sew the region gives ways to sew the two sides with as many pieces together.
 * 2. Otherwise every line is tried, deepening from a lower bound (Korf, Depth-first iterative-deepening, Artificial
 *    Intelligence 27, 1985); what is known of a region is kept.
 * 3. The lower bound of a region is the sum over its cloth areas. An area with r corners of more than 180° and h holes needs
 *    at least 1 − h + ⌈r/2⌉ convex pieces: with V corners and E edges of pieces inside it, it has 1 − h + E − V pieces
 *    (Euler); each corner of more than 180° is the end of an edge, each corner inside of three, so that 2E ≥ r + 3V
 *    (compare Chazelle and Dobkin, Optimal convex decompositions, 1985).
 */

/** The straight line through two points of the drawing. */
interface Carrier {
  readonly a: P;
  readonly b: P;
}

interface Edge {
  readonly faces: readonly [number, number];
  readonly drawn: boolean;
  /** Between two parts of one whole patch. */
  readonly locked: boolean;
}

/** The faces round a corner inside the block, in order; drawn[i]: whether something is drawn between faces[i] and the next. */
interface Round {
  readonly faces: readonly number[];
  readonly drawn: readonly boolean[];
}

interface Plane {
  readonly faces: readonly (readonly P[])[];
  readonly cloths: readonly string[];
  readonly lines: readonly Carrier[];
  /** By line: 1 for faces to its right, −1 for those to its left. */
  readonly sides: readonly Int8Array[];
  /** By line: the edges of faces on it. */
  readonly edges: readonly (readonly Edge[])[];
  readonly rounds: readonly Round[];
}

/** Which lines a region may be cut along. */
export const [ENGINE_LINES, ALL_LINES] = ['drawn lines and grid lines', 'lines through two corners'] as const;
export type Lines = typeof ENGINE_LINES | typeof ALL_LINES;

const lattice = (x: number, y: number): P => exactly([x, y]);

/** @returns a name that two lines share exactly when they are the same */
function lineName({ a, b }: Carrier): string {
  let [u, v, t] = [a.y * b.w - b.y * a.w, b.x * a.w - a.x * b.w, a.x * b.y - b.x * a.y];
  let g = 0n;
  for (const n of [u, v, t]) for (let m = n; m !== 0n; ) [g, m] = [m, g % m];
  if (g < 0n) g = -g;
  if (u < 0n || (u === 0n && v < 0n)) g = -g;
  [u, v, t] = [u / g, v / g, t / g];
  return `${u} ${v} ${t}`;
}

/** @returns each line once, without those along the edge of the block */
function distinct(lines: readonly Carrier[], { width, height }: Drawing): readonly Carrier[] {
  const [o, r, s, t] = [lattice(0, 0), lattice(width, 0), lattice(width, height), lattice(0, height)];
  const border = new Set([{ a: o, b: r }, { a: r, b: s }, { a: s, b: t }, { a: t, b: o }].map(lineName));
  return [...new Map(lines.map((line) => [lineName(line), line])).entries()].filter(([name]) => !border.has(name)).map(([, line]) => line);
}

/** @returns the faces into which lines cut the block, clockwise on screen */
function facesOf({ width, height }: Drawing, lines: readonly Carrier[]): readonly (readonly P[])[] {
  let faces: readonly (readonly P[])[] = [[lattice(0, 0), lattice(width, 0), lattice(width, height), lattice(0, height)]];
  for (const { a, b } of lines) {
    faces = faces.flatMap((face) => {
      const turns = face.map((p) => turning(a, b, p));
      return turns.includes(1) && turns.includes(-1) ? [rightOf(face, a, b), rightOf(face, b, a)] : [face];
    });
  }
  return faces;
}

/** @returns what shows at a face: its fabric, and the patch when it is whole */
function clothOf(drawing: Drawing, face: readonly P[]): string {
  const [patch] = patchesIn(drawing, face);
  const { fabric, whole } = drawing.patches[patch!] ?? { fabric: drawing.ground };
  return whole ? `${fabric} ${patch}` : fabric;
}

/** Corners made by cutting are in lowest terms, and so are lattice points. */
const cornerName = ({ x, y, w }: P): string => `${x},${y},${w}`;

/** @returns the plane cut by lines; each face shows one cloth */
function planeOf(drawing: Drawing, lines: readonly Carrier[]): Plane {
  const faces = facesOf(drawing, lines);
  const cloths = faces.map((face) => clothOf(drawing, face));
  const wholes = new Set(drawing.patches.flatMap(({ fabric, whole }, i) => (whole ? [`${fabric} ${i}`] : [])));
  const seams = drawing.seams.map(([p, r]) => [exactly(p), exactly(r)] as const);
  const sides = lines.map(({ a, b }) => Int8Array.from(faces, (face) => face.map((p) => turning(a, b, p)).find((t) => t !== 0)!));
  /** Face by the names of an edge's ends, clockwise. */
  const owner = new Map<string, number>();
  faces.forEach((face, f) => face.forEach((p, i) => owner.set(`${cornerName(p)} ${cornerName(face[(i + 1) % face.length]!)}`, f)));
  const drawnAt = new Map<string, boolean>();
  const edges: Edge[][] = lines.map(() => []);
  faces.forEach((face, f) =>
    face.forEach((p, i) => {
      const r = face[(i + 1) % face.length]!;
      const [one, other] = [cornerName(p), cornerName(r)];
      const g = owner.get(`${other} ${one}`);
      if (g === undefined || g < f) return;
      const drawn = cloths[f] !== cloths[g] || seams.some(([a, b]) => isOn(p, a, b) && isOn(r, a, b));
      drawnAt.set(`${one} ${other}`, drawn).set(`${other} ${one}`, drawn);
      const line = lines.findIndex(({ a, b }) => turning(a, b, p) === 0 && turning(a, b, r) === 0);
      edges[line]!.push({ faces: [f, g], drawn, locked: !drawn && wholes.has(cloths[f]!) });
    }),
  );
  return { faces, cloths, lines, sides, edges, rounds: roundsOf(faces, owner, drawnAt) };
}

function roundsOf(
  faces: Plane['faces'],
  owner: ReadonlyMap<string, number>,
  drawnAt: ReadonlyMap<string, boolean>,
): readonly Round[] {
  const corners = new Map(faces.flatMap((face, f) => face.map((p) => [cornerName(p), f] as const)));
  const found: Round[] = [];
  for (const [name, first] of corners) {
    const around: number[] = [];
    const drawn: boolean[] = [];
    let at: number | undefined = first;
    do {
      const face: readonly P[] = faces[at]!;
      const next: string = cornerName(face[(face.findIndex((p) => cornerName(p) === name) + 1) % face.length]!);
      around.push(at);
      drawn.push(drawnAt.get(`${name} ${next}`) ?? true);
      at = owner.get(`${next} ${name}`);
    } while (at !== undefined && at !== first);
    if (at !== undefined) found.push({ faces: around, drawn });
  }
  return found;
}

/** @returns the lines that carry something drawn, and the corners of what is drawn, crossings among them */
function drawnCorners(drawing: Drawing): { readonly lines: readonly Carrier[]; readonly corners: readonly P[] } {
  const edges = drawing.patches.flatMap(({ points }) =>
    points.map((p, i): Carrier => ({ a: exactly(p), b: exactly(points[(i + 1) % points.length]!) })),
  );
  const seams = drawing.seams.flatMap(([p, r]: readonly [Lattice, Lattice]): readonly Carrier[] => [
    { a: exactly(p), b: exactly(r) },
    // So that a seam ends at the corner of a face.
    ...[p, r].flatMap(([x, y]) => [{ a: lattice(x, 0), b: lattice(x, 1) }, { a: lattice(0, y), b: lattice(1, y) }]),
  ]);
  const plane = planeOf(drawing, distinct([...edges, ...seams], drawing));
  const lines = plane.lines.filter((_, i) => plane.edges[i]!.some((edge) => edge.drawn));
  const corners = new Map<string, P>();
  plane.edges.flat().filter(({ drawn }) => drawn).forEach(({ faces: [f, g] }) => {
    const shared = plane.faces[f]!.filter((p) => plane.faces[g]!.some((r) => cornerName(r) === cornerName(p)));
    shared.forEach((p) => corners.set(cornerName(p), p));
  });
  return { lines, corners: [...corners.values()] };
}

function linesFor(drawing: Drawing, which: Lines): readonly Carrier[] {
  const { lines, corners } = drawnCorners(drawing);
  const upright = (x: number): Carrier => ({ a: lattice(x, 0), b: lattice(x, 1) });
  const level = (y: number): Carrier => ({ a: lattice(0, y), b: lattice(1, y) });
  const grid = [...drawing.columns.map(upright), ...drawing.rows.map(level)];
  const ends = drawing.seams.flat().flatMap(([x, y]) => [upright(x), level(y)]);
  if (which === ENGINE_LINES) return distinct([...lines, ...grid, ...ends], drawing);
  const through = corners.flatMap((a, i) => corners.slice(0, i).map((b): Carrier => ({ a, b })));
  const straight = corners.flatMap((p) => [{ a: p, b: { ...p, y: p.y + p.w } }, { a: p, b: { ...p, x: p.x + p.w } }]);
  return distinct([...lines, ...grid, ...ends, ...through, ...straight], drawing);
}

type Region = readonly number[];

/** How a region comes apart, as text: its cut and the two sides, or the cloth of a single piece. */
export type Cuts = string | { readonly cut: string; readonly right: Cuts; readonly left: Cuts };

/** What is known of a region. */
interface Known {
  /** It has at least so many pieces. */
  low: number;
  exact: boolean;
  cut: number;
  /** The lines it may be cut along, with its two sides; one line alone where that is drawn right across. */
  choices: readonly (readonly [number, Region, Region])[] | null;
}

/** The least number of pieces of a drawing. */
export interface Fewest {
  /** Infinity where whole patches lock each other. */
  readonly pieces: number;
  /** The sum of what each cloth area needs at least, seams that run right across or not. */
  readonly bound: number;
  /** Cloth areas: as many patches as are seen, those of one cloth that touch counted once. */
  readonly areas: number;
  readonly regions: number;
  readonly cuts: Cuts | null;
}

/**
 * @param most where more pieces than these are needed, the answer only says so: pieces is then larger than most
 * @returns the least number of pieces of a drawing
 * @throws when more than `effort` regions would have to be looked at
 */
export function fewestPieces(drawing: Drawing, most: number, which: Lines = ENGINE_LINES, effort = 2_000_000): Fewest {
  const plane = planeOf(drawing, linesFor(drawing, which));
  const memo = new Map<string, Known>();
  const inside = new Uint8Array(plane.faces.length);
  const root = new Int32Array(plane.faces.length);
  const reflex = new Int32Array(plane.faces.length);
  const euler = new Int32Array(plane.faces.length);
  const allEdges = plane.edges.flat();

  const rootOf = (f: number): number => {
    let at = f;
    while (root[at] !== at) at = root[at] = root[root[at]!]!;
    return at;
  };

  /** @returns what each cloth area of a region needs at least */
  function areaBounds(region: Region): readonly number[] {
    inside.fill(0);
    for (const f of region) {
      inside[f] = 1;
      root[f] = f;
      reflex[f] = 0;
      euler[f] = 1;
    }
    for (const { faces: [f, g], drawn } of allEdges) {
      if (drawn || !inside[f] || !inside[g]) continue;
      euler[f]!--;
      const [a, b] = [rootOf(f), rootOf(g)];
      if (a === b) continue;
      root[b] = a;
    }
    for (const { faces, drawn } of plane.rounds) {
      const n = faces.length;
      const ends = (i: number): boolean => drawn[i]! || !inside[faces[i]!] || !inside[faces[(i + 1) % n]!];
      const start = faces.findIndex((_, i) => ends(i));
      if (start < 0) {
        euler[faces[0]!]!++;
        continue;
      }
      // Opposite rays are n / 2 faces apart, so that more faces than these make more than 180°.
      for (let i = 1, run = 0; i <= n; i++) {
        const at = (start + i) % n;
        if (inside[faces[at]!]) run++;
        if (!ends(at)) continue;
        if (run > n / 2) reflex[faces[at]!]!++;
        run = 0;
      }
    }
    const sums = new Map<number, [number, number]>();
    for (const f of region) {
      const sum = sums.get(rootOf(f)) ?? [0, 0];
      sums.set(rootOf(f), [sum[0] + euler[f]!, sum[1] + reflex[f]!]);
    }
    return [...sums.values()].map(([holes, corners]) => Math.max(1, holes + Math.ceil(corners / 2)));
  }

  const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

  function known(region: Region): Known {
    const key = String.fromCharCode(...region);
    let found = memo.get(key);
    if (!found) {
      if (memo.size >= effort) throw new RangeError('too many regions');
      const low = sum(areaBounds(region));
      const single = !allEdges.some(({ faces: [f, g], drawn }) => drawn && inside[f] && inside[g]);
      memo.set(key, (found = { low, exact: single, cut: -1, choices: null }));
    }
    return found;
  }

  /** @returns the ways to cut a region in two */
  function choices(region: Region): NonNullable<Known['choices']> {
    inside.fill(0);
    for (const f of region) inside[f] = 1;
    const found: (readonly [number, Region, Region])[] = [];
    for (let l = 0; l < plane.lines.length; l++) {
      const within = plane.edges[l]!.filter(({ faces: [f, g] }) => inside[f] && inside[g]);
      if (within.length === 0 || within.some(({ locked }) => locked)) continue;
      const sides = plane.sides[l]!;
      const choice = [l, region.filter((f) => sides[f] === 1), region.filter((f) => sides[f] === -1)] as const;
      if (within.every(({ drawn }) => drawn)) return [choice];
      found.push(choice);
    }
    return found;
  }

  /** @returns the least number of pieces of a region when that is ≤ limit, otherwise a lower bound of it > limit */
  function least(region: Region, limit: number): number {
    const here = known(region);
    if (here.exact || here.low > limit || here.low === Infinity) return here.low;
    here.choices ??= choices(region);
    const lowOf = ([, right, left]: readonly [number, Region, Region]): number => known(right).low + known(left).low;
    for (;;) {
      // At most `limit` in all is wanted; nothing below `low` is possible.
      const target = here.low;
      let next = Infinity;
      const ordered = here.choices.map((choice) => [lowOf(choice), choice] as const).sort(([m], [n]) => m - n);
      for (const [low, [line, right, left]] of ordered) {
        if (low > target) {
          next = Math.min(next, low);
          continue;
        }
        const [fewer, more] = right.length < left.length ? [right, left] : [left, right];
        const one = least(fewer, target - known(more).low);
        const both = one + known(more).low > target ? one + known(more).low : one + least(more, target - one);
        if (both <= target) {
          here.exact = true;
          here.cut = line;
          return here.low;
        }
        next = Math.min(next, both);
      }
      here.low = Math.max(next, target + 1);
      if (here.low > limit || here.low === Infinity) return here.low;
    }
  }

  function cuts(region: Region): Cuts {
    const here = known(region);
    if (here.cut < 0) return plane.cloths[region[0]!]!;
    const [, right, left] = here.choices!.find(([line]) => line === here.cut)!;
    const { a, b } = plane.lines[here.cut]!;
    return { cut: `${nameOf(a)} – ${nameOf(b)}`, right: cuts(right), left: cuts(left) };
  }

  const block = plane.faces.map((_, f) => f);
  const bounds = areaBounds(block);
  const pieces = least(block, most);
  return { pieces, bound: sum(bounds), areas: bounds.length, regions: memo.size, cuts: known(block).exact ? cuts(block) : null };
}
