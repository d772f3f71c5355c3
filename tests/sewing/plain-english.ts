import { formatLength } from '../../src/measure/lengths.ts';
import type { Sewn } from './told.ts';

/* What must be true of the words of all steps of all blocks. Each check returns complaints. */

const SPOILT = [/undefined|null|NaN|Infinity|\[object/, / {2}/, /\.\./, / [.,;:]/, /,,|;;/, /\(\)/, /^\s|\s$/];

const shapesIn = (text: string): readonly string[] => SPOILT.filter((spoilt) => spoilt.test(text)).map(String);

/** Instructions: whole sentences, one full stop each, no word of the machine in them. */
export function spoiltSentences({ steps }: Sewn): readonly string[] {
  return steps.flatMap(({ number, how, text, press }) =>
    [how, text, press].flatMap((words) => [
      ...shapesIn(words).map((spoilt) => `step ${number} has ${spoilt}: ${words}`),
      ...(/^[A-Z]/.test(words) && words.endsWith('.') ? [] : [`step ${number} is no sentence: ${words}`]),
    ]),
  );
}

/** The last sentences: what the result measures, and how many to make, so that a screen that shows both can leave them out. */
export function lastSentences({ steps }: Sewn): readonly string[] {
  return steps.flatMap(({ number, makes, count, how, text, trimmed, unfinished }) => {
    const size = `${formatLength(unfinished.width)} by ${formatLength(unfinished.height)} in.`;
    const measures = trimmed ? `Trim to ${size}` : makes === 'block' ? `The block measures ${size}` : `It measures ${size}`;
    const make = makes === 'block' && count === 1 ? '' : ` Make ${count}.`;
    return text === `${how} ${measures}${make}` ? [] : [`step ${number} ends otherwise: ${text}`];
  });
}

/** Names: a step names all that it lays down (letters of units made before it, fabrics, sizes as cut), and no other unit. */
export function namesMissing({ steps, cuts }: Sewn): readonly string[] {
  const made = new Set<string>();
  return steps.flatMap(({ number, makes, parts, how }) => {
    const wrong: string[] = [];
    for (const { from } of parts) {
      if ('unit' in from) {
        if (!made.has(from.unit)) wrong.push(`step ${number} takes ${from.unit}, which no step before it makes`);
        if (!new RegExp(`\\b${from.unit}\\b`).test(how)) wrong.push(`step ${number} does not name ${from.unit}: ${how}`);
        continue;
      }
      const cut = cuts.find(({ id }) => id === from.cut);
      if (!cut) {
        wrong.push(`step ${number} takes a piece of line ${from.cut}, which is not in the list`);
        continue;
      }
      const sizes = [cut.width, cut.height].map(formatLength);
      const said =
        cut.shape === 'template' ? `template, line ${cut.id}` : cut.shape === 'square' ? `${sizes[0]!} in.` : `${sizes[0]!} by ${sizes[1]!} in.`;
      if (!how.toLowerCase().includes(from.fabric)) wrong.push(`step ${number} does not name ${from.fabric}: ${how}`);
      if (!how.includes(said)) wrong.push(`step ${number} does not say ${said}: ${how}`);
    }
    // Single capitals are letters of units, but where a sentence begins.
    for (const [, letter] of how.matchAll(/(?<!^|\. )\b([A-Z]{1,2})\b/g)) {
      if (!parts.some(({ from }) => 'unit' in from && from.unit === letter))
        wrong.push(`step ${number} names ${letter!}, which it does not take: ${how}`);
    }
    made.add(makes);
    return wrong;
  });
}

/** Counts: as many of each unit are made as later steps take. */
export function countsOff({ steps }: Sewn): readonly string[] {
  const taken = (unit: string): number =>
    steps.reduce((sum, { count, parts }) => sum + count * parts.filter(({ from }) => 'unit' in from && from.unit === unit).length, 0);
  return steps.flatMap(({ makes, count, number }) =>
    makes === 'block' || taken(makes) === count ? [] : [`step ${number} makes ${count} ${makes}, but ${taken(makes)} are taken`],
  );
}

/** Pressing: one way for each join, open only where the trade presses open: hourglasses, and where many pieces come together. */
export function pressingOff({ steps }: Sewn): readonly string[] {
  return steps.flatMap(({ number, joins, pressed, kind }) => [
    ...(pressed.length === joins.length ? [] : [`step ${number} presses ${pressed.length} of ${joins.length} joins`]),
    ...(pressed.includes('open') && !['quarter-square triangle', 'joined unit', 'block', 'free unit'].includes(kind) ? [`step ${number}, a ${kind}, is pressed open`] : []),
  ]);
}

/** Everything above, and the proof. */
export function complaints(sewn: Sewn): readonly string[] {
  return [
    ...spoiltSentences(sewn),
    ...lastSentences(sewn),
    ...namesMissing(sewn),
    ...countsOff(sewn),
    ...pressingOff(sewn),
    ...sewn.proof.faults,
  ];
}
