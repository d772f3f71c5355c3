import type { Flow, Section } from '../document/content.ts';
import { besideRow, pairOf } from './beside-rows.ts';
import { boxedRows } from './boxed-rows.ts';
import type { Composing } from './composing.ts';
import { figureRows, highestAt, scaleIn } from './figure-rows.ts';
import { headingRow, titleRow, underHeading, underTitle } from './heading-rows.ts';
import { paragraphRows } from './paragraph-rows.ts';
import { heldTogether, withAbove, type Row, type Strip } from './rows.ts';
import { blankRow, factRows, measureRow, photoRow } from './small-rows.ts';
import { isCramped } from './table-columns.ts';
import { tableRows } from './table-rows.ts';

/** How wide things are: in a column, and right across the page. */
export interface Widths {
  readonly column: number;
  readonly wide: number;
}

/** @returns a section in strips, its title first */
export function sectionStrips(section: Section, widths: Widths, composing: Composing): readonly Strip[] {
  const strips = flowStrips(section.items, widths, composing);
  const [first, ...rest] = strips;
  const title = titleRow(section, widths.wide, composing);
  if (!first) return [{ rows: [title], wide: true, whole: false }];
  const held = heldTogether(withAbove(first.rows, underTitle(composing)));
  // A few lines that lead into a section do not stay behind with its title.
  const [next, ...others] = rest;
  const isLead = section.items[0]!.flow === 'paragraph' && first.rows.length <= LEAD;
  const after = next && isLead ? [{ ...next, rows: heldTogether(next.rows, 'if it fits') }, ...others] : rest;
  return [{ rows: [title], wide: true, whole: false }, { ...first, rows: held }, ...after];
}

/** So many lines after a title are a lead. */
const LEAD = 6;

/** @returns things that follow one another in strips; a heading is as wide as what it heads, and stays with it */
export function flowStrips(items: readonly Flow[], widths: Widths, composing: Composing): readonly Strip[] {
  const strips: Strip[] = [];
  let headings: Flow[] = [];
  let afterLoose = false;
  for (const item of items) {
    if (item.flow === 'heading') {
      headings.push(item);
      continue;
    }
    const wide = isWide(item, widths, composing);
    const rows = rowsOf(item, wide ? widths.wide : widths.column, composing);
    if (rows.length === 0) continue;
    const loose = item.flow !== 'paragraph' && item.flow !== 'together';
    const after =
      headings.length === 0 && !loose && afterLoose ? withAbove(rows, Math.max(rows[0]!.above, composing.type.half * AFTER)) : rows;
    afterLoose = loose;
    strips.push(
      ...headed(headings, after, wide ? { ...widths, column: widths.wide } : widths, composing, loose).map((strip) => ({ ...strip, wide })),
    );
    strips[strips.length - 1] = { ...strips.at(-1)!, whole: isWhole(item) };
    headings = [];
  }
  return [...strips, ...headed(headings, [], widths, composing)];
}

/** Above text that follows a table, a box or pictures, in half lines. */
const AFTER = 1.7;

/**
 * @param loose rows that need more air under a heading than text does
 * @returns headings, each held to the one before it, and rows that are held to the last
 */
function headed(
  headings: readonly Flow[],
  rows: readonly Row[],
  { column }: Widths,
  composing: Composing,
  loose = false,
): readonly Strip[] {
  const heads = headings.filter((item) => item.flow === 'heading');
  const strips = heads.map((item, i): Strip => {
    const row = headingRow(item, column, composing);
    const held = heldTogether(withAbove([row], underHeading(item.level, composing) + composing.type.half));
    return { rows: i === 0 ? [row] : held, wide: false, whole: false };
  });
  if (rows.length === 0) return strips;
  const last = heads.at(-1);
  const under = last && underHeading(last.level, composing) + (loose ? composing.type.half * 0.5 : 0);
  return [...strips, { rows: under === undefined ? rows : heldTogether(withAbove(rows, under)), wide: false, whole: false }];
}

const isWhole = ({ flow }: Flow): boolean => flow === 'together' || flow === 'facts' || flow === 'blank';

/** @returns the rows of one thing in a column of its own width */
function rowsOf(item: Flow, width: number, composing: Composing): readonly Row[] {
  switch (item.flow) {
    case 'paragraph':
      return paragraphRows(item, width, composing);
    case 'heading':
      return [headingRow(item, width, composing)];
    case 'table':
      return tableRows(item, width, composing);
    case 'figures':
      return figureRows(item, width, composing);
    case 'facts':
      return item.facts.length === 0 ? [] : factRows(item, width, composing);
    case 'boxed':
      return boxedRows(item, width, composing);
    case 'photo':
      return [photoRow(item, width, composing)];
    case 'blank':
      return [blankRow(item, width, composing)];
    case 'measure':
      return [measureRow(item, width, composing)];
    case 'together': {
      const widths = { column: width, wide: width };
      const heads = item.items.findIndex(({ flow }) => flow !== 'heading');
      const pair = heads < 0 ? null : pairOf(item.items.slice(heads));
      const beside = pair && besideRow(pair, width, composing);
      const strips = beside ? headed(item.items.slice(0, heads), [beside], widths, composing) : flowStrips(item.items, widths, composing);
      return strips.flatMap(({ rows }) => rows);
    }
  }
}

/** Pictures less high than this in a column, in half lines, would be larger right across the page. */
const SMALL = 11;
/** How much larger they are to be there. */
const LARGER = 1.5;

/** @returns whether a thing goes right across the page, though it has columns */
function isWide(item: Flow, { column, wide }: Widths, composing: Composing): boolean {
  if (column === wide) return false;
  switch (item.flow) {
    case 'table':
      return isCramped(item, column, composing);
    case 'figures': {
      if (item.figures.length === 0) return false;
      const [small, large] = [scaleIn(item, column, composing), scaleIn(item, wide, composing)];
      return large > small * LARGER && (highestAt(item, small) < composing.type.half * SMALL || item.figures.length === 1);
    }
    case 'blank':
      return true;
    case 'together':
      return item.items.some((each) => isWide(each, { column, wide }, composing));
    default:
      return false;
  }
}
