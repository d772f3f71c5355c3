import type { Stroke } from './page.ts';

/** Black ink and greys: it must come out of any printer. */
export const INK = '#111111';
export const QUIET = '#555555';

/** Lines as wide as scissors and eyes need them, in points; cut along the middle of the line. */
export const CUT_LINE: Stroke = { color: INK, width: 0.8 };
export const SEAM_LINE: Stroke = { color: INK, width: 0.6, dash: [4, 2.5] };
export const THIN_LINE: Stroke = { color: QUIET, width: 0.5 };
export const MATCH_LINE: Stroke = { color: QUIET, width: 0.6, dash: [1.5, 3] };
