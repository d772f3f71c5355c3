import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Tells whether node_modules holds what package-lock.json asks for, by npm's own record of what it installed.
 * Packages for other machines (optional ones) may be missing.
 * @param {string} root folder of package.json
 * @returns {boolean}
 */
export function packagesAgree(root) {
  const asked = lockedPackages(join(root, 'package-lock.json'));
  const held = lockedPackages(join(root, 'node_modules', '.package-lock.json'));
  if (asked === null || held === null) return false;
  return Object.entries(asked).every(([place, wanted]) => {
    if (place === '') return true;
    const found = held[place];
    return found ? found.version === wanted.version && found.integrity === wanted.integrity : wanted.optional === true;
  });
}

/**
 * Installs exactly what package-lock.json asks for, running no package's own scripts.
 * @param {string} root folder of package.json
 * @returns {boolean} whether npm managed it
 */
export function installPackages(root) {
  const asked = ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];
  // What npm says goes to stderr: stdout belongs to whatever runs after the set-up.
  const how = { cwd: root, stdio: ['ignore', 2, 2] };
  const npm = process.env.npm_execpath || '';
  const run = /npm-cli\.c?js$/.test(npm)
    ? spawnSync(process.execPath, [npm, ...asked], how)
    : spawnSync('npm', asked, { ...how, shell: process.platform === 'win32' });
  return run.status === 0;
}

/** @returns {Record<string, { version?: string, integrity?: string, optional?: boolean }> | null} null where there is no such file */
function lockedPackages(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return null;
  }
}
