import type { Drawing } from '../geometry/patchwork/drawing.ts';
import { exactly, fraction, minus, NOTHING, order, plus, say, times } from './proof-number.ts';
import type { Fraction } from './proof-number.ts';
import { apart, area, bounds, isConvex, sameOutline, spot } from './proof-outline.ts';
import type { Outline } from './proof-outline.ts';
import { blockArea, blockOutline, boxOf, crosses, drawnPatches, fillsConvex, meets, shownIn } from './proof-drawing.ts';
import type { Shown } from './proof-drawing.ts';
import { neighbours, placedPieces } from './proof-placing.ts';
import type { Placed } from './proof-placing.ts';
import type { Plan, SewnStep, Tell } from './proof-table.ts';

/** Faults of one kind beyond this many are only counted. */
const TOLD_EACH = 8;

/** @returns a teller that tells the first few faults of one kind and counts the rest; `close` tells how many they were */
function counted(tell: Tell, rest: (n: number) => string): { readonly tell: Tell; readonly close: () => void } {
  let n = 0;
  return {
    tell: (fault) => {
      if (n++ < TOLD_EACH) tell(fault);
    },
    close: () => {
      if (n > TOLD_EACH) tell(rest(n - TOLD_EACH));
    },
  };
}

/** @returns where an outline lies in the block: "from 4 across, 0 down to 8 across, 4 down" */
function place(plan: Plan, outline: Outline): string {
  const { left, top, right, bottom } = bounds(outline);
  const length = (f: Fraction): string => say(times(f, exactly(plan.step)));
  return `from ${length(left)} across, ${length(top)} down to ${length(right)} across, ${length(bottom)} down`;
}

/**
 * Lays every piece where the steps bring it and compares with the drawing: the pieces fill the block without gap or overlap,
 * each shows its own fabric everywhere, no whole patch is divided, no patch that lies apart is in one piece with another, and no drawn
 * seam runs through a piece.
 */
export function compareWithDrawing(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  const block = tables.find((table) => table.step.makes === 'block');
  if (!block) return;
  if (block.result && !sameOutline(block.result, blockOutline(plan.drawing)))
    tell(`${block.name} does not come out as large as the drawing.`);
  const laid = placedPieces(tables);
  if (!laid) return tell('The steps multiply their units into more pieces than any block holds.');
  const pieces = laid.filter((piece) => isConvex(piece.outline));
  checkCovering(plan, pieces, tell);
  const shown = checkFabrics(plan, pieces, tell);
  checkWhole(plan.drawing, shown, tell);
  checkApart(plan.drawing, pieces, shown, tell);
  checkDrawnSeams(plan, pieces, shown, tell);
}

/** Areas sum to the block, nothing lies outside it, nothing lies on anything else. */
function checkCovering(plan: Plan, pieces: readonly Placed[], tell: Tell): void {
  const unit = exactly(plan.step);
  const missing = minus(blockArea(plan.drawing), pieces.map((piece) => area(piece.outline)).reduce(plus, NOTHING));
  const size = (f: Fraction): string => say(times(times(f, unit), unit));
  const outlines = pieces.map((piece) => piece.outline);
  const boxes = outlines.map(boxOf);

  const outside = counted(tell, (n) => `So do ${n} more pieces.`);
  for (const piece of pieces) {
    const { left, top, right, bottom } = bounds(piece.outline);
    const past = (f: Fraction, size: number): boolean => order(f, fraction(BigInt(size))) > 0;
    if (left.n < 0n || top.n < 0n || past(right, plan.drawing.width) || past(bottom, plan.drawing.height)) {
      outside.tell(`The ${piece.fabric} piece (${piece.where}) reaches beyond the block: it lies ${place(plan, piece.outline)}.`);
    }
  }
  outside.close();

  const overlaps = counted(tell, (n) => `So do ${n} more pairs of pieces.`);
  for (const [i, j] of neighbours(outlines, boxes)) {
    if (!apart(outlines[i], outlines[j])) {
      overlaps.tell(
        `The ${pieces[i].fabric} piece (${pieces[i].where}) and the ${pieces[j].fabric} piece (${pieces[j].where}) overlap in the block.`,
      );
    }
  }
  overlaps.close();
  if (missing.n > 0n) tell(`The pieces do not fill the block: their areas sum to ${size(missing)} too little.`);
  if (missing.n < 0n) tell(`The pieces do not fit into the block: their areas sum to ${size(minus(NOTHING, missing))} too much.`);
}

/** Each piece shows its own fabric and no other. */
function checkFabrics(plan: Plan, pieces: readonly Placed[], tell: Tell): Shown[][] {
  const { drawing } = plan;
  const patches = drawnPatches(drawing);
  const fabricOf = (patch: number): string => (patch < 0 ? drawing.ground : drawing.patches[patch].fabric);
  const wrong = counted(tell, (n) => `${n} more pieces do not match the drawing.`);
  const shown = pieces.map((piece) => {
    const inPiece = shownIn(piece.outline, patches);
    const others = [...new Set(inPiece.map((s) => fabricOf(s.patch)))].filter((fabric) => fabric !== piece.fabric);
    if (others.length > 0) {
      wrong.tell(
        `The ${piece.fabric} piece (${piece.where}) lies ${place(plan, piece.outline)}, where the drawing shows ${others.join(' and ')}.`,
      );
    }
    return inPiece;
  });
  wrong.close();
  return shown;
}

/** What shows of a patch that must stay whole lies in one piece. */
function checkWhole(drawing: Drawing, shown: readonly (readonly Shown[])[], tell: Tell): void {
  drawing.patches.forEach((patch, index) => {
    if (!patch.whole) return;
    const parts = shown.flatMap((inPiece) => inPiece.filter((s) => s.patch === index));
    if (parts.length < 2) return;
    const name = `Patch ${index + 1} (${patch.fabric}) must stay whole, but`;
    tell(
      fillsConvex(parts.flatMap((part) => part.regions))
        ? `${name} it is sewn from ${parts.length} pieces.`
        : `${name} what shows of it has an inner corner, so it is sewn from ${parts.length} pieces.`,
    );
  });
}

/** What shows of a patch that lies apart is in no piece with anything else, and areas whose roles differ are in no piece together. */
function checkApart({ patches, groundRole = 0 }: Drawing, pieces: readonly Placed[], shown: readonly (readonly Shown[])[], tell: Tell): void {
  const joined = counted(tell, (n) => `So do ${n} more pieces.`);
  shown.forEach((inPiece, i) => {
    const own = inPiece.find(({ patch }) => patch >= 0 && patches[patch].apart);
    if (own && inPiece.length > 1) joined.tell(`The ${pieces[i].fabric} piece (${pieces[i].where}) joins patch ${own.patch + 1}, which lies apart, to others.`);
    const roles = new Set(inPiece.map(({ patch }) => (patch < 0 ? groundRole : (patches[patch].role ?? 0))));
    if (roles.size > 1) joined.tell(`The ${pieces[i].fabric} piece (${pieces[i].where}) joins areas between which a seam was to stay.`);
  });
  joined.close();
}

/** A drawn seam is sewn wherever no whole patch forbids it. */
function checkDrawnSeams(plan: Plan, pieces: readonly Placed[], shown: readonly (readonly Shown[])[], tell: Tell): void {
  const { drawing } = plan;
  const boxes = drawing.seams.length > 0 ? pieces.map((piece) => boxOf(piece.outline)) : [];
  for (const ends of drawing.seams) {
    const [a, b] = ends.map(([x, y]) => spot(BigInt(x), BigInt(y)));
    const [left, right] = [ends[0][0], ends[1][0]].sort((p, q) => p - q);
    const [top, bottom] = [ends[0][1], ends[1][1]].sort((p, q) => p - q);
    // One step more on every side: a seam along a grid line has no width of its own.
    const near = { left: left - 1, right: right + 1, top: top - 1, bottom: bottom + 1 };
    const through = pieces.find(
      (piece, i) =>
        meets(boxes[i], near) && !shown[i].some((s) => s.patch >= 0 && drawing.patches[s.patch].whole) && crosses(piece.outline, a, b),
    );
    if (!through) continue;
    const [from, to] = ends.map(([x, y]) => [x, y].map((n) => say(times(fraction(BigInt(n)), exactly(plan.step)))));
    const drawn = `from ${from[0]} across, ${from[1]} down to ${to[0]} across, ${to[1]} down`;
    tell(`The seam drawn ${drawn} is not sewn: it runs through ${through.where}.`);
  }
}
