import { parseLength } from '../../src/measure/lengths.ts';
import { multiply, rational, type Rational } from '../../src/measure/rational.ts';
import { plus, rootOf, times, type Surd } from '../../src/measure/surd.ts';
import {
  centreOnPoint,
  cornerTriangleSquare,
  eightSquare,
  halfRectangle,
  halfSquare,
  plainSide,
  quarterSquare,
  sideTriangleSquare,
} from '../../src/cutting/formulas.ts';

/** One published size beside our exact one. `ours`: what we round up to where it is not what the source prints. */
export interface Value {
  readonly what: string;
  readonly published: string;
  readonly exact: Surd;
  readonly ours?: string;
}

export interface Source {
  /** Site or book, and date where it states one. */
  readonly source: string;
  /** Why ours differs, where it does. */
  readonly differs?: string;
  readonly ruler: Rational;
  readonly values: readonly Value[];
}

const QUARTER = rational(1, 4);
const EIGHTH = rational(1, 8);
const METRIC = rational(3, 4);

export const length = (text: string): Rational => {
  const read = parseLength(text);
  if (!read.ok) throw new Error(read.problem.sentence);
  return read.value.value;
};

type Pairs = Readonly<Record<string, string>>;

const inches = (source: string, values: readonly Value[], differs?: string): Source => ({
  source,
  ruler: EIGHTH,
  values,
  ...(differs === undefined ? {} : { differs }),
});

const each = (name: string, sizes: Pairs, exact: (f: Rational) => Surd, ours: Pairs = {}): readonly Value[] =>
  Object.entries(sizes).map(([f, published]) => ({
    what: `${name} of ${f}`,
    published,
    exact: exact(length(f)),
    ...(ours[f] === undefined ? {} : { ours: ours[f] }),
  }));

const halves = (sizes: Pairs, ours: Pairs = {}): readonly Value[] =>
  each('half-square triangle', sizes, (f) => halfSquare(f, QUARTER), ours);
const quarters = (sizes: Pairs, ours: Pairs = {}): readonly Value[] =>
  each('quarter-square triangle', sizes, (f) => quarterSquare(f, QUARTER), ours);
const plain = (name: string, sizes: Pairs): readonly Value[] => each(name, sizes, (f) => plainSide(f, QUARTER));
const half = (f: Rational): Rational => multiply(f, rational(1, 2));
const side = (sizes: Pairs, ours: Pairs = {}): readonly Value[] =>
  each('side triangles of a block', sizes, (b) => sideTriangleSquare(b, QUARTER), ours);
const corner = (sizes: Pairs, ours: Pairs = {}): readonly Value[] =>
  each('corner triangles of a block', sizes, (b) => cornerTriangleSquare(b, QUARTER), ours);

export const SOURCES: readonly Source[] = [
  inches('Granny Maud’s Girl, How to measure and cut triangles, 2018-06-11', halves({ '2': '2 7/8', '3': '3 7/8' })),
  inches('American Patchwork & Quilting, Shoo Fly, 2019-04-02', [...halves({ '4': '4 7/8' }), ...plain('square', { '4': '4 1/2' })]),
  inches('American Patchwork & Quilting, Broken Dishes, 2019-04-02', halves({ '2 1/8': '3' })),
  inches('American Patchwork & Quilting, Blowin’ in the Wind, undated', [
    ...halves({ '2 7/8': '3 3/4' }),
    ...plain('setting square', { '11 1/2': '12' }),
  ]),
  inches('American Patchwork & Quilting, Patriotic Sparkler, 2016', halves({ '1 1/4': '2 1/8' })),
  inches('Delaware Quilts, Friendship Star, scale table', [
    ...halves({ '1': '1 7/8', '1 1/2': '2 3/8', '2': '2 7/8' }),
    ...plain('square', { '1': '1 1/2', '1 1/2': '2', '2': '2 1/2' }),
  ]),
  inches('American Patchwork & Quilting, Pinwheel Star, 2019-10-01', [
    ...halves({ '3': '3 7/8' }),
    ...quarters({ '6': '7 1/4', '3': '4 1/4' }),
  ]),
  inches('llqg.org, Rolling Pinwheel, July 2023', [...halves({ '2': '2 7/8', '4': '4 7/8' }), ...quarters({ '4': '5 1/4' })]),
  inches(
    'Judy Laquidara, Half-square triangles, 2006-08-05 (an eighth to trim)',
    each('half-square triangle', { '3': '4' }, (f) => plus(halfSquare(f, QUARTER), EIGHTH)),
  ),
  inches('North Hampshire Quilters, hblk402b (a quarter to trim)', [
    ...each('half-square triangle', { '3': '4 1/8' }, (f) => plus(halfSquare(f, QUARTER), QUARTER)),
    ...each('quarter-square triangle', { '3': '4 1/2' }, (f) => plus(quarterSquare(f, QUARTER), QUARTER)),
  ]),
  inches(
    'scrapish.com, Half-square triangles 8 at a time',
    each(
      'eight half-square triangles',
      { '2': '5 3/4', '3': '7 3/4', '4': '9 3/4', '5': '11 3/4', '6': '13 3/4', '7': '15 3/4', '8': '17 3/4' },
      (f) => eightSquare(f, QUARTER, rational(0)),
    ),
  ),
  inches(
    'Mesquite Quilt Guild, ?p=923',
    each('eight half-square triangles', { '2 1/2': '6 3/4' }, (f) => eightSquare(f, QUARTER, rational(0))),
  ),
  inches(
    'quiltingboard.com, blog b10533, and quilted-diary.com, magic eight (an eighth to trim on each unit)',
    each('eight half-square triangles', { '4': '10', '6 1/2': '15', '2': '6', '3': '8' }, (f) => eightSquare(f, QUARTER, EIGHTH)),
  ),
  inches('Bonnie Hunter, Cutting quarter square triangles, 2005', quarters({ '4': '5 1/4' })),
  inches('Perkins Dry Goods, Easy quarter square triangles', quarters({ '3': '4 1/4' })),
  inches(
    'Scissortail Quilting, Quarter-square triangle',
    quarters({
      '1': '2 1/4',
      '1 1/2': '2 3/4',
      '2': '3 1/4',
      '2 1/2': '3 3/4',
      '3': '4 1/4',
      '3 1/2': '4 3/4',
      '4': '5 1/4',
      '4 1/2': '5 3/4',
      '5': '6 1/4',
      '5 1/2': '6 3/4',
      '6': '7 1/4',
    }),
  ),
  inches('American Patchwork & Quilting, Ohio Star, 2017-06-14', [...quarters({ '3 1/2': '4 3/4' }), ...plain('square', { '3 1/2': '4' })]),
  inches('American Patchwork & Quilting, Twinkle Twinkle, undated', [
    ...quarters({ '1 1/2': '2 3/4' }),
    ...halves({ '3/4': '1 5/8' }),
    ...plain('square', { '1 1/2': '2', '3/4': '1 1/4' }),
  ]),
  inches(
    'Alamosa Quilter, Quarter-square triangle formula, 2014-10-30, and Open Gate Quilts (a quarter to trim)',
    each('quarter-square triangle', { '2': '3 1/2', '3 1/2': '5' }, (f) => plus(quarterSquare(f, QUARTER), QUARTER)),
  ),
  inches(
    'Delaware Quilts, Ohio Star Variation',
    quarters({ '4': '5 3/8', '1': '2 3/8', '2': '3 3/8', '3': '4 3/8' }, { '4': '5 1/4', '1': '2 1/4', '2': '3 1/4', '3': '4 1/4' }),
    'called exact, but an eighth larger than the sewing needs',
  ),
  inches('Beverly’s Quilting Page, ffg.htm, and Aline Quilts, March 2011 (four geese at a time)', [
    ...each(
      'large square for geese',
      {
        '2': '3 1/4',
        '2 1/2': '3 3/4',
        '3': '4 1/4',
        '3 1/2': '4 3/4',
        '4': '5 1/4',
        '4 1/2': '5 3/4',
        '5': '6 1/4',
        '5 1/2': '6 3/4',
        '6': '7 1/4',
        '7': '8 1/4',
        '8': '9 1/4',
      },
      (w) => quarterSquare(w, QUARTER),
    ),
    ...each(
      'small squares for geese of width',
      {
        '2': '1 7/8',
        '2 1/2': '2 1/8',
        '3': '2 3/8',
        '3 1/2': '2 5/8',
        '4': '2 7/8',
        '4 1/2': '3 1/8',
        '5': '3 3/8',
        '5 1/2': '3 5/8',
        '6': '3 7/8',
        '7': '4 3/8',
        '8': '4 7/8',
      },
      (w) => halfSquare(half(w), QUARTER),
    ),
  ]),
  inches('piecemealquilts.com, 2011-10-24 (geese to trim: a quarter on the large, an eighth on the small squares)', [
    ...each('large square for geese', { '6': '7 1/2' }, (w) => plus(quarterSquare(w, QUARTER), QUARTER)),
    ...each('small squares for geese of width', { '6': '4' }, (w) => plus(halfSquare(half(w), QUARTER), EIGHTH)),
  ]),
  inches('Elizabeth Hartman, Sawtooth Star Block, 2009 (stitch-and-flip geese)', [
    ...plain('base length', { '3': '3 1/2', '4': '4 1/2', '6': '6 1/2' }),
    ...plain('base width and corners', { '1 1/2': '2', '2': '2 1/2', '3': '3 1/2' }),
  ]),
  inches('Stoffart, flying geese', plain('base and corners', { '10': '10 1/2', '5': '5 1/2' })),
  inches('talkischeapquilts.blogspot.com, Snowball blocks, September 2013', plain('base and corners', { '6': '6 1/2', '2': '2 1/2' })),
  inches('Scissortail Quilting, Square in a square (stitch-and-flip)', [
    ...plain('base', {
      '2': '2 1/2',
      '3': '3 1/2',
      '4': '4 1/2',
      '5': '5 1/2',
      '6': '6 1/2',
      '7': '7 1/2',
      '8': '8 1/2',
      '9': '9 1/2',
      '10': '10 1/2',
      '11': '11 1/2',
      '12': '12 1/2',
    }),
    ...each(
      'corners for a side',
      {
        '2': '1 1/2',
        '3': '2',
        '4': '2 1/2',
        '5': '3',
        '6': '3 1/2',
        '7': '4',
        '8': '4 1/2',
        '9': '5',
        '10': '5 1/2',
        '11': '6',
        '12': '6 1/2',
      },
      (f) => plainSide(half(f), QUARTER),
    ),
  ]),
  inches(
    'anonymous lesson sheet, Lesson 5: a square in a square, slideblast.com',
    each('centre for a side', { '12': '9' }, (f) => centreOnPoint(f, QUARTER)),
  ),
  inches(
    'Alex Anderson’s forum, old.quiltube.com, thread 9315',
    each('corner squares round a centre', { '6': '5 1/8' }, (f) => halfSquare(times(rootOf(rational(2)), half(f)), QUARTER)),
  ),
  inches(
    'hydeeannsews.blogspot.com, February 2016',
    [
      ...each('centre for a side', { '4': '3 3/8' }, (f) => centreOnPoint(f, QUARTER)),
      ...each('corner squares for a side', { '4': '3' }, (f) => halfSquare(half(f), QUARTER), { '4': '2 7/8' }),
    ],
    'the corners are cut an eighth large, to trim',
  ),
  inches(
    'farmandfolk.com, 2025-04-25',
    [
      ...each('centre for a side', { '3': '2 5/8' }, (f) => centreOnPoint(f, QUARTER)),
      ...each('corner squares for a side', { '3': '2 1/2' }, (f) => halfSquare(half(f), QUARTER), { '3': '2 3/8' }),
    ],
    'the corners are cut an eighth large, to trim',
  ),
  inches('catbirdquilts.wordpress.com, Economy block, 2014-01-26', plain('centre', { '3 1/2': '4' })),
  inches(
    'Quilting Arts Forum, diamond in a square, February 2005',
    each('centre for a side', { '8': '6' }, (f) => centreOnPoint(f, QUARTER), { '8': '6 1/4' }),
    'the published centre is 0.16 short of the exact 6.157, so its points float inside the seam',
  ),
  inches(
    'mmmquilts.com, Half-rectangle triangles, December 2019',
    [
      {
        what: 'half-rectangle 2 by 4, width',
        published: '3',
        exact: halfRectangle(rational(2), rational(4), QUARTER).width,
        ours: '2 3/4',
      },
      {
        what: 'half-rectangle 2 by 4, height',
        published: '6',
        exact: halfRectangle(rational(2), rational(4), QUARTER).height,
        ours: '5 3/8',
      },
    ],
    'cut large to trim: + 1 by + 2, where + 0.6545 by + 1.309 is exact',
  ),
  inches(
    'Linda Clements, The Quilter’s Bible, Squares and Rectangles',
    [
      {
        what: 'half-rectangle 1 by 2, width',
        published: '1 5/8',
        exact: halfRectangle(rational(1), rational(2), QUARTER).width,
        ours: '1 3/4',
      },
      {
        what: 'half-rectangle 1 by 2, height',
        published: '3 1/4',
        exact: halfRectangle(rational(1), rational(2), QUARTER).height,
        ours: '3 3/8',
      },
    ],
    'printed as the rule + 5/8 by + 1 1/4 for a plain rectangle; for a triangle it is 0.03 by 0.06 short',
  ),
  inches(
    'Chris & Barbara Quilts, Rotary cutting part 8, 2015-09-03',
    [
      {
        what: 'side triangle of a 4-in. peak, width',
        published: '2 5/8',
        exact: halfRectangle(rational(2), rational(4), QUARTER).width,
        ours: '2 3/4',
      },
      {
        what: 'side triangle of a 4-in. peak, height',
        published: '5 1/4',
        exact: halfRectangle(rational(2), rational(4), QUARTER).height,
        ours: '5 3/8',
      },
    ],
    'the rule + 5/8 by + 1 1/4 is 0.03 by 0.06 short of the exact + 0.6545 by + 1.309',
  ),
  inches('newenglandfiberarts.com, node 253, Whirl', plain('side', { '4': '4 1/2', '2 1/2': '3', '6 1/2': '7' })),
  inches(
    'Brunswick Quilters guild, Habitat log cabin block',
    plain('side', { '2 1/2': '3', '1 1/4': '1 3/4', '3 3/4': '4 1/4', '5': '5 1/2', '6 1/4': '6 3/4', '10': '10 1/2' }),
  ),
  inches('sewingwithstitcher.com, block 6 (sawtooth star of 8)', [
    ...plain('square', { '2': '2 1/2', '4': '4 1/2' }),
    ...quarters({ '4': '5 1/4' }),
    ...halves({ '2': '2 7/8' }),
  ]),
  inches('blocksnswaps.blogspot.com, Square’s points, September 2009 (sawtooth star of 6, four geese at a time)', [
    ...plain('square', { '1 1/2': '2', '3': '3 1/2' }),
    ...quarters({ '3': '4 1/4' }),
    ...halves({ '1 1/2': '2 3/8' }),
  ]),
  inches(
    'Marcia Hohn, How to make setting triangles, quilterscache.com, October 2002',
    [
      ...side(
        {
          '4': '7',
          '5': '8 3/8',
          '6': '9 3/4',
          '7': '11 1/4',
          '8': '12 5/8',
          '9': '14',
          '10': '15 1/2',
          '12': '18 1/4',
          '14': '21 1/8',
          '15': '22 1/2',
          '16': '23 7/8',
        },
        { '4': '6 7/8', '7': '11 1/8', '10': '15 3/8' },
      ),
      ...corner({
        '4': '3 3/4',
        '5': '4 1/2',
        '6': '5 1/8',
        '7': '5 7/8',
        '8': '6 5/8',
        '9': '7 1/4',
        '10': '8',
        '12': '9 3/8',
        '14': '10 7/8',
        '15': '11 1/2',
        '16': '12 1/4',
      }),
    ],
    'adds the rounded 1 1/4 and 7/8 to 1.414 times the block; the exact 1.2071 and 0.8536 are at times one eighth less',
  ),
  inches(
    'Christa Watson, christaquilts.com, Quilty math',
    [
      ...side(
        {
          '3': '5 1/2',
          '3 1/2': '6 1/4',
          '4': '7',
          '4 1/2': '7 5/8',
          '5': '8 3/8',
          '5 1/2': '9 1/8',
          '6': '9 3/4',
          '6 1/2': '10 1/2',
          '7': '11 1/4',
          '7 1/2': '11 7/8',
          '8': '12 5/8',
          '8 1/2': '13 3/8',
          '9': '14',
          '9 1/2': '14 3/4',
          '10': '15 1/2',
          '10 1/2': '16 1/8',
          '11': '16 7/8',
          '11 1/2': '17 5/8',
          '12': '18 1/4',
        },
        { '4': '6 7/8', '5 1/2': '9', '7': '11 1/8', '8 1/2': '13 1/4', '10': '15 3/8', '11 1/2': '17 1/2' },
      ),
      ...corner(
        {
          '3': '3',
          '3 1/2': '3 1/2',
          '4': '3 3/4',
          '4 1/2': '4 1/8',
          '5': '4 1/2',
          '5 1/2': '4 7/8',
          '6': '5 1/8',
          '6 1/2': '5 1/2',
          '7': '5 7/8',
          '7 1/2': '6 1/4',
          '8': '6 5/8',
          '8 1/2': '7',
          '9': '7 1/4',
          '9 1/2': '7 5/8',
          '10': '8',
          '10 1/2': '8 3/8',
          '11': '8 3/4',
          '11 1/2': '9 1/8',
          '12': '9 3/8',
        },
        { '3 1/2': '3 3/8', '5 1/2': '4 3/4', '8 1/2': '6 7/8', '11 1/2': '9' },
      ),
    ],
    'adds the rounded 1 1/4 and 7/8 (and gives 3 1/2 for a block of 3 1/2 where its own rule gives 3 3/8)',
  ),
  inches('American Patchwork & Quilting, Amber Fields, undated', [
    ...side({ '6': '9 3/4' }),
    ...corner({ '6': '5 1/8' }),
    ...plain('setting square', { '6': '6 1/2' }),
  ]),
  inches(
    'American Patchwork & Quilting, Twinkle Twinkle, setting, undated',
    [...side({ '3': '5 3/4' }, { '3': '5 1/2' }), ...corner({ '3': '3 1/4' }, { '3': '3' })],
    'cut a quarter large on purpose, so that the blocks float',
  ),
  inches(
    'quiltnotes.com, triangle cutting chart',
    corner({ '7': '5 5/8' }, { '7': '5 7/8' }),
    'the printed square is 0.18 smaller than the exact 5.803',
  ),
  {
    source: 'weednstitch.blogspot.com, Metric patchwork, 2012-01-11',
    differs: 'the rules + 2.5 and + 3.5 are rounded down from the exact 2.561 and 3.621; ours are rounded up to the millimetre',
    ruler: rational(1, 10),
    values: [
      { what: 'square of 5 cm', published: '6,5', exact: plainSide(rational(5), METRIC) },
      { what: 'half-square triangle of 5 cm', published: '7,5', exact: halfSquare(rational(5), METRIC), ours: '7,6' },
      { what: 'quarter-square triangle of 10 cm', published: '13,5', exact: quarterSquare(rational(10), METRIC), ours: '13,7' },
    ],
  },
];
