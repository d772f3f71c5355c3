import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { waysToSew } from '../../src/geometry/piecing/ways.ts';
import type { Drawing } from '../../src/geometry/patchwork/drawing.ts';
import type { Piecing } from '../../src/geometry/piecing/assembly.ts';
import { drawings, EVERYTHING, tiled, tries, whirls } from './drawings.ts';
import { figureFaults, kindFaults, nodeFaults, pieceFaults, placeFaults, seamFaults, wholeFaults } from './sewn.ts';

const sewn = new Map<string, readonly Piecing[]>();

/** @returns the ways to sew a drawing; each law meets the same drawings, which are sewn once */
function ways(drawing: Drawing): readonly Piecing[] {
  const name = JSON.stringify(drawing);
  const found = sewn.get(name) ?? waysToSew(drawing);
  sewn.set(name, found);
  return found;
}

/** Runs a check on every way to sew each drawing; the complaints name the way. */
function everyWay(drawing: Drawing, check: (way: Piecing) => readonly string[]): void {
  expect(ways(drawing).length).toBeGreaterThan(0);
  expect(ways(drawing).flatMap((way) => check(way).map((fault) => `${way.way}: ${fault}`))).toEqual([]);
}

const mixed = drawings(EVERYTHING);
const kinds = [
  ['a random drawing', mixed, 80],
  ['a block of turned tiles', tiled, 20],
  ['four arms that turn round a centre', whirls, 30],
] as const;

describe.each(kinds)('every way to sew %s', (_, pictures, runs) => {
  it('is of pieces that are the block exactly, one cloth each', () => {
    fc.assert(
      fc.property(pictures, (drawing) => everyWay(drawing, ({ pieces }) => pieceFaults(drawing, pieces))),
      tries(runs),
    );
  });

  it('is of convex parts that make up what they are joined to', () => {
    fc.assert(
      fc.property(pictures, (drawing) => everyWay(drawing, ({ root }) => nodeFaults(root))),
      tries(runs),
    );
  });

  it('has only straight seams along the whole shared edge', () => {
    fc.assert(
      fc.property(pictures, (drawing) => everyWay(drawing, ({ root }) => seamFaults(root))),
      tries(runs),
    );
  });

  it('makes congruent units alike', () => {
    fc.assert(
      fc.property(pictures, (drawing) => everyWay(drawing, placeFaults)),
      tries(runs),
    );
  });

  it('counts what is there, and sets in no seam', () => {
    fc.assert(
      fc.property(pictures, (drawing) => everyWay(drawing, figureFaults)),
      tries(runs),
    );
  });

  it('gives no unit a name it does not deserve', () => {
    fc.assert(
      fc.property(pictures, (drawing) => everyWay(drawing, kindFaults)),
      tries(runs),
    );
  });
});

describe('the way of fewest pieces', () => {
  it('has no more pieces than any other', () => {
    fc.assert(
      fc.property(fc.oneof(mixed, whirls), (drawing) => {
        const counts = ways(drawing).map((way) => way.figures.pieces);
        expect(ways(drawing).find((way) => way.way === 'fewest pieces')!.figures.pieces).toBe(Math.min(...counts));
      }),
      tries(60),
    );
  });
});

describe('four arms that turn round a centre', () => {
  it('are sewn with a partial seam wherever no seam runs right across', () => {
    let rings = 0;
    fc.assert(
      fc.property(whirls, (drawing) => {
        const [standard] = ways({ ...drawing, patches: drawing.patches.slice(0, 5) });
        expect(standard!.figures).toMatchObject({ pieces: 5, seams: 4, partialSeams: 1, setInSeams: 0 });
        if (ways(drawing).some((way) => way.figures.partialSeams > 0)) rings++;
      }),
      tries(30),
    );
    expect(rings).toBeGreaterThan(10);
  });
});

describe('a patch that must stay whole', () => {
  it('is never divided: the block is sewn round it, or not at all', () => {
    let [could, given] = [0, 0];
    fc.assert(
      fc.property(drawings({ ...EVERYTHING, seams: 0, whole: true }), (drawing) => {
        given++;
        if (ways(drawing).length > 0) could++;
        expect(ways(drawing).flatMap(({ pieces }) => [...wholeFaults(drawing, pieces), ...pieceFaults(drawing, pieces)])).toEqual([]);
      }),
      tries(60),
    );
    // The law must not hold for want of anything sewn.
    expect(could).toBeGreaterThan(given / 3);
  });
});
