import { compareAlong, lineThrough, parallel, side, type Point } from '../geometry/point.ts';
import { shapeOf } from '../geometry/shape.ts';
import type { Layout } from './layout.ts';
import type { Join, StepPart } from './step.ts';

/** Rounds of four triangles: each round makes the square or rectangle before it into the next one, set on its corners. */
const ROUND = 4;

/**
 * @returns the numbers of the triangles that go round a middle, round by round, in sewing order with opposite ones one after the
 * other; null when a layout is anything else
 */
export function cornerRounds({ parts, joins }: Layout): readonly (readonly number[])[] | null {
  const single = joins.every(
    ({ second }, i) => second < parts.length && second > 0 && joins[i]!.first === (i === 0 ? 0 : parts.length + i - 1),
  );
  const triangles = parts.slice(1).every(({ outline }) => isHalfSquare(outline));
  if (!single || !triangles || parts.length <= ROUND || (parts.length - 1) % ROUND !== 0 || parts[0]!.outline.length !== 4) return null;
  // A triangle belongs to the round after that of the last thing its seam is sewn to.
  const roundOf = new Map([[0, 0]]);
  const rounds: Join[][] = [];
  for (const join of joins) {
    const touched = [...roundOf].filter(([part]) => isAlong(parts[part]!, join)).map(([, round]) => round);
    const round = Math.max(...touched);
    roundOf.set(join.second, round + 1);
    (rounds[round] ??= []).push(join);
  }
  if (rounds.some((round) => round.length !== ROUND)) return null;
  return rounds.map((round) => {
    const [a, ...others] = round as [Join, ...Join[]];
    const opposite = others.find((join) => isParallel(join, a));
    const rest = others.filter((join) => join !== opposite);
    return opposite && isParallel(rest[0]!, rest[1]!)
      ? [a, opposite, ...rest].map(({ second }) => second)
      : round.map(({ second }) => second);
  });
}

/** @returns whether an outline is a right triangle of two equal legs, whose long side has the same tip at both ends */
function isHalfSquare(outline: readonly Point[]): boolean {
  const shape = shapeOf(outline);
  return shape.shape === 'right triangle' && shape.isosceles;
}

const isParallel = (a: Join, b: Join): boolean => parallel(lineThrough(a.from, a.to), lineThrough(b.from, b.to));

/** @returns whether a part has an edge on a seam's stretch */
function isAlong({ outline }: StepPart, { from, to }: Join): boolean {
  const line = lineThrough(from, to);
  const [low, high] = compareAlong(from, to) < 0 ? [from, to] : [to, from];
  return outline.some((p, i) => {
    const q = outline[(i + 1) % outline.length]!;
    if (side(line, p) !== 0 || side(line, q) !== 0) return false;
    const [first, last] = compareAlong(p, q) < 0 ? [p, q] : [q, p];
    return compareAlong(first, high) < 0 && compareAlong(low, last) < 0;
  });
}

/** @returns a layout whose triangles go round by round, where it is one of rounds */
export function roundByRound(layout: Layout): Layout {
  const rounds = cornerRounds(layout);
  if (!rounds) return layout;
  const { parts, joins } = layout;
  const order = rounds.flat();
  return {
    parts: [parts[0]!, ...order.map((part) => parts[part]!)],
    joins: order.map((part, i) => ({
      ...joins.find(({ second }) => second === part)!,
      first: i === 0 ? 0 : parts.length + i - 1,
      second: i + 1,
    })),
  };
}
