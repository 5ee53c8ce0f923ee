import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

// What is counted are bytes of JavaScript as they lie in dist/renderer, before any compression.

const ROOT = path.resolve(import.meta.dirname, '../../dist/renderer');
const ASSETS = path.join(ROOT, 'assets');
const scripts = readdirSync(ASSETS).filter((name) => name.endsWith('.js'));
const bytes = (names: Iterable<string>): number => [...names].reduce((sum, name) => sum + statSync(path.join(ASSETS, name)).size, 0);

/** `import ... from"./x.js"`, `import"./x.js"` and `export ... from"./x.js"` at the top of a file; `import("./x.js")` comes later. */
const STATIC = /\b(?:import|export)\s*(?:[\w$*{][^"';()]*?\bfrom\s*)?["']\.\/([^"']+\.js)["']/g;
/** All that a file names in any way: static and later imports, workers, files to preload. */
const NAMED = /([\w$.-]+-[\w-]{8}\.js)\b/g;

const found = (pattern: RegExp, text: string): readonly string[] => [...text.matchAll(pattern)].flatMap(([, name]) => name ?? []);

/** The files reached from some of them. */
function reached(from: readonly string[], pattern: RegExp): ReadonlySet<string> {
  const seen = new Set<string>();
  const follow = (name: string) => {
    if (seen.has(name) || !existsSync(path.join(ASSETS, name))) return;
    seen.add(name);
    for (const next of found(pattern, readFileSync(path.join(ASSETS, name), 'utf8'))) follow(next);
  };
  from.forEach(follow);
  return seen;
}

const page = readFileSync(path.join(ROOT, 'index.html'), 'utf8');
const starts = found(/<script[^>]* src="\.\/assets\/([^"]+)"/g, page);
const partsNamed = (name: RegExp): readonly string[] => scripts.filter((script) => name.test(script));
/** What it imports once it knows which language it speaks belongs to it, and so with the workers. */
const window = reached([...starts, ...partsNamed(/^start-/)], STATIC);
/** The one that knows the reach starts with its page. */
const workers = reached(partsNamed(/^(solver|tries)(\.worker|Jobs)-/), STATIC);

test('the page starts with one file; all that the first view takes is what the page preloads, and the workers share core with it', () => {
  expect(starts).toHaveLength(1);
  const preloaded = found(/<link rel="modulepreload"[^>]* href="\.\/assets\/([^"]+)"/g, page);
  expect([...window].sort()).toEqual([...starts, ...preloaded].sort());
  expect(workers.size).toBeGreaterThan(1);
  expect([...workers].filter((name) => window.has(name)).length).toBeGreaterThan(0);
});

test('no script lies there that nothing asks for', () => {
  expect([...reached(starts, NAMED)].sort()).toEqual(scripts.sort());
});

test.each([
  ['the window with the list of options: the script of index.html, what it starts, and their static imports', 250_000, window],
  [
    'the same with both workers, the one that searches and the one that tries ratios, and their static imports',
    290_000,
    new Set([...window, ...workers]),
  ],
  ['every script that is built, with all pages and what is fetched when it is wanted', 1_100_000, new Set(scripts)],
])('%s is no more than %i bytes', (_what, most, names) => {
  expect(bytes(names)).toBeLessThanOrEqual(most);
});
