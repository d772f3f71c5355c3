import { listed } from '../../../measure/words.ts';
import type { Around, JoinPhrases } from '../joins.ts';
import { pieceName, thingName, thingsName } from './things.ts';

/** @returns "Sea 2 by 4 in. rectangle to the top", "2 × B to the left and the right" */
function around({ thing, count, sides }: Around): string {
  const name =
    count.n === 1 ? thingName(thing) : 'unit' in thing ? `${count.said} × ${thingName(thing)}` : pieceName(thing, true);
  return `${name} to ${listed(sides.map((side) => `the ${side}`))}`;
}

export const joins: JoinPhrases = {
  row: (lie, things) =>
    `Sew in a ${lie}, ${lie === 'row' ? 'left to right' : 'top to bottom'}: ` +
    `${thingsName(things)}.`,
  rounds(centre, turning, rounds) {
    const said = rounds.map((round, i) => `${rounds.length > 1 ? `Round ${i + 1}` : 'Round it'}: ${round.map(around).join(', ')}.`);
    return (
      `Begin with ${thingName(centre)} as the centre${turning ? ` and go round it ${turning}` : ''}. ` +
      `Sew each strip along the whole side of what is there, and press it before the next. ${said.join(' ')}`
    );
  },
  ring: (first, side, centre, even, others) =>
    `Lay ${thingName(first)} along the ${side} of ${thingName(centre)}, right sides together and ${even} edges even; ` +
    `sew from there and stop half way along ${'unit' in centre ? centre.unit : centre.cloth}. Going round, sew ` +
    `${listed(others.map((other) => `${thingName(other.thing)} to the ${other.side}`))}, each along its whole side. ` +
    'Then sew the first seam to its end.',
};
