import { sectionsOf, nameIn, type Section, type Sections } from '../../sewing/sections.ts';
import { depthIn, extentOf, hullOf, middleOf, type Polygon, type Spot } from '../polygons.ts';
import { between, captionOf, ink, inkAt, panel, plus, type Drawn, type Mark, type Panel } from './diagram.ts';
import { madeBy, type Made } from './laid-out.ts';

/** How far sections lie from each other, as a share of the whole. */
const APART = 0.09;

/** A section as it lies in the block, seen on the front, as ink in the block's unit. */
export interface SectionInk {
  readonly section: Section;
  readonly outline: Polygon;
  readonly pieces: readonly { readonly name: string; readonly part: number; readonly fabric: string; readonly outline: Polygon }[];
  /** The lines to sew on, in sewing order: that of each piece but the first. */
  readonly lines: readonly (readonly [Spot, Spot])[];
}

/** @returns the sections of a step's foundations as ink */
export function sectionInks(drawn: Drawn, sections: Sections = sectionsOf(drawn.step)): readonly SectionInk[] {
  const { step, pattern } = drawn;
  const scale = ink(pattern.lattice.step);
  const outlines = step.parts.map(({ outline }) => outline.map((point) => inkAt(point, scale)));
  return sections.sections.map((section) => ({
    section,
    outline: hullOf(section.parts.flatMap((part) => outlines[part]!)),
    pieces: section.parts.map((part) => {
      const { from } = step.parts[part]!;
      return { name: nameIn(sections, part), part, fabric: 'fabric' in from ? from.fabric : '', outline: outlines[part]! };
    }),
    lines: section.joins.map((join) => {
      const { from, to } = step.joins[join]!;
      return [inkAt(from, scale), inkAt(to, scale)] as const;
    }),
  }));
}

/**
 * @returns how a block is sewn onto foundations: these as they are printed, which is from the back and so the mirror image, with the lines
 * to sew on and the pieces' numbers; then, where there are several sections, these from the front, and in which order they are joined
 */
export function foundationPanels(drawn: Drawn): readonly Panel[] {
  const sections = sectionsOf(drawn.step);
  const inks = sectionInks(drawn, sections);
  const made = madeBy(drawn);
  return [printedFrom(inks, made, captionOf(drawn, 'foundations')), ...(inks.length > 1 ? [joinedFrom(drawn, sections, inks, made, captionOf(drawn, 'sections'))] : [])];
}

/** How far something moves so that all lies apart. */
function shiftIn({ width, height }: Made): (spot: Spot) => Spot {
  const gap = Math.max(width, height) * APART;
  return ([x, y]) => [((x / width) * 2 - 1) * gap, ((y / height) * 2 - 1) * gap];
}

function printedFrom(inks: readonly SectionInk[], made: Made, says: string): Panel {
  const shift = inks.length > 1 ? shiftIn(made) : (): Spot => [0, 0];
  const marks = inks.map(({ outline, pieces, lines }) => {
    const by = shift(middleOf(outline));
    const mirrored = ([x, y]: Spot): Spot => [made.width - x - by[0], y + by[1]];
    return {
      cloth: pieces.map(({ fabric, outline: own }): Mark => ({ mark: 'cloth', fabric, side: 'wrong', outline: own.map(mirrored).reverse() })),
      lines: lines.map(([from, to]): Mark => ({ mark: 'line', line: 'drawn', from: mirrored(from), to: mirrored(to) })),
      names: pieces.map(({ name, outline: own }): Mark => {
        const at = middleOf(own);
        return { mark: 'name', text: name, at: mirrored(at), turn: 0, room: 2 * depthIn(own, at) };
      }),
    };
  });
  return panel([...marks.flatMap(({ cloth }) => cloth), ...marks.flatMap(({ lines }) => lines), ...marks.flatMap(({ names }) => names)], says);
}

function joinedFrom({ step, pattern }: Drawn, { last }: Sections, inks: readonly SectionInk[], made: Made, says: string): Panel {
  const scale = ink(pattern.lattice.step);
  const shift = shiftIn(made);
  const cloth = inks.flatMap(({ outline, pieces }) => {
    const by = shift(middleOf(outline));
    return pieces.map(({ fabric, outline: own }): Mark => ({ mark: 'cloth', fabric, side: 'right', outline: own.map((spot) => plus(spot, by)) }));
  });
  const seams = last.map((join) => {
    const { from, to } = step.joins[join]!;
    const ends = [inkAt(from, scale), inkAt(to, scale)] as const;
    const by = shift(between(...ends));
    return [plus(ends[0], by), plus(ends[1], by)] as const;
  });
  const names = inks.map(({ section, outline }): Mark => {
    const at = middleOf(outline);
    return { mark: 'name', text: section.letter, at: plus(at, shift(at)), turn: 0, room: 2 * depthIn(outline, at) };
  });
  const smallest = Math.min(
    ...inks.map(({ outline }) => {
      const { left, top, right, bottom } = extentOf(outline);
      return Math.min(right - left, bottom - top);
    }),
  );
  const room = Math.max(0.04 * Math.max(made.width, made.height), 0.4 * smallest);
  return panel(
    [
      ...cloth,
      ...seams.map(([from, to]): Mark => ({ mark: 'line', line: 'stitched', from, to })),
      ...names,
      ...(seams.length > 1 ? seams.map(([from, to], i): Mark => ({ mark: 'order', number: i + 1, at: between(from, to), room })) : []),
    ],
    says,
  );
}
