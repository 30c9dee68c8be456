import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [react()],
  test: {
    // a journey waits more than it works: two at a time also on the smallest machine
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'trade',
          include: [
            'packages/**/*.test.ts',
            'apps/**/*.test.{ts,tsx}',
            'checks/**/*.test.ts',
            'scripts/**/*.test.ts',
            'bench/**/*.test.ts',
            'examples/**/*.test.ts',
          ],
          exclude: ['**/e2e/**', '**/node_modules/**', '**/dist/**'],
          setupFiles: ['scripts/property-seed.ts'],
          // the packages keep nothing of their own between questions: one load of them serves many files
          isolate: false,
          // an end for what hangs, no measure of speed: a busy machine takes five times as long as a quiet one
          testTimeout: 180_000,
        },
      },
      {
        test: {
          name: 'journeys',
          include: ['apps/web/e2e/**/*.test.ts'],
          globalSetup: ['apps/web/e2e/served-app.ts'],
          testTimeout: 180_000,
          hookTimeout: 180_000,
          // what is on a screen is waited for, as a person would: the machine may be busy
          expect: { poll: { timeout: 20_000, interval: 100 } },
          // a second try is told in the report beside the journey's name
          retry: 1,
        },
      },
    ],
  },
});
