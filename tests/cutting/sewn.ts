import { rational } from '../../src/measure/rational.ts';
import type { Point } from '../../src/geometry/point.ts';
import type { Assembly, Piece, Piecing, Unit, UnitKind } from '../../src/geometry/piecing/assembly.ts';
import { congruence, piecesOf } from '../../src/geometry/piecing/congruence.ts';
import { cutList, type CuttingChoices, type CutList } from '../../src/cutting/cutting.ts';
import { formatLength } from '../../src/measure/lengths.ts';

/** Blocks put together by hand, so that cutting is tested by itself. A part is placed by its top left corner (half steps allowed). */
export type Part = { readonly width: number; readonly height: number; at(x: number, y: number): Assembly };

type XY = readonly [number, number];
const point = ([x, y]: XY): Point => (Number.isInteger(x) && Number.isInteger(y) ? { x, y, w: 1 } : { x: 2 * x, y: 2 * y, w: 2 });

const leaf = (fabric: string, corners: readonly XY[]): Assembly => {
  const outline = corners.map(point);
  const piece: Piece = { id: 0, fabric, outline, patches: [] };
  return { outline, piece, parts: [], seams: [] };
};

/** A unit of a kind from pieces given by their corners, clockwise, measured from the unit's top left corner. */
export const unit = (
  kind: UnitKind | undefined,
  width: number,
  height: number,
  pieces: readonly (readonly [string, readonly XY[]])[],
): Part => ({
  width,
  height,
  at: (x, y) => ({
    outline: [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ].map((corner) => point(corner as [number, number])),
    ...(kind === undefined ? {} : { kind }),
    parts: pieces.map(([fabric, corners]) =>
      leaf(
        fabric,
        corners.map(([a, b]): XY => [x + a, y + b]),
      ),
    ),
    seams: [],
  }),
});

export const plain = (fabric: string, width: number, height = width): Part => ({
  width,
  height,
  at: (x, y) =>
    leaf(fabric, [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ]),
});

/** Two triangles: the seam falls from the top left, the first fabric above it; or rises from the bottom left, the first fabric above it. */
export const halves = (above: string, below: string, width: number, height = width, seam: 'falling' | 'rising' = 'falling'): Part =>
  unit(
    width === height ? 'half-square triangle' : 'half-rectangle triangle',
    width,
    height,
    seam === 'falling'
      ? [
          [
            above,
            [
              [0, 0],
              [width, 0],
              [width, height],
            ],
          ],
          [
            below,
            [
              [0, 0],
              [width, height],
              [0, height],
            ],
          ],
        ]
      : [
          [
            above,
            [
              [0, 0],
              [width, 0],
              [0, height],
            ],
          ],
          [
            below,
            [
              [width, 0],
              [width, height],
              [0, height],
            ],
          ],
        ],
  );

/** Four triangles round a centre, clockwise from the top. */
export const hourglass = (fabrics: readonly [string, string, string, string], f: number): Part => {
  const [a, b, c, d]: XY[] = [
    [0, 0],
    [f, 0],
    [f, f],
    [0, f],
  ];
  const m: XY = [f / 2, f / 2];
  return unit('quarter-square triangle', f, f, [
    [fabrics[0], [a!, b!, m]],
    [fabrics[1], [b!, c!, m]],
    [fabrics[2], [c!, d!, m]],
    [fabrics[3], [d!, a!, m]],
  ]);
};

/** A large triangle at the bottom left and two small ones: at the top, then (clockwise) at the right. */
export const splitHourglass = (large: string, top: string, right: string, f: number): Part =>
  unit('split quarter-square triangle', f, f, [
    [
      large,
      [
        [0, 0],
        [f, f],
        [0, f],
      ],
    ],
    [
      top,
      [
        [0, 0],
        [f, 0],
        [f / 2, f / 2],
      ],
    ],
    [
      right,
      [
        [f, 0],
        [f, f],
        [f / 2, f / 2],
      ],
    ],
  ]);

/** A goose that flies up, h high and twice as wide. */
export const goose = (triangle: string, left: string, right: string, h: number): Part =>
  unit('flying geese', 2 * h, h, [
    [
      triangle,
      [
        [h, 0],
        [2 * h, h],
        [0, h],
      ],
    ],
    [
      left,
      [
        [0, 0],
        [h, 0],
        [0, h],
      ],
    ],
    [
      right,
      [
        [h, 0],
        [2 * h, 0],
        [2 * h, h],
      ],
    ],
  ]);

/** A rectangle with corners (0 top left, clockwise) of the given legs; no two corners may touch. */
export const cornered = (base: string, width: number, height: number, corners: readonly (readonly [number, string, number])[]): Part => {
  const at: readonly XY[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const toNext: readonly XY[] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ];
  const pieces: [string, XY[]][] = [];
  const outline: XY[] = [];
  at.forEach(([x, y], i) => {
    const leg = corners.find(([corner]) => corner === i);
    if (leg === undefined) {
      outline.push([x, y]);
      return;
    }
    const back = toNext[(i + 3) % 4]!;
    const before: XY = [x - back[0] * leg[2], y - back[1] * leg[2]];
    const after: XY = [x + toNext[i]![0] * leg[2], y + toNext[i]![1] * leg[2]];
    outline.push(before, after);
    pieces.push([leg[1], [[x, y], after, before]]);
  });
  return unit('corner-triangle unit', width, height, [[base, outline], ...pieces]);
};

export const squareInSquare = (centre: string, corner: string, f: number): Part => {
  const h = f / 2;
  return unit('square in a square', f, f, [
    [
      centre,
      [
        [h, 0],
        [f, h],
        [h, f],
        [0, h],
      ],
    ],
    [
      corner,
      [
        [0, 0],
        [h, 0],
        [0, h],
      ],
    ],
    [
      corner,
      [
        [h, 0],
        [f, 0],
        [f, h],
      ],
    ],
    [
      corner,
      [
        [f, h],
        [f, f],
        [h, f],
      ],
    ],
    [
      corner,
      [
        [0, h],
        [h, f],
        [0, f],
      ],
    ],
  ]);
};

/** A triangle with its tip in the middle of the top. */
export const peak = (triangle: string, left: string, right: string, width: number, height = width): Part =>
  unit('peak', width, height, [
    [
      triangle,
      [
        [width / 2, 0],
        [width, height],
        [0, height],
      ],
    ],
    [
      left,
      [
        [0, 0],
        [width / 2, 0],
        [0, height],
      ],
    ],
    [
      right,
      [
        [width / 2, 0],
        [width, 0],
        [width, height],
      ],
    ],
  ]);

const joined = (parts: readonly Part[], down: boolean, kind?: UnitKind): Part => {
  const sum = (of: (part: Part) => number): number => parts.reduce((total, part) => total + of(part), 0);
  const [width, height] = down ? [parts[0]!.width, sum((part) => part.height)] : [sum((part) => part.width), parts[0]!.height];
  return {
    width,
    height,
    at: (x, y) => {
      let [a, b] = [x, y];
      const placed = parts.map((part) => {
        const assembly = part.at(a, b);
        if (down) b += part.height;
        else a += part.width;
        return assembly;
      });
      return { ...unit(kind, width, height, []).at(x, y), parts: placed };
    },
  };
};

export const row = (...parts: readonly Part[]): Part => joined(parts, false, 'joined unit');
export const column = (...parts: readonly Part[]): Part => joined(parts, true, 'joined unit');
/** Rows sewn together into the block, not named as units. */
export const block = (...rows: readonly (readonly Part[])[]): Part =>
  joined(
    rows.map((parts) => joined(parts, false)),
    true,
  );

/** Parts at their own places. */
export const gathered = (
  kind: UnitKind | undefined,
  width: number,
  height: number,
  parts: readonly (readonly [Part, number, number])[],
): Part => ({
  width,
  height,
  at: (x, y) => ({ ...unit(kind, width, height, []).at(x, y), parts: parts.map(([part, a, b]) => part.at(x + a, y + b)) }),
});

/** The part turned a quarter turn clockwise, or seen in a mirror, in its own rectangle. */
export const turnedPart = (part: Part): Part => ({
  width: part.height,
  height: part.width,
  at: (x, y) => moveOutlines(part.at(0, 0), (p) => ({ x: part.height * p.w - p.y + x * p.w, y: p.x + y * p.w, w: p.w }), false),
});
export const mirroredPart = (part: Part): Part => ({
  ...part,
  at: (x, y) => moveOutlines(part.at(0, 0), (p) => ({ x: (part.width + x) * p.w - p.x, y: p.y + y * p.w, w: p.w }), true),
});

function moveOutlines(assembly: Assembly, move: (p: Point) => Point, reversed: boolean): Assembly {
  const lay = (outline: readonly Point[]): readonly Point[] => (reversed ? outline.map(move).reverse() : outline.map(move));
  return {
    ...assembly,
    outline: lay(assembly.outline),
    ...(assembly.piece === undefined ? {} : { piece: { ...assembly.piece, outline: lay(assembly.piece.outline) } }),
    parts: assembly.parts.map((part) => moveOutlines(part, move, reversed)),
  };
}

/** The block as the piecing hands it on: pieces numbered, congruent units gathered. */
export function pieced(part: Part): Piecing {
  let next = 0;
  const numbered = (outline: readonly Point[], old: Piece): Piece => ({ ...old, id: next++, outline });
  const number = (node: Assembly): Assembly => ({
    ...node,
    ...(node.piece === undefined ? {} : { piece: numbered(node.piece.outline, node.piece) }),
    parts: node.parts.map(number),
  });
  const root = number(part.at(0, 0));
  const places = new Map<string, Assembly[]>();
  const walk = (node: Assembly): void => {
    if (node.kind !== undefined && node.parts.length > 0 && node !== root) {
      const { key } = congruence(node);
      places.set(key, [...(places.get(key) ?? []), node]);
    }
    node.parts.forEach(walk);
  };
  walk(root);
  const smallestFirst = [...places].sort((a, b) => piecesOf(a[1][0]!).length - piecesOf(b[1][0]!).length);
  const units: Unit[] = smallestFirst.map(([key, assemblies], i) => ({
    id: String.fromCharCode(65 + i),
    kind: assemblies[0]!.kind!,
    key,
    places: assemblies.map((assembly) => ({ assembly, turn: 0 })),
  }));
  const pieces = piecesOf(root);
  const figures = { pieces: pieces.length, seams: 0, partialSeams: 0, setInSeams: 0, units: 0, differentUnits: units.length, templates: 0, matchedPoints: 0 };
  return { way: 'standard units', root, pieces, units, figures, divisions: [] };
}

const INCHES: CuttingChoices = {
  step: rational(1),
  seam: rational(1, 4),
  ruler: rational(1, 8),
  trim: rational(0),
  blocks: 1,
  methods: {},
  fabrics: ['oat', 'teal', 'rust', 'plum'],
};

/** The cutting list of a block drawn with one lattice step to the inch, unless `choices` say otherwise. */
export const cutFor = (part: Part, choices: Partial<CuttingChoices> = {}): CutList => cutList(pieced(part), { ...INCHES, ...choices });

/** The list as one reads it: "teal 2 @ 4 7/8 once". */
export const lines = (list: CutList): readonly string[] =>
  list.cuts.map(({ fabric, quantity, shape, width, height, subcut }) => {
    const [w, h] = [formatLength(width), formatLength(height)];
    const size = w === h ? w : `${w} × ${h}`;
    return `${fabric} ${quantity} @ ${size}${shape === 'template' ? ' template' : ''}${subcut === 'none' ? '' : ` ${subcut}`}`;
  });
