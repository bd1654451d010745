import shared from '../vitest.config.js';

/** Checks of the built package: run `npm run build` first. */
export default {
  ...shared,
  test: { ...shared.test, include: ['tests/package/**/*.check.ts'], globalSetup: 'tests/package/setup.ts', testTimeout: 120_000, hookTimeout: 120_000 },
};
