import { configDefaults, defineConfig } from 'vitest/config';

const BROWSER = 'tests/browser/**/*.test.ts';

export default defineConfig({
  test: {
    testTimeout: 180_000,
    hookTimeout: 240_000,
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: 'all',
          include: ['tests/**/*.test.ts'],
          exclude: [...configDefaults.exclude, BROWSER],
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: [BROWSER],
          // One at a time and after the rest: a browser that listens does so in real time.
          maxWorkers: 1,
          testTimeout: 400_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
