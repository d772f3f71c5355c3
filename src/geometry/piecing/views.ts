import { leastCorner } from '../convex.ts';
import { compareAlong, type Point } from '../point.ts';
import { isStill, mirrors, taken, takenOutline, turnOf, type Symmetry } from '../patchwork/symmetry.ts';
import type { Assembly, Piece } from './assembly.ts';
import type { Congruences } from './congruence.ts';

const beginning = ({ outline }: Assembly): Point => outline[leastCorner(outline)]!;

/** An assembly with its pieces by id. */
export interface Sewn {
  readonly root: Assembly;
  readonly pieces: readonly Piece[];
}

/**
 * @param congruence comes to know what a turned assembly is like; of mirror images it is to find out by itself
 * @returns an assembly and its pieces after a symmetry; the very same assembly where nothing moves
 */
export function inView({ root, pieces }: Sewn, view: Symmetry, congruence: Congruences): Sewn {
  const turn = mirrors(view) ? null : turnOf(view);
  const still = isStill(view);
  const moved = still ? pieces : pieces.map((piece): Piece => ({ ...piece, outline: takenOutline(view, piece.outline) }));
  const walk = (node: Assembly): Assembly => {
    const parts = node.parts.map(walk);
    const seams = still ? node.seams : node.seams.map((seam) => ({ ...seam, from: taken(view, seam.from), to: taken(view, seam.to) }));
    // Rows still read from left to right and from top to bottom; a ring keeps its centre first.
    const backwards = node.kind !== 'partial-seam ring' && parts.length > 1 && compareAlong(beginning(parts[0]!), beginning(parts.at(-1)!)) > 0;
    if (still && !backwards && parts.every((part, i) => part === node.parts[i])) return node;
    const now: Assembly = {
      ...node,
      outline: still ? node.outline : takenOutline(view, node.outline),
      ...(node.piece ? { piece: moved[node.piece.id]! } : {}),
      parts: backwards ? parts.reverse() : parts,
      seams: backwards ? seams.toReversed() : seams,
    };
    if (node.kind && node !== root && turn !== null) congruence.turned(node, now, turn);
    return now;
  };
  return { root: walk(root), pieces: moved };
}
