import { counted } from '../block/counting.ts';
import type { Method } from '../block/choices.ts';
import type { Telling } from '../block/telling.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { CuttingPhrases } from './phrases/cutting-phrases.ts';

/** What a maker should know of a cutting list, by the phrase that says it; units by their letters, or 'block'. */
export type CutNote =
  /**
   * A unit is not cut by the method that was asked for it or for its kind: its corners are of two fabrics, it is no row of plain rectangles
   * that long strips can make, or its kind does not know it.
   */
  | { readonly note: 'otherMethod'; readonly unit: string; readonly kind: UnitKind; readonly asked: Method; readonly taken: Method; readonly why: 'two corners' | 'no strips' | 'not its kind' }
  /** So many mirror images of a unit are made that nothing asks for. */
  | { readonly note: 'mirrorImages'; readonly unit: string; readonly count: number }
  /** Nothing is cut larger of these though there is something to trim off elsewhere: a centre whose edges are seams; pieces round an outline. */
  | { readonly note: 'centreUntrimmed' | 'outlinedUntrimmed'; readonly units: readonly string[] };

/** @returns a note in one sentence, or two */
export function cutNoteText(note: CutNote, telling: Telling, phrases: CuttingPhrases): string {
  const named = (unit: string): string | null => (unit === 'block' ? null : telling.unit(unit));
  if ('units' in note) return phrases[note.note](note.units.map(named));
  if ('count' in note) return phrases.mirrorImages(named(note.unit), counted(note.count, telling));
  return phrases.otherMethod(named(note.unit), telling.kind(note.kind, 'one'), note.asked, note.taken, note.why);
}
