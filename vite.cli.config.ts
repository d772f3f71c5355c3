import { chmod } from 'node:fs/promises';
import { join } from 'node:path';
import { defineConfig, type Plugin } from 'vite';

const SHEBANG = '#!/usr/bin/env node\n';

/** @returns a plugin that makes the entry a program one can start by its name: one shebang line, allowed to run */
function runnable(): Plugin {
  return {
    name: 'runnable',
    generateBundle(_, files) {
      for (const file of Object.values(files)) {
        if (file.type === 'chunk' && file.isEntry) file.code = SHEBANG + file.code.replace(/^#!.*\n/, '');
      }
    },
    async writeBundle({ dir }, files) {
      for (const file of Object.values(files)) {
        if (file.type === 'chunk' && file.isEntry && dir !== undefined) await chmod(join(dir, file.fileName), 0o755);
      }
    },
  };
}

/** Builds the command line, the package's `bin`. Packages stay outside the bundle: npm installs them beside it. */
export default defineConfig({
  plugins: [runnable()],
  build: {
    ssr: 'src/cli/main.ts',
    target: 'node20',
    outDir: 'dist-cli',
    rolldownOptions: { output: { entryFileNames: 'piecewright.js' } },
  },
});
