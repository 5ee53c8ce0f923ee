import path from 'node:path';
import { defineConfig } from 'vitest/config';

// npm run test:electron: the journeys in Electron itself, one window after the other.
export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    include: ['tests/desktop/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 30_000 } },
  },
});
