import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { begun } from '../block/history.ts';
import { openAutosave, type Autosave } from '../files/autosave.ts';
import { App } from './App.tsx';
import { demoBlocks } from './demo-blocks.ts';
import { firstBlock } from './first-block.ts';
import { keepDrawing } from './keeping.ts';
import { bringIn, freshDrawing, type TakenUp } from './lifeboat.ts';
import { createDesk, workerBench } from './pattern-desk.ts';
import { createRest } from './rest.ts';
import { createStore } from './store.ts';
import { actsOn, tableWith, type Table } from './table.ts';
import './face/face.css';
import './face/shell.css';
import './face/table.css';
import './face/sheet.css';
import './face/lines.css';

/** @returns the drawing to begin with: the last one kept, else the first of the sampler, else an empty block */
async function begunWork(autosave: Autosave | null): Promise<TakenUp> {
  const last = await bringIn(autosave).catch(() => undefined);
  if (last) return last;
  const demo = await demoBlocks[0]?.open().catch(() => undefined);
  return { id: freshDrawing(), version: 0, work: begun(demo ?? firstBlock()) };
}

const autosave = await openAutosave().catch(() => null);
const { id, version, work } = await begunWork(autosave);
const table = createStore<Table>(tableWith(work));
const rest = createRest();
const { desk, want } = createDesk(workerBench, rest.reached);
want(work.block);
table.subscribe(() => want(table.get().work.block));
const kept = keepDrawing(table, autosave, { id, version });

const root = document.getElementById('root');
if (!root) throw new Error('the page has no place for the app');
createRoot(root).render(
  <StrictMode>
    <App table={table} acts={actsOn(table, rest)} desk={desk} kept={kept} autosave={autosave} />
  </StrictMode>,
);
