import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { serve } from '../../../build/serve.mjs';

const ROOT = path.resolve(import.meta.dirname, '../..');
const BUILT = path.join(ROOT, 'dist/renderer');
const PAGES = path.join(ROOT, 'dist/bench/pages');

/** Serves the built window, and beside it a page with the same head whose script does nothing but say that it ran. */
export async function servePages(): Promise<{ readonly app: string; readonly empty: string }> {
  rmSync(PAGES, { recursive: true, force: true });
  mkdirSync(PAGES, { recursive: true });
  cpSync(BUILT, PAGES, { recursive: true });
  const page = readFileSync(path.join(BUILT, 'index.html'), 'utf8');
  const withoutScripts = page.replace(/<script[^>]*><\/script>|<link rel="modulepreload"[^>]*>/g, '');
  writeFileSync(
    path.join(PAGES, 'empty.html'),
    withoutScripts.replace('</head>', '<script type="module" src="./empty.js"></script></head>'),
  );
  writeFileSync(path.join(PAGES, 'empty.js'), "document.getElementById('app').dataset.rank = '1';\n");
  const address: string = await serve(PAGES, 0);
  return { app: address, empty: `${address}empty.html` };
}

/** Bytes of every script of the built window. */
export function scriptBytes(): number {
  return readdirSync(BUILT, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.js'))
    .reduce((sum, name) => sum + statSync(path.join(BUILT, name)).size, 0);
}
