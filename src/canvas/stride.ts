/** A cell of the grid: column, row. */
export type Cell = readonly [number, number];

/**
 * @returns the cells a straight stroke between two points passes, in order, so that a fast hand skips none.
 * Points in grid units; the walk crosses one grid line at a time (Amanatides and Woo, "A fast voxel traversal algorithm for
 * ray tracing", Eurographics 1987). For pointing only.
 */
export function cellsPassed(from: readonly [number, number], to: readonly [number, number]): Cell[] {
  let [column, row] = [Math.floor(from[0]), Math.floor(from[1])];
  const [lastColumn, lastRow] = [Math.floor(to[0]), Math.floor(to[1])];
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const stepX = Math.sign(dx);
  const stepY = Math.sign(dy);
  const perColumn = dx === 0 ? Infinity : Math.abs(1 / dx);
  const perRow = dy === 0 ? Infinity : Math.abs(1 / dy);
  let toColumn = dx === 0 ? Infinity : (stepX > 0 ? column + 1 - from[0] : from[0] - column) * perColumn;
  let toRow = dy === 0 ? Infinity : (stepY > 0 ? row + 1 - from[1] : from[1] - row) * perRow;
  const cells: Cell[] = [[column, row]];
  const crossings = Math.abs(lastColumn - column) + Math.abs(lastRow - row);
  for (let i = 0; i < crossings; i++) {
    if (toColumn < toRow) {
      column += stepX;
      toColumn += perColumn;
    } else {
      row += stepY;
      toRow += perRow;
    }
    cells.push([column, row]);
  }
  return cells;
}
