import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Launched } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { cutBelow, sideways, spaceOut } from './fits.ts';
import { launchDemo } from './journey.ts';
import { SCREENS, violations } from './screens.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

async function on(open: (browser: Browser) => Promise<Launched>, look: (page: Page) => Promise<void>): Promise<void> {
  const app = await open(browser);
  try {
    await look(app.page);
  } finally {
    await app.close();
  }
}

const DESK = { width: 1280, height: 800 };
/** A window of 1280 × 800 at 200 %, and the width that is 1280 at 400 % [WCAG 2.2, 1.4.10]. */
const SMALL = [
  { width: 640, height: 400 },
  { width: 320, height: 640 },
] as const;

/** What moves by itself, or would if something changed. */
const moving = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [
    ...document.getAnimations().map(() => 'an animation runs'),
    ...[document.documentElement, ...document.querySelectorAll('*')]
      .filter((one) => {
        const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(one);
        return animationName !== 'none' || /[1-9]/.test(transitionDuration) || scrollBehavior === 'smooth';
      })
      .map((one) => one.outerHTML.slice(0, 80)),
  ]);

describe.each(Object.entries(SCREENS))('%s', (_name, open) => {
  test('axe-core finds nothing: light, dark, with forced colours, at 320 px; and nothing moves by itself, least of all where less motion is asked for', () =>
    on(open, async (page) => {
      await page.setViewportSize(DESK);
      for (const reducedMotion of ['no-preference', 'reduce'] as const) {
        await page.emulateMedia({ reducedMotion });
        expect(await moving(page)).toEqual([]);
      }
      for (const forcedColors of ['none', 'active'] as const) {
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme, forcedColors });
          expect(await violations(page), `${colorScheme}, forced colours ${forcedColors}`).toEqual([]);
        }
      }
      await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });
      await page.setViewportSize(SMALL[1]);
      expect(await violations(page)).toEqual([]);
    }));

  test('at 200 % and at 320 px nothing is cut or scrolls sideways but tables, drawings and paper in their frames; nor with wide spacing', () =>
    on(open, async (page) => {
      for (const size of SMALL) {
        await page.setViewportSize(size);
        expect(await sideways(page), `${size.width} px`).toEqual([]);
      }
      await spaceOut(page);
      for (const size of [DESK, ...SMALL]) {
        await page.setViewportSize(size);
        expect(await sideways(page), `${size.width} px, spaced`).toEqual([]);
        expect(await cutBelow(page), `${size.width} px, spaced`).toEqual([]);
      }
    }));
});

test('the list of pages ends above the foot of a screen of 1280 × 800, with room for a title bar and a menu', () =>
  on(launchDemo, async (page) => {
    await page.setViewportSize({ width: 1280, height: 720 });
    const ends = await page.locator('nav select').evaluateAll((all) => all.map((one) => one.getBoundingClientRect().bottom));
    expect(ends).toHaveLength(2);
    for (const end of ends) expect(end).toBeLessThanOrEqual(720);
    // Lower still, it scrolls to the box that takes the cursor.
    await page.setViewportSize({ width: 1280, height: 640 });
    await page.locator('nav select').last().focus();
    expect(
      await page
        .locator('nav select')
        .last()
        .evaluate((one) => one.getBoundingClientRect().bottom),
    ).toBeLessThanOrEqual(640);
  }));

test('a change of the count of options is announced', () =>
  on(launchDemo, async (page) => {
    const said = page.locator('main.options h1 [role="status"]');
    expect(await said.textContent()).toBe('10 inside the limits');
    await said.evaluate((one) => {
      new MutationObserver(() => one.setAttribute('data-heard', one.textContent ?? '')).observe(one, {
        subtree: true,
        childList: true,
        characterData: true,
      });
    });
    await page.locator('.settings summary').click();
    await page.getByRole('combobox', { name: 'Wheels' }).selectOption({ index: 1 });
    await expect.poll(() => said.getAttribute('data-heard')).toMatch(/^(at least )?[1-9]\d+ inside the limits$/);
    expect(await said.getAttribute('data-heard')).not.toBe('10 inside the limits');
  }));
