import { box, leastCorner } from '../geometry/convex.ts';
import type { Piecing } from '../geometry/piecing/assembly.ts';
import { turned, type Point } from '../geometry/point.ts';
import { quarterTurned, type Vector } from '../geometry/vector.ts';
import { rational, subtract, type Rational } from '../measure/rational.ts';
import type { Cut } from './cut.ts';
import { cutOutline, grainAlong, templateKey, type Place, type Trims } from './template.ts';
import { isShortTip, tipsIn } from './tips.ts';

/** How many pieces of one fabric are cut round a template. */
export interface TemplateUse {
  readonly fabric: string;
  /** The lines of the cutting list. */
  readonly cuts: readonly string[];
  /** With the printed side of the template up, over all blocks. */
  readonly quantity: number;
  /** With the template turned over. */
  readonly reversed: number;
  /**
   * How many of all these have what is up in the block at the template's top, right, bottom and left, as its outline stands here: for
   * prints with an up and a down.
   */
  readonly tops: readonly [number, number, number, number];
}

/** One outline to print: for every piece of cloth of this shape, whatever its fabric, and for its mirror image. */
export interface Template {
  /** "T1", "T2", … in the order of the cutting list. */
  readonly name: string;
  /** Finished, clockwise on screen, lattice steps from the corner of its own box. */
  readonly finished: readonly Point[];
  /** The outline to cut along: the places round each finished corner, in the block's unit. */
  readonly outline: readonly (readonly Place[])[];
  /** Lies on the straight grain of the cloth. */
  readonly grain: Vector;
  readonly uses: readonly TemplateUse[];
}

/** What of a pattern its templates come from. */
export interface TemplateSource {
  readonly piecing: Pick<Piecing, 'root' | 'pieces'>;
  readonly cuts: readonly Pick<Cut, 'id' | 'fabric' | 'quantity' | 'template' | 'pieces'>[];
  readonly lattice: { readonly step: Rational };
  readonly choices: { readonly seam: Rational };
}

/** @returns the templates to print for a cutting list, in its order; none where a ruler cuts everything */
export function templatesOf({ piecing, cuts, lattice, choices }: TemplateSource): readonly Template[] {
  const sorts: { readonly shape: readonly Point[]; readonly cuts: TemplateSource['cuts'][number][] }[] = [];
  const byKey = new Map<string, (typeof sorts)[number]>();
  for (const cut of cuts) {
    if (cut.template === null) continue;
    const keys = [templateKey(cut.template), templateKey(mirrored(cut.template))];
    const key = keys.reduce((a, b) => (a <= b ? a : b));
    const known = byKey.get(key) ?? { shape: cut.template, cuts: [] };
    if (!byKey.has(key)) sorts.push(known);
    byKey.set(key, known);
    known.cuts.push(cut);
  }
  const tips = tipsIn(piecing);
  const pieces = new Map(piecing.pieces.map((piece) => [piece.id, piece]));
  return sorts.map(({ shape, cuts: same }, i) => {
    const laid = same.flatMap((cut) =>
      cut.pieces.map((id) => {
        const piece = pieces.get(id)!;
        return { cut, laying: laidOn(piece.outline, shape), trims: tips(piece) };
      }),
    );
    const trims = inCommon(laid.map(({ laying, trims: own }) => trimsLaid(laying, own, shape)), shape);
    return {
      name: `T${i + 1}`,
      finished: shape,
      outline: outlineOf(shape, lattice.step, choices.seam, trims),
      grain: grainAlong(shape),
      uses: usesOf(same, shape, laid),
    };
  });
}

/** A piece that is cut round a template. */
interface LaidPiece {
  readonly cut: TemplateSource['cuts'][number];
  readonly laying: Laying | null;
  readonly trims: Trims;
}

function usesOf(cuts: TemplateSource['cuts'], shape: readonly Point[], laid: readonly LaidPiece[]): readonly TemplateUse[] {
  const uses = new Map<string, { cuts: string[]; quantity: number; reversed: number; tops: [number, number, number, number] }>();
  for (const cut of cuts) {
    const use = uses.get(cut.fabric) ?? { cuts: [], quantity: 0, reversed: 0, tops: [0, 0, 0, 0] };
    for (const { laying } of laid.filter((piece) => piece.cut === cut)) use.tops[laying?.quarterTurns ?? 0]! += cut.quantity / cut.pieces.length;
    use.cuts.push(cut.id);
    use[templateKey(cut.template!) === templateKey(shape) ? 'quantity' : 'reversed'] += cut.quantity;
    uses.set(cut.fabric, use);
  }
  return [...uses].map(([fabric, use]) => ({ fabric, ...use }));
}

/** Trimmed tips are a help: where their places leave what can be held exactly, the blunt ones serve. */
function outlineOf(shape: readonly Point[], step: Rational, seam: Rational, trims: Trims): Template['outline'] {
  try {
    return cutOutline(shape, step, seam, trims);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return cutOutline(shape, step, seam);
  }
}

const mirrored = (outline: readonly Point[]): readonly Point[] => outline.map((p) => ({ ...p, x: p.x === 0 ? 0 : -p.x })).reverse();

/** How a piece is laid onto a template. */
interface Laying {
  readonly mirror: boolean;
  readonly quarterTurns: 0 | 1 | 2 | 3;
  /** For each corner of the template the piece's. */
  readonly corners: readonly number[];
}

/** @returns the first way to lay a piece's outline onto a template's: turned by quarter turns, or turned over and turned; null if none */
function laidOn(outline: readonly Point[], template: readonly Point[]): Laying | null {
  const n = outline.length;
  if (n !== template.length) return null;
  const wanted = fromLeast(
    template,
    template.map((_, i) => i),
  );
  for (const mirror of [false, true]) {
    const corners = outline.map((_, i) => (mirror ? n - 1 - i : i));
    let shape = mirror ? mirrored(outline) : outline;
    for (const quarterTurns of [0, 1, 2, 3] as const) {
      const laid = fromLeast(shape, corners);
      if (laid.text === wanted.text) {
        const ofTemplate = template.map((_, i) => laid.names[wanted.names.indexOf(i)]!);
        return { mirror, quarterTurns, corners: ofTemplate };
      }
      shape = shape.map(turned);
    }
  }
  return null;
}

/** An outline from its least corner on, told by where its corners lie in its box; and the names of its corners in that order. */
function fromLeast(outline: readonly Point[], names: readonly number[]): { readonly text: string; readonly names: readonly number[] } {
  const { left, top } = box(outline);
  const [x0, y0] = [rational(left.x, left.w), rational(top.y, top.w)];
  const text = ({ n, d }: Rational): string => `${n}/${d}`;
  const least = leastCorner(outline);
  const order = outline.map((_, i) => (least + i) % outline.length);
  const place = ({ x, y, w }: Point): string => `${text(subtract(rational(x, w), x0))},${text(subtract(rational(y, w), y0))}`;
  return { text: order.map((i) => place(outline[i]!)).join(' '), names: order.map((i) => names[i]!) };
}

/** The trims of a piece as they lie on its template. */
function trimsLaid(laying: Laying | null, trims: Trims, template: readonly Point[]): Trims {
  if (laying === null) return template.map(() => []);
  const laid = ([x, y]: Vector): Vector => {
    let normal: Vector = laying.mirror ? [-x, y] : [x, y];
    for (let i = 0; i < laying.quarterTurns; i++) normal = quarterTurned(normal);
    return normal;
  };
  return laying.corners.map((corner) => {
    const normals = trims[corner]!.map(laid);
    return laying.mirror ? normals.reverse() : normals;
  });
}

/** Only what every place asks for is cut off: cloth that one of them needs stays on. */
function inCommon([first = [], ...others]: readonly Trims[], shape: readonly Point[]): Trims {
  const same = (a: Vector, b: Vector): boolean => a[0] === b[0] && a[1] === b[1];
  return first.map((normals, i) => {
    const all = normals.filter((normal) => others.every((trims) => trims[i]!.some((other) => same(normal, other))));
    return isShortTip(shape, i, all) ? all : [];
  });
}
