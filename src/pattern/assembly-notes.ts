import type { AssemblyOrder } from '../geometry/piecing/order.ts';

const BY: Readonly<Record<AssemblyOrder, string>> = {
  'as found': 'as found',
  rows: 'by rows',
  columns: 'by columns',
  web: 'as a web',
  quarters: 'by quarters',
};

/** @returns that the units of a block do not lie so that they can be put together in the order that is chosen */
export const unassembledNote = (order: AssemblyOrder): string =>
  `The units of this drawing cannot be put together ${BY[order]} by straight seams; they are put together as found.`;
