import type { Fabric, LatticePoint } from '../block/block.ts';
import type { Method } from '../block/choices.ts';
import { cutNoteText, type CutNote } from '../cutting/notes.ts';
import type { Cut } from '../cutting/cut.ts';
import type { AssemblyOrder } from '../geometry/piecing/order.ts';
import type { Way } from '../geometry/piecing/way.ts';
import { clothNotes } from './cloths.ts';
import { upsideDownNotes } from './cutting-choices.ts';
import type { Cloth } from './pattern.ts';
import { pointText, type Measure } from './places.ts';
import { withinClothText, type WithinCloth } from './within-cloth.ts';

/** What was chosen and comes to nothing; points in lattice steps. */
export type Unmet =
  | { readonly what: 'way'; readonly asked: Way; readonly taken: Way }
  | { readonly what: 'assembly'; readonly asked: AssemblyOrder }
  | { readonly what: 'method'; readonly method: Method; readonly from: LatticePoint; readonly to: LatticePoint }
  | { readonly what: 'pressing'; readonly from: LatticePoint; readonly to: LatticePoint };

/** @returns what was chosen and comes to nothing, in one sentence */
export function unmetText(unmet: Unmet, measure: Measure): string {
  const phrases = measure.speech.language.pattern;
  const place = ([x, y]: LatticePoint): string => pointText({ x, y, w: 1 }, measure);
  switch (unmet.what) {
    case 'way':
      return phrases.noSuchWay(unmet.asked, unmet.taken);
    case 'assembly':
      return phrases.notAssembled(unmet.asked);
    case 'method': {
      const [[left, top], [right, bottom]] = [unmet.from, unmet.to];
      const corner = (of: (a: number, b: number) => number): string => place([of(left, right), of(top, bottom)]);
      return phrases.lostMethod(unmet.method, corner(Math.min), corner(Math.max));
    }
    case 'pressing':
      return phrases.lostPressing(place(unmet.from), place(unmet.to));
  }
}

/** What the notes of a pattern are written from. */
export interface Noted {
  readonly unmet: readonly Unmet[];
  readonly list: { readonly cuts: readonly Cut[]; readonly notes: readonly CutNote[] };
  readonly fabrics: readonly Fabric[];
  readonly cloths: readonly Cloth[];
  readonly withinCloths: readonly WithinCloth[];
}

/** @returns what a maker should know before cutting: one sentence each */
export function notesOf({ unmet, list: { cuts, notes }, fabrics, cloths, withinCloths }: Noted, measure: Measure): readonly string[] {
  const { speech } = measure;
  return [
    ...unmet.map((one) => unmetText(one, measure)),
    ...notes.map((note) => cutNoteText(note, speech.telling, speech.language.cutting)),
    ...withinCloths.map((one) => withinClothText(one, measure)),
    ...upsideDownNotes(cuts, fabrics, speech),
    ...cloths.flatMap((cloth) => clothNotes(cloth, cuts.filter(({ fabric }) => fabric === cloth.fabric.id), speech, measure.unit)),
  ];
}
