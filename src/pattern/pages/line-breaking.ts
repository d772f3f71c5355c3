/** A word, or a part of one, in a line. */
export interface Atom {
  readonly wide: number;
  /** How wide the space before it is where it does not begin a line; 0 for the rest of a word. */
  readonly space: number;
  /** How much it spoils the text to begin a line with it; GLUED where only need may. */
  readonly cost: number;
}

/** Value and unit, "unit" and its letter: they are parted only where a line is too narrow for both. */
export const GLUED = 1e6;

/** A single short word in the last line is worth a little rag elsewhere. */
const LONELY = 0.15;
const LONELY_COST = 0.08;

/**
 * Breaks text, ragged at the right, so that the sum over all lines but the last of the square of what is missing, as a share of the
 * width, and
 * of the costs of the breaks is least (after Breaking Paragraphs into Lines, Software: Practice and Experience
 * 11, 1981). No atom is wider than the line.
 * @returns where the lines begin; none for no text
 */
export function breaksOf(atoms: readonly Atom[], width: number): readonly number[] {
  if (atoms.length === 0) return [];
  // best[i]: least cost of the first i atoms in whole lines; from[i]: where the last of these lines begins.
  const best = new Float64Array(atoms.length + 1).fill(Infinity);
  const from = new Int32Array(atoms.length + 1);
  best[0] = 0;
  for (let end = 1; end <= atoms.length; end++) {
    let wide = 0;
    for (let start = end - 1; start >= 0; start--) {
      const atom = atoms[start]!;
      wide += atom.wide + (start + 1 < end ? atoms[start + 1]!.space : 0);
      if (wide > width + SLACK && start + 1 < end) break;
      const cost = best[start]! + lineCost(wide, width, { first: start === 0, last: end === atoms.length }) + (start === 0 ? 0 : atom.cost);
      if (cost < best[end]!) [best[end], from[end]] = [cost, start];
    }
  }
  const starts: number[] = [];
  for (let at = atoms.length; at > 0; at = from[at]!) starts.unshift(from[at]!);
  return starts;
}

/** Sums of doubles, in points: what no printer shows. */
export const SLACK = 1e-6;

/** @returns what a line of this width costs */
export function lineCost(wide: number, width: number, { first, last }: { readonly first: boolean; readonly last: boolean }): number {
  if (last) return !first && wide < width * LONELY ? LONELY_COST : 0;
  return (Math.max(0, width - wide) / width) ** 2;
}
