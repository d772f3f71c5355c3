import type { Lie, Tracing } from '../../canvas/tracing.ts';
import { forgetPicture, keepPicture, pictureUnder } from '../../files/pictures.ts';
import { createStore } from '../store.ts';

/** A picture under the cloth, and the file it is kept as. */
export interface Laid {
  readonly picture: ImageBitmap;
  readonly kept: Blob;
  readonly lie: Lie;
  /** How much of the cloth covers it, 0 to 1. */
  readonly cover: number;
  readonly shown: boolean;
}

/** What lies under the drawing on the table. */
export interface Underlay {
  /** Id of the drawing. */
  readonly drawing: string | null;
  readonly laid: Laid | null;
  /** Whether the picture is just being moved into its place. */
  readonly laying: boolean;
  /** Why the last file could not be taken, in one sentence. */
  readonly problem: string | null;
}

export const underlay = createStore<Underlay>({ drawing: null, laid: null, laying: false, problem: null });

const COVER = 0.55;
/** How long a change may wait to be kept, in milliseconds. */
const REST = 250;

const isLie = (lie: unknown): lie is Lie =>
  typeof lie === 'object' && lie !== null && (['x', 'y', 'width', 'turn'] as const).every((part) => Number.isFinite(Reflect.get(lie, part)));

/** Brings the picture that is kept under a drawing onto the table, if there is one. */
export async function layUnder(drawing: string): Promise<void> {
  if (underlay.get().drawing === drawing) return;
  underlay.set({ drawing, laid: null, laying: false, problem: null });
  try {
    const found = await pictureUnder(drawing);
    if (!found || !isLie(found.lie)) return;
    const { lie, picture: kept, cover, shown } = found;
    const picture = await createImageBitmap(kept);
    underlay.change((now) => (now.drawing === drawing && !now.laid ? { ...now, laid: { picture, kept, lie, cover, shown } } : now));
  } catch {
    // A browser that keeps nothing has nothing to lay.
  }
}

let waiting: ReturnType<typeof setTimeout> | undefined;

async function keep(): Promise<void> {
  clearTimeout(waiting);
  waiting = undefined;
  const { drawing, laid } = underlay.get();
  if (drawing === null) return;
  if (laid) await keepPicture({ drawing, picture: laid.kept, lie: laid.lie, cover: laid.cover, shown: laid.shown });
  else await forgetPicture(drawing);
}

const keepOrSay = (): void =>
  void keep().catch(() =>
    underlay.change((now) => ({ ...now, problem: 'This browser does not keep the picture: it is gone when the page is closed.' })),
  );

function keepSoon(): void {
  clearTimeout(waiting);
  waiting = setTimeout(keepOrSay, REST);
}

/** Lays the picture in a file under the drawing. @returns why it cannot, in one sentence; null when it lies there */
export async function takePicture(file: File): Promise<string | null> {
  const { readPicture } = await import('./picture-files.ts');
  const read = await readPicture(file);
  if (!read.ok) {
    underlay.change((now) => ({ ...now, problem: read.problem.sentence }));
    return read.problem.sentence;
  }
  const lie: Lie = { x: 0.5, y: 0.5, width: 1, turn: 0 };
  underlay.change((now) => ({ ...now, problem: null, laying: true, laid: { ...read.value, lie, cover: now.laid?.cover ?? COVER, shown: true } }));
  keepOrSay();
  return null;
}

/** Changes how the picture lies or is shown. */
export function changeLaid(part: Partial<Pick<Laid, 'lie' | 'cover' | 'shown'>>): void {
  underlay.change((now) => ({ ...now, laying: now.laying && part.shown !== false, laid: now.laid && { ...now.laid, ...part } }));
  keepSoon();
}

/** Takes the picture away for good. */
export function takeAway(): void {
  underlay.change((now) => ({ ...now, laid: null, laying: false, problem: null }));
  keepOrSay();
}

export const setLaying = (laying: boolean): void => underlay.change((now) => ({ ...now, laying }));

let last: { readonly from: Underlay; readonly tracing: Tracing | null } | null = null;

/** @returns what the table draws under the cloth; the same object while nothing changes */
export function tracingIn(now: Underlay): Tracing | null {
  if (last?.from !== now) {
    const { laid, laying } = now;
    last = { from: now, tracing: laid && laid.shown ? { picture: laid.picture, lie: laid.lie, cover: laid.cover, laying } : null };
  }
  return last.tracing;
}
