import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/src/fail-on-console.ts', './tests/support/seed.ts'],
    // node itself runs the tests, as it runs the service: one module graph, and no second reading of TypeScript
    experimental: { viteModuleRunner: false, nodeLoader: false },
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 60_000, // ms; properties take their time on a small machine
  },
});
