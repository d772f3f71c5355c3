import type { Cut } from '../cutting/cut.ts';
import { templatesOf } from '../cutting/template-list.ts';
import { formatLength } from '../measure/lengths.ts';
import type { Rational } from '../measure/rational.ts';
import type { LanguageTag } from './house-style.ts';
import type { Pattern } from './pattern.ts';

/*
 * The cutting list for spreadsheets: comma-separated values by RFC 4180, in UTF-8 with the mark at the beginning by which spreadsheets
 * know it.
 */

interface CsvWords {
  readonly heads: readonly string[];
  readonly shapes: Readonly<Record<Cut['shape'] | 'strip', string>>;
  readonly subcuts: Readonly<Record<Cut['subcut'], string>>;
  readonly block: string;
  readonly spare: (count: number) => string;
  readonly diagonals: (falling: number, rising: number) => string;
  readonly measure: (length: string) => string;
  readonly segments: (count: number, width: string) => string;
  readonly template: (name: string) => string;
  readonly scraps: string;
  readonly alarm: string;
}

const WORDS: Readonly<Record<LanguageTag, CsvWords>> = {
  en: {
    heads: ['fabric', 'line', 'count', 'shape', 'width', 'height', 'unit', 'subcut', 'pieces', 'for', 'notes'],
    shapes: { square: 'square', rectangle: 'rectangle', template: 'template', strip: 'strip' },
    subcuts: { none: '', once: 'once on the diagonal', twice: 'twice on the diagonals', 'head to tail': 'into triangles, head to tail' },
    block: 'block',
    spare: (count) => `${count} to spare`,
    diagonals: (falling, rising) =>
      `standing on the short side, right side up, cut ${falling} from the top left to the bottom right, ${rising} from the bottom left to the top right`,
    measure: (length) => `measure ${length} for each along the edges by turns`,
    segments: (count, width) => `for strip sets, each cut across into ${count} segments ${width} wide`,
    template: (name) => `cut round template ${name}`,
    scraps: 'from scraps',
    alarm: 'do not cut yet: sewn back in exact arithmetic, this is not the drawing',
  },
  de: {
    heads: ['Stoff', 'Zeile', 'Anzahl', 'Form', 'Breite', 'Höhe', 'Einheit', 'Teilung', 'Teile', 'für', 'Hinweise'],
    shapes: { square: 'Quadrat', rectangle: 'Rechteck', template: 'Schablone', strip: 'Streifen' },
    subcuts: { none: '', once: 'einmal diagonal', twice: 'zweimal diagonal', 'head to tail': 'in Dreiecke, Kopf an Fuß' },
    block: 'Block',
    spare: (count) => `${count} übrig`,
    diagonals: (falling, rising) =>
      `hochkant, rechte Seite oben: ${falling} von links oben nach rechts unten geteilt, ${rising} von links unten nach rechts oben`,
    measure: (length) => `für jedes ${length} abmessen, abwechselnd an beiden Kanten`,
    segments: (count, width) => `für Streifensätze, jeder quer in ${count} Segmente von ${width} Breite geschnitten`,
    template: (name) => `nach Schablone ${name} geschnitten`,
    scraps: 'aus Resten',
    alarm: 'noch nicht zuschneiden: genau nachgenäht ergibt dies nicht die Zeichnung',
  },
};

/**
 * @returns the cutting list, a line for each of its lines, in its order; lengths as "0 3/4" and "4 7/8" in the unit that stands beside
 * them, which no spreadsheet takes for a date; `pieces` counts after the subcut, with what is to spare. Where the proof does not hold
 * every line says so.
 */
export function cutsCsv(pattern: Pick<Pattern, 'block' | 'cuts' | 'fabrics' | 'scraps' | 'proof' | 'piecing' | 'lattice' | 'choices'>, language: LanguageTag): string {
  const words = WORDS[language];
  const names = new Map([...pattern.fabrics.map(({ fabric }) => fabric), ...pattern.scraps].map(({ id, name }) => [id, name.trim() || id]));
  const scraps = new Set(pattern.scraps.map(({ id }) => id));
  const templates = new Map(templatesOf(pattern).flatMap(({ name, uses }) => uses.flatMap(({ cuts }) => cuts.map((cut) => [cut, name] as const))));
  const rows = pattern.cuts.map((cut): readonly string[] => {
    const { id, fabric, quantity, shape, width, height, subcut, nested, set, uses, spare, diagonals } = cut;
    const template = templates.get(id);
    const notes = [
      ...(pattern.proof.holds ? [] : [words.alarm]),
      ...(scraps.has(fabric) ? [words.scraps] : []),
      ...(template === undefined ? [] : [words.template(template)]),
      ...(nested ? [words.measure(length(nested.measure))] : []),
      ...(set ? [words.segments(set.segments, length(set.segment))] : []),
      ...(diagonals ? [words.diagonals(diagonals.falling, diagonals.rising)] : []),
      ...(spare > 0 ? [words.spare(spare)] : []),
    ];
    return [
      names.get(fabric) ?? fabric,
      id,
      `${quantity}`,
      words.shapes[nested || set ? 'strip' : shape],
      length(width),
      length(height),
      pattern.block.unit,
      words.subcuts[subcut],
      `${piecesOf(cut)}`,
      [...new Set(uses.map(({ unit }) => (unit === 'block' ? words.block : unit)))].join(' '),
      notes.join('; '),
    ];
  });
  return `\ufeff${[words.heads, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('')}`;
}

/** @returns how many pieces of cloth a line comes to */
function piecesOf({ quantity, subcut, nested, set }: Cut): number {
  if (set) return quantity * set.segments;
  if (nested) return quantity * nested.triangles;
  return quantity * (subcut === 'twice' ? 4 : subcut === 'once' ? 2 : 1);
}

/** A fraction alone would be taken for a date. */
const length = (value: Rational): string => (value.n < value.d ? `0 ${formatLength(value)}` : formatLength(value));

/**
 * What begins so is a formula to a spreadsheet, also in full width; an apostrophe before it makes it text (OWASP, CSV Injection,
 * https://owasp.org/www-community/attacks/CSV_Injection).
 */
const FORMULA = /^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/u;

/** @returns a field, in quotes where it holds what divides fields (RFC 4180, 2.5 to 2.7) */
function field(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
