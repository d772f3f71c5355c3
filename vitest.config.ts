import { defineConfig } from 'vitest/config';

/** Tests of processor time and of long tasks, beside which nothing else may run. */
const ALONE = 'tests/e2e/never-waits.test.ts';

/** Files of one worker share what they import: modules hold nothing that a test changes, and compiled code stays warm. */
const together = { isolate: false };

/** What all tests in a browser have in common. */
const inBrowser = {
  ...together,
  globalSetup: ['tests/e2e/serve.ts'],
  // A browser on a loaded machine may stumble once; what fails twice is a fault. Vitest marks what was tried again.
  retry: 1,
  testTimeout: 120_000,
  hookTimeout: 120_000,
};

export default defineConfig({
  test: {
    // Left to itself vitest keeps one processor free, which on a machine of two is half of it.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'engine',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/e2e/**'],
          ...together,
          globalSetup: ['tests/cli/built.ts'],
          // Wide enough for a slow machine: no test is about time.
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'app',
          include: ['tests/e2e/**/*.test.ts'],
          exclude: [ALONE],
          ...inBrowser,
        },
      },
      {
        test: {
          name: 'alone',
          include: [ALONE],
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          ...inBrowser,
        },
      },
    ],
  },
});
