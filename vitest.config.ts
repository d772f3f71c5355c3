import { defineConfig } from 'vitest/config';

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
          // Wide enough for a slow machine: no test is about time.
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'app',
          include: ['tests/e2e/**/*.test.ts'],
          globalSetup: ['tests/e2e/serve.ts'],
          fileParallelism: false,
          // A browser on a loaded machine may stumble once; what fails twice is a fault. Vitest marks what was tried again.
          retry: 1,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
