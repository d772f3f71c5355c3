import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../src/block/block.ts';
import type { Choices } from '../../src/block/choices.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { rational } from '../../src/measure/rational.ts';
import { alsoOf } from '../../src/pattern/also.ts';
import { allDirectionNotes } from '../../src/pattern/directions.ts';
import { detailsOf, purposeOf } from '../../src/pattern/cut-words.ts';
import { stepPanels } from '../../src/pattern/diagrams/step-panels.ts';
import { ENGLISH, inEnglish } from '../../src/pattern/english.ts';
import { figureLines } from '../../src/pattern/figure-words.ts';
import { GERMAN } from '../../src/pattern/german.ts';
import { usualStyle } from '../../src/pattern/house-style.ts';
import { refusedPinText } from '../../src/pattern/refused-pins.ts';
import type { Language, Speech } from '../../src/pattern/language.ts';
import { largeLines } from '../../src/pattern/large-lines.ts';
import { withLeastCloths } from '../../src/pattern/least-cloths.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { eachWords, familyWords, scrapsOf } from '../../src/pattern/scraps.ts';
import { cutText } from '../../src/pattern/size-words.ts';
import { KEPT, printed, valuesOf } from '../../src/pattern/telling/kept.ts';
import { styledTelling } from '../../src/pattern/telling/styled.ts';
import { told } from '../../src/pattern/told.ts';
import { workFigures } from '../../src/pattern/work-figures.ts';
import { openSolver } from '../../src/cutting/cloth/solver.ts';
import { blockNamed, namesIn } from './made.ts';

const DEMO = new URL('../../demo-blocks/', import.meta.url);
const sampler = readdirSync(DEMO).filter((file) => file.endsWith('.block.json')).map((file): Block => {
  const read = parseBlock(readFileSync(new URL(file, DEMO), 'utf8'));
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value;
});

/** Other ways are not looked for: no sentence is about them. */
function patternOf(block: Block, choices: Choices = {}): Pattern {
  const made = makePattern(block, choices, 'chosen way');
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
}

/** The same block with a print that has an up and a down, another that stands for scraps, and more to say of it. */
const talkative = (block: Block): Block => ({
  ...block,
  fabrics: block.fabrics.map((fabric, i) => (i === 0 ? { ...fabric, directional: true } : i === 2 ? { ...fabric, scraps: { prints: 3, seed: 1 } } : fabric)),
});
/** The same block with two of its fabrics cut from one cloth, and the seams between them kept. */
const oneCloth = (block: Block): Block => {
  const [cloth, ...others] = block.fabrics;
  return { ...block, fabrics: [cloth!, ...others.map((fabric, i) => (i === 0 ? { ...cloth!, id: fabric.id, same: cloth!.id } : fabric))] };
};
const MANY: readonly Choices[] = [
  { blocks: 3, trim: rational(1, 8), margin: { percent: rational(5) }, squaringUp: rational(1, 2) },
  { method: 'triangles-from-strips', way: 'rows' },
  { method: 'template', width: rational(7), way: 'quarters' },
  { method: 'four-at-a-time', methods: { 'half-square triangle': 'stitch-and-flip' }, ruler: rational(1), margin: { length: rational(1) }, trim: rational(1, 4) },
  { method: 'eight-at-a-time', way: 'fewest pieces' },
];

/** The sampler, the published blocks and the gallery, some of them cut in other ways. */
const all: readonly (readonly [Block, Pattern])[] = [
  ...sampler,
  ...(['cases', 'gallery'] as const).flatMap((folder) => namesIn(folder).map((name) => blockNamed(folder, name))),
].flatMap((block, i) => [
  [block, patternOf(block)] as const,
  ...(i % 5 === 0 ? [[talkative(block), patternOf(talkative(block), MANY[(i / 5) % MANY.length]!)] as const] : []),
  ...(i % 10 === 1 ? [[oneCloth(block), patternOf(oneCloth(block))] as const] : []),
]);

/** Every sentence and clause that a pattern shows, by where it stands. */
function sentencesOf(pattern: Pattern, speech: Speech): ReadonlyMap<string, string> {
  const said: (readonly [string, string])[] = [
    ...pattern.divisions.map(({ says }, i) => [`division ${i}`, says] as const),
    ...pattern.steps.flatMap(({ number, text, press }) => [[`step ${number}`, text], [`press ${number}`, press]] as const),
    ...alsoOf(pattern, speech).map((also, i) => [`also ${i}`, also ?? ''] as const),
    ...pattern.steps.flatMap((step) =>
      stepPanels({ step, pattern, speech }).flatMap(({ says, measures }, i) => [[`panel ${step.number} ${i}`, says], [`size ${step.number} ${i}`, measures ?? '']] as const),
    ),
    ...pattern.fabrics.flatMap(({ fabric, buy, added }) => [[`buy ${fabric.id}`, buy], [`added ${fabric.id}`, added ?? '']] as const),
    ...pattern.refusedPins.map((pin) => [`pin ${pin.pin}`, refusedPinText(pin, speech)] as const),
    ...pattern.warnings.map(({ code, says }) => [`warning ${code}`, says] as const),
    ...pattern.notes.map((note, i) => [`note ${i}`, note] as const),
    ...pattern.cautions.map((caution, i) => [`caution ${i}`, caution] as const),
    ...largeLines(pattern, speech).map(({ cuts, says }) => [`large ${cuts.join()}`, says] as const),
    ...allDirectionNotes(pattern, speech).map((note, i) => [`direction ${i}`, note] as const),
    ...pattern.cuts.flatMap((cut) => [[`cut ${cut.id}`, purposeOf(cut, speech).join(', ')], [`short ${cut.id}`, cutText(cut, pattern.block.unit, speech)]] as const),
    ...pattern.cuts.flatMap((cut) => detailsOf(cut, pattern, speech).map((detail, i) => [`detail ${cut.id} ${i}`, detail] as const)),
    ...scrapsOf(pattern, speech).flatMap(({ fabric, prints, says, cuts }) => [
      [`family ${fabric.id}`, familyWords(prints, speech)] as const,
      ...says.map((sentence, i) => [`scraps ${fabric.id} ${i}`, sentence] as const),
      ...cuts.map(({ cut, each }) => [`each ${cut.id}`, eachWords(each, speech)] as const),
    ]),
    ...figureLines(workFigures(pattern), pattern, speech).flatMap(({ name, says, means }, i) => [[`figure ${i}`, `${name}: ${says}`], [`means ${i}`, means]] as const),
  ];
  return new Map(said);
}

const kept = (block: Block, pattern: Pattern, language: Language) => sentencesOf(told(block, pattern, language), { language, telling: KEPT });

describe('a pattern told anew', () => {
  it('in English, with values printed plainly, is the pattern itself', () => {
    // Copied, as it comes out of a worker.
    for (const [block, pattern] of all) expect(told(block, structuredClone(pattern), ENGLISH, inEnglish(pattern).telling)).toEqual(pattern);
  });

  it('keeps a better layout of its cloth', async () => {
    const solver = await openSolver();
    const [block, first] = all.find(([, { fabrics }]) => fabrics.some(({ layout }) => layout.takes.n * layout.least.d !== layout.least.n * layout.takes.d))!;
    const pattern = await withLeastCloths(first, () => Promise.resolve(solver));
    expect(told(block, pattern, ENGLISH, inEnglish(pattern).telling)).toEqual(pattern);
    expect(told(block, pattern, GERMAN).fabrics.map(({ layout }) => layout)).toEqual(pattern.fabrics.map(({ layout }) => layout));
  });

  it('with its values alive prints as it stood', () => {
    for (const [block, pattern] of all) {
      const plain = inEnglish(pattern);
      const stood = sentencesOf(pattern, plain);
      const alive = kept(block, pattern, ENGLISH);
      expect([...alive].map(([at, sentence]) => [at, printed(sentence, plain.telling)])).toEqual([...stood]);
    }
  });

  it('says every sentence in German, with all the values that it has in English', () => {
    for (const [block, pattern] of all) {
      const english = kept(block, pattern, ENGLISH);
      const german = kept(block, pattern, GERMAN);
      expect([...german.keys()]).toEqual([...english.keys()]);
      for (const [at, sentence] of english) {
        const missing = [...valuesOf(german.get(at)!)].reduce((left, value) => (left.includes(value) ? left.toSpliced(left.indexOf(value), 1) : left), [...valuesOf(sentence)]);
        expect([block.name, at, missing, german.get(at)], sentence).toEqual([block.name, at, [], german.get(at)]);
      }
    }
  });

  it('speaks German as patchwork does', () => {
    const light = sampler.find(({ name }) => name === 'Point Light')!;
    const metric: Block = { ...light, finished: { width: rational(30), height: rational(30), unit: 'cm' } };
    const say = (block: Block, choices: Choices, at: string): string | undefined => {
      const pattern = patternOf(block, choices);
      const names = new Map(block.fabrics.map(({ id, name }) => [id, name]));
      const sentence = kept(block, pattern, GERMAN).get(at);
      return sentence && printed(sentence, styledTelling(usualStyle('cm'), (id) => names.get(id)!, GERMAN));
    };
    expect(say(metric, {}, 'buy fog')).toBe('10 cm');
    expect(say(metric, { squaringUp: rational(3, 2), margin: { percent: rational(5) } }, 'added fog')).toBe('1,5 cm zum Begradigen und 5 % Reserve');
    expect(say(light, {}, 'buy fog')).toBe('⅛ Yard');
    expect(say(metric, { cloths: { fog: { sold: 'fat quarter' } } }, 'buy fog')).toBe('1 Fat Quarter');
    expect(say(light, { methods: { 'half-square triangle': 'stitch-and-flip' } }, 'note 0')).toBe(
      'Einheit A (Halbquadrat-Dreieck) lässt sich nach der Methode „Nähen und Umklappen“ nicht zuschneiden; genommen wird „zwei auf einmal“.',
    );
    expect(say(light, {}, 'large 6')).toBe(
      'Zuschnitt 6 ist 0,02 Zoll größer als nötig, zurückgeschnitten wird in Schritt 1 auf 2 × 2 Zoll und in Schritt 2 auf 2 × 2 Zoll.',
    );
    expect(say(light, { method: 'triangles-from-strips' }, 'cut 2')).toMatch(/^für D, Kopf an Fuß in \d+ Dreiecke schneiden/u);
    expect(say(metric, {}, 'panel 1 1')).toBe('Beiderseits nähen, dazwischen schneiden');
    const small: Block = { ...metric, finished: { width: rational(5), height: rational(5), unit: 'cm' } };
    expect(say(small, {}, 'warning small pieces')).toBe(
      '89 Teile (11 Zuschnitte) sind fertig schmaler als 1,2 cm, das schmalste 0,625 cm, und lassen sich nur schwer genau nähen; ab 10 × 10 cm ist keines mehr so schmal.',
    );
    expect(say(small, {}, 'warning outgrows its size')).toBe(
      '11 Zuschnitte sind zu groß, weil das Lineal nur alle 0,1 cm einen Strich hat: Wird nichts zurückgeschnitten, gerät der Block bis zu 0,5 cm zu breit und ' +
        '0,5 cm zu hoch, und seine Reihen treffen sich nicht; bei 4,8 × 4,8 cm oder 5,6 × 5,6 cm liegt jeder einfache Zuschnitt auf einem Strich.',
    );
    expect(say(metric, {}, 'caution 2')).toBe('Stecknadeln herausziehen, bevor sie unter die Maschinennadel kommen; zum Einfädeln die Maschine ausschalten.');
  });

  it('leaves no English in German', () => {
    const english = /\b(the|and|of|to|with|each|sew|cut|press|right sides|square|triangle|piece|pieces|seam|seams|block measures|half|from|left|top)\b/i;
    for (const [block, pattern] of all) {
      const nameless = styledTelling(usualStyle('in'), () => 'Stoff', GERMAN);
      for (const [at, sentence] of kept(block, pattern, GERMAN)) {
        const words = printed(sentence, nameless);
        expect([at, words.match(english)?.[0]], words).toEqual([at, undefined]);
        expect([at, /[{}]|undefined|null|\[object/.test(words)], words).toEqual([at, false]);
      }
    }
  });
});
