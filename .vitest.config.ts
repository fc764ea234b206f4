import { readFileSync } from 'node:fs';
import { defineConfig, type Plugin } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
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

/**
 * What starts programs goes first, as a start copies the page table of all that the tests hold by then (7 ms with
 * 60 MB, 115 ms with 1.3 GB), and what takes longest next: begun last it would hold up the end with one thread idle.
 */
class StartsThenLongest extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const first = [
      /tests.(cli|compare|hostile|screen)./,
      /tests.properties.gowns/,
      /tests.outside.examples/,
      /slips|every-finding/,
    ];
    const place = ({ moduleId }: TestSpecification) =>
      [...first, /./].findIndex((names) => names.test(moduleId));
    return (await super.sort(files)).sort((one, other) => place(one) - place(other));
  }
}

export default defineConfig({
  plugins: [wasmInlined, textInlined],
  test: {
    include: ['tests/**/*.test.ts'],
    // Two threads, each with its modules loaded once and not once a file.
    pool: 'threads',
    maxWorkers: 2,
    isolate: false,
    sequence: { sequencer: StartsThenLongest },
    setupFiles: ['tests/seed.ts'],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
