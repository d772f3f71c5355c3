import type { Block, Patch } from './block.ts';

/** A stretch of patches that was exchanged for another; `at` counts in the list before the change. */
export interface Exchange {
  readonly at: number;
  readonly out: readonly Patch[];
  readonly into: readonly Patch[];
}

/** One property of a block that changed; a property that was or becomes absent has no `before` or `after`. */
export interface PropertyChange {
  readonly name: Exclude<keyof Block, 'patches'>;
  readonly before?: unknown;
  readonly after?: unknown;
}

/** What makes one block into another, and back. Plain data that survives JSON; its size is that of what changed. */
export interface Change {
  readonly properties: readonly PropertyChange[];
  /** In order, without overlap. */
  readonly patches: readonly Exchange[];
}

const NAMES: readonly PropertyChange['name'][] = [
  'name', 'finished', 'grid', 'denominator', 'fabrics', 'ground', 'seams', 'pins', 'unitMethods', 'pressedSeams', 'choices',
];

/** @returns the change from one block to the next; patches that an operation left alone are recognised by identity */
export function changeBetween(before: Block, after: Block): Change {
  const properties = NAMES.filter((name) => !alike(before[name], after[name])).map((name): PropertyChange => ({
    name,
    ...(before[name] !== undefined && { before: before[name] }),
    ...(after[name] !== undefined && { after: after[name] }),
  }));
  return { properties, patches: exchanges(before.patches, after.patches) };
}

/** @returns whether a change changes nothing */
export const isEmpty = (change: Change): boolean => change.properties.length === 0 && change.patches.length === 0;

/** @returns the change that takes a change back */
export function inverse(change: Change): Change {
  let moved = 0;
  return {
    properties: change.properties.map(({ name, ...values }) => ({
      name,
      ...('after' in values && { before: values.after }),
      ...('before' in values && { after: values.before }),
    })),
    patches: change.patches.map(({ at, out, into }) => {
      const back = { at: at + moved, out: into, into: out };
      moved += into.length - out.length;
      return back;
    }),
  };
}

/** @returns the block after a change; the block must be the one that the change starts from */
export function applyChange(block: Block, change: Change): Block {
  const next: Record<string, unknown> = { ...block };
  for (const { name, ...values } of change.properties) {
    if ('after' in values) next[name] = values.after;
    else delete next[name];
  }
  if (change.patches.length > 0) {
    const patches: Patch[] = [];
    let from = 0;
    for (const { at, out, into } of change.patches) {
      for (; from < at; from++) patches.push(block.patches[from]!);
      patches.push(...into);
      from += out.length;
    }
    patches.push(...block.patches.slice(from));
    next.patches = patches;
  }
  return next as unknown as Block;
}

/** @returns whether two properties are the same, or are small and say the same */
const alike = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** @returns the stretches in which two lists differ; patches in both lists stay in their order */
function exchanges(before: readonly Patch[], after: readonly Patch[]): readonly Exchange[] {
  const place = new Map(before.map((patch, i) => [patch, i]));
  const found: Exchange[] = [];
  let [from, to] = [0, 0];
  const exchange = (untilFrom: number, untilTo: number): void => {
    if (untilFrom > from || untilTo > to) {
      found.push({ at: from, out: before.slice(from, untilFrom), into: after.slice(to, untilTo) });
    }
    [from, to] = [untilFrom + 1, untilTo + 1];
  };
  after.forEach((patch, i) => {
    const at = place.get(patch);
    // A patch moved towards the front, or one that stands in the list twice, counts as new.
    if (at !== undefined && at >= from) exchange(at, i);
  });
  exchange(before.length, after.length);
  return found;
}
