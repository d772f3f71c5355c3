import { counted, type Count } from '../../block/counting.ts';
import type { Cut } from '../../cutting/cut.ts';
import { makesWholeUnits } from '../../cutting/whole-units.ts';
import { templatesOf } from '../../cutting/template-list.ts';
import { capital } from '../../measure/words.ts';
import { allDirectionNotes } from '../directions.ts';
import type { Cloth, Pattern } from '../pattern.ts';
import { eachWords, scrapsOf } from '../scraps.ts';
import { KEPT } from '../telling/kept.ts';
import type { Flow, Said, Section, TableRow } from './content.ts';
import { length, listed, size, type Writing } from './writing.ts';

/** @returns the cutting list in order of cutting, fabric by fabric, with what holds throughout */
export function cuttingSection(writing: Writing): Section {
  const { pattern, words, said } = writing;
  const at = (place: string): string => `cutting/${place}`;
  const names = cutNames(writing);
  const templates = templateNames(pattern);
  const families = scrapsOf(pattern, writing.speech);
  const ofPrints = new Map(families.flatMap(({ cuts }) => cuts.map(({ cut, each }) => [cut.id, eachWords(each, writing.speech)] as const)));
  const rowsFor = (fabric: string): readonly TableRow[] =>
    pattern.cuts
      .filter((cut) => cut.fabric === fabric)
      .map((cut) => cutRow(writing, cut, { name: names.get(cut.id)!, templates, ofPrints: ofPrints.get(cut.id) ?? null }));
  const rows = [
    ...pattern.fabrics.flatMap((cloth) => [
      ...groupRows(writing, cloth.fabric.id, clothWords(writing, cloth)),
      ...rowsFor(cloth.fabric.id),
    ]),
    ...pattern.scraps.flatMap(({ id }) => [
      ...groupRows(writing, id, [capital(writing.speech.language.pattern.fromScraps)]),
      ...rowsFor(id),
    ]),
  ];
  // Where nothing is cut again a column says nothing.
  const heads = pattern.cuts.some(({ subcut }) => subcut !== 'none') ? [0, 1, 2, 3] : [0, 1, 3];
  const table: Flow = {
    flow: 'table',
    at: at('table'),
    heads: heads.map((i): Said => said(at(`head/${i + 1}`), words.cutting.heads[i]!)),
    figures: heads.map((i) => i === 0),
    rows: rows.map((row) => (row.cells.length === 0 ? row : { ...row, cells: heads.map((i) => row.cells[i]!) })),
  };
  // What she chose and comes to nothing is told first; a maker has no use for it.
  const { notes: all, unmet } = pattern;
  const notes = [...all.slice(unmet.length), ...allDirectionNotes(pattern, writing.speech), ...families.flatMap(({ says }) => says)].map(
    (note, i): Flow => ({ flow: 'paragraph', said: said(at(`note/${i + 1}`), note), look: 'quiet' }),
  );
  const leads: readonly Flow[] =
    templates.size === 0
      ? []
      : [{ flow: 'paragraph', said: said(at('templates'), words.templates.leads), look: 'plain', leadsTo: 'section templates' }];
  return {
    name: 'cutting',
    title: said(at('title'), words.titles.cutting),
    ownPage: false,
    items: [rulesBox(writing), table, ...leads, ...notes],
  };
}

/** What a published pattern says once, for all its steps. */
function rulesBox(writing: Writing): Flow {
  const {
    pattern,
    words: { rules, cutting },
    style,
    said,
    speech,
  } = writing;
  const names = speech.language.pattern.values.kinds;
  const { choices } = pattern;
  const byLength = pattern.fabrics.some(({ order }) => order.bought.length === null);
  const sewn = pattern.figures.seams > 0;
  const shortened = [...new Set(pattern.units.map(({ unit }) => unit.kind))].flatMap((kind) => {
    const { one, short } = names[kind];
    return short ? [`${short.one} = ${one}`] : [];
  });
  const lines: readonly (readonly [place: string, told: string])[] = [
    ['seam', rules.seam(length(writing, choices.seam))],
    ['rounded', rules.rounded(length(writing, choices.ruler))],
    ...(byLength ? [['strips', rules.strips] as const] : []),
    ...(pattern.cuts.length > 1 ? [['order', cutting.intro] as const] : []),
    ...(sewn
      ? ([
          ['right sides', rules.rightSides],
          ['pressing', rules.pressing],
          ['measure', rules.measure],
        ] as const)
      : []),
    ...(style.kinds === 'short' && shortened.length > 0 ? [['abbreviations', rules.abbreviations(shortened)] as const] : []),
  ];
  return {
    flow: 'boxed',
    at: 'cutting/rules',
    look: 'tip',
    title: said('cutting/rules/title', rules.title),
    said: lines.map(([place, told]) => said(`cutting/rules/${place}`, told)),
  };
}

/** A fabric's name, and what is done before its lines. */
function groupRows({ said }: Writing, fabric: string, first: readonly string[]): readonly TableRow[] {
  const at = `cutting/fabric ${fabric}`;
  return [
    { group: said(at, KEPT.cloth(fabric)), fabric, cells: [] },
    ...first.map((told, i): TableRow => {
      const place = `${at}/first/${i + 1}`;
      return { cells: [said(`${place}/line`, ''), said(place, told), said(`${place}/then`, ''), said(`${place}/for`, '')] };
    }),
  ];
}

/** What is said of a fabric before its lines: its strips, and what no cloth is wide enough for. */
function clothWords(writing: Writing, { strips, joined, layout }: Cloth): readonly string[] {
  const { cutting } = writing.words;
  const bands = strips.map(({ width, count }) => ({ count, width: length(writing, width) }));
  const parts = new Set(joined.map(({ cut }) => cut));
  return [
    ...(bands.length === 0 ? [] : [cutting.strips(bands)]),
    ...joined.map(({ cut, count, widths, length: long }) => cutting.joined(KEPT.cut(cut), count, widths, length(writing, long))),
    ...layout.unplaced.filter(({ cut }) => !parts.has(cut)).map(({ cut, count }) => cutting.unplaced(KEPT.cut(cut), count)),
  ];
}

/** @returns for each line that is cut round an outline the name of its template */
export const templateNames = (pattern: Pattern): ReadonlyMap<string, string> =>
  new Map(templatesOf(pattern).flatMap(({ name, uses }) => uses.flatMap(({ cuts }) => cuts.map((cut) => [cut, name] as const))));

/** @returns what is cut of a line: "4 squares, 4 7/8 in." */
export function cutWords(writing: Writing, cut: Cut, templates: ReadonlyMap<string, string>): string {
  const sides = cut.shape === 'square' ? length(writing, cut.width) : size(writing, cut);
  const shape = cut.nested || cut.set ? 'strip' : cut.shape;
  return writing.words.cutting.cuts({ quantity: cut.quantity, shape, size: sides, named: templates.get(cut.id) ?? '' });
}

/** What is known of a line beside the list. */
interface LineKnown {
  /** For its place. */
  readonly name: string;
  readonly templates: ReadonlyMap<string, string>;
  /** How many are cut of which print, where it is cut from scraps. */
  readonly ofPrints: string | null;
}

function cutRow(writing: Writing, cut: Cut, { name, templates, ofPrints }: LineKnown): TableRow {
  const {
    said,
    speech: {
      language: { pattern: phrases },
    },
  } = writing;
  const some = (n: number): Count | null => (n > 0 ? counted(n, KEPT) : null);
  const at = `cutting/${name}`;
  const below = [
    ...(ofPrints === null ? [] : [ofPrints]),
    ...(cut.diagonals ? [phrases.diagonals(some(cut.diagonals.falling), some(cut.diagonals.rising))] : []),
    ...(cut.spare > 0 ? [spareWords(writing, cut)] : []),
    ...(cut.set ? [writing.words.cutting.segments(cut.quantity, cut.set.segments, length(writing, cut.set.segment))] : []),
  ];
  return {
    cells: [
      said(`${at}/line`, KEPT.cut(cut.id)),
      said(`${at}/cut`, cutWords(writing, cut, templates)),
      said(`${at}/then`, thenWords(writing, cut)),
      said(`${at}/for`, placesOf(writing, cut)),
    ],
    leadsHere: [`cut ${encodeURIComponent(cut.id)}`],
    ...(below.length > 0 && { below: below.map((told, i) => said(`${at}/below/${i + 1}`, told)) }),
  };
}

/** A spare unit is no spare square: what is left over is told by what it is. */
function spareWords({ words: { cutting }, speech: { language } }: Writing, cut: Cut): string {
  if (cut.subcut !== 'none') return cutting.spare(cut.spare, 'triangles');
  return makesWholeUnits(cut) ? cutting.spare(cut.spare, 'units') : language.pattern.spare(counted(cut.spare, KEPT));
}

function thenWords(writing: Writing, { quantity, subcut, nested }: Cut): string {
  const { cutting } = writing.words;
  if (nested) return cutting.nested(quantity, nested.triangles, length(writing, nested.measure));
  return subcut === 'once' ? cutting.once(2 * quantity) : subcut === 'twice' ? cutting.twice(4 * quantity) : '';
}

/** The units a line is cut for, each once. */
function placesOf(writing: Writing, { uses }: Cut): string {
  const units = [...new Set(uses.map(({ unit }) => unit))];
  return listed(
    writing,
    units.map((unit) => (unit === 'block' ? writing.words.cutting.block : KEPT.unit(unit))),
  );
}

/**
 * Names lines of the list by what they are cut for, for places that outlive changes of the drawing.
 * @returns by the line's id its fabric, the first unit it goes to and what it does there, and a number among equals
 */
function cutNames({ pattern, named }: Writing): ReadonlyMap<string, string> {
  const counts = new Map<string, number>();
  return new Map(
    pattern.cuts.map(({ id, fabric, uses }) => {
      const first = uses[0]!;
      const what = `fabric ${fabric}/${named(first.unit)}/${first.role}`;
      const number = (counts.get(what) ?? 0) + 1;
      counts.set(what, number);
      return [id, number === 1 ? what : `${what} ${number}`];
    }),
  );
}
