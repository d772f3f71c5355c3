import type { Block } from '../block/block.ts';
import type { Telling } from '../block/telling.ts';
import { wordsFor, worded } from '../sewing/steps.ts';
import { withLayout } from './cloths.ts';
import { divisionText } from './divisions.ts';
import { refusedPin } from './refused-pins.ts';
import type { Language } from './language.ts';
import type { Pattern } from './pattern.ts';
import { cutListAt } from './sizes.ts';
import { KEPT } from './telling/kept.ts';
import { notesOf } from './unmet.ts';
import { warningsOf } from './warnings.ts';

/**
 * @param block the one the pattern is of
 * @param telling how values stand in the sentences; kept alive where absent
 * @returns the same pattern, its cloth laid out as it is there, with every sentence written anew in a language; nothing is searched again.
 * What the proof says of a pattern that does not hold stays as it is
 */
export function told(block: Block, pattern: Pattern, language: Language, telling: Telling = KEPT): Pattern {
  const { choices, lattice, units, unmet } = pattern;
  const { unit } = pattern.block;
  const speech = { language, telling };
  const measure = { step: lattice.step, unit, speech };
  const list = cutListAt(pattern, pattern.block.finished.width);
  const fabrics = pattern.fabrics.map((cloth) => withLayout(cloth, cloth.layout, choices, unit, speech));
  const words = wordsFor(list.cuts, { telling, phrases: language.sewing, unit, seam: choices.seam });
  return {
    ...pattern,
    divisions: pattern.divisions.map((line) => ({ ...line, says: divisionText(line, measure) })),
    steps: worded(pattern.steps, pattern.piecing.units, words),
    fabrics,
    refusedPins: pattern.refusedPins.map((refused) => refusedPin(refused, speech)),
    warnings: warningsOf({ ...pattern, list, fabrics, units: units.map(({ finished }) => finished), speech }),
    notes: notesOf({ unmet, list, fabrics: block.fabrics, cloths: fabrics, withinCloths: pattern.withinCloths }, measure),
    cautions: language.pattern.cautions,
  };
}
