import type { Cut } from '../cutting/cut.ts';
import { exactly, over, say } from './proof-number.ts';
import { unitName } from './proof-table.ts';
import type { Plan, SewnStep, Tell } from './proof-table.ts';
import { cutParts, handed, layout, shared, squaresFor, yieldOf } from './proof-yield.ts';

const many = (n: number, shape: string): string => `${n} ${shape}${n === 1 ? '' : 's'}`;

/** Checks the cutting list against the steps: every line as stated, and exactly as many squares as the steps use up. */
export function checkList(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  checkLines(plan, tell);
  checkSources(plan, tables, tell);
  checkMade(plan, tables, tell);
  checkUses(plan, tables, tell);
  for (const cut of plan.cuts) checkQuantity(cut, tables, tell);
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
    if ((cut.shape === 'template') !== (cut.template !== null)) tell(`Line ${cut.id} must have a template exactly when it is cut round one.`);
    const onRuler = [width, height].every((side) => over(side, exactly(plan.ruler)).d === 1n);
    if (cut.shape !== 'template' && !onRuler) tell(`Line ${cut.id} is cut ${size}, which the ruler does not show.`);
  }
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
      const used = tables.some((table) => table.step.makes === use.unit
        && table.step.parts.some((part) => 'cut' in part.from && part.from.cut === cut.id && part.from.role === use.role));
      if (!used) tell(`Line ${cut.id} is cut as "${use.role}" for ${unitName(use.unit)}, where no step uses it.`);
    }
  }
}

/** Checks that as many of each unit are made as later steps take, and as many blocks as are wanted. */
function checkMade(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  tables.forEach((table, i) => {
    const { makes, count } = table.step;
    if (makes === 'block') {
      if (count !== plan.blocks) tell(`${table.name} is sewn ${count} times, but ${many(plan.blocks, 'block')} ${plan.blocks === 1 ? 'is' : 'are'} wanted.`);
      return;
    }
    const taken = tables.slice(i + 1).reduce((sum, later) =>
      sum + later.step.count * later.step.parts.filter((part) => 'unit' in part.from && part.from.unit === makes).length, 0);
    if (taken !== count) tell(`${table.name} is made ${count} times, but later steps take ${taken}.`);
  });
  if (!tables.some((table) => table.step.makes === 'block')) tell('No step sews the block together.');
}

/** Checks what each line sets aside for each unit. */
function checkUses(plan: Plan, tables: readonly SewnStep[], tell: Tell): void {
  const setAside = (line: string, role: string, unit: string): number => plan.cuts
    .filter((cut) => cut.id === line)
    .flatMap((cut) => cut.uses)
    .reduce((sum, use) => (use.unit === unit && use.role === role ? sum + use.quantity : sum), 0);
  const shapeOf = (line: string): string => plan.cuts.find((cut) => cut.id === line)?.shape ?? 'piece';

  for (const table of tables) {
    const { makes, count } = table.step;
    const other = mirrorOf(table, tables);
    const alone = squaresFor(table, count);
    const together = other ? squaresFor(table, Math.max(count, other.step.count)) : alone;
    for (const [key, most] of alone) {
      const [line, role] = key.split(' ');
      if (!plan.cuts.some((cut) => cut.id === line)) continue;
      const has = setAside(line, role, makes);
      const least = together.get(key) ?? 0;
      const enough = has + (other ? setAside(line, role, other.step.makes) : 0) >= least;
      if (enough && has <= most) continue;
      tell(`Line ${line} gives ${unitName(makes)} ${many(has, shapeOf(line))}, but ${count} of it take ${most}.`);
    }
  }
}

/** @returns the step that makes the mirror image, where the way of sewing makes both at once */
function mirrorOf(table: SewnStep, tables: readonly SewnStep[]): SewnStep | undefined {
  const bothAtOnce = cutParts(table).length > 2 && ['two-at-a-time', 'four-at-a-time'].includes(table.step.method ?? '');
  if (!bothAtOnce || !handed(table)) return undefined;
  const image = layout(table, true);
  return tables.find((other) => other.step.method === table.step.method && other !== table && layout(other) === image);
}

/** Checks a line's count and its spare triangles. */
function checkQuantity(cut: Cut, tables: readonly SewnStep[], tell: Tell): void {
  const setAside = cut.uses.reduce((sum, use) => sum + use.quantity, 0);
  const fused = [...shared(tables, (table) => table.step.count)].reduce((sum, [key, n]) => (key.split(' ')[0] === cut.id ? sum + n : sum), 0);
  const separate = cut.uses.reduce((sum, use) => (use.role === 'half' || use.role === 'quarter' ? sum : sum + use.quantity), 0);
  const least = fused + separate;
  if (cut.quantity < least) tell(`Line ${cut.id} cuts ${many(cut.quantity, cut.shape)}, but the steps use up ${least}.`);
  else if (cut.quantity > setAside) tell(`Line ${cut.id} cuts ${many(cut.quantity, cut.shape)}, but only ${setAside} ${setAside === 1 ? 'is' : 'are'} used.`);
  else checkSpare(cut, setAside, tables, tell);
}

/** The spare may be counted in patches or in the units they would make. */
function checkSpare(cut: Cut, setAside: number, tables: readonly SewnStep[], tell: Tell): void {
  let patches = 0;
  let units = 0;
  let each = 1;
  for (const use of cut.uses) {
    const table = tables.find((candidate) => candidate.step.makes === use.unit);
    const parts = table ? cutParts(table).filter((part) => part.line === cut.id && part.role === use.role) : [];
    if (!table || parts.length === 0) return;
    each = yieldOf(parts[0], table);
    const left = use.quantity * each - parts.length * table.step.count;
    patches += left;
    units += Math.floor(left / parts.length);
  }
  patches -= (setAside - cut.quantity) * each;
  // Too few are told about where they are set aside.
  if (patches < 0) return;
  if (cut.spare !== patches && cut.spare !== units) tell(`Line ${cut.id} says ${cut.spare} to spare, but ${patches} are left over.`);
}
