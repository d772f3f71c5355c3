import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { UnitKind } from '../../src/geometry/piecing/assembly.ts';
import type { Method } from '../../src/block/choices.ts';
import { formatLength } from '../../src/measure/lengths.ts';
import { rational, type Rational } from '../../src/measure/rational.ts';
import { block, column, cutFor, gathered, goose, halves, hourglass, pieced, plain, row, turnedPart, type Part } from './sewn.ts';

interface Published {
  readonly source: string;
  readonly methods: Partial<Record<UnitKind, Method>>;
  readonly patches: number;
  readonly units: Partial<Record<UnitKind, number>>;
  readonly cuts: readonly { fabric: string; quantity: number; width: string; height: string }[];
}

const published = (name: string): Published =>
  JSON.parse(readFileSync(new URL(`../cases/${name}.expect.json`, import.meta.url), 'utf8')) as Published;

/** The four quarter turns of a part. */
const turns = (part: Part): readonly [Part, Part, Part, Part] => {
  const once = turnedPart(part);
  const twice = turnedPart(once);
  return [part, once, twice, turnedPart(twice)];
};

const sawtooth = (): Part => {
  const [top, right, bottom, left] = turns(goose('solid', 'print', 'print', 1));
  const corner = plain('solid', 1);
  return block([corner, bottom, corner], [right, plain('print', 2), left], [corner, top, corner]);
};

const ohio = (star: string, ground: string, centre: string): Part => {
  const [upright, level] = turns(hourglass([ground, star, ground, star], 1));
  const corner = plain(ground, 1);
  return block([corner, upright, corner], [level, plain(centre, 1), level], [corner, upright, corner]);
};

const bearsPaw = (): Part => {
  const claw = halves('black', 'pink', 1);
  const paw = column(row(plain('black', 1), claw, claw), row(column(claw, claw), plain('pink', 2)));
  const [a, b, c, d] = turns(paw);
  return block([a, plain('black', 1, 3), b], [plain('black', 3, 1), plain('pink', 1), plain('black', 3, 1)], [d, plain('black', 1, 3), c]);
};

const doubleNinePatch = (): Part => {
  const [g, w] = [plain('green', 1), plain('white', 1)];
  const nine = column(row(g, w, g), row(w, g, w), row(g, w, g));
  const big = plain('white', 3);
  return block([nine, big, nine], [big, nine, big], [nine, big, nine]);
};

/** Logs turn round the hearth clockwise, from the left side on; logs 1 and 2 are one and two hearths long. */
const logCabin = (): Part => {
  let cabin: Part = plain('hearth', 1);
  for (let log = 1; log <= 20; log += 1) {
    const length = Math.ceil((log + 1) / 2);
    cabin = log % 2 === 1 ? row(plain(`log${log}`, 1, length), cabin) : column(plain(`log${log}`, length, 1), cabin);
  }
  return cabin;
};

const whirl = (): Part =>
  gathered('partial-seam ring', 18, 18, [
    [plain('oat', 8), 5, 5],
    [plain('rust', 13, 5), 0, 0],
    [plain('teal', 5, 13), 13, 0],
    [plain('plum', 13, 5), 5, 13],
    [plain('moss', 5, 13), 0, 5],
  ]);

const shooFly = (): Part => {
  const [a, b, c, d] = turns(halves('white', 'mustard', 1, 1, 'rising'));
  const side = plain('mustard', 1);
  return block([a, side, b], [side, plain('yellow', 1), side], [d, side, c]);
};

const friendship = (): Part => {
  const [a, b, c, d] = turns(halves('white', 'red', 1));
  const corner = plain('white', 1);
  return block([corner, a, corner], [d, plain('blue', 1), b], [corner, c, corner]);
};

const CASES: readonly (readonly [string, Rational, () => Part])[] = [
  ['shoo-fly-12', rational(4), shooFly],
  ['friendship-star-6', rational(2), friendship],
  ['ohio-star-10-1-2', rational(7, 2), () => ohio('orange', 'blue', 'orange')],
  ['ohio-star-12-triangles', rational(4), () => ohio('red', 'cream', 'navy')],
  ['bears-paw-14', rational(2), bearsPaw],
  ['sawtooth-star-6', rational(3, 2), sawtooth],
  ['sawtooth-star-8', rational(2), sawtooth],
  ['sawtooth-star-12', rational(3), sawtooth],
  ['sawtooth-star-8-triangles', rational(2), sawtooth],
  ['sawtooth-star-6-four-at-a-time', rational(3, 2), sawtooth],
  ['double-nine-patch-9', rational(1), doubleNinePatch],
  ['log-cabin-11', rational(1), logCabin],
  ['whirl-9', rational(1, 2), whirl],
];

describe('the cutting lists of published blocks', () => {
  test.each(CASES)('%s', (name, step, part) => {
    const { methods, patches, cuts } = published(name);
    const list = cutFor(part(), { step, methods });
    const ours = list.cuts.map(
      ({ fabric, quantity, width, height }) => `${fabric} ${quantity} @ ${formatLength(width)} × ${formatLength(height)}`,
    );
    const theirs = cuts.map(({ fabric, quantity, width, height }) => `${fabric} ${quantity} @ ${width} × ${height}`);
    expect([...ours].sort()).toEqual([...theirs].sort());
    expect(list.pieces).toHaveLength(patches);
  });

  test.each(CASES)('%s is built of the units that its source names', (name, _, part) => {
    const found: Partial<Record<UnitKind, number>> = {};
    for (const { kind, places } of pieced(part()).units) found[kind] = (found[kind] ?? 0) + places.length;
    expect(found).toMatchObject(published(name).units);
  });
});
