import { crc32, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { withDensity } from '../../src/files/png-density.ts';

/** @returns a chunk of a PNG, its check by zlib */
function chunk(name: string, content: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), content]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, check]);
}

/** @returns the chunks of a PNG by name, after zlib has found every check to be right */
function chunksOf(png: Buffer): (readonly [string, Buffer])[] {
  const found: (readonly [string, Buffer])[] = [];
  for (let at = 8; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const named = png.subarray(at + 4, at + 8 + length);
    expect(png.readUInt32BE(at + 8 + length)).toBe(crc32(named));
    found.push([named.toString('latin1', 0, 4), named.subarray(4)]);
    at += 12 + length;
  }
  return found;
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** One grey dot. */
const DOT = Buffer.concat([
  SIGNATURE,
  chunk('IHDR', Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0])),
  chunk('IDAT', deflateSync(Buffer.from([0, 128]))),
  chunk('IEND', Buffer.alloc(0)),
]);

describe('a PNG that knows its size on paper', () => {
  // 300 dots to the inch of 0.0254 m are 11,811 to the metre; 72 are 2,835.
  for (const [perInch, perMetre] of [[300, 11_811], [72, 2_835], [100, 3_937]] as const) {
    it(`says ${perMetre} to the metre for ${perInch} to the inch, and is otherwise the same`, () => {
      const before = chunksOf(DOT);
      const after = chunksOf(Buffer.from(withDensity(DOT, perInch)));
      expect(after.map(([name]) => name)).toEqual(['IHDR', 'pHYs', 'IDAT', 'IEND']);
      const [, physical] = after[1]!;
      expect([physical.readUInt32BE(0), physical.readUInt32BE(4), physical[8]]).toEqual([perMetre, perMetre, 1]);
      expect(after.filter(([name]) => name !== 'pHYs')).toEqual(before);
    });
  }
});
