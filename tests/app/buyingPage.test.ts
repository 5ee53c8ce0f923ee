import axe from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openDemo } from './journey.ts';

let browser: Browser;
let app: Launched;
let page: Page;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

/** The Reach page of the demo, from 1 to 5. */
async function opened(): Promise<void> {
  app = await launch(browser);
  page = app.page;
  await openDemo(page);
  await page.keyboard.press('Alt+4');
  await expect.poll(() => text('.said')).toContain('ratios from');
  await page.getByRole('textbox', { name: 'Window from' }).fill('1');
  await page.getByRole('textbox', { name: 'Window to' }).fill('5');
  await expect.poll(() => text('.said')).toContain('191 ratios from 1 to 5 : 1');
}
const text = async (selector: string) => ((await page.locator(selector).first().textContent()) ?? '').replaceAll('\u00A0', ' ');
const details = () => text('.gapdetails');
const teeth = () => page.getByRole('textbox', { name: 'Teeth to buy' });
const plan = () => page.getByRole('button', { name: 'Plan purchases' }).click();

test('choosing a gap, by its button, on the rule and by key, says which teeth close it', async () => {
  await opened();
  await page.getByRole('button', { name: 'What closes it 4.3750 – 4.6667' }).click();
  await expect.poll(details).toContain('close it, each alone.');
  expect(await details()).toContain('As the rack is, a target of 140 : 31 (4.5161 : 1) is 3.23 % off.');
  expect(await details()).toContain('08B 34 T1.78 %');
  expect(await page.locator('.chosengap').count()).toBe(1);
  const touch = page.locator('[data-touch="0"]');
  await touch.click({ force: true });
  await expect.poll(details).toContain('No single wheel closes it');
  expect(await details()).toContain('08B 13 Tover, 2.67 %');
  await page.locator('.hold').focus();
  await page.keyboard.press('G');
  await expect.poll(details).toContain('Gap 4.3750 – 4.6667');
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  expect(await page.locator('.gapdetails').count()).toBe(0);
});

test('a wheel that closes a gap is added by keyboard: the gap goes, the cursor stays at the table, undo brings the gap back', async () => {
  await opened();
  const gap = page.getByRole('button', { name: 'What closes it 4.3750 – 4.6667' });
  await gap.focus();
  await page.keyboard.press('Enter');
  const add = page.getByRole('button', { name: 'Add to the rack 08B 34\u00A0T' });
  await add.waitFor();
  await add.focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => gap.count()).toBe(0);
  expect(await page.locator('.gapdetails').count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.className)).toContain('gapbox');
  expect(await text('.notice')).toContain('On the rack now: 08B 34 T.');
  await page.keyboard.press('Control+z');
  await expect.poll(() => gap.count()).toBe(1);
});

test('three materials: two equal plans; the 14 is added, L5 becomes exact, and one undo takes it back', async () => {
  await opened();
  await teeth().fill('13 to 40');
  await plan();
  await expect.poll(() => text('.plans')).toContain('1 wheel, the fewest, brings all 3 materials inside their limits; 2 equal plans.');
  expect(await page.locator('.plan').evaluateAll((all) => all.map((one) => one.getAttribute('data-plan')))).toEqual([
    '08B 14\u00A0T',
    '08B 37\u00A0T',
  ]);
  expect(await text('.plan')).toContain('alone it adds L5 laminating resin; without it L5 laminating resin would be lost');
  expect(await text('.plan')).toContain('L5 laminating resin5 : 1exact inside14 to 35');
  await page.getByRole('button', { name: 'Add these to the rack 08B 14\u00A0T' }).click();
  await expect.poll(() => text('[data-material="l5"]')).toContain('5 : 1exact inside−1.30 to +1.30 % inside with margin14 to 35');
  expect(await text('.buying')).toContain('plan again');
  await page.keyboard.press('Alt+1');
  await expect
    .poll(() =>
      page
        .getByRole('textbox', { name: /^Quick entry/ })
        .first()
        .inputValue(),
    )
    .toContain('08B: 14-');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Alt+4');
  await expect.poll(() => text('[data-material="l5"]')).toContain('7.14 % B-rich outside');
});

test('of materials that are not ticked nothing is asked, and the whole window may be asked for instead', async () => {
  await opened();
  await teeth().fill('13-40');
  await page.locator('[data-tick="l5"]').uncheck();
  await plan();
  await expect.poll(() => text('.plans')).toContain('Nothing to buy: the rack as it is brings all 2 materials inside their limits.');
  await page.getByRole('textbox', { name: 'Window to' }).fill('4.5');
  await page.getByRole('textbox', { name: /^Tolerance/ }).fill('1.5');
  await page.getByRole('radio', { name: /whole window/ }).check();
  await plan();
  await expect.poll(() => text('.plans')).toContain('1 wheel, the fewest, brings every ratio from 1 to 4.5 : 1 within ± 1.50 %; one plan.');
  expect(await page.locator('.plan').getAttribute('data-plan')).toBe('08B 36\u00A0T');
});

test('plans are kept while other pages are looked at, with their machine, and say when they no longer hold', async () => {
  await opened();
  await teeth().fill('13-40');
  await plan();
  await expect.poll(() => page.locator('.plan').count()).toBe(2);
  await page.keyboard.press('Alt+3');
  await page.locator('[data-rank]').first().waitFor();
  await page.keyboard.press('Alt+4');
  await expect.poll(() => page.locator('.plan').count()).toBe(2);
  await expect.poll(() => text('.said')).toContain('191 ratios');
  expect(await text('.buying')).not.toContain('plan again');
  await page.keyboard.press('Alt+1');
  const machine = page.getByRole('combobox', { name: /^machine/i }).first();
  await machine.selectOption({ index: 1 });
  await page.keyboard.press('Alt+4');
  await expect.poll(() => text('.whose')).toContain('Bench 2');
  expect(await page.locator('.plan').count()).toBe(0);
  await page.keyboard.press('Alt+1');
  await machine.selectOption({ index: 0 });
  await page.locator('[data-place="machines.0.B.pumps.0.displacement"]').first().fill('6.1');
  await page.keyboard.press('Alt+4');
  await expect.poll(() => page.locator('.plan').count()).toBe(2);
  expect(await text('.buying')).toContain('Something has changed since this was planned: plan again.');
});

test('what takes long shows how far it is, holds up nothing, and is cancelled; then it can be asked for again', async () => {
  await opened();
  await page.keyboard.press('Alt+1');
  await page
    .getByRole('combobox', { name: /^machine/i })
    .first()
    .selectOption({ index: 1 });
  await page.keyboard.press('Alt+4');
  await expect.poll(() => text('.whose')).toContain('Bench 2');
  await teeth().fill('13 to 40');
  await page.getByRole('textbox', { name: 'Wheels to buy, at most' }).fill('8');
  await page.getByRole('radio', { name: /whole window/ }).check();
  await plan();
  await expect.poll(() => text('.buyfields')).toContain('planning, ');
  await page.locator('.hold').focus();
  await page.keyboard.press('+');
  await expect.poll(() => text('.said')).not.toContain('from 1 to 5 : 1');
  expect(await text('.buyfields')).toContain('planning, ');
  await page.locator('.buyfields').getByRole('button', { name: 'Cancel' }).click();
  expect(await page.locator('.plans').count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Plan purchases' }).isEnabled()).toBe(true);
});

test('prices: kept with the rack, refused where a wheel has one already, and the lowest price told beside the fewest wheels', async () => {
  await opened();
  await teeth().fill('13 to 40');
  await page.locator('.prices summary').click();
  const add = async (range: string, price: string) => {
    await page.getByRole('textbox', { name: 'Teeth, from – to' }).fill(range);
    await page.getByRole('textbox', { name: 'Price of one' }).fill(price);
  };
  await add('13 to 20', '30.50');
  await page.keyboard.press('Enter');
  await add('20 to 40', '25');
  expect(await text('.prices')).toContain('08B, 13 to 20 teeth have a price already.');
  expect(await page.getByRole('button', { name: 'Add the price' }).isDisabled()).toBe(true);
  await add('37', '25');
  await page.keyboard.press('Enter');
  await page.getByRole('textbox', { name: 'Word for the money' }).fill('crowns');
  await plan();
  await expect.poll(() => text('.plans')).toContain('The lowest price that serves all is 25.00 crowns, for 1 wheel: 08B 37 T.');
  expect(await text('[data-plan="08B 14\u00A0T"]')).toContain('30.50 crowns');
});

test('axe finds nothing, in light and dark; at 320 px nothing but tables scrolls sideways', async () => {
  await opened();
  await teeth().fill('13 to 40');
  await page.getByRole('button', { name: /^What closes it above/ }).click();
  await page.locator('.prices summary').click();
  await plan();
  await expect.poll(() => page.locator('.plan').count()).toBe(2);
  await expect.poll(details).toContain('No single wheel closes it');
  await page.evaluate(axe.source);
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const found = await page.evaluate(async () => {
      const runner = (window as unknown as { axe: typeof axe }).axe;
      return (await runner.run()).violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
    });
    expect(found).toEqual([]);
  }
  await page.setViewportSize({ width: 320, height: 700 });
  const beyond = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('main.reach, .buying > *, .buying input, .buying button, .plan, .gapdetails, .scrollx')]
        .filter((element) => element.closest('table') === null)
        .filter((element) => element.getBoundingClientRect().right > 321 || element.getBoundingClientRect().left < -1)
        .map((element) => element.className || element.outerHTML.slice(0, 60)),
    );
  await expect.poll(beyond).toEqual([]);
});
