import { readFile } from 'node:fs/promises';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { parseBlock } from './src/files/block-file.ts';

/**
 * The development server needs inline scripts and a socket, which the page's Content-Security-Policy refuses.
 * @returns a plugin that leaves the policy out there, and only there: the built page keeps it word for word
 */
function withoutPolicyWhileDeveloping(): Plugin {
  return {
    name: 'without-policy-while-developing',
    apply: 'serve',
    transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
  };
}

/**
 * The sampler's blocks go through the door when the app is built, so that the first one is there before the door is loaded.
 * @returns a plugin by which `*.block.json?drawn` is the block in that file; a file with a fault fails the build
 */
function drawnBlocks(): Plugin {
  return {
    name: 'drawn-blocks',
    load: {
      filter: { id: /\.block\.json\?drawn$/ },
      async handler(id) {
        const file = id.slice(0, -'?drawn'.length);
        this.addWatchFile(file);
        const read = parseBlock(await readFile(file, 'utf8'));
        if (!read.ok) throw new Error(`${file}: ${read.problem.sentence}`);
        return { code: `export default ${JSON.stringify(read.value)};`, moduleType: 'js' };
      },
    },
  };
}

/**
 * The policy lets the page fetch no data, so that the face of printed pages comes as a script.
 * @returns a plugin by which `*.ttf?bytes` is the file as a Uint8Array
 */
function bytesOfFaces(): Plugin {
  return {
    name: 'bytes-of-faces',
    // Before the bundler makes an asset of it.
    enforce: 'pre',
    load: {
      filter: { id: /\.ttf\?bytes$/ },
      async handler(id) {
        const text = (await readFile(id.slice(0, -'?bytes'.length))).toString('base64');
        return { code: `export default Uint8Array.from(atob('${text}'), (sign) => sign.charCodeAt(0));`, moduleType: 'js' };
      },
    },
  };
}

/** What the bundler knows of a module, as far as it matters here. */
interface Modules {
  readonly getModuleInfo: (id: string) => { readonly importers: readonly string[]; readonly isEntry: boolean } | null;
}

/** @returns 'first' for every module that the page needs at once, so that it is one file; null for what is fetched later */
function withTheFirst(id: string, modules: Modules): 'first' | null {
  const seen = new Set<string>();
  const neededAtOnce = (module: string): boolean => {
    if (seen.has(module)) return false;
    seen.add(module);
    const info = modules.getModuleInfo(module);
    return info !== null && (info.isEntry || info.importers.some(neededAtOnce));
  };
  return neededAtOnce(id) ? 'first' : null;
}

export default defineConfig({
  // Relative, so that the built folder works from any path.
  base: './',
  plugins: [react(), withoutPolicyWhileDeveloping(), drawnBlocks(), bytesOfFaces()],
  worker: { format: 'es' },
  build: {
    target: 'baseline-widely-available',
    // The policy allows no data: address but for pictures, so every asset is a file.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // Left to itself the bundler cuts what the screens share into dozens of files.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: withTheFirst, debugName: 'first' }] } } },
    // What a first load weighs is measured, gzipped, by tests/e2e/door.test.ts.
    chunkSizeWarningLimit: 1000,
  },
});
