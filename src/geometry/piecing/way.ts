/** What a way to sew a block goes for. */
export type Way = (typeof WAYS)[number];

/** Every way there may be, the standard one first. */
export const WAYS = [
  'standard units',
  'fewest pieces',
  'largest repeated unit',
  'rows',
  'columns',
  'quarters',
  'foundation',
] as const;

/** One line for each way: what it is good for. */
export const GOOD_FOR: Readonly<Record<Way, string>> = {
  'standard units': 'Familiar units and equal sizes: quick to cut, easy to teach.',
  'fewest pieces': 'The least to cut and the fewest seams; some pieces may be of odd sizes.',
  'largest repeated unit': 'The same large part made again and again: good for chain piecing and for a class.',
  rows: 'Rows right across, joined last: easy to keep in order beside the machine.',
  columns: 'Columns from top to bottom, joined last: for a drawing that reads upright.',
  quarters: 'Four quarters joined by two seams: small to handle, and easy to turn about.',
  foundation: 'Patch after patch, each sewn to what is there, as onto a foundation: sharp points, also with slivers and odd slopes.',
};
