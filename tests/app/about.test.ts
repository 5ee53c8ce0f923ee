import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { createBuilder } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Written, withTexts } from '../../renderer/src/views/about/licences.ts';
import { launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';

const ROOT = path.resolve(import.meta.dirname, '../..');
const read = (place: string): string => readFileSync(path.join(ROOT, place), 'utf8');
const licences = withTexts(JSON.parse(read('dist/renderer/licences.json')) as Written);
const names = licences.packages.map(({ name }) => name);

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

/** What the code of an environment was made of, by its source maps: a second way to the same list. */
async function sourcesOf(environment: string): Promise<readonly string[]> {
  const build = { write: false, sourcemap: true } as const;
  const builder = await createBuilder({
    configFile: path.join(ROOT, 'build/vite.config.ts'),
    logLevel: 'error',
    environments: { [environment]: { build } },
  });
  const found = builder.environments[environment];
  if (found === undefined) throw new RangeError(`the build has no ${environment}`);
  const outputs = [await builder.build(found)].flat().flatMap((one) => ('output' in one ? one.output : []));
  return outputs.flatMap((one) => (one.type === 'chunk' ? (one.map?.sources ?? []) : []));
}

const TOOLS: readonly (readonly [RegExp, string])[] = [
  [/\0?vite\//, 'vite'],
  [/\0?rolldown\//, 'rolldown'],
  [/node_modules\/(?!.*node_modules\/)((?:@[^/]+\/)?[^/]+)/, '$1'],
];

test('the list names every package of which code or fonts go along, in the version that is installed, with the text of its licence', async () => {
  const sources = await sourcesOf('client');
  const inCode = sources.flatMap((source) =>
    TOOLS.flatMap(([pattern, name]) => {
      const [, found = name] = pattern.exec(source) ?? [null, null];
      return found === null ? [] : found;
    }),
  );
  expect(new Set(inCode).size).toBeGreaterThan(3);
  expect([...new Set(inCode)].filter((name) => !names.includes(name))).toEqual([]);
  // What the program depends on goes along, and of the rest only what the tools put in.
  const { dependencies, devDependencies, version } = JSON.parse(read('package.json'));
  const own = Object.keys(dependencies);
  expect(own.filter((name) => !names.includes(name))).toEqual([]);
  const reached = new Set(['vite', 'rolldown', ...own]);
  for (const name of reached) {
    if (!names.includes(name) || name === 'vite' || name === 'rolldown') continue;
    const { dependencies: next = {} } = JSON.parse(read(`node_modules/${name}/package.json`));
    for (const one of Object.keys(next)) reached.add(one);
  }
  expect(names.filter((name) => !reached.has(name))).toEqual([]);
  expect([licences.version, licences.electron, licences.text]).toEqual([
    version,
    devDependencies.electron,
    read('build/LICENSE.txt').trim(),
  ]);
  for (const one of licences.packages) {
    const installed = JSON.parse(read(`node_modules/${one.name}/package.json`));
    expect([one.name, one.version, one.licence]).toEqual([installed.name, installed.version, installed.license]);
    expect(one.text, one.name).toMatch(/Permission is hereby granted|SIL Open Font License|Apache License/i);
    expect(one.text.length, one.name).toBeLessThan(40_000);
  }
  const fonts = readdirSync(path.join(ROOT, 'dist/renderer/assets')).filter((name) => name.endsWith('.woff2'));
  expect(fonts.length).toBeGreaterThan(0);
  expect(fonts.filter((name) => !name.startsWith('source-sans-3-'))).toEqual([]);
});

test('main and preload hold no package at all', async () => {
  for (const environment of ['main', 'preload']) {
    const sources = await sourcesOf(environment);
    expect(sources.length, environment).toBeGreaterThan(0);
    expect(
      sources.filter((source) => source.includes('node_modules')),
      environment,
    ).toEqual([]);
  }
});

test('About shows version and licences in their full text, closes by key, and gives the place back to where the cursor was', async () => {
  const app = await launch(browser);
  try {
    const { page } = app;
    const button = page.getByRole('button', { name: 'About and licences' });
    await button.focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog', { name: `Ratiowright ${licences.version}` });
    await dialog.waitFor();
    for (const { name, version, licence } of licences.packages)
      expect(await dialog.getByText(`${name} ${version} · ${licence}`).count(), name).toBe(1);
    const text = dialog.getByText('Copyright (c) 2026 The Ratiowright team');
    expect(await text.isVisible()).toBe(false);
    await dialog.getByText('Ratiowright · MIT').click();
    expect(await text.isVisible()).toBe(true);
    expect(await dialog.getByText(`Electron ${licences.electron}`).count()).toBe(1);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
    await expect.poll(() => button.evaluate((node) => node === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  } finally {
    await app.close();
  }
});

test.each(['light', 'dark'] as const)('%s: axe-core finds nothing in About, and at 320 px nothing is cut off', async (colorScheme) => {
  const app = await launch(browser);
  try {
    const { page } = app;
    await page.emulateMedia({ colorScheme });
    await page.getByRole('button', { name: 'About and licences' }).click();
    await page.getByRole('dialog').waitFor();
    for (const line of await page.locator('dialog.about summary').all()) await line.click();
    await page.evaluate(axe.source);
    const found = await page.evaluate(async () => {
      const runner = (window as unknown as { axe: typeof axe }).axe;
      return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
    });
    expect(found).toEqual([]);
    await page.setViewportSize({ width: 320, height: 700 });
    const beyond = () =>
      page.locator('dialog.about *').evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().right > 320).length);
    await expect.poll(beyond).toBe(0);
  } finally {
    await app.close();
  }
});
