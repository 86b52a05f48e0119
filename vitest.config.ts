import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { LongFirst } from './test/setup/long-first.js';
import { OutsideChecks } from './test/setup/outside-checks.js';

const report = process.env.WHYDARK_TEST_REPORT;
const always = ['default' as const, new OutsideChecks()];

/** What counts its own loads, replaces a module for itself, or measures. */
const ALONE = [
  'test/cli/prompts/pasted-text.test.ts',
  'test/files/lock-race.test.ts',
  'test/files/record-order.test.ts',
  'test/findings/derive-facts.test.ts',
];

export default defineConfig({
  test: {
    globalSetup: ['test/setup/build.ts'],
    setupFiles: ['test/setup/seed.ts'],
    pool: 'forks',
    // Twice as many as there are cores: what waits for a browser or a network leaves its core idle.
    maxWorkers: availableParallelism() * 2,
    // Ends what hangs, and nothing else: a machine may be three times as slow as another, and busy.
    testTimeout: 120_000,
    sequence: { sequencer: LongFirst },
    // Most files leave nothing behind, so that they share what they load: to load it for each took a quarter of the time.
    projects: [
      {
        extends: true,
        test: { name: 'shared', isolate: false, include: ['test/**/*.test.ts'], exclude: ALONE },
      },
      // After the others, for what measures beside them measures them as well.
      { extends: true, test: { name: 'alone', include: ALONE, sequence: { groupOrder: 1 } } },
    ],
    reporters: report ? [...always, ['json', { outputFile: report }]] : always,
  },
});
