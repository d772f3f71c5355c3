import { box } from '../convex.ts';
import { compareX, compareY } from '../point.ts';
import { shapeOf } from '../shape.ts';
import type { Assembly, Piecing, SewnSeam } from './assembly.ts';
import { figuresOf } from './figures.ts';

/** Plain rectangles that reach right through a unit: what comes of long strips, sewn side by side and cut across. */
export interface StripRow {
  /** 'row': side by side, from left to right; 'column': under one another, from top to bottom. */
  readonly lie: 'row' | 'column';
  /** The pieces, in that order. */
  readonly parts: readonly Assembly[];
}

/** @returns the row or column of plain rectangles that a unit is, whatever smaller units it is joined of; null where it is none */
export function stripRowOf(unit: Assembly): StripRow | null {
  const parts = leavesOf(unit);
  if (parts.length < 2 || !parts.every(({ outline }) => isLevelRectangle(outline))) return null;
  const whole = box(unit.outline);
  const boxes = new Map(parts.map((part) => [part, box(part.outline)]));
  const inOrder = (order: typeof compareX, begin: 'left' | 'top'): readonly Assembly[] =>
    parts.toSorted((a, b) => order(boxes.get(a)![begin], boxes.get(b)![begin]));
  const all = [...boxes.values()];
  if (all.every(({ top, bottom }) => compareY(top, whole.top) === 0 && compareY(bottom, whole.bottom) === 0)) {
    return { lie: 'row', parts: inOrder(compareX, 'left') };
  }
  if (all.every(({ left, right }) => compareX(left, whole.left) === 0 && compareX(right, whole.right) === 0)) {
    return { lie: 'column', parts: inOrder(compareY, 'top') };
  }
  return null;
}

const leavesOf = (node: Assembly): readonly Assembly[] => (node.piece ? [node] : node.parts.flatMap(leavesOf));

function isLevelRectangle(outline: Assembly['outline']): boolean {
  const shape = shapeOf(outline);
  return shape.shape === 'rectangle' && shape.level;
}

/**
 * @param rows ids of units, 'block' for the whole, that are rows of plain rectangles
 * @returns the same way to sew, these units sewn of their pieces at once: smaller units inside them are not made there, and not at all
 * where they come nowhere else; letters stay
 */
export function sewnInRows(piecing: Piecing, rows: ReadonlySet<string>): Piecing {
  if (rows.size === 0) return piecing;
  const owners = new Map(piecing.units.flatMap(({ id, places }) => places.map(({ assembly }) => [assembly, id] as const)));
  const made = new Map<Assembly, Assembly>();
  const sewn = (node: Assembly): Assembly => {
    if (node.piece) return node;
    const id = node === piecing.root ? 'block' : owners.get(node);
    const now = id !== undefined && rows.has(id) ? inOneRow(node) : { ...node, parts: node.parts.map(sewn) };
    made.set(node, now);
    return now;
  };
  const root = sewn(piecing.root);
  const units = piecing.units.flatMap((unit) => {
    const places = unit.places.flatMap(({ assembly, turn }) => (made.has(assembly) ? [{ assembly: made.get(assembly)!, turn }] : []));
    const first = places[0]?.turn ?? 0;
    return places.length === 0 ? [] : [{ ...unit, places: places.map(({ assembly, turn }) => ({ assembly, turn: ((turn - first + 4) % 4) as typeof turn })) }];
  });
  const { bound } = piecing.figures;
  return { ...piecing, root, units, figures: { ...figuresOf({ root, pieces: piecing.pieces, units }), ...(bound !== undefined && { bound }) } };
}

function inOneRow(unit: Assembly): Assembly {
  const { lie, parts } = stripRowOf(unit)!;
  const seams = parts.slice(1).map(({ outline }): SewnSeam => {
    const { left, right, top, bottom } = box(outline);
    const corner = (x: typeof left, y: typeof top) => outline.find((p) => compareX(p, x) === 0 && compareY(p, y) === 0)!;
    return { from: corner(left, top), to: lie === 'row' ? corner(left, bottom) : corner(right, top) };
  });
  return { ...unit, parts, seams };
}
