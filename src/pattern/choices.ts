import type { Block, LengthUnit } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { rational, ZERO, type Rational } from '../measure/rational.ts';

/**
 * The trade's usual values: 1/4 in. or 0.75 cm seams, 1/8 in. or 1 mm on the ruler, 42 in. or 107 cm of usable cloth, sold by the
 * 1/8 yd or by 10 cm (see DEVELOPERS.md).
 */
const USUAL: Readonly<Record<LengthUnit, Readonly<Record<'seam' | 'ruler' | 'width' | 'shopStep', Rational>>>> = {
  in: { seam: rational(1, 4), ruler: rational(1, 8), width: rational(42), shopStep: rational(9, 2) },
  cm: { seam: rational(3, 4), ruler: rational(1, 10), width: rational(107), shopStep: rational(10) },
};

/** @returns every choice: the ones given, else those saved in the block, else the usual ones for its unit */
export function settled(block: Block, choices: Choices): Required<Choices> {
  const usual = USUAL[block.finished.unit];
  return {
    trim: ZERO,
    method: 'usual',
    methods: {},
    way: 'standard units',
    assembly: 'as found',
    blocks: 1,
    cloths: {},
    squaringUp: ZERO,
    margin: { length: ZERO },
    ...usual,
    ...defined(block.choices ?? {}),
    ...defined(choices),
    ...(block.choices?.methods || choices.methods ? { methods: { ...block.choices?.methods, ...choices.methods } } : {}),
  };
}

/** @returns the choices without those that are there but undefined */
function defined(choices: Choices): Choices {
  return Object.fromEntries(Object.entries(choices).filter(([, value]) => value !== undefined));
}
