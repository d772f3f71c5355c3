import type { Fabric } from '../../block/block.ts';
import { templatesOf, type Template } from '../../cutting/template-list.ts';
import type { Telling } from '../../block/telling.ts';
import { printLength } from '../../measure/lengths.ts';
import type { Rational } from '../../measure/rational.ts';
import type { LanguageTag } from '../house-style.ts';
import { TEMPLATES_IN_ENGLISH } from '../phrases/english/templates.ts';
import type { TemplatePhrases } from '../phrases/template-phrases.ts';
import type { Pattern } from '../pattern.ts';
import { withFractions, type Setting } from './face.ts';
import { headHeight, measureRoom } from './furniture.ts';
import { packedPage } from './packed-page.ts';
import { packed, type Laid, type Loose, type Room } from './packing.ts';
import type { Document } from './page.ts';
import { MARGIN, POINTS, sheetOf, type Lie, type Paper } from './paper.ts';
import { areaOf, cornersOf, hullOf, movedBy, type Polygon, type Spot } from '../polygons.ts';
import { drawTemplate, inkOfTemplate, type TemplateInk, type TurnedTemplate } from './template-drawing.ts';
import { tiledPages } from './tiled-template.ts';

/** Between two templates on a page, in points: room for scissors. */
const GAP = 9;
/** Up to so many templates are also turned until one of their edges lies level, where that saves a page. */
const FEW = 12;
const QUARTERS: readonly number[] = [0, 90, 180, 270];

/** What of a pattern its pages of templates tell. */
export type TemplatePattern = Pick<Pattern, 'block' | 'cuts' | 'choices' | 'lattice' | 'piecing' | 'proof' | 'fabrics' | 'scraps'>;

/** How the pages of templates are said. */
export interface TemplateWords {
  readonly language: LanguageTag;
  readonly phrases: TemplatePhrases;
  /** How lengths are printed. */
  readonly telling: Pick<Telling, 'length'>;
}

const PLAIN: TemplateWords = { language: 'en', phrases: TEMPLATES_IN_ENGLISH, telling: { length: (value, unit) => withFractions(printLength(value, unit)) } };

/**
 * Lays the templates of a pattern out at full size, on as few pages as are found.
 * @returns the pages, one lie of the paper for all templates that fit a page; no pages where no template is needed
 */
export function templatePages(pattern: TemplatePattern, paper: Paper, setting: Setting, spoken: TemplateWords = PLAIN): Document {
  const { block, lattice } = pattern;
  const name = block.name.trim() || 'Block';
  const fabrics = new Map([...pattern.fabrics.map(({ fabric }) => fabric), ...pattern.scraps].map((fabric) => [fabric.id, fabric]));
  const fabricOf = (id: string): Pick<Fabric, 'name' | 'directional'> => {
    const fabric = fabrics.get(id);
    return { ...fabric, name: fabric?.name.trim() || id };
  };
  const templates = templatesOf(pattern);
  const inks = templates.map((template) =>
    inkOfTemplate(template, lattice.step, POINTS[block.unit], fabricOf, spoken.phrases),
  );
  const lines = headLines(pattern, templates, spoken);
  const known = new Map<string, TurnedTemplate>();
  const draw = (ink: TemplateInk, degrees: number): TurnedTemplate => {
    const key = `${ink.name} ${degrees}`;
    const drawn = known.get(key) ?? drawTemplate(ink, degrees, setting);
    known.set(key, drawn);
    return drawn;
  };
  const planFor = (lie: Lie): Plan => laidOut(inks, { ...sheetOf(paper, lie), lie, lines: lines.length, setting, words: spoken.phrases, draw });
  const portrait = planFor('portrait');
  const landscape = portrait.large.length === 0 && portrait.sheets.length <= portrait.least ? portrait : planFor('landscape');
  // A template that fits only one way settles the lie, for parts have to be stuck together.
  const fewer = landscape.large.length - portrait.large.length || landscape.sheets.length - portrait.sheets.length;
  const plan = fewer < 0 ? landscape : portrait;
  const large = plan.large.flatMap((ink) => tiledPages(ink, paper, (said, part) => ({ title: name, place: part, lines: [...lines, said] }), setting));
  const count = plan.sheets.length + large.length;
  const placeOf = (i: number): string => spoken.phrases.place(i + 1, count);
  const pages = [
    ...plan.sheets.map((laid, i) => packedPage(laid, plan, { title: name, place: placeOf(i), lines }, setting, spoken.phrases)),
    ...large.map((page, i) => page(placeOf(plan.sheets.length + i))),
  ];
  return { title: spoken.phrases.title(name), language: spoken.language, pages };
}

/** What every page says under its title. */
function headLines({ block, choices, proof }: TemplatePattern, templates: readonly Template[], { phrases, telling }: TemplateWords): readonly string[] {
  const { unit, finished } = block;
  const length = (value: Rational): string => telling.length(value, unit);
  const handed = templates.some(({ uses }) => uses.some(({ reversed }) => reversed > 0));
  return [
    ...(proof.holds ? [] : [phrases.alarm]),
    phrases.about(phrases.size(length(finished.width), length(finished.height)), choices.blocks, length(choices.seam)),
    phrases.lines,
    ...(handed ? [phrases.reversed] : []),
  ];
}

interface Setup {
  readonly lie: Lie;
  readonly width: number;
  readonly height: number;
  /** Under the title. */
  readonly lines: number;
  readonly setting: Setting;
  readonly words: TemplatePhrases;
  readonly draw: (ink: TemplateInk, degrees: number) => TurnedTemplate;
}

interface Plan {
  readonly width: number;
  readonly height: number;
  /** Where the room for templates begins. */
  readonly top: number;
  /** What fits a page, in each of its turns. */
  readonly loose: readonly (readonly TurnedTemplate[])[];
  readonly sheets: readonly (readonly Laid[])[];
  /** The area of the templates alone takes so many sheets. */
  readonly least: number;
  /** Templates that are larger than a page. */
  readonly large: readonly TemplateInk[];
}

function laidOut(inks: readonly TemplateInk[], { width, height, lines, setting, words, draw }: Setup): Plan {
  const top = MARGIN + headHeight(lines);
  const measure = measureRoom(setting, words);
  const inner = { width: width - 2 * MARGIN, height: height - MARGIN - top };
  const corner = cornersOf({ left: 0, top: inner.height - measure.height - GAP / 2, right: measure.width + GAP, bottom: inner.height });
  const room: Room = { ...inner, taken: [corner] };
  const pack = (all: readonly (readonly TurnedTemplate[])[], least: number): Plan['sheets'] | null =>
    packed(all.map((turns): Loose => ({ turns: turns.map(({ footprint }) => withRoom(footprint)) })), room, least);
  const turned = (ink: TemplateInk, turns: readonly number[]): readonly TurnedTemplate[] => turns.map((degrees) => draw(ink, degrees));
  const fitting = inks.map((ink) => {
    const quarters = turned(ink, QUARTERS);
    if (pack([quarters], 1) !== null) return quarters;
    const freer = turned(ink, turnsOf(ink));
    return pack([freer], 1) === null ? null : freer;
  });
  const small = inks.filter((_, i) => fitting[i] !== null);
  const large = inks.filter((_, i) => fitting[i] === null);
  const loose = fitting.filter((turns) => turns !== null);
  const free = inner.width * inner.height - areaOf(corner);
  const least = Math.ceil(loose.reduce((sum, [first]) => sum + areaOf(first!.cut), 0) / free);
  const plain: Plan = { width, height, top, loose, sheets: pack(loose, least) ?? [], least, large };
  if (plain.sheets.length <= least || small.length > FEW) return plain;
  const freer = small.map((ink) => turned(ink, turnsOf(ink)));
  const sheets = pack(freer, least) ?? [];
  return sheets.length < plain.sheets.length ? { ...plain, loose: freer, sheets } : plain;
}

/** Half the gap all round: what is placed edge to edge lies a gap apart. */
function withRoom(footprint: readonly Spot[]): Polygon {
  const [near, far] = [(GAP / 2) * (Math.SQRT2 - 1), GAP / 2];
  const octagon: readonly Spot[] = [near, -near].flatMap((a) => [far, -far].flatMap((b): Spot[] => [[a, b], [b, a]]));
  return hullOf(footprint.flatMap((spot) => movedBy(octagon, spot)));
}

/** Where the top of a print lies can only be said of a template that stands upright or lies on a side. */
const turnsOf = (ink: TemplateInk): readonly number[] => [...QUARTERS, ...(ink.says.some(({ tops }) => tops !== null) ? [] : levelTurns(ink))];

/** Turns, in degrees, that lay one of the edges level and are no quarter turns. */
function levelTurns({ cut }: TemplateInk): readonly number[] {
  const turns = cut.map(([x, y], i) => {
    const [nextX, nextY] = cut[(i + 1) % cut.length]!;
    return (360 - (Math.atan2(nextY - y, nextX - x) * 180) / Math.PI) % 360;
  });
  const apart = (a: number, b: number): boolean => Math.abs(a - b) > 0.01;
  return turns.filter((turn, i) => apart(Math.round(turn / 90) * 90, turn) && turns.slice(0, i).every((other) => apart(other, turn)));
}
