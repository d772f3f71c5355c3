import { readdirSync, readFileSync } from 'node:fs';
import { createPatternMaker } from '../src/app/pattern-maker.ts';
import { NOTHING_SENT, received, sent } from '../src/app/publishing/laid-pages.ts';
import type { Block } from '../src/block/block.ts';
import { cellsOf } from '../src/block/cells.ts';
import { paint } from '../src/block/painting.ts';
import { readFaces } from '../src/cli/faces.ts';
import { parseBlock } from '../src/files/block-file.ts';
import type { Result } from '../src/measure/problem.ts';
import { published } from '../src/pattern/document/published.ts';
import { ENGLISH } from '../src/pattern/english.ts';
import { usualStyle } from '../src/pattern/house-style.ts';
import { settingIn } from '../src/pattern/pages/face.ts';
import type { Page } from '../src/pattern/pages/page.ts';
import { RARE_PARTS } from '../src/pattern/rare-parts.ts';
import { plainlyDrawn } from './plain-pdf.ts';
import { median, processorTime } from './timing.ts';

/** Of each block so many strokes are made, one after the other, before any is measured and then. */
const WARM_UP = 2;
const STROKES = 4;
const SERIES = 6;
const FOLDER = 'demo-blocks';

const faces = await readFaces();
const setting = settingIn(faces);

function must<T>(result: Result<T> | null): T {
  if (result?.ok !== true) throw new Error(result?.problem.sentence ?? 'no pattern');
  return result.value;
}

/** One cell painted over: cell after cell, each in the next fabric. */
function stroke(block: Block, turn: number): Block {
  const { across, down, denominator } = cellsOf(block.grid);
  const [columns, rows] = [across.length - 1, down.length - 1];
  const [x, y] = [turn % columns, Math.floor(turn / columns) % rows];
  const [left, right, top, bottom] = [across[x]!, across[x + 1]!, down[y]!, down[y + 1]!];
  const { id } = block.fabrics[turn % block.fabrics.length]!;
  return must(paint(block, id, { points: [[left, top], [right, top], [right, bottom], [left, bottom]], denominator }));
}

const STAGES = ['pattern', 'carried', 'written', 'sent', 'anew'] as const;
const times: Record<(typeof STAGES)[number], number[]> = { pattern: [], carried: [], written: [], sent: [], anew: [] };
let [pages, changed] = [0, 0];
for (const file of readdirSync(FOLDER).filter((name) => name.endsWith('.block.json')).slice(0, SERIES)) {
  let block = must(parseBlock(readFileSync(`${FOLDER}/${file}`, 'utf8')));
  const maker = createPatternMaker(() => 0, () => Promise.resolve(RARE_PARTS));
  const style = usualStyle(block.finished.unit);
  let before = NOTHING_SENT;
  let shown: readonly Page[] = [];
  for (let turn = 0; turn < WARM_UP + STROKES; turn++) {
    block = stroke(block, turn);
    const begun = process.cpuUsage();
    await maker.workOut(block);
    const { user, system } = process.cpuUsage(begun);
    const pattern = must(maker.collect());
    let carried = pattern;
    // From the one worker to the page, and on to the other.
    const carrying = processorTime(() => (carried = structuredClone(structuredClone(pattern))));
    let made = null as ReturnType<typeof published> | null;
    const writing = processorTime(() => (made = published(block, carried, style, setting, ENGLISH)));
    const sending = processorTime(() => {
      const [message, now] = sent(made!, before);
      changed += message.document.pages.filter((page) => typeof page !== 'number').length;
      before = now;
      shown = received(structuredClone({ ...message, took: 0 }), shown).document.pages;
    });
    pages += shown.length;
    const anew = processorTime(() => plainlyDrawn(made!.document, faces));
    if (turn < WARM_UP) continue;
    [(user + system) / 1000, carrying, writing, sending, anew].forEach((time, i) => times[STAGES[i]!].push(time));
  }
}

const [pattern, carried, written, sentOn, anew] = STAGES.map((stage) => median(times[stage])) as [number, number, number, number, number];
const onward = carried + written + sentOn;
const ms = (time: number): string => `${time.toFixed(1)} ms`;
console.log('\nFrom a stroke to the pages: one cell painted on each demo block, in processor time, medians');
console.log(`  pattern worked out          ${ms(pattern)}`);
console.log(`  carried between workers     ${ms(carried)}`);
console.log(`  written and laid out        ${ms(written)}`);
console.log(`  compared and sent           ${ms(sentOn)}, ${((100 * changed) / pages).toFixed(0)} of 100 pages being others than before`);
console.log(`  the same pages drawn anew by pdfkit  ${ms(anew)}; from the pattern to the pages takes ${(onward / anew).toFixed(2)} times as long`);
