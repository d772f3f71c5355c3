import polygonClipping, { type Polygon } from 'polygon-clipping';
import type { Drawing } from '../src/geometry/patchwork/drawing.ts';
import { sewing, waysToSew } from '../src/geometry/piecing/ways.ts';
import { blockNamed, drawingOf, namesIn, randomHalves, tiled } from './drawings.ts';
import { compared, median, processorTime, spent } from './timing.ts';

/** Published and traditional blocks beside the published cases: each kind of difficulty once. */
const GALLERY = [
  'capital-t-12', 'card-trick-9', 'churn-dash-12', 'double-pinwheel-8', 'four-small-stars-12', 'goose-in-the-pond-15',
  'half-rectangle-darts-12x9', 'jacobs-ladder-12', 'ohio-star-12-on-48', 'peaked-star-12', 'sawtooth-star-8-on-48', 'star-quartet-24',
  'treble-nine-patch-27', 'trip-around-the-world-9', 'wide-whirl-11',
];
const SIZES = [12, 24, 48];
/** For one block, in milliseconds of processor time. */
const ROUND_BUDGET = 500;
/** For one block, before any is measured, in milliseconds of processor time. */
const WARM_UP = 150;
/** No further row of growth is begun that would end later than this, in milliseconds from the start. */
const ENOUGH = 115_000;

const start = performance.now();
/** The standard way, looked for to the end. */
const piece = (drawing: Drawing) => () => sewing(drawing).way('standard units');

/** The first answer, which the sheet shows where the end is far. */
function first(drawing: Drawing): unknown {
  const { done, value } = sewing(drawing).steps('standard units').next();
  return done ? value : value.piecing();
}

/** Polygon-clipping's union of all patches in one call, the measure beside which our time is set: both read every patch once. */
function unite({ patches }: Drawing): () => unknown {
  const polygons = patches.map(({ points }): Polygon => [points.map(([x, y]): [number, number] => [x, y])]);
  const [first, ...rest] = polygons;
  return first === undefined ? () => [] : () => polygonClipping.union(first, ...rest);
}

const HEADINGS = ['pieces', 'union ms', 'ours ms', 'ratio', 'growth', 'first ms', 'growth'] as const;
const NAME_COLUMNS = 34;
const digits = (value: number): string => (value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2));
const line = (name: string, cells: readonly string[]): void =>
  console.log(`  ${name.padEnd(NAME_COLUMNS)}${cells.map((cell) => cell.padStart(12)).join('')}`.trimEnd());
const heading = (title: string, columns: number): void => {
  console.log(`\n${title}`);
  line('', HEADINGS.slice(0, columns));
};

/** A block by where it is kept. */
interface Listed {
  readonly folder: 'cases' | 'gallery';
  readonly name: string;
}

/** Lets all blocks run for a while, so that none meets an engine that the ones before it have not warmed. */
function warm(listed: readonly Listed[]): void {
  for (const { folder, name } of listed) {
    const drawing = drawingOf(blockNamed(folder, name));
    const [ours, theirs] = [piece(drawing), unite(drawing)];
    const isWarm = spent(WARM_UP);
    do [ours(), theirs()];
    while (!isWarm());
  }
}

/** @returns the ratios of a list of blocks, having printed a line for each */
function blocks(title: string, listed: readonly Listed[]): readonly number[] {
  heading(title, 4);
  return listed.map(({ folder, name }) => {
    const drawing = drawingOf(blockNamed(folder, name));
    const { ours, theirs, ratio } = compared(piece(drawing), unite(drawing), ROUND_BUDGET);
    const pieces = piece(drawing)()?.figures.pieces ?? '-';
    const all = processorTime(() => waysToSew(drawing));
    line(name, [`${pieces}`, digits(theirs), digits(ours), digits(ratio), `(${digits(all)})`]);
    return ratio;
  });
}

/** Prints how the time grows as the same kind of drawing gets larger; each is pieced once, large ones being long enough to measure. */
function growth(kinds: readonly { readonly name: string; readonly at: (cells: number) => Drawing }[]): void {
  heading('Growth, one run each, against half as many cells a side; and the same of the first answer alone', 7);
  const last = new Map<string, { readonly time: number; readonly factor: number; readonly soon: number }>();
  for (const cells of SIZES) {
    for (const { name, at } of kinds) {
      const row = `${name}, ${cells} × ${cells}`;
      const before = last.get(name);
      const expected = before === undefined ? 0 : before.time * before.factor;
      if (performance.now() - start + expected > ENOUGH) {
        line(row, [`not run: about ${Math.ceil(expected / 1000)} s more`]);
        continue;
      }
      const drawing = at(cells);
      const theirs = processorTime(unite(drawing));
      let pieces = 0;
      const ours = processorTime(() => (pieces = piece(drawing)()?.figures.pieces ?? 0));
      const soon = processorTime(() => first(drawing));
      const factor = before === undefined ? 8 : ours / before.time;
      last.set(name, { time: ours, factor, soon });
      const grown = before === undefined ? ['', ''] : [`× ${digits(factor)}`, `× ${digits(soon / before.soon)}`];
      line(row, [`${pieces}`, digits(theirs), digits(ours), digits(ours / theirs), grown[0]!, digits(soon), grown[1]!]);
    }
  }
}

console.log('Processor time to piece a drawing (its standard way; in brackets all ways) beside one polygon-clipping union of its patches;');
console.log('both in one process, built as for the page, warmed up, in turn; medians of 3 to 9 rounds.');
const published = namesIn('cases').map((name): Listed => ({ folder: 'cases', name }));
const traditional = GALLERY.map((name): Listed => ({ folder: 'gallery', name }));
warm([...published, ...traditional]);
const ratios = [...blocks('Published cases', published), ...blocks('Gallery', traditional)];
const [least, middle, most] = [Math.min(...ratios), median(ratios), Math.max(...ratios)].map(digits);
console.log(`\n  Median ratio of ${ratios.length} blocks: ${middle} (from ${least} to ${most})`);

const star = blockNamed('cases', 'sawtooth-star-12');
growth([
  { name: 'Sawtooth stars', at: (cells) => drawingOf(tiled(star, cells / star.grid.columns)) },
  ...[5, 3, 4, 2].map((fabrics) => ({
    name: `Random halves, ${fabrics} fabrics`,
    at: (cells: number) => drawingOf(randomHalves(cells, fabrics, 1000 * cells + fabrics)),
  })),
]);
console.log(`\n  ${((performance.now() - start) / 1000).toFixed(0)} s on Node ${process.version}`);
