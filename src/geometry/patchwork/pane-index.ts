/** @returns index of the last edge ≤ value */
export function paneIndex(edges: readonly number[], value: number): number {
  let [low, high] = [0, edges.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (edges[middle]! <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}
