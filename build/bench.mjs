// npm run bench: bundles tests/bench for Node and runs it there; --window drives the built window in a browser instead.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build, createBuilder } from 'vite';

const root = path.resolve(import.meta.dirname, '..');
const args = process.argv.slice(2);
const inWindow = args.includes('--window');

if (inWindow) {
  const builder = await createBuilder({ configFile: path.join(root, 'build/vite.config.ts'), logLevel: 'warn' });
  await builder.build(builder.environments.client);
}
await build({
  configFile: false,
  root,
  logLevel: 'warn',
  publicDir: false,
  // The browser's driver and the solver find their own files beside their packages.
  ssr: { noExternal: true, external: ['playwright-core', 'highs'] },
  build: {
    ssr: inWindow ? 'tests/bench/window/main.ts' : 'tests/bench/main.ts',
    outDir: 'dist/bench',
    emptyOutDir: false,
    target: 'node20',
    minify: false,
    rolldownOptions: { output: { entryFileNames: inWindow ? 'window.js' : 'bench.js', codeSplitting: false } },
  },
});
// Memory is weighed after a collection, which Node offers only when asked.
const script = path.join(root, 'dist/bench', inWindow ? 'window.js' : 'bench.js');
const run = spawnSync(process.execPath, ['--expose-gc', script, ...args.filter((arg) => arg !== '--window')], {
  cwd: root,
  stdio: 'inherit',
});
process.exit(run.status ?? 1);
