import type { ViteUserConfig } from 'vitest/config';
import shared from '../vitest.config.js';

/** Checks of the built package: run `npm run build` first. */
const config: ViteUserConfig = {
  ...shared,
  test: { ...shared.test, include: ['tests/package/**/*.check.ts'], globalSetup: 'tests/package/setup.ts', testTimeout: 120_000, hookTimeout: 120_000 },
};

export default config;
