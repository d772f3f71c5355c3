import type { Picture } from '../../src/block/publication.ts';

/** A JPEG of 3 by 2 pixels, yellow between blue, as Chromium writes one, without its colour profile. */
export const JPEG =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBD' +
  'ARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAACAAMDASIAAhEBAxEB/8QAFQABAQAA' +
  'AAAAAAAAAAAAAAAAAAX/xAAaEAEAAQUAAAAAAAAAAAAAAAAAAgMEM3Oy/8QAFQEBAQAAAAAAAAAAAAAAAAAAAwT/xAAYEQADAQEAAAAAAAAAAAAAAAAAATICA//aAAwD' +
  'AQACEQMRAD8Ak3ueOqnxEAvOES6pn//Z';

/** The same as Chromium writes it: with a colour profile, in which its maker and a year stand. */
export const WITH_PROFILE =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/4gHYSUNDX1BST0ZJTEUAAQEAAAHIAAAAAAQwAABtbnRyUkdCIFhZWiAH4AABAAEAAAAAAABhY3NwAAAAAAAAAAAAAAAAAAAAA' +
  'AAAAAAAAAAAAAAAAQAA9tYAAQAAAADTLQAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAlkZXNjAAAA8AAAACRyWFlaAA' +
  'ABFAAAABRnWFlaAAABKAAAABRiWFlaAAABPAAAABR3dHB0AAABUAAAABRyVFJDAAABZAAAAChnVFJDAAABZAAAAChiVFJDAAABZAAAAChjcHJ0AAABjAAAADxtbHV' +
  'jAAAAAAAAAAEAAAAMZW5VUwAAAAgAAAAcAHMAUgBHAEJYWVogAAAAAAAAb6IAADj1AAADkFhZWiAAAAAAAABimQAAt4UAABjaWFlaIAAAAAAAACSgAAAPhAAAts9Y' +
  'WVogAAAAAAAA9tYAAQAAAADTLXBhcmEAAAAAAAQAAAACZmYAAPKnAAANWQAAE9AAAApbAAAAAAAAAABtbHVjAAAAAAAAAAEAAAAMZW5VUwAAACAAAAAcAEcAbwBvA' +
  'GcAbABlACAASQBuAGMALgAgADIAMAAxADb/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2' +
  'P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAACAAMDASIAAhEBAxEB/8QAFQA' +
  'BAQAAAAAAAAAAAAAAAAAAAAX/xAAaEAEAAQUAAAAAAAAAAAAAAAAAAgMEM3Oy/8QAFQEBAQAAAAAAAAAAAAAAAAAAAwT/xAAYEQADAQEAAAAAAAAAAAAAAAAAATIC' +
  'A//aAAwDAQACEQMRAD8Ak3ueOqnxEAvOES6pn//Z';

export const photo: Omit<Picture, 'id'> = { width: 3, height: 2, jpeg: JPEG };

/** The same file with a comment of so many signs in it, so that it is another one. */
export function photoWith(comment: string): Omit<Picture, 'id'> {
  const file = atob(JPEG);
  const length = comment.length + 2;
  const segment = `\xff\xfe${String.fromCharCode(length >> 8, length & 255)}${comment}`;
  return { ...photo, jpeg: btoa(file.slice(0, 2) + segment + file.slice(2)) };
}

/** The same file as a camera writes it that was held on its side: a quarter turn to the right is to be shown (Exif 2.3, Orientation 6). */
export function onItsSide(): Uint8Array {
  const file = atob(JPEG);
  const exif = 'Exif\0\0MM\0\x2a\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0';
  const segment = `\xff\xe1${String.fromCharCode(0, exif.length + 2)}${exif}`;
  return Uint8Array.from(file.slice(0, 2) + segment + file.slice(2), (sign) => sign.charCodeAt(0));
}
