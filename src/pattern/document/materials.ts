import { equals, ZERO } from '../../measure/rational.ts';
import type { Cloth } from '../pattern.ts';
import { familyWords } from '../scraps.ts';
import { KEPT } from '../telling/kept.ts';
import type { Flow, Said, Section, TableRow } from './content.ts';
import { warningBoxes } from './cover.ts';
import { length, listed, size, type Writing } from './writing.ts';

/** @returns what to buy, and what else is needed */
export function materialsSection(writing: Writing): Section {
  const { pattern, words, said } = writing;
  const { materials } = words;
  const at = (place: string): string => `materials/${place}`;
  const rows = [
    ...pattern.fabrics.map((cloth) => clothRow(writing, cloth)),
    ...pattern.scraps.map(({ id, scraps }): TableRow => row(writing, id, familyWords(scraps!.prints, writing.speech), [])),
  ];
  const line = (place: string, told: string, look: 'plain' | 'item' = 'plain'): Flow => ({
    flow: 'paragraph',
    said: said(at(place), told),
    look,
  });
  const usual = pattern.choices.width;
  const byLength = pattern.fabrics.filter(({ order }) => order.bought.length === null);
  const other = byLength.filter(({ order }) => !equals(order.bought.width, usual));
  return {
    name: 'materials',
    title: said(at('title'), words.titles.materials),
    ownPage: false,
    items: [
      ...warningBoxes(writing, 'materials'),
      {
        flow: 'table',
        at: at('table'),
        heads: materials.heads.map((head, i): Said => said(at(`head/${i + 1}`), head)),
        figures: [false, false, false],
        rows,
      },
      ...(byLength.length > other.length ? [line('width', materials.width(length(writing, usual)))] : []),
      ...other.map(({ fabric, order }) =>
        line(`width/${fabric.id}`, materials.widthOf(KEPT.cloth(fabric.id), length(writing, order.bought.width))),
      ),
      line('not in it', materials.backing),
      { flow: 'heading', level: 3, said: said(at('also'), materials.alsoNeeded) },
      ...toolLines(writing).map(([place, told]) => line(`tool/${place}`, told, 'item')),
    ],
  };
}

/** What is needed beside cloth, as far as the methods ask for it. */
function toolLines({ pattern, words: { materials } }: Writing): readonly (readonly [place: string, told: string])[] {
  const { block, choices, steps } = pattern;
  const drawn = steps.some(
    ({ method }) => method !== null && ['two-at-a-time', 'four-at-a-time', 'eight-at-a-time', 'stitch-and-flip'].includes(method),
  );
  const templates = pattern.cuts.some(({ template }) => template !== null);
  return [
    ['cutting', materials.tools(block.unit, KEPT.length(choices.ruler, block.unit))],
    ...(pattern.figures.seams > 0 ? [['sewing', materials.sewing(KEPT.length(choices.seam, block.unit))] as const] : []),
    ...(drawn ? [['pencil', materials.pencil] as const] : []),
    ...(templates ? [['templates', materials.forTemplates] as const] : []),
  ];
}

/** Where a fabric goes: the units that a line of the list is cut for, each once. */
export function usedIn(writing: Writing, fabric: string): string {
  const { pattern, words } = writing;
  const units = new Set(pattern.cuts.filter((cut) => cut.fabric === fabric).flatMap(({ uses }) => uses.map(({ unit }) => unit)));
  const letters = pattern.units.map(({ unit }) => unit.id).filter((id) => units.has(id));
  return listed(writing, [...letters.map(KEPT.unit), ...(units.has('block') ? [words.materials.block] : [])]);
}

function row(writing: Writing, id: string, buy: string, below: readonly string[]): TableRow {
  const { said } = writing;
  const at = `materials/fabric ${id}`;
  return {
    fabric: id,
    cells: [said(`${at}/name`, KEPT.cloth(id)), said(`${at}/buy`, buy), said(`${at}/for`, usedIn(writing, id))],
    ...(below.length > 0 && { below: below.map((told, i) => said(`${at}/below/${i + 1}`, told)) }),
  };
}

function clothRow(writing: Writing, cloth: Cloth): TableRow {
  const { materials } = writing.words;
  const { added } = cloth;
  const own = cloth.layout.cloths.filter(({ source }) => source.form === 'own');
  const below = [
    ...(added === null ? [] : [materials.added(added)]),
    ...own.map(({ source, times }) => materials.own(times, size(writing, { width: source.width, height: source.length ?? ZERO }))),
    ...(cloth.fabric.directional ? [materials.directional] : []),
  ];
  return row(writing, cloth.fabric.id, cloth.buy, below);
}
