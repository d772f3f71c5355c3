import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import type { Assembly, Piece, Piecing, UnitKind } from '../../src/geometry/piecing/assembly.ts';
import {
  add,
  areaOf,
  commonOf,
  edgesOn,
  exactly,
  hullOf,
  isConvex,
  isInside,
  isOn,
  middleOf,
  minus,
  nameOf,
  order,
  outlineText,
  printed,
  q,
  rightOf,
  same,
  shared,
  spanText,
  times,
  total,
  turning,
  unionOf,
  xOf,
  yOf,
  type P,
  type Q,
} from './exact.ts';

/* What must be true of every way to sew a drawing, said by eyes that share nothing with src/geometry. Each check returns complaints. */

export const outlineOf = (node: { readonly outline: Piece['outline'] }): readonly P[] => node.outline.map(exactly);

/** @returns every node of an assembly, the whole first */
export const nodesOf = (node: Assembly): readonly Assembly[] => [node, ...node.parts.flatMap(nodesOf)];

/** @returns the index of the patch on top at a point that lies on no edge; −1 on the ground */
export function topPatch(drawing: Drawing, at: P): number {
  return drawing.patches.findLastIndex(({ points }) => isInside(at, points.map(exactly)));
}

/** @returns a convex outline cut wherever an edge of a patch runs through it, so that each part shows one patch alone */
function cutByPatches(drawing: Drawing, outline: readonly P[]): readonly (readonly P[])[] {
  let parts: readonly (readonly P[])[] = [outline];
  for (const { points } of drawing.patches) {
    const corners = points.map(exactly);
    corners.forEach((a, i) => {
      const b = corners[(i + 1) % corners.length]!;
      parts = parts.flatMap((part) => {
        const apart = part.some((p, k) => {
          const r = part[(k + 1) % part.length]!;
          return turning(p, r, a) <= 0 && turning(p, r, b) <= 0;
        });
        if (apart) return [part];
        return [rightOf(part, a, b), rightOf(part, b, a)].filter((half) => half.length > 0);
      });
    });
  }
  return parts;
}

/** @returns the patches that show somewhere in an outline */
export const patchesIn = (drawing: Drawing, outline: readonly P[]): ReadonlySet<number> =>
  new Set(cutByPatches(drawing, outline).map((part) => topPatch(drawing, middleOf(part))));

/** Pieces: their areas are the block's, none lies over another, each is one cloth of the drawing. */
export function pieceFaults(drawing: Drawing, pieces: readonly Piece[]): readonly string[] {
  const wrong: string[] = [];
  const outlines = pieces.map(outlineOf);
  const name = (i: number): string => `piece ${pieces[i]!.id} (${outlines[i]!.map(nameOf).join(' ')})`;
  const sum = total(outlines.map(areaOf));
  const block = q(drawing.width * drawing.height);
  if (order(sum, block) !== 0) wrong.push(`the pieces have ${printed(sum)} square steps, the block ${printed(block)}`);
  if (new Set(pieces.map((p) => p.id)).size !== pieces.length) wrong.push('two pieces have one id');
  outlines.forEach((outline, i) => {
    if (!isConvex(outline)) wrong.push(`${name(i)} is not convex and clockwise`);
    const outside = outline.some((p) =>
      [xOf(p), yOf(p)].some((v, axis) => v.n < 0n || order(v, q(axis ? drawing.height : drawing.width)) > 0),
    );
    if (outside) wrong.push(`${name(i)} leaves the block`);
    for (let k = 0; k < i; k++) if (shared(outline, outlines[k]!).length > 0) wrong.push(`${name(i)} lies over ${name(k)}`);
    const showing = [...patchesIn(drawing, outline)].sort((a, b) => a - b);
    const cloths = new Set(showing.map((p) => drawing.patches[p]?.fabric ?? drawing.ground));
    if (cloths.size !== 1 || !cloths.has(pieces[i]!.fabric))
      wrong.push(`${name(i)} of ${pieces[i]!.fabric} lies on ${[...cloths].join(' and ')}`);
    if (String(showing) !== String(pieces[i]!.patches)) wrong.push(`${name(i)} shows patches ${showing}, not ${pieces[i]!.patches}`);
  });
  return wrong;
}

/** Whole patches: none is in two pieces that touch along an edge, and no piece holds more than the one patch. */
export function wholeFaults(drawing: Drawing, pieces: readonly Piece[]): readonly string[] {
  const wrong: string[] = [];
  const held = pieces.filter((piece) => piece.patches.some((p) => drawing.patches[p]?.whole));
  held.forEach((piece, i) => {
    if (piece.patches.length !== 1) wrong.push(`piece ${piece.id} holds a whole patch and others: ${piece.patches}`);
    for (const other of held.slice(0, i)) {
      if (String(other.patches) === String(piece.patches) && touch(outlineOf(piece), outlineOf(other))) {
        wrong.push(`the whole patch ${piece.patches} is divided between pieces ${other.id} and ${piece.id}`);
      }
    }
  });
  return wrong;
}

/** @returns whether two outlines share a stretch of edge */
function touch(one: readonly P[], other: readonly P[]): boolean {
  return one.some((a, i) => {
    const b = one[(i + 1) % one.length]!;
    return commonOf(edgesOn([one], a, b), edgesOn([other], a, b)).length > 0;
  });
}

/** Nodes: each is convex and is exactly its parts together. */
export function nodeFaults(root: Assembly): readonly string[] {
  return nodesOf(root).flatMap((node) => {
    const wrong: string[] = [];
    const outline = outlineOf(node);
    const name = `${node.kind ?? 'part'} ${outline.map(nameOf).join(' ')}`;
    if (!isConvex(outline)) wrong.push(`${name} is not convex and clockwise`);
    if (node.piece) {
      if (node.parts.length + node.seams.length > 0) wrong.push(`${name} is a piece with parts`);
      if (outlineText(outlineOf(node.piece)) !== outlineText(outline)) wrong.push(`${name} is not the outline of its piece`);
      return wrong;
    }
    const parts = node.parts.map(outlineOf);
    if (parts.length < 2) wrong.push(`${name} has ${parts.length} parts`);
    const sum = total(parts.map(areaOf));
    if (order(sum, areaOf(outline)) !== 0) wrong.push(`${name} has another area than its parts`);
    parts.forEach((part, i) => {
      const out = part.some((p) => outline.some((a, k) => turning(a, outline[(k + 1) % outline.length]!, p) < 0));
      if (out) wrong.push(`${name} does not hold its part ${i}`);
      for (let k = 0; k < i; k++) if (shared(part, parts[k]!).length > 0) wrong.push(`${name}: parts ${k} and ${i} lie over each other`);
    });
    return wrong;
  });
}

/** Seams: each is the whole edge shared by what it joins, and what has been joined is convex after each; rings aside, none is partial. */
export function seamFaults(root: Assembly): readonly string[] {
  return nodesOf(root).flatMap((node) => {
    if (node.piece) return [];
    const wrong: string[] = [];
    const parts = node.parts.map(outlineOf);
    const name = `${node.kind ?? 'part'} ${outlineOf(node).map(nameOf).join(' ')}`;
    if (node.seams.length !== parts.length - 1) return [`${name}: ${node.seams.length} seams for ${parts.length} parts`];
    node.seams.forEach((seam, i) => {
      const [from, to] = [exactly(seam.from), exactly(seam.to)];
      const whole = unionOf([[from, to]]);
      const before = node.kind === 'partial-seam ring' ? [parts[0]!, parts[i === 0 ? parts.length - 1 : i]!] : parts.slice(0, i + 1);
      const [done, next] = [edgesOn(before, from, to), edgesOn([parts[i + 1]!], from, to)];
      if (spanText(next) !== spanText(whole))
        wrong.push(`${name}: seam ${i} ${spanText(whole)} is not an edge of what is added, ${spanText(next)}`);
      if (node.kind === 'partial-seam ring') {
        if (Boolean(seam.partial) !== (i === 0)) wrong.push(`${name}: seam ${i} ${seam.partial ? 'is' : 'is not'} partial`);
        if (spanText(commonOf(done, whole)) !== spanText(whole))
          wrong.push(`${name}: seam ${i} of the ring lies not along the centre and the arm before`);
        return;
      }
      if (seam.partial) wrong.push(`${name}: seam ${i} is partial`);
      if (spanText(done) !== spanText(whole))
        wrong.push(`${name}: seam ${i} ${spanText(whole)} is not the edge of what is there, ${spanText(done)}`);
      const joined = [...before, parts[i + 1]!];
      if (order(areaOf(hullOf(joined.flat())), total(joined.map(areaOf))) !== 0) wrong.push(`${name}: not convex after seam ${i}`);
    });
    return wrong;
  });
}

interface Moving {
  readonly turn: number;
  readonly dx: Q;
  readonly dy: Q;
}

const turnedBy = (p: P, turn: number): P => (turn === 0 ? p : turnedBy({ x: -p.y, y: p.x, w: p.w }, turn - 1));
const least = (values: readonly Q[]): Q => values.reduce((a, b) => (order(a, b) <= 0 ? a : b));

/** @returns the move after `turn` quarter turns clockwise that brings one outline's box to another's */
function moving(from: readonly P[], to: readonly P[], turn: number): Moving {
  const after = from.map((p) => turnedBy(p, turn));
  return { turn, dx: minus(least(to.map(xOf)), least(after.map(xOf))), dy: minus(least(to.map(yOf)), least(after.map(yOf))) };
}

function taken(p: P, { turn, dx, dy }: Moving): P {
  const r = turnedBy(p, turn);
  return { x: (r.x * dx.d + dx.n * r.w) * dy.d, y: (r.y * dy.d + dy.n * r.w) * dx.d, w: r.w * dx.d * dy.d };
}

/** @returns the leaves below a node */
export const leavesOf = (node: Assembly): readonly Piece[] => nodesOf(node).flatMap((n) => (n.piece ? [n.piece] : []));

const picture = (node: Assembly, by: (p: P) => P): string =>
  leavesOf(node)
    .map((piece) => `${piece.fabric}: ${outlineText(outlineOf(piece).map(by))}`)
    .sort()
    .join('; ');

/** @returns all the seams below a node as text, each with its partners' order left out: which cloth is joined where */
function sewing(node: Assembly, by: (p: P) => P): string {
  const seams = node.seams.map((s) => `${spanText([[by(exactly(s.from)), by(exactly(s.to))]])}${s.partial ? ' partial' : ''}`).sort();
  const parts = node.parts.map((part) => sewing(part, by)).sort();
  return `[${outlineText(outlineOf(node).map(by))}|${seams.join(',')}|${parts.join('')}]`;
}

const unmoved = (p: P): P => p;

/** Units: a place is the first place turned as it says and moved, cloth by cloth. */
export function placeFaults({ units }: Piecing): readonly string[] {
  return units.flatMap((unit) => {
    const first = unit.places[0]!;
    return unit.places.flatMap(({ assembly, turn }, i) => {
      const wrong: string[] = [];
      const by =
        (quarter: number) =>
        (p: P): P =>
          taken(p, moving(outlineOf(first.assembly), outlineOf(assembly), quarter));
      const name = `unit ${unit.id}, place ${i}`;
      if (assembly.kind !== unit.kind) wrong.push(`${name} is a ${assembly.kind}, not a ${unit.kind}`);
      if (picture(assembly, unmoved) !== picture(first.assembly, by(turn))) wrong.push(`${name} is not the first one turned ${turn} times`);
      const alike = [0, 1, 2, 3].filter((quarter) => sewing(assembly, unmoved) === sewing(first.assembly, by(quarter)));
      // A unit that looks the same turned may be sewn from another side.
      if (!alike.some((quarter) => picture(first.assembly, by(quarter)) === picture(assembly, unmoved)))
        wrong.push(`${name} is sewn another way than the first`);
      return wrong;
    });
  });
}

/** The books: every named node but the block is a place of just one unit, and the figures count what is there. */
export function figureFaults({ root, pieces, units, figures }: Piecing): readonly string[] {
  const wrong: string[] = [];
  const nodes = nodesOf(root);
  const named = nodes.filter((node) => node !== root && node.kind && node.kind !== 'square' && node.kind !== 'rectangle');
  const places = units.flatMap((unit) => unit.places.map((place) => place.assembly));
  if (named.length !== places.length || named.some((node) => !places.includes(node))) wrong.push('the units are not the named nodes');
  const leaves = leavesOf(root);
  if (leaves.length !== pieces.length || leaves.some((piece) => !pieces.includes(piece))) wrong.push('the pieces are not the leaves');
  const seams = nodes.flatMap((node) => node.seams);
  const counted = {
    pieces: leaves.length,
    seams: seams.length,
    partialSeams: seams.filter((s) => s.partial).length,
    setInSeams: 0,
    units: places.length,
    differentUnits: units.length,
    templates: leaves.filter((piece) => !isRulerCut(outlineOf(piece))).length,
    matchedPoints: nodes.reduce((sum, node) => sum + matchedPoints(node), 0),
  };
  const { bound, ...rest } = figures;
  if (JSON.stringify(counted) !== JSON.stringify(rest)) wrong.push(`figures ${JSON.stringify(rest)}, counted ${JSON.stringify(counted)}`);
  if (bound !== undefined && bound > leaves.length) wrong.push(`${leaves.length} pieces, said to be at least ${bound}`);
  if (seams.length !== leaves.length - 1) wrong.push(`${leaves.length} pieces with ${seams.length} seams`);
  const areas = units.map((unit) => areaOf(outlineOf(unit.places[0]!.assembly)));
  if (areas.some((area, i) => i > 0 && order(areas[i - 1]!, area) > 0)) wrong.push('the units are not smallest first');
  return wrong;
}

/** @returns the scalar product of p → q and p → r, as a fraction that may be compared with 0 */
function scalar(p: P, a: P, b: P): Q {
  const [u, v] = [a, b].map((to) => [minus(xOf(to), xOf(p)), minus(yOf(to), yOf(p))] as const) as [readonly [Q, Q], readonly [Q, Q]];
  return add(times(u[0], v[0]), times(u[1], v[1]));
}

/** @returns whether ruler and rotary cutter make this piece: a rectangle, half a level one, or a quarter of a level square (common practice) */
export function isRulerCut(outline: readonly P[]): boolean {
  const n = outline.length;
  const at = (i: number): P => outline[(i + n) % n]!;
  const right = outline.flatMap((p, i) => (scalar(p, at(i - 1), at(i + 1)).n === 0n ? [i] : []));
  if (n === 4) return right.length === 4;
  if (n !== 3 || right.length === 0) return false;
  const [corner, before, after] = [at(right[0]!), at(right[0]! - 1), at(right[0]! + 1)];
  const level = (p: P, r: P): boolean => order(xOf(p), xOf(r)) === 0 || order(yOf(p), yOf(r)) === 0;
  const equal = order(scalar(corner, before, before), scalar(corner, after, after)) === 0;
  return level(corner, after) || (equal && level(before, after));
}

/** @returns the points along a join's seams where pieces on both sides have a corner, the ends of the seams left out */
function matchedPoints({ parts, seams }: Assembly): number {
  return seams.reduce((sum, seam, i) => {
    const [from, to] = [exactly(seam.from), exactly(seam.to)];
    const cornersOn = (nodes: readonly Assembly[]): ReadonlySet<string> =>
      new Set(
        nodes
          .flatMap(leavesOf)
          .flatMap(outlineOf)
          .filter((p) => isOn(p, from, to) && !same(p, from) && !same(p, to))
          .map(nameOf),
      );
    const [done, next] = [cornersOn(parts.slice(0, i + 1)), cornersOn([parts[i + 1]!])];
    return sum + [...next].filter((name) => done.has(name)).length;
  }, 0);
}

/** Shares of each unit's area that its pieces have, largest first (common practice of the trade). */
const SHARES: Partial<Record<UnitKind, string>> = {
  'half-square triangle': '1/2 1/2',
  'half-rectangle triangle': '1/2 1/2',
  'quarter-square triangle': '1/4 1/4 1/4 1/4',
  'split quarter-square triangle': '1/2 1/4 1/4',
  'flying geese': '1/2 1/4 1/4',
  peak: '1/2 1/4 1/4',
  'square in a square': '1/2 1/8 1/8 1/8 1/8',
};

/** Kinds: a unit has the pieces that its name promises. */
export function kindFaults({ units }: Piecing): readonly string[] {
  return units.flatMap(({ id, kind, places }) => {
    const { assembly } = places[0]!;
    const pieces = leavesOf(assembly).map(outlineOf);
    const outline = outlineOf(assembly);
    const whole = areaOf(outline);
    const shares = pieces
      .map((p) => q(areaOf(p).n * whole.d, areaOf(p).d * whole.n))
      .sort((a, b) => order(b, a))
      .map(printed)
      .join(' ');
    const wanted = SHARES[kind];
    if (wanted && shares !== wanted) return [`unit ${id}, a ${kind}, has shares ${shares}`];
    if (kind === 'corner-triangle unit') {
      const corners = pieces.filter((p) => p.length === 3 && outline.some((c) => p.some((r) => same(c, r))) && isCorner(p, outline));
      if (corners.length !== pieces.length - 1 || corners.length > 4)
        return [`unit ${id}, a ${kind}, has ${pieces.length} pieces, ${corners.length} of them corners`];
    }
    return [];
  });
}

/** @returns whether a triangle is a rectangle's corner with two equal legs along its sides */
function isCorner(triangle: readonly P[], rectangle: readonly P[]): boolean {
  return triangle.some((corner, i) => {
    const legs = [triangle[(i + 1) % 3]!, triangle[(i + 2) % 3]!];
    const length = (p: P): Q => total([minus(xOf(p), xOf(corner)), minus(yOf(p), yOf(corner))].map((v) => q(v.n < 0n ? -v.n : v.n, v.d)));
    const along = legs.every((p) =>
      rectangle.some((a, k) => {
        const b = rectangle[(k + 1) % rectangle.length]!;
        return isOn(p, a, b) && isOn(corner, a, b);
      }),
    );
    return rectangle.some((c) => same(c, corner)) && along && order(length(legs[0]!), length(legs[1]!)) === 0;
  });
}
