import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { cloths } from './cloth.ts';
import { painting } from './painting.ts';
import { recolouring } from './recolouring.ts';

/**
 * The engine is measured as it runs in the page: built. Run from source by tsx, every function that is made is given its name once
 * more, which takes a third of the time of a small block.
 */
const OUT = 'node_modules/.piecewright/bench';

await build({
  configFile: false,
  logLevel: 'error',
  ssr: { noExternal: true },
  build: { ssr: 'bench/measure.ts', target: 'node20', outDir: OUT, emptyOutDir: true, rolldownOptions: { output: { entryFileNames: 'measure.mjs' } } },
});
await import(pathToFileURL(`${OUT}/measure.mjs`).href);
await painting();
await recolouring();
await cloths();

/** Each by itself, so that the memory is its own. */
for (const bench of ['from-a-stroke', 'publishing', 'photos']) {
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr: `bench/${bench}.ts`, target: 'node20', outDir: OUT, emptyOutDir: false, rolldownOptions: { output: { entryFileNames: `${bench}.mjs` } } },
  });
  spawnSync(process.execPath, [`${OUT}/${bench}.mjs`], { stdio: 'inherit' });
}
