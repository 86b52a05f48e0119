import { defineConfig } from 'vitest/config';

const report = process.env.WHYDARK_TEST_REPORT;

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/setup/build.ts'],
    pool: 'forks',
    testTimeout: 30_000,
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
  },
});
