import { brought, flipped, rotated, settled, shifted, taken as takenFrom, type Arrangement } from '../../block/arranging.ts';
import type { Block, Patch } from '../../block/block.ts';
import { placePhoto } from '../../block/colour/photos.ts';
import { leastCommonMultiple } from '../../block/lattice.ts';
import type { Laid } from '../../block/laying.ts';
import { boundsOf } from '../../block/outline.ts';
import { regionOf } from '../../block/overlay.ts';
import { patchAt } from '../../block/patches.ts';
import { beside, scrapOf, takeOver } from '../../block/scraps.ts';
import { seenOf, type Seen } from '../../block/seen.ts';
import { all, lift, recolour, takeUp, within, type Selection } from '../../block/selecting.ts';
import { pointNear } from '../../canvas/cell-fabrics.ts';
import type { Chosen, SeenPatch } from '../../canvas/draw-selection.ts';
import { outlineOf } from '../../canvas/gesture.ts';
import type { Handling } from '../../canvas/hand/selecting.ts';
import { formatBlock, parseBlock } from '../../files/block-file.ts';
import { good, type Result } from '../../measure/problem.ts';
import type { Acts } from '../table.ts';
import { gathering, scrap, taken } from './taken.ts';

/** The table as patches are arranged on it. */
export interface Hands {
  readonly block: () => Block;
  readonly acts: Pick<Acts, 'change' | 'alarm' | 'takeUpFabric' | 'takeUpTool'>;
}

/** @returns "3 patches", "1 patch" */
const counted = (count: number): string => (count === 1 ? '1 patch' : `${count} patches`);

/** @returns indices of the patches that are chosen */
export const selectionIn = (block: Block, chosen: ReadonlySet<Patch>): Selection =>
  chosen.size === 0 ? [] : block.patches.flatMap((patch, i) => (chosen.has(patch) ? [i] : []));

/** What is seen of a patch; all of it where that is not exact. */
const shownOf = (block: Block, index: number): Seen =>
  seenOf(block, index) ?? { denominator: block.denominator, regions: [regionOf(block.patches[index]!.points)] };

function seenPatch(block: Block, index: number): SeenPatch | null {
  const patch = block.patches[index];
  if (!patch) return null;
  const { denominator, regions } = shownOf(block, index);
  return {
    fabric: patch.fabric,
    outlines: regions.flatMap(({ outer, holes }) => [outer, ...holes].map((points) => outlineOf({ points, denominator }))),
  };
}

/** @returns the box around what is seen of patches */
function boxOf(block: Block, selection: Selection): Chosen['box'] {
  const seen = selection.map((i) => shownOf(block, i));
  const denominator = seen.reduce((common, each) => leastCommonMultiple(common, each.denominator), 1);
  const corners = seen.flatMap((each) => {
    if (each.regions.length === 0) return [];
    const { left, top, right, bottom } = boundsOf(each.regions.flatMap(({ outer }) => outer));
    const times = denominator / each.denominator;
    return [[left * times, top * times], [right * times, bottom * times]] as const;
  });
  return corners.length === 0 ? null : { ...boundsOf(corners), denominator };
}

/** @returns the patches that are chosen, as the hand and the ink need them */
export function chosenIn(block: Block, chosen: ReadonlySet<Patch>): Chosen {
  const selection = selectionIn(block, chosen);
  return {
    indices: new Set(selection),
    patches: selection.flatMap((i) => seenPatch(block, i) ?? []),
    box: boxOf(block, selection),
    seen: (index) => seenPatch(block, index),
  };
}

/** Does with patches what the hand asks; each change of the drawing is one entry of its history. */
export interface Arranger {
  /** @returns what was done, in words to be said; none where it was refused */
  readonly handle: (handling: Handling) => string;
}

/** What the same patches have come to, step by step: from any of these they go on over the table they were taken from. */
interface Step {
  readonly block: Block;
  readonly arrangement: Arrangement;
}

export function createArranger({ block, acts }: Hands): Arranger {
  let steps: readonly Step[] = [];

  const selection = (): Selection => selectionIn(block(), taken.get());
  const choose = (indices: Selection): void => taken.set(new Set(indices.map((i) => block().patches[i]!)));
  const nameOf = (fabric: string): string => block().fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
  const chosenWords = (): string => `${counted(selection().length)} chosen`;
  const refuse = (sentence: string): string => {
    acts.alarm(sentence);
    return '';
  };

  const sameStep = (step: Step, now: Block, chosen: Selection): boolean =>
    step.block.denominator === now.denominator && step.block.patches.length === now.patches.length &&
    step.block.patches.every((patch, i) => patch === now.patches[i]) && step.arrangement.place.patches.length >= chosen.length;

  /** The patches that are chosen, in the hand: still over the table they were first taken from where they have only been moved since. */
  const inHand = (): Result<Arrangement> => {
    const [now, chosen] = [block(), selection()];
    const at = steps.findLastIndex((step) => sameStep(step, now, chosen));
    if (at >= 0) {
      steps = steps.slice(0, at + 1);
      return good(steps[at]!.arrangement);
    }
    const found = takenFrom(now, chosen);
    steps = found.ok ? [{ block: now, arrangement: found.value }] : [];
    return found;
  };

  /** Lays patches from the hand, chosen. */
  const put = (label: string, arrangement: Arrangement, words: (laid: Laid) => string): string => {
    const laid = settled(arrangement);
    if (!laid.ok) return refuse(laid.problem.sentence);
    acts.change(label, () => good(laid.value.block));
    steps = [...steps, { block: laid.value.block, arrangement }];
    taken.set(new Set([...taken.get(), ...laid.value.patches]));
    return `${words(laid.value)}${laid.value.cut ? ' What lay beyond the edge of the block is cut off.' : ''}`;
  };

  const rearrange = (done: string, verb: (arrangement: Arrangement) => Arrangement, words: string): string => {
    const count = counted(selection().length);
    const held = inHand();
    return held.ok ? put(`${done} ${count}`, verb(held.value), () => `${words}.`) : refuse(held.problem.sentence);
  };

  const bring = (label: string, under: Block, lifted: Arrangement['lifted'], words: string): string => {
    taken.set(new Set());
    steps = [];
    return put(label, brought(under, lifted), ({ patches }) => `${counted(patches.length)} ${words}.`);
  };

  const copy = (): Result<number> => {
    const held = lift(block(), selection());
    if (!held.ok) return held;
    scrap.set(scrapOf(held.value, block()));
    return good(selection().length);
  };

  const paste = (text: string | undefined): string => {
    // What the clipboard holds may come from another window; where it is no block of ours, what was copied here counts.
    const read = text?.trimStart().startsWith('{') ? parseBlock(text) : null;
    const from = read?.ok ? read.value : scrap.get();
    if (!from) return refuse(read && !read.ok ? read.problem.sentence : 'No patches were copied yet; choose some and copy them first.');
    const over = takeOver(block(), from);
    if (!over.ok) return refuse(over.problem.sentence);
    acts.takeUpTool('choose');
    const { lifted, added } = over.value;
    const words = added.length > 0 ? `pasted; ${added.join(', ')} added to the swatch tray` : 'pasted';
    return bring(`pasted ${counted(lifted.patches.length)}`, over.value.block, lifted, words);
  };

  const take = (index: number, adding: boolean): string => {
    const now = block();
    if (index < 0) {
      if (adding) return 'The ground is no patch.';
      choose([]);
      return 'Nothing chosen.';
    }
    const before = selection();
    if (!adding) choose([index]);
    else if (before.includes(index)) choose(before.filter((i) => i !== index));
    else choose([...before, index]);
    return `${nameOf(now.patches[index]!.fabric)} ${adding && before.includes(index) ? 'left out' : 'taken'}, ${chosenWords()}.`;
  };

  const handle: Arranger['handle'] = (handling) => {
    const now = block();
    const count = selection().length;
    switch (handling.do) {
      case 'take':
        return take(patchAt(now, pointNear(handling.at)), handling.adding || gathering.get());
      case 'frame': {
        const found = within(now, handling.from, handling.to);
        choose(handling.adding || gathering.get() ? [...new Set([...selection(), ...found])].sort((a, b) => a - b) : found);
        return found.length === 0 && selection().length === 0 ? 'No patch lies wholly inside the frame.' : `${chosenWords()}.`;
      }
      case 'all':
        choose(all(now));
        return `${chosenWords()}.`;
      case 'all of':
        choose(all(now, handling.fabric));
        return `${counted(selection().length)} of ${nameOf(handling.fabric)} chosen.`;
      case 'none':
        choose([]);
        return 'Nothing chosen.';
      case 'paste':
        return paste(handling.text);
    }
    if (count === 0) return 'Nothing is chosen.';
    switch (handling.do) {
      case 'only':
        choose(selection().filter((i) => now.patches[i]!.fabric === handling.fabric));
        return `${chosenWords()}, all of ${nameOf(handling.fabric)}.`;
      case 'move':
        return rearrange('moved', (held) => shifted(held, handling.by), `Moved ${wayInWords(handling.by)}`);
      case 'turn': {
        const way = handling.way === 'right' ? 'clockwise' : 'the other way';
        return rearrange('turned', (held) => rotated(held, handling.way), `Turned ${way}`);
      }
      case 'mirror':
        return rearrange('mirrored', (held) => flipped(held, handling.exchange), `Mirrored, ${handling.exchange} exchanged`);
      case 'twin': {
        const held = lift(now, selection());
        if (!held.ok) return refuse(held.problem.sentence);
        return bring(`doubled ${counted(count)}`, now, beside(held.value, now.grid), 'doubled');
      }
      case 'copy': {
        const copied = copy();
        return copied.ok ? `${counted(count)} copied.` : refuse(copied.problem.sentence);
      }
      case 'cut':
      case 'delete': {
        const copied = handling.do === 'cut' ? copy() : good(count);
        if (!copied.ok) return refuse(copied.problem.sentence);
        acts.change(`${handling.do === 'cut' ? 'cut' : 'took up'} ${counted(count)}`, (drawn) => good(takeUp(drawn, selection())));
        return `${counted(count)} ${handling.do === 'cut' ? 'cut' : 'taken up'}.`;
      }
      case 'photo': {
        const meant = selection();
        const placed = placePhoto(now, meant, handling.at);
        acts.change(`moved the photo in ${counted(count)}`, () => good(placed));
        taken.set(new Set([...taken.get(), ...meant.map((i) => placed.patches[i]!)]));
        return `The photo is moved in ${counted(count)}.`;
      }
      case 'recolour': {
        const meant = selection();
        const coloured = recolour(now, meant, handling.fabric);
        if (!coloured.ok) return refuse(coloured.problem.sentence);
        acts.change(`made ${counted(count)} ${nameOf(handling.fabric)}`, () => coloured);
        taken.set(new Set([...taken.get(), ...meant.map((i) => coloured.value.patches[i]!)]));
        acts.takeUpFabric(handling.fabric);
        return `${counted(count)} now ${nameOf(handling.fabric)}.`;
      }
    }
  };
  return { handle };
}

/** @returns "1 to the right and 1/2 down", in cells of one grid unit */
function wayInWords({ dx, dy, denominator }: { readonly dx: number; readonly dy: number; readonly denominator: number }): string {
  const part = (steps: number, less: string, more: string): string[] =>
    steps === 0 ? [] : [`${Math.abs(steps) / denominator} ${steps < 0 ? less : more}`];
  return [...part(dx, 'to the left', 'to the right'), ...part(dy, 'up', 'down')].join(' and ') || 'back';
}

/** @returns what was copied last, as the text of a block file, for the clipboard */
export const scrapText = (): string | null => {
  const last = scrap.get();
  return last && formatBlock(last);
};
