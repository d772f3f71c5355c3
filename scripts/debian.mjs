import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const isRoot = typeof process.getuid === 'function' && process.getuid() === 0;

/**
 * Installs a package of Debian and its relatives, where this may be done without a password; elsewhere does nothing.
 * @param {string} name
 * @param {string} why a sentence for the person who waits
 */
export function installFromDebian(name, why) {
  if (process.platform !== 'linux' || !existsSync('/usr/bin/apt-get')) return;
  const asRoot = isRoot ? [] : ['sudo', '-n'];
  if (!isRoot && spawnSync('sudo', ['-n', 'true']).status !== 0) return;
  console.error(why);
  const quietly = { stdio: ['ignore', 2, 2], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  const run = (...words) => spawnSync([...asRoot, ...words][0], [...asRoot, ...words].slice(1), quietly);
  run('apt-get', 'update', '-qq');
  run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', name);
}
