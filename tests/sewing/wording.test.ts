import { describe, expect, it } from 'vitest';
import type { Choices } from '../../src/block/choices.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Step } from '../../src/sewing/step.ts';
import { box, lastStep, patch, patternDrawn, patternOf, stepOf, type Cloth } from './told.ts';

/** Wording, kind by kind and method by method: the right cloths, sizes, counts and places. */

const methods = (chosen: NonNullable<Choices['methods']>): Choices => ({ methods: chosen });
const eighth = rational(1, 8);

/** Half of a square of four cells, its square corner in the top right one. */
const halfSquare = (fabric: Cloth) => patch(fabric, [0, 0], [2, 0], [2, 2]);

describe('half-square triangles', () => {
  // American Patchwork & Quilting (allpeoplequilt.com), Shoo Fly quilt block, 2019-04-02: 2 + 2 squares 4 7/8, units 4 1/2.
  const shooFly = (choices: Choices): Step => stepOf(patternOf('tests/cases/shoo-fly-12', choices), 'half-square triangle');

  it('two at a time are sewn from pairs of squares on both sides of a diagonal', () => {
    expect(shooFly({}).text).toBe(
      'Pair 2 White 4 7/8 in. squares with 2 Mustard 4 7/8 in. squares, right sides together. On each pair draw a diagonal, ' +
        'sew 1/4 in. from it on both sides and cut on it: 2 units from each pair. It measures 4 1/2 by 4 1/2 in. Make 4.',
    );
  });

  it('eight at a time are sewn from squares of twice the finished size and 1 3/4 in.', () => {
    // scrapish.com, half-square triangles 8 at a time: finished 4 in. from 9 3/4 in.
    expect(shooFly(methods({ 'half-square triangle': 'eight-at-a-time' })).text).toBe(
      'Pair 1 White 9 3/4 in. square with 1 Mustard 9 3/4 in. square, right sides together. On the pair draw both diagonals and sew ' +
        '1/4 in. from each of them on both sides; cut through the middle both ways, along the sides, and then on both diagonals: ' +
        '8 units from the pair, 4 more than needed. It measures 4 1/2 by 4 1/2 in. Make 4.',
    );
  });

  it('one at a time are sewn from triangles', () => {
    expect(shooFly(methods({ 'half-square triangle': 'one-at-a-time' })).how).toBe(
      'Lay White and Mustard triangles (4 7/8 in. squares cut once) right sides together in pairs and sew the long sides.',
    );
  });

  it('cut large are trimmed', () => {
    expect(shooFly({ trim: eighth }).text).toMatch(/Pair 2 White 5 in\. squares.*Trim to 4 1\/2 by 4 1\/2 in\. Make 4\.$/);
  });

  it('for three blocks are three times as many', () => {
    expect(shooFly({ blocks: 3 }).text).toMatch(/^Pair 6 White .* with 6 Mustard .* Make 12\.$/);
  });

  it('of an odd count leave one over', () => {
    const odd = patternDrawn({ finished: '4 by 2', grid: [4, 2], ground: 'oat', patches: [halfSquare('teal'), box('rust', 2, 0, 2, 2)] });
    expect(stepOf(odd, 'half-square triangle').text).toContain('On the pair draw a diagonal');
    expect(stepOf(odd, 'half-square triangle').text).toMatch(/2 units from the pair, 1 more than needed\..* Make 1\.$/);
  });

  it('that share their squares with another unit do not say how many squares are theirs alone', () => {
    // Half-square triangles of 3 in. and the halves of a split unit of 2 5/8 in. are both cut at 3 7/8 in.
    const drawn = {
      finished: '5 5/8 by 3',
      grid: [15, 8],
      ground: 'oat',
      patches: [
        patch('teal', [0, 0], [8, 0], [8, 8]),
        box('rust', 8, 0, 7, 1),
        patch('teal', [8, 1], [15, 1], [11.5, 4.5]),
        patch('rust', [8, 1], [8, 8], [15, 8]),
      ],
    } as const;
    const { steps } = patternDrawn(drawn, methods({ 'split quarter-square triangle': 'two-at-a-time' }));
    const half = steps.find(({ kind }) => kind === 'half-square triangle')!;
    expect(half.how).toContain('Pair Oat 3 7/8 in. squares with Teal 3 7/8 in. squares');
  });
});

describe('quarter-square triangles', () => {
  it('two at a time are half-square triangles crossed', () => {
    // American Patchwork & Quilting, Ohio Star quilt block, 2017-06-14: 2 + 2 squares 4 3/4, hourglass 4.
    expect(stepOf(patternOf('tests/cases/ohio-star-10-1-2'), 'quarter-square triangle').text).toBe(
      'Pair 2 Blue 4 3/4 in. squares with 2 Orange 4 3/4 in. squares, right sides together. On each pair draw a diagonal, sew 1/4 in. ' +
        'from it on both sides and cut on it: 2 half-square triangles, a little over 4 3/8 in. square, from each pair. Lay these on one another in twos, ' +
        'right sides together, seams nested and each fabric on the other; draw the diagonal that crosses the seam, ' +
        'sew 1/4 in. from it on both sides and cut on it: ' +
        '2 units from each two. It measures 4 by 4 in. Make 4.',
    );
  });

  it('from triangles say which hand the halves have', () => {
    // M. Hohn, quilterscache.com, Ohio Star, 1999-11: squares of 5 1/4 cut twice for a unit of 4 finished.
    const star = patternOf('tests/cases/ohio-star-12-triangles', methods({ 'quarter-square triangle': 'triangles' }));
    expect(stepOf(star, 'quarter-square triangle').how).toMatch(
      / triangles \(5 1\/4 in\. squares cut twice\) into halves.*: with its long side below, each half has (Red|Cream) on the left/,
    );
  });

  it('in four fabrics say what lies on what, and which of the two mirror images is wanted', () => {
    // Clockwise from the top: oat, teal, rust, ink.
    const four = patternDrawn({
      finished: '3 by 3',
      grid: [2, 2],
      ground: 'oat',
      patches: [patch('teal', [2, 0], [2, 2], [1, 1]), patch('rust', [2, 2], [0, 2], [1, 1]), patch('ink', [0, 2], [0, 0], [1, 1])],
    });
    const { how } = lastStep(four);
    const clockwise = /use those in which (\w+), (\w+), (\w+) and (\w+) follow clockwise/.exec(how)!.slice(1);
    const begun = clockwise.indexOf('Oat');
    expect([...clockwise.slice(begun), ...clockwise.slice(0, begun)]).toEqual(['Oat', 'Teal', 'Rust', 'Ink']);
    const [a, b, c, d] = clockwise;
    expect(how).toContain(
      `Pair ${a} 4 1/4 in. squares with ${b} 4 1/4 in. squares, and ${c} 4 1/4 in. squares with ${d} 4 1/4 in. squares`,
    );
    expect(how).toContain(`with ${d} on ${a} and ${c} on ${b}`);
  });
});

describe('split quarter-square triangles', () => {
  /** Ink below on the right; above it oat at the top and one more fabric on the left, or the other way round. */
  const split = (mirrored: boolean, chosen: Choices): Step =>
    lastStep(
      patternDrawn(
        {
          finished: '3 by 3',
          grid: [2, 2],
          ground: mirrored ? 'rust' : 'oat',
          patches: [patch(mirrored ? 'oat' : 'rust', [0, 0], [0, 2], [1, 1]), patch('ink', [2, 0], [2, 2], [0, 2])],
        },
        chosen,
      ),
    );

  it.each([
    [false, 'Rust'],
    [true, 'Oat'],
  ])('from triangles say which small one is on the left (mirrored: %s)', (mirrored, left) => {
    expect(split(mirrored, methods({ 'split quarter-square triangle': 'triangles' })).how).toBe(
      `Sew ${left} and ${left === 'Rust' ? 'Oat' : 'Rust'} triangles (4 1/4 in. squares cut twice) together in twos along a short side, ` +
        `${left} on the left when the long side of the two is below.` +
        ' Sew Ink triangles (3 7/8 in. squares cut once) to the long sides of these.',
    );
  });

  it('two at a time come as mirror images, and say which is wanted', () => {
    const { how } = split(false, methods({ 'split quarter-square triangle': 'two-at-a-time' }));
    expect(how).toContain('Lay one on each Ink 3 7/8 in. square, right sides together; draw the diagonal that crosses the seam');
    expect(how).toContain('2 units from each, mirror images of each other: in this one Rust is left of Oat when Ink is below.');
  });
});

describe('flying geese', () => {
  it('stitch-and-flip have two squares on the corners of a rectangle', () => {
    // E. Hartman for Sew Mama Sew, 2009, sawtooth star 12: 8 print squares 3 1/2, 4 solid rectangles 3 1/2 by 6 1/2.
    const { how, text } = stepOf(patternOf('tests/cases/sawtooth-star-12'), 'flying geese');
    expect(how).toContain(
      'Draw a diagonal on the back of the Print 3 1/2 in. squares. Sew them on one at a time: lay a square on a corner of the ' +
        'Solid 3 1/2 by 6 1/2 in. rectangle, right sides together, the line across the corner; sew on the line, ' +
        'cut 1/4 in. outside it and press the corner out. ',
    );
    expect(how).toMatch(/ Print goes to the (top left and top right|bottom right and bottom left) corners\.$/);
    expect(text).toMatch(/ It measures 6 1\/2 by 3 1\/2 in\. Make 4\.$/);
  });

  it('four at a time take four small squares to a large one', () => {
    // blocksnswaps.blogspot.com, 2009-09, Sawtooth Star 6: 1 square 4 1/4 and 4 squares 2 3/8 give 4 geese.
    const geese = stepOf(
      patternOf('tests/cases/sawtooth-star-6-four-at-a-time', methods({ 'flying geese': 'four-at-a-time' })),
      'flying geese',
    );
    expect(geese.text).toMatch(
      /^Take 4 Print 2 3\/8 in\. squares to each Solid 4 1\/4 in\. square\. Lay 2 Print squares on opposite corners of the Solid square/,
    );
    expect(geese.text).toMatch(/4 units from the Solid square\. It measures 3 1\/2 by 2 in\. Make 4\.$/);
  });

  it('from triangles have their tips even at the base', () => {
    // sewingwithstitcher.com, block 6, Sawtooth Star 8: 1 square 5 1/4 cut twice, 4 squares 2 7/8 cut once.
    const geese = stepOf(patternOf('tests/cases/sawtooth-star-8-triangles', methods({ 'flying geese': 'triangles' })), 'flying geese');
    expect(geese.how).toContain(
      'Sew Print triangles (2 7/8 in. squares cut once) to the Solid triangle (5 1/4 in. square cut twice) by their long sides, ' +
        'tips even at the ends of its long side',
    );
    expect(geese.how).toContain('The point ends 1/4 in. inside the edge.');
    expect(geese.text).toMatch(/It measures 4 1\/2 by 2 1\/2 in\. Make 4\.$/);
  });

  it('with corners of two fabrics name both and their places', () => {
    const goose = patternDrawn({
      finished: '4 by 2',
      grid: [4, 2],
      ground: 'oat',
      patches: [patch('teal', [0, 2], [0, 0], [2, 0]), patch('rust', [2, 0], [4, 0], [4, 2])],
    });
    expect(lastStep(goose).how).toContain('the Teal and Rust 2 1/2 in. squares');
    expect(lastStep(goose).how).toMatch(/Teal (goes )?to the top left corner/);
    expect(lastStep(goose).how).toMatch(/Rust (goes )?to the top right corner/);
  });
});

describe('corner-triangle units', () => {
  it.each<[string, Parameters<typeof patternDrawn>[0]['patches'], string]>([
    ['one corner', [patch('teal', [5, 4], [6, 3], [6, 4])], 'Teal goes to the bottom right corner.'],
    [
      'two corners',
      [patch('teal', [0, 0], [1, 0], [0, 1]), patch('teal', [5, 4], [6, 3], [6, 4])],
      'Teal goes to the top left and bottom right corners.',
    ],
    [
      'three corners',
      [patch('teal', [0, 0], [1, 0], [0, 1]), patch('teal', [5, 4], [6, 3], [6, 4]), patch('teal', [0, 3], [1, 4], [0, 4])],
      'Teal goes to the top left, bottom right and bottom left corners.',
    ],
    [
      'four corners',
      [
        patch('teal', [0, 0], [1, 0], [0, 1]),
        patch('teal', [5, 4], [6, 3], [6, 4]),
        patch('teal', [0, 3], [1, 4], [0, 4]),
        patch('teal', [5, 0], [6, 0], [6, 1]),
      ],
      'Teal goes to all 4 corners, opposite ones first.',
    ],
  ])('with %s say which', (_, patches, where) => {
    const { how } = lastStep(patternDrawn({ finished: '6 by 4', grid: [6, 4], ground: 'oat', patches }));
    expect(how).toContain('the back of the Teal 1 1/2 in. squares.');
    expect(how).toContain('a corner of the Oat 4 1/2 by 6 1/2 in. rectangle');
    expect(how.endsWith(where)).toBe(true);
  });

  const two = [patch('teal', [0, 0], [1, 0], [0, 1]), patch('rust', [4, 4], [6, 2], [6, 4])];

  it('with corners of two fabrics and sizes name both', () => {
    const { how } = lastStep(patternDrawn({ finished: '6 by 4', grid: [6, 4], ground: 'oat', patches: two }));
    expect(how).toMatch(/Teal 1 1\/2 in\. (goes )?to the top left corner/);
    expect(how).toMatch(/Rust 2 1\/2 in\. (goes )?to the bottom right corner/);
  });

  it('from triangles take their middle from a template, right side up', () => {
    const chosen = methods({ 'corner-triangle unit': 'triangles' });
    const { how } = lastStep(patternDrawn({ finished: '6 by 4', grid: [6, 4], ground: 'oat', patches: two }, chosen));
    expect(how).toMatch(/Teal triangles \(1 7\/8 in\. squares cut once\)/);
    expect(how).toMatch(/Rust triangles \(2 7\/8 in\. squares cut once\)/);
    expect(how).toMatch(/the Oat piece \(template, line \d\)/);
    expect(how).toContain('Templates are cut right side up.');
  });
});

describe('a square in a square', () => {
  const diamond = { finished: '4 by 4', grid: [2, 2], ground: 'oat', patches: [patch('teal', [1, 0], [2, 1], [1, 2], [0, 1])] } as const;

  it('stitch-and-flip has four squares on a square', () => {
    // ukqu.co.uk: base as the unfinished unit, corners half the finished side and 1/2 in.
    const { text } = lastStep(patternDrawn(diamond));
    expect(text).toContain('the back of the Oat 2 1/2 in. squares');
    expect(text).toContain('a corner of the Teal 4 1/2 in. square');
    expect(text).toContain('Oat goes to all 4 corners, opposite ones first. The block measures 4 1/2 by 4 1/2 in.');
  });

  it('from triangles has a centre set on point', () => {
    // Centre f/√2 + 1/2 = 3.328, up to the eighth 3 3/8; corners f/2 + 7/8 (trade figure, Combs 2002).
    const { how } = lastStep(patternDrawn(diamond, methods({ 'square in a square': 'triangles' })));
    expect(how).toBe(
      'Sew Oat triangles (2 7/8 in. squares cut once) to the Teal 3 3/8 in. square by their long sides, middles matched, ' +
        'and press each out before the next. Oat goes to all 4 corners, opposite ones first.',
    );
  });
});

describe('half-rectangle triangles', () => {
  it.each([
    [
      'falling',
      [
        [0, 0],
        [2, 4],
        [0, 4],
      ],
      'from the top left to the bottom right',
    ],
    [
      'rising',
      [
        [2, 0],
        [2, 4],
        [0, 4],
      ],
      'from the bottom left to the top right',
    ],
  ] as const)('of the %s diagonal say so, right side up', (_, points, diagonal) => {
    // By similar triangles 2 by 4 grows to 2.655 by 5.309: 2 3/4 by 5 3/8.
    const { how } = lastStep(patternDrawn({ finished: '2 by 4', grid: [2, 4], ground: 'oat', patches: [patch('teal', ...points)] }));
    expect(how).toMatch(
      /^Lay (Oat and Teal|Teal and Oat) triangles \(2 3\/4 by 5 3\/8 in\. rectangles cut once\) right sides together in pairs/,
    );
    expect(how).toContain(
      `Cut both rectangles right side up, standing on a short side, ${diagonal}; the other diagonal gives the mirror image.`,
    );
    // loandbeholdstitchery.com, how to trim half-rectangle triangles: the seam crosses 1/4 in. in from the corners.
    expect(how).toContain('The seam ends 1/4 in. inside two corners, not in them.');
  });

  it('lying down are of the hand they have standing up', () => {
    const { how } = lastStep(
      patternDrawn({ finished: '4 by 2', grid: [4, 2], ground: 'oat', patches: [patch('teal', [0, 0], [4, 2], [0, 2])] }),
    );
    expect(how).toContain('from the bottom left to the top right;');
  });
});

describe('peaks', () => {
  const peak = {
    finished: '3 by 3',
    grid: [2, 2],
    ground: 'oat',
    patches: [patch('teal', [1, 0], [2, 2], [0, 2]), patch('rust', [1, 0], [2, 0], [2, 2])],
  } as const;

  it('from triangles say which diagonal is for which slope', () => {
    const { how } = lastStep(patternDrawn(peak));
    // By similar triangles 1 1/2 by 3 grows to 2.155 by 4.309: 2 1/4 by 4 3/8.
    expect(how).toContain('Oat triangle (2 1/4 by 4 3/8 in. rectangle cut once) to the left slope');
    expect(how).toContain('Rust triangle (2 1/4 by 4 3/8 in. rectangle cut once) to the right slope');
    expect(how).toMatch(/for the left slope from the bottom left to the top right/);
    expect(how).toMatch(/for the right slope from the top left to the bottom right/);
    expect(how).toMatch(/Teal piece \(template, line \d\)/);
  });

  it('from templates are cut right side up', () => {
    const { how } = lastStep(patternDrawn(peak, methods({ peak: 'template' })));
    expect(how).not.toContain('rectangle');
    expect(how).toMatch(/Oat piece \(template, line \d\) to the left slope/);
    expect(how).toContain('Templates are cut right side up.');
  });

  it('that point sideways speak of top and bottom', () => {
    const { how } = lastStep(patternDrawn({ ...peak, patches: [patch('teal', [0, 1], [2, 0], [2, 2])] }));
    expect(how).toContain('to the top slope');
    expect(how).toContain('to the bottom slope');
  });
});
