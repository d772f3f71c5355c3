import type { Block } from '../block/block.ts';
import { divisionInks } from '../canvas/draw-sewing.ts';
import type { GridOutline } from '../canvas/gesture.ts';
import type { Assembly } from '../geometry/piecing/assembly.ts';
import type { Remedy } from '../measure/problem.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { createStore } from './store.ts';

/** Names one line of the pattern sheet: "unit A", "cut 3", "step 5"; "division 2", "remedy 1" and "warning 0" by their indices. */
export type LineName = `unit ${string}` | `cut ${string}` | `step ${number}` | `division ${number}` | `remedy ${number}` | `warning ${number}`;

/** Which pieces of the block belong to which line of the sheet, both ways. */
export interface Threads {
  readonly piecesOf: ReadonlyMap<LineName, ReadonlySet<number>>;
  readonly linesOf: ReadonlyMap<number, ReadonlySet<LineName>>;
}

/** @returns the ids of all pieces sewn into an assembly */
export function piecesIn(assembly: Assembly): number[] {
  return assembly.piece ? [assembly.piece.id] : assembly.parts.flatMap(piecesIn);
}

/** @returns the threads between the lines of a pattern's sheet and the pieces in its drawing */
export function threadsOf(pattern: Pattern): Threads {
  const piecesOf = new Map<LineName, ReadonlySet<number>>();
  for (const { unit } of pattern.units) piecesOf.set(`unit ${unit.id}`, new Set(unit.places.flatMap((place) => piecesIn(place.assembly))));
  for (const cut of pattern.cuts) piecesOf.set(`cut ${cut.id}`, new Set(cut.pieces));
  for (const step of pattern.steps) piecesOf.set(`step ${step.number}`, new Set(step.pieces));
  pattern.warnings.forEach(({ pieces }, i) => piecesOf.set(`warning ${i}`, new Set(pieces)));
  pattern.divisions.forEach(({ places }, i) => piecesOf.set(`division ${i}`, new Set(places.flatMap(({ pieces }) => pieces))));
  const linesOf = new Map<number, Set<LineName>>();
  for (const [line, pieces] of piecesOf) {
    for (const piece of pieces) {
      const lines = linesOf.get(piece);
      if (lines) lines.add(line);
      else linesOf.set(piece, new Set([line]));
    }
  }
  return { piecesOf, linesOf };
}

/**
 * @param line the one that is lit
 * @returns where in the drawing the line points, in grid units: the ends of seams, and corners; nothing for lines that are about pieces alone
 */
export function placesOf(
  line: LineName | null,
  pattern: Pattern | null,
  remedies: readonly Remedy[],
  grid: Block['grid'],
): readonly GridOutline[] {
  const [kind, index] = line?.split(' ') ?? [];
  if (kind === 'remedy') return remedies[Number(index)]?.places ?? [];
  if (kind !== 'division' || !pattern) return [];
  return divisionInks({ ...pattern, divisions: pattern.divisions.slice(Number(index), Number(index) + 1) }, grid);
}

export interface Lights {
  /** The line under the pointer or with the focus. */
  readonly passing: LineName | null;
  /** The line that stays lit until it is pressed again. */
  readonly kept: LineName | null;
  /** The lines the place under the pointer or the cell cursor belongs to. */
  readonly marked: ReadonlySet<LineName>;
  /** Whether the list of seams that run through one fabric is unfolded: then the drawing shows them all. */
  readonly divisions: boolean;
}

const NONE: ReadonlySet<LineName> = new Set();

export const lights = createStore<Lights>({ passing: null, kept: null, marked: NONE, divisions: false });

/** Lights a line's pieces while the pointer or the focus is on it; null when it leaves. */
export function passOver(line: LineName | null): void {
  lights.change((now) => (now.passing === line ? now : { ...now, passing: line }));
}

/** Shows all seams that run through one fabric, or only those of the line that is lit. */
export function showDivisions(divisions: boolean): void {
  lights.change((now) => (now.divisions === divisions ? now : { ...now, divisions }));
}

/** Keeps a line lit, or lets it go if it was kept. */
export function keepLit(line: LineName): void {
  lights.change((now) => ({ ...now, kept: now.kept === line ? null : line }));
}

/** Marks the lines that the given pieces belong to. */
export function markLines(threads: Threads | null, pieces: readonly number[]): void {
  const lines = new Set<LineName>();
  if (threads) for (const piece of pieces) for (const line of threads.linesOf.get(piece) ?? NONE) lines.add(line);
  lights.change((now) => {
    const same = now.marked.size === lines.size && [...lines].every((line) => now.marked.has(line));
    return same ? now : { ...now, marked: lines.size === 0 ? NONE : lines };
  });
}

/** @returns the one line whose pieces are lit now */
export const litLine = (now: Lights): LineName | null => now.passing ?? now.kept;
