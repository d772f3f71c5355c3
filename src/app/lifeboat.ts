import type { Work } from '../block/history.ts';
import type { Autosave } from '../files/autosave.ts';

/*
 * The keeping place takes its time, and a page that is closed has none. What is not kept yet goes into a lifeboat, which is
 * filled at once, and is brought in when the app is opened next. Every page has boats of its own.
 */

/** A drawing with the version it continues. */
export interface TakenUp {
  readonly id: string;
  readonly version: number;
  readonly work: Work;
}

const LIFEBOAT = 'piecewright lifeboat ';
const TABLE = 'piecewright table';

/** @returns a name for a drawing that no other one has */
export const freshDrawing = (): string => crypto.randomUUID();

const page = freshDrawing();
const boatOf = (id: string): string => `${LIFEBOAT}${id} ${page}`;

/** Puts a drawing where it outlives the page, at once. */
export function launchLifeboat(drawing: TakenUp): void {
  try {
    localStorage.setItem(boatOf(drawing.id), JSON.stringify(drawing));
  } catch {
    // Too large, or refused by the browser: then the keeping place is the only one.
  }
}

/** Takes in this page's lifeboat for a drawing, once that is kept after all. */
export function recallLifeboat(id: string): void {
  try {
    localStorage.removeItem(boatOf(id));
  } catch {
    // Where there is no such storage, no boat was launched.
  }
}

/** Notes which drawing lies on the table: for this window when it loads again, and for one that is opened next. */
export function noteOnTable(id: string): void {
  try {
    sessionStorage.setItem(TABLE, id);
    localStorage.setItem(TABLE, id);
  } catch {
    // Then the app begins with the drawing saved last.
  }
}

function notedOnTable(): string | null {
  try {
    return sessionStorage.getItem(TABLE) ?? localStorage.getItem(TABLE);
  } catch {
    return null;
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

/** @returns whether two works are the same drawing with the same past */
export const sameWork = (a: Work, b: Work): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/**
 * Brings lifeboats in, each into the keeping place.
 * @param autosave null where the browser has no keeping place
 * @returns the drawing to go on with: what lay on the table last, else the last saved; undefined where there is none
 */
export async function bringIn(autosave: Autosave | null): Promise<TakenUp | undefined> {
  const boats = landed();
  if (!autosave) return boats[0];
  let last = notedOnTable();
  for (const { id, version, work } of boats) {
    const saving = await autosave.save(id, version, work);
    if (saving.saved || sameWork(saving.theirs.work, work)) continue;
    const own = freshDrawing();
    await autosave.save(own, 0, work);
    if (id === last) last = own;
  }
  const noted = last === null ? undefined : await autosave.load(last);
  if (noted && noted.putAway === undefined) return noted;
  const newest = (await autosave.cards()).find(({ putAway }) => putAway === undefined);
  return newest && autosave.load(newest.id);
}
