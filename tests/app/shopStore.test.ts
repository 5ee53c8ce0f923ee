import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import type { ShopFile } from '../../core/src/index.ts';
import type { ShopStore } from '../../renderer/src/state/shopStore.ts';
import { startBrowser } from './browser.ts';

// The store alone on an empty page: in Node the library of its signals has only a part that does not react.

declare global {
  interface Window {
    store: ShopStore;
  }
}

const ENTRY = path.resolve(import.meta.dirname, '../../renderer/src/state/shopStore.ts');
const DEMO: ShopFile = JSON.parse(readFileSync(path.resolve(import.meta.dirname, '../examples/demo.ratiowright'), 'utf8'));
let browser: Browser;
let page: Page;
let script: string;
beforeAll(async () => {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    build: { write: false, minify: false, lib: { entry: ENTRY, formats: ['iife'], name: 'made' } },
  });
  script = [built].flat().flatMap((one) => ('output' in one ? [one.output[0].code] : []))[0] ?? '';
  browser = await startBrowser();
});
afterAll(() => browser.close());
beforeEach(async () => {
  page = await browser.newPage({ locale: 'en-US' });
  await page.addScriptTag({ content: `${script}\nwindow.store = made.createShopStore();` });
});

test('rows without an order of their own change places and come back, none lost and none doubled, through undo and redo', async () => {
  const ids = await page.evaluate((demo) => {
    const { store } = window;
    const order = () => store.file?.racks[0]?.pieces.map(({ id, teeth }) => `${id} ${teeth}`).join() ?? '';
    store.load(demo, 'shop', 'token');
    const steps = [order()];
    store.edit('swap', (file) => {
      const pieces = file.racks[0]?.pieces ?? [];
      const [first, second] = pieces;
      if (first !== undefined && second !== undefined) pieces.splice(0, 2, second, first);
    });
    steps.push(order());
    store.undo();
    steps.push(order());
    store.redo();
    steps.push(order());
    return steps;
  }, DEMO);
  const rows = (DEMO.racks[0]?.pieces ?? []).map(({ id, teeth }) => `${id} ${teeth}`);
  const swapped = [rows[1], rows[0], ...rows.slice(2)].join();
  expect(ids).toEqual([rows.join(), swapped, rows.join(), swapped]);
});

test('pairs of teeth, catches and every other rows of the file, with an id or without, change places and come back, none lost and none doubled', async () => {
  const seen = await page.evaluate((demo) => {
    const { store } = window;
    const file: ShopFile = structuredClone(demo);
    for (const sheet of file.changeSheets)
      sheet.mounted.teeth = [
        { driver: 20, driven: 45 },
        { driver: 18, driven: 40 },
      ];
    /** Every list of the file that holds more than one row, by its place. */
    const lists = (of: unknown, place: string): readonly (readonly [string, unknown[]])[] => {
      if (typeof of !== 'object' || of === null) return [];
      const inside = Object.entries(of).flatMap(([key, value]) => lists(value, `${place}.${key}`));
      return Array.isArray(of) && of.length > 1 ? [[place, of], ...inside] : inside;
    };
    const places = lists(file, '').map(([place]) => place);
    const wrong: string[] = [];
    for (const place of places) {
      store.load(structuredClone(file), 'shop', 'token');
      const turned = structuredClone(file);
      lists(turned, '')
        .find(([at]) => at === place)?.[1]
        .reverse();
      const is = (wanted: unknown) => JSON.stringify(store.snapshot()) === JSON.stringify(wanted);
      store.edit(
        place,
        (open) =>
          void lists(open, '')
            .find(([at]) => at === place)?.[1]
            .reverse(),
      );
      if (!is(turned)) wrong.push(`${place}: turned`);
      store.undo();
      if (!is(file)) wrong.push(`${place}: taken back`);
      store.redo();
      if (!is(turned)) wrong.push(`${place}: done again`);
    }
    return { places, wrong };
  }, DEMO);
  expect(seen.places).toContain('.changeSheets.0.mounted.teeth');
  expect(seen.places.length).toBeGreaterThan(8);
  expect(seen.wrong).toEqual([]);
});

test('what is at stake: nothing in an example as it was opened, but every change, even one that undo makes after a save', async () => {
  const seen = await page.evaluate((demo) => {
    const { store } = window;
    const states: string[] = [];
    const look = (when: string) =>
      states.push(`${when}: ${store.unsaved ? 'not saved' : 'saved'}, ${store.atStake ? 'at stake' : 'nothing'}`);
    const name = (to: string) =>
      store.edit(to, (file) => {
        file.shop.name = to;
      });
    store.load(demo, 'example', null);
    look('opened without a file');
    name('a');
    look('changed');
    store.saved('shop', 'token', store.text());
    look('saved');
    store.undo();
    look('undone after saving');
    store.redo();
    look('redone');
    const text = store.text();
    name('b');
    store.saved('shop', 'token', text);
    look('changed while it was being saved');
    store.undo();
    look('undone to what was saved');
    store.saved('shop', null, store.text());
    look('downloaded');
    return states;
  }, DEMO);
  expect(seen).toEqual([
    'opened without a file: not saved, nothing',
    'changed: not saved, at stake',
    'saved: saved, nothing',
    'undone after saving: not saved, at stake',
    'redone: saved, nothing',
    'changed while it was being saved: not saved, at stake',
    'undone to what was saved: saved, nothing',
    'downloaded: saved, nothing',
  ]);
});

test('a file that grew out of another is unsaved against that one, and undo goes back to it', async () => {
  const seen = await page.evaluate((demo) => {
    const { store } = window;
    store.load(demo, 'shop', 'token');
    const base = store.text();
    const before = store.snapshot();
    store.edit('name', (file) => {
      file.shop.name = 'grown';
    });
    const grown = store.snapshot();
    if (grown === null) return [];
    store.load(grown, 'shop', 'token', { base, before });
    const states: unknown[] = [store.unsaved, store.atStake, store.base() === base, store.canUndo];
    store.undo();
    return [...states, store.unsaved, store.file?.shop.name];
  }, DEMO);
  expect(seen).toEqual([true, true, true, true, false, DEMO.shop.name]);
});
