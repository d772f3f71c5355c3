import type { Cut } from '../cutting/cut.ts';
import type { Rational } from '../measure/rational.ts';
import type { Surd } from '../measure/surd.ts';
import { compareRoots, exactly, fraction, minus, over, root, say, straight } from './proof-number.ts';
import type { Fraction, Roots } from './proof-number.ts';
import { unitName } from './proof-table.ts';
import type { Plan, SewnStep, Tell } from './proof-table.ts';
import { asked } from './proof-yield.ts';
import type { Asked } from './proof-yield.ts';

const many = (n: number, shape: string): string => `${n} ${shape}${n === 1 ? '' : 's'}`;

/** Checks the cutting list against the steps: every line as stated, and exactly as many squares as the steps use up. */
export function checkList(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  checkLines(plan, tell);
  checkSources(plan, tables, tell);
  checkMade(plan, tables, tell);
  checkUses(plan, tables, tell);
  checkQuantities(plan, tables, tell);
}

/** Checks that each line of the list agrees with itself and with the ruler. */
function checkLines(plan: Plan, tell: Tell): void {
  const ids = new Set<string>();
  for (const cut of plan.cuts) {
    if (ids.has(cut.id)) tell(`The cutting list has two lines ${cut.id}.`);
    ids.add(cut.id);
    const [width, height] = [exactly(cut.width), exactly(cut.height)];
    const size = `${say(width)} by ${say(height)}`;
    const same = width.n === height.n && width.d === height.d;
    if (!Number.isInteger(cut.quantity) || cut.quantity < 1) tell(`Line ${cut.id} cuts ${cut.quantity} pieces, which is not a count.`);
    if (width.n * height.d > height.n * width.d) tell(`Line ${cut.id} is printed ${size}, the longer side first.`);
    if (cut.shape === 'square' && !same) tell(`Line ${cut.id} is called a square, but measures ${size}.`);
    if ((cut.shape === 'template') !== (cut.template !== null))
      tell(`Line ${cut.id} must have a template exactly when it is cut round one.`);
    if ((cut.subcut === 'head to tail') !== (cut.nested !== undefined))
      tell(`Line ${cut.id} must tell of triangles head to tail exactly when it is cut so.`);
    const isStrip = cut.uses.some(({ role }) => role === 'strip');
    if (isStrip !== (cut.set !== undefined) || (isStrip && cut.uses.some(({ role }) => role !== 'strip')))
      tell(`Line ${cut.id} must tell of strip sets exactly when all of it is sewn so.`);
    const onRuler = [width, height].every((side) => over(side, exactly(plan.ruler)).d === 1n);
    if (cut.exact && !roundsUp(cut, exactly(plan.ruler)))
      tell(`Line ${cut.id} is cut ${size}, which is not its exact size rounded up to the ruler.`);
    if (cut.shape !== 'template' && !onRuler) tell(`Line ${cut.id} is cut ${size}, which the ruler does not show.`);
  }
}

/** @returns whether the size to cut is the exact size rounded up to the next step of the ruler */
function roundsUp({ width, height, exact }: Cut, ruler: Fraction): boolean {
  const up = (size: Rational, before: Surd): boolean => {
    const length: Roots = [...straight(exactly(before.p)), ...root(exactly(before.q), fraction(BigInt(before.r)))];
    const cut = exactly(size);
    return compareRoots(straight(cut), length) >= 0 && compareRoots(straight(minus(cut, ruler)), length) < 0;
  };
  return exact === null || (up(width, exact.width) && up(height, exact.height));
}

/** Checks that every part that is not a unit comes from a line of its fabric that is cut for this step. */
function checkSources(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  for (const table of tables) {
    table.step.parts.forEach((part, i) => {
      if (!('cut' in part.from)) return;
      const { cut: id, role, fabric } = part.from;
      const cut = plan.cuts.find((line) => line.id === id);
      const name = `${table.name}, part ${i + 1}`;
      if (!cut) tell(`${name} comes from line ${id}, which is not in the cutting list.`);
      else if (cut.fabric !== fabric) tell(`${name} is ${fabric}, but line ${id} is cut from ${cut.fabric}.`);
      else if (!cut.uses.some((use) => use.unit === table.step.makes && use.role === role)) {
        tell(`${name} comes from line ${id}, which has nothing cut as "${role}" for ${unitName(table.step.makes)}.`);
      }
    });
  }
  for (const cut of plan.cuts) {
    for (const use of cut.uses) {
      const used = tables.some(
        (table) =>
          table.step.makes === use.unit &&
          table.step.parts.some((part) => 'cut' in part.from && part.from.cut === cut.id && part.from.role === use.role),
      );
      if (!used) tell(`Line ${cut.id} is cut as "${use.role}" for ${unitName(use.unit)}, where no step uses it.`);
    }
  }
}

/** Checks that as many of each unit are made as later steps take, and as many blocks as are wanted. */
function checkMade(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  tables.forEach((table, i) => {
    const { makes, count } = table.step;
    if (makes === 'block') {
      if (count !== plan.blocks)
        tell(`${table.name} is sewn ${count} times, but ${many(plan.blocks, 'block')} ${plan.blocks === 1 ? 'is' : 'are'} wanted.`);
      return;
    }
    const taken = tables
      .slice(i + 1)
      .reduce(
        (sum, later) => sum + later.step.count * later.step.parts.filter((part) => 'unit' in part.from && part.from.unit === makes).length,
        0,
      );
    if (taken !== count) tell(`${table.name} is made ${count} times, but later steps take ${taken}.`);
  });
  if (!tables.some((table) => table.step.makes === 'block')) tell('No step sews the block together.');
}

/** How many triangles or segments a strip gives, as its line says; what the strip is long enough for is checked with its size. */
const perStrip =
  ({ cuts }: Plan) =>
  (line: string): number =>
    stripYield(cuts.find(({ id }) => id === line));

const stripYield = (cut: Cut | undefined): number => cut?.set?.segments ?? cut?.nested?.triangles ?? 1;

/** Checks what each line sets aside for each unit, as if it shared nothing. */
function checkUses(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  for (const table of tables) {
    const { makes, count } = table.step;
    const needed = new Map<string, number>();
    for (const { line, role, squares } of asked([{ table, count }], perStrip(plan)))
      needed.set(`${line} ${role}`, (needed.get(`${line} ${role}`) ?? 0) + squares);
    for (const [key, squares] of needed) {
      const [line, role] = key.split(' ');
      const cut = plan.cuts.find(({ id }) => id === line);
      const uses = cut?.uses.filter((use) => use.unit === makes && use.role === role) ?? [];
      // A line or a use that is not there is told about by itself.
      if (!cut || uses.length === 0) continue;
      const has = uses.reduce((sum, use) => sum + use.quantity, 0);
      if (has !== squares) tell(`Line ${line} gives ${unitName(makes)} ${many(has, cut.shape)}, but ${count} of it take ${squares}.`);
    }
  }
}

/** Checks each line's count, its diagonals and what it says is left over, squares being shared wherever they can be. */
function checkQuantities(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  const all = asked(
    tables.map((table) => ({ table, count: table.step.count })),
    perStrip(plan),
  );
  for (const cut of plan.cuts) {
    const here = all.filter(({ line }) => line === cut.id);
    const total = (of: (one: Asked) => number): number => here.reduce((sum, one) => sum + of(one), 0);
    const used = total(({ squares }) => squares);
    if (cut.quantity !== used) {
      const are = used === 1 ? 'is' : 'are';
      tell(`Line ${cut.id} cuts ${many(cut.quantity, cut.shape)}, but ${used} ${are} used up by the steps.`);
      continue;
    }
    const spare = total((one) => one.spare);
    if (cut.spare !== spare && cut.spare !== total((one) => one.triangles))
      tell(`Line ${cut.id} says ${cut.spare} to spare, but ${spare} ${spare === 1 ? 'is' : 'are'} left over.`);
    checkDiagonals(cut, here, tell);
  }
}

/** A rectangle's two diagonals give mirror images, so the list must say how many are cut along each. */
function checkDiagonals(cut: Cut, here: readonly Asked[], tell: Tell): void {
  const count = (hand: string): number => here.filter((one) => one.hand === hand).reduce((sum, one) => sum + one.squares, 0);
  const [falling, rising] = [count('falling'), count('rising')];
  const said = cut.diagonals;
  if (!said && falling + rising === 0) return;
  if (said?.falling !== falling || said.rising !== rising) {
    const says = said ? `${said.falling} and ${said.rising}` : 'neither';
    tell(
      `Line ${cut.id} must be cut ${falling} times along the falling and ${rising} times along the rising diagonal, but it says ${says}.`,
    );
  }
}
