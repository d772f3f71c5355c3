import { toNumber } from '../../measure/rational.ts';
import { isOnFoundations, sectionsOf } from '../../sewing/sections.ts';
import { sectionInks } from '../diagrams/foundation.ts';
import { inEnglish } from '../english.ts';
import type { Speech } from '../language.ts';
import type { Pattern } from '../pattern.ts';
import { cornersOf } from '../polygons.ts';
import { withFractions, type Setting } from './face.ts';
import { drawFoundation, foundationInk, withAllowance, type FoundationInk, type TurnedFoundation } from './foundation-drawing.ts';
import { headHeight, headItems, measureItems, measureRoom, type Head, type MeasureWords } from './furniture.ts';
import { packedPage } from './packed-page.ts';
import { packed, type Laid, type Room } from './packing.ts';
import { movedItem, type Document, type Page } from './page.ts';
import { MARGIN, POINTS, sheetOf, type Lie, type Paper } from './paper.ts';
import { tilingOver, within } from './tiles.ts';
import { INSET, lettersOf, matchItems, OVERLAP, shows } from './tiled-template.ts';

/** Between two foundations on a page, in points: room for scissors. */
const GAP = 9;
const QUARTERS: readonly number[] = [0, 90, 180, 270];

/** @returns whether a pattern is sewn onto foundations, so that there are some to print */
export const hasFoundations = ({ steps, way }: Pick<Pattern, 'steps' | 'way'>): boolean => steps.some((step) => isOnFoundations(step, way));

/**
 * Lays the foundations of a pattern out at full size, each once, printed side up: the mirror image of its section. What is a section by
 * itself and one piece needs none.
 * @returns the pages; none where the pattern is not sewn onto foundations
 */
export function foundationPages(pattern: Pattern, paper: Paper, setting: Setting, speech: Speech = inEnglish(pattern)): Document {
  const { block, choices, proof } = pattern;
  const { language, telling } = speech;
  const said = language.pattern.foundations;
  const name = block.name.trim() || 'Block';
  const title = said.title(name);
  const inks = inksOf(pattern, speech);
  const seam = withFractions(telling.length(choices.seam, block.unit));
  const lines = [...(proof.holds ? [] : [said.alarm]), ...said.lines(seam, choices.blocks)];
  const portrait = planFor(inks, paper, 'portrait', lines.length, setting, said);
  const landscape = portrait.large.length === 0 && portrait.sheets.length < 2 ? portrait : planFor(inks, paper, 'landscape', lines.length, setting, said);
  const fewer = landscape.large.length - portrait.large.length || landscape.sheets.length - portrait.sheets.length;
  const plan = fewer < 0 ? landscape : portrait;
  const large = plan.large.flatMap((ink) =>
    tiledPages(ink, paper, (part, parts, place) => ({ title: name, place, lines: parts > 1 ? [...lines, said.part(said.section(ink.letter), part, parts)] : lines }), setting, said),
  );
  const count = plan.sheets.length + large.length;
  return {
    title,
    language: language.tag,
    pages: [
      ...plan.sheets.map((laid, i) => packedPage(laid, plan, { title: name, place: said.place(i + 1, count), lines }, setting, said)),
      ...large.map((page, i) => page(said.place(plan.sheets.length + i + 1, count))),
    ],
  };
}

/** What is sewn of more than one piece. */
function inksOf(pattern: Pattern, { telling }: Speech): readonly FoundationInk[] {
  const { steps, way, block, choices } = pattern;
  return steps.filter((step) => isOnFoundations(step, way)).flatMap((step) => {
    const sections = sectionsOf(step);
    const several = sections.sections.length > 1;
    return sectionInks({ step, pattern }, sections)
      .filter(({ pieces }) => pieces.length > 1)
      .map((section) => foundationInk(section, several ? section.section.letter : '', POINTS[block.unit], toNumber(choices.seam), telling.cloth));
  });
}

interface Plan {
  readonly width: number;
  readonly height: number;
  readonly top: number;
  /** What fits a page, in each of its turns. */
  readonly loose: readonly (readonly TurnedFoundation[])[];
  readonly sheets: readonly (readonly Laid[])[];
  readonly large: readonly FoundationInk[];
}

function planFor(inks: readonly FoundationInk[], paper: Paper, lie: Lie, lines: number, setting: Setting, words: MeasureWords): Plan {
  const { width, height } = sheetOf(paper, lie);
  const top = MARGIN + headHeight(lines);
  const measure = measureRoom(setting, words);
  const inner = { width: width - 2 * MARGIN, height: height - MARGIN - top };
  const corner = cornersOf({ left: 0, top: inner.height - measure.height - GAP / 2, right: measure.width + GAP, bottom: inner.height });
  const room: Room = { ...inner, taken: [corner] };
  const pack = (all: readonly (readonly TurnedFoundation[])[]): Plan['sheets'] | null =>
    packed(all.map((turns) => ({ turns: turns.map(({ cut }) => withAllowance(cut, GAP / 2)) })), room, 1);
  const turned = inks.map((ink) => QUARTERS.map((degrees) => drawFoundation(ink, degrees, setting)));
  const fits = turned.map((turns) => pack([turns]) !== null);
  const loose = turned.filter((_, i) => fits[i]);
  return { width, height, top, loose, sheets: loose.length === 0 ? [] : pack(loose)!, large: inks.filter((_, i) => !fits[i]) };
}

/** @returns the pages of a foundation that is larger than a sheet, in the lie and the turn that need fewest, each waiting for its place */
function tiledPages(
  ink: FoundationInk,
  paper: Paper,
  headOf: (part: number, parts: number, place: string) => Head,
  setting: Setting,
  words: MeasureWords,
): readonly ((place: string) => Page)[] {
  const ways = (['portrait', 'landscape'] as const).flatMap((lie) => [0, 90].map((degrees) => {
    const size = sheetOf(paper, lie);
    const top = MARGIN + headHeight(headOf(1, 2, '').lines.length) + INSET;
    const window = { width: size.width - 2 * MARGIN - 2 * INSET, height: size.height - MARGIN - measureRoom(setting, words).height - 10 - INSET - top, top };
    const drawn = drawFoundation(ink, degrees, setting);
    const tiling = tilingOver(drawn.cut, window.width, window.height, OVERLAP);
    return { size, window, drawn, tiling, tiles: tiling.tiles.filter((tile) => shows(drawn.cut, tile, window)) };
  }));
  const { size, window, drawn, tiling, tiles } = ways.reduce((a, b) => (b.tiles.length < a.tiles.length ? b : a));
  const letters = lettersOf(tiling, tiles);
  return tiles.map((tile, i) => (place: string): Page => {
    const items = [...drawn.items.flatMap((item) => within(item, tile, window.width, window.height)), ...matchItems(tile, tiling, window, letters, setting)];
    return {
      ...size,
      margin: MARGIN,
      items: [
        ...headItems(headOf(i + 1, tiles.length, place), MARGIN, MARGIN, size.width - 2 * MARGIN, setting),
        ...items.map((item) => movedItem(item, MARGIN + INSET, window.top)),
        ...measureItems(MARGIN + 0.5, size.height - MARGIN - measureRoom(setting, words).height - 0.5, setting, words),
      ],
    };
  });
}
