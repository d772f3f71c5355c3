import type { Cut, CutUse, Role } from '../../src/cutting/cut.ts';
import type { Drawing, Lattice } from '../../src/geometry/patchwork/drawing.ts';
import type { Point } from '../../src/geometry/point.ts';
import { rational } from '../../src/measure/rational.ts';
import type { Rational } from '../../src/measure/rational.ts';
import type { Join, Step, StepPart } from '../../src/sewing/step.ts';

/** Words to write small plans with, for the proof to judge. Sizes read as in the trade: "4 7/8". */

export type Corner = readonly [number, number];

export function inches(text: string): Rational {
  const [, whole, n, d] = /^(?:(\d+))?(?: ?(\d+)\/(\d+))?$/.exec(text) ?? [];
  if (whole === undefined && n === undefined) throw new Error(`not a size: ${text}`);
  return n === undefined ? rational(Number(whole)) : rational(Number(whole ?? 0) * Number(d) + Number(n), Number(d));
}

export const at = ([x, y]: Corner): Point => ({ x, y, w: 1 });
export const box = (x: number, y: number, w: number, h: number): Corner[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const size = (w: string, h: string): Step['finished'] => ({ width: inches(w), height: inches(h) });

export interface Line {
  readonly cut: string;
  readonly subcut?: Cut['subcut'];
  readonly for: readonly (readonly [unit: string, role: Role, quantity: number])[];
  readonly spare?: number;
  readonly diagonals?: Cut['diagonals'];
  /** Of a strip: how its triangles lie, how many it gives, what is measured for each. */
  readonly nested?: readonly [form: 'half' | 'quarter', triangles: number, measure: string];
  readonly template?: readonly Corner[];
}

/** "2 white 4 7/8" or "1 oat 2 1/2 x 4 1/2"; the line's number is its place in the list. */
export function list(...lines: Line[]): Cut[] {
  return lines.map((line, i) => {
    const [, quantity, fabric, first, second] = /^(\d+) ([a-z]+) ([\d /]+?)(?: x ([\d /]+))?$/.exec(line.cut) ?? [];
    const [width, height] = [inches(first), inches(second ?? first)];
    return {
      id: `${i + 1}`,
      fabric,
      quantity: Number(quantity),
      shape: line.template ? 'template' : second === undefined ? 'square' : 'rectangle',
      width,
      height,
      exact: null,
      subcut: line.subcut ?? 'none',
      uses: line.for.map(([unit, role, n]): CutUse => ({ unit, role, quantity: n })),
      ...(line.diagonals ? { diagonals: line.diagonals } : {}),
      ...(line.nested ? { nested: { form: line.nested[0], triangles: line.nested[1], measure: inches(line.nested[2]) } } : {}),
      spare: line.spare ?? 0,
      template: line.template?.map(at) ?? null,
      pieces: [],
    };
  });
}

export const patch = (fabric: string, cut: number, role: Role, outline: readonly Corner[]): StepPart => ({
  from: { cut: `${cut}`, role, fabric },
  turn: 0,
  outline: outline.map(at),
});
export const unit = (id: string, turn: StepPart['turn'], outline: readonly Corner[]): StepPart => ({
  from: { unit: id },
  turn,
  outline: outline.map(at),
});
export const seam = (first: number, second: number, from: Corner, to: Corner, sew: Join['sew'] = 'through'): Join => ({
  sew,
  first,
  second,
  from: at(from),
  to: at(to),
});

type Told = Pick<Step, 'makes' | 'kind' | 'count' | 'method' | 'parts' | 'joins'> & {
  readonly finished: readonly [string, string];
  readonly unfinished: readonly [string, string];
  readonly trimmed?: boolean;
};

export function steps(...told: Told[]): Step[] {
  return told.map((step, i) => ({
    ...step,
    number: i + 1,
    finished: size(...step.finished),
    unfinished: size(...step.unfinished),
    trimmed: step.trimmed ?? false,
    pressed: [],
    points: [],
    how: '',
    text: '',
    press: '',
    pieces: [],
  }));
}

export function drawing(
  width: number,
  height: number,
  ground: string,
  ...patches: (readonly [string, readonly Lattice[], 'whole'?])[]
): Drawing {
  return {
    width,
    height,
    columns: [0, width],
    rows: [0, height],
    ground,
    patches: patches.map(([fabric, points, whole]) => ({ fabric, points, ...(whole ? { whole: true } : {}) })),
    seams: [],
  };
}

export const COMMON = { seam: rational(1, 4), ruler: rational(1, 8), trim: rational(0), blocks: 1 };
