import { createStore } from '../store.ts';
import { remember, remembered } from './remembered.ts';

/** What is shown on the cloth besides the drawing. */
export interface Shown {
  readonly grid: boolean;
  readonly edges: boolean;
  readonly seams: boolean;
  readonly units: boolean;
  readonly sizes: boolean;
  readonly letters: boolean;
  readonly prints: boolean;
  readonly hatches: boolean;
  readonly greys: boolean;
}

const FIRST: Shown = { grid: true, edges: false, seams: false, units: false, sizes: false, letters: false, prints: true, hatches: false, greys: false };
const NAME = 'piecewright on the cloth';

/** Names of what can be shown, in the order of the list, with what each does. */
export const SHOWABLE: readonly { readonly name: keyof Shown; readonly words: string; readonly does: string }[] = [
  { name: 'grid', words: 'Grid', does: 'the lines between the cells' },
  { name: 'edges', words: 'Patch edges', does: 'every patch as it was painted' },
  { name: 'seams', words: 'Seams', does: 'as the pattern sews them' },
  { name: 'units', words: 'Units', does: 'with their letters from the sheet' },
  { name: 'sizes', words: 'Cut sizes', does: 'where there is room for them' },
  { name: 'letters', words: 'Fabric letters', does: 'one for each fabric' },
  { name: 'prints', words: 'Prints', does: 'photos of cloth; scraps, each with its number' },
  { name: 'hatches', words: 'Hatching', does: 'each fabric in its own way' },
  { name: 'greys', words: 'Values only', does: 'how light each fabric is, in grey' },
];

const isPart = (value: unknown): value is Partial<Shown> => typeof value === 'object' && value !== null && !Array.isArray(value);

function begun(): Shown {
  const kept: Readonly<Record<string, unknown>> = { ...remembered(NAME, isPart, {}) };
  const entries = SHOWABLE.map(({ name }) => [name, typeof kept[name] === 'boolean' ? kept[name] : FIRST[name]]);
  return Object.fromEntries(entries) as unknown as Shown;
}

/** What is shown, remembered in this browser. */
export const shown = createStore<Shown>(begun());
shown.subscribe(() => remember(NAME, shown.get()));

export const show = (name: keyof Shown, on: boolean): void => shown.change((now) => ({ ...now, [name]: on }));
