import { cornerRounds } from './corner-rounds.ts';
import { inRuns, thing, together, type Vocabulary } from './naming.ts';
import type { Sewn } from './phrases/slanted.ts';
import { slantedPart, templatesLie, type Told } from './recipes.ts';
import { different } from './sentences.ts';

/** Free units: rounds of triangles about a middle, or whatever else straight seams can build. */
export function freeWords(step: Told, words: Vocabulary): readonly string[] {
  const rounds = cornerRounds(step);
  if (!rounds) return layOutWords(step, words);
  const said = rounds.map((round) => {
    const parts = round.map((part) => step.parts[part]!);
    return inRuns(parts, words).length === 1 ? together(parts.slice(0, 1), words)[0]! : parts.map((part) => slantedPart(part, step, words));
  });
  return [words.phrases.slanted.rounds(thing(step.parts[0]!, words), said), ...templatesLie(step, words)];
}

/** Pieces that no ruler rule names: numbered in the order in which they are sewn. */
export function layOutWords(step: Told, words: Vocabulary): readonly string[] {
  const { layOut, sewInOrder } = words.phrases.slanted;
  return [layOut(step.parts.map((part) => slantedPart(part, step, words))), ...templatesLie(step, words), sewInOrder(orderOf(step))];
}

/** @returns in which order numbered things are sewn; the numbers of what is already one follow one another and are told as "1–3" */
function orderOf({ parts, joins }: Told): readonly Sewn[] {
  const members = (thing: number): readonly [number, number] => {
    if (thing < parts.length) return [thing + 1, thing + 1];
    const { first, second } = joins[thing - parts.length]!;
    const [[a, b], [c, d]] = [members(first), members(second)];
    return [Math.min(a, c), Math.max(b, d)];
  };
  const said = (thing: number): string => different(members(thing)).join('–');
  const order: { readonly first: string; readonly second: string; readonly then: string[] }[] = [];
  joins.forEach(({ first, second }, i) => {
    const goesOn = i > 0 && first === parts.length + i - 1 && second < parts.length;
    if (goesOn) order.at(-1)!.then.push(said(second));
    else order.push({ first: said(first), second: said(second), then: [] });
  });
  return order;
}
