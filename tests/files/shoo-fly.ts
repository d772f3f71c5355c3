/** A small good file, as data, to be spoilt in one place. */
export const shooFly = () => ({
  format: 'piecewright/block',
  version: 1,
  name: 'Shoo Fly',
  finished: { width: '12', height: '12', unit: 'in' },
  grid: { columns: 3, rows: 3 },
  fabrics: [
    { id: 'oat', name: 'Oat', color: '#f3ede0' },
    { id: 'teal', name: 'Teal', color: '#2f5d62', directional: true, scraps: { prints: 4, seed: 7 } },
  ],
  ground: 'oat',
  patches: [
    { fabric: 'teal', points: [[1, 1], [2, 1], [2, 2], [1, 2]], whole: true },
    { fabric: 'teal', points: [[0, 1], [1, 0], [1, 1]] },
    { fabric: 'teal', points: [[2, 0], [3, 1], [2, 1]] },
  ],
  seams: [[[0, 1], [3, 1]]],
  pins: [{ pin: 'sewn last', from: [1, 0], to: [1, 3] }],
  unitMethods: [{ from: [0, 0], to: [1, 1], method: 'one-at-a-time' }],
  pressedSeams: [{ from: [1, 0], to: [1, 1], lies: 'right' }],
});

/** @returns a copy of data with something else at a place, or with nothing there for `undefined` */
export function spoilt(data: object, path: readonly (string | number)[], value: unknown): object {
  const copy = structuredClone(data);
  let at = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  const last = path.at(-1)!;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return copy;
}
