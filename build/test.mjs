// npm test: type check, lint, build and every test. The last line printed is `N passed, N failed`.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const report = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-test-')), 'report.json');
const bin = (place) => path.join(root, 'node_modules', place);
const steps = [
  ...['core', 'core/cli', 'electron', 'renderer', 'tests'].map((place) => [`type check ${place}`, bin('typescript/bin/tsc'), '-p', place]),
  ['lint', bin('@biomejs/biome/bin/biome'), 'check', '--config-path=build/lint.json', '.'],
  ['build', bin('vite/bin/vite.js'), 'build', '--config', 'build/vite.config.ts', '--logLevel', 'warn'],
  [
    'tests',
    bin('vitest/vitest.mjs'),
    'run',
    '--config',
    'build/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ],
];

let failedSteps = 0;
for (const [name, ...call] of steps) {
  const step = spawnSync(process.execPath, call, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  if (step.status === 0) continue;
  console.log(`${name}: failed`);
  failedSteps += 1;
}

const counts = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : { numPassedTests: 0, numFailedTests: 0 };
const unrun = (counts.numPendingTests ?? 0) + (counts.numTodoTests ?? 0);
if (unrun > 0) console.log(`${unrun} tests were skipped: a skipped test counts as failed`);
// A failed test already fails its step, so that step is not counted twice.
const failed = counts.numFailedTests > 0 ? counts.numFailedTests + failedSteps - 1 + unrun : failedSteps + unrun;
console.log(`${counts.numPassedTests} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
