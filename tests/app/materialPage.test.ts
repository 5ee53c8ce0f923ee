// A material whose ratio comes from chemistry: typed in, understood, refused where it cannot be, and what it is to the Options page.
import { mkdtempSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/index.ts';
import type { Launched } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, settled, tabTo } from './journey.ts';

let browser: Browser;
let app: Launched;
const saved = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-material-')), 'chemistry.ratiowright');
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

const of = (key: string) => ({ A: `chemistry.A.ingredients.0.${key}`, B: `chemistry.B.ingredients.0.${key}` });
const [BY, VALUE, HYDROGENS, FACTOR] = [of('by'), of('value'), of('hydrogens').B, of('factor').B];
/** The example holds three materials; the fourth is new. */
const at = (place: string) => `materials.3.${place}`;
const field = (page: Page, place: string) => page.locator(`[data-place="${at(place)}"]`);
const question = (page: Page, words: string) => page.getByRole('group', { name: words });
/** The figures of one form of the ratio: most B, wanted, least B; without limits only what is wanted. */
const form = (page: Page, label: string) => page.getByRole('row', { name: label }).locator('td.num').allTextContents();
const parts = async (page: Page) => (await form(page, 'B per 100 A by weight')).map(Number);

async function set(page: Page, ...entries: readonly (readonly [place: string, text: string])[]): Promise<void> {
  for (const [place, text] of entries) {
    await (/by$|definition$/.test(place) ? field(page, place).selectOption(text) : field(page, place).fill(text));
  }
}

async function newMaterial(): Promise<Page> {
  app = await launchDemo(browser, { save: [saved] }, 'Alt+2');
  await app.page.getByRole('button', { name: 'Add a material' }).click();
  return app.page;
}

async function newSystem(system: string): Promise<Page> {
  const page = await newMaterial();
  await question(page, 'The mix ratio is given').getByLabel('from chemistry').check();
  await question(page, 'The material is').getByLabel(system).check();
  return page;
}

async function epoxy(): Promise<Page> {
  const page = await newSystem('epoxy');
  await question(page, 'The resin is in').getByLabel('tank A').check();
  await set(page, ['chemistry.index', '100'], [BY.A, 'EEW'], [VALUE.A, '200']);
  await set(page, [BY.B, 'amine molar mass'], [VALUE.B, '103'], [HYDROGENS, '5']);
  return page;
}

/** Goes to the Options page and waits until its figures say that this ratio is wanted, and options are listed for it. */
async function arrives(page: Page, ratio: string): Promise<void> {
  await page.keyboard.press('Alt+3');
  const wanted = page.locator('[data-fact="wanted"] > summary b');
  await expect.poll(async () => (await wanted.textContent())?.replaceAll('\u00a0', ' ')).toBe(ratio);
  await settled(page);
}

test('an epoxy by keyboard alone: EEW 209 and AHEW 43 make 20.6 parts, and the ratio arrives on Options', async () => {
  const page = await newMaterial();
  for (const [place, ...keys] of [
    ['chemistry', 'ArrowDown'],
    ['chemistry.system', ' '],
    ['chemistry.resinIn', ' '],
    ['chemistry.index', ...'100'],
    [BY.A, ...'EEW'],
    [VALUE.A, ...'209'],
    [BY.B, ...'AHEW'],
    [VALUE.B, ...'43'],
    ['A.density.value', ...'1.16'],
    ['B.density.value', ...'0.97'],
  ] as const) {
    await tabTo(page, at(place));
    for (const key of keys) await page.keyboard.press(key);
  }
  // [a public worked example of equivalent weights, seen: 20.6]; 209 / 43 · 0.97 / 1.16 = 4.0644 [arithmetic]
  expect((await parts(page)).map((b) => b.toFixed(1))).toEqual(['20.6']);
  await arrives(page, '4.0644 : 1');
});

test('hardeners by molar mass, an epoxy by its value; what is given up for the ratio of the sheet comes back', async () => {
  const page = await epoxy();
  // 103 g/mol with 5 active hydrogens on EEW 200 [a text on adhesives in civil engineering, seen: 10.3]
  expect(await parts(page)).toEqual([10.3]);
  await question(page, 'The mix ratio is given').getByLabel('as the sheet prints it').check();
  expect([await field(page, VALUE.A).count(), await parts(page)]).toEqual([0, []]);
  await question(page, 'The mix ratio is given').getByLabel('from chemistry').check();
  expect([await field(page, VALUE.B).inputValue(), await parts(page)]).toEqual(['103', [10.3]]);
  await set(page, [BY.A, 'epoxy value'], [VALUE.A, '0.51'], [BY.B, 'anhydride molar mass'], [VALUE.B, '168'], [FACTOR, '0.9']);
  // [a producer's page on this anhydride, seen: 77]
  expect((await parts(page)).map(Math.round)).toEqual([77]);
});

test('a urethane asks where the isocyanate is, takes an index, and has its limits in index points', async () => {
  const page = await newSystem('urethane');
  const tank = (name: string) => question(page, 'The isocyanate is in').getByLabel(`tank ${name}`);
  expect([await tank('A').isChecked(), await tank('B').isChecked()]).toEqual([false, false]);
  await set(page, [BY.A, 'OH equivalent weight'], [VALUE.A, '460'], [BY.B, 'NCO equivalent weight'], [VALUE.B, '183']);
  await set(page, ['chemistry.index', '105']);
  // Until it is said, nothing is assumed.
  expect(await parts(page)).toEqual([]);
  await tank('B').check();
  // [published sample calculations for urethanes, seen: 39.79 g on 95.26 g of resin at index 1.05]
  expect((await parts(page)).map((b) => ((b * 95.26) / 100).toFixed(2))).toEqual(['39.79']);
  await set(page, ['limits.low', '102'], ['limits.high', '108'], ['limits.definition', 'index points']);
  await set(page, ['A.density.value', '1.03'], ['B.density.value', '1.22']);
  expect(await form(page, 'Isocyanate index')).toEqual(['108.00', '105.00', '102.00']);
  // 102 / 105 - 1 and 108 / 105 - 1 [arithmetic]; 460 / (1.05 · 183) · 1.22 / 1.03 = 2.8356 [arithmetic]
  expect(await form(page, 'Off-ratio of B per A')).toEqual(['+2.86', '0.00', '−2.86']);
  await arrives(page, '2.8356 : 1');
  await page.keyboard.press('Alt+2');
  await tank('A').check();
  await set(page, [BY.A, 'NCO equivalent weight'], [VALUE.A, '183'], [BY.B, 'OH equivalent weight'], [VALUE.B, '460']);
  // With the isocyanate in A more B lowers the index: 105 / 108 - 1 and 105 / 102 - 1 [arithmetic].
  expect(await form(page, 'Off-ratio of B per A')).toEqual(['+2.94', '0.00', '−2.78']);
});

test.each([
  [VALUE.A, '0', 'EEW: 50 to 10000 g/eq'],
  [VALUE.A, '0.51', 'looks like an epoxy value in mol/100 g. EEW: 50 to 10000 g/eq'],
  [VALUE.B, '-103', 'Molar mass: 30 to 5000 g/mol'],
  [HYDROGENS, '103', 'looks like a molar mass or an AHEW. Active hydrogens: 1 to 20'],
  ['chemistry.A.ingredients.0.parts', '0', 'the parts by weight must be above 0'],
  ['chemistry.index', '1.05', 'looks like a ratio: the index is in per cent, 20 to 1000'],
])('%s: %s is refused with field and limit, stays in sight, and costs nothing that was good', async (place, typed, said) => {
  const page = await epoxy();
  const box = field(page, place);
  const good = await box.inputValue();
  await box.fill(typed);
  expect(await box.locator('xpath=../p').textContent()).toContain(said);
  expect([await box.inputValue(), await box.getAttribute('aria-invalid'), await parts(page)]).toEqual([typed, 'true', [10.3]]);
  await page.keyboard.press('Control+s');
  await expect.poll(() => page.locator('nav small').first().textContent()).toContain('· saved');
  const read = readShopFile(readFileSync(saved, 'utf8'));
  const A = { ingredients: [{ id: 'ingredient-1', by: 'EEW', value: '200' }] };
  const B = { ingredients: [{ id: 'ingredient-1', by: 'amine molar mass', value: '103', hydrogens: '5' }] };
  expect(read.ok && read.value.materials[3]?.chemistry).toEqual({ system: 'epoxy', resinIn: 'A', index: '100', A, B });
  await box.fill(good);
  expect([await box.getAttribute('aria-invalid'), await parts(page)]).toEqual([null, [10.3]]);
});
