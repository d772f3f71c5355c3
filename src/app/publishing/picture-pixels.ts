/**
 * @param file the first bytes of a picture file, a quarter of a megabyte of them or all there are
 * @returns how many pixels it says it has, so that it need not be unpacked to be refused; null where that is not found. PNG (ISO/IEC
 * 15948) says so in its header, JPEG (ISO/IEC 10918-1) in its frame, extended WebP (RFC 9649) in its canvas.
 */
export function pixelsIn(file: Uint8Array, kind: 'png' | 'jpeg' | 'webp'): number | null {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (kind === 'png') return file.length < 24 ? null : view.getUint32(16) * view.getUint32(20);
  if (kind === 'webp') {
    if (file.length < 30 || view.getUint32(12) !== 0x56503858) return null;
    const side = (at: number): number => view.getUint16(at, true) + file[at + 2]! * 65_536 + 1;
    return side(24) * side(27);
  }
  for (let at = 2; at + 9 < file.length && file[at] === 0xff; at += 2 + view.getUint16(at + 2)) {
    const marker = file[at + 1]!;
    // Frames are marked 0xc0 to 0xcf, but for tables (c4, cc) and an extension (c8).
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) return view.getUint16(at + 5) * view.getUint16(at + 7);
  }
  return null;
}
