import { zlibSync } from 'fflate';
import { joinedBytes } from '../../measure/bytes.ts';

/*
 * The file structure of ISO 32000-1, 7.5: a plain PDF with a table of references becomes one whose streams are packed and whose other
 * objects lie together in packed streams of objects. The packing is the same code in browser and terminal, so the bytes are the same.
 */

/** An object of a plain PDF file. */
interface Part {
  readonly id: number;
  /** A dictionary or value as it is written. */
  readonly head: Uint8Array;
  readonly stream: Uint8Array | null;
}

/** How many objects lie in one packed stream: a reader unpacks all of them for one. */
const TOGETHER = 200;

/** @returns the same document, packed. @param plain a PDF of one revision as pdfkit writes it, with nothing packed */
export function packedPdf(plain: Uint8Array): Uint8Array {
  const text = latin(plain);
  const [, trailer, from] = /^trailer\n<<\n([\s\S]*)\n>>\nstartxref\n(\d+)\n%%EOF\s*$/.exec(text.slice(text.lastIndexOf('trailer\n<<'))) ?? [];
  if (trailer === undefined) throw new RangeError('a PDF without the trailer that is expected');
  const offsets = [...text.slice(Number(from)).matchAll(/^(\d{10}) 00000 n /gm)].map(([, offset]) => Number(offset));
  const inOrder = offsets.map((offset, i) => [offset, i + 1] as const).sort(([a], [b]) => a - b);
  const parts = inOrder.map(([offset, id], i) => partAt(plain, text, offset, inOrder[i + 1]?.[0] ?? Number(from), id));
  const file = new Writer(text.slice(0, inOrder[0]![0]));
  let next = offsets.length + 1;
  for (const { id, head, stream } of parts) if (stream !== null) file.add(id, ...packedStream(latin(head), stream));
  const loose = parts.filter(({ stream }) => stream === null);
  for (let at = 0; at < loose.length; at += TOGETHER) {
    const here = loose.slice(at, at + TOGETHER);
    const index: string[] = [];
    let length = 0;
    for (const { id, head } of here) {
      index.push(`${id} ${length}`);
      length += head.length + 1;
    }
    const first = `${index.join(' ')}\n`;
    file.add(next, ...packedStream(`<<\n/Type /ObjStm\n/N ${here.length}\n/First ${first.length}\n>>`, bytesOf(first + here.map(({ head }) => `${latin(head)}\n`).join(''))));
    for (const [i, { id }] of here.entries()) file.lies(id, next, i);
    next++;
  }
  return file.ended(next, trailer.replace(/^\/Size \d+\n/, ''));
}

function partAt(file: Uint8Array, text: string, offset: number, end: number, id: number): Part {
  const start = offset + `${id} 0 obj\n`.length;
  const close = end - 'endobj\n'.length;
  if (text.slice(offset, start) !== `${id} 0 obj\n` || text.slice(close, end) !== 'endobj\n') throw new RangeError(`object ${id} is not where it should be`);
  const last = close - '\nendstream\n'.length;
  if (text.slice(last, close) !== '\nendstream\n') return { id, head: file.subarray(start, close - 1), stream: null };
  const begin = text.indexOf('\nstream\n', start);
  return { id, head: file.subarray(start, begin), stream: file.subarray(begin + '\nstream\n'.length, last) };
}

/** @returns a stream's dictionary and content; what is packed already, as a JPEG is, stays as it is, and so do metadata, which anybody may search */
function packedStream(head: string, stream: Uint8Array): readonly [string, Uint8Array] {
  const stays = /\/Filter |\/Type \/Metadata/.test(head);
  const content = stays ? stream : zlibSync(stream, { level: 9 });
  const entries = head.replace(/^<<\n/, '').replace(/\n?>>$/, '').replace(/\/Length \d+\n?/, '').trimEnd();
  return [`<<\n${entries}\n${stays ? '' : '/Filter /FlateDecode\n'}/Length ${content.length}\n>>`, content];
}

/** Bytes one after the other, and where every object lies: at an offset, or in a stream of objects at an index. */
class Writer {
  readonly #chunks: Uint8Array[] = [];
  readonly #places = new Map<number, readonly [kind: 1 | 2, place: number, index: number]>();
  #length = 0;

  constructor(header: string) {
    this.#write(bytesOf(header));
  }

  #write(chunk: Uint8Array): void {
    this.#chunks.push(chunk);
    this.#length += chunk.length;
  }

  add(id: number, head: string, stream: Uint8Array): void {
    this.#places.set(id, [1, this.#length, 0]);
    this.#write(bytesOf(`${id} 0 obj\n${head}\nstream\n`));
    this.#write(stream);
    this.#write(bytesOf('\nendstream\nendobj\n'));
  }

  lies(id: number, inStream: number, index: number): void {
    this.#places.set(id, [2, inStream, index]);
  }

  /** Ends the file with a stream of references, which is the last object itself. */
  ended(id: number, trailer: string): Uint8Array {
    const from = this.#length;
    this.#places.set(id, [1, from, 0]);
    const rows = new Uint8Array(7 * (id + 1));
    const view = new DataView(rows.buffer);
    // Object 0 heads the list of free ones, as every file has it.
    view.setUint16(5, 0xffff);
    for (const [object, [kind, place, index]] of this.#places) {
      view.setUint8(7 * object, kind);
      view.setUint32(7 * object + 1, place);
      view.setUint16(7 * object + 5, index);
    }
    this.add(id, ...packedStream(`<<\n/Type /XRef\n/Size ${id + 1}\n/W [1 4 2]\n${trailer}\n>>`, rows));
    this.#write(bytesOf(`startxref\n${from}\n%%EOF\n`));
    return joinedBytes(this.#chunks);
  }
}

/** @returns bytes as a text of as many signs */
function latin(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return text;
}

/** @returns the bytes of a text that has only signs below 256 */
const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
