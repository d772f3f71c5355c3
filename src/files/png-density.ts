/*
 * How large a PNG is on paper: the chunk pHYs of the PNG specification (ISO/IEC 15948, 11.3.4.3), which browsers do not write.
 */

/** Bytes before the first chunk that may follow the header: signature 8, and length 4, name 4, content 13, check 4 of IHDR. */
const AFTER_HEADER = 33;

/** @returns the PNG with its dots per inch written in it, the same both ways */
export function withDensity(png: Uint8Array, perInch: number): Uint8Array {
  const perMetre = Math.round((perInch * 10_000) / 254);
  const chunk = new Uint8Array(21);
  const write = new DataView(chunk.buffer);
  write.setUint32(0, 9);
  chunk.set([...'pHYs'].map((sign) => sign.charCodeAt(0)), 4);
  write.setUint32(8, perMetre);
  write.setUint32(12, perMetre);
  // The unit is the metre.
  chunk[16] = 1;
  write.setUint32(17, checkOf(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, AFTER_HEADER));
  whole.set(chunk, AFTER_HEADER);
  whole.set(png.subarray(AFTER_HEADER), AFTER_HEADER + chunk.length);
  return whole;
}

/** @returns the check of a chunk: CRC-32 with the reversed polynomial EDB88320 (ISO/IEC 15948, annex D) */
function checkOf(bytes: Uint8Array): number {
  let check = 0xffffffff;
  for (const byte of bytes) {
    check ^= byte;
    for (let bit = 0; bit < 8; bit++) check = (check & 1) === 1 ? (check >>> 1) ^ 0xedb88320 : check >>> 1;
  }
  return (check ^ 0xffffffff) >>> 0;
}
