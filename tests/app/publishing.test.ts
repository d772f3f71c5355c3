import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drawingAlone } from '../../src/app/drawing-alone.ts';
import { NOTHING_SENT, received, sent } from '../../src/app/publishing/laid-pages.ts';
import { leanJpeg } from '../../src/app/publishing/lean-jpeg.ts';
import type { Laid } from '../../src/app/publishing/pages-maker.ts';
import { spotsOn } from '../../src/app/publishing/spots.ts';
import { addPart, putWords, setSubtitle } from '../../src/block/publishing.ts';
import { turn } from '../../src/block/turning.ts';
import type { Block } from '../../src/block/block.ts';
import { readFaces } from '../../src/cli/faces.ts';
import { parseBlock } from '../../src/files/block-file.ts';
import { published } from '../../src/pattern/document/published.ts';
import { ENGLISH } from '../../src/pattern/english.ts';
import { usualStyle, type HouseStyle } from '../../src/pattern/house-style.ts';
import { makePattern } from '../../src/pattern/make-pattern.ts';
import { settingIn } from '../../src/pattern/pages/face.ts';
import { skeletonOf } from '../../src/pattern/telling/kept.ts';
import { must } from '../block/drawn.ts';
import { JPEG, photo, photoWith, WITH_PROFILE } from '../block/photo.ts';

const setting = settingIn(await readFaces());
const buoy = must(parseBlock(readFileSync('demo-blocks/02-harbour-steps.block.json', 'utf8')));
const made = (block: Block, style: Partial<HouseStyle> = {}) =>
  published(block, must(makePattern(block, {}, 'chosen way')), { ...usualStyle(block.finished.unit), ...style }, setting, ENGLISH);

/** Sends some documents one after another, as the worker does. @returns what the screen has after each, and how many pages were sent */
function shown(...documents: readonly ReturnType<typeof made>[]): readonly { readonly laid: Laid; readonly pages: number }[] {
  let [before, laid] = [NOTHING_SENT, null as Laid | null];
  return documents.map((document) => {
    const [message, now] = sent(document, before);
    before = now;
    laid = received(structuredClone({ ...message, took: 0 }), laid?.document.pages ?? []);
    return { laid, pages: message.document.pages.filter((page) => typeof page !== 'number').length };
  });
}

describe('pages on their way to the screen', () => {
  it('are there whole, though only those are sent that changed', () => {
    const first = made(buoy);
    const titled = made(must(setSubtitle(buoy, 'For the long wall')));
    const photographed = made(must(addPart(buoy, { section: 'notes', part: 'photo', text: '', picture: photo })));
    const all = [first, first, titled, photographed, first];
    const after = shown(...all);
    for (const [i, { laid }] of after.entries()) expect(laid.document).toEqual(all[i]!.document);
    expect(after.map(({ pages }) => pages)).toEqual([first.document.pages.length, 0, expect.any(Number), expect.any(Number), expect.any(Number)]);
    expect(after[2]!.pages).toBeLessThan(first.document.pages.length);
  });

  it('tell one picture from another', () => {
    const [one, other] = ['tern', 'gannet'].map((which) => made(must(addPart(buoy, { section: 'cover', part: 'photo', text: '', picture: photoWith(which) }))));
    expect(shown(one!, other!)[1]!.laid.document).toEqual(other!.document);
  });

  it('bring every section with its page, and the places in it, behind each of which a part of hers can stand', () => {
    const { laid } = shown(made(buoy))[0]!;
    expect(laid.sections.filter(({ page }) => page === null)).toEqual([]);
    const places = laid.sections.flatMap(({ name, places: all }) => all.map((after) => ({ section: name, after })));
    expect(places.length).toBeGreaterThan(20);
    const full = places.reduce((now, place) => must(addPart(now, { ...place, part: 'paragraph', text: 'Mind the tide.' })), buoy);
    const numbered = new Map(places.map(({ section, after }, i) => [`${section} ${after}`, `own/part-${i + 1}`]));
    const expected = laid.sections.map(({ name, places: all }) => all.flatMap((place) => [place, numbered.get(`${name} ${place}`)]));
    expect(shown(made(full))[0]!.laid.sections.map((section) => section.places)).toEqual(expected);
  });
});

describe('sentences on a page', () => {
  const { laid } = shown(made(buoy, { columns: 2 }))[0]!;

  it('are found where their lines stand, each line in one area', () => {
    let lines = 0;
    for (const page of laid.document.pages) {
      const spots = spotsOn(page, (at) => laid.sentences.has(at));
      for (const item of page.items) {
        if (item.kind !== 'text' || item.of === undefined || item.turn || item.role === 'of the page' || !laid.sentences.has(item.of)) continue;
        const areas = spots.find(({ at }) => at === item.of)!.areas;
        const holds = areas.filter(({ left, top, width, height }) =>
          item.x >= left - 0.01 && item.x + item.width <= left + width + 0.01 && item.y > top && item.y < top + height);
        expect(holds.length, item.text).toBe(1);
        lines++;
      }
    }
    expect(lines).toBeGreaterThan(100);
  });

  it('can all be put in her words, but for warnings', () => {
    const at = [...laid.sentences.keys()];
    expect(at.length).toBeGreaterThan(50);
    expect(at.filter((each) => each.startsWith('warnings/'))).toEqual([]);
    const step = [...laid.sentences.values()].find((each) => each.at.endsWith('/how'))!;
    const worded = must(putWords(buoy, { at: step.at, language: 'en', was: skeletonOf(step.told), now: 'Sew {1} in the lee.' }));
    const again = shown(made(worded))[0]!.laid;
    expect(again.sentences.get(step.at)).toMatchObject({ was: step.told });
    expect(again.document.pages.flatMap(({ items }) => items).some((item) => item.kind === 'text' && item.text.includes('in the lee'))).toBe(true);
  });
});

describe('a chosen picture', () => {
  it('loses what programs have written about themselves, and stays the same picture', () => {
    const bytes = Uint8Array.from(atob(WITH_PROFILE), (sign) => sign.charCodeAt(0));
    expect(btoa(String.fromCharCode(...leanJpeg(bytes)))).toBe(JPEG);
    const lean = Uint8Array.from(atob(JPEG), (sign) => sign.charCodeAt(0));
    expect(leanJpeg(lean)).toEqual(lean);
  });
});

describe('a drawing by itself', () => {
  it('is the same as long as only the pattern around it changes', () => {
    const alone = drawingAlone(buoy);
    expect(alone).toEqual(buoy);
    expect(drawingAlone(must(setSubtitle(buoy, 'For the long wall')))).toBe(alone);
    expect(drawingAlone(turn(buoy))).not.toBe(alone);
  });
});
