import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';

/** As the build's bundler does: a compiled file's bytes stand where it is imported. */
const wasmInlined = {
  name: 'wasm-inlined',
  enforce: 'pre' as const,
  load: (file: string) =>
    file.endsWith('.wasm')
      ? `export default Uint8Array.from(atob('${readFileSync(file, 'base64')}'), (byte) => byte.charCodeAt(0));`
      : undefined,
};

export default defineConfig({
  plugins: [wasmInlined],
  test: {
    include: ['tests/**/*.test.ts'],
    // One process, modules loaded once: forty files in a second and a half instead of twelve.
    pool: 'threads',
    isolate: false,
    setupFiles: ['tests/seed.ts'],
    testTimeout: 120_000,
  },
});
