import type { Browser, Page } from 'playwright-core';
import { expect } from 'vitest';
import { type Launched, launch } from '../harness/launch.ts';

/** Puts the cursor in the field that holds a place of the shop file, by keyboard alone: Tab until it is there. */
export async function tabTo(page: Page, place: string): Promise<void> {
  for (let steps = 0; steps < 120; steps += 1) {
    const here = await page.evaluate(() => document.activeElement?.getAttribute('data-place') ?? '');
    if (here === place) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${place}`);
}

/** Opens the invented example by its key, once the start page can hear it. */
export async function openDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Open the invented example' }).waitFor();
  await page.keyboard.press('d');
  await settled(page);
}

/** The app with the invented example open, on the page of a key where one is named. */
export async function launchDemo(
  browser: Browser,
  choices: Parameters<typeof launch>[1] = {},
  key: string | null = null,
): Promise<Launched> {
  const app = await launch(browser, choices);
  await openDemo(app.page);
  if (key !== null) await app.page.keyboard.press(key);
  return app;
}

/** Waits until the answer on screen belongs to what was typed last. */
export async function settled(page: Page): Promise<void> {
  await expect.poll(() => page.locator('[data-rank]').count()).toBeGreaterThan(0);
  await expect.poll(() => page.locator('text=/^searching/i').count()).toBe(0);
}

/** Opens the file that the host offers, by its key, once the start page can hear it. */
export async function openOffered(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Start empty' }).waitFor();
  await page.keyboard.press('Control+o');
  await expect.poll(() => page.locator('nav small').first().textContent()).toContain(name);
}

/** The page's own list of machines or materials; there is none to pick from where the file holds one. */
export async function pick(page: Page, key: string, what: string, index: number): Promise<void> {
  await page.keyboard.press(key);
  const list = page.getByRole('combobox', { name: new RegExp(`^${what}`, 'i') }).first();
  if (index > 0) await list.selectOption({ index });
}

/** Gives the first machine another name, on its page. */
export async function renameMachine(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Alt+1');
  const box = page.locator('[data-place="machines.0.name"]');
  await box.waitFor();
  await box.fill(name);
  await box.blur();
}
