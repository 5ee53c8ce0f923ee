import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { launchDemo } from './journey.ts';

// Browsers step a number box with the cursor in it when the wheel turns over it, and 100:45 becomes 100:44 unseen.

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const BOXES = 'main input:not([type="file"]), main select, main textarea, nav select';

/** What every box holds, in the order of the page. */
const held = (page: Page): Promise<readonly string[]> =>
  page
    .locator(BOXES)
    .evaluateAll((all) =>
      all.map((one) =>
        one instanceof HTMLInputElement && /radio|checkbox/.test(one.type) ? String(one.checked) : (one as HTMLInputElement).value,
      ),
    );

test('1111111 in a box with the cursor stays 1111111 under the wheel, and the page scrolls', async () => {
  const app = await launchDemo(browser, {}, 'Alt+1');
  try {
    const { page } = app;
    await page.setViewportSize({ width: 1280, height: 640 });
    const box = page.locator('[data-place="machines.0.motor.speed"]');
    await box.fill('1111111');
    await box.hover();
    const scrolled = () =>
      page
        .locator('main.machine > section')
        .first()
        .evaluate((one) => one.scrollTop);
    expect(await scrolled()).toBe(0);
    for (const turn of [120, 120]) await page.mouse.wheel(0, turn);
    await expect.poll(scrolled).toBeGreaterThan(0);
    expect(await box.evaluate((one) => one === document.activeElement)).toBe(true);
    expect(await box.inputValue()).toBe('1111111');
  } finally {
    await app.close();
  }
});

test.each([
  ['Machine', 'Alt+1', 'main.machine'],
  ['Material', 'Alt+2', 'main.material'],
  ['Options', 'Alt+3', 'main.options'],
  ['Reach', 'Alt+4', 'main.reach'],
  ['Sheet', 'Alt+5', '.paper-holder'],
  ['Ratio check', 'Alt+6', 'main.check'],
])('%s: no box changes under the wheel, with the cursor in it or not', async (_name, key, main) => {
  const app = await launchDemo(browser, {}, key);
  try {
    const { page } = app;
    await page.locator(main).waitFor();
    if (key === 'Alt+3') await page.keyboard.press('r');
    // Figures that come later are waited for.
    let before = await held(page);
    await expect
      .poll(async () => {
        const last = before;
        before = await held(page);
        return last.join() === before.join() && before.length > 0;
      })
      .toBe(true);
    for (const box of await page.locator(BOXES).all()) {
      if (!(await box.isVisible())) continue;
      await box.evaluate((one) => {
        (one as HTMLElement).focus();
        one.scrollIntoView({ block: 'center' });
      });
      const { x = 0, y = 0, width = 0, height = 0 } = (await box.boundingBox()) ?? {};
      await page.mouse.move(x + width / 2, y + height / 2);
      for (const turn of [-100, 100]) await page.mouse.wheel(0, turn);
    }
    expect(await held(page)).toEqual(before);
  } finally {
    await app.close();
  }
});
