import { readFaces } from '../src/cli/faces.ts';
import type { Block } from '../src/block/block.ts';
import { setPhoto } from '../src/block/colour/photos.ts';
import { MAX_JPEGS } from '../src/block/limits.ts';
import { formatBlock, parseBlock } from '../src/files/block-file.ts';
import type { Result } from '../src/measure/problem.ts';
import { rational } from '../src/measure/rational.ts';
import { published } from '../src/pattern/document/published.ts';
import { ENGLISH } from '../src/pattern/english.ts';
import { usualStyle } from '../src/pattern/house-style.ts';
import { makePattern } from '../src/pattern/make-pattern.ts';
import { settingIn } from '../src/pattern/pages/face.ts';
import { pagesPdf } from '../src/pattern/pages/page-pdf.ts';
import { JPEG } from '../tests/block/photo.ts';
import { peakMemory } from './peak.ts';

/** So many photos, each as long as the app keeps one at the most. */
const PHOTOS = 20;
const LONG = Math.floor((MAX_JPEGS / PHOTOS) * 0.75) - 64;

/** A whole JPEG of a few pixels, made long by comments of chance: as large in a file and on its way to paper as a real one. */
function longPhoto(seed: number): string {
  const file = Buffer.from(JPEG, 'base64');
  const parts = [file.subarray(0, 2)];
  let state = seed + 1;
  for (let left = LONG - file.length; left > 4; left -= 65_537) {
    const length = Math.min(65_535, left - 2);
    const comment = Buffer.alloc(length + 2);
    comment.writeUInt16BE(0xfffe, 0);
    comment.writeUInt16BE(length, 2);
    for (let at = 4; at < comment.length; at++) comment[at] = (state = (state * 1_103_515_245 + 12_345) % 2_147_483_648) >> 16;
    parts.push(comment);
  }
  return Buffer.concat([...parts, file.subarray(2)]).toString('base64');
}

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

/** Twenty cloths in a row of five by four squares, each with a photo of its own. */
function twenty(): Block {
  const ids = Array.from({ length: PHOTOS }, (_, i) => `cloth-${i}`);
  const bare = {
    format: 'piecewright/block', version: 1, name: 'Twenty sails', finished: { width: '15', height: '12', unit: 'in' }, grid: { columns: 5, rows: 4 },
    fabrics: ids.map((id, i) => ({ id, name: `Sail ${i + 1}`, color: `#${(0x203040 + i * 0x0a0908).toString(16)}` })), ground: ids[0],
    patches: ids.map((fabric, i) => {
      const [x, y] = [i % 5, Math.floor(i / 5)];
      return { fabric, points: [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] };
    }),
  };
  return ids.reduce((block, id, i) => got(setPhoto(block, id, { picture: { width: 3, height: 2, jpeg: longPhoto(i) }, across: rational(6) })), got(parseBlock(JSON.stringify(bare))));
}

const megabytes = (bytes: number): string => `${(bytes / 2 ** 20).toFixed(0)} MB`.padStart(7);
// In kilobytes, whatever the system.
const most = (): string => megabytes(peakMemory());
const faces = await readFaces();
console.log(`\nPhotos of cloth: ${PHOTOS} of ${(LONG / 1000).toFixed(0)} kB, memory at the most so far`);
console.log(`  before                  ${most()}`);
const text = formatBlock(twenty());
console.log(`  saved                   ${most()}, a file of ${megabytes(text.length).trim()}`);
const block = got(parseBlock(text));
console.log(`  opened again            ${most()}`);
const pattern = got(makePattern(block, {}, 'chosen way'));
const { document } = published(block, pattern, usualStyle('in'), settingIn(faces), ENGLISH);
console.log(`  pattern, laid out       ${most()}, ${document.pages.length} pages`);
const pdf = await pagesPdf(document, faces);
const images = Buffer.from(pdf).toString('latin1').match(/\/Subtype \/Image/g)?.length ?? 0;
console.log(`  PDF                     ${most()}, ${megabytes(pdf.length).trim()}, ${images} pictures in it`);
