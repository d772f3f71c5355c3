declare module 'rectangle-decomposition' {
  type Corner = readonly [number, number];
  /**
   * @param region outline and holes, each the corners of a loop with the inside to the left (x right, y up)
   * @returns the fewest rectangles that make up the region, each its least and its greatest corner
   */
  export default function decompose(region: readonly (readonly Corner[])[]): readonly (readonly [Corner, Corner])[];
}
