import { describe, expect, it } from 'vitest';
import { box, lastStep, patch, patternDrawn, patternOf, sewnBy, sewnFrom } from './told.ts';

/** Wording of what is joined from finished things: rows, rounds, rings; of free units; and of the block. */

describe('rows and columns', () => {
  it('are told in order, turned units with their turn', () => {
    const { steps } = patternOf('tests/cases/friendship-star-6');
    expect(steps.map(({ how }) => how).slice(1)).toEqual([
      'Sew in a row, left to right: White 2 1/2 in. square, A and White 2 1/2 in. square.',
      'Sew in a row, left to right: A turned a quarter counter-clockwise, Blue 2 1/2 in. square and A turned a quarter clockwise.',
      'Sew in a column, top to bottom: B, C and B turned half round. Nest the seams where they meet.',
    ]);
  });

  it('of equal units count them', () => {
    expect(patternOf('demo-blocks/07-guild-sloop').steps.some(({ how }) => how.startsWith('Sew in a row, left to right: 3 × B.'))).toBe(
      true,
    );
  });
});

describe('rounds', () => {
  it('begin at the centre and name every strip with its side', () => {
    // American Patchwork & Quilting, Log Cabin quilt block option 1, 2013-12-18: the sizes and their order.
    const { how } = lastStep(patternOf('tests/cases/log-cabin-11'));
    expect(how).toMatch(/^Begin with Hearth 1 1\/2 in\. square as the centre and go round it (counter-)?clockwise\. /);
    const sizes = [
      '1 1/2',
      '2 1/2',
      '2 1/2',
      '3 1/2',
      '3 1/2',
      '4 1/2',
      '4 1/2',
      '5 1/2',
      '5 1/2',
      '6 1/2',
      '6 1/2',
      '7 1/2',
      '7 1/2',
      '8 1/2',
      '8 1/2',
      '9 1/2',
      '9 1/2',
      '10 1/2',
      '10 1/2',
      '11 1/2',
    ];
    const told = [...how.matchAll(/Log(\d+) 1 1\/2 (?:in\. square|by ([\d /]+) in\. rectangle) to the (\w+)/g)];
    expect(told.map(([, log]) => Number(log))).toEqual(sizes.map((_, i) => i + 1));
    expect(told.map(([, , length]) => length ?? '1 1/2')).toEqual(sizes);
    expect(new Set(told.slice(0, 4).map(([, , , side]) => side))).toEqual(new Set(['top', 'right', 'bottom', 'left']));
    expect([...how.matchAll(/Round \d:/g)].map(([round]) => round)).toEqual(['Round 1:', 'Round 2:', 'Round 3:', 'Round 4:', 'Round 5:']);
  });

  it('say which way round they go', () => {
    const inner = [
      box('ink', 2, 2, 1, 1),
      box('rust', 2, 1, 1, 1),
      box('sage', 3, 1, 1, 2),
      box('rust', 2, 3, 2, 1),
      box('sand', 1, 1, 1, 3),
    ];
    const logs = [...inner, box('teal', 1, 0, 3, 1), box('oat', 4, 0, 1, 4), box('teal', 1, 4, 4, 1), box('oat', 0, 0, 1, 5)];
    const cabin = { finished: '5 by 5', grid: [5, 5], ground: 'oat' } as const;
    expect(lastStep(patternDrawn({ ...cabin, patches: logs })).how).toBe(
      'Begin with Ink 1 1/2 in. square as the centre and go round it clockwise. Sew each strip along the whole side of what is there, ' +
        'and press it before the next. Round 1: Rust 1 1/2 in. square to the top, ' +
        'Sage 1 1/2 by 2 1/2 in. rectangle to the right, ' +
        'Rust 1 1/2 by 2 1/2 in. rectangle to the bottom, Sand 1 1/2 by 3 1/2 in. rectangle to the left. Round 2: ' +
        'Teal 1 1/2 by 3 1/2 in. rectangle to the top, Oat 1 1/2 by 4 1/2 in. rectangle to the right, ' +
        'Teal 1 1/2 by 4 1/2 in. rectangle to the bottom, Oat 1 1/2 by 5 1/2 in. rectangle to the left.',
    );
    const mirrored = logs.map(({ fabric, points }) => patch(fabric, ...points.map(([x, y]) => [5 - x, y] as const)));
    expect(lastStep(patternDrawn({ ...cabin, patches: mirrored })).how).toContain('go round it counter-clockwise.');
  });

  it('begin anew where they come to the same side again', () => {
    expect(lastStep(patternOf('tests/gallery/quarter-log-cabin-12')).how).toMatch(
      /Round 1: [^:]* to the right, [^:]* to the bottom\. Round 2: [^:]* to the right, [^:]* to the bottom\. Round 3: .* Round 4: /,
    );
  });

  it('of courthouse steps have two strips at a time, on opposite sides', () => {
    expect(lastStep(patternOf('tests/gallery/courthouse-steps-7')).how).toContain(
      'Round 1: Mustard 1 1/2 in. squares to the top and the bottom, ' +
        'Teal 1 1/2 by 3 1/2 in. rectangles to the left and the right. Round 2:',
    );
  });

  it('of triangles round a square tell each round once', () => {
    expect(lastStep(patternOf('tests/gallery/economy-patch-8')).how).toBe(
      'Begin with Brick 4 1/2 in. square as the centre and sew triangles to its sides, middles matched, opposite ones first; ' +
        'press each outward before the next. Round 1: Teal triangles (5 1/4 in. squares cut twice) on all 4 sides. ' +
        'Round 2: Oat triangles (4 7/8 in. squares cut once) on all 4 sides.',
    );
  });
});

describe('a partial-seam ring', () => {
  it('says where the first seam begins and stops, and goes round from there', () => {
    // newenglandfiberarts.com/node/253: 1 square 4 1/2, 4 rectangles 3 by 7.
    const { how } = lastStep(patternOf('tests/cases/whirl-9'));
    expect(how).toMatch(
      /^Lay \w+ 3 by 7 in\. rectangle along the \w+ of Oat 4 1\/2 in\. square, right sides together and \w+ edges even; sew from there/,
    );
    const sides = [...how.matchAll(/(?:along|to) the (top|right|bottom|left)/g)].map(([, side]) => side!);
    expect(sides).toHaveLength(4);
    const round = ['top', 'right', 'bottom', 'left', 'top', 'right', 'bottom'].join();
    expect([round, round.split(',').reverse().join()].some((way) => way.includes(sides.join()))).toBe(true);
    // Sewing begins where the arm's edge and the centre's are even, so the next arm lies on that side.
    expect(how).toContain(`${sides[1]!} edges even`);
    expect(how.endsWith('Then sew the first seam to its end.')).toBe(true);
  });
});

describe('a free unit', () => {
  const free = {
    finished: '4 by 4',
    grid: [4, 4],
    ground: 'oat',
    patches: [patch('teal', [1, 0], [4, 0], [4, 4], [3, 4]), patch('rust', [0, 1], [2, 2], [3, 4], [0, 4])],
  } as const;

  it('numbers its pieces in sewing order and says where they lie', () => {
    const { how } = lastStep(patternDrawn(free));
    const numbers = [...how.matchAll(/(?:: |; )(\d+) \w+ piece \(template, line \d\), (?:top|bottom|left|right|middle)/g)].map(([, n]) =>
      Number(n),
    );
    expect(numbers).toEqual([1, 2, 3]);
    expect(how).toContain('Templates are cut right side up.');
    expect(how).toMatch(/Sew 2 to 1, then 3\.$/);
  });
});

describe('a block of one piece', () => {
  it('has nothing to sew', () => {
    const step = lastStep(patternDrawn({ finished: '4 by 4', grid: [2, 2], ground: 'oat', patches: [] }));
    expect(step.text).toBe('The block is one piece, Oat 4 1/2 in. square: there is nothing to sew. The block measures 4 1/2 by 4 1/2 in.');
    expect(step.press).toBe('Press flat.');
  });
});

describe('a fabric', () => {
  it('is called by its name on one line, without a full stop of its own; by its id where it has no name', () => {
    const { drawing, step, piecing } = sewnFrom('tests/cases/whirl-9');
    const called = (name: string): string => sewnBy(drawing, step, piecing, {}, () => name).steps[0]!.how;
    expect(called('  Sea \n  foam.. ')).toMatch(/^Lay Sea foam 3 by 7 in\. rectangle along .* stop half way along Sea foam\. Going round/);
    expect(called(' . ')).toMatch(/stop half way along oat\. Going round/);
  });
});

describe('the block', () => {
  it('is made as often as it is wanted', () => {
    expect(lastStep(patternOf('tests/cases/shoo-fly-12')).text).toMatch(/The block measures 12 1\/2 by 12 1\/2 in\.$/);
    expect(lastStep(patternOf('tests/cases/shoo-fly-12', { blocks: 3 })).text).toMatch(
      /The block measures 12 1\/2 by 12 1\/2 in\. Make 3\.$/,
    );
  });

  it('in centimetres has no full stop after its unit but the one that ends the sentence', () => {
    expect(lastStep(patternOf('demo-blocks/12-mooring-ring')).text).toMatch(/The block measures 31,5 by 31,5 cm\.$/);
  });
});
