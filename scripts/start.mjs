/* Builds the app as it stands now and serves it to this machine alone, until Ctrl-C. */
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));

// Whatever the shell says: a build for developers is three times the size.
process.env.NODE_ENV = 'production';

try {
  await build({ root, logLevel: 'warn' });
  const server = await preview({ root, logLevel: 'warn', preview: { host: '127.0.0.1', port: 4173, strictPort: false } });
  console.log('Piecewright is ready; Ctrl-C ends it. Open this address in a browser:');
  console.log(server.resolvedUrls.local[0]);
} catch (problem) {
  console.error(`Piecewright could not be started: ${problem.message}`);
  process.exit(1);
}
