import type { Field } from './field.ts';

const pairs = (n: number): number => (n * (n + 1)) / 2;

/** @returns how many rectangles of cells a field has */
export const rectCount = (field: Field): number => pairs(field.xs.length - 1) * pairs(field.ys.length - 1);

/** @returns the number of the rectangle of cells among all of the field */
export const rectId = (rows: number, i0: number, j0: number, i1: number, j1: number): number =>
  ((i1 * (i1 - 1)) / 2 + i0) * pairs(rows) + (j1 * (j1 - 1)) / 2 + j0;
