import { box, sameOutline } from '../convex.ts';
import type { Point } from '../point.ts';
import type { Assembly, Piece, Unit, UnitKind } from './assembly.ts';
import { Congruences, copied, piecesOf, placementOnto, type Turn } from './congruence.ts';

const KIND_ORDER: readonly UnitKind[] = [
  'half-square triangle',
  'quarter-square triangle',
  'split quarter-square triangle',
  'flying geese',
  'corner-triangle unit',
  'square in a square',
  'half-rectangle triangle',
  'peak',
  'free unit',
  'partial-seam ring',
  'joined unit',
  'square',
  'rectangle',
];

/**
 * Makes congruent units come apart alike: each is a turned copy of the first, so that "make 4" is true of the sewing too.
 * @param congruence may know assemblies from before
 * @returns the same assembly of the same pieces
 */
export function alike(root: Assembly, congruence = new Congruences()): Assembly {
  const first = new Map<string, { readonly assembly: Assembly; readonly turn: Turn }>();
  const walk = (node: Assembly, outermost: boolean): Assembly => {
    if (node.kind && !outermost) {
      const { key, turn } = congruence.of(node);
      const known = first.get(key);
      if (known) {
        const placement = placementOnto(known.assembly, node, ((known.turn - turn + 4) % 4) as Turn);
        return copied(known.assembly, placement, pieceFinder(piecesOf(node)), congruence);
      }
      const own = { ...node, parts: node.parts.map((part) => walk(part, false)) };
      congruence.turned(node, own, 0);
      first.set(key, { assembly: own, turn });
      return own;
    }
    return node.piece ? node : { ...node, parts: node.parts.map((part) => walk(part, false)) };
  };
  return walk(root, true);
}

/** @returns what finds a piece by its outline, wherever that begins */
function pieceFinder(pieces: readonly Piece[]): (outline: readonly Point[]) => Piece {
  const byCorners = new Map(pieces.map((piece) => [cornerSum(piece.outline), piece]));
  return (outline) => {
    const likely = byCorners.get(cornerSum(outline));
    const found = likely && sameOutline(likely.outline, outline) ? likely : pieces.find((piece) => sameOutline(piece.outline, outline));
    if (!found) throw new Error('a congruent unit has other pieces');
    return found;
  };
}

/** @returns a number that is the same for the same outline; hardly ever for another one beside it */
function cornerSum(outline: readonly Point[]): number {
  let sum = 0;
  for (const { x, y, w } of outline) sum += 0x10001 * x * x + y * y + w;
  return sum;
}

/** @returns A, B, … Z, AA, AB, … for 0, 1, … */
export function unitLetter(index: number): string {
  const rest = Math.floor(index / 26) - 1;
  return (rest >= 0 ? unitLetter(rest) : '') + String.fromCharCode(65 + (index % 26));
}

/**
 * Names the units of an assembly that was made alike.
 * @param congruence may know assemblies from before
 * @returns every named unit but the block itself, the smallest first
 */
export function unitsOf(root: Assembly, congruence = new Congruences()): readonly Unit[] {
  interface Found {
    readonly key: string;
    readonly kind: UnitKind;
    readonly turn: Turn;
    readonly pieces: number;
    readonly area: number;
    readonly places: { assembly: Assembly; turn: Turn }[];
  }
  const found = new Map<string, Found>();
  const walk = (node: Assembly, outermost: boolean): void => {
    if (node.kind && !outermost) {
      const { key, turn } = congruence.of(node);
      let unit = found.get(key);
      if (!unit) {
        const { left, right, top, bottom } = box(node.outline);
        const area = (right.x / right.w - left.x / left.w) * (bottom.y / bottom.w - top.y / top.w);
        found.set(key, (unit = { key, kind: node.kind, turn, pieces: piecesOf(node).length, area, places: [] }));
      }
      unit.places.push({ assembly: node, turn: ((unit.turn - turn + 4) % 4) as Turn });
    }
    node.parts.forEach((part) => walk(part, false));
  };
  walk(root, true);
  // A unit is never larger than one it is part of: by area, then pieces, simple kinds first.
  const ordered = [...found.values()].sort(
    (a, b) => a.area - b.area || a.pieces - b.pieces || KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind),
  );
  return ordered.map(({ key, kind, places }, i) => ({ id: unitLetter(i), kind, key, places }));
}
