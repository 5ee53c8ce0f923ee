// npm run icons: renders the drawings in build/icons with the browser of the tests, and writes the icons of the installers.
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { runnerImport } from 'vite';

const root = path.resolve(import.meta.dirname, '..');
const load = async (place) => (await runnerImport(path.join(root, place), { configFile: false, root })).module;
const { iconFiles } = await load('build/icons.ts');
const { startBrowser } = await load('tests/app/browser.ts');

const browser = await startBrowser();
try {
  for (const [place, content] of await iconFiles(browser)) {
    mkdirSync(path.dirname(path.join(root, place)), { recursive: true });
    writeFileSync(path.join(root, place), content);
    console.log(`${place}: ${content.length} bytes`);
  }
} finally {
  await browser.close();
}
