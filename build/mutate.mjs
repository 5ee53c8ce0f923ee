// npm run mutate: bundles tests/mutation for Node and runs it there.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'vite';

const root = path.resolve(import.meta.dirname, '..');

await build({
  configFile: false,
  root,
  logLevel: 'warn',
  publicDir: false,
  // The tests bring these with them as they are; what is set on them here must be set on theirs.
  ssr: { noExternal: true, external: ['vite', 'vitest', 'fast-check'] },
  build: {
    ssr: 'tests/mutation/main.ts',
    outDir: 'dist/mutation',
    emptyOutDir: false,
    target: 'node20',
    minify: false,
    rolldownOptions: { output: { entryFileNames: 'mutate.js', codeSplitting: false } },
  },
});
const run = spawnSync(process.execPath, [path.join(root, 'dist/mutation/mutate.js'), ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
});
process.exit(run.status ?? 1);
