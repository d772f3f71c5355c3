import type { Block } from '../block/block.ts';
import type { Choices, Method } from '../block/choices.ts';
import { fill } from '../block/filling.ts';
import { begin, commit, goTo, redo, undo, type Work } from '../block/history.ts';
import type { Stroke } from '../block/painting.ts';
import { pointNear } from '../canvas/cell-fabrics.ts';
import type { Tool } from '../canvas/tool.ts';
import { patchAt, toggleWhole } from '../block/patches.ts';
import { remedied } from '../block/remedy.ts';
import { removePin, togglePin } from '../block/pins.ts';
import { toggleSeam } from '../block/seams.ts';
import { chooseMethod } from '../block/sizing.ts';
import type { UnitKind } from '../geometry/piecing/assembly.ts';
import type { Pin } from '../geometry/patchwork/drawing.ts';
import type { GridPoint } from '../canvas/gesture.ts';
import { good, type Remedy, type Result } from '../measure/problem.ts';
import { createPaintAhead } from './paint-ahead.ts';
import { choseWords, laidWords } from './past/words.ts';
import type { Rest } from './rest.ts';
import type { Store } from './store.ts';

/** What lies on the table: the drawing with its past, and what the hand holds. */
export interface Table {
  readonly work: Work;
  readonly tool: Tool;
  /** Id of the fabric in the hand. */
  readonly fabric: string;
  /** What went wrong last, in one sentence; null when all is well. */
  readonly alert: string | null;
}

/** @returns the fabric the hand takes up by itself: the first that is not the ground */
const firstFabric = (block: Block): string => block.fabrics.find(({ id }) => id !== block.ground)?.id ?? block.ground;

const nameIn = (block: Block, fabric: string): string => block.fabrics.find(({ id }) => id === fabric)?.name ?? fabric;

/** @returns a table with a drawing on it and a square in the hand */
export const tableWith = (work: Work): Table => ({ work, tool: 'square', fabric: firstFabric(work.block), alert: null });

/** @returns the table with another drawing; the hand keeps its tool, and its fabric where the drawing has it */
function withWork(table: Table, work: Work): Table {
  if (work === table.work) return table;
  const fabric = work.block.fabrics.some(({ id }) => id === table.fabric) ? table.fabric : firstFabric(work.block);
  return { ...table, work, fabric, alert: null };
}

/** Everything that can be done at the table; each change of the drawing is one entry of its history. */
export interface Acts {
  /** @param label what the history calls it: "turned the block" */
  readonly change: (label: string | ((now: Block, before: Block) => string), verb: (block: Block) => Result<Block>) => void;
  /** Says what a sweep under way will lay, or (null) that it was dropped; the drawing changes only when it is laid. */
  readonly foresee: (strokes: readonly Stroke[] | null, fabric: string) => void;
  readonly lay: (strokes: readonly Stroke[], fabric: string) => void;
  readonly fill: (at: readonly [number, number], fabric: string) => void;
  /*
   * What is asked of the sewing. The three that a hand does by pointing answer with what they have done, in words to be said;
   * with none where it was refused.
   */
  readonly divide: (line: Stroke) => string;
  readonly keepWhole: (at: GridPoint) => string;
  readonly pin: (pin: Pin['pin'], place: Stroke) => string;
  readonly unpin: (index: number) => void;
  /** Changes the drawing as a remedy says. */
  readonly mend: (remedy: Remedy) => void;
  readonly choose: (some: Choices) => void;
  /** Chooses how all units of a kind are cut and sewn. */
  readonly chooseMethod: (kind: UnitKind, method: Method) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Undoes or redoes until so many gestures are done. */
  readonly goTo: (done: number) => void;
  /** Puts a drawing with its own past on the table. */
  readonly unfold: (work: Work) => void;
  readonly takeUpTool: (tool: Tool) => void;
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
    const changed = verb(work.block);
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
    fill: (at, fabric) => change((now) => `filled an area with ${nameIn(now, fabric)}`, (block) => fill(block, fabric, pointNear(at))),
    divide: ({ points: [from, to], denominator }) =>
      sew(
        (now, before) => (now.seams.length > before.seams.length ? 'drew a seam' : 'took a seam away'),
        (block) => toggleSeam(block, [from!, to!], denominator),
        (now, before) => (now.seams.length > before.seams.length ? 'Seam drawn.' : 'Seam taken away.'),
      ),
    keepWhole: (at) => {
      const index = patchAt(table.get().work.block, pointNear(at));
      if (index < 0) {
        alarm('The ground has no patch to keep whole; lay cloth there first.');
        return '';
      }
      return sew(
        ({ patches }) => (patches[index]?.whole ? `kept patch ${index + 1} whole` : `let patch ${index + 1} be divided`),
        (block) => toggleWhole(block, index),
        ({ patches }) => `Patch ${index + 1} ${patches[index]?.whole ? 'is kept whole' : 'may be divided'}.`,
      );
    },
    pin: (pin, { points: [from, to], denominator }) =>
      sew(
        ({ pins = [] }, before) => (pins.length > (before.pins?.length ?? 0) ? `set a pin: ${pin}` : 'took a pin away'),
        (block) => togglePin(block, { pin, from: from!, to: to! }, denominator),
        ({ pins = [] }, before) => (pins.length > (before.pins?.length ?? 0) ? `Pin ${pins.length} set: ${pin}.` : 'Pin taken away.'),
      ),
    unpin: (index) => change(`took pin ${index + 1} away`, (block) => removePin(block, index)),
    mend: (remedy) => change(remedy.divide ? 'divided a patch' : 'let patches be divided', (block) => remedied(block, remedy)),
    choose: (some) => change(choseWords(some), (block) => good({ ...block, choices: { ...block.choices, ...some } })),
    chooseMethod: (kind, method) => change(`chose ${method} for each ${kind}`, (block) => good(chooseMethod(block, kind, method))),
    undo: () => table.change((now) => withWork(now, undo(now.work))),
    redo: () => table.change((now) => withWork(now, redo(now.work))),
    goTo: (done) => table.change((now) => withWork(now, goTo(now.work, done))),
    unfold: (work) => table.change((now) => withWork(now, work)),
    takeUpTool: (tool) => table.change((now) => ({ ...now, tool })),
    takeUpFabric: (fabric) => table.change((now) => ({ ...now, fabric })),
  };
}
