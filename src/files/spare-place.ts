import { cardOf, type Autosave, type KeptPicture, type SavedDrawing } from './autosave.ts';

/**
 * A place that holds in the page itself what the browser's keeping place does not take, so that nothing is lost while the page is
 * open: saving still rejects, and the drawing can still be loaded, listed and put away.
 * @param place null where the browser has none
 */
export function withSpare(place: Autosave | null): Autosave {
  const held = new Map<string, SavedDrawing>();
  const pictures = new Map<string, KeptPicture>();
  const files = new Map<string, FileSystemFileHandle>();
  return {
    load: async (id) => held.get(id) ?? (await place?.load(id)),
    cards: async () => {
      const others = ((await place?.cards()) ?? []).filter(({ id }) => !held.has(id));
      return [...[...held.values()].map(cardOf), ...others].sort((a, b) => b.savedAt - a.savedAt);
    },
    save: async (id, from, work) => {
      try {
        if (!place) throw new Error('the browser has no keeping place');
        const saving = await place.save(id, from, work);
        held.delete(id);
        return saving;
      } catch (error) {
        held.set(id, { id, version: from, work, savedAt: Date.now() });
        throw error;
      }
    },
    putAway: async (id, when) => {
      const { putAway: _, ...drawing } = held.get(id) ?? {};
      if ('work' in drawing) held.set(id, { ...drawing, ...(when !== null && { putAway: when }) } as SavedDrawing);
      await place?.putAway(id, when);
    },
    remove: async (id) => {
      for (const all of [held, pictures, files]) all.delete(id);
      await place?.remove(id);
    },
    picture: async (id) => pictures.get(id) ?? (await place?.picture(id)),
    keepPicture: async (picture) => {
      await (place?.keepPicture(picture) ?? Promise.reject(new Error())).catch(() => pictures.set(picture.id, picture));
    },
    fileOf: async (id) => files.get(id) ?? (await place?.fileOf(id)),
    keepFile: async (id, file) => {
      await (place?.keepFile(id, file) ?? Promise.reject(new Error())).catch(() => files.set(id, file));
    },
    watch: (onSaved) => place?.watch(onSaved) ?? (() => undefined),
    close: () => place?.close(),
  };
}
