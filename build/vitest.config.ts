import path from 'node:path';
import { defineConfig } from 'vitest/config';

const only = (folders: string) => [`tests/${folders}/**/*.test.ts`];

export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    // Every core takes a file: left to itself the runner keeps one back, half of a small machine.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'core',
          environment: 'node',
          include: only('{bench,core,electron,file,hostile,mutation,renderer,walls}'),
          testTimeout: 120_000,
        },
      },
      {
        test: {
          name: 'app',
          environment: 'node',
          include: only('{cli,app}'),
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // A busy machine may take its time; a thing that comes is not late.
          expect: { poll: { timeout: 30_000 } },
          // The built main module is loaded as Node loads it, so that the stand-in can take Electron's place.
          server: { deps: { external: [/dist\/electron\//] } },
        },
      },
    ],
  },
});
