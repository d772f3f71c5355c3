import { isWeb } from '../../geometry/piecing/web.ts';
import { alsoOf } from '../also.ts';
import { assemblyPicture } from '../diagrams/assembly.ts';
import { stepPanels } from '../diagrams/step-panels.ts';
import { isOnFoundations } from '../../sewing/sections.ts';
import type { Step } from '../../sewing/step.ts';
import type { Pattern } from '../pattern.ts';
import { KEPT } from '../telling/kept.ts';
import type { Figures, Flow, Section } from './content.ts';
import { size, type Writing } from './writing.ts';

/** With more parts than this the pictures of a step are larger, as on the screen. */
const MANY = 9;

/** @returns how the units are sewn, each with its pictures; null where the block has none */
export function unitsSection(writing: Writing): Section | null {
  const { pattern, words, said } = writing;
  const steps = pattern.steps.filter(({ makes }) => makes !== 'block');
  if (steps.length === 0) return null;
  return {
    name: 'units',
    title: said('units/title', words.titles.units),
    ownPage: false,
    items: [
      { flow: 'paragraph', said: said('units/intro', words.units.intro), look: 'plain' },
      ...steps.map((step) => stepFlow(writing, step)),
    ],
  };
}

/** @returns how the units and pieces become the block */
export function assemblySection(writing: Writing): Section {
  const { pattern, words, said } = writing;
  const steps = pattern.steps.filter(({ makes }) => makes === 'block');
  return {
    name: 'assembly',
    title: said('assembly/title', words.titles.assembly),
    ownPage: false,
    items: [
      ...(isPictured(pattern)
        ? [
            {
              flow: 'together',
              items: [{ flow: 'paragraph', said: said('assembly/intro', words.assembly.intro), look: 'plain' }, assemblyFigure(writing)],
            } as const,
          ]
        : []),
      ...steps.map((step) => stepFlow(writing, step)),
    ],
  };
}

/** Whether a picture of its own shows how the block is put together: its step does where it is one unit, or sewn onto foundations. */
const isPictured = ({ whole, way, steps }: Pattern): boolean => whole === null && steps.every((step) => !isOnFoundations(step, way));

/** The block in its parts. */
function assemblyFigure({ pattern, words: { assembly }, said, print }: Writing): Figures {
  const { marks, frame } = assemblyPicture(pattern);
  const caption = isWeb(pattern.piecing.root) ? assembly.web : assembly.caption;
  return {
    flow: 'figures',
    at: 'assembly/picture',
    figures: [
      { figure: { name: 'assembly', says: print(assembly.picture), frame, marks }, caption: said('assembly/picture/caption', caption) },
    ],
    most: 0.4,
  };
}

/** A step's place in the pattern: by what it makes. */
const placeOf = ({ named }: Writing, { makes }: Step): string => `step/${makes === 'block' ? 'block' : named(makes)}`;

/** @returns what figures of a step are called: "step-03-unit-b" */
export const figureName = ({ number, makes }: Step): string =>
  `step-${`${number}`.padStart(2, '0')}-${makes === 'block' ? 'block' : `unit-${makes.toLowerCase()}`}`;

function stepFlow(writing: Writing, step: Step): Flow {
  const also = alsoOf(writing.pattern, writing.speech)[step.number - 1]!;
  const {
    words: { units },
    said,
  } = writing;
  const at = placeOf(writing, step);
  const whole = step.makes === 'block';
  const sides = size(writing, step.unfinished);
  const kind = step.kind === 'block' ? null : KEPT.kind(step.kind, step.count === 1 ? 'one' : 'many');
  const measure = step.trimmed ? units.trims(sides) : whole ? units.blockMeasures(sides) : units.measures(sides);
  const line = (place: string, told: string, look: 'plain' | 'strong' | 'quiet'): Flow => ({
    flow: 'paragraph',
    said: said(`${at}/${place}`, told),
    look,
  });
  return {
    flow: 'together',
    items: [
      {
        flow: 'heading',
        level: 3,
        said: said(at, whole ? units.block(step.count) : units.unit(KEPT.unit(step.makes))),
        number: step.number,
        leadsHere: [`unit ${step.makes}`],
      },
      ...(kind === null
        ? []
        : [
            line(
              'what',
              units.what(step.count, kind, step.method === null || step.method === 'pieces' ? null : units.method[step.method]),
              'quiet',
            ),
          ]),
      ...(step.joins.length === 0 ? [] : [stepFigures(writing, step, at)]),
      line('how', step.how, 'plain'),
      ...(also === null ? [] : [line('also', also, 'plain')]),
      ...(step.press === '' ? [] : [line('press', step.press, 'plain')]),
      line('measure', measure, 'strong'),
    ],
  };
}

function stepFigures(writing: Writing, step: Step, at: string): Figures {
  const {
    words: { units },
    said,
    pattern,
    print,
    speech,
  } = writing;
  const name = figureName(step);
  const of = step.makes === 'block' ? units.block(1) : units.unit(KEPT.unit(step.makes));
  const all = stepPanels({ step, pattern, speech });
  // How the parts of the block lie is shown by the picture of its assembly.
  const panels = step.makes === 'block' && isPictured(pattern) ? all.slice(-1) : all;
  return {
    flow: 'figures',
    at: `${at}/pictures`,
    figures: panels.map(({ marks, frame, says, measures }, i) => {
      return {
        figure: { name: `${name}-${i + 1}`, says: print(units.says(step.number, of, says)), frame, marks },
        caption: said(`${at}/picture ${i + 1}`, says),
        ...(measures !== undefined && { measure: said(`${at}/picture ${i + 1}/measure`, measures) }),
      };
    }),
    most: step.parts.length > MANY ? 0.3 : step.makes === 'block' ? 0.26 : 0.15,
  };
}
