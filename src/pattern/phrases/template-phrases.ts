/**
 * What is printed on pages of templates, in one language. Arguments that are texts hold values already as they are printed.
 */
export interface TemplatePhrases {
  readonly title: (name: string) => string;
  readonly place: (page: number, pages: number) => string;
  /** Where the proof does not hold. */
  readonly alarm: string;
  readonly size: (width: string, height: string) => string;
  /** How large the block finishes, for how many blocks to cut, and what is included. */
  readonly about: (size: string, blocks: number, seam: string) => string;
  readonly lines: string;
  readonly reversed: string;

  /** How many are cut of one fabric, so many of them with the template turned over. */
  readonly cut: (printed: number, reversed: number) => string;
  /** A fabric with its lines of the cutting list. */
  readonly fabric: (name: string, lines: readonly string[]) => string;
  readonly more: (fabrics: number) => string;
  readonly seeList: string;
  readonly top: (counts: readonly string[]) => string;

  readonly part: (part: number, parts: number) => string;
  readonly join: (template: string, part: string, uses: string) => string;

  /** Beside the squares to measure: short lines. */
  readonly measure: readonly string[];
  readonly inch: string;
}
