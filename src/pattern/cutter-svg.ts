import { quoted } from '../block/problems.ts';
import type { Cut } from '../cutting/cut.ts';
import { templatesOf } from '../cutting/template-list.ts';
import { printLength } from '../measure/lengths.ts';
import { bad, good, type Result } from '../measure/problem.ts';
import { rational, toNumber, type Rational } from '../measure/rational.ts';
import type { LanguageTag } from './house-style.ts';
import { inkOf } from './pages/ink.ts';
import { escaped, svgNumber } from './pages/page-svg.ts';
import type { Pattern } from './pattern.ts';
import { extentOf, movedBy, type Spot } from './polygons.ts';

/*
 * The pieces of a pattern for a cutting machine: lines to cut and nothing else, at true size, each shape once, with its allowance. A
 * fabric is a layer with a colour of its own, which such machines' programs take for a tool or a run of its own.
 */

/** A shape, and how many pieces of cloth of it there are over all blocks. */
interface Shape {
  /** Convex, clockwise as seen on screen, in the block's unit. */
  readonly outline: readonly Spot[];
  readonly count: number;
  /** The line of the cutting list. */
  readonly cut: string;
}

interface CutterWords {
  readonly says: (count: number, cuts: readonly string[]) => string;
  readonly alarm: string;
}

/** What stands in the file beside its lines: programs show it where they list layers and objects. */
const WORDS: Readonly<Record<LanguageTag, CutterWords>> = {
  en: {
    says: (count, cuts) => `cut ${count}: ${cuts.length === 1 ? 'line' : 'lines'} ${cuts.join(', ')} of the cutting list`,
    alarm: 'do not cut yet: sewn back in exact arithmetic, this is not the drawing',
  },
  de: {
    says: (count, cuts) => `${count} schneiden: ${cuts.length === 1 ? 'Zeile' : 'Zeilen'} ${cuts.join(', ')} der Zuschneideliste`,
    alarm: 'noch nicht zuschneiden: genau nachgenäht ergibt dies nicht die Zeichnung',
  },
};

/** Width of mats that most machines at home have: 12 in., 30 cm (common practice). */
export const USUAL_MAT: Readonly<Record<'in' | 'cm', Rational>> = { in: rational(12), cm: rational(30) };

/** Between shapes, and between them and the mat's edge: 1/8 in., 3 mm. */
const GAP: Readonly<Record<'in' | 'cm', number>> = { in: 0.125, cm: 0.3 };
/** A hairline: what some programs ask of a line to cut. */
const LINE: Readonly<Record<'in' | 'cm', number>> = { in: 0.001, cm: 0.0025 };

type Source = Pick<Pattern, 'block' | 'cuts' | 'fabrics' | 'scraps' | 'piecing' | 'lattice' | 'choices' | 'proof'>;

/**
 * @param width how wide the mat is that the machine cuts on, in the block's unit
 * @returns an SVG 1.1 document measured in the block's unit (inches, or centimetres written as millimetres), or in one sentence which piece
 * is larger than the mat
 */
export function cutterSvg(pattern: Source, width: Rational, language: LanguageTag): Result<string> {
  const { unit } = pattern.block;
  const { says, alarm } = WORDS[language];
  const [wide, gap] = [toNumber(width), GAP[unit]];
  const room = wide - 2 * gap;
  let top = gap;
  const layers: string[] = [];
  const fabrics = [...pattern.fabrics.map(({ fabric }) => fabric), ...pattern.scraps];
  for (const [i, { id, name }] of fabrics.entries()) {
    const shapes = alike(shapesOf(pattern, id));
    if (shapes.length === 0) continue;
    const lying = shapes.map((shape) => ({ ...shape, outline: laidDown(shape.outline, room) }));
    const tooLarge = lying.find(({ outline }) => extentOf(outline).right > room + 1e-9);
    if (tooLarge) {
      const size = printLength(width, unit);
      const sentence = `Line ${tooLarge.cuts[0]!} of the cutting list (${quoted(name.trim() || id)}) is larger than a mat ${size} wide; choose a wider one.`;
      return bad('mat-too-narrow', sentence);
    }
    const rows = inRows(lying, room, gap);
    const paths = rows.placed.map(({ shape: { count, cuts }, outline }) => {
      const places = movedBy(outline, [gap, top]).map(([x, y]) => `${inUnit(x, unit)} ${inUnit(y, unit)}`);
      return `<path d="M${places.join('L')}Z"><title>${escaped(says(count, cuts))}</title></path>`;
    });
    layers.push(`<g id="fabric-${i + 1}" fill="none" stroke="${colorOf(i)}" stroke-width="${inUnit(LINE[unit], unit)}">`, `<title>${escaped(name.trim() || id)}</title>`, ...paths, '</g>');
    top += rows.height + 2 * gap;
  }
  const [x, y] = [inUnit(wide, unit), inUnit(top, unit)];
  const svgUnit = unit === 'in' ? 'in' : 'mm';
  return good(
    [
      '<?xml version="1.0" encoding="UTF-8"?>',
      `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${x}${svgUnit}" height="${y}${svgUnit}" viewBox="0 0 ${x} ${y}">`,
      `<title>${escaped([pattern.block.name, ...(pattern.proof.holds ? [] : [alarm])].join(': '))}</title>`,
      ...layers,
      '</svg>',
      '',
    ].join('\n'),
  );
}

/** In the unit that the file is measured in: programs know millimetres better than centimetres. */
const inUnit = (length: number, unit: 'in' | 'cm'): string => svgNumber(unit === 'cm' ? 10 * length : length);

/** Colours far apart, dark enough to see on white, again and again. */
const COLORS = ['#d00000', '#0040d0', '#007a3d', '#9c27b0', '#c25700', '#00838f', '#5d4037', '#37474f'];
const colorOf = (i: number): string => COLORS[i % COLORS.length]!;

/** The pieces that are cut of a fabric, after every subcut. */
function shapesOf(pattern: Source, fabric: string): readonly Shape[] {
  const byTemplate = templatesOf(pattern).flatMap(({ outline, uses }): readonly Shape[] => {
    const spots = outline.flat().map(inkOf);
    return uses
      .filter((use) => use.fabric === fabric)
      .flatMap(({ cuts, quantity, reversed }): Shape[] => [
        { outline: spots, count: quantity, cut: cuts[0]! },
        { outline: mirrored(spots), count: reversed, cut: cuts[0]! },
      ]);
  });
  const ruled = pattern.cuts.filter((cut) => cut.fabric === fabric && cut.template === null).flatMap(ruledShapes);
  return [...ruled, ...byTemplate].filter(({ count }) => count > 0).sort((a, b) => Number(a.cut) - Number(b.cut));
}

function ruledShapes(cut: Cut): readonly Shape[] {
  const [w, h] = [toNumber(cut.width), toNumber(cut.height)];
  const shape = (count: number, ...outline: Spot[]): Shape => ({ outline, count, cut: cut.id });
  if (cut.nested) {
    // A strip w high; see cutting/from-strips.ts for where its cuts arrive.
    const m = toNumber(cut.nested.measure);
    const count = cut.quantity * cut.nested.triangles;
    return [cut.nested.form === 'half' ? shape(count, [0, 0], [m - w, 0], [m, w], [0, w]) : shape(count, [w, 0], [m - w, 0], [m, w], [0, w])];
  }
  if (cut.subcut === 'twice') return [shape(4 * cut.quantity, [h / 2, 0], [h, h / 2], [0, h / 2])];
  if (cut.subcut !== 'once') return [shape(cut.quantity, [0, 0], [w, 0], [w, h], [0, h])];
  const { falling, rising } = cut.diagonals ?? { falling: cut.quantity, rising: 0 };
  return [shape(2 * falling, [0, 0], [w, h], [0, h]), shape(2 * rising, [0, 0], [w, 0], [0, h])];
}

/** @returns an outline as it lies turned over */
const mirrored = (outline: readonly Spot[]): readonly Spot[] => outline.map(([x, y]): Spot => [-x, y]).reverse();

interface Sort {
  readonly outline: readonly Spot[];
  readonly count: number;
  readonly cuts: readonly string[];
}

/** @returns each shape once, whichever lines it is cut for */
function alike(shapes: readonly Shape[]): readonly Sort[] {
  const sorts = new Map<string, Sort>();
  for (const { outline, count, cut } of shapes) {
    const key = atOrigin(outline).map(([x, y]) => `${svgNumber(x)} ${svgNumber(y)}`).join(' ');
    const known = sorts.get(key);
    sorts.set(key, { outline: known?.outline ?? outline, count: (known?.count ?? 0) + count, cuts: [...new Set([...(known?.cuts ?? []), cut])] });
  }
  return [...sorts.values()];
}

function atOrigin(outline: readonly Spot[]): readonly Spot[] {
  const { left, top } = extentOf(outline);
  return movedBy(outline, [-left, -top]);
}

/** @returns an outline lying on its longer side, where it is not too long for the mat so */
function laidDown(outline: readonly Spot[], room: number): readonly Spot[] {
  const here = atOrigin(outline);
  const turned = atOrigin(outline.map(([x, y]): Spot => [-y, x]));
  const [a, b] = [extentOf(here), extentOf(turned)];
  const [lying, standing] = a.right >= b.right ? [here, turned] : [turned, here];
  return extentOf(lying).right <= room + 1e-9 ? lying : standing;
}

/** Lays shapes in rows, the highest first: first fit by decreasing height, in boxes. */
function inRows(shapes: readonly Sort[], room: number, gap: number) {
  const rows: { top: number; height: number; end: number }[] = [];
  const placed: { readonly shape: Sort; readonly outline: readonly Spot[] }[] = [];
  const sorted = shapes.map((shape) => ({ shape, ...extentOf(shape.outline) })).sort((a, b) => b.bottom - a.bottom);
  let height = 0;
  for (const { shape, right, bottom } of sorted) {
    let row = rows.find(({ end }) => end + right <= room + 1e-9);
    if (!row) {
      row = { top: height === 0 ? 0 : height + gap, height: bottom, end: 0 };
      rows.push(row);
      height = row.top + bottom;
    }
    placed.push({ shape, outline: movedBy(shape.outline, [row.end, row.top]) });
    row.end += right + gap;
  }
  return { placed, height };
}
