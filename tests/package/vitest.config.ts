import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Checks of the built package: run `npm run build` first. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: { include: ['tests/package/**/*.check.ts'], globalSetup: 'tests/package/setup.ts', testTimeout: 120_000, hookTimeout: 120_000 },
});
