import { plainGrid } from '../block/axis.ts';
import type { Block, Colourway, DrawnSeam, Fabric, Grid, LatticePoint, LengthUnit, Look, Patch, PressedSeam, UnitMethod } from '../block/block.ts';
import { checkGrid } from '../block/file-checks.ts';
import type { Choices, ClothChoice, ClothSize, Margin } from '../block/choices.ts';
import * as sayChosen from '../block/choice-problems.ts';
import { clothPlace } from '../block/cloth-checks.ts';
import { leastCommonMultiple } from '../block/lattice.ts';
import { MAX_CLOTH, MAX_FINISHED, MAX_STEPS } from '../block/limits.ts';
import { photoOutOfRange } from '../block/colour/problems.ts';
import * as say from '../block/problems.ts';
import type { OwnPart, Publication } from '../block/publication.ts';
import { checkBlock } from '../block/whole-check.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import { good, type Problem, type Result } from '../measure/problem.ts';
import type { Rational } from '../measure/rational.ts';
import type { BlockShape } from './block-shape.ts';
import { parseExact } from './exact-number.ts';

type Written = number | string;
type WrittenPoint = readonly [Written, Written];

/**
 * The door from what is written to what is drawn: exact numbers, one lattice, and all that a block obeys.
 * @returns the block on the coarsest lattice that holds its points, or the first problem found
 */
export function blockFrom(file: BlockShape): Result<Block> {
  const { name, ground, fabrics } = file;
  const { unit } = file.finished;
  const read = gridFrom(file.grid);
  if (!read.ok) return read;
  const grid = read.value;
  const width = side('width', file.finished.width, unit);
  if (!width.ok) return width;
  const height = side('height', file.finished.height, unit);
  if (!height.ok) return height;
  const choices = choicesFrom(file.choices ?? {}, unit);
  if (!choices.ok) return choices;
  const cloths = fabricsFrom(fabrics);
  if (!cloths.ok) return cloths;
  const colourways = colourwaysFrom(file.colourways ?? []);
  if (!colourways.ok) return colourways;
  const lattice = commonDenominator(file);
  if (!lattice.ok) return lattice;
  const denominator = lattice.value;
  const steps = (value: Written): number => {
    const { n, d } = parseExact(value) as Rational;
    return n * (denominator / d);
  };
  const placed = ([x, y]: WrittenPoint): LatticePoint => [steps(x), steps(y)];
  const block: Block = {
    name,
    finished: { width: width.value, height: height.value, unit },
    grid,
    denominator,
    fabrics: cloths.value,
    ground,
    patches: file.patches.map(({ fabric, points, whole, photoAt, print }): Patch => ({
      fabric, points: points.map(placed), ...(whole && { whole }), ...(photoAt && { photoAt }), ...(print && { print }),
    })),
    seams: (file.seams ?? []).map(([from, to]): DrawnSeam => [placed(from), placed(to)]),
    ...(file.pins?.length && { pins: file.pins.map(({ pin, from, to }): Pin => ({ pin, from: placed(from), to: placed(to) })) }),
    ...(file.unitMethods?.length && {
      unitMethods: file.unitMethods.map(({ from, to, method }): UnitMethod => ({ from: placed(from), to: placed(to), method })),
    }),
    ...(file.pressedSeams?.length && {
      pressedSeams: file.pressedSeams.map(({ from, to, lies }): PressedSeam => ({ from: placed(from), to: placed(to), lies })),
    }),
    ...(file.choices && { choices: choices.value }),
    ...(file.fuses && { fuses: true as const }),
    ...(colourways.value.length > 0 && { colourways: colourways.value }),
    ...(file.photos?.length && { photos: file.photos }),
    ...publicationFrom(file.publication),
  };
  const fault = checkBlock(block);
  return fault ? say.refused(fault) : good(block);
}

/** @returns what a designer adds, without lists and texts that say nothing */
function publicationFrom({ subtitle, sections, words, parts, pictures }: NonNullable<BlockShape['publication']> = {}): Pick<Block, 'publication'> {
  const publication: Publication = {
    ...(subtitle && { subtitle }),
    ...(sections?.length && { sections }),
    ...(words?.length && { words }),
    ...(parts?.length && { parts: parts.map(partFrom) }),
    ...(pictures?.length && { pictures }),
  };
  return Object.keys(publication).length > 0 ? { publication } : {};
}

const partFrom = ({ after, picture, ...part }: NonNullable<NonNullable<BlockShape['publication']>['parts']>[number]): OwnPart => ({
  ...part,
  ...(after !== undefined && { after }),
  ...(picture !== undefined && { picture }),
});

function fabricsFrom(fabrics: BlockShape['fabrics']): Result<readonly Fabric[]> {
  const all: Fabric[] = [];
  for (const [i, { id, ...written }] of fabrics.entries()) {
    const look = lookFrom(`Fabric ${i + 1}`, written);
    if (!look.ok) return look;
    all.push({ id, ...look.value });
  }
  return good(all);
}

function lookFrom(where: string, { name, color, directional, scraps, same, value, photo }: Omit<BlockShape['fabrics'][number], 'id'>): Result<Look> {
  const across = photo && length(`${where}'s photo, across`, photo.across, () => photoOutOfRange(where, MAX_FINISHED.in));
  if (across && !across.ok) return across;
  return good({
    name,
    color: color.toLowerCase(),
    ...(directional && { directional }),
    ...(scraps && { scraps }),
    ...(same !== undefined && { same }),
    ...(value !== undefined && { value }),
    ...(photo && across && { photo: { picture: photo.picture, across: across.value } }),
  });
}

function colourwaysFrom(colourways: NonNullable<BlockShape['colourways']>): Result<readonly Colourway[]> {
  const all: Colourway[] = [];
  for (const [i, { name, looks }] of colourways.entries()) {
    const found: [string, Look][] = [];
    for (const [id, written] of Object.entries(looks)) {
      const look = lookFrom(`Colourway ${i + 1}`, written);
      if (!look.ok) return look;
      found.push([id, look.value]);
    }
    all.push({ name, looks: Object.fromEntries(found) });
  }
  return good(all);
}

/** @returns the grid on which cells are as the file says; lines that say nothing are left out */
function gridFrom({ columns, rows, across, down }: BlockShape['grid']): Result<Grid> {
  const upright = linesFrom('upright', across, columns);
  if (!upright.ok) return upright;
  const level = linesFrom('level', down, rows);
  if (!level.ok) return level;
  const grid = { columns, rows, ...(upright.value && { across: upright.value }), ...(level.value && { down: level.value }) };
  const fault = checkGrid(grid);
  return fault ? say.refused(fault) : good(plainGrid(grid));
}

function linesFrom(direction: 'upright' | 'level', lines: readonly Written[] | undefined, units: number): Result<readonly Rational[] | null> {
  if (!lines) return good(null);
  const found: Rational[] = [];
  for (const [i, value] of lines.entries()) {
    const where = `The grid's ${direction} line ${i + 1}`;
    const name = direction === 'upright' ? 'across' : 'down';
    const read = length(where, value, () => say.lineOffBlock(name, i + 1, String(value), units));
    if (!read.ok) return read;
    found.push(read.value);
  }
  return good(found);
}

/** @returns a length, exactly; `outOfRange` says what is wrong where it is far too large */
function length(where: string, value: Written, outOfRange: () => Problem): Result<Rational> {
  const read = parseExact(value);
  if (typeof read === 'object') return good(read);
  return say.refused(read === 'too-fine' ? say.numberTooFine(where, String(value)) : outOfRange());
}

const side = (name: 'width' | 'height', value: Written, unit: LengthUnit): Result<Rational> =>
  length(`The finished ${name}`, value, () => say.sizeOutOfRange(name, String(value), unit));

type WrittenChoices = NonNullable<BlockShape['choices']>;

function choicesFrom({ method, methods, way, assembly, blocks, cloths, margin, ...written }: WrittenChoices, unit: LengthUnit): Result<Choices> {
  const lengths: Partial<Record<keyof typeof written, Rational>> = {};
  for (const name of ['seam', 'ruler', 'trim', 'width', 'squaringUp', 'shopStep'] as const) {
    const value = written[name];
    if (value === undefined) continue;
    const read = length(sayChosen.chosen(name), value, () => sayChosen.choiceOutOfRange(name, String(value), unit));
    if (!read.ok) return read;
    lengths[name] = read.value;
  }
  const boughtMore = margin && marginFrom(margin, unit);
  if (boughtMore && !boughtMore.ok) return boughtMore;
  const bought: [string, ClothChoice][] = [];
  for (const [id, cloth] of Object.entries(cloths ?? {})) {
    const read = clothFrom(clothPlace(id), cloth, unit);
    if (!read.ok) return read;
    bought.push([id, read.value]);
  }
  return good({
    ...lengths,
    ...(method && { method }),
    ...(methods && { methods }),
    ...(way && { way }),
    ...(assembly && { assembly }),
    ...(blocks && { blocks }),
    ...(cloths && { cloths: Object.fromEntries(bought) }),
    ...(boughtMore && { margin: boughtMore.value }),
  });
}

function marginFrom(margin: NonNullable<WrittenChoices['margin']>, unit: LengthUnit): Result<Margin> {
  const [name, value, of] = 'percent' in margin ? (['percent', margin.percent, '%'] as const) : (['length', margin.length, unit] as const);
  const read = length('The chosen margin', value, () => sayChosen.marginOutOfRange(String(value), of));
  return read.ok ? good({ [name]: read.value } as unknown as Margin) : read;
}

function clothFrom(
  where: string,
  { sold, size, width, have }: NonNullable<WrittenChoices['cloths']>[string],
  unit: LengthUnit,
): Result<ClothChoice> {
  const side = (name: string, value: Written, most: number): Result<Rational> =>
    length(`${where}, ${name}`, value, () => sayChosen.clothOutOfRange(`${where}, ${name}`, most, String(value), unit));
  const sizeFrom = (name: string, written: Readonly<Record<keyof ClothSize, Written>>): Result<ClothSize> => {
    const across = side(`${name}, width`, written.width, MAX_FINISHED[unit]);
    if (!across.ok) return across;
    const along = side(`${name}, length`, written.length, MAX_CLOTH[unit]);
    return along.ok ? good({ width: across.value, length: along.value }) : along;
  };
  const precut = size && sizeFrom('size', size);
  if (precut && !precut.ok) return precut;
  const usable = width === undefined ? undefined : side('width', width, MAX_FINISHED[unit]);
  if (usable && !usable.ok) return usable;
  const own: (ClothSize & { readonly count: number })[] = [];
  for (const [i, piece] of (have ?? []).entries()) {
    const read = sizeFrom(`have ${i + 1}`, piece);
    if (!read.ok) return read;
    own.push({ ...read.value, count: piece.count });
  }
  return good({
    ...(sold && { sold }),
    ...(precut && { size: precut.value }),
    ...(usable && { width: usable.value }),
    ...(own.length > 0 && { have: own }),
  });
}

/** @returns the least number of steps to a grid unit that holds all points, having seen that each lies on the grid */
function commonDenominator(file: BlockShape): Result<number> {
  const { columns, rows } = file.grid;
  let common = 1;
  for (const [where, point] of everyPoint(file)) {
    for (const [axis, value] of point.entries()) {
      const read = parseExact(value);
      if (read === 'too-fine') return say.refused(say.numberTooFine(where(), String(value)));
      if (typeof read === 'string' || read.n < 0 || read.n > read.d * (axis === 0 ? columns : rows)) {
        return say.refused(say.offBlock(where(), point.join(', '), columns, rows));
      }
      common = leastCommonMultiple(common, read.d);
      const needed = Math.max(columns, rows) * common;
      if (needed > MAX_STEPS) return say.refused(say.tooFine(needed, `The points up to ${where().toLowerCase()}`));
    }
  }
  return good(common);
}

/** Every point of the file with the words for its place. */
function* everyPoint(file: BlockShape): Generator<readonly [() => string, WrittenPoint]> {
  for (const [i, { points }] of file.patches.entries()) {
    for (const [j, point] of points.entries()) yield [() => `Patch ${i + 1}, point ${j + 1}`, point];
  }
  for (const [i, seam] of (file.seams ?? []).entries()) {
    for (const [j, end] of seam.entries()) yield [() => `Seam ${i + 1}, end ${j + 1}`, end];
  }
  for (const [i, pin] of (file.pins ?? []).entries()) {
    for (const end of ['from', 'to'] as const) yield [() => `Pin ${i + 1}, ${end}`, pin[end]];
  }
  for (const [i, unit] of (file.unitMethods ?? []).entries()) {
    for (const end of ['from', 'to'] as const) yield [() => `Unit method ${i + 1}, ${end}`, unit[end]];
  }
  for (const [i, seam] of (file.pressedSeams ?? []).entries()) {
    for (const end of ['from', 'to'] as const) yield [() => `Pressing ${i + 1}, ${end}`, seam[end]];
  }
}
