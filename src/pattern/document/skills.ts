import type { Method } from '../../block/choices.ts';
import { templatesOf } from '../../cutting/template-list.ts';
import { compare, ZERO } from '../../measure/rational.ts';
import { KEPT } from '../telling/kept.ts';
import { workFigures } from '../work-figures.ts';
import type { Flow, Section } from './content.ts';
import { about, length, listed, type Writing } from './writing.ts';

/** In the order in which they are learnt (common practice). */
const METHODS: readonly Method[] = [
  'two-at-a-time',
  'eight-at-a-time',
  'four-at-a-time',
  'stitch-and-flip',
  'one-at-a-time',
  'triangles',
  'triangles-from-strips',
  'strip-sets',
  'template',
];

/** @returns what a maker must be able to do, derived from the plan: no word about how hard it is */
export function skillsSection(writing: Writing): Section {
  const {
    pattern,
    words: { skills, titles },
    said,
  } = writing;
  const { figures, choices } = pattern;
  const work = workFigures(pattern);
  const lines: (readonly [place: string, told: string])[] = [];
  const add = (place: string, told: string): void => void lines.push([place, told]);
  if (pattern.cuts.some(({ shape }) => shape !== 'template')) add('rotary', skills.rotary);
  for (const method of METHODS) {
    const kinds = [...new Set(pattern.steps.filter((step) => step.method === method && step.kind !== 'block').map(({ kind }) => kind))];
    if (kinds.length > 0)
      add(
        `method/${method}`,
        skills.method(
          method,
          listed(
            writing,
            kinds.map((kind) => KEPT.kind(kind as Exclude<typeof kind, 'block'>, 'many')),
          ),
        ),
      );
  }
  const outlines = templatesOf(pattern).length;
  if (outlines > 0) add('templates', skills.templates(outlines));
  if (compare(choices.trim, ZERO) > 0 && pattern.steps.some(({ trimmed }) => trimmed))
    add('trimming', skills.trimming(length(writing, choices.trim)));
  if (figures.partialSeams > 0) add('partial', skills.partial(figures.partialSeams));
  if (work.bias.seams > 0) add('bias', skills.bias(work.bias.seams));
  if (figures.matchedPoints > 0) {
    const loose = work.pointsApart.sameWay + work.pointsApart.open;
    add('points', `${skills.points(figures.matchedPoints)}${loose > 0 ? ` ${skills.loose(loose)}` : ''}`);
  } else if (lines.length < 2 && figures.seams > 0) add('straight', skills.straightSeams);
  add('smallest', skills.smallest(about(writing, work.narrowest)));
  return {
    name: 'skills',
    title: said('skills/title', titles.skills),
    ownPage: false,
    items: [
      { flow: 'paragraph', said: said('skills/intro', skills.intro), look: 'plain' },
      ...lines.map(([place, told]): Flow => ({ flow: 'paragraph', said: said(`skills/${place}`, told), look: 'item' })),
    ],
  };
}
