import type { Cut } from '../../cutting/cut.ts';
import { compare, equals, subtract, type Rational } from '../../measure/rational.ts';
import type { Pattern } from '../pattern.ts';
import { cutsAt, otherSizes, usualRange, type OtherSize } from '../sizes.ts';
import { KEPT } from '../telling/kept.ts';
import type { Flow, Section, TableRow } from './content.ts';
import { bare, length, listed, size, type Writing } from './writing.ts';

/** So many other sizes are named, and of so many the cutting is told. */
const NAMED = 10;
const TOLD = 3;

/** @returns at which other sizes everything falls on the ruler, and what is cut there; null where the block cannot be sewn otherwise */
export function otherSizesSection(writing: Writing): Section | null {
  const {
    pattern,
    words: { otherSizes: words, titles },
    said,
  } = writing;
  const { finished, unit } = pattern.block;
  const range = usualRange(pattern);
  const found = otherSizes(pattern, range);
  if (!found.ok) return null;
  const friendly = found.value.filter(({ asItIs, cannot, off }) => !asItIs && cannot === null && off.length === 0);
  const mark = KEPT.length(pattern.choices.ruler, unit);
  const named = nearest(friendly, finished.width, NAMED);
  const line = (place: string, told: string): Flow => ({ flow: 'paragraph', said: said(`other sizes/${place}`, told), look: 'plain' });
  const table = sizeTable(writing, nearest(named, finished.width, TOLD));
  return {
    name: 'other sizes',
    title: said('other sizes/title', titles['other sizes']),
    ownPage: false,
    items:
      named.length === 0
        ? [line('none', words.none(mark))]
        : [
            line('intro', words.intro(mark)),
            line('friendly', words.friendly(listOf(writing, named))),
            ...(table === null ? [] : [line('table', words.table), table]),
            ...(pattern.cuts.some(({ shape }) => shape === 'template') ? [line('templates', words.templates)] : []),
          ],
  };
}

/** Sizes one after another: of square blocks one side, and the unit once. */
function listOf(writing: Writing, sizes: readonly OtherSize[]): string {
  const square = sizes.every(({ finished }) => equals(finished.width, finished.height));
  if (!square)
    return listed(
      writing,
      sizes.map(({ finished }) => size(writing, finished)),
    );
  return listed(
    writing,
    sizes.map(({ finished }, i) => (i < sizes.length - 1 ? bare : length)(writing, finished.width)),
  );
}

/** @returns some sizes, in order: those in whole inches or centimetres before others, what is nearest to the block's own before the rest */
function nearest(sizes: readonly OtherSize[], own: Rational, most: number): readonly OtherSize[] {
  const away = ({ finished }: OtherSize): Rational => {
    const by = subtract(finished.width, own);
    return by.n < 0 ? { n: -by.n, d: by.d } : by;
  };
  const whole = ({ finished }: OtherSize): number => (finished.width.d === 1 ? 0 : 1);
  return [...sizes]
    .sort((a, b) => whole(a) - whole(b) || compare(away(a), away(b)))
    .slice(0, most)
    .sort((a, b) => compare(a.finished.width, b.finished.width));
}

/** The cutting list at some sizes beside the block's own; null where a list does not go line by line with it. */
function sizeTable(writing: Writing, sizes: readonly OtherSize[]): Flow | null {
  const {
    pattern,
    words: { otherSizes: words },
    said,
  } = writing;
  const lists = sizes.flatMap(({ finished }) => {
    const lines = matched(pattern, finished.width);
    return lines === null ? [] : [{ width: finished.width, lines }];
  });
  if (lists.length === 0) return null;
  const all = [...lists, { width: pattern.block.finished.width, lines: pattern.cuts }].sort((a, b) => compare(a.width, b.width));
  const sides = (cut: Cut): string =>
    cut.shape === 'template'
      ? '–'
      : equals(cut.width, cut.height)
        ? bare(writing, cut.width)
        : `${bare(writing, cut.width)} × ${bare(writing, cut.height)}`;
  const fabrics = [...new Set(pattern.cuts.map(({ fabric }) => fabric))];
  const rows = fabrics.flatMap((fabric): readonly TableRow[] => [
    { group: said(`other sizes/fabric ${fabric}`, KEPT.cloth(fabric)), fabric, cells: [] },
    ...pattern.cuts.flatMap((cut, i): readonly TableRow[] => {
      if (cut.fabric !== fabric) return [];
      const at = `other sizes/line ${cut.id}`;
      return [
        {
          cells: [
            said(`${at}/line`, KEPT.cut(cut.id)),
            said(`${at}/shape`, words.shape({ quantity: cut.quantity, shape: cut.nested || cut.set ? 'strip' : cut.shape })),
            ...all.map(({ lines }, k) => said(`${at}/size ${k + 1}`, sides(lines[i]!))),
          ],
        },
      ];
    }),
  ]);
  return {
    flow: 'table',
    at: 'other sizes/list',
    heads: [
      ...words.heads.map((head, i) => said(`other sizes/head/${i + 1}`, head)),
      ...all.map(({ width }, k) => said(`other sizes/width ${k + 1}`, length(writing, width))),
    ],
    figures: [true, false, ...all.map(() => true)],
    rows,
  };
}

/** The lines of the list at another size, one for each line there is and in its order; null where they are others. */
function matched(pattern: Pattern, width: Rational): readonly Cut[] | null {
  const cuts = cutsAt(pattern, width);
  if (cuts.length !== pattern.cuts.length) return null;
  // Drawing and piecing are the same, and so are the numbers of its pieces.
  const there = new Map(cuts.map((cut) => [cut.pieces.join(), cut]));
  const lines = pattern.cuts.map((cut) => there.get(cut.pieces.join()));
  return lines.every((line, i) => line?.shape === pattern.cuts[i]!.shape && line.quantity === pattern.cuts[i]!.quantity)
    ? (lines as readonly Cut[])
    : null;
}
