/** Blocks whose standard way is another than the pattern's, each with what differs. A block that comes to agree leaves the table. */
export const KNOWN_MISSES: Readonly<Record<string, string>> = {
  'gallery/duck-and-ducklings-10':
    'eight more pieces: each corner is sewn cell by cell, where the pattern sets one large triangle against a pieced one',
  'gallery/four-log-cabins-10':
    'nine fewer pieces: strips of one fabric that meet across neighbouring cabins are cut as one, so that no cabin is a unit of its own',
};
