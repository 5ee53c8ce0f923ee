import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startBrowser } from './browser.ts';
import { launchDemo } from './journey.ts';

// Browsers step a number box with the cursor in it when the wheel turns over it, and 100:45 becomes 100:44 unseen.

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

const BOXES = 'main input:not([type="file"], tr:nth-child(n + 4) *), main select:not(tr:nth-child(n + 4) *), main textarea, nav select';

/** What a box holds. */
const heldBy = (box: Locator): Promise<string> =>
  box.evaluate((one) => {
    if (one instanceof HTMLInputElement && /radio|checkbox/.test(one.type)) return String(one.checked);
    return one instanceof HTMLInputElement || one instanceof HTMLSelectElement || one instanceof HTMLTextAreaElement ? one.value : '';
  });

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
])('%s: no box changes under the wheel while it has the cursor', async (_name, key, main) => {
  const app = await launchDemo(browser, {}, key);
  try {
    const { page } = app;
    await page.locator(main).waitFor();
    if (key === 'Alt+3') await page.keyboard.press('r');
    if (key === 'Alt+4') await expect.poll(() => page.locator('.said').textContent()).toContain('ratios from');
    const boxes = page.locator(BOXES);
    let turned = 0;
    for (let index = 0; index < (await boxes.count()); index += 1) {
      const box = boxes.nth(index);
      if (!(await box.isVisible())) continue;
      await box.evaluate((one) => {
        if (one instanceof HTMLElement) one.focus();
        one.scrollIntoView({ block: 'center' });
      });
      const before = await heldBy(box);
      const { x = 0, y = 0, width = 0, height = 0 } = (await box.boundingBox()) ?? {};
      await page.mouse.move(x + width / 2, y + height / 2);
      for (const turn of [-100, 100, 100]) await page.mouse.wheel(0, turn);
      expect(await heldBy(box), `box ${index} after the wheel`).toBe(before);
      turned += 1;
    }
    expect(turned).toBeGreaterThan(3);
  } finally {
    await app.close();
  }
});
