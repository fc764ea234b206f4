import { readFileSync } from 'node:fs';
import { defineConfig, type Plugin } from 'vitest/config';
import { compileAll, compiledSources } from './bin/compile-search.js';

/** As the build does: compiled where its sources have changed, and its bytes stand where it is imported. */
const wasmInlined: Plugin = {
  name: 'wasm-inlined',
  enforce: 'pre',
  buildStart: compileAll,
  async load(file) {
    if (!file.endsWith('.wasm')) return undefined;
    await compileAll();
    for (const source of compiledSources()) this.addWatchFile(source);
    return `export default Uint8Array.from(atob('${readFileSync(file, 'base64')}'), (byte) => byte.charCodeAt(0));`;
  },
};

/** So too the parts of a page that stand in files of their own. */
const textInlined = {
  name: 'text-inlined',
  enforce: 'pre' as const,
  load: (file: string) =>
    file.endsWith('.html') || file.endsWith('.client.js')
      ? `export default ${JSON.stringify(readFileSync(file, 'utf8'))};`
      : undefined,
};

export default defineConfig({
  plugins: [wasmInlined, textInlined],
  test: {
    include: ['tests/**/*.test.ts'],
    // Two threads, each with its modules loaded once and not once a file.
    pool: 'threads',
    maxWorkers: 2,
    isolate: false,
    setupFiles: ['tests/seed.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
