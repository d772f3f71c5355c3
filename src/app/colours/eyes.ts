import { filterDeficiencyDeuter, filterDeficiencyProt, filterDeficiencyTrit, formatHex, modeLrgb, modeRgb, parse, useMode } from 'culori/fn';
import { greyOf } from '../../canvas/values.ts';

// Colours are read, and filtered as light, only in the spaces that are asked for: the others stay out of what is fetched.
useMode(modeRgb);
useMode(modeLrgb);

/** Ways to look at a block. */
export interface Eye {
  readonly name: string;
  /** What it is good for, in few words. */
  readonly says: string;
  /** How a colour looks so, as #rrggbb. */
  readonly seen: (color: string) => string;
  /** Whether it is looked at through half-closed eyes. */
  readonly squint?: true;
}

/** The whole strength of a deficiency, by the model of doi 10.1109/TVCG.2009.113 (2009), as culori has it. */
const WHOLLY = 1;

const through = (filter: (severity: number) => <C extends { mode: string }>(color: C) => C): Eye['seen'] => {
  const filtered = filter(WHOLLY) as <C>(color: C) => C;
  return (color) => {
    const read = parse(color);
    return read ? formatHex(filtered(read)) : color;
  };
};

export const EYES: readonly Eye[] = [
  { name: 'As it is', says: 'in its own colours', seen: (color) => color },
  { name: 'Squinted at', says: 'what is left from across the room', seen: (color) => color, squint: true },
  { name: 'Values', says: 'how light each cloth is', seen: greyOf },
  { name: 'Without red', says: 'as eyes without red cones see it (protanopia)', seen: through(filterDeficiencyProt as never) },
  { name: 'Without green', says: 'as eyes without green cones see it (deuteranopia)', seen: through(filterDeficiencyDeuter as never) },
  { name: 'Without blue', says: 'as eyes without blue cones see it (tritanopia)', seen: through(filterDeficiencyTrit as never) },
];
