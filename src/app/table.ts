import type { Block } from '../block/block.ts';
import type { Choices } from '../block/choices.ts';
import { fill } from '../block/filling.ts';
import { begin, commit, goTo, redo, undo, type Work } from '../block/history.ts';
import type { Stroke } from '../block/painting.ts';
import type { Reach } from '../canvas/hand/bench.ts';
import type { Tool } from '../canvas/tool.ts';
import { divide } from '../block/dividing.ts';
import { patchAt, recolourPatch, toggleWholes } from '../block/patches.ts';
import { remedied } from '../block/remedy.ts';
import { removePin, togglePins } from '../block/pins.ts';
import { allows, type SymmetryName } from '../block/symmetry.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import type { Point } from '../geometry/point.ts';
import { good, type Remedy, type Result } from '../measure/problem.ts';
import { capital } from '../measure/words.ts';
import { createPaintAhead } from './paint-ahead.ts';
import { choseWords, laidWords } from './past/words.ts';
import { counted, drawable, endsOf, everywhere, patchesInWords, pinOn } from './several.ts';
import type { Rest } from './rest.ts';
import type { Store } from './store.ts';

/** What lies on the table: the drawing with its past, and what the hand holds. */
export interface Table {
  readonly work: Work;
  readonly tool: Tool;
  /** Id of the fabric in the hand. */
  readonly fabric: string;
  /** Where else is done what the hand does in one place; where the block does not allow it, nowhere: see `symmetryOn`. */
  readonly symmetry: SymmetryName;
  /** What went wrong last, in one sentence; null when all is well. */
  readonly alert: string | null;
}

/** @returns the fabric the hand takes up by itself: the first that is not the ground */
const firstFabric = (block: Block): string => block.fabrics.find(({ id }) => id !== block.ground)?.id ?? block.ground;

const nameIn = (block: Block, fabric: string): string => block.fabrics.find(({ id }) => id === fabric)?.name ?? fabric;

/** @returns a table with a drawing on it and a square in the hand */
export const tableWith = (work: Work): Table => ({ work, tool: 'square', fabric: firstFabric(work.block), symmetry: 'none', alert: null });

/** @returns the table with another drawing; the hand keeps its tool, and its fabric where the drawing has it */
function withWork(table: Table, work: Work): Table {
  if (work === table.work) return table;
  const fabric = work.block.fabrics.some(({ id }) => id === table.fabric) ? table.fabric : firstFabric(work.block);
  return { ...table, work, fabric, alert: null };
}

/** @returns the symmetry that what the hand does has on this block */
export const symmetryOn = ({ symmetry, work }: Table): SymmetryName => (allows(work.block, symmetry) ? symmetry : 'none');

/** Everything that can be done at the table; each change of the drawing is one entry of its history. */
export interface Acts {
  /** @param label what the history calls it: "turned the block" */
  readonly change: (label: string | ((now: Block, before: Block) => string), verb: (block: Block) => Result<Block>) => void;
  /** Says what a sweep under way will lay, or (null) that it was dropped; the drawing changes only when it is laid. */
  readonly foresee: (strokes: readonly Stroke[] | null, fabric: string) => void;
  readonly lay: (strokes: readonly Stroke[], fabric: string) => void;
  /** Gives the areas at some places another fabric, or the one patch at each. */
  readonly fill: (at: readonly Point[], reach: Reach, fabric: string) => void;
  /*
   * What is asked of the sewing. The three that a hand does by pointing answer with what they have done, in words to be said;
   * with none where it was refused.
   */
  readonly divide: (lines: readonly Stroke[]) => string;
  readonly keepWhole: (at: readonly Point[]) => string;
  readonly pin: (pin: Pin['pin'], places: readonly Stroke[]) => string;
  readonly unpin: (index: number) => void;
  /** Changes the drawing as a remedy says. */
  readonly mend: (remedy: Remedy) => void;
  readonly choose: (some: Choices) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Undoes or redoes until so many gestures are done. */
  readonly goTo: (done: number) => void;
  /** Puts a drawing with its own past on the table. */
  readonly unfold: (work: Work) => void;
  readonly takeUpTool: (tool: Tool) => void;
  readonly takeUpSymmetry: (symmetry: SymmetryName) => void;
  readonly takeUpFabric: (fabric: string) => void;
  readonly alarm: (sentence: string | null) => void;
}

/**
 * @returns the acts on a table
 * @param rest is told when the hand draws and when it is lifted
 */
export function actsOn(table: Store<Table>, rest: Rest): Acts {
  const alarm: Acts['alarm'] = (alert) => table.change((now) => (now.alert === alert ? now : { ...now, alert }));

  const change: Acts['change'] = (label, verb) => {
    const { work } = table.get();
    const changed = drawable(work.block, verb(work.block));
    if (changed.ok) {
      const words = typeof label === 'string' ? label : label(changed.value, work.block);
      table.change((now) => withWork(now, commit(work, begin(work.block, words), changed.value)));
    } else alarm(changed.problem.sentence);
  };

  type Telling = (now: Block, before: Block) => string;
  const sew = (label: Telling, verb: (block: Block) => Result<Block>, words: Telling): string => {
    const before = table.get().work.block;
    change(label, verb);
    const now = table.get().work.block;
    return now === before ? '' : words(now, before);
  };

  /** Indices of the patches at some places, each once; the ground has none. */
  const patchesAt = (at: readonly Point[]): readonly number[] => {
    const { block } = table.get().work;
    return [...new Set(at.map((each) => patchAt(block, each)))].filter((index) => index >= 0);
  };

  const ahead = createPaintAhead();
  return {
    change,
    alarm,
    foresee: (strokes, fabric) => {
      if (strokes) {
        rest.stir();
        ahead.add(table.get().work.block, fabric, strokes);
      } else {
        ahead.drop();
        rest.settle();
      }
    },
    lay: (strokes, fabric) => {
      const { tool, work } = table.get();
      const words = laidWords(tool, strokes.length, nameIn(work.block, fabric), fabric === work.block.ground);
      change(words, (block) => ahead.finish(block, fabric, strokes));
      rest.settle();
    },
    fill: (at, reach, fabric) => {
      if (reach === 'area') {
        change((now) => `filled ${counted(at.length, 'an area', 'areas')} with ${nameIn(now, fabric)}`, everywhere(at, (block, each) => fill(block, fabric, each)));
        return;
      }
      const found = patchesAt(at);
      if (found.length === 0) alarm('The ground is no patch; fill it without Shift.');
      else change((now) => `made ${patchesInWords(found)} ${nameIn(now, fabric)}`, everywhere(found, (block, each) => recolourPatch(block, each, fabric)));
    },
    divide: (lines) => {
      const more = (now: Block, before: Block): number => now.seams.length - before.seams.length;
      return sew(
        (...both) => `${more(...both) > 0 ? 'drew' : 'took'} ${counted(Math.abs(more(...both)), 'a seam', 'seams')}${more(...both) > 0 ? '' : ' away'}`,
        (block) => divide(block, lines.map(endsOf), lines[0]!.denominator),
        (...both) => `${capital(counted(Math.abs(more(...both)), 'seam', 'seams'))} ${more(...both) > 0 ? 'drawn' : 'taken away'}.`,
      );
    },
    keepWhole: (at) => {
      const found = patchesAt(at);
      if (found.length === 0) {
        alarm('The ground has no patch to keep whole; lay cloth there first.');
        return '';
      }
      const which = patchesInWords(found);
      return sew(
        ({ patches }) => (patches[found[0]!]?.whole ? `kept ${which} whole` : `let ${which} be divided`),
        (block) => toggleWholes(block, found),
        ({ patches }) => {
          if (!patches[found[0]!]?.whole) return `${capital(which)} may be divided.`;
          return `${capital(which)} ${found.length === 1 ? 'is' : 'are'} kept whole.`;
        },
      );
    },
    pin: (pin, places) => {
      const set = places.map((place) => pinOn(pin, place));
      const more = (now: Block, before: Block): number => (now.pins?.length ?? 0) - (before.pins?.length ?? 0);
      return sew(
        (...both) => (more(...both) > 0 ? `set ${counted(more(...both), 'a pin', 'pins')}: ${pin}` : `took ${counted(-more(...both), 'a pin', 'pins')} away`),
        (block) => togglePins(block, set, places[0]!.denominator),
        (now, before) => {
          const added = more(now, before);
          if (added <= 0) return `${capital(counted(-added, 'pin', 'pins'))} taken away.`;
          const last = now.pins!.length;
          return `${added === 1 ? `Pin ${last}` : `Pins ${last - added + 1} to ${last}`} set: ${pin}.`;
        },
      );
    },
    unpin: (index) => change(`took pin ${index + 1} away`, (block) => removePin(block, index)),
    mend: (remedy) => change(remedy.divide ? 'divided a patch' : 'let patches be divided', (block) => remedied(block, remedy)),
    choose: (some) => change(choseWords(some), (block) => good({ ...block, choices: { ...block.choices, ...some } })),
    undo: () => table.change((now) => withWork(now, undo(now.work))),
    redo: () => table.change((now) => withWork(now, redo(now.work))),
    goTo: (done) => table.change((now) => withWork(now, goTo(now.work, done))),
    unfold: (work) => table.change((now) => withWork(now, work)),
    takeUpTool: (tool) => table.change((now) => ({ ...now, tool })),
    takeUpSymmetry: (symmetry) => table.change((now) => ({ ...now, symmetry })),
    takeUpFabric: (fabric) => table.change((now) => ({ ...now, fabric })),
  };
}
