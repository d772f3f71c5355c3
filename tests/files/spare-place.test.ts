import { describe, expect, it } from 'vitest';
import { begun } from '../../src/block/history.ts';
import type { Autosave } from '../../src/files/autosave.ts';
import { withSpare } from '../../src/files/spare-place.ts';
import { unpainted } from '../block/drawn.ts';

const work = begun(unpainted(3, 3, { name: 'Slipway' }));

/** A place that has room, or not, and forgets nothing. */
function tightPlace(): { place: Autosave; room: (is: boolean) => void; kept: string[] } {
  let full = false;
  const kept: string[] = [];
  const none = withSpare(null);
  const place: Autosave = {
    ...none,
    load: async () => undefined,
    cards: async () => [],
    save: async (id, from) => {
      if (full) throw new Error('full');
      kept.push(id);
      return { saved: true, version: from + 1 };
    },
  };
  return { place, kept, room: (is) => void (full = !is) };
}

describe('what the browser does not keep', () => {
  it('is refused aloud, and is still there to load, list and put away', async () => {
    const spare = withSpare(null);
    await expect(spare.save('boat', 0, work)).rejects.toThrow();
    expect(await spare.load('boat')).toMatchObject({ id: 'boat', version: 0, work });
    expect(await spare.cards()).toMatchObject([{ id: 'boat', name: 'Slipway' }]);
    await spare.putAway('boat', 5);
    expect(await spare.cards()).toMatchObject([{ id: 'boat', putAway: 5 }]);
    await spare.putAway('boat', null);
    expect((await spare.cards())[0]).not.toHaveProperty('putAway');
    await spare.remove('boat');
    expect(await spare.load('boat')).toBeUndefined();
  });

  it('goes to the browser as soon as there is room', async () => {
    const { place, room, kept } = tightPlace();
    const spare = withSpare(place);
    room(false);
    await expect(spare.save('boat', 4, work)).rejects.toThrow('full');
    expect(await spare.load('boat')).toMatchObject({ version: 4 });
    room(true);
    expect(await spare.save('boat', 4, work)).toEqual({ saved: true, version: 5 });
    expect(kept).toEqual(['boat']);
    expect(await spare.cards()).toEqual([]);
  });

  it('is not mixed with what another window keeps: that is told as it is', async () => {
    const theirs = { id: 'boat', version: 9, work, savedAt: 1 };
    const { place } = tightPlace();
    const spare = withSpare({ ...place, save: async () => ({ saved: false, theirs }) });
    expect(await spare.save('boat', 4, work)).toEqual({ saved: false, theirs });
  });
});
