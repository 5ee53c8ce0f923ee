import path from 'node:path';
import { defineConfig } from 'vitest/config';

const only = (folders: string) => [`tests/${folders}/**/*.test.ts`];

export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    projects: [
      { test: { name: 'core', environment: 'node', include: only('{core,file,walls,sources}'), testTimeout: 120_000 } },
      { test: { name: 'app', environment: 'node', include: only('{cli,app}'), testTimeout: 120_000, hookTimeout: 120_000 } },
    ],
  },
});
