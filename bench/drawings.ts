import { readdirSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import type { Block, LatticePoint, Patch } from '../src/block/block.ts';
import { toDrawing } from '../src/block/drawing.ts';
import { parseBlock } from '../src/files/block-file.ts';
import type { Drawing } from '../src/geometry/patchwork/drawing.ts';
import type { Result } from '../src/measure/problem.ts';
import { rational } from '../src/measure/rational.ts';

/** From the project's folder, where npm runs its scripts. */
const FOLDERS = { cases: pathToFileURL('tests/cases/'), gallery: pathToFileURL('tests/gallery/') };
const ENDING = '.block.json';

/** @returns the names of a folder's blocks, in order */
export const namesIn = (folder: keyof typeof FOLDERS): readonly string[] =>
  readdirSync(FOLDERS[folder])
    .filter((file) => file.endsWith(ENDING))
    .map((file) => file.slice(0, -ENDING.length))
    .sort();

function sound<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

export const blockNamed = (folder: keyof typeof FOLDERS, name: string): Block =>
  sound(parseBlock(readFileSync(new URL(name + ENDING, FOLDERS[folder]), 'utf8')));

export const drawingOf = (block: Block): Drawing => sound(toDrawing(block)).drawing;

/** @returns one block beside and under itself, `times` each way; every cell keeps its size */
export function tiled(block: Block, times: number): Block {
  const { columns, rows } = block.grid;
  const copies = Array.from({ length: times * times }, (_, i) => [(i % times) * columns, Math.floor(i / times) * rows] as const);
  const moved = (points: Patch['points'], dx: number, dy: number): readonly LatticePoint[] =>
    points.map(([x, y]) => [x + dx * block.denominator, y + dy * block.denominator]);
  const { width, height, unit } = block.finished;
  return {
    ...block,
    finished: { width: rational(width.n * times, width.d), height: rational(height.n * times, height.d), unit },
    grid: { columns: columns * times, rows: rows * times },
    patches: copies.flatMap(([dx, dy]) => block.patches.map((patch) => ({ ...patch, points: moved(patch.points, dx, dy) }))),
    seams: [],
  };
}

/** Every cell cut along either diagonal, each half of any fabric: nothing repeats, nothing lines up on purpose. */
export function randomHalves(cells: number, fabrics: number, seed: number): Block {
  const random = generator(seed);
  const ids = Array.from({ length: fabrics }, (_, i) => `cloth${i + 1}`);
  const patches: Patch[] = [];
  for (let y = 0; y < cells; y++) {
    for (let x = 0; x < cells; x++) {
      const [a, b, c, d]: readonly LatticePoint[] = [[x, y], [x + 1, y], [x + 1, y + 1], [x, y + 1]] as const;
      const halves = random(2) === 0 ? [[a!, b!, c!], [a!, c!, d!]] : [[a!, b!, d!], [b!, c!, d!]];
      for (const points of halves) patches.push({ fabric: ids[random(fabrics)]!, points });
    }
  }
  return {
    name: `random halves ${cells}`,
    finished: { width: rational(cells), height: rational(cells), unit: 'in' },
    grid: { columns: cells, rows: cells },
    denominator: 1,
    fabrics: ids.map((id) => ({ id, name: id, color: '#888888' })),
    ground: ids[0]!,
    patches,
    seams: [],
  };
}

/** A linear congruential generator (multiplier and increment of Numerical Recipes): the same drawings on every machine. */
function generator(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
