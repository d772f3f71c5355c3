import { readdirSync, readFileSync } from 'node:fs';
import { quickCloth } from '../src/cutting/cloth/cloth.ts';
import { jobOf } from '../src/cutting/cloth/job.ts';
import { leastCloth } from '../src/cutting/cloth/least.ts';
import type { ClothOrder, Wanted } from '../src/cutting/cloth/order.ts';
import { openSolver } from '../src/cutting/cloth/solver.ts';
import { parseBlock } from '../src/files/block-file.ts';
import { toNumber } from '../src/measure/rational.ts';
import { makePattern } from '../src/pattern/make-pattern.ts';
import { JUDGED, randomOrder } from '../tests/cutting/random-orders.ts';
import { processorTime } from './timing.ts';

/** The package's own entry is a script that Node cannot read as the module it says it is. */
const MODULE: string = 'maxrects-packer/dist/maxrects-packer.mjs';
const { MaxRectsPacker } = (await import(MODULE)) as typeof import('maxrects-packer');

const GALLERY = new URL('../tests/gallery/', import.meta.url);
const BLOCKS = 12;
const FABRICS = 20;
/** So many of each block. */
const TIMES = 6;

/** Twelve blocks of the gallery cut from twenty fabrics: what each fabric is asked for. */
function quilt(): readonly ClothOrder[] {
  const files = readdirSync(GALLERY).filter((file) => file.endsWith('.block.json'));
  const chosen = Array.from({ length: BLOCKS }, (_, i) => files[Math.floor((i * files.length) / BLOCKS)]!);
  const fabrics = Array.from({ length: FABRICS }, (): { wanted: Wanted[]; order: ClothOrder | null } => ({ wanted: [], order: null }));
  let next = 0;
  for (const file of chosen) {
    const block = parseBlock(readFileSync(new URL(file, GALLERY), 'utf8'));
    if (!block.ok) throw new Error(block.problem.sentence);
    const pattern = makePattern(block.value, { blocks: TIMES }, 'chosen way');
    if (!pattern.ok) throw new Error(pattern.problem.sentence);
    // Every block takes its fabrics from a few, so that each fabric is cut for several blocks.
    for (const { order } of [...pattern.value.fabrics, ...pattern.value.fabrics]) {
      const fabric = fabrics[next++ % FABRICS]!;
      fabric.order = order;
      fabric.wanted.push(...order.wanted.map((one) => ({ ...one, cut: `${file} ${one.cut} ${next}` })));
    }
  }
  return fabrics.flatMap(({ wanted, order }) => (order === null ? [] : [{ ...order, wanted }]));
}

/** @returns how long the cloth is, in the order's unit, that a general-purpose packer of rectangles lays the pieces on: it need not cut right across */
function packed(order: ClothOrder): number {
  const job = jobOf(order);
  const { width } = job.sheets.at(-1)!;
  const sheet = new MaxRectsPacker(width, 1_000_000, 0, { smart: true, pot: false, square: false, allowRotation: true });
  sheet.addArray(job.kinds.flatMap((kind) => Array.from({ length: kind.count }, () => ({ width: kind.width, height: kind.height, x: 0, y: 0, rot: false, allowRotation: kind.turn, data: null })) as never[]));
  return sheet.bins.reduce((sum, bin) => sum + Math.max(...bin.rects.map(({ y, height }) => y + height)), 0) * toNumber(job.mark);
}

/** Prints how long the cloth is and how long it takes to find that out, beside a general-purpose packer of rectangles, in this process. */
export async function cloths(): Promise<void> {
  const solver = await openSolver();
  const row = (name: string, orders: readonly ClothOrder[]): void => {
    let [quick, least, bound, theirs, proved] = [0, 0, 0, 0, 0];
    const atOnce = processorTime(() => orders.forEach((order) => (quick += toNumber(quickCloth(order).takes))));
    const solved = processorTime(() =>
      orders.forEach((order) => {
        const layout = leastCloth(order, solver);
        least += toNumber(layout.takes);
        bound += toNumber(layout.least);
        if (toNumber(layout.takes) === toNumber(layout.least)) proved++;
      }),
    );
    const packing = processorTime(() => orders.forEach((order) => (theirs += packed(order))));
    const inches = (length: number): string => `${length.toFixed(1)} in.`;
    console.log(`${name}: ${orders.length} fabrics, ${orders.reduce((sum, { wanted }) => sum + wanted.reduce((all, { count }) => all + count, 0), 0)} pieces`);
    console.log(`  at once    ${inches(quick)}  ${atOnce.toFixed(0)} ms`);
    console.log(`  least      ${inches(least)}  ${solved.toFixed(0)} ms; bound ${inches(bound)}, ${proved} of ${orders.length} proved least`);
    console.log(`  a rectangle packer, which need not cut right across  ${inches(theirs)}  ${packing.toFixed(0)} ms`);
  };
  console.log('\nCloth');
  row(`${BLOCKS} blocks, ${TIMES} of each`, quilt());
  row('random lists', Array.from({ length: 4 }, (_, i) => randomOrder(i + 1, JUDGED)));
}
