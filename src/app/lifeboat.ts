import type { Work } from '../block/history.ts';
import type { Autosave } from '../files/autosave.ts';

/*
 * The keeping place takes its time, and a page that is closed has none. What is not kept yet goes into a lifeboat, which is
 * filled at once, and is brought in when the app is opened next.
 */

/** A drawing with the version it continues. */
export interface TakenUp {
  readonly id: string;
  readonly version: number;
  readonly work: Work;
}

const LIFEBOAT = 'piecewright lifeboat ';

/** @returns a name for a drawing that no other one has */
export const freshDrawing = (): string => crypto.randomUUID();

/** Puts a drawing where it outlives the page, at once. */
export function launchLifeboat(drawing: TakenUp): void {
  try {
    localStorage.setItem(LIFEBOAT + drawing.id, JSON.stringify(drawing));
  } catch {
    // Too large, or refused by the browser: then the keeping place is the only one.
  }
}

/** @returns the drawings in lifeboats, which are empty after this */
function landed(): TakenUp[] {
  try {
    const names = Object.keys(localStorage).filter((name) => name.startsWith(LIFEBOAT));
    const texts = names.map((name) => localStorage.getItem(name));
    for (const name of names) localStorage.removeItem(name);
    return texts.flatMap((text) => (text === null ? [] : [JSON.parse(text) as TakenUp]));
  } catch {
    return [];
  }
}

/**
 * Brings lifeboats in, each into the keeping place.
 * @param autosave null where the browser has no keeping place
 * @returns the drawing to go on with, the newest; undefined where there is none
 */
export async function bringIn(autosave: Autosave | null): Promise<TakenUp | undefined> {
  const boats = landed();
  if (!autosave) return boats[0];
  for (const { id, version, work } of boats) {
    const saving = await autosave.save(id, version, work);
    const lost = !saving.saved && JSON.stringify(saving.theirs.work) !== JSON.stringify(work);
    if (lost) await autosave.save(freshDrawing(), 0, work);
  }
  return (await autosave.list())[0];
}
