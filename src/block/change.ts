import type { Block, Patch } from './block.ts';
import type { Publication } from './publication.ts';

/** A stretch of a list that was exchanged for another; `at` counts in the list before the change. */
export interface Exchange<Item = Patch> {
  readonly at: number;
  readonly out: readonly Item[];
  readonly into: readonly Item[];
}

/** One property of a block, or of its publication, that changed; one that was or becomes absent has no `before` or `after`. */
export interface PropertyChange {
  readonly name: Exclude<keyof Block, 'patches' | 'photos' | 'publication'> | (typeof PUBLISHED)[number];
  readonly before?: unknown;
  readonly after?: unknown;
}

/** What makes one block into another, and back. Plain data that survives JSON; its size is that of what changed. */
export interface Change {
  readonly properties: readonly PropertyChange[];
  /** In order, without overlap. */
  readonly patches: readonly Exchange[];
  /** Lists of the publication, and the photos of cloth, each item by itself: pictures are long. Absent where nothing in them changed. */
  readonly published?: readonly ListChange[];
}

interface ListChange {
  readonly list: (typeof LISTS)[number] | 'photos';
  readonly exchanges: readonly Exchange<unknown>[];
}

const NAMES = [
  'name', 'finished', 'grid', 'denominator', 'fabrics', 'ground', 'seams', 'pins', 'unitMethods', 'pressedSeams', 'choices', 'fuses', 'colourways',
] as const satisfies readonly (keyof Block)[];
/** Of the publication, as a whole; and item by item. */
const PUBLISHED = ['subtitle', 'sections'] as const satisfies readonly (keyof Publication)[];
const LISTS = ['words', 'parts', 'pictures'] as const satisfies readonly (keyof Publication)[];

/** @returns the change from one block to the next; items of lists that an operation left alone are recognised by identity */
export function changeBetween(before: Block, after: Block): Change {
  const [was, is] = [{ ...before, ...before.publication }, { ...after, ...after.publication }];
  const properties = [...NAMES, ...PUBLISHED].filter((name) => !alike(was[name], is[name])).map((name): PropertyChange => ({
    name,
    ...(was[name] !== undefined && { before: was[name] }),
    ...(is[name] !== undefined && { after: is[name] }),
  }));
  const published = [...LISTS, 'photos' as const].map((list): ListChange => ({ list, exchanges: exchanges<unknown>(was[list] ?? [], is[list] ?? []) })).filter(
    (change) => change.exchanges.length > 0,
  );
  return { properties, patches: exchanges(before.patches, after.patches), ...(published.length > 0 && { published }) };
}

/** @returns whether a change changes nothing */
export const isEmpty = ({ properties, patches, published }: Change): boolean => properties.length + patches.length === 0 && !published;

/** @returns the change that takes a change back */
export const inverse = ({ properties, patches, published }: Change): Change => ({
  properties: properties.map(({ name, ...values }) => ({
    name,
    ...('after' in values && { before: values.after }),
    ...('before' in values && { after: values.before }),
  })),
  patches: back(patches),
  ...(published && { published: published.map((change) => ({ ...change, exchanges: back(change.exchanges) })) }),
});

function back<Item>(list: readonly Exchange<Item>[]): readonly Exchange<Item>[] {
  let moved = 0;
  return list.map(({ at, out, into }) => {
    const exchange = { at: at + moved, out: into, into: out };
    moved += into.length - out.length;
    return exchange;
  });
}

/** @returns the block after a change; the block must be the one that the change starts from */
export function applyChange(block: Block, { properties, patches, published = [] }: Change): Block {
  const next: Record<string, unknown> = { ...block };
  const own: Record<string, unknown> = { ...block.publication };
  for (const { name, ...values } of properties) {
    const place = PUBLISHED.some((each) => each === name) ? own : next;
    if ('after' in values) place[name] = values.after;
    else delete place[name];
  }
  if (patches.length > 0) next.patches = exchanged(block.patches, patches);
  for (const { list, exchanges: all } of published) {
    const place = list === 'photos' ? next : own;
    place[list] = exchanged<unknown>((place[list] as readonly unknown[] | undefined) ?? [], all);
    if ((place[list] as readonly unknown[]).length === 0) delete place[list];
  }
  if (Object.keys(own).length > 0) next.publication = own;
  else delete next.publication;
  return next as unknown as Block;
}

function exchanged<Item>(list: readonly Item[], all: readonly Exchange<Item>[]): readonly Item[] {
  const next: Item[] = [];
  let from = 0;
  for (const { at, out, into } of all) {
    for (; from < at; from++) next.push(list[from]!);
    next.push(...into);
    from += out.length;
  }
  next.push(...list.slice(from));
  return next;
}

/** @returns whether two properties are the same, or are small and say the same */
const alike = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** @returns the stretches in which two lists differ; items in both lists stay in their order */
function exchanges<Item>(before: readonly Item[], after: readonly Item[]): readonly Exchange<Item>[] {
  if (before === after) return [];
  const place = new Map(before.map((item, i) => [item, i]));
  const found: Exchange<Item>[] = [];
  let [from, to] = [0, 0];
  const exchange = (untilFrom: number, untilTo: number): void => {
    if (untilFrom > from || untilTo > to) {
      found.push({ at: from, out: before.slice(from, untilFrom), into: after.slice(to, untilTo) });
    }
    [from, to] = [untilFrom + 1, untilTo + 1];
  };
  after.forEach((item, i) => {
    const at = place.get(item);
    // One moved towards the front, or one that stands in the list twice, counts as new.
    if (at !== undefined && at >= from) exchange(at, i);
  });
  exchange(before.length, after.length);
  return found;
}
