import { samePoint } from '../point.ts';
import { takenBoundaries, type Between, type Boundary } from './boundaries.ts';
import { symmetriesOf } from './symmetry.ts';

/** What a symmetry makes of the fabrics: for each one that shows, the one that lies where it was. */
export type Exchange = ReadonlyMap<string, string>;

/**
 * @param fabrics all that show
 * @returns every way in which a mirror or a turn of the block lays its areas on each other, told by what comes to lie where each fabric
 * was; each once, the one that exchanges nothing first. They are a group: of two, also what both do one after the other is among them.
 */
export function exchanges(fabrics: readonly string[], width: number, height: number, boundaries: ReadonlyMap<string, Boundary>): readonly Exchange[] {
  const found = new Map<string, Exchange>();
  for (const symmetry of symmetriesOf(width, height)) {
    if (width !== height && symmetry.a === 0) continue;
    const exchange = exchangeOf(fabrics, boundaries, takenBoundaries(symmetry, boundaries));
    if (exchange) found.set(fabrics.map((fabric) => exchange.get(fabric)).join('\n'), exchange);
  }
  return [...found.values()];
}

/** @returns what lies behind each stretch of a picture in another one of the same stretches; null where they are not the same */
function exchangeOf(fabrics: readonly string[], one: ReadonlyMap<string, Boundary>, other: ReadonlyMap<string, Boundary>): Exchange | null {
  const [there, back] = [new Map<string, string>(), new Map<string, string>()];
  const pair = (from: string, to: string): boolean => {
    if ((there.get(from) ?? to) !== to || (back.get(to) ?? from) !== from) return false;
    there.set(from, to);
    back.set(to, from);
    return true;
  };
  const [lines, others] = [meetings(one), new Map(meetings(other))];
  if (lines.length !== others.size) return null;
  for (const [key, between] of lines) {
    const theirs = others.get(key) ?? [];
    if (theirs.length !== between.length) return null;
    const same = between.every((stretch, i) => {
      const { from, to, front, back: behind } = theirs[i]!;
      return samePoint(stretch.from, from) && samePoint(stretch.to, to) && pair(stretch.front, front) && pair(stretch.back, behind);
    });
    if (!same) return null;
  }
  for (const fabric of fabrics) if (!there.has(fabric) && !pair(fabric, fabric)) return null;
  return there;
}

/** @returns by line, where two different fabrics meet; one patch beside another of its own fabric is no edge of the picture */
function meetings(boundaries: ReadonlyMap<string, Boundary>): readonly (readonly [string, readonly Between[]])[] {
  return [...boundaries].flatMap(([key, { between }]) => {
    const differ = between.filter(({ front, back }) => front !== back);
    return differ.length > 0 ? [[key, differ] as const] : [];
  });
}
