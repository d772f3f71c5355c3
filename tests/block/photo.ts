import type { Picture } from '../../src/block/publication.ts';

/** A JPEG of 3 by 2 pixels, yellow between blue, as Chromium writes one, without its colour profile. */
export const JPEG =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBD' +
  'ARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAACAAMDASIAAhEBAxEB/8QAFQABAQAA' +
  'AAAAAAAAAAAAAAAAAAX/xAAaEAEAAQUAAAAAAAAAAAAAAAAAAgMEM3Oy/8QAFQEBAQAAAAAAAAAAAAAAAAAAAwT/xAAYEQADAQEAAAAAAAAAAAAAAAAAATICA//aAAwD' +
  'AQACEQMRAD8Ak3ueOqnxEAvOES6pn//Z';

export const photo: Omit<Picture, 'id'> = { width: 3, height: 2, jpeg: JPEG };

/** The same file with a comment of so many signs in it, so that it is another one. */
export function photoWith(comment: string): Omit<Picture, 'id'> {
  const file = atob(JPEG);
  const length = comment.length + 2;
  const segment = `\xff\xfe${String.fromCharCode(length >> 8, length & 255)}${comment}`;
  return { ...photo, jpeg: btoa(file.slice(0, 2) + segment + file.slice(2)) };
}
