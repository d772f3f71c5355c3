import type { Block, Fabric } from './block.ts';
import { checkFabricKnown, checkText, type Checked } from './checks.ts';
import { checkGrid, checkSide, isWhole } from './file-checks.ts';
import * as sayChosen from './choice-problems.ts';
import { COLOR, MAX_FABRICS, MAX_SEED, PRINTS } from './limits.ts';
import { fabricTwice, noColor, sameAsNoCloth, sameAsNone, tooManyFabrics } from './colour/problems.ts';
import * as say from './problems.ts';

/** @returns whether the fabrics have different ids and printable names */
export function checkFabrics(fabrics: readonly Fabric[]): Checked {
  if (fabrics.length > MAX_FABRICS) return tooManyFabrics(fabrics.length);
  const numbers = new Map<string, number>();
  for (const [i, { id, name, color, scraps, same }] of fabrics.entries()) {
    const where = `Fabric ${i + 1}`;
    const before = numbers.get(id);
    if (before !== undefined) return fabricTwice(before, i + 1, id);
    numbers.set(id, i + 1);
    const fault = checkText(`${where}'s id`, id) ?? checkText(`${where}'s name`, name);
    if (fault) return fault;
    if (!COLOR.test(color)) return noColor(where, say.quoted(color));
    const other = same === undefined ? undefined : fabrics.find((each) => each.id === same);
    if (same !== undefined && (other === undefined || same === id)) return sameAsNone(where, same);
    if (other && (other.same !== undefined || other.scraps || scraps)) return sameAsNoCloth(where, other.name);
    if (!scraps) continue;
    const { prints, seed } = scraps;
    if (!isWhole(prints, PRINTS.least, PRINTS.most)) return sayChosen.noPrints(`${where}'s scraps, prints`, String(prints));
    if (!isWhole(seed, 0, MAX_SEED)) return sayChosen.noSeed(`${where}'s scraps, seed`, String(seed));
  }
  return null;
}

/** @returns whether a block on which nothing is painted yet is a block */
export const checkGround = ({ name, finished, grid, fabrics, ground }: Pick<Block, 'name' | 'finished' | 'grid' | 'fabrics' | 'ground'>): Checked =>
  checkText("The block's name", name) ??
  checkSide('width', finished.width, finished.unit) ??
  checkSide('height', finished.height, finished.unit) ??
  checkGrid(grid) ??
  checkFabrics(fabrics) ??
  checkFabricKnown('The ground', ground, fabrics);
