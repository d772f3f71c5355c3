/*
 * Gets a checkout ready, with nothing but Node itself.
 *   node scripts/setup.mjs deps   the packages
 *   node scripts/setup.mjs all    the packages, a browser for the end-to-end tests, and poppler, which reads what is written as PDF
 * It is called inside `npm start` and `npm test`, not before them: whoever has switched scripts off
 * in npm (ignore-scripts) never gets a `prestart`.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { BROWSER_FLAGS, findBrowser } from './find-browser.mjs';
import { findPoppler } from './find-poppler.mjs';
import { nodeFits, saidInWords } from './node-version.mjs';
import { installPackages, packagesAgree } from './packages.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const what = process.argv[2];

function stop(sentence, code = 1) {
  console.error(sentence);
  process.exit(code);
}

if (what !== 'deps' && what !== 'all') stop('Say what to set up: node scripts/setup.mjs deps, or node scripts/setup.mjs all.', 2);

const promised = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).engines.node;
if (!nodeFits(process.versions.node, promised)) {
  stop(
    `Piecewright runs on Node ${saidInWords(promised)}; this is ${process.versions.node}. Install another from nodejs.org and try again.`,
  );
}

if (!packagesAgree(root)) {
  console.error('Installing the packages…');
  if (!installPackages(root))
    stop('The packages could not be installed: see what npm says above (most often the network is away), then try again.');
}

if (what === 'all') {
  const found = await findBrowser(root);
  if ('sentence' in found) stop(found.sentence);
  const folder = join(root, 'node_modules', '.piecewright');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'browser.json'), JSON.stringify({ executable: found.executable, flags: BROWSER_FLAGS }, null, 2) + '\n');
  if (!findPoppler()) console.error('Poppler is not there: PDF files are read by one program less. Its package is called poppler-utils, or poppler.');
}
