import { readdirSync, readFileSync } from 'node:fs';
import { readFaces } from '../src/cli/faces.ts';
import { parseBlock } from '../src/files/block-file.ts';
import { published } from '../src/pattern/document/published.ts';
import { ENGLISH } from '../src/pattern/english.ts';
import { usualStyle } from '../src/pattern/house-style.ts';
import { makePattern } from '../src/pattern/make-pattern.ts';
import { settingIn, type FaceFiles } from '../src/pattern/pages/face.ts';
import { pagesPdf } from '../src/pattern/pages/page-pdf.ts';
import type { Document } from '../src/pattern/pages/page.ts';
import { plainlyDrawn } from './plain-pdf.ts';
import { median } from './timing.ts';
import { peakMemory } from './peak.ts';

/** So many of the demo blocks, one after the other, as a designer writes a series. */
const SERIES = 12;
const ROUNDS = 3;
const FOLDER = 'demo-blocks';

/** Draws the same pages plainly, packed by Node. @returns how long the file is, in bytes, once it is written */
function drawnOnly(document: Document, faces: FaceFiles): Promise<number> {
  const pdf = plainlyDrawn(document, faces);
  let length = 0;
  return new Promise((resolve) => pdf.on('data', (chunk: Uint8Array) => (length += chunk.length)).on('end', () => resolve(length)));
}

/** Runs something and adds the processor time of it, in milliseconds. */
async function timed<T>(sums: number[], at: number, run: () => T | Promise<T>): Promise<T> {
  const before = process.cpuUsage();
  const made = await run();
  const { user, system } = process.cpuUsage(before);
  sums[at] = (sums[at] ?? 0) + (user + system) / 1000;
  return made;
}

const faces = await readFaces();
const setting = settingIn(faces);
const files = readdirSync(FOLDER).filter((file) => file.endsWith('.block.json')).slice(0, SERIES);
const megabytes = (bytes: number): string => `${(bytes / 2 ** 20).toFixed(0)} MB`;
const before = process.memoryUsage().rss;

let [pages, bytes, reference] = [0, 0, 0];
const rounds: number[][] = [];
for (let round = 0; round < ROUNDS; round++) {
  [pages, bytes, reference] = [0, 0, 0];
  const sums: number[] = [];
  for (const file of files) {
    const block = parseBlock(readFileSync(`${FOLDER}/${file}`, 'utf8'));
    if (!block.ok) throw new Error(block.problem.sentence);
    const pattern = await timed(sums, 0, () => makePattern(block.value, {}, 'chosen way'));
    if (!pattern.ok) throw new Error(pattern.problem.sentence);
    const style = usualStyle(block.value.finished.unit);
    const { document } = await timed(sums, 1, () => published(block.value, pattern.value, style, setting, ENGLISH));
    bytes += (await timed(sums, 2, () => pagesPdf(document, faces))).length;
    reference += await timed(sums, 3, () => drawnOnly(document, faces));
    pages += document.pages.length;
  }
  rounds.push(sums);
}
const [pattern, layout, pdf, drawn] = [0, 1, 2, 3].map((at) => median(rounds.map((sums) => sums[at]!))) as [number, number, number, number];
const ratio = median(rounds.map((sums) => (sums[1]! + sums[2]!) / sums[3]!));

console.log(`\nPublishing\n${files.length} demo blocks, ${pages} pages, ${(bytes / 1000).toFixed(0)} kB of PDF`);
console.log(`  patterns made            ${pattern.toFixed(0)} ms`);
console.log(`  written and laid out     ${layout.toFixed(0)} ms`);
console.log(`  PDF, tagged and packed   ${pdf.toFixed(0)} ms`);
console.log(`  the same lines and letters by pdfkit alone  ${drawn.toFixed(0)} ms, ${(reference / 1000).toFixed(0)} kB`);
console.log(`  pages and PDF take ${ratio.toFixed(2)} times as long as that`);
// In kilobytes, whatever the system.
console.log(`  memory: ${megabytes(before)} before, ${megabytes(peakMemory())} at the most`);
