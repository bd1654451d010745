import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const report = process.env['TEST_REPORT'];

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/support/seed.ts'],
    // Speed is judged in bench/; here a busy machine only takes longer.
    testTimeout: 60_000,
    // .ci/run counts tests by a report; a person reads the screen.
    ...(report && { reporters: ['default', 'json'], outputFile: { json: report } }),
  },
});
