import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { resolve } from '../../core/src/index.ts';
import { triedRatios } from '../../core/src/nearRatios.ts';
import { exactText, ONE, ratioOf } from '../../core/src/ratio.ts';
import { triedByVolume } from '../../core/src/triedRatio.ts';
import { demoFile } from '../core/sheet/demoSheet.ts';
import type { Launched } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, pick, settled } from './journey.ts';

let browser: Browser;
let app: Launched;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

/** The demo with the box open, by its key. */
async function opened(): Promise<void> {
  app = await launchDemo(browser);
  page = app.page;
  await page.getByLabel('What would these teeth give?').waitFor();
  await page.keyboard.press('r');
  await near('100 : 38.9');
}
/** Waits until the list belongs to this text. */
const near = (text: string) => expect.poll(() => page.locator('.near caption').textContent()).toContain(`Nearest to ${text}l`);
const listed = () => page.locator('[data-near]').evaluateAll((rows) => rows.map((row) => row.getAttribute('data-near')));
const slide = () => page.getByRole('slider', { name: 'Slide the ratio, more B to the left' });
const box = () => page.getByRole('textbox', { name: /^Ratio by weight/ });
const useIt = () => page.getByRole('button', { name: /^Use this ratio for/ });
const undo = () => page.getByRole('button', { name: 'Undo', exact: true });

/** What core finds near so many parts of B to 100 A by weight, as the page writes it. */
function expected(partsB: number): readonly string[] {
  const plan = resolve(demoFile(), { machine: 'bench-1', material: 'e12' }, { decimal: '.', system: 'metric' });
  if (!plan.ok) throw new Error('the demo does not resolve');
  const wanted = triedByVolume(plan.value, ratioOf(Math.round(partsB * 100), 10_000));
  return triedRatios(plan.value)
    .near(wanted, 8)
    .map(({ bPerA }) => exactText(ONE.div(bPerA)));
}

test('dragging the slide moves text and list together, and leaves material, options and undo as they are', async () => {
  await opened();
  expect(await listed()).toEqual(expected(38.9));
  const ranked = await page.locator('[data-rank]').evaluateAll((rows) => rows.map((row) => row.getAttribute('data-key')));
  const line = await slide().boundingBox();
  if (line === null) throw new Error('no slide');
  await page.mouse.move(line.x + line.width / 2, line.y + line.height / 2);
  await page.mouse.down();
  for (const share of [0.45, 0.35, 0.25]) await page.mouse.move(line.x + line.width * share, line.y + line.height / 2, { steps: 4 });
  await page.mouse.up();
  const text = await box().inputValue();
  const partsB = Number(/^100 : ([\d.]+)$/.exec(text)?.[1]);
  // To the left there is more B: a quarter of the way is half of the reach, about a tenth.
  expect(partsB).toBeGreaterThan(38.9 * 1.07);
  expect(partsB).toBeLessThan(38.9 * 1.13);
  await near(text);
  expect(await listed()).toEqual(expected(partsB));
  expect(await undo().isDisabled()).toBe(true);
  expect(await page.locator('[data-rank]').evaluateAll((rows) => rows.map((row) => row.getAttribute('data-key')))).toEqual(ranked);
  expect(await page.locator('header.band').textContent()).toContain('100 : 38.9 by weight');
});

test('by keyboard: a key is a tenth of a per cent, and what rests is said politely', async () => {
  await opened();
  expect(await box().evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press('Tab');
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('ArrowLeft');
  await near('100 : 39.02');
  expect(await slide().getAttribute('aria-valuetext')).toBe('100 : 39.02');
  await expect.poll(() => page.locator('.tried [role="status"]').textContent()).toMatch(/^Nearest to 100 : 39\.02: \d/);
  await page.keyboard.press('Home');
  await near('100 : 46.66');
});

test('a text that is no ratio says what was expected, as on the Material page, and the list stays', async () => {
  await opened();
  await box().fill('38.9');
  await expect.poll(() => page.locator('#try-ratio-gives').textContent()).toContain('"38.9" has only one part. Expected A to B');
  expect([await box().getAttribute('aria-invalid'), await useIt().isDisabled()]).toEqual(['true', true]);
  expect(await listed()).toEqual(expected(38.9));
  await box().fill('100:42,5');
  await near('100:42,5');
  expect(await listed()).toEqual(expected(42.5));
  expect(await page.locator('#try-ratio-gives').textContent()).toMatch(/by volume as run, 9\.25\u00A0% B-rich against E12/);
});

test('the button puts it into the material: one undo step, which takes it out again', async () => {
  await opened();
  expect(await useIt().isDisabled()).toBe(true);
  await box().fill('100 : 42');
  await near('100 : 42');
  const [nearest] = await listed();
  await useIt().click();
  expect(await box().evaluate((element) => element === document.activeElement)).toBe(true);
  await expect.poll(() => page.locator('header.band').textContent()).toContain('100 : 42 by weight');
  await settled(page);
  expect(await page.locator('[data-rank="1"]').first().getAttribute('data-ratio')).toBe(nearest);
  await near('100 : 42');
  expect(await useIt().isDisabled()).toBe(true);
  await undo().click();
  await expect.poll(() => page.locator('header.band').textContent()).toContain('100 : 38.9 by weight');
  expect(await undo().isDisabled()).toBe(true);
  await near('100 : 38.9');
});

test('a ratio from chemistry can be tried, but not be put in its place; another material starts from its own', async () => {
  await opened();
  await box().fill('100 : 42');
  await near('100 : 42');
  await page.keyboard.press('Escape');
  await pick(page, 'Alt+2', 'material', 1);
  await page.keyboard.press('Alt+3');
  await settled(page);
  await page.getByText('Try a ratio').click();
  await expect.poll(() => page.locator('[data-near]').count()).toBe(8);
  expect(await box().inputValue()).toMatch(/^100 : 4\d\.\d+$/);
  await box().fill('100 : 43');
  await near('100 : 43');
  expect(await useIt().isDisabled()).toBe(true);
  expect(await page.locator('.gives').textContent()).toContain('Its ratio comes from chemistry, which the Material page holds.');
});

test.each(['light', 'dark'] as const)('open, %s: axe-core finds nothing, and at 320 px only the table scrolls sideways', async (scheme) => {
  await opened();
  await page.emulateMedia({ colorScheme: scheme });
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const runner = (window as unknown as { axe: typeof axe }).axe;
    return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
  });
  expect(found).toEqual([]);
  await page.setViewportSize({ width: 320, height: 700 });
  const beyond = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('.tryratio, .tried, .controls, .gives, .gives button, .near, .tried input')]
        .filter((element) => element.getBoundingClientRect().right > 321 || element.getBoundingClientRect().left < -1)
        .map((element) => element.className),
    );
  await expect.poll(beyond).toEqual([]);
});
