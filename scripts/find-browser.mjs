import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { homedir, tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { installFromDebian } from './debian.mjs';

/**
 * What a browser is started with: nothing of its own over the network, and no sandbox, which neither root nor
 * most containers can have; the only page it opens is ours.
 */
export const BROWSER_FLAGS = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--no-sandbox',
];

/**
 * Starts a browser once, lets it compute a product in a page, and sees whether the answer comes back.
 * A file with a browser's name may be a stub, or lack its libraries.
 * @param {string} executable
 * @returns {Promise<boolean>}
 */
export function reallyRuns(executable) {
  const profile = mkdtempSync(join(tmpdir(), 'piecewright-browser-'));
  const page = 'data:text/html,<script>document.write(137*911)</script>';
  const flags = [...BROWSER_FLAGS, '--headless', '--disable-gpu', '--disable-dev-shm-usage', `--user-data-dir=${profile}`];
  const posix = process.platform !== 'win32';
  return new Promise((resolve) => {
    let output = '';
    const browser = spawn(executable, [...flags, '--dump-dom', page], { stdio: ['ignore', 'pipe', 'ignore'], detached: posix });
    const finish = () => {
      clearTimeout(patience);
      try {
        // Its own process group: a browser that hangs leaves children behind.
        process.kill(posix ? -browser.pid : browser.pid, 'SIGKILL');
      } catch {
        // It has ended by itself.
      }
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
      resolve(output.includes(String(137 * 911)));
    };
    const patience = setTimeout(finish, 60_000);
    browser.stdout.on('data', (chunk) => (output += chunk));
    browser.on('error', finish);
    browser.on('close', finish);
  });
}

/** @returns {string[]} files with a browser's name on PATH and in the usual places, likeliest first */
function installedBrowsers() {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'microsoft-edge', 'brave-browser'];
  const ending = process.platform === 'win32' ? '.exe' : '';
  const onPath = (process.env.PATH || '').split(delimiter).filter(Boolean);
  const places = names.flatMap((name) => onPath.map((folder) => join(folder, name + ending)));
  const usual = {
    linux: ['/usr/bin/chromium', '/usr/lib/chromium/chromium', '/opt/google/chrome/chrome', '/snap/bin/chromium'],
    darwin: ['/Applications', join(homedir(), 'Applications')].flatMap((folder) =>
      ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((name) => `${folder}/${name}.app/Contents/MacOS/${name}`),
    ),
    win32: [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA]
      .filter(Boolean)
      .flatMap((folder) => [
        `${folder}\\Google\\Chrome\\Application\\chrome.exe`,
        `${folder}\\Chromium\\Application\\chrome.exe`,
        `${folder}\\Microsoft\\Edge\\Application\\msedge.exe`,
      ]),
  };
  const found = [...places, ...(usual[process.platform] || [])].filter((file) => existsSync(file));
  // /bin is often a link to /usr/bin: try each file once.
  return found.filter((file, i) => found.findIndex((other) => realpathSync(other) === realpathSync(file)) === i);
}

/** @returns {string[]} the browser that Playwright has downloaded for itself, if it has */
function playwrightsOwn(root) {
  const playwright = createRequire(join(root, 'package.json'))('playwright');
  return [playwright.chromium.executablePath()].filter((file) => existsSync(file));
}

/** Downloads Playwright's own Chromium into the user's cache; touches no system package. */
function installFromPlaywright(root) {
  console.error("No browser found for the end-to-end tests: downloading Playwright's Chromium, which takes a while.");
  const cli = join(root, 'node_modules', 'playwright', 'cli.js');
  // It reports a failure as stack traces; the person gets our own sentence instead.
  spawnSync(process.execPath, [cli, 'install', 'chromium'], { cwd: root, stdio: 'ignore' });
}

/**
 * Finds a Chromium-family browser that really runs, installing one where none does.
 * @param {string} root folder of package.json, its packages installed
 * @returns {Promise<{ executable: string } | { sentence: string }>} a sentence for the person where there is none
 */
export async function findBrowser(root) {
  const chosen = process.env.PIECEWRIGHT_BROWSER;
  if (chosen) {
    if (await reallyRuns(chosen)) return { executable: chosen };
    return { sentence: `PIECEWRIGHT_BROWSER is ${chosen}, which does not start: give it the path of a Chromium or Chrome, or unset it.` };
  }
  const ways = [
    installedBrowsers,
    () => playwrightsOwn(root),
    () => (installFromDebian('chromium', 'No browser found for the end-to-end tests: installing Chromium with apt-get.'), installedBrowsers()),
    () => (installFromPlaywright(root), playwrightsOwn(root)),
  ];
  const refused = new Set();
  for (const way of ways) {
    for (const executable of way()) {
      if (await reallyRuns(executable)) return { executable };
      refused.add(executable);
    }
  }
  const tried = refused.size > 0 ? ` (${[...refused].join(', ')} did not start)` : '';
  return {
    sentence:
      `The end-to-end tests need a browser and none could be found or installed${tried}: ` +
      'install Chromium or Chrome, or set PIECEWRIGHT_BROWSER to its path, and run npm test again.',
  };
}
