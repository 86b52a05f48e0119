import { defineConfig } from 'vitest/config';
import { LongFirst } from './test/setup/long-first.js';
import { OutsideChecks } from './test/setup/outside-checks.js';

const report = process.env.WHYDARK_TEST_REPORT;
const always = ['default' as const, new OutsideChecks()];

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/setup/build.ts'],
    setupFiles: ['test/setup/seed.ts'],
    pool: 'forks',
    // Else one core of two stands idle for half of the time.
    maxWorkers: '100%',
    testTimeout: 30_000,
    sequence: { sequencer: LongFirst },
    reporters: report ? [...always, ['json', { outputFile: report }]] : always,
  },
});
