import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { begun } from '../block/history.ts';
import { openAutosave, type Autosave } from '../files/autosave.ts';
import { withSpare } from '../files/spare-place.ts';
import { App } from './App.tsx';
import { followCloths } from './cloths.ts';
import { demoBlocks } from './demo-blocks.ts';
import { drawingAlone } from './drawing-alone.ts';
import { firstBlock } from './first-block.ts';
import { keepDrawing, lookedAt } from './keeping.ts';
import { bringIn, type TakenUp } from './lifeboat.ts';
import { createDesk, workerBench } from './pattern-desk.ts';
import { createRest } from './rest.ts';
import { createStore } from './store.ts';
import { actsOn, tableWith, type Table } from './table.ts';
import './face/face.css';
import './face/shell.css';
import './face/table.css';
import './face/sheet.css';
import './face/lines.css';
import './face/grid.css';
import './face/views.css';
import './face/shelf.css';
import './face/past.css';

/** @returns the drawing to begin with: the one that lay on the table last, else the first of the sampler, else an empty block */
async function begunWork(autosave: Autosave | null): Promise<TakenUp> {
  const last = await bringIn(autosave).catch(() => undefined);
  if (last) return last;
  const demo = await demoBlocks[0]?.open().catch(() => undefined);
  return { id: lookedAt(), version: 0, work: begun(demo ?? firstBlock()) };
}

const autosave = await openAutosave().catch(() => null);
const first = await begunWork(autosave);
const table = createStore<Table>(tableWith(first.work));
const rest = createRest();
const { desk, want } = createDesk(workerBench, rest.reached);
const cloths = followCloths(desk, rest.reached);
const follow = (): void => want(drawingAlone(table.get().work.block));
follow();
table.subscribe(follow);
const acts = actsOn(table, rest);
const place = withSpare(autosave);
const keeping = keepDrawing(table, acts, place, autosave !== null, first);

const root = document.getElementById('root');
if (!root) throw new Error('the page has no place for the app');
createRoot(root).render(
  <StrictMode>
    <App table={table} acts={acts} desk={desk} cloths={cloths} keeping={keeping} place={place} />
  </StrictMode>,
);
