/** An order in which the finished units of a block are put together. */
export type AssemblyOrder = (typeof ORDERS)[number];

/**
 * Every order there may be. 'as found': as the way was found. 'web': rows whose seams are sewn column onto column, the thread uncut, so
 * that all of them hang together before the long seams.
 */
export const ORDERS = ['as found', 'rows', 'columns', 'web', 'quarters'] as const;
