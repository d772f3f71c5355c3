import { describe, expect, it } from 'vitest';
import type { Choices } from '../../src/block/choices.ts';
import { plainTelling } from '../../src/block/plain-telling.ts';
import type { Telling } from '../../src/block/telling.ts';
import { cutList } from '../../src/cutting/cutting.ts';
import type { UnitKind } from '../../src/geometry/piecing/assembly.ts';
import { sewnInRows } from '../../src/geometry/piecing/strip-rows.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';
import { SEWING_IN_ENGLISH } from '../../src/sewing/phrases/english.ts';
import { SEWING_IN_GERMAN } from '../../src/sewing/phrases/german.ts';
import type { SewingPhrases } from '../../src/sewing/phrases/sewing-phrases.ts';
import type { Step } from '../../src/sewing/step.ts';
import { sewingPlan, worded, wordsFor } from '../../src/sewing/steps.ts';
import { KEPT, printed, valuesOf } from '../../src/pattern/telling/kept.ts';
import { darkness, FILES, sewnFrom } from './told.ts';

/** Every method of every kind comes up in one of these. */
const CHOICES: readonly Choices[] = [
  {},
  { methods: { 'half-square triangle': 'eight-at-a-time', 'flying geese': 'four-at-a-time', 'split quarter-square triangle': 'two-at-a-time' }, blocks: 3 },
  { method: 'triangles', blocks: 2 },
  { method: 'triangles-from-strips' },
  { method: 'template' },
  { method: 'strip-sets' },
];

type Words = Pick<Step, 'how' | 'text' | 'press'>;
type Retelling = (telling: Telling, phrases: SewingPhrases) => readonly Words[];

/** @returns what tells the steps of a block in other words, by every method */
function* retold(file: string, unit: 'in' | 'cm' = 'in', all: readonly Choices[] = CHOICES): Generator<Retelling> {
  const { step, piecing: found } = sewnFrom(file);
  const [seam, ruler]: readonly [Rational, Rational] = unit === 'in' ? [rational(1, 4), rational(1, 8)] : [rational(3, 4), rational(1, 10)];
  for (const { method = 'usual', methods = {}, blocks = 1 } of all) {
    const rules = { step, seam, ruler, trim: rational(0), blocks, room: () => rational(42), straighten: rational(0), scraps: new Set<string>() };
    const fabrics = [...new Set(found.pieces.map(({ fabric }) => fabric))];
    const list = cutList(found, { ...rules, method, methods, fabrics });
    const piecing = sewnInRows(found, new Set(Object.keys(list.methods).filter((id) => list.methods[id] === 'strip-sets')));
    const words = { telling: KEPT, phrases: SEWING_IN_ENGLISH, unit, seam };
    const { steps } = sewingPlan(piecing, list, { ...rules, words, darkness });
    yield (telling, phrases) => worded(steps, piecing.units, wordsFor(list.cuts, { ...words, telling, phrases }));
  }
}

const sentences = (steps: readonly Words[]): readonly string[] => steps.flatMap(({ how, text, press }) => [how, text, press]);

describe('what is sewn, told with its values alive', () => {
  // Two cloths of one name, and names that hold words of the sentences: nothing may be decided by what a value looks like.
  const names = new Map<string, string>();
  const plain = plainTelling((id) => {
    if (!names.has(id)) names.set(id, ['Blue', 'seams nested', 'in. No. 5.', 'Blue', 'A', 'open'][names.size % 6]!);
    return names.get(id)!;
  });

  it.each(FILES)('%s: prints as it is told plainly, and has the same values in German, each as often', (file) => {
    for (const tell of retold(file)) {
      const [english, german] = [SEWING_IN_ENGLISH, SEWING_IN_GERMAN].map((phrases) => sentences(tell(KEPT, phrases))) as [readonly string[], readonly string[]];
      expect(english.map((kept) => printed(kept, plain))).toEqual(sentences(tell(plain, SEWING_IN_ENGLISH)));
      const sorted = (all: readonly string[]): readonly (readonly string[])[] => all.map((kept) => [...valuesOf(kept)].sort());
      expect(sorted(german), german.join('\n')).toEqual(sorted(english));
    }
  });
});

describe('German instructions', () => {
  const KINDS: Readonly<Partial<Record<UnitKind, string>>> = { 'half-square triangle': 'Halbquadrat-Dreiecke' };
  const telling: Telling = { ...plainTelling((id) => id.charAt(0).toUpperCase() + id.slice(1)), kind: (kind) => KINDS[kind]! };

  /** @returns the instruction for the first unit that is made so, and its pressing */
  function said(file: string, choices: Choices, kind: string): string {
    const [tell] = retold(file, 'cm', [choices]);
    const steps = tell!(telling, SEWING_IN_GERMAN) as readonly Step[];
    const { text, press } = steps.find((step) => step.kind === kind)!;
    return `${text} ${press}`;
  }

  // Read by a speaker of the language; no outside source.
  it.each<[string, Choices, Step['kind'], string]>([
    [
      'tests/cases/shoo-fly-12',
      {},
      'half-square triangle',
      '2 Quadrate von 6,6 cm aus White mit 2 Quadraten von 6,6 cm aus Mustard paarweise rechts auf rechts legen. Auf jedem Paar eine ' +
        'Diagonale anzeichnen, auf beiden Seiten im Abstand von 0,75 cm dazu nähen und auf der Linie durchschneiden: Jedes Paar ergibt 2 ' +
        'Einheiten. Die Einheit misst mit Nahtzugabe 5,5 × 5,5 cm. 4 Stück nähen. Die Naht zu White hin bügeln.',
    ],
    [
      'tests/cases/shoo-fly-12',
      { method: 'one-at-a-time' },
      'half-square triangle',
      'Dreiecke aus White und Mustard (Quadrate von 6,6 cm, diagonal halbiert) paarweise rechts auf rechts legen und die langen Seiten ' +
        'zusammennähen. Die Einheit misst mit Nahtzugabe 5,5 × 5,5 cm. 4 Stück nähen. Die Naht zu White hin bügeln.',
    ],
    [
      'tests/cases/sawtooth-star-8',
      { method: 'four-at-a-time' },
      'flying geese',
      'Zu jedem Quadrat von 7,7 cm aus Solid 4 Quadrate von 4,6 cm aus Print nehmen. 2 Quadrate aus Print rechts auf rechts in ' +
        'gegenüberliegende Ecken des Quadrats aus Solid legen; die Diagonale anzeichnen, die durch beide läuft, auf beiden Seiten im ' +
        'Abstand von 0,75 cm dazu nähen und auf der Linie durchschneiden; die Dreiecke aus Print nach außen bügeln. Auf jede Hälfte 1 ' +
        'Quadrat aus Print in die freie Ecke legen, seine Diagonale von dieser Ecke bis dorthin anzeichnen, wo die beiden ersten Dreiecke ' +
        'zusammentreffen, auf beiden Seiten im Abstand von 0,75 cm dazu nähen und auf der Linie durchschneiden: Das Quadrat aus Solid ' +
        'ergibt 4 Einheiten. Die Einheit misst mit Nahtzugabe 5,5 × 3,5 cm. 4 Stück nähen. Zu den kleinen Dreiecken hin bügeln.',
    ],
    [
      'tests/cases/sawtooth-star-8',
      {},
      'flying geese',
      'Quadrate von 3,5 cm aus Print auf der linken Stoffseite mit einer Diagonale markieren. Eines nach dem anderen annähen: ein ' +
        'Quadrat rechts auf rechts auf eine Ecke des Rechtecks von 3,5 × 5,5 cm aus Solid legen, die Linie quer über die Ecke; auf der ' +
        'Linie nähen, 0,75 cm außerhalb davon abschneiden und die Ecke nach außen bügeln. Print kommt an die Ecken unten rechts und unten ' +
        'links. Die Einheit misst mit Nahtzugabe 5,5 × 3,5 cm. 4 Stück nähen. Zu den kleinen Dreiecken hin bügeln.',
    ],
    [
      'tests/cases/ohio-star-10-1-2',
      {},
      'quarter-square triangle',
      '2 Quadrate von 7,2 cm aus Blue mit 2 Quadraten von 7,2 cm aus Orange paarweise rechts auf rechts legen. Auf jedem Paar eine ' +
        'Diagonale anzeichnen, auf beiden Seiten im Abstand von 0,75 cm dazu nähen und auf der Linie durchschneiden: Jedes Paar ergibt 2 ' +
        'Halbquadrat-Dreiecke mit gut 6,1 cm Seitenlänge. Je zwei davon rechts auf rechts aufeinanderlegen, Nähte ineinandergreifend und ' +
        'jeder Stoff auf dem anderen; die Diagonale anzeichnen, die die Naht kreuzt, auf beiden Seiten im Abstand von 0,75 cm dazu nähen ' +
        'und auf der Linie durchschneiden: Je zwei ergeben 2 Einheiten. Die Einheit misst mit Nahtzugabe 5 × 5 cm. 4 Stück nähen. Die ' +
        'erste Naht zu Orange hin bügeln, die letzte auseinander.',
    ],
    [
      'tests/gallery/bright-hopes-6',
      {},
      'partial-seam ring',
      'Das Rechteck von 3,5 × 5,5 cm aus Teal rechts auf rechts oben an das Quadrat von 3,5 cm aus Oat legen, an der rechten Kante ' +
        'bündig; von dort aus nähen und auf halber Länge von Oat anhalten. Rundherum weiter annähen: Rechteck von 3,5 × 5,5 cm aus Mustard ' +
        'rechts, Rechteck von 3,5 × 5,5 cm aus Brick unten und Rechteck von 3,5 × 5,5 cm aus Ink links, jeweils über die ganze Seite. Dann ' +
        'die erste Naht zu Ende nähen. Der Block misst mit Nahtzugabe 7,5 × 7,5 cm. Jede Naht nach außen bügeln, von der Mitte weg.',
    ],
  ])('%s, %o: %s', (file, choices, kind, expected) => {
    expect(said(file, choices, kind)).toBe(expected);
  });
});
