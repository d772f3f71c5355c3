import { joinedBytes } from '../../measure/bytes.ts';

/** What a JPEG needs to be shown: all but segments of applications (JFIF and Adobe aside) and comments. ISO/IEC 10918-1, table B.1. */
const isNeeded = (marker: number): boolean => (marker < 0xe0 || marker > 0xef || marker === 0xe0 || marker === 0xee) && marker !== 0xfe;

/** @returns a JPEG without what programs and cameras have written into it about themselves; the picture is the same to the last bit */
export function leanJpeg(file: Uint8Array): Uint8Array {
  const kept: Uint8Array[] = [file.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= file.length && file[at] === 0xff && file[at + 1] !== 0xda) {
    const end = at + 2 + ((file[at + 2]! << 8) | file[at + 3]!);
    if (isNeeded(file[at + 1]!)) kept.push(file.subarray(at, end));
    at = end;
  }
  kept.push(file.subarray(at));
  return joinedBytes(kept);
}
