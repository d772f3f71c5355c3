/** What is wrong with a picture that is said to be a JPEG. */
export type JpegFault = 'not base 64' | 'not a JPEG' | 'cut short' | 'not this size' | 'colours for presses' | 'carries notes';

/** The marker of a segment, behind 0xff: ISO/IEC 10918-1, table B.1. */
const START = 0xd8;
const END = 0xd9;
const SCAN = 0xda;
/** Where cameras keep their notes (Exif, XMP): which way up the picture is, when and where it was taken. */
const NOTES = 0xe1;
/** The frame's header: any but DHT, JPG and DAC, which lie among them. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** @returns the bytes of a file in base 64, as the characters of a text; null where it is not written so */
function unpacked(base64: string): string | null {
  // `atob` would pass over spaces, and over what is missing at the end.
  if (base64 === '' || base64.length % 4 !== 0 || /[^A-Za-z0-9+/=]/.test(base64)) return null;
  try {
    return atob(base64);
  } catch {
    return null;
  }
}

/**
 * Looks at a file's skeleton, without unpacking the picture.
 * @param base64 the file
 * @param width in pixels, as it is said to be
 * @returns what is wrong with it; null for a JPEG in greys or colours of a screen, of this size, without a camera's notes
 */
export function jpegFault(base64: string, width: number, height: number): JpegFault | null {
  const file = unpacked(base64);
  if (file === null) return 'not base 64';
  const byte = (at: number): number => file.charCodeAt(at);
  if (byte(0) !== 0xff || byte(1) !== START) return 'not a JPEG';
  let framed = false;
  for (let at = 2; ; ) {
    if (at + 4 > file.length) return 'cut short';
    if (byte(at) !== 0xff) return 'not a JPEG';
    const marker = byte(at + 1);
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === NOTES) return 'carries notes';
    if (marker === SCAN) break;
    if (isFrame(marker)) {
      if (at + 10 > file.length) return 'cut short';
      const parts = byte(at + 9);
      if (byte(at + 4) !== 8 || (parts !== 1 && parts !== 3)) return 'colours for presses';
      if (((byte(at + 5) << 8) | byte(at + 6)) !== height || ((byte(at + 7) << 8) | byte(at + 8)) !== width) return 'not this size';
      framed = true;
    }
    at += 2 + ((byte(at + 2) << 8) | byte(at + 3));
  }
  if (!framed) return 'not a JPEG';
  return byte(file.length - 2) === 0xff && byte(file.length - 1) === END ? null : 'cut short';
}
