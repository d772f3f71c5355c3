import { execFileSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, such as "http://127.0.0.1:4273/". */
    address: string;
  }
}

/**
 * Builds the app as it stands now into a folder of its own and serves it while the end-to-end tests run.
 * @returns what takes the server and the folder away again
 */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  const outDir = await mkdtemp(join(tmpdir(), 'piecewright-app-'));
  const configFile = 'vite.config.ts';
  // In a process of its own: vitest sets NODE_ENV to "test", and React would be built for developers.
  const words = ['node_modules/vite/bin/vite.js', 'build', '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'];
  execFileSync(process.execPath, words, { env: { ...process.env, NODE_ENV: 'production' }, stdio: ['ignore', 'inherit', 'inherit'] });
  const server = await preview({
    configFile,
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 4273, strictPort: false },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('the built app is served nowhere');
  project.provide('address', address);
  return async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
}
