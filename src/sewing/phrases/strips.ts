/** How strips are cut into triangles that lie head to tail: whole sentences. */
export interface StripPhrases {
  /** Every second cut straight across. @param measure what is measured for each triangle along the edges */
  readonly halves: (cloths: readonly string[], height: string, measure: string) => string;
  /** Every cut slanted. @param long what the long sides measure once their tips are cut off */
  readonly quarters: (cloths: readonly string[], height: string, measure: string, long: string) => string;
}
