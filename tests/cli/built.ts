import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** The command line as it is installed: a file that node runs. */
    program: string;
  }
}

/**
 * Builds the command line as it stands now into a folder of its own, from where it finds its packages, for as long as
 * the tests run: built, it starts in a quarter of the time that it takes from source.
 * @returns what takes the folder away again
 */
export default function built(project: TestProject): () => void {
  const root = join(import.meta.dirname, '..', '..');
  const kept = join(root, 'node_modules', '.piecewright');
  mkdirSync(kept, { recursive: true });
  const outDir = mkdtempSync(join(kept, 'program-'));
  const words = ['node_modules/vite/bin/vite.js', 'build', '--config', 'vite.cli.config.ts', '--outDir', outDir, '--logLevel', 'warn'];
  execFileSync(process.execPath, words, {
    cwd: root,
    env: { ...process.env, NODE_ENV: 'production' },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  project.provide('program', join(outDir, 'piecewright.js'));
  return () => rmSync(outDir, { recursive: true, force: true });
}
