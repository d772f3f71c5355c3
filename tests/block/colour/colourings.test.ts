import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/block/block.ts';
import { allColourings, countColourings, someColourings, type Colouring, type Repeats, type Roles } from '../../../src/block/colour/colourings.ts';
import { rolesOf } from '../../../src/block/colour/roles.ts';
import { variationsOf } from '../../../src/block/colour/variations.ts';
import { parseBlock } from '../../../src/files/block-file.ts';

const folder = 'tests/gallery';
const REPEATS: readonly Repeats[] = ['freely', 'neighbours differ', 'each once'];

const blocks = readdirSync(folder)
  .filter((name) => name.endsWith('.block.json'))
  .map((name) => {
    const read = parseBlock(readFileSync(`${folder}/${name}`, 'utf8'));
    if (!read.ok) throw new Error(read.problem.sentence);
    return { name, block: read.value };
  })
  .filter(({ block }) => block.fabrics.length <= 5 && block.finished.width.n === block.finished.height.n)
  .slice(0, 50);

const rolesIn = (block: Block): Roles => {
  const roles = rolesOf(block);
  if (!roles.ok) throw new Error(roles.problem.sentence);
  return roles.value;
};

/** Places across a side, as far from one end as others from the other; at no simple fraction, so that hardly an edge passes through any. */
const HALF = Array.from({ length: 18 }, (_, i) => ((i + 1) * 0.6180339887) % 1 / 2).sort((a, b) => a - b);
const PLACES = [...HALF, ...HALF.map((t) => 1 - t).reverse()];
const SAMPLES = PLACES.length;

/** What shows at evenly spread places, row by row: seen by counting crossings to the right, without any of the program's geometry. */
function looked(block: Block): readonly string[] {
  const side = block.grid.columns * block.denominator;
  const high = block.grid.rows * block.denominator;
  const inside = (points: readonly (readonly [number, number])[], x: number, y: number): boolean =>
    points.reduce((within, [ax, ay], i) => {
      const [bx, by] = points[(i + 1) % points.length]!;
      return ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax ? !within : within;
    }, false);
  return PLACES.flatMap((v) => PLACES.map((u) => {
    const [x, y] = [u * side, v * high];
    return block.patches.findLast(({ points }) => inside(points, x, y))?.fabric ?? block.ground;
  }));
}

/** The eight ways to read a square of samples. */
const VIEWS: readonly ((x: number, y: number) => readonly [number, number])[] = [
  (x, y) => [x, y], (x, y) => [SAMPLES - 1 - x, y], (x, y) => [x, SAMPLES - 1 - y], (x, y) => [SAMPLES - 1 - x, SAMPLES - 1 - y],
  (x, y) => [y, x], (x, y) => [SAMPLES - 1 - y, x], (x, y) => [y, SAMPLES - 1 - x], (x, y) => [SAMPLES - 1 - y, SAMPLES - 1 - x],
];

/**
 * @returns how many colourings differ, looked at from every side from which the block's areas lie on each other, the samples on both
 * diagonals left out
 */
function pictures(block: Block, roles: Roles, colourings: readonly Colouring[]): number {
  const seen = looked(block);
  const index = (x: number, y: number): number => y * SAMPLES + x;
  const clear = seen.map((_, at) => {
    const [x, y] = [at % SAMPLES, Math.floor(at / SAMPLES)];
    return VIEWS.every((view) => {
      const [p, q] = view(x, y);
      // Corner to corner a diagonal passes through samples: there two views may see different sides of it.
      return p !== q && p + q !== SAMPLES - 1;
    });
  });
  const looks = VIEWS.map((view) => seen.flatMap((_, at) => {
    if (!clear[at]) return [];
    const [p, q] = view(at % SAMPLES, Math.floor(at / SAMPLES));
    return [roles.ids.indexOf(seen[index(p, q)]!)];
  }));
  const front = looks[0]!;
  const alike = looks.filter((look) => new Set(look.map((role, i) => `${role} ${front[i]!}`)).size === roles.ids.length);
  const signature = (colouring: Colouring): string => alike.map((look) => look.map((role) => colouring[role]).join('')).sort()[0]!;
  return new Set(colourings.map(signature)).size;
}

const everyColouring = (roles: number, cloths: number): readonly Colouring[] =>
  Array.from({ length: cloths ** roles }, (_, n) => Array.from({ length: roles }, (_role, i) => Math.floor(n / cloths ** i) % cloths));

const keeps = (colouring: Colouring, { neighbours }: Roles, repeats: Repeats): boolean =>
  repeats === 'freely' ||
  (repeats === 'each once' ? new Set(colouring).size === colouring.length : neighbours.every(([a, b]) => colouring[a] !== colouring[b]));

describe('the different colourings of a block', () => {
  it('are found on fifty blocks', () => expect(blocks).toHaveLength(50));

  it.each(blocks)('of $name are as many as Burnside counts, and as many as an eye tells apart', ({ block }) => {
    const roles = rolesIn(block);
    const cloths = roles.ids.length > 3 ? 3 : 4;
    for (const repeats of REPEATS) {
      const all = [...allColourings(roles, cloths, repeats)];
      const allowed = everyColouring(roles.ids.length, cloths).filter((each) => keeps(each, roles, repeats));
      expect(all).toHaveLength(Number(countColourings(roles, cloths, repeats)));
      expect(all).toHaveLength(pictures(block, roles, allowed));
    }
  });

  it('drawn at random are different ones, and the same again for the same seed', () => {
    const roles = rolesIn(blocks.find(({ block }) => block.fabrics.length >= 3)!.block);
    const drawn = someColourings(roles, 6, 'neighbours differ', 20, 11);
    expect(drawn).toHaveLength(20);
    expect(new Set(drawn.map(String)).size).toBe(20);
    expect(someColourings(roles, 6, 'neighbours differ', 20, 11)).toEqual(drawn);
    const every = new Set([...allColourings(roles, 6, 'neighbours differ')].map(String));
    expect(drawn.every((each) => every.has(String(each)))).toBe(true);
    const held = someColourings(roles, 6, 'neighbours differ', 20, 11, new Map([[0, 5]]));
    expect(held.length).toBeGreaterThan(0);
    expect(held.every(([first]) => first === 5)).toBe(true);
  });
});

describe('variations to look at', () => {
  const block = blocks.find((each) => each.block.fabrics.length === 3)!.block;
  const roles = (() => {
    const found = rolesOf(block);
    if (!found.ok) throw new Error(found.problem.sentence);
    return found.value;
  })();
  const light = [95, 80, 60, 30, 10];
  const ask = { repeats: 'each once', held: new Map<number, number>(), most: 1000, seed: 1 } as const;

  it('are all there are, where they are not too many, those that stand out most first', () => {
    const { shown, total } = variationsOf(roles, light, ask);
    expect(total).toBe(countColourings(roles, 5, 'each once'));
    expect(shown).toHaveLength(Number(total));
    const apart = shown.map(({ colouring }) => Math.min(...roles.edges.map(({ roles: [a, b] }) => Math.abs(light[colouring[a]!]! - light[colouring[b]!]!))));
    expect(apart).toEqual([...apart].sort((a, b) => b - a));
    expect(shown.map(({ contrasts }) => contrasts.least)).toEqual(apart);
  });

  it('keep the cloth of what is held, and are as many as are left', () => {
    const { shown, total } = variationsOf(roles, light, { ...ask, held: new Map([[1, 4]]) });
    expect(shown.every(({ colouring }) => colouring[1] === 4)).toBe(true);
    const left = everyColouring(3, 5).filter((each) => each[1] === 4 && keeps(each, roles, 'each once'));
    const still = roles.exchanges.filter((exchange) => exchange[1] === 1);
    const orbits = new Set(left.map((each) => still.map((exchange) => exchange.map((at) => each[at]).join()).sort()[0]));
    expect(total).toBe(BigInt(orbits.size));
  });

  it('are drawn at random where there are too many', () => {
    const { shown, total } = variationsOf(roles, light, { ...ask, repeats: 'freely', most: 20 });
    expect(shown).toHaveLength(20);
    expect(total).toBe(countColourings(roles, 5, 'freely'));
  });
});
