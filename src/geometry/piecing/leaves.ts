import { rectangle, type Convex } from '../convex.ts';
import { samePoint, type Point } from '../point.ts';
import { needsTemplate, shapeOf } from '../shape.ts';
import type { Label } from '../patchwork/patchwork.ts';
import { recognise, type Rect, type Recognised } from './catalogue.ts';
import type { UnitKind } from './assembly.ts';
import type { ContentOf } from './content.ts';
import { boundariesIn, clothAt, rectOf, slantsInside, type Field } from './field.ts';
import { freeCandidates, type Cells } from './clusters.ts';
import { cutInOrder, searchFreely } from './free-search.ts';
import type { LeafClass, Weights } from './price.ts';
import { rectCount, rectId } from './rect-id.ts';
import { ofKind, type Tree } from './tree.ts';

/** Every rectangle of cells that is sewn as one thing, with its class. */
export interface Leaves {
  readonly field: Field;
  readonly classes: readonly LeafClass[];
  /** Class of each rectangle of cells by rectId; −1 where it is no leaf. */
  readonly classOf: Int32Array;
  /**
   * Looks into free units: until then what they are made of is the least they can be made of.
   * @returns whether any of these classes had not been looked into
   */
  settle(classes: Iterable<number>): boolean;
  /** @returns how a leaf comes apart */
  treeOf(cells: Cells): Tree;
}

/** What one of a class is made of. */
type Made = Pick<LeafClass, 'pieces' | 'templates' | 'corners' | 'rounds'>;

const ONE_PIECE = { pieces: 1, templates: 0, corners: 0, rounds: 0 };

/** Pieces of cloth in a unit of the catalogue; a corner-triangle unit has a base and its corners. */
const PIECES: Readonly<Partial<Record<UnitKind, number>>> = {
  'half-square triangle': 2,
  'quarter-square triangle': 4,
  'split quarter-square triangle': 3,
  'flying geese': 3,
  'square in a square': 5,
  'half-rectangle triangle': 2,
  peak: 3,
};

/** In fields of more rectangles, every free unit is looked into at once: there it is longer to search the whole again for one. */
const LOOKED_INTO_LATER = 20_000;

/** How many choices the search inside one free unit may examine. */
const FREE_BUDGET = 400;

/**
 * @param shows tells rectangles of cells apart by what they show, cloth and all, up to quarter turns
 * @returns all leaves of a field: plain rectangles, units of the catalogue, and free units where nothing else fits
 */
export function leavesIn(field: Field, weights: Weights, shows: ContentOf): Leaves {
  const freePieceCost = (region: Convex): number => (needsTemplate(region.points) ? weights.template : weights.freePiece);
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  const classOf = new Int32Array(rectCount(field)).fill(-1);
  const classes: LeafClass[] = [];
  /** Classes of units by what they show, and of plain rectangles by cloth and then by size. */
  const byPicture = new Map<number, number>();
  const plain = new Map<string, Map<number, number>>();
  const trees = new Map<number, Tree>();

  const plainClass = (label: Label, rect: Rect): number => {
    const [w, h] = [rect.x1 - rect.x0, rect.y1 - rect.y0];
    const [short, long] = [Math.min(w, h), Math.max(w, h)];
    let sizes = plain.get(label.fabric);
    if (!sizes) plain.set(label.fabric, (sizes = new Map()));
    // No side is longer than 65,536 steps.
    const size = short * 0x20000 + long;
    let found = sizes.get(size);
    if (found === undefined) {
      sizes.set(size, (found = classes.length));
      classes.push({ kind: w === h ? 'square' : 'rectangle', size: `${short} ${long}`, ...ONE_PIECE, module: short, alone: false });
    }
    return found;
  };
  const idOf = ({ i0, j0, i1, j1 }: Cells): number => rectId(n, i0, j0, i1, j1);
  const unitClass = (cells: Cells, picture: number, kind: UnitKind, make: () => Made): number => {
    const alone = drawnRound(field, cells);
    let c = byPicture.get(picture);
    if (c === undefined) {
      byPicture.set(picture, (c = classes.length));
      const { x0, y0, x1, y1 } = rectOf(field, cells.i0, cells.j0, cells.i1, cells.j1);
      const [w, h] = [x1 - x0, y1 - y0];
      const made = make();
      const size = `${kind} ${made.corners} ${Math.min(w, h)} ${Math.max(w, h)}`;
      classes.push({ kind, size, module: Math.min(w, h), ...made, alone });
    } else if (!alone && classes[c]!.alone) classes[c] = { ...classes[c]!, alone };
    return c;
  };
  /** What is recognised, by what is shown; null: nothing. */
  const known = new Map<number, Recognised | null>();

  for (let i1 = 1; i1 <= m; i1++) {
    for (let i0 = 0; i0 < i1; i0++) {
      for (let j1 = 1; j1 <= n; j1++) {
        for (let j0 = 0; j0 < j1; j0++) {
          const slanted = field.slantsIn(i0, j0, i1, j1);
          // A unit's seams cross at most this many cells: two diagonals, or four corners.
          if (slanted > 2 * (i1 - i0 + j1 - j0) || field.edgesIn(i0, j0, i1, j1) > 0) continue;
          const id = rectId(n, i0, j0, i1, j1);
          const rect = rectOf(field, i0, j0, i1, j1);
          if (slanted === 0) {
            classOf[id] = plainClass(clothAt(field, i0, j0), rect);
            continue;
          }
          const picture = shows(i0, j0, i1, j1);
          let recognised = known.get(picture);
          if (recognised === undefined) known.set(picture, (recognised = recognise(rect, slantsInside(field, i0, j0, i1, j1))));
          if (!recognised) continue;
          const { kind, corners } = recognised;
          classOf[id] = unitClass({ i0, j0, i1, j1 }, picture, kind, () => ({ ...ONE_PIECE, pieces: PIECES[kind] ?? 1 + corners, corners }));
        }
      }
    }
  }
  const open = freeCandidates(field).filter((cells) => classOf[idOf(cells)]! < 0);
  const pictureOf = ({ i0, j0, i1, j1 }: Cells): number => shows(i0, j0, i1, j1);
  const freeTree = (cells: Cells): Tree | null => {
    const { i0, j0, i1, j1 } = cells;
    const id = idOf(cells);
    let tree = trees.get(id);
    if (tree) return tree;
    const found = searchFreely(field.patchwork, boundariesIn(field, i0, j0, i1, j1), regionOf(rectOf(field, i0, j0, i1, j1)), freePieceCost, FREE_BUDGET);
    if (!found || found.tree.form !== 'cut') return null;
    tree = ofKind(found.tree, 'free unit');
    trees.set(id, tree);
    return tree;
  };
  const made = (tree: Tree): Made => {
    const outlines = outlinesOf(tree);
    return { pieces: outlines.length, templates: outlines.filter(needsTemplate).length, corners: 0, rounds: roundsOf(tree) };
  };
  /** The first place of each class of free units that is not looked into yet. */
  const unseen = new Map<number, Cells>();
  for (const cells of open) {
    if (field.patchwork.anyWhole || classOf.length > LOOKED_INTO_LATER) {
      const tree = freeTree(cells);
      if (tree) classOf[idOf(cells)] = unitClass(cells, pictureOf(cells), 'free unit', () => made(tree));
    } else {
      const count = classes.length;
      const c = (classOf[idOf(cells)] = unitClass(cells, pictureOf(cells), 'free unit', () => leastOf(field, cells, weights)));
      if (c === count) unseen.set(c, cells);
    }
  }
  return {
    field,
    classes,
    classOf,
    settle: (wanted) => {
      const before = unseen.size;
      for (const c of wanted) {
        const cells = unseen.get(c);
        if (!cells) continue;
        unseen.delete(c);
        classes[c] = { ...classes[c]!, ...made(freeTree(cells)!) };
      }
      return unseen.size < before;
    },
    treeOf: (cells) => {
      const { i0, j0, i1, j1 } = cells;
      const id = idOf(cells);
      let tree = trees.get(id);
      if (!tree) {
        const { kind } = classes[classOf[id]!]!;
        const rect = rectOf(field, i0, j0, i1, j1);
        if (kind === 'free unit') tree = freeTree(cells)!;
        else if (kind === 'square' || kind === 'rectangle') tree = { form: 'piece', region: regionOf(rect), label: clothAt(field, i0, j0) };
        else tree = unitTree(field, cells, recognise(rect, slantsInside(field, i0, j0, i1, j1))!);
        trees.set(id, tree);
      }
      return tree;
    },
  };
}

/** @returns the least that a free unit can be made of: every line drawn in it is cut along, each seam adding a piece */
function leastOf(field: Field, { i0, j0, i1, j1 }: Cells, weights: Weights): Made {
  const slants = slantsInside(field, i0, j0, i1, j1);
  const { x0, y0, x1, y1 } = rectOf(field, i0, j0, i1, j1);
  const onEdge = (p: Point): boolean => p.x === x0 * p.w || p.x === x1 * p.w || p.y === y0 * p.w || p.y === y1 * p.w;
  let [lines, through] = [new Set(slants.map(({ line }) => line)).size, false];
  for (let i = i0 + 1; i < i1; i++) {
    if (field.uprightTouched(i, j0, j1)) lines++;
    through ||= field.uprightDrawn(i, j0, j1) === j1 - j0;
  }
  for (let j = j0 + 1; j < j1; j++) {
    if (field.levelTouched(j, i0, i1)) lines++;
    through ||= field.levelDrawn(j, i0, i1) === i1 - i0;
  }
  // Rounds of corner triangles begin with four that meet, each along a line drawn from edge to edge.
  const ends = slants.flatMap(({ from, to }) => (onEdge(from) && onEdge(to) ? [from, to] : []));
  const round = ends.filter((p, i) => ends.some((q, k) => k !== i && samePoint(p, q))).length === 8;
  const rounds = !through && lines % 4 === 0 && round ? lines / 4 : 0;
  return { pieces: lines + 1, templates: weights.template < weights.freePiece ? lines + 1 : 0, corners: 0, rounds };
}

const outlinesOf = (tree: Tree): readonly (readonly Point[])[] =>
  tree.form === 'piece' ? [tree.region.points] : tree.form === 'cut' ? [...outlinesOf(tree.front), ...outlinesOf(tree.back)] : [];

/** @returns how many rounds of four corner triangles a tree takes off, down to one square piece; 0 when it is anything else */
function roundsOf(tree: Tree): number {
  let [inner, taken] = [tree, 0];
  while (inner.form === 'cut') {
    const [a, b]: readonly Tree[] = [inner.front, inner.back];
    const isCorner = (part: Tree): boolean => part.form === 'piece' && part.region.points.length === 3 && !needsTemplate(part.region.points);
    if (isCorner(a!)) inner = b!;
    else if (isCorner(b!)) inner = a!;
    else return 0;
    taken++;
  }
  const square = inner.form === 'piece' && shapeOf(inner.region.points).shape === 'rectangle';
  return square && taken % 4 === 0 ? taken / 4 : 0;
}

/** @returns whether a seam is drawn, or the block ends, all round a rectangle of cells */
function drawnRound(field: Field, { i0, j0, i1, j1 }: Cells): boolean {
  const [m, n] = [field.xs.length - 1, field.ys.length - 1];
  return (
    (i0 === 0 || field.uprightDrawn(i0, j0, j1) === j1 - j0) &&
    (i1 === m || field.uprightDrawn(i1, j0, j1) === j1 - j0) &&
    (j0 === 0 || field.levelDrawn(j0, i0, i1) === i1 - i0) &&
    (j1 === n || field.levelDrawn(j1, i0, i1) === i1 - i0)
  );
}

const regionOf = ({ x0, y0, x1, y1 }: Rect): Convex => rectangle(x0, y0, x1, y1);

/** @returns how a recognised unit comes apart, along its lines in their order */
function unitTree(field: Field, { i0, j0, i1, j1 }: Cells, { kind, lines }: Recognised): Tree {
  const drawn = slantsInside(field, i0, j0, i1, j1).map(({ line, from, to }) => ({ line, stretches: [{ from, to }] }));
  const along = (order: typeof lines): Tree => cutInOrder(field.patchwork, regionOf(rectOf(field, i0, j0, i1, j1)), drawn, order);
  let tree = along(lines);
  if (kind === 'quarter-square triangle') {
    // Either diagonal may be sewn last: the same one in mirror images, so that these come from the same squares.
    const other = along([...lines].reverse());
    if (halvesText(other) < halvesText(tree)) tree = other;
  }
  return tree.form === 'cut' ? ofKind(tree, kind) : tree;
}

/** @returns the fabrics that the last seam joins, half by half, whichever way round they lie */
function halvesText(tree: Tree): string {
  const fabrics = (part: Tree): readonly string[] =>
    part.form === 'piece' ? [part.label.fabric] : part.form === 'cut' ? [...fabrics(part.front), ...fabrics(part.back)] : [];
  const halves = tree.form === 'cut' ? [tree.front, tree.back].map((half) => [...fabrics(half)].sort().join('+')) : [];
  return halves.sort().join(' x ');
}
